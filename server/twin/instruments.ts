/**
 * What instruments and senses say of a true value: their divisions, their errors, and what they miss. Resolutions come
 * from the sheet; misses and thresholds are estimates, common practice at best, no published source.
 */
import type { Patient } from './patient.ts';
import { massFlow, referenceDensity } from './gas.ts';
import type { Rng } from './rng.ts';

const toStep = (value: number, step: number): number => Math.round(value / step) * step;

/** The coach's own tank gauge, gauge Pa: read to half a division; its bias and its ailments stay the same all day. */
export const tankGauge = (q: Patient, gauge: number, rng: Rng): number => {
  if (q.gauge.stuckAt !== null) return toStep(q.gauge.stuckAt, q.p.gaugeStep / 2);
  const said = gauge * (1 + q.p.gaugeBias) + q.gauge.shift + rng.normal(0, 0.12 * q.p.gaugeStep);
  return Math.max(0, toStep(said, q.p.gaugeStep / 2));
};

/** A shop gauge, gauge Pa: one per cent, read to 5 kPa. */
export const shopGauge = (gauge: number, rng: Rng): number =>
  Math.max(0, toStep(gauge * (1 + rng.normal(0, 0.006)) + rng.normal(0, 1500), 5000));

/** A tape from rail to floor, m: one division, and a hand that does not find the same spot twice. */
export const tape = (q: Patient, height: number, rng: Rng): number =>
  toStep(height + rng.normal(0, Math.max(0.0004, 0.12 * q.p.tapeStep)), q.p.tapeStep);

/** V, to 0.05 under load. */
export const voltmeter = (volts: number, rng: Rng): number => toStep(volts + rng.normal(0, 0.03), 0.05);
/** A by clamp, to 0.5. */
export const clampMeter = (amps: number, rng: Rng): number => toStep(amps * (1 + rng.normal(0, 0.02)), 0.5);

/** Free air, m3/s, of a leak of `conductance` under `gauge` Pa. */
export const freeFlow = (q: Patient, conductance: number, gauge: number): number =>
  massFlow(conductance, q.p.criticalRatio, gauge + q.p.atmosphere, q.p.ambient, q.p.atmosphere) / referenceDensity;

const seen = (flow: number, half: number, rng: Rng, sharpness = 1.2): boolean =>
  flow > 0 && rng.next() < 1 / (1 + (half / flow) ** sharpness);

const ml = 1e-6 / 60;
/** Soapy water: half of all leaks of `half` ml/min are found; crimp and fold hide more; froth fools one time in a hundred. */
export const soap = (flow: number, hidden: boolean, rng: Rng): boolean =>
  seen(flow, (hidden ? 6 : 2) * ml, rng) ? !rng.chance(hidden ? 0.06 : 0.03) : rng.chance(0.01);

/** A hiss in a quiet shop; with the engine on it takes ten times as much. */
export const ear = (flow: number, engine: boolean, rng: Rng): boolean => seen(flow, (engine ? 3000 : 300) * ml, rng, 2);

/** A hose end in water: a bubble every few seconds is seen. */
export const hoseInWater = (flow: number, rng: Rng): boolean => seen(flow, 0.8 * ml, rng, 2.5);

/** kg/s to free air, m3/s. */
export const freeAir = (kgPerSecond: number): number => kgPerSecond / referenceDensity;
