/**
 * A bellows that carries its load leaks at constant pressure: load over area sets the pressure, so the leak shows on the
 * tape, not on a gauge. q = A (dh/dt) p_abs / p_atm. Valid until the coach is on its stops; the fall of the frame is
 * turned into bellows travel by the lever ratio of the arm.
 */
import { absolute } from './air.ts';
import { type Line, fitLine } from './line-fit.ts';
import {
  type AbsolutePressure,
  type Area,
  type Duration,
  type FreeAirFlow,
  type GaugePressure,
  ImpossibleInput,
  type Length,
  positive,
  si,
} from './quantity.ts';

/** One reading of the tape: `t` s from any start, `h` m, `sd` of the height (m) and of the time (s). */
export type TapeReading = { readonly t: number; readonly h: Length; readonly sd: number; readonly tSd: number };
export type SinkFit = {
  /** m/s, positive when it sinks. */ readonly rate: number;
  readonly rateSd: number;
  readonly line: Line;
};

/** Straight fall through all tape readings, weighted. Raises ImpossibleInput when time runs backwards or stands still. */
export const fitSink = (readings: readonly TapeReading[]): SinkFit => {
  for (const [i, r] of readings.entries())
    if (i > 0 && r.t < readings[i - 1]!.t)
      throw new ImpossibleInput('time of a reading', r.t, 'readings must be in order of time');
  let line = fitLine(readings.map((r) => ({ x: r.t, y: r.h, sd: r.sd })));
  line = fitLine(readings.map((r) => ({ x: r.t, y: r.h, sd: Math.hypot(r.sd, line.slope * r.tSd) })));
  return { rate: -line.slope, rateSd: line.slopeSd, line };
};

/**
 * Free air, m3/s at the atmosphere, that a side lets go. `rate`: fall of the frame, m/s; `lever`: bellows travel for
 * frame travel; `area`: effective area of all bellows of the side; `pressure`: gauge, constant under its load.
 */
export const sideLeak = (
  rate: number,
  lever: number,
  area: Area,
  pressure: GaugePressure,
  atmosphere: AbsolutePressure,
): FreeAirFlow =>
  si((positive('area', area) * rate * positive('lever ratio', lever) * absolute(pressure, atmosphere)) / atmosphere);

/** Time for a height of `now` to fall to `target` at `rate` m/s; Infinity where it does not sink, 0 where it is there. */
export const timeToHeight = (now: Length, target: Length, rate: number): Duration =>
  si(now <= target ? 0 : rate > 0 ? (now - target) / rate : Infinity);

/**
 * Fall of a tank that feeds a leaking bellows in AUTO, Pa/s: the bellows takes the same mass at constant pressure, so
 * the tank falls in a straight line (in steps, as the valve acts): dp/dt = q p_atm / V. `leak`: free air at `atmosphere`.
 */
export const feedingFall = (leak: FreeAirFlow, tank: number, atmosphere: AbsolutePressure): number =>
  (leak * atmosphere) / positive('tank volume', tank);
