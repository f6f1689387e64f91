/** Heights of one corner that belong together: nobody pumped, levelled or worked in between. Only such make a fall. */
import type { Fact, ReadingFact } from '../../intents/shapes.ts';
import type { TapeReading } from '../core/bellows-leak.ts';
import { sinkByCooling } from '../core/gas-law.ts';
import { si } from '../core/quantity.ts';
import { readingDeviation, timeDeviation } from '../core/reading-error.ts';
import { doneMeaning } from '../session/works.ts';
import { type Case, doings, readings, stateAt } from './case.ts';
import { heightValue, tapeHalf } from './corner-sheet.ts';
import { typed } from './show.ts';
import { switchedBetween } from './switched.ts';

/** Readings closer together than this are the same height measured again. */
const again = 5 * 60_000;
const longest = 36 * 3_600_000;
/** More readings than a tape is held to in one standing; the work must not grow with a session without bound. */
const most = 80;

const moves = (f: Fact): boolean =>
  doneMeaning(f, 'height') ||
  (f.is === 'condition' && f.holds && (f.what.v === 'driving' || f.what.v === 'engine running')) ||
  // it was moved to another floor, or turned out to stand on a slope
  (f.is === 'condition' && f.what.v === 'floor level');

/** Readings of the same place that lead up to `last`, oldest first, `last` among them. */
export const tapeSeries = (c: Case, last: ReadingFact): ReadingFact[] => {
  const out = [last];
  const earlier = readings(c, 'height', (p) => p === last.where.v).filter((f) => f.at <= last.at && f.id !== last.id);
  const moved = doings(c).filter(moves);
  for (const fact of earlier.toReversed()) {
    if (out.length >= most) break;
    const next = out.at(-1)!;
    const [a, b] = [stateAt(c, fact), stateAt(c, next)];
    const pumped = b.pumpedAt !== null && b.pumpedAt > fact.at && b.pumpedAt !== a.pumpedAt;
    const turned = switchedBetween(c, fact, next, fact !== earlier[0]);
    const driven = moved.some((f) => f.at > fact.at && f.at <= next.at && f.id.split('.')[0] !== fact.id.split('.')[0]);
    if (next.at - fact.at > longest || b.pump === true || pumped || turned || driven) break;
    out.push(fact);
  }
  return out.toReversed();
};

/** An earlier height of this corner stands in the same episode: this one is not a ride height any more. */
export const isLater = (c: Case, fact: ReadingFact): boolean => {
  const first = tapeSeries(c, fact)[0]!;
  return fact.at - first.at >= again;
};

export const spanOf = (series: readonly ReadingFact[]): number => (series.at(-1)!.at - series[0]!.at) / 1000;

/**
 * Sink by cooling alone, m of height at each reading against the first, where the air's temperature is known at both
 * ends and the bellows' length is on the sheet.
 */
export const coolingSink = (
  c: Case,
  series: readonly ReadingFact[],
): { at: (fact: ReadingFact) => number; note: string } | null => {
  const { rideLength, leverRatio } = c.sheet.springs ?? {};
  const near = (at: number): ReadingFact | undefined =>
    readings(c, 'temperature', (p) => p === 'ambient' || p === '').find((f) => Math.abs(f.at - at) <= 1_800_000);
  const [first, last] = [series[0]!, series.at(-1)!];
  const [a, b] = [near(first.at), near(last.at)];
  if (!rideLength || !a || !b || a === b) return null;
  const whole = sinkByCooling(si(rideLength.si), leverRatio ?? 1, si(a.amount.v.si), si(b.amount.v.si));
  return {
    at: (fact) => (whole * (fact.at - first.at)) / Math.max(1, last.at - first.at),
    note: `cooling taken out: ${typed(a.amount.v)} (${a.id}) to ${typed(b.amount.v)} (${b.id}) at constant load`,
  };
};

export const tapePoints = (
  c: Case,
  series: readonly ReadingFact[],
  cooling: ReturnType<typeof coolingSink>,
): TapeReading[] =>
  series.map((fact) => ({
    t: (fact.at - series[0]!.at) / 1000,
    h: si(heightValue(fact) + (cooling?.at(fact) ?? 0)),
    sd: readingDeviation(2 * tapeHalf(c, fact)),
    tSd: timeDeviation(fact.when ? 60 : 10),
  }));
