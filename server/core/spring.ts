/** Air spring: force, stiffness, natural frequency. Pressures gauge unless named absolute; SI. */
import { absolute } from './air.ts';
import {
  type AbsolutePressure,
  type Area,
  type Force,
  type Frequency,
  type GaugePressure,
  ImpossibleInput,
  type Mass,
  type Stiffness,
  type Volume,
  positive,
  si,
} from './quantity.ts';

/** m/s2, standard gravity (exact by definition). */
export const gravity = 9.80665;
/** Polytropic exponent of a ride motion, between slow (1) and adiabatic (1.4). Usual in the literature; from memory. */
export const rideExponent = 1.38;

/** Force, N, of one spring: gauge pressure times effective area. */
export const springForce = (pressure: GaugePressure, area: Area): Force => si(pressure * positive('area', area));

/** Gauge pressure, Pa, that carries `force` on `area` (all springs of the side). */
export const pressureFor = (force: Force, area: Area): GaugePressure => {
  if (!(force >= 0)) throw new ImpossibleInput('force', force, 'a spring of air only pushes');
  return si(force / positive('area', area));
};

/** Mass, kg, that gauge `pressure` on `area` carries at the wheel: p A lever / g (lever: bellows travel for wheel travel). Raises below 0. */
export const massCarried = (pressure: GaugePressure, area: Area, lever = 1): Mass => {
  if (!(pressure >= 0)) throw new ImpossibleInput('gauge pressure', pressure, 'a spring of air only pushes');
  return si((springForce(pressure, area) * positive('lever ratio', lever)) / gravity);
};

/**
 * Stiffness, N/m: k = n p_abs A^2 / V + p_gauge dA/dx. `exponent` n: 1 slow (levelling), about 1.38 riding, 1.4 adiabatic.
 * `areaSlope` dA/dx, m2 per m of compression; 0 for a rolling-lobe spring on a straight piston.
 */
export const springRate = (
  pressure: GaugePressure,
  area: Area,
  volume: Volume,
  exponent: number,
  atmosphere: AbsolutePressure,
  areaSlope = 0,
): Stiffness => {
  if (!(exponent >= 1 && exponent <= 1.4)) throw new ImpossibleInput('exponent', exponent, 'it must be from 1 to 1.4');
  const stiff = (exponent * absolute(pressure, atmosphere) * positive('area', area) ** 2) / positive('volume', volume);
  return si(stiff + pressure * areaSlope);
};

/** Natural frequency, Hz: sqrt(k/m)/2pi. */
export const naturalFrequency = (rate: Stiffness, mass: Mass): Frequency =>
  si(Math.sqrt(positive('stiffness', rate) / positive('mass', mass)) / (2 * Math.PI));

/** Gauge pressure after a squeeze from `before` to `after` volume: p V^n constant, absolute. */
export const squeezed = (
  pressure: GaugePressure,
  before: Volume,
  after: Volume,
  exponent: number,
  atmosphere: AbsolutePressure,
): GaugePressure =>
  si(
    absolute(pressure, atmosphere) * (positive('volume before', before) / positive('volume after', after)) ** exponent -
      atmosphere,
  );
