/**
 * A closed store leaking to the atmosphere through one hole at constant temperature: choked, then subsonic.
 *   V/(R T) dp/dt = -Cd A 0.6847 p / sqrt(R T) * share(pa/p)
 * With x = p/pa absolute and k = 0.6847 Cd A sqrt(R T) / V (1/s), dx/dt = -k x share(1/x). The function
 *   G(x) = integral from 1 to x of dx / (x share(1/x))
 * falls in a straight line in time, G(x(t)) = G(x0) - k t, so that a leak is a line fit. For gamma = 1.4 the subsonic
 * part is closed: with w = sqrt(x^(2/7) - 1), G = 7 F (w + 2 w^3/3 + w^5/5), F the nozzle function at the critical ratio
 * over sqrt(7); in the choked part G grows as ln x. Pressures here are gauge with the atmosphere beside them.
 */
import { absolute, chokedShare, criticalRatio, gasConstant, gamma, gaugeOf } from './air.ts';
import { type Line, type Point, fitLine } from './line-fit.ts';
import {
  type AbsolutePressure,
  type Area,
  type Duration,
  type FreeAirFlow,
  type GaugePressure,
  ImpossibleInput,
  type Temperature,
  type Volume,
  positive,
  si,
} from './quantity.ts';

const chokeAt = 1 / criticalRatio;
const nozzle = Math.sqrt(criticalRatio ** (2 / gamma) - criticalRatio ** ((gamma + 1) / gamma));
const subsonicAge = (x: number): number => {
  const w = Math.sqrt(Math.max(0, x ** (2 / 7) - 1));
  return 7 * nozzle * (w + (2 / 3) * w ** 3 + w ** 5 / 5);
};
const ageAtChoke = subsonicAge(chokeAt);

/** G of the pressure ratio x = p/pa (absolute, 1 or more): 0 at the atmosphere, rising. Raises ImpossibleInput below 1. */
export const leakAge = (x: number): number => {
  if (!(x >= 1))
    throw new ImpossibleInput('pressure over atmosphere', x, 'it cannot be below 1 in a store that leaks out');
  return x <= chokeAt ? subsonicAge(x) : ageAtChoke + Math.log(x / chokeAt);
};

/** Inverse of leakAge; 1 for ages of zero and below (the store is empty). */
export const ratioAtAge = (age: number): number => {
  if (age <= 0) return 1;
  if (age >= ageAtChoke) return chokeAt * Math.exp(age - ageAtChoke);
  let low = 1;
  let high = chokeAt;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (subsonicAge(middle) < age) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Leak constant k, 1/s, of a hole of `effective` area (Cd A) in `volume` at `temperature`. */
export const leakConstant = (effective: Area, volume: Volume, temperature: Temperature): number =>
  (0.684731 * positive('effective area', effective) * Math.sqrt(gasConstant * positive('temperature', temperature))) /
  positive('volume', volume);

/** Effective area (Cd A), m2; inverse of leakConstant. */
export const areaOfLeak = (k: number, volume: Volume, temperature: Temperature): Area =>
  si(
    (Math.max(0, k) * positive('volume', volume)) /
      (0.684731 * Math.sqrt(gasConstant * positive('temperature', temperature))),
  );

/** Gauge pressure after `time` from `start` (gauge). Exactly 0 once empty. */
export const pressureAfter = (
  start: GaugePressure,
  k: number,
  time: Duration,
  atmosphere: AbsolutePressure,
): GaugePressure => {
  if (!(time >= 0)) throw new ImpossibleInput('time', time, 'it cannot run backwards');
  const x = absolute(start, atmosphere) / atmosphere;
  return gaugeOf(si(ratioAtAge(leakAge(x) - k * time) * atmosphere), atmosphere);
};

/** Time from `start` down to `target` (gauge both); Infinity where nothing leaks, 0 where it is already there. */
export const timeToPressure = (
  start: GaugePressure,
  target: GaugePressure,
  k: number,
  atmosphere: AbsolutePressure,
): Duration => {
  if (target >= start) return si(0);
  const from = leakAge(absolute(start, atmosphere) / atmosphere);
  const to = leakAge(Math.max(1, absolute(target, atmosphere) / atmosphere));
  return si(k > 0 ? (from - to) / k : Infinity);
};

/** Rate of fall, Pa/s, positive, at the gauge pressure `at`. */
export const fallRate = (at: GaugePressure, k: number, atmosphere: AbsolutePressure): number => {
  const p = absolute(at, atmosphere);
  return p <= atmosphere ? 0 : k * p * chokedShare(atmosphere / p);
};

/** Free air, m3/s at the atmosphere and the temperature of the store, that a fall of `rate` Pa/s in `volume` lets go. */
export const freeAirOfFall = (rate: number, volume: Volume, atmosphere: AbsolutePressure): FreeAirFlow =>
  si((rate * positive('volume', volume)) / positive('atmosphere', atmosphere));

/** One reading: `t` s from any start, `p` gauge, `sd` of the pressure (Pa) and of the time (s). */
export type TankReading = { readonly t: number; readonly p: GaugePressure; readonly sd: number; readonly tSd: number };
export type DecayFit = {
  /** Leak constant 1/s and its standard deviation; below zero where the readings rise. */
  readonly k: number;
  readonly kSd: number;
  /** Fitted gauge pressure at `t`. */
  readonly pressureAt: (t: number) => GaugePressure;
  readonly chi2: number;
  /** Readings that took part: those clearly above the atmosphere. */
  readonly used: number;
};

/**
 * Fits start and leak constant to all readings, weighted by the deviation each carries at the fitted pressure (time
 * error counts as k times its deviation). Readings within two deviations of empty say nothing of the rate and are left
 * out. Raises ImpossibleInput when fewer than two distinct times are left, or time runs backwards.
 */
export const fitDecay = (readings: readonly TankReading[], atmosphere: AbsolutePressure): DecayFit => {
  for (const [i, r] of readings.entries())
    if (i > 0 && r.t < readings[i - 1]!.t)
      throw new ImpossibleInput('time of a reading', r.t, 'readings must be in order of time');
  const used = readings.filter((r) => r.p > 2 * r.sd);
  const t0 = used[0]?.t ?? 0;
  let line: Line | null = null;
  for (let round = 0; round < 4; round++) {
    const k = line ? Math.max(0, -line.slope) : 0;
    const points = used.map((r): Point => {
      const x = absolute(r.p, atmosphere) / atmosphere;
      const fitted: number = line ? Math.max(1.02, ratioAtAge(line.at0 + line.slope * (r.t - t0))) : x;
      const steep = 1 / (fitted * chokedShare(1 / fitted));
      return { x: r.t - t0, y: leakAge(x), sd: Math.hypot((steep * r.sd) / atmosphere, k * r.tSd) };
    });
    line = fitLine(points);
  }
  const done = line!;
  return {
    k: -done.slope,
    kSd: done.slopeSd,
    pressureAt: (t) => gaugeOf(si(ratioAtAge(done.at0 + done.slope * (t - t0)) * atmosphere), atmosphere),
    chi2: done.chi2,
    used: used.length,
  };
};
