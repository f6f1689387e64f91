/**
 * Where a fall stops. A tank that feeds a leaking bellows falls until it is down to the bellows' pressure and sits there;
 * one that leaks itself goes on to zero; heat settles and flattens. Two legs are fitted: a decay, then a level stretch.
 */
import { type TankReading, fitDecay } from './decay.ts';
import { fitLine, z95 } from './line-fit.ts';
import { type AbsolutePressure, type GaugePressure, si } from './quantity.ts';

export type Knee = {
  /** Gauge pressure at which it stops, and its deviation. */
  readonly at: GaugePressure;
  readonly sd: number;
  /** Index of the first reading on the level stretch. */
  readonly from: number;
};

/** Places tried for the knee, spread evenly: work grows with the readings, not their square. A limit of ours. */
const mostSplits = 100;

/**
 * The knee of a fall, or null where one steady decay explains the readings as well. Needs four readings, two on each
 * side. It counts when two legs fit better by more than 9 (chi squared), the second leg is level within the gauge, and the
 * first leg, had it gone on, would have fallen clear of it.
 */
export const kneeOf = (readings: readonly TankReading[], atmosphere: AbsolutePressure): Knee | null => {
  const usable = readings.filter((r) => r.p > 2 * r.sd);
  if (readings.length < 4) return null;
  const one = usable.length >= 2 ? fitDecay(readings, atmosphere).chi2 : Infinity;
  let best: { chi2: number; knee: Knee } | null = null;
  const step = Math.max(1, Math.ceil((readings.length - 3) / mostSplits));
  for (let i = 2; i <= readings.length - 2; i += step) {
    const first = readings.slice(0, i);
    const rest = readings.slice(i);
    if (first.filter((r) => r.p > 2 * r.sd).length < 2 || first[0]!.t === first.at(-1)!.t) continue;
    const fall = fitDecay(first, atmosphere);
    const w = rest.reduce((sum, r) => sum + 1 / r.sd ** 2, 0);
    const level = rest.reduce((sum, r) => sum + r.p / r.sd ** 2, 0) / w;
    const flat = rest.reduce((sum, r) => sum + ((r.p - level) / r.sd) ** 2, 0);
    const slope = rest[0]!.t === rest.at(-1)!.t ? null : fitLine(rest.map((r) => ({ x: r.t, y: r.p, sd: r.sd })));
    if (slope && Math.abs(slope.slope) > z95 * slope.slopeSd) continue;
    const wouldBe = fall.pressureAt(rest.at(-1)!.t);
    if (fall.k < z95 * fall.kSd || level - wouldBe < 3 * rest.at(-1)!.sd) continue;
    const chi2 = fall.chi2 + flat;
    if (!best || chi2 < best.chi2) best = { chi2, knee: { at: si(level), sd: Math.sqrt(1 / w), from: i } };
  }
  return best && best.chi2 + 9 < one ? best.knee : null;
};
