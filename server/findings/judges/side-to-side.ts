/** Left against right of each end, and all four corners as one attitude. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { type Corner, attitudeOf, corners, leanOf } from '../../core/heights.ts';
import { si } from '../../core/quantity.ts';
import { type Case, type Judge, inputOf, physics, sheetInput, sheetSource, touched, unitOf } from '../case.ts';
import { cornerOf, cornerPlace, heightRange, heightValue, nominalOf, setWith, tapeHalf } from '../corner-sheet.ts';
import { cornerTyres } from '../corner-tyres.ts';
import type { Drawing, Finding } from '../finding.ts';
import { shown, typed } from '../show.ts';
import { size } from '../height-remedy.ts';

/** What the tyres do to heights that are held against each other; nothing where they are right or were not read. */
const tyreNotes = (c: Case, facts: readonly ReadingFact[]): string[] => {
  const set = facts.flatMap((f) => cornerTyres(c, cornerOf(f.where.v)!, f.at)?.set ?? []);
  return set.length === 0
    ? []
    : [`as taped, not corrected for the tyres: first set ${[...new Set(set)].join(', ')}, then tape it again`];
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
  const verdict: Finding['verdict'] = limit
    ? Math.abs(apart) > limit.si + half * 1.0001
      ? 'high'
      : 'within'
    : 'no limit';
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
      notes: [
        ...(lean === null ? [] : [`lean ${shown(Math.abs(lean), 'deg', 0.0009).text}, measured across the track`]),
        ...tyreNotes(c, [left, right]),
      ],
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
  say(2 * a.pitch, 'nose up (front against rear)', 'nose down (front against rear)');
  say(2 * a.roll, 'leaning left (side against side)', 'leaning right (side against side)');
  say(2 * a.twist, 'twisted (left front and right rear up)', 'twisted (right front and left rear up)');
  const tolerance = Math.max(...corners.map((k) => c.sheet.heights?.[k]?.tolerance.si ?? half));
  const worst = Math.max(...Object.values(a).map((v) => Math.abs(v)));
  // one corner off its height is a quarter of itself in each of the four: named, so that it does not hide in them
  const away = corners.filter((k) => Math.abs(off[k]) > 2 * half);
  const alone = away.length === 1 && corners.every((k) => k === away[0] || Math.abs(off[k]) <= half) ? away[0]! : null;
  const aloneOut = alone !== null && Math.abs(off[alone]) > (c.sheet.heights?.[alone]?.tolerance.si ?? half);
  const lone =
    alone === null
      ? ''
      : `${cornerPlace[alone]} alone is off, ${size(off[alone], unit, half)} ${off[alone] < 0 ? 'low' : 'high'}: `;
  return {
    key: 'attitude@coach',
    verdict: worst > tolerance || aloneOut ? 'high' : 'within',
    words:
      parts.length === 0
        ? 'coach stands level and at height'
        : `coach as a whole: ${lone}${parts.join(', ')}; the most of these moves a corner by ${size(worst, unit, half / 2)}`,
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
        ...tyreNotes(c, all),
        Math.abs(a.twist) > Math.max(half, tolerance / 2)
          ? 'twist is what an uneven floor, a soft front corner or one rear valve off its height leaves: bellows pressures tell them apart'
          : 'little twist: the four corners lie in one plane',
        'order: tyres and floor, rear heights, front heights, rear again (common practice, no source)',
      ],
    },
    drawing,
  };
};

export const sideToSide: Judge = {
  subject: 'side to side',
  judge: (c) => {
    const fresh = touched(c, 'height').filter((f) => cornerOf(f.where.v) !== null);
    const last = fresh.at(-1);
    if (!last) return [];
    const set = setWith(c, last);
    const ends = (['front', 'rear'] as const).filter((end) => fresh.some((f) => f.where.v.endsWith(end)));
    return [...ends.map((end) => across(c, set, end)), attitude(c, set)].filter((f) => f !== null);
  },
};
