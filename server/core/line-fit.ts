/** A straight line through points of known scatter: weighted least squares. General; no units of its own. */
import { ImpossibleInput } from './quantity.ts';

/** `sd`: standard deviation of y, known beforehand (never estimated from the scatter). */
export type Point = { readonly x: number; readonly y: number; readonly sd: number };
export type Line = {
  readonly slope: number;
  readonly slopeSd: number;
  /** Value at x = 0 and its deviation; at `mean` the two errors are independent. */
  readonly at0: number;
  readonly mean: { readonly x: number; readonly y: number; readonly sd: number };
  /** Sum of squared residuals over sd squared: about points minus 2 where the line is true. */
  readonly chi2: number;
};

/**
 * Least squares with weights 1/sd^2; slope variance = 1 / sum w (x - mean x)^2.
 * Raises ImpossibleInput for fewer than two distinct x or an sd that is not above zero.
 */
export const fitLine = (points: readonly Point[]): Line => {
  let w = 0;
  let wx = 0;
  let wy = 0;
  for (const p of points) {
    if (!(p.sd > 0)) throw new ImpossibleInput('standard deviation', p.sd, 'it must be above zero');
    const weight = 1 / p.sd ** 2;
    w += weight;
    wx += weight * p.x;
    wy += weight * p.y;
  }
  const x = wx / w;
  const y = wy / w;
  let sxx = 0;
  let sxy = 0;
  for (const p of points) {
    sxx += (p.x - x) ** 2 / p.sd ** 2;
    sxy += ((p.x - x) * (p.y - y)) / p.sd ** 2;
  }
  if (!(sxx > 0)) throw new ImpossibleInput('number of distinct readings', points.length, 'a line needs two');
  const slope = sxy / sxx;
  const at0 = y - slope * x;
  const chi2 = points.reduce((sum, p) => sum + ((p.y - at0 - slope * p.x) / p.sd) ** 2, 0);
  return { slope, slopeSd: Math.sqrt(1 / sxx), at0, mean: { x, y, sd: Math.sqrt(1 / w) }, chi2 };
};

/** Two-sided 95 % of a normal distribution. */
export const z95 = 1.959964;
