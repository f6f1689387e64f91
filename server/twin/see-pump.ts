/** Checks of pump, switch and circuit. */
import { blowsFuse, headPressure, running, stalled, starts, turnsAbove } from './electrics.ts';
import { called } from './controls.ts';
import { clampMeter, ear, freeFlow, tankGauge, voltmeter } from './instruments.ts';
import type { Scene } from './scene.ts';

/** What happens when the tank is below cut-in and the key is on. */
export const pumpCalled = (scene: Scene): 'runs' | 'silent' | 'clicks' | 'hums' | 'blows fuse' => {
  const { q } = scene;
  if (q.fuseBlown) return 'silent';
  if (q.contacts === 'burnt' && q.relay !== 'welded') return 'silent';
  if (q.relay === 'silent') return 'silent';
  if (q.relay === 'clicks') return 'clicks';
  if (q.motorOpen) return q.p.relay ? 'clicks' : 'silent';
  const still = stalled(q, false);
  if (q.seized) return blowsFuse(q, still) ? 'blows fuse' : 'hums';
  if (!starts(q, false, headPressure(q, q.cutIn, 3600))) return still.motor < 4 ? 'clicks' : 'hums';
  return running(q, false, 3e5).motor > turnsAbove ? 'runs' : 'hums';
};

export const pumpRestart = (scene: Scene): 'starts' | 'stalls' | 'blows fuse' | null => {
  const { q } = scene;
  if (pumpCalled(scene) !== 'runs') return null;
  if (starts(q, false, headPressure(q, q.cutIn, scene.rng.uniform(10, 90)))) return 'starts';
  return blowsFuse(q, stalled(q, false)) ? 'blows fuse' : 'stalls';
};

export const motorVolts = (scene: Scene): 'within' | 'low' | 'none' => {
  const { q, rng } = scene;
  const state = pumpCalled(scene);
  if (q.motorOpen && q.relay === 'good' && !q.fuseBlown && q.contacts !== 'burnt') return 'within';
  if (state === 'silent' || state === 'clicks') return 'none';
  const circuit = state === 'runs' ? running(q, false, 0.7 * q.p.cutOut) : stalled(q, false);
  return voltmeter(circuit.motor, rng) < q.p.minVolts ? 'low' : 'within';
};

export const batteryVolts = (scene: Scene): 'within' | 'low' => {
  const { q, rng } = scene;
  const loaded = pumpCalled(scene) === 'runs';
  const volts = loaded ? running(q, false, 0.7 * q.p.cutOut).battery : q.emf;
  // Rested below 12.2 is half empty; under the pump's load a sound one stays above 11.8. Common practice, no source.
  return voltmeter(volts, rng) < (loaded ? 11.8 : 12.2) ? 'low' : 'within';
};

export const motorCurrent = (scene: Scene): 'within' | 'low' | 'high' | 'none' => {
  const { q, rng } = scene;
  const state = pumpCalled(scene);
  if (state === 'silent' || state === 'clicks') return 'none';
  const amps = clampMeter(
    (state === 'runs' ? running(q, false, rng.uniform(0.55, 0.95) * q.p.cutOut) : stalled(q, false)).amps,
    rng,
  );
  return amps > q.p.currentHigh * 1.08 ? 'high' : amps < q.p.currentLow * 0.97 ? 'low' : 'within';
};

type PumpRun = { time: number | null; cutOut: number | null; high: number; stops: boolean };

/** From an empty tank, key on: time to the sheet's pressure, and where the pump stops, all by the coach's gauge. */
const pumpRun = (scene: Scene, cut: boolean): PumpRun => {
  const { q, rng } = scene;
  const { p } = q;
  const sim = scene.settled();
  scene.auto(sim);
  if (cut) sim.set({ outletClosed: true });
  sim.tankTo(p.limits.pumpUp.from);
  // As on a real coach the sides stay up on their checks; what they lose is fed again.
  sim.set({ key: true, engine: true });
  const start = sim.time();
  const most = Math.max(1200, 4 * p.limits.pumpUp.time);
  let time: number | null = null;
  let stopped: number | null = null;
  let high = 0;
  while (sim.time() < start + most && stopped === null) {
    const was = sim.controls.pump;
    sim.advance(sim.time() + 10);
    const tank = sim.look().tank;
    high = Math.max(high, tank);
    if (time === null && tankGauge(q, tank, rng) >= p.limits.pumpUp.to) time = sim.time() - start;
    if (was && !sim.controls.pump && !sim.controls.tooHot && !sim.controls.fuseBlown)
      stopped = tankGauge(q, Math.max(tank, Math.min(q.cutOut, high)), rng);
    if (!sim.controls.pump && stopped === null && sim.time() > start + 300 && !called(q, sim.controls)) break;
  }
  return { time, cutOut: stopped, high, stops: stopped !== null };
};

const runs = new WeakMap<Scene, { open?: PumpRun; cut?: PumpRun }>();
const runOf = (scene: Scene, cut: boolean): PumpRun => {
  const had = runs.get(scene) ?? {};
  runs.set(scene, had);
  const name = cut ? 'cut' : 'open';
  return (had[name] ??= pumpRun(scene, cut));
};

export const pumpUp = (scene: Scene, cut: boolean): 'within' | 'slow' | 'never' => {
  const { time } = runOf(scene, cut);
  if (time === null) return 'never';
  return time > 1.25 * scene.q.p.limits.pumpUp.time ? 'slow' : 'within';
};

const against = (reading: number, low: number, high: number, step: number): 'within' | 'low' | 'high' =>
  reading < low - 0.6 * step ? 'low' : reading > high + 0.6 * step ? 'high' : 'within';

export const cutOut = (scene: Scene): 'within' | 'low' | 'high' | 'never' => {
  const { q } = scene;
  const run = runOf(scene, true);
  if (run.cutOut === null) return 'never';
  return against(run.cutOut, q.p.limits.cutOut[0], q.p.limits.cutOut[1], q.p.gaugeStep);
};

export const cutIn = (scene: Scene): 'within' | 'low' | 'high' | 'never' => {
  const { q, rng } = scene;
  if (pumpCalled(scene) !== 'runs' || q.contacts === 'welded' || q.relay === 'welded') return 'never';
  return against(tankGauge(q, q.cutIn, rng), q.p.limits.cutIn[0], q.p.limits.cutIn[1], q.p.gaugeStep);
};

export const pastCutOut = (scene: Scene): 'stops' | 'runs on' | null => {
  const { q, rng } = scene;
  const run = runOf(scene, true);
  if (run.stops) {
    const high = run.cutOut ?? 0;
    return high > q.p.limits.cutOut[1] + 1.5 * q.p.gaugeStep ? 'runs on' : 'stops';
  }
  return tankGauge(q, run.high, rng) > q.p.limits.cutOut[1] + q.p.gaugeStep ? 'runs on' : null;
};

export const hissAfterStop = (scene: Scene): 'none' | 'once' | 'goes on' | null => {
  const { q, rng } = scene;
  if (!runOf(scene, true).stops) return null;
  if (ear(freeFlow(q, q.checkLeak, q.cutOut), false, rng)) return 'goes on';
  return q.p.unloader && !q.unloaderStuck && !rng.chance(0.05) ? 'once' : 'none';
};

/** A run as long as the sheet allows one: hot enough for a cut-out that opens too soon, or for a pump that works too hard. */
export const quitsHot = (scene: Scene): 'no' | 'yes' | null => {
  const { q } = scene;
  if (pumpCalled(scene) !== 'runs') return null;
  const rise = q.p.pumpRise * (1 + 0.5 * (1 - q.deliveryShare)) * (1 - Math.exp(-1200 / q.p.pumpTime));
  return rise > q.thermalTrip ? 'yes' : 'no';
};

type Hour = { starts: number; share: number };
const hours = new WeakMap<Scene, { auto?: Hour; shut?: Hour }>();
const hourOf = (scene: Scene, state: 'auto' | 'shut'): Hour => {
  const had = hours.get(scene) ?? {};
  hours.set(scene, had);
  return (had[state] ??= (() => {
    const sim = scene.settled();
    scene.auto(sim);
    if (state === 'shut') scene.shut(sim);
    sim.set({ key: true, engine: false });
    const start = sim.time();
    let on = 0;
    sim.advance(start + 3600, 20, (g) => {
      if (g.pump) on += 1;
    });
    return { starts: sim.changes.filter((c) => c.what === 'pump on').length, share: on / 180 };
  })());
};

export const pumpCycles = (scene: Scene, state: 'auto' | 'shut'): 'no' | 'yes' => {
  const { starts: count, share } = hourOf(scene, state);
  return count > 0 || share > 0 ? 'yes' : 'no';
};

export const pumpDuty = (scene: Scene): 'rests' | 'cycles' | 'constant' => {
  const { starts: count, share } = hourOf(scene, 'auto');
  return share > 0.9 ? 'constant' : count > 0 || share > 0 ? 'cycles' : 'rests';
};
