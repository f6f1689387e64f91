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

/**
 * Leave, turn or renew: turning helps when one shift of both points brings both into their ranges (common practice, no
 * source: the nut moves both together). The shift is the middle of those that do.
 */
export const adviseSwitch = (points: Points, cutIn: Range, cutOut: Range): Advice => {
  const band = bandOf(points);
  const low = Math.max(cutIn.low - points.cutIn, cutOut.low - points.cutOut);
  const high = Math.min(cutIn.high - points.cutIn, cutOut.high - points.cutOut);
  if (low <= 0 && high >= 0) return { do: 'leave' };
  if (low <= high) return { do: 'turn', by: si((low + high) / 2) };
  const middle = (cutOut.low + cutOut.high - cutIn.low - cutIn.high) / 2;
  return { do: 'renew', why: band < middle ? 'too close' : 'too far apart' };
};
