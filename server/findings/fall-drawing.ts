/** The course of a fall: its drawing, and its shape in words. */
import { type DecayFit, timeToPressure } from '../core/decay.ts';
import { fitLine, z95 } from '../core/line-fit.ts';
import { type AbsolutePressure, si } from '../core/quantity.ts';
import type { Drawing } from './finding.ts';
import type { Timed } from './tank-episode.ts';
import type { Fall } from './tank-fall.ts';

export const chart = (
  points: readonly Timed[],
  fit: DecayFit,
  unit: Extract<Drawing, { is: 'chart' }>['unit'],
  atmosphere: AbsolutePressure,
  limits: { si: number; label: string }[],
  stopped: Fall['stopped'],
): Drawing => {
  const t0 = points[0]!.at;
  const span = (points.at(-1)!.at - t0) / 1000;
  const seconds = (p: Timed): number => (p.at - t0) / 1000;
  // down to where it stopped, then level
  const last = stopped?.points.at(-1);
  const knee =
    stopped && last
      ? Math.min(
          seconds(last),
          Math.max(span, timeToPressure(si(fit.pressureAt(0)), si(stopped.at), fit.k, atmosphere)),
        )
      : null;
  return {
    is: 'chart',
    unit,
    points: [...points, ...(stopped?.points ?? [])].map((p) => ({ t: (p.at - t0) / 1000, si: p.p, pm: z95 * p.sd })),
    fit: [
      ...Array.from({ length: 13 }, (_, i) => ((knee ?? span * 1.5) * i) / 12).map((t) => ({
        t,
        si: Math.max(fit.pressureAt(t), stopped?.at ?? -Infinity),
      })),
      ...(stopped && last ? [{ t: seconds(last), si: stopped.at }] : []),
    ],
    limits,
  };
};

/** Falls of this many deviations are a step, of less than one a rest. An estimate of ours. */
const step = 4;

/** A height valve that feeds a leaking side now and then: the tank rests, and falls a step each time it acts. */
const inSteps = (points: readonly Timed[]): boolean => {
  const falls = points.slice(1).map((p, i) => (points[i]!.p - p.p) / Math.max(p.sd, points[i]!.sd));
  const steps = falls.filter((f) => f >= step).length;
  const rests = falls.filter((f) => Math.abs(f) <= 1).length;
  return steps >= 2 && rests >= 2 && steps + rests === falls.length;
};

/** Whether the fall is straight (a bellows fed from the tank) or slows with the pressure (a hole on the tank), if it shows. */
export const shapeOf = (points: readonly Timed[], decayChi2: number): string | null => {
  if (points.length < 4) return null;
  if (inSteps(points))
    return 'the fall goes in steps, as of a tank that feeds a leaking side each time its height valve acts';
  const t0 = points[0]!.at;
  const straight = fitLine(points.map((p) => ({ x: (p.at - t0) / 1000, y: p.p, sd: p.sd }))).chi2;
  if (Math.abs(straight - decayChi2) < 6) return null;
  return straight < decayChi2
    ? 'the fall is straight, as of a tank that feeds a leaking side at constant pressure'
    : 'the fall slows with the pressure, as of a hole on the tank side';
};
