/** Which way the pressure switch's nut goes, what that moves, and when turning it cannot help: one place for finding and answer. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { si } from '../core/quantity.ts';
import { type Advice, adviseSwitch, shiftsOf } from '../core/switch-band.ts';
import type { Unit } from '../core/units.ts';
import { type Case, type Range, middle, spread } from './case.ts';
import { rangeWords } from './limits.ts';
import { shown } from './show.ts';
import { switchRange } from './judges/tank-pressure.ts';

/** A switch point as it is now, SI with its half resolution. */
export type Point = { readonly p: number; readonly pm: number; readonly from: string; readonly text: string };
type Closed = { readonly low: number; readonly high: number };

export const pointOf = (fact: ReadingFact, text: string): Point => ({
  p: middle(fact.amount.v),
  pm: spread(fact.amount.v),
  from: fact.id,
  text,
});

const closed = (range: Range | null, half: number): Closed | null =>
  range?.low && range.high ? { low: range.low.si - half, high: range.high.si + half } : null;

/** What to do with the nut when both points are known; null where the limits are not. */
export const adviceFor = (c: Case, cutIn: Point, cutOut: Point): Advice | null => {
  const low = closed(switchRange(c, 'cut-in'), cutIn.pm);
  const high = closed(switchRange(c, 'cut-out'), cutOut.pm);
  return low && high && cutOut.p > cutIn.p
    ? adviseSwitch({ cutIn: si(cutIn.p), cutOut: si(cutOut.p) }, low, high)
    : null;
};

const by = (pa: number, unit: Unit, pm: number): string => shown(Math.abs(pa), unit, pm / 2, { difference: true }).text;

/** Short, behind the difference of both points; '' where nothing is to be done. */
export const cureWords = (advice: Advice | null, unit: Unit, pm: number): string =>
  advice === null || advice.do === 'leave'
    ? ''
    : advice.do === 'turn'
      ? `; turn the nut ${advice.by > 0 ? 'in' : 'out'} until both points stand about ${by(advice.by, unit, pm)} ${advice.by > 0 ? 'higher' : 'lower'}: that brings both right`
      : `; ${advice.why}: the nut moves both points and cannot mend that, renew the switch`;

export const nutNotes: readonly string[] = [
  'the spring nut moves cut-in and cut-out together: in (tighter) raises both, out lowers both (common practice, no source)',
  'check the gauge against a second one before the nut is touched; cut the power first',
];

/** One point only: the way and how far it alone asks for, and where the other one must stand now for that to help. */
export type OneSided = { readonly way: 'in' | 'out' | null; readonly by: number; readonly other: Closed };
export const oneSided = (c: Case, which: 'cut-in' | 'cut-out', point: Point): OneSided | null => {
  const mine = closed(switchRange(c, which), point.pm);
  const other = closed(switchRange(c, which === 'cut-in' ? 'cut-out' : 'cut-in'), 0);
  if (!mine || !other) return null;
  const shifts = shiftsOf(point.p, mine);
  const way = shifts.low > 0 ? 'in' : shifts.high < 0 ? 'out' : null;
  return {
    way,
    by: way === null ? 0 : (shifts.low + shifts.high) / 2,
    other: { low: other.low - shifts.high, high: other.high - shifts.low },
  };
};

export const limitsSaid = (c: Case, which: 'cut-in' | 'cut-out', unit: Unit): string => {
  const range = switchRange(c, which);
  return range ? `${rangeWords(range, unit)} (${range.source.words})` : 'no limit known';
};
