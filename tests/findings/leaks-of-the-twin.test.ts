/**
 * Leaks of known size on the simulated coach, read off its gauge or tape as a tech would, judged, and held against what
 * the coach really loses. Shares are of seeded draws; sizes of leaks are invented.
 */
import { describe, expect, it } from 'vitest';
import { tapeInches } from '../../server/core/amount.ts';
import type { Finding } from '../../server/findings/finding.ts';
import { afflict } from '../../server/twin/afflict.ts';
import type { Ailment } from '../../server/twin/ailments.ts';
import { makeCoach } from '../../server/twin/coach.ts';
import { tankGauge, tape } from '../../server/twin/instruments.ts';
import { makeRng } from '../../server/twin/rng.ts';
import { makeSim } from '../../server/twin/sim.ts';
import { inch, psi } from '../twin/coaches.ts';
import { bench, juniper } from './bench.ts';

type Run = { finding: Finding | undefined; truth: number; limit: number };
type Told = { cooling?: number; saysTemperature?: boolean; also?: Ailment[] };

const shutIn = (
  seed: number,
  ailment: Ailment | null,
  told: Told = {},
  sizes: readonly [number, number] = [0.0008, 0.05],
) => {
  const rng = makeRng(seed * 7919 + 13);
  const p = makeCoach(juniper, { seed, panel: true });
  const ails = ailment === null ? [] : [{ ailment, size: rng.log(sizes[0], sizes[1]) }];
  const q = afflict({ ...p, nightDrop: 0 }, [...ails, ...(told.also ?? []).map((a) => ({ ailment: a, size: 1 }))]);
  const sim = makeSim(q);
  sim.set({ panel: ['shut', 'shut'], arm: ['neutral', 'neutral'] });
  sim.tankTo(p.cutOut);
  return { rng, p, q, sim };
};
const fahrenheit = (k: number): string => `${Math.round((k - 273.15) * 1.8 + 32)} F`;

/** Tank at 0, 10, 20 and 30 minutes, panel shut. Truth: fall a second in the middle of it, Pa/s. */
const tankRun = (seed: number, ailment: Ailment | null, told: Told = {}): Run => {
  const { rng, p, q, sim } = shutIn(seed, ailment, told);
  const stuck = told.also?.includes('gauge stuck');
  if (stuck) q.gauge.stuckAt = p.cutOut;
  if (told.cooling) sim.weather({ start: p.ambient, drop: told.cooling, over: 1800, since: 0 });
  const middle: number[] = [];
  const notes = [0, 10, 20, 30].map((minute) => {
    if (minute === 20)
      for (const at of [14, 16]) {
        sim.advance(at * 60);
        middle.push(sim.look().tank);
      }
    if (minute > 0) sim.advance(minute * 60);
    const g = sim.look();
    return [
      minute === 0 ? 0 : 10,
      ...(minute === 0 ? ['condition not key on', 'condition panel shut'] : []),
      ...(told.saysTemperature ? [`reading temperature @ ambient = ${fahrenheit(g.ambient)}`] : []),
      `reading pressure @ tank = ${Math.round((2 * tankGauge(q, g.tank, rng)) / psi) / 2} psi`,
    ] as const;
  });
  const limit = juniper.supply!.leakLimit!;
  return {
    finding: bench(juniper, notes).found.find((f) => f.key.startsWith('tank fall')),
    truth: (middle[0]! - middle[1]!) / 120,
    limit: limit.fall.si / limit.over.si,
  };
};

/** Left rear by the tape at 0, 30 and 60 minutes, panel shut. Truth: change of height, m. */
const tapeRun = (seed: number, ailment: Ailment | null): Run => {
  const { rng, q, sim } = shutIn(seed, ailment, {}, [0.0004, 0.005]);
  const start = sim.look().rear[0];
  const notes = [0, 30, 60].map((minute) => {
    if (minute > 0) sim.advance(minute * 60);
    const said = tapeInches(tape(q, sim.look().rear[0], rng) / inch);
    return [
      minute === 0 ? 0 : 30,
      ...(minute === 0 ? ['condition not key on', 'condition panel shut'] : []),
      `reading height @ left rear = ${said} in`,
    ] as const;
  });
  return {
    finding: bench(juniper, notes).found.find((f) => f.key.startsWith('sink')),
    truth: sim.look().rear[0] - start,
    limit: 0,
  };
};

const seeds = (n: number): number[] => Array.from({ length: n }, (_, i) => i + 1);
const share = (runs: readonly Run[], of: (r: Run) => boolean): number => runs.filter(of).length / runs.length;
const holds = (r: Run): boolean =>
  r.finding?.amount?.low !== undefined && r.finding.amount.low <= r.truth && r.truth <= r.finding.amount.high!;
const wrong = (r: Run): boolean =>
  (r.finding?.verdict === 'high' && r.truth <= r.limit) || (r.finding?.verdict === 'within' && r.truth > r.limit);
const said = (runs: readonly Run[], verdict: Finding['verdict']): number =>
  share(runs, (r) => r.finding?.verdict === verdict);

describe('a leak of the simulated coach, read four times in half an hour by its own gauge', () => {
  // A leaking supply line is seen by the tank gauge as a leaking tank is: other draws, the same volume.
  it.each([
    ['tank leak', 0],
    ['supply line leak', 500],
  ] as const)('%s: found, and its rate within the interval', (ailment, from) => {
    const runs = seeds(60).map((s) => tankRun(s + from, ailment));
    expect(share(runs, holds)).toBeGreaterThanOrEqual(0.9);
    expect(share(runs, wrong)).toBeLessThanOrEqual(0.02);
    // Between half and one and a half times the limit it may ask for another reading; elsewhere half an hour is enough.
    const clear = runs.filter((r) => r.truth < 0.5 * r.limit || r.truth > 1.5 * r.limit);
    expect(clear.length).toBeGreaterThan(30);
    expect(share(clear, (r) => r.finding?.verdict === (r.truth > r.limit ? 'high' : 'within'))).toBeGreaterThanOrEqual(
      0.95,
    );
  });

  it('a coach that only seeps is never said to leak', () => {
    const runs = seeds(60).map((s) => tankRun(s, null));
    expect(share(runs, holds)).toBeGreaterThanOrEqual(0.95);
    expect(said(runs, 'high')).toBe(0);
    expect(said(runs, 'within')).toBeGreaterThanOrEqual(0.85);
  });
});

describe('a bellows of the simulated coach, taped three times in an hour with the panel shut', () => {
  it('that leaks is said to sink, and its sink is within the interval', () => {
    const runs = seeds(40).map((s) => tapeRun(s, 'left bellows leak'));
    expect(share(runs, holds)).toBeGreaterThanOrEqual(0.9);
    expect(said(runs, 'low')).toBeGreaterThanOrEqual(0.8);
    expect(said(runs, 'within')).toBe(0);
  });

  it('that is sound is never said to sink, nor to stand a night on an hour', () => {
    const runs = seeds(40).map((s) => tapeRun(s, null));
    expect(share(runs, holds)).toBeGreaterThanOrEqual(0.95);
    expect(said(runs, 'cannot tell')).toBe(1);
  });
});

describe('what one gauge alone cannot know', () => {
  it('a stuck gauge is believed: every leaking tank is said to hold, which is why a second gauge comes early', () => {
    const runs = seeds(20).map((s) => tankRun(s, 'tank leak', { also: ['gauge stuck'] }));
    expect(said(runs, 'within')).toBe(1);
    const over = runs.filter((r) => r.truth > r.limit);
    expect(over.length).toBeGreaterThan(10);
    expect(share(over, wrong)).toBe(1);
  });

  it('a tank that cools 10 K in the half hour without a word of it is not cleared, and not often called a leak', () => {
    const runs = seeds(20).map((s) => tankRun(s, null, { cooling: 10 }));
    expect(said(runs, 'high')).toBeLessThanOrEqual(0.05);
    expect(said(runs, 'cannot tell')).toBeGreaterThanOrEqual(0.9);
  });

  it('told both temperatures it takes the cooling out and clears the tank', () => {
    const runs = seeds(20).map((s) => tankRun(s, null, { cooling: 10, saysTemperature: true }));
    expect(said(runs, 'within')).toBeGreaterThanOrEqual(0.95);
  });
});
