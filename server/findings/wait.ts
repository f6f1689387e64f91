/** How long to go on before a gauge can settle a question. */
import type { TankReading } from '../core/decay.ts';
import { z95 } from '../core/line-fit.ts';

/**
 * Seconds from the last reading until one more reading would part the rate from `limit` (Pa/s), were the rate to stay
 * near `rate`: the 95 % half-width of the slope has to come under their distance, or under a quarter of the limit where
 * they lie closer. Rounded up to 5 min; at most a day.
 */
export const waitFor = (readings: readonly TankReading[], limit: number, rate: number): number => {
  const last = readings.at(-1)!;
  const aim = Math.max(Math.abs(limit - Math.max(0, rate)), limit / 4);
  for (let wait = 300; wait < 86_400; wait += 300) {
    const times = [...readings.map((r) => r.t), last.t + wait];
    const mean = times.reduce((a, b) => a + b, 0) / times.length;
    const sxx = times.reduce((a, t) => a + (t - mean) ** 2, 0);
    if ((z95 * last.sd) / Math.sqrt(sxx) < aim) return wait;
  }
  return 86_400;
};
