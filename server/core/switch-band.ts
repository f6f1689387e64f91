/** A pressure switch: its two points and what turning its nut can and cannot mend. Gauge pressures, Pa. */
import { type GaugePressure, ImpossibleInput, si } from './quantity.ts';

export type Points = { readonly cutIn: GaugePressure; readonly cutOut: GaugePressure };
export type Advice =
  | { readonly do: 'leave' }
  /** Turn the nut: both points move by `by` Pa (positive: in, both rise). */
  | { readonly do: 'turn'; readonly by: number }
  /** The difference itself is wrong: the nut moves both points alike and cannot mend it. */
  | { readonly do: 'renew'; readonly why: 'too close' | 'too far apart' };

type Range = { readonly low: number; readonly high: number };

/** Difference of the points, Pa. Raises ImpossibleInput where cut-out is not above cut-in. */
export const bandOf = ({ cutIn, cutOut }: Points): number => {
  if (!(cutOut > cutIn)) throw new ImpossibleInput('cut-out', cutOut, 'it must be above cut-in');
  return cutOut - cutIn;
};

/** Shifts, Pa, that bring a point at `p` into `range`: the least and the most of them. */
export const shiftsOf = (p: number, range: Range): Range => ({ low: range.low - p, high: range.high - p });

/**
 * Leave, turn or renew: turning helps when one shift of both points brings both into their ranges (common practice, no
 * source: the nut moves both together). The shift is the middle of those that do.
 */
export const adviseSwitch = (points: Points, cutIn: Range, cutOut: Range): Advice => {
  const band = bandOf(points);
  const [first, second] = [shiftsOf(points.cutIn, cutIn), shiftsOf(points.cutOut, cutOut)];
  const low = Math.max(first.low, second.low);
  const high = Math.min(first.high, second.high);
  if (low <= 0 && high >= 0) return { do: 'leave' };
  if (low <= high) return { do: 'turn', by: si((low + high) / 2) };
  const middle = (cutOut.low + cutOut.high - cutIn.low - cutIn.high) / 2;
  return { do: 'renew', why: band < middle ? 'too close' : 'too far apart' };
};
