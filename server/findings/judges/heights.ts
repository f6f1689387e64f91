/** Heights of the four corners: against the sheet, side to side, and as one attitude. */
import { takePlace } from '../../../intents/place.ts';
import type { ReadingFact } from '../../../intents/shapes.ts';
import { type Corner, armChange, attitudeOf, corners, leanOf, torsionTurns } from '../../core/heights.ts';
import { si } from '../../core/quantity.ts';
import type { Unit } from '../../core/units.ts';
import {
  type Case,
  type Judge,
  inputOf,
  middle,
  physics,
  practice,
  sheetInput,
  sheetSource,
  stateAt,
  touched,
  unitOf,
  verdictOf,
} from '../case.ts';
import { cornerOf, cornerPlace, heightRange, heightValue, nominalOf, setWith, tapeHalf } from '../corner-sheet.ts';
import { isLater } from '../tape-episode.ts';
import type { Drawing, Finding } from '../finding.ts';
import { limitOf, rangeInputs, stripOf } from '../limits.ts';
import { plain, shown, typed } from '../show.ts';
import { asFound } from './tank-pressure.ts';

const size = (value: number, unit: Unit, half: number): string =>
  shown(Math.abs(value), unit, half, { difference: true }).text;

/** What to turn for a corner that is off, where the sheet gives the ratio. */
const remedy = (c: Case, corner: Corner, off: number, unit: Unit, half: number): string[] => {
  const rear = corner.endsWith('Rear');
  const per = c.sheet.valves?.heightPerArm;
  const turn = c.sheet.heights?.torsionPerTurn;
  if (rear && per)
    return [
      `to correct: set the link so that the arm's end stands ${size(armChange(si(off), per), unit, half / per)} further towards ${off < 0 ? 'fill' : 'exhaust'} (sheet: valves.heightPerArm, ${per} of height for 1 of arm travel); check again after the valve's delay`,
    ];
  if (!rear && turn)
    return [
      `to correct: ${plain(Math.abs(torsionTurns(si(off), si(turn.si))))} turns of the adjuster ${off < 0 ? 'up' : 'down'} (sheet: heights.torsionPerTurn ${turn.text} a turn), load off it by the maker's method; then check the front alignment`,
    ];
  return [];
};

/** Taken after standing, before anything was touched: said, or a complaint about standing with nothing pumped yet. */
export const isAsFound = (c: Case, fact: ReadingFact): boolean =>
  asFound(c, fact) ||
  (c.standing.complaint?.standing === true && stateAt(c, fact).pumpedAt === null && stateAt(c, fact).key !== true);

const corner = (c: Case, fact: ReadingFact, which: Corner): Finding => {
  const unit = unitOf(fact);
  const half = tapeHalf(c, fact);
  const value = heightValue(fact);
  const range = heightRange(c, which);
  const nominal = nominalOf(range);
  const verdict = verdictOf(value, 0, range);
  const place = cornerPlace[which];
  const found = isAsFound(c, fact);
  const off = nominal === null ? null : value - nominal;
  const stops = c.sheet.heights?.toStops;
  const down = off !== null && stops && which.endsWith('Rear') && -off >= stops.si - 2 * half;
  const said = typed(fact.amount.v);
  const words =
    off === null
      ? `${place} ${said}`
      : down
        ? `${place} on its stops: ${size(off, unit, half)} low (${said})`
        : Math.abs(off) < half * 0.999
          ? `${place} ${said}, on the sheet's height`
          : `${size(off, unit, half)} ${off < 0 ? 'low' : 'high'} ${place} (${said})${verdict === 'within' ? ', within tolerance' : ''}`;
  const level = verdict === 'within' ? 'level' : verdict === 'low' ? (down ? 'on stops' : 'low') : null;
  const side = which.startsWith('left') ? 'left' : 'right';
  const rear = which.endsWith('Rear');
  // A height that has stood, or behind a shut panel, is not what the valve levels to.
  const panel = stateAt(c, fact).panel;
  const ride = !isLater(c, fact) && (panel === null || panel === 'auto');
  const evidence =
    verdict === 'no limit'
      ? []
      : found
        ? rear && level
          ? [{ see: `${side} as found`, outcome: level }]
          : []
        : ride
          ? [{ see: `${side} ${rear ? 'rear' : 'front'} height`, outcome: verdict }]
          : [];
  const notes = found
    ? ['taken as found, after standing']
    : ride
      ? ['assumed: measured at ride height, valves settled, on a level floor, tyres at the sheet pressure']
      : ['taken after standing or with the panel not in automatic: not the height the valve levels to'];
  if (!found && ride && (verdict === 'low' || verdict === 'high'))
    notes.push(...remedy(c, which, off ?? 0, unit, half));
  const shownValue = off === null ? shown(value, unit, half) : shown(off, unit, half, { difference: true });
  return {
    key: `height@${place}`,
    verdict,
    words,
    amount: shownValue,
    ...(range ? { limit: limitOf(range, unit) } : {}),
    because: [fact.id, ...(range?.because ?? [])],
    why: {
      formula: 'height read less the height wanted, against the tolerance',
      inputs: [
        inputOf(place, fact),
        ...(range?.nominal
          ? [{ name: 'wanted', text: shown(range.nominal.si, unit, 0).text, from: range.source.words }]
          : []),
        ...rangeInputs(range, unit),
      ],
      source: range?.source ?? physics('the reading itself'),
      notes,
    },
    drawing: stripOf(range, unit, [{ si: value, pm: half, label: said }]),
    ...(range
      ? {}
      : {
          wants: {
            field: `heights.${which}`,
            question: `What should the ${place} height be, and with what tolerance?`,
          },
        }),
    ...(evidence.length > 0 ? { evidence } : {}),
  };
};

/** Left against right of one end, where both belong to one set. */
const across = (c: Case, set: Partial<Record<Corner, ReadingFact>>, end: 'front' | 'rear'): Finding | null => {
  const left = set[end === 'front' ? 'leftFront' : 'leftRear'];
  const right = set[end === 'front' ? 'rightFront' : 'rightRear'];
  if (!left || !right) return null;
  const unit = unitOf(left);
  const half = Math.max(tapeHalf(c, left), tapeHalf(c, right));
  const apart = heightValue(right) - heightValue(left);
  const limit = c.sheet.heights?.sideToSide;
  const verdict: Finding['verdict'] = limit ? (Math.abs(apart) > limit.si * 1.0001 ? 'high' : 'within') : 'no limit';
  const track = c.sheet.alignment?.track;
  const lower = apart > 0 ? 'left' : 'right';
  const lean = track ? leanOf(si(heightValue(left)), si(heightValue(right)), si(track.si)) : null;
  return {
    key: `side to side@${end}`,
    verdict,
    words:
      Math.abs(apart) < half
        ? `${end} level side to side`
        : `${end} leans ${lower}: ${lower} side ${size(apart, unit, half)} lower${verdict === 'within' ? ', within the limit' : ''}`,
    amount: shown(Math.abs(apart), unit, half, { difference: true }),
    ...(limit
      ? {
          limit: {
            high: shown(limit.si, unit, limit.pm, { difference: true }),
            source: sheetSource('heights.sideToSide'),
          },
        }
      : {}),
    because: [left.id, right.id],
    why: {
      formula:
        lean === null
          ? 'right height less left height'
          : 'right height less left height; lean = atan(difference / track)',
      inputs: [
        inputOf(`left ${end}`, left),
        inputOf(`right ${end}`, right),
        ...(limit ? [sheetInput('limit', limit, 'heights.sideToSide')] : []),
        ...(track ? [sheetInput('track', track, 'alignment.track')] : []),
      ],
      source: limit ? sheetSource('heights.sideToSide') : physics('the two readings'),
      notes: lean === null ? [] : [`lean ${shown(Math.abs(lean), 'deg', 0.0009).text}, measured across the track`],
    },
    ...(limit
      ? {}
      : { wants: { field: 'heights.sideToSide', question: 'How far apart may left and right be on this coach?' } }),
  };
};

/** All four corners as heave, pitch, roll and twist. */
const attitude = (c: Case, set: Partial<Record<Corner, ReadingFact>>): Finding | null => {
  const facts = corners.map((k) => set[k]);
  if (facts.some((f) => f === undefined)) return null;
  const all = facts as ReadingFact[];
  const unit = unitOf(all[0]!);
  const half = Math.max(...all.map((f) => tapeHalf(c, f)));
  const nominals = corners.map((k) => nominalOf(heightRange(c, k)));
  const known = nominals.every((n) => n !== null);
  const drawing: Drawing = {
    is: 'plan',
    unit,
    corners: corners.map((k, i) => ({
      where: cornerPlace[k],
      si: heightValue(all[i]!),
      text: typed(all[i]!.amount.v),
      ...(nominals[i] == null ? {} : { off: heightValue(all[i]!) - nominals[i] }),
    })),
    notes: [],
  };
  if (!known) return null;
  const off = Object.fromEntries(corners.map((k, i) => [k, heightValue(all[i]!) - nominals[i]!])) as Record<
    Corner,
    number
  >;
  const a = attitudeOf(off);
  const parts: string[] = [];
  const say = (value: number, up: string, downWords: string): void => {
    if (Math.abs(value) >= half / 2) parts.push(`${size(value, unit, half / 2)} ${value > 0 ? up : downWords}`);
  };
  say(a.heave, 'high all round', 'low all round');
  say(2 * a.pitch, 'nose up, front against rear', 'nose down, front against rear');
  say(2 * a.roll, 'leaning left, side against side', 'leaning right, side against side');
  say(2 * a.twist, 'twisted, left front and right rear up', 'twisted, right front and left rear up');
  const tolerance = Math.max(...corners.map((k) => c.sheet.heights?.[k]?.tolerance.si ?? half));
  const worst = Math.max(...Object.values(a).map((v) => Math.abs(v)));
  return {
    key: 'attitude@coach',
    verdict: worst > tolerance ? 'high' : 'within',
    words: parts.length === 0 ? 'coach stands level and at height' : `coach as a whole: ${parts.join(', ')}`,
    amount: shown(worst, unit, half / 2, { difference: true }),
    limit: {
      high: shown(tolerance, unit, half, { difference: true }),
      source: sheetSource('heights, widest tolerance of the corners'),
    },
    because: all.map((f) => f.id),
    why: {
      formula: 'offsets of the corners split into heave + pitch + roll + twist, each a quarter of a signed sum',
      inputs: [
        ...all.map((f) => inputOf(f.where.v, f)),
        ...corners.map((k, i) => ({
          name: `${cornerPlace[k]} wanted`,
          text: shown(nominals[i]!, unit, half / 4).text,
          from: `sheet: heights.${k}`,
        })),
      ],
      source: physics('geometry of four points'),
      notes: [
        Math.abs(a.twist) > Math.max(half, tolerance / 2)
          ? 'twist is what an uneven floor, a soft front corner or one rear valve off its height leaves: bellows pressures tell them apart'
          : 'little twist: the four corners lie in one plane',
        'order: tyres and floor, rear heights, front heights, rear again (common practice, no source)',
      ],
    },
    drawing,
  };
};

/** "3/8 low": said against where it should be, without the height itself. */
const saidOff = (c: Case, fact: ReadingFact): Finding => {
  // A side without its end is the rear one: there the air is. An end without a side goes by its left corner's tolerance.
  const parts = takePlace(fact.where.v);
  const which =
    cornerOf(fact.where.v) ??
    (parts?.side && parts.side !== 'both'
      ? cornerOf(`${parts.side} rear`)
      : parts?.end
        ? cornerOf(`left ${parts.end}`)
        : null);
  const unit = unitOf(fact);
  const off = middle(fact.amount.v);
  const half = tapeHalf(c, fact);
  const tolerance = which ? c.sheet.heights?.[which]?.tolerance : undefined;
  const verdict: Finding['verdict'] = !tolerance
    ? 'no limit'
    : Math.abs(off) <= tolerance.si * 1.0001
      ? 'within'
      : off < 0
        ? 'low'
        : 'high';
  const place = fact.where.v || 'coach';
  const side = which?.startsWith('left') ? 'left' : 'right';
  return {
    key: `height@${place}`,
    verdict,
    words: `${size(off, unit, half)} ${off < 0 ? 'low' : 'high'} ${place}${verdict === 'within' ? ', within tolerance' : ''}`,
    amount: shown(off, unit, half, { difference: true }),
    ...(tolerance
      ? {
          limit: {
            high: shown(tolerance.si, unit, tolerance.pm, { difference: true }),
            source: sheetSource(`heights.${which}.tolerance`),
          },
        }
      : {}),
    because: [fact.id],
    why: {
      formula: 'offset as said, against the tolerance',
      inputs: [
        inputOf('height off', fact),
        ...(tolerance ? [sheetInput('tolerance', tolerance, `heights.${which}.tolerance`)] : []),
      ],
      source: tolerance ? sheetSource(`heights.${which}.tolerance`) : practice(),
      notes: ['assumed: said at ride height, on a level floor', ...(which ? remedy(c, which, off, unit, half) : [])],
    },
    ...(!which ? { wants: { field: 'where', question: 'Which corner is it?' } } : {}),
    ...(which && !tolerance
      ? {
          wants: {
            field: `heights.${which}`,
            question: `What should the ${place} height be, and with what tolerance?`,
          },
        }
      : {}),
    ...(which && verdict !== 'no limit' && !asFound(c, fact)
      ? { evidence: [{ see: `${side} ${which.endsWith('Rear') ? 'rear' : 'front'} height`, outcome: verdict }] }
      : {}),
  };
};

export const heights: Judge = {
  subject: 'heights',
  judge: (c) => {
    const fresh = touched(c, 'height').filter((f) => cornerOf(f.where.v) !== null);
    const newest = new Map(fresh.map((f) => [cornerOf(f.where.v)!, f]));
    const out: Finding[] = [...newest].map(([which, fact]) => corner(c, fact, which));
    const last = fresh.at(-1);
    if (last) {
      const set = setWith(c, last);
      for (const end of ['front', 'rear'] as const) {
        const touchedEnd = [...newest.keys()].some((k) => k.endsWith(end === 'front' ? 'Front' : 'Rear'));
        const found = touchedEnd ? across(c, set, end) : null;
        if (found) out.push(found);
      }
      const whole = attitude(c, set);
      if (whole) out.push(whole);
    }
    for (const fact of c.fresh) if (fact.is === 'reading' && fact.what.v === 'height off') out.push(saidOff(c, fact));
    return out;
  },
};
