/** How long a falling tank lasts, in an owner's words. Gauge pressures, Pa. */
import { timeToPressure } from '../core/decay.ts';
import { type AbsolutePressure, si } from '../core/quantity.ts';
import { spell } from './show.ts';

export type Lasts = {
  readonly name: string;
  readonly straight: number;
  readonly decay: number;
  readonly earliest: number;
  readonly latest: number;
};

/**
 * Seconds from `now` to `target`: in a straight line at the present rate (a fed bellows leak), along the decay (a hole
 * on the tank), and the earliest and latest that the interval of the leak constant allows over both.
 */
export const lasts = (
  name: string,
  now: number,
  target: number,
  k: { readonly low: number; readonly mid: number; readonly high: number },
  rateAtNow: (k: number) => number,
  atmosphere: AbsolutePressure,
): Lasts => {
  const straight = (kk: number): number => (now <= target ? 0 : kk > 0 ? (now - target) / rateAtNow(kk) : Infinity);
  const decay = (kk: number): number => timeToPressure(si(now), si(target), kk, atmosphere);
  return {
    name,
    straight: straight(k.mid),
    decay: decay(k.mid),
    earliest: Math.min(straight(k.high), decay(k.high)),
    latest: Math.max(straight(k.low), decay(k.low)),
  };
};

/** "3 to 5 hours": both ends spelled, once where they are alike. */
export const spellRange = (low: number, high: number): string => {
  if (!Number.isFinite(high)) return `${spell(low)} or much longer`;
  const a = spell(low);
  const b = spell(high);
  if (a === b) return a;
  const unit = / (minute|hour|day|month)s?$/;
  return unit.exec(a)?.[1] === unit.exec(b)?.[1] ? `${a.replace(unit, '')} to ${b}` : `${a} to ${b}`;
};
