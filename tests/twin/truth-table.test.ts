/**
 * The truth table of how the air is joined, cell by cell: what the tank and the coach do in AUTO and in SHUT, whether the
 * pump cycles, where bubbles show. Common practice of the trade, no published source; the mechanisms are physics.
 */
import { describe, expect, test } from 'vitest';
import type { Ailment } from '../../server/twin/ailments.ts';
import { afflict } from '../../server/twin/afflict.ts';
import { airObservables } from '../../server/twin/observables.ts';
import { observeIn } from '../../server/twin/observe.ts';
import { makeRng } from '../../server/twin/rng.ts';
import { makeScene } from '../../server/twin/scene.ts';
import { makeSim } from '../../server/twin/sim.ts';
import type { Glimpse } from '../../server/twin/sim-shapes.ts';
import type { Ail } from '../../server/twin/sizes.ts';
import { psi, tight } from './coaches.ts';

const p = tight();
const band = p.deadBand[0] * p.heightPerArm;
const hours = 3600;

/** Key off from a full tank and a level coach. `arm` pinned neutral where the state says so. */
const stand = (ails: readonly Ail[], state: 'auto' | 'shut', pinned = false, length = 30 * hours): Glimpse[] => {
  const sim = makeSim(afflict(p, ails));
  if (state === 'shut') sim.set({ panel: ['shut', 'shut'] });
  if (pinned) sim.set({ arm: ['neutral', 'neutral'] });
  sim.tankTo(p.cutOut);
  const rows = [sim.look()];
  sim.advance(length, 300, (g) => rows.push(g));
  return rows;
};
const at = (rows: readonly Glimpse[], t: number): Glimpse => rows.find((r) => r.t >= t) ?? rows.at(-1)!;
const off = (g: Glimpse, i: 0 | 1): number => g.rear[i] - p.rearHeight[i];
/** psi lost in the first half hour, when both states start alike. */
const firstFall = (rows: readonly Glimpse[]): number => (rows[0]!.tank - at(rows, 0.5 * hours).tank) / psi;
const cycles = (ails: readonly Ail[], state: 'auto' | 'shut'): boolean => {
  const sim = makeSim(afflict(p, ails));
  if (state === 'shut') sim.set({ panel: ['shut', 'shut'], arm: ['neutral', 'neutral'] });
  sim.tankTo(p.cutOut);
  sim.set({ key: true });
  sim.advance(6 * hours);
  return sim.changes.some((c) => c.what === 'pump on');
};
/** Places where soap or water shows the leak more often than not, over coaches whose instruments differ. */
const shows = (ails: readonly Ail[]): string[] => {
  const zones = airObservables.filter((o) => /soap|exhaust|hiss/.test(o.see)).map((o) => o.see);
  const counts = new Map<string, number>();
  for (let seed = 0; seed < 6; seed++) {
    const scene = makeScene(p, ails, makeRng(seed));
    for (const see of zones) {
      const outcome = observeIn(scene, see);
      if (outcome === 'none' || outcome === 'once' || outcome === null) continue;
      const key = see === 'hiss after stop' ? see : `${see}: ${outcome}`;
      counts.set(key, (counts.get(key) ?? 0) + 1);
    }
  }
  return [...counts].filter(([, n]) => n >= 4).map(([key]) => key);
};

const crossed = (list: readonly Glimpse[], level: number): number => list.find((g) => g.tank < level)!.t;
const stretch = (list: readonly Glimpse[]): number => crossed(list, 10 * psi) - crossed(list, 40 * psi);

const leak = (ailment: Ailment, size = 0.01): Ail[] => [{ ailment, size }];

describe('tank, drain, relief, gauge', () => {
  const ails = leak('tank leak');
  test('T goes to 0 in AUTO, at the same rate in SHUT; the coach holds in both', () => {
    const auto = stand(ails, 'auto');
    const shut = stand(ails, 'shut');
    expect(auto.at(-1)!.tank / psi).toBeLessThan(1);
    expect(shut.at(-1)!.tank / psi).toBeLessThan(1);
    expect(firstFall(shut) / firstFall(auto)).toBeCloseTo(1, 2);
    for (const rows of [auto, shut])
      for (const i of [0, 1] as const) expect(Math.abs(off(rows.at(-1)!, i))).toBeLessThan(0.001);
  });
  test('the pump cycles in both; bubbles at it', () => {
    expect([cycles(ails, 'auto'), cycles(ails, 'shut')]).toEqual([true, true]);
    expect(shows(ails)).toEqual(['soap tank: bubbles']);
  });
});

describe('discharge check', () => {
  const ails = leak('discharge check leak');
  test('T goes to 0 in AUTO, at the same rate in SHUT; the coach holds in both', () => {
    const auto = stand(ails, 'auto');
    const shut = stand(ails, 'shut');
    expect(auto.at(-1)!.tank / psi).toBeLessThan(1);
    expect(firstFall(shut) / firstFall(auto)).toBeCloseTo(1, 2);
    expect(Math.abs(off(auto.at(-1)!, 0))).toBeLessThan(0.001);
    expect(Math.abs(off(shut.at(-1)!, 0))).toBeLessThan(0.001);
  });
  test('the pump cycles in both; no bubbles outside, a hiss at intake or unloader', () => {
    expect([cycles(ails, 'auto'), cycles(ails, 'shut')]).toEqual([true, true]);
    expect(shows(ails)).toEqual(['hiss after stop']);
  });
});

describe('supply line', () => {
  const ails = leak('supply line leak');
  test('T goes to 0 in AUTO and SHUT, holds with the tank outlet closed; the coach holds', () => {
    const auto = stand(ails, 'auto');
    const shut = stand(ails, 'shut');
    expect(auto.at(-1)!.tank / psi).toBeLessThan(1);
    expect(firstFall(shut) / firstFall(auto)).toBeCloseTo(1, 2);
    expect(Math.abs(off(auto.at(-1)!, 0))).toBeLessThan(0.001);
    const sim = makeSim(afflict(p, ails));
    sim.tankTo(p.cutOut);
    sim.set({ outletClosed: true });
    sim.advance(10 * hours);
    expect((p.cutOut - sim.look().tank) / psi).toBeLessThan(0.1);
    expect(sim.look().supply / psi).toBeLessThan(1);
  });
  test('the pump cycles in both; bubbles at the line', () => {
    expect([cycles(ails, 'auto'), cycles(ails, 'shut')]).toEqual([true, true]);
    expect(shows(ails)).toEqual(['soap supply: bubbles']);
  });
});

describe('inlet seat of a height valve', () => {
  const ails = leak('left inlet seat leak');
  test('T goes to about B and stays; that side rises, in puffs', () => {
    const rows = stand(ails, 'auto');
    const end = rows.at(-1)!;
    expect(Math.abs(end.tank - end.bellows[0]) / psi).toBeLessThan(1.5);
    expect(Math.max(...rows.map((g) => off(g, 0)))).toBeGreaterThan(0.9 * band);
    expect(off(end, 0)).toBeGreaterThan(-0.3 * band);
    const sim = makeSim(afflict(p, ails));
    sim.advance(4 * hours);
    expect(sim.changes.filter((c) => c.what === 'left exhausts').length).toBeGreaterThan(3);
  });
  test('holds in SHUT with the arm neutral: a dead end; the coach holds', () => {
    const rows = stand(ails, 'shut', true);
    expect(Math.abs(rows[0]!.tank - rows.at(-1)!.tank) / psi).toBeLessThan(0.1);
    expect(Math.abs(off(rows.at(-1)!, 0))).toBeLessThan(0.001);
  });
  test('the pump cycles in AUTO, not in SHUT; bubbles at the exhaust in puffs only', () => {
    expect([cycles(ails, 'auto'), cycles(ails, 'shut')]).toEqual([true, false]);
    expect(shows(ails)).toEqual(['left exhaust: puffs']);
  });
});

const valveSide: readonly [Ailment, readonly string[]][] = [
  ['left exhaust seat leak', ['left exhaust: steady', 'left exhaust tank zero: steady']],
  ['left valve to panel leak', ['left soap valve to panel: bubbles']],
  ['left valve cover leak', ['left soap valve: bubbles']],
];
describe.each(valveSide)('%s', (ailment, where) => {
  const ails = leak(ailment);
  test('T goes to about B and sits there; level until then, that side down after; both to 0 on the stops', () => {
    const rows = stand(ails, 'auto', false, 60 * hours);
    const knee = rows.find((g) => (g.tank - g.bellows[0]) / psi < 1)!;
    expect(off(knee, 0)).toBeGreaterThan(-1.8 * band);
    const half = rows.find((g) => off(g, 0) < -0.6 * p.toStops)!;
    expect(Math.abs(half.tank - half.bellows[0]) / psi).toBeLessThan(2);
    expect(half.bellows[0] / knee.bellows[0]).toBeGreaterThan(0.75);
    const end = rows.at(-1)!;
    expect(off(end, 0)).toBeLessThan(-p.toStops);
    expect(end.tank / psi).toBeLessThan(3);
  });
  test('T holds in SHUT with the arm neutral; the coach holds', () => {
    const rows = stand(ails, 'shut', true);
    expect(Math.abs(rows[0]!.tank - rows.at(-1)!.tank) / psi).toBeLessThan(0.1);
    expect(Math.abs(off(rows.at(-1)!, 0))).toBeLessThan(0.001);
  });
  test('the pump cycles in AUTO, not in SHUT; where it shows', () => {
    expect([cycles(ails, 'auto'), cycles(ails, 'shut')]).toEqual([true, false]);
    expect(shows(ails)).toEqual(where);
  });
});

const springSide: readonly [Ailment, string][] = [
  ['left bellows leak', 'left soap bellows: bubbles'],
  ['left delivery line leak', 'left soap delivery: bubbles'],
];
describe.each(springSide)('%s', (ailment, where) => {
  const ails = leak(ailment);
  test('in AUTO as the exhaust seat', () => {
    const rows = stand(ails, 'auto', false, 60 * hours);
    const knee = rows.find((g) => (g.tank - g.bellows[0]) / psi < 1)!;
    expect(off(knee, 0)).toBeGreaterThan(-1.8 * band);
    expect(rows.at(-1)!.tank / psi).toBeLessThan(3);
    expect(off(rows.at(-1)!, 0)).toBeLessThan(-p.toStops);
  });
  test('in SHUT T holds and that side goes down, at nearly constant B until its stops', () => {
    const rows = stand(ails, 'shut', true);
    expect(Math.abs(rows[0]!.tank - rows.at(-1)!.tank) / psi).toBeLessThan(0.1);
    expect(off(rows.at(-1)!, 0)).toBeLessThan(-p.toStops);
    const half = rows.find((g) => off(g, 0) < -0.5 * p.toStops)!;
    expect(half.bellows[0] / rows[0]!.bellows[0]).toBeGreaterThan(0.85);
    expect(Math.abs(off(rows.at(-1)!, 1))).toBeLessThan(0.25 * p.toStops);
  });
  test('the pump cycles in AUTO, not in SHUT; where it shows', () => {
    expect([cycles(ails, 'auto'), cycles(ails, 'shut')]).toEqual([true, false]);
    expect(shows(ails)).toEqual([where]);
  });
});

describe('tank leak with a bad inlet check', () => {
  // The valve calls: the coach came to rest just under its dead band, as after a cold evening.
  const ails: Ail[] = [
    { ailment: 'tank leak', size: 0.01 },
    { ailment: 'left inlet check bad', size: 0.1 },
  ];
  const low = (state: 'auto' | 'shut'): Glimpse[] => {
    const sim = makeSim(afflict(p, ails));
    sim.tankTo(p.cutOut);
    if (state === 'shut') sim.set({ panel: ['shut', 'shut'] });
    const rows = [sim.look()];
    const keep = (g: Glimpse): void => {
      rows.push(g);
    };
    sim.advance(1.5 * hours, 300, keep);
    sim.stand(-0.97 * band, 0);
    sim.weather({ start: p.ambient, drop: 4, over: 6 * hours, since: sim.time() });
    sim.advance(30 * hours, 300, keep);
    return rows;
  };
  test('T to 0 with a knee at B, that side down once T is below B', () => {
    const rows = low('auto');
    const before = rows.filter((g) => g.tank > g.bellows[0] + psi);
    for (const g of before) expect(off(g, 0)).toBeGreaterThan(-1.8 * band);
    expect(off(rows.at(-1)!, 0)).toBeLessThan(-p.toStops);
    expect(rows.at(-1)!.tank / psi).toBeLessThan(1);
    const sound = stand([ails[0]!], 'auto');
    expect(stretch(rows)).toBeGreaterThan(1.5 * stretch(sound));
  });
  test('SHUT: T to 0, the coach holds but for the cold', () => {
    const rows = low('shut');
    expect(rows.at(-1)!.tank / psi).toBeLessThan(1);
    expect(off(rows.at(-1)!, 0)).toBeGreaterThan(-0.4 * p.toStops);
  });
  test('the pump cycles in both; bubbles at the tank, none on that side', () => {
    expect([cycles(ails, 'auto'), cycles(ails, 'shut')]).toEqual([true, true]);
    expect(shows(ails)).toEqual(['soap tank: bubbles']);
  });
  test('a good inlet check: T goes to zero and the coach stays up', () => {
    const sim = makeSim(afflict(p, []));
    sim.tankTo(0);
    sim.set({ arm: ['fill', 'fill'] });
    sim.advance(10 * hours);
    expect(Math.abs(off(sim.look(), 0))).toBeLessThan(0.001);
  });
  test('a bad one says nothing until T is below B, nor with the arm neutral', () => {
    const sim = makeSim(afflict(p, [ails[1]!]));
    sim.advance(5 * hours);
    expect(Math.abs(off(sim.look(), 0))).toBeLessThan(0.001);
    sim.tankTo(0);
    sim.advance(10 * hours);
    expect(Math.abs(off(sim.look(), 0))).toBeLessThan(0.001);
    sim.set({ arm: ['fill', 'neutral'] });
    sim.advance(12 * hours);
    expect(off(sim.look(), 0)).toBeLessThan(-0.5 * p.toStops);
  });
});
