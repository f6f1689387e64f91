/** Air shut in at constant volume (Gay-Lussac) or constant load (Charles). Gauge pressures, K. */
import { absolute } from './air.ts';
import {
  type AbsolutePressure,
  type GaugePressure,
  ImpossibleInput,
  type Length,
  type Temperature,
  positive,
  si,
} from './quantity.ts';

/** Gauge pressure of the same air in the same volume at another temperature: (p + pa) T2/T1 - pa. Tyres and tanks. */
export const atTemperature = (
  pressure: GaugePressure,
  from: Temperature,
  to: Temperature,
  atmosphere: AbsolutePressure,
): GaugePressure => {
  const [a, b] = [positive('temperature', from), positive('temperature', to)];
  // by the change, so that a hair's difference of temperature is not lost in the rounding of the whole
  return si(pressure + (absolute(pressure, atmosphere) * (b - a)) / a);
};

/** Cooling, K, positive, that makes `pressure` fall by `fall` with no leak: T (fall / p_abs). */
export const coolingThatImitates = (
  pressure: GaugePressure,
  fall: number,
  at: Temperature,
  atmosphere: AbsolutePressure,
): number => {
  const p = absolute(pressure, atmosphere);
  if (!(fall >= 0 && fall < p))
    throw new ImpossibleInput('fall', fall, 'it must be from 0 to below the absolute pressure');
  return (positive('temperature', at) * fall) / p;
};

/**
 * Sink of a coach, m, on a bellows shut in under constant load that cools: the volume, and with it the length of a
 * rolling-lobe bellows, follows absolute temperature. `length` of the air column (plate to plate), `lever` bellows travel
 * for frame travel. Positive: sinks.
 */
export const sinkByCooling = (length: Length, lever: number, from: Temperature, to: Temperature): Length =>
  si(
    (positive('bellows length', length) * (1 - positive('temperature', to) / positive('temperature', from))) /
      positive('lever ratio', lever),
  );
