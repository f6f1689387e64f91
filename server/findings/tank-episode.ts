/**
 * Readings of the tank that belong together: same gauge, same state of the coach, nobody pumping or working on it in
 * between. Only such readings make a fall.
 */
import type { Place, ReadingFact } from '../../intents/shapes.ts';
import { type Case, middle, readings, stateAt } from './case.ts';
import { switchedBetween } from './switched.ts';
import type { CoachState } from '../session/standing.ts';
import { doneMeaning } from '../session/works.ts';
import { readingDeviation, timeDeviation } from '../core/reading-error.ts';
import type { TankReading } from '../core/decay.ts';
import { si } from '../core/quantity.ts';

/** Places whose pressure is the tank's. */
export const tankSide = (place: Place): boolean => /^(?:tank|gauge|test port|drain|)$/.test(place);

/** Heat of pumping is gone after about this long. Common practice, no published source. */
export const settleSeconds = 900;
const longest = 36 * 3_600_000;
/** Readings that one fall is fitted to at most: a logger's file is thinned to fewer, and the work must stay bounded. */
const most = 80;

export type Timed = {
  readonly fact: ReadingFact;
  readonly at: number;
  readonly p: number;
  readonly sd: number;
  readonly tSd: number;
};
export type Episode = { readonly points: readonly Timed[]; readonly state: CoachState };

/** Division the reading was taken to: what was typed or the gauge's, whichever is coarser. */
export const divisionOf = (c: Case, fact: ReadingFact): number =>
  Math.max(2 * fact.amount.v.pm, c.sheet.supply?.gaugeStep?.si ?? 0, 1);

const clockStep = (fact: ReadingFact): number =>
  fact.when?.ago === undefined && fact.when?.after === undefined ? 60 : 120;

const pointOf = (c: Case, fact: ReadingFact): Timed => ({
  fact,
  at: fact.at,
  p: middle(fact.amount.v),
  sd: readingDeviation(divisionOf(c, fact)),
  tSd: timeDeviation(fact.when ? clockStep(fact) : 10),
});

/** The reading before it that "116 down to 109 in 15 min" carries in itself. */
const withStart = (c: Case, fact: ReadingFact): Timed[] => {
  const end = pointOf(c, fact);
  if (!fact.from || !fact.over) return [end];
  const start = fact.from.v;
  return [
    { ...end, at: fact.at - fact.over.v.si * 1000, p: middle(start), tSd: 0 },
    { ...end, tSd: timeDeviation(2 * fact.over.v.pm) },
  ];
};

/** Work on the air side, pumping or a rise of the gauge ends an episode. */
const breaks = (c: Case, a: Timed, b: Timed, watched: boolean): boolean => {
  const one = stateAt(c, a.fact);
  const two = stateAt(c, b.fact);
  if (b.at - a.at > longest || switchedBetween(c, a.fact, b.fact, watched)) return true;
  if (two.pump === true) return true;
  if (two.pumpedAt !== null && two.pumpedAt > a.at && two.pumpedAt !== one.pumpedAt) return true;
  if (b.p - a.p > 3 * Math.hypot(a.sd, b.sd)) return true;
  return c.facts.some((f) => doneMeaning(f, 'tank') && f.at > a.at && f.at <= b.at);
};

/** The coach's own gauge, however it was named, against a second one at the test port. */
const sameGauge = (a: ReadingFact, b: ReadingFact): boolean =>
  (a.where.v === 'test port') === (b.where.v === 'test port');

/** "tank 118 last night": of no hour, so of no rate; the hours it stood tell (judges/tank-overnight.ts). */
export const undated = (f: ReadingFact): boolean => f.when?.day !== undefined && f.when.clock === undefined;

/** The run of readings that ends with `last`. */
export const episodeOf = (c: Case, last: ReadingFact): Episode => {
  const all = readings(c, 'pressure', tankSide).filter(
    (f) => sameGauge(f, last) && f.at <= last.at && f.id !== last.id && !undated(f),
  );
  const points = withStart(c, last);
  const first = all.find((f) => last.at - f.at <= longest && stateAt(c, f).panel === null);
  for (const fact of all.toReversed()) {
    if (points.length >= most) break;
    const before = withStart(c, fact);
    // the same figure at the same moment is one reading, however often it was typed
    if (before.length === 1 && before[0]!.at === points[0]!.at && before[0]!.p === points[0]!.p) continue;
    if (
      before.at(-1)!.at > points[0]!.at ||
      stateAt(c, fact).pump === true ||
      breaks(c, before.at(-1)!, points[0]!, fact !== first)
    )
      break;
    points.unshift(...before);
  }
  const state = points
    .map((p) => stateAt(c, p.fact))
    .reduce((a, b) => ({
      ...b,
      panel: b.panel ?? a.panel,
      key: b.key ?? a.key,
      outletClosed: b.outletClosed ?? a.outletClosed,
    }));
  return { points, state };
};

/** Seconds from a common start, for the fit. */
export const fitPoints = (points: readonly Timed[]): TankReading[] =>
  points.map((p) => ({ t: (p.at - points[0]!.at) / 1000, p: si(p.p), sd: p.sd, tSd: p.tSd }));
