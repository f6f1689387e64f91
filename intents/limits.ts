/**
 * What a reading can plausibly be: outside, it is read, held back and asked about. SI, gauge for pressures.
 * Common practice, no source: wide enough for any coach, narrow enough to catch a slipped digit.
 */
import type { Measure } from './shapes.ts';

const psi = 6894.757293168361;
const inch = 0.0254;
const deg = Math.PI / 180;
const plausible: Readonly<Partial<Record<Measure, readonly [low: number, high: number]>>> = {
  pressure: [0, 200 * psi],
  'pressure fall': [0, 200 * psi],
  'pressure rise': [0, 200 * psi],
  'pump-up': [0, 200 * psi],
  'cut-in': [20 * psi, 180 * psi],
  'cut-out': [40 * psi, 200 * psi],
  height: [2 * inch, 45 * inch],
  'height off': [-12 * inch, 12 * inch],
  'height fall': [-12 * inch, 12 * inch],
  voltage: [0, 32],
  'voltage drop': [0, 16],
  'load test': [0, 16],
  current: [0, 120],
  temperature: [215, 480],
  humidity: [0, 1],
  altitude: [-500, 6000],
  barometer: [50_000, 110_000],
  // as much as the largest tanks of a coach hold
  'water drained': [0, 0.08],
  toe: [-3 * inch, 3 * inch],
  camber: [-8 * deg, 8 * deg],
  'standing time': [0, 366 * 86_400],
  'dead band': [0, 4 * inch],
  delay: [0, 300],
};

/** Bare numbers that can be a height: in the coach's unit. */
export const heightRange = { in: [4, 40], mm: [100, 1000], cm: [10, 100] } as const;

/** Whether `measure` can be `si` at all. */
export const canBe = (measure: Measure, si: number): boolean => {
  const [low, high] = plausible[measure] ?? [-Infinity, Infinity];
  return si >= low - 1e-9 && si <= high + 1e-9;
};
