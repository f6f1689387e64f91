/** What a pressure at which the tank's fall stops is of: the bellows, the protection valve, or neither. */
import type { AbsolutePressure } from '../core/quantity.ts';
import { higherBellows } from './bellows-pressure.ts';
import type { Case } from './case.ts';

/** Air pumped 25 K over what is around it cools by 25 / 300. An estimate of ours. */
export const mostByCooling = 0.08;

/** `at` gauge Pa; `step` the gauge's division. */
export const stoppedAt = (c: Case, at: number, step: number) => {
  const bellows = higherBellows(c);
  const { protection } = c.sheet.supply ?? {};
  const near = (p: number): boolean => Math.abs(at - p) <= Math.max(1.5 * step, 0.08 * p);
  return {
    bellows,
    protection,
    atBellows: bellows !== null && near(bellows.p),
    atProtection: protection !== undefined && near(protection.si),
  };
};

/**
 * A fall no longer than cooling takes, that stopped where neither bellows nor protection valve would hold it: hot air
 * settled. Where the bellows' pressure is not known it may have been theirs.
 */
export const settledBy = (c: Case, from: number, at: number, step: number, atmosphere: AbsolutePressure): boolean => {
  const { bellows, atBellows, atProtection } = stoppedAt(c, at, step);
  return bellows !== null && !atBellows && !atProtection && at > 0 && from - at <= mostByCooling * (from + atmosphere);
};
