/** Checks of a coach at its ride height: heights, pressures side by side, gauges side by side. */
import { shopGauge, tankGauge, tape } from './instruments.ts';
import { farLow } from './observables.ts';
import type { Scene } from './scene.ts';

type I = 0 | 1;

/** By eye or by the driver's word: a centimetre off is seen. */
export const driving = (scene: Scene, i: I): 'level' | 'low' | 'far low' | 'high' => {
  const { q, rng } = scene;
  const off = scene.driven().look().rear[i] - q.p.rearHeight[i] + rng.normal(0, 0.003);
  const told = Math.max(0.012, q.p.limits.tolerance * 1.5);
  return off < -farLow ? 'far low' : off < -told ? 'low' : off > told ? 'high' : 'level';
};

export const heightOutcome = (scene: Scene, end: 'rear' | 'front', i: I): 'within' | 'low' | 'far low' | 'high' => {
  const { q, rng } = scene;
  const g = scene.driven().look();
  const floor = end === 'rear' ? q.floor[i] : 0;
  const wanted = end === 'rear' ? q.p.rearHeight[i] : q.p.frontHeight[i];
  const off = tape(q, g[end][i] + floor, rng) - wanted;
  const most = q.p.limits.tolerance + q.p.tapeStep / 2;
  if (end === 'rear' && off < -Math.max(farLow, most)) return 'far low';
  return off < -most ? 'low' : off > most ? 'high' : 'within';
};

export const bellowsPressures = (scene: Scene): 'alike' | 'left light' | 'right light' => {
  const { q, rng } = scene;
  const g = scene.driven().look();
  const [wl, wr] = q.p.limits.bellows;
  const left = shopGauge(g.bellows[0], rng);
  const right = shopGauge(g.bellows[1], rng);
  const lean = (left - right - (wl - wr)) / ((wl + wr) / 2);
  return Math.abs(lean) <= 0.09 ? 'alike' : lean < 0 ? 'left light' : 'right light';
};

/** The coach's gauge beside a good one, gauge Pa: apart by more than two sound ones may be, and which way. */
export const judgeGauges = (
  coach: number,
  good: number,
  step: number,
): 'agrees' | 'coach gauge high' | 'coach gauge low' =>
  Math.abs(coach - good) <= 1.25 * step + 0.02 * good
    ? 'agrees'
    : coach > good
      ? 'coach gauge high'
      : 'coach gauge low';

export const secondGauge = (scene: Scene): 'agrees' | 'coach gauge high' | 'coach gauge low' => {
  const { q, rng } = scene;
  const { tank } = scene.settled().look();
  return judgeGauges(tankGauge(q, tank, rng), shopGauge(tank, rng), q.p.gaugeStep);
};

export const tankWater = (scene: Scene): 'little' | 'much' =>
  scene.q.water > 0.1 || scene.rng.chance(0.03) ? 'much' : 'little';
