/** The pump's circuit, steady: battery behind its resistance, feed, motor, ground. Volts, amps, ohms. */
import type { Patient } from './patient.ts';

export type Circuit = { battery: number; motor: number; amps: number };

/** Below these volts at its terminals the motor does not turn. */
export const turnsAbove = 7;
/** Inrush and stall over the rated current at cut-out. */
const stallFactor = 3.2;

/** The motor running against a tank at `gauge` Pa. Current follows the pressure pumped against. */
export const running = (q: Patient, engine: boolean, gauge: number): Circuit => {
  const { p } = q;
  const share = Math.min(1.2, Math.max(0, gauge / p.cutOut));
  const amps = (p.currentLow + (p.currentHigh - p.currentLow) * share) * q.currentShare;
  return atCurrent(q, engine, amps);
};

export const atCurrent = (q: Patient, engine: boolean, amps: number): Circuit => {
  const emf = engine ? Math.max(q.emf, q.p.emfEngine - (q.p.emf - q.emf) * 0.3) : q.emf;
  const battery = emf - amps * q.batteryResistance;
  const wires = q.p.feedResistance + q.feedExtra + q.p.groundResistance + q.groundExtra;
  return { battery, motor: battery - amps * wires, amps };
};

/** A motor that stands still with power on. */
export const stalled = (q: Patient, engine: boolean): Circuit => {
  const emf = engine ? q.p.emfEngine : q.emf;
  const rated = q.p.currentHigh * stallFactor;
  const winding = 12 / rated;
  const wires = q.p.feedResistance + q.feedExtra + q.p.groundResistance + q.groundExtra;
  return atCurrent(q, engine, emf / (winding + wires + q.batteryResistance));
};

export const blowsFuse = (q: Patient, circuit: Circuit): boolean => circuit.amps > 1.35 * q.p.fuse;

/** Share of rated speed, and so of delivery, at `volts`. Straight, an estimate. */
export const speedShare = (volts: number): number => (volts < turnsAbove ? 0 : Math.min(1.15, (volts - 3) / 9.2));

/**
 * Gauge Pa in the pump's head at a start `since` s after it stopped with the tank at `tank`; the rings let it down with a
 * time of 10 minutes. A good unloader empties it at once; a leaking discharge check fills it again where nothing lets it go.
 */
export const headPressure = (q: Patient, tank: number, since: number): number => {
  if (q.p.unloader && !q.unloaderStuck) return 0;
  if (q.checkLeak > 0) return tank * 0.95;
  return tank * (q.unloaderStuck ? 0.9 : 0.35) * Math.exp(-since / 600);
};

/** Whether the motor gets away against `head` gauge Pa. */
export const starts = (q: Patient, engine: boolean, head: number): boolean => {
  if (q.seized) return false;
  const volts = atCurrent(q, engine, q.p.currentHigh * 1.2).motor;
  return volts > turnsAbove && head <= q.p.cutIn * 0.6 * Math.max(0, (volts - 6) / 5);
};
