/** What a tyre's pressure does to a height that is taken from the floor. SI, gauge pressures. */
import { type GaugePressure, ImpossibleInput, type Length, type PressureChange, positive, si } from './quantity.ts';

/** Measured on the coach itself: it rises by `height` at that corner for `pressure` more in the tyre, load unchanged. */
export type TyreRise = { readonly height: Length; readonly pressure: PressureChange };

/** Further than this share from the pressure wanted a straight line says nothing of a tyre: see tyreRise. */
export const tyreReach = 0.25;

/**
 * Rise, m (negative: stands lower), of a corner whose tyre has `now` where `wanted` is right, and its half width.
 * A tyre carries its load mostly by its air, so that its deflection goes about inversely as gauge pressure, the casing
 * left out (common practice, no source). Near `wanted` that is a straight line; the next term of the series is the
 * share of the pressure times the rise, and stands as the half width. Beyond `tyreReach` it refuses.
 */
export const tyreRise = (rise: TyreRise, wanted: GaugePressure, now: GaugePressure): { rise: Length; pm: Length } => {
  const share = (now - wanted) / positive('tyre pressure wanted', wanted);
  if (!(Math.abs(share) <= tyreReach))
    throw new ImpossibleInput('tyre pressure', now, 'it must be within a quarter of the pressure wanted');
  const up =
    (positive('tyre rise', rise.height) * (now - wanted)) / positive('pressure of the tyre rise', rise.pressure);
  return { rise: si(up), pm: si(Math.abs(up * share)) };
};
