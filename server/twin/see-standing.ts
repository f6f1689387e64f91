/** Checks that are waits: falls of the tank, heights by tape, what is found in the morning. */
import { tankGauge, shopGauge, tape } from './instruments.ts';
import { farLow, nightTakes } from './observables.ts';
import type { CoachParams } from './params.ts';
import { type Moment, type Night, type Scene } from './scene.ts';
import type { Glimpse } from './sim-shapes.ts';

type I = 0 | 1;

/** A fall between two readings of the coach's gauge, gauge Pa, over `over` s: told at all, and against the limit. */
export const judgeFall = (p: CoachParams, fall: number, over: number): 'none' | 'slow' | 'fast' => {
  if (fall < 0.99 * p.gaugeStep) return 'none';
  return fall >= 0.99 * ((p.limits.leakFall * over) / p.limits.leakOver) ? 'fast' : 'slow';
};

/** A change between two readings by tape, m: told when it is a division or more, and no less than a hand can repeat. */
export const judgeMove = (p: CoachParams, change: number): 'holds' | 'rises' | 'drops' => {
  const told = Math.max(0.9 * p.tapeStep, 0.0022);
  return change > told ? 'rises' : change < -told ? 'drops' : 'holds';
};

/** How much of the other side's move a side makes that only leans after it: the front and the frame share its load. */
export const leanShare = 0.35;
/** A side that only leans after the other is not what is said to be down. */
export const leans = (own: number, otherSide: number): boolean => own < leanShare * otherSide;

export const fallOutcome = ({ q, rng }: Scene, from: number, to: number, over: number): 'none' | 'slow' | 'fast' =>
  judgeFall(q.p, tankGauge(q, from, rng) - tankGauge(q, to, rng), over);

type Rear = { readonly rear: ArrayLike<number> };

/** One side between two looks, both taped: a side that only leans after the other holds, as whoever reads both says. */
export const moveOutcome = ({ q, rng }: Scene, from: Rear, to: Rear, i: I): 'holds' | 'rises' | 'drops' => {
  const change = tape(q, to.rear[i]!, rng) - tape(q, from.rear[i]!, rng);
  const o = i === 0 ? 1 : 0;
  return leans(Math.abs(change), Math.abs(to.rear[o]! - from.rear[o]!)) ? 'holds' : judgeMove(q.p, change);
};

export const shutFall = (scene: Scene): { from: Glimpse; to: Glimpse } => {
  const sim = scene.settled();
  scene.shut(sim);
  const from = sim.look();
  sim.advance(from.t + 1800);
  return { from, to: sim.look() };
};

export const outletFall = (scene: Scene): 'none' | 'slow' | 'fast' => {
  const sim = scene.settled();
  sim.set({ outletClosed: true });
  const from = sim.look();
  sim.advance(from.t + 1500);
  return fallOutcome(scene, from.tank, sim.look().tank, 1500);
};

/**
 * Where the tank came to rest, from readings over the night: the dwell in each band of two divisions against the median
 * of the bands above it; a knee is a dwell four times as long. Null when it is still on its way.
 */
export const fallStops = (scene: Scene, night: Night): string | null => {
  const { q, rng } = scene;
  const { p } = q;
  const read = night.every.map((m) => ({ t: m.t, tank: tankGauge(q, m.tank, rng), at: m }));
  const first = tankGauge(q, night.start.tank, rng);
  const last = read.at(-1);
  if (!last) return null;
  const cooling = ((first + p.atmosphere) * Math.max(0, night.start.ambient - night.end.ambient)) / night.start.ambient;
  if (first - last.tank <= 2 * p.gaugeStep + 1.3 * cooling) return 'no fall';
  const band = 2 * p.gaugeStep;
  const dwell: number[] = [];
  let since = night.start.t;
  let level = first - band;
  const zero = 0.4e5;
  const bellows = (at: Moment): string => {
    const low = Math.min(at.bellows[0], at.bellows[1]);
    const high = Math.max(at.bellows[0], at.bellows[1]);
    const b = shopGauge(Math.abs(at.tank - low) < Math.abs(at.tank - high) ? low : high, rng);
    const reading = tankGauge(q, at.tank, rng);
    if (p.protection !== null && Math.abs(reading - p.protection) < Math.abs(reading - b)) return 'protection';
    if (Math.abs(reading - b) > 0.12 * b + p.gaugeStep) return '';
    const told = Math.max(0.02, 3 * p.tapeStep);
    const end = night.every.at(-1) ?? at;
    const down = ([0, 1] as const).some((i) => night.start.rear[i] - tape(q, end.rear[i], rng) > told);
    return down ? 'bellows pressure, side down' : 'bellows pressure, side up';
  };
  const sorted = (): number => {
    const s = dwell.toSorted((a, b) => a - b);
    return s[Math.floor(s.length / 2)] ?? Infinity;
  };
  for (const [k, r] of read.entries()) {
    if (dwell.length >= 2 && r.tank > zero && r.t - since > 4 * sorted() && r.t - since >= 600) {
      const named = bellows(read[Math.max(0, k - 1)]!.at);
      if (named !== '') return named;
    }
    while (r.tank <= level && level > 0) {
      dwell.push(Math.max(30, r.t - since || 30));
      since = r.t;
      level -= band;
    }
    if (r.tank < zero) return 'zero';
  }
  return null;
};

/** Off its ride height after standing, m; above its stops. */
export const judgeFound = (p: CoachParams, off: number): 'level' | 'low' | 'far low' =>
  off < -farLow ? 'far low' : off < -Math.max(nightTakes, p.limits.tolerance + p.tapeStep) ? 'low' : 'level';

export const overnight = (scene: Scene, night: Night, i: I): 'holds' | 'drops' | 'on stops' => {
  const { q, rng } = scene;
  const end = tape(q, night.end.rear[i], rng);
  if (end < q.p.rearHeight[i] - q.p.toStops + 0.012) return 'on stops';
  const fall = tape(q, night.start.rear[i], rng) - end;
  const o = i === 0 ? 1 : 0;
  if (leans(fall, night.start.rear[o] - night.end.rear[o])) return 'holds';
  return fall > Math.max(0.0127, 2 * q.p.limits.tolerance) ? 'drops' : 'holds';
};

export const asFound = (scene: Scene, i: I): 'level' | 'low' | 'far low' | 'on stops' => {
  const { q, rng } = scene;
  const end = scene.asLeft().end;
  const off = (k: I): number => end.rear[k] + q.floor[k] - q.p.rearHeight[k];
  const found = tape(q, off(i) + q.p.rearHeight[i], rng) - q.p.rearHeight[i];
  if (found < -q.p.toStops + 0.012) return 'on stops';
  if (leans(-found, -off(i === 0 ? 1 : 0))) return 'level';
  return judgeFound(q.p, found);
};

export const tankAsFound = (scene: Scene): 'up' | 'at bellows pressure' | 'zero' => {
  const { q, rng } = scene;
  const reading = tankGauge(q, scene.asLeft().end.tank, rng);
  const b = (q.p.limits.bellows[0] + q.p.limits.bellows[1]) / 2;
  return reading > 1.12 * b ? 'up' : reading < 0.35 * b ? 'zero' : 'at bellows pressure';
};

/** Key on from as found; where nothing was down, from a coach let down on purpose. */
export const risesFirst = (scene: Scene): 'both' | 'left' | 'right' | 'neither' => {
  const { q, rng } = scene;
  const { p } = q;
  const sim = scene.morning();
  const low = ([0, 1] as const).filter((i) => sim.look().rear[i] - p.rearHeight[i] < -p.toStops * 0.35);
  if (low.length < 2 && q.panelLeft !== 'shut') sim.stand(-p.toStops - 0.004, -p.toStops - 0.004);
  sim.set({ key: true, engine: true });
  const start = sim.look();
  const up = Math.max(0.015, 3 * p.tapeStep);
  const when: [number, number] = [Infinity, Infinity];
  sim.advance(start.t + 900, 5, (g) => {
    for (const i of [0, 1] as const) if (g.rear[i] - start.rear[i] > up) when[i] = Math.min(when[i], g.t - start.t);
  });
  const [l, r] = when;
  if (l === Infinity && r === Infinity) return 'neither';
  const apart = Math.max(20, 0.35 * Math.min(l, r)) * rng.uniform(0.8, 1.2);
  return Math.abs(l - r) <= apart ? 'both' : l < r ? 'left' : 'right';
};
