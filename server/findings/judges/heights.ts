/** Heights of the four corners, each against the sheet. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import type { Corner } from '../../core/heights.ts';
import {
  type Case,
  type Judge,
  inputOf,
  isReading,
  physics,
  readings,
  stateAt,
  touched,
  unitOf,
  verdictOf,
} from '../case.ts';
import { carries, cornerTyres, isTyre } from '../corner-tyres.ts';
import { cornerOf, cornerPlace, heightRange, heightValue, nominalOf, tapeHalf } from '../corner-sheet.ts';
import { isLater } from '../tape-episode.ts';
import type { Finding } from '../finding.ts';
import { limitOf, rangeInputs, stripOf } from '../limits.ts';
import { shown, typed } from '../show.ts';
import { isAsFound, tankDown } from '../as-found.ts';
import { remedy, size } from '../height-remedy.ts';

/** How far stops and tyres give under a side that has come down on them. Half an inch, an estimate of ours. m */
const stopsGive = 0.012;

const corner = (c: Case, fact: ReadingFact, which: Corner): Finding => {
  const unit = unitOf(fact);
  const half = tapeHalf(c, fact);
  const value = heightValue(fact);
  const range = heightRange(c, which);
  const nominal = nominalOf(range);
  const tyres = range ? cornerTyres(c, which, fact.at) : null;
  // What the tape would show with the tyres right, where the sheet says how far they move it.
  const rise = tyres?.rise ?? null;
  const atSheet = value - (rise?.si ?? 0);
  const verdict = verdictOf(atSheet, rise?.pm ?? 0, range);
  const most = tyres?.most ?? 0;
  const stands = verdictOf(value - most, 0, range) === verdict && verdictOf(value + most, 0, range) === verdict;
  const place = cornerPlace[which];
  const found = isAsFound(c, fact);
  const off = nominal === null ? null : value - nominal;
  const truly = nominal === null ? null : atSheet - nominal;
  const stops = c.sheet.heights?.toStops;
  const down = off !== null && stops && which.endsWith('Rear') && -off >= stops.si - 2 * half;
  // Rubber gives: a side this near its stops rests on them, as the simulated coach counts it.
  const rests = off !== null && stops && which.endsWith('Rear') && -off >= stops.si - stopsGive;
  const said = typed(fact.amount.v);
  const against = (by: number): string =>
    Math.abs(by) < half * 0.999 ? "on the sheet's height" : `${size(by, unit, half)} ${by < 0 ? 'low' : 'high'}`;
  const plainWords =
    off === null
      ? `${place} ${said}`
      : down
        ? `${place} on its stops: ${size(off, unit, half)} low (${said})`
        : Math.abs(off) < half * 0.999
          ? `${place} ${said}, on the sheet's height`
          : `${size(off, unit, half)} ${off < 0 ? 'low' : 'high'} ${place} (${said})${verdict === 'within' ? ', within tolerance' : ''}`;
  const words =
    tyres === null || off === null || truly === null
      ? plainWords
      : rise === null
        ? `${plainWords}; not with the tyres right: set ${tyres.set.join(', ')} first`
        : `${plainWords.replace(/, within tolerance$/, '')}; with the tyres right ${against(truly)}${verdict === 'within' ? ', within tolerance' : ''}`;
  const level = verdict === 'within' ? 'level' : verdict === 'low' ? (rests ? 'on stops' : 'low') : null;
  const side = which.startsWith('left') ? 'left' : 'right';
  const rear = which.endsWith('Rear');
  // A height that has stood, or behind a shut panel, is not what the valve levels to.
  const panel = stateAt(c, fact).panel;
  const airless = rear && !found && tankDown(c, fact, side);
  const ride = !isLater(c, fact) && !airless && (panel === null || panel === 'auto');
  const evidence =
    verdict === 'no limit'
      ? []
      : found
        ? rear && level && !isLater(c, fact)
          ? [{ see: `${side} as found`, outcome: level }]
          : []
        : airless && level && panel !== 'shut' && stateAt(c, fact).arm[side] === null
          ? [{ see: `${side} tank down`, outcome: level === 'level' ? 'holds' : 'sinks' }]
          : // A corner on tyres that are off does not speak against valve or link unless it can be corrected or is off by more than tyres can do.
            ride && (tyres === null || rise !== null || stands)
            ? [{ see: `${side} ${rear ? 'rear' : 'front'} height`, outcome: verdict }]
            : [];
  const notes = found
    ? ['taken as found, after standing']
    : ride
      ? [
          `assumed: measured at ride height, valves settled, on a level floor${tyres === null ? ', tyres at the sheet pressure' : ''}`,
        ]
      : airless
        ? ['taken with the tank down: not the height the valve levels to']
        : ['taken after standing or with the panel not in automatic: not the height the valve levels to'];
  if (tyres) {
    notes.push(...tyres.notes);
    if (rise)
      notes.push(
        `stands ${size(rise.si, unit, half)} ${rise.si < 0 ? 'lower' : 'higher'} by its tyres, give or take ${size(rise.pm, unit, Math.min(half, rise.pm))}`,
      );
    notes.push(`first set ${tyres.set.join(', ')}, then tape it again`);
  } else if (!found && ride && (verdict === 'low' || verdict === 'high'))
    notes.push(...remedy(c, which, off ?? 0, unit, half));
  const shownValue = off === null ? shown(value, unit, half) : shown(off, unit, half, { difference: true });
  return {
    key: `height@${place}`,
    verdict,
    words,
    amount: shownValue,
    ...(range ? { limit: limitOf(range, unit) } : {}),
    because: [fact.id, ...(range?.because ?? []), ...(tyres?.because ?? [])],
    why: {
      formula: rise
        ? 'height read less the height wanted, less the rise by the tyres (rise for a pressure x pressure over the one wanted), against the tolerance'
        : 'height read less the height wanted, against the tolerance',
      inputs: [
        inputOf(place, fact),
        ...(range?.nominal
          ? [{ name: 'wanted', text: shown(range.nominal.si, unit, 0).text, from: range.source.words }]
          : []),
        ...(tyres?.inputs ?? []),
        ...rangeInputs(range, unit),
      ],
      source: range?.source ?? physics('the reading itself'),
      notes,
    },
    drawing: stripOf(range, unit, [
      { si: value, pm: half, label: said },
      ...(rise ? [{ si: atSheet, pm: half + rise.pm, label: 'with the tyres right' }] : []),
    ]),
    ...(range
      ? tyres?.wants
        ? {
            wants: {
              field: 'tyres.rise',
              question: 'How far does a corner rise for so much more pressure in its tyres?',
            },
          }
        : {}
      : {
          wants: {
            field: `heights.${which}`,
            question: `What should the ${place} height be, and with what tolerance?`,
          },
        }),
    ...(evidence.length > 0 ? { evidence } : {}),
  };
};

export const heights: Judge = {
  subject: 'heights',
  judge: (c) => {
    const newest = new Map(touched(c, 'height').map((f) => [cornerOf(f.where.v), f]));
    // A tyre read after the heights puts them in another light.
    const tyres = c.fresh.filter((f) => isReading(f) && f.what.v === 'pressure' && isTyre(f.where.v));
    if (tyres.length > 0)
      for (const f of readings(c, 'height')) {
        const which = cornerOf(f.where.v);
        if (which !== null && tyres.some((t) => carries(t.where.v, which))) newest.set(which, f);
      }
    return [...newest].flatMap(([which, fact]) => (which === null ? [] : [corner(c, fact, which)]));
  },
};
