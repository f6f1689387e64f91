/**
 * Air: the local atmosphere, gauge and absolute pressure, and flow through openings. All in SI; each function says
 * gauge or absolute. Dry air as an ideal gas with constant gamma: right within 1 % from -40 C to 100 C up to 15 bar.
 */
import {
  type AbsolutePressure,
  type Area,
  type FreeAirFlow,
  type GaugePressure,
  ImpossibleInput,
  type Length,
  type MassFlow,
  type Temperature,
  finite,
  positive,
  si,
} from './quantity.ts';

/** J/(kg K), dry air: 8.314462618 / 0.0289652. */
export const gasConstant = 287.05;
/** Ratio of specific heats of dry air. */
export const gamma = 1.4;
/** 101 325 Pa, the standard atmosphere (exact by definition). */
export const standardAtmosphere = si<AbsolutePressure>(101_325);
/** 20 C. */
export const roomTemperature = si<Temperature>(293.15);
/** Outlet over inlet, absolute, at and below which flow is choked: (2/(g+1))^(g/(g-1)) = 0.52828. */
export const criticalRatio = (2 / (gamma + 1)) ** (gamma / (gamma - 1));
/** Coefficient of discharge of a sharp-edged hole; published figures run from 0.61 to 0.65. */
export const sharpEdge = 0.61;

const chokedConstant = Math.sqrt(gamma) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)));
const flowFunction = (ratio: number): number =>
  Math.sqrt(((2 * gamma) / (gamma - 1)) * (ratio ** (2 / gamma) - ratio ** ((gamma + 1) / gamma)));

/**
 * Local atmosphere, absolute, at `altitude` m above sea level: p = 101325 (1 - 2.25577e-5 h)^5.2559, the standard
 * atmosphere of the ASHRAE Handbook, Fundamentals 2017, ch. 1 eq. 3. Weather moves it by 3 %.
 * Raises ImpossibleInput outside -500 to 11000 m.
 */
export const atmosphereAt = (altitude: Length): AbsolutePressure => {
  if (!(altitude >= -500 && altitude <= 11_000))
    throw new ImpossibleInput(
      'altitude',
      altitude,
      (write) => `it must be between ${write(-500)} and ${write(11_000)}`,
    );
  return si(101_325 * (1 - 2.25577e-5 * altitude) ** 5.2559);
};

/**
 * Local atmosphere, absolute, from a barometer that is reduced to sea level (as weather reports give it): the reading
 * scaled by the standard fall of pressure with `altitude`. A barometer read at the coach needs no reduction.
 */
export const atmosphereFrom = (seaLevel: AbsolutePressure, altitude: Length): AbsolutePressure => {
  if (!(seaLevel > 80_000 && seaLevel < 110_000))
    throw new ImpossibleInput(
      'barometer',
      seaLevel,
      (write) => `it must be between ${write(80_000)} and ${write(110_000)}`,
    );
  return si((seaLevel * atmosphereAt(altitude)) / standardAtmosphere);
};

/** Absolute from gauge. Raises ImpossibleInput when it would be below vacuum. */
export const absolute = (gauge: GaugePressure, atmosphere: AbsolutePressure): AbsolutePressure => {
  positive('atmosphere', atmosphere);
  finite('gauge pressure', gauge);
  if (gauge + atmosphere < 0) throw new ImpossibleInput('gauge pressure', gauge, 'that is below vacuum');
  return si(gauge + atmosphere);
};

/** Gauge from absolute. Raises ImpossibleInput for an absolute pressure below zero. */
export const gaugeOf = (pressure: AbsolutePressure, atmosphere: AbsolutePressure): GaugePressure => {
  positive('atmosphere', atmosphere);
  if (!(pressure >= 0)) throw new ImpossibleInput('absolute pressure', pressure, 'it cannot be below vacuum');
  return si(pressure - atmosphere);
};

/**
 * Share of the choked flow that passes at `ratio` (outlet over inlet, absolute): 1 up to the critical ratio, the
 * isentropic nozzle's above it, 0 at 1. The two meet without a step.
 */
export const chokedShare = (ratio: number): number => {
  if (!(ratio >= 0)) throw new ImpossibleInput('pressure ratio', ratio, 'it cannot be below zero');
  if (ratio <= criticalRatio) return 1;
  return ratio >= 1 ? 0 : flowFunction(ratio) / flowFunction(criticalRatio);
};

/**
 * Mass flow through a hole, kg/s: m = Cd A p / sqrt(R T) * 0.6847 when choked, times chokedShare otherwise.
 * `effective` = Cd A; `up`, `down` absolute; `temperature` of the air upstream. Zero when `down` is not below `up`.
 * Source: isentropic nozzle flow; agrees with handbook tables of air through an orifice within 0.7 %.
 */
export const orificeFlow = (
  effective: Area,
  up: AbsolutePressure,
  down: AbsolutePressure,
  temperature: Temperature,
): MassFlow => {
  if (!(effective >= 0)) throw new ImpossibleInput('effective area', effective, 'it cannot be below zero');
  positive('upstream pressure', up);
  positive('temperature', temperature);
  if (!(down >= 0)) throw new ImpossibleInput('downstream pressure', down, 'it cannot be below vacuum');
  return si(((effective * up * chokedConstant) / Math.sqrt(gasConstant * temperature)) * chokedShare(down / up));
};

/** Free air, m3/s, of `flow` at the reference `pressure` (absolute) and `temperature`: V = m R T / p. */
export const freeAir = (flow: MassFlow, pressure: AbsolutePressure, temperature: Temperature): FreeAirFlow =>
  si((finite('mass flow', flow) * gasConstant * positive('temperature', temperature)) / positive('pressure', pressure));

/** Mass flow, kg/s, of free air at the reference `pressure` (absolute) and `temperature`; inverse of freeAir. */
export const massOfFreeAir = (flow: FreeAirFlow, pressure: AbsolutePressure, temperature: Temperature): MassFlow =>
  si((finite('flow', flow) * positive('pressure', pressure)) / (gasConstant * positive('temperature', temperature)));

/** Effective area (Cd A), m2, of a hole that passes `flow` choked from `up` (absolute); inverse of orificeFlow. */
export const effectiveArea = (
  flow: MassFlow,
  up: AbsolutePressure,
  down: AbsolutePressure,
  temperature: Temperature,
): Area => {
  const unit = orificeFlow(si(1), up, down, temperature);
  if (unit === 0) throw new ImpossibleInput('upstream pressure', up, 'it must be above the downstream pressure');
  return si(finite('flow', flow) / unit);
};

/** Diameter, m, of a round hole of that effective area: sqrt(4 (CdA) / (pi Cd)). */
export const holeDiameter = (effective: Area, coefficient: number): Length =>
  si(
    Math.sqrt(
      (4 * Math.max(0, finite('effective area', effective))) / (Math.PI * positive('coefficient', coefficient)),
    ),
  );

/**
 * Flow of a valve rated by ISO 6358, m3/s of air at the reference atmosphere (100 kPa, 20 C):
 * q = C p1 sqrt(T0/T1), times sqrt(1 - ((r - b)/(1 - b))^2) above the critical ratio b. `conductance` C in m3/(s Pa)
 * (1 dm3/(s bar) = 1e-8); pressures absolute. Raises ImpossibleInput for b outside 0 to 1.
 */
export const ratedValveFlow = (
  conductance: number,
  b: number,
  up: AbsolutePressure,
  down: AbsolutePressure,
  temperature: Temperature,
): FreeAirFlow => {
  if (!(b >= 0 && b < 1)) throw new ImpossibleInput('critical ratio b', b, 'it must be from 0 to below 1');
  if (!(conductance >= 0)) throw new ImpossibleInput('conductance', conductance, 'it cannot be below zero');
  const ratio = Math.max(0, down) / positive('upstream pressure', up);
  const share = ratio <= b ? 1 : ratio >= 1 ? 0 : Math.sqrt(1 - ((ratio - b) / (1 - b)) ** 2);
  return si(conductance * up * Math.sqrt(293.15 / positive('temperature', temperature)) * share);
};
