/** What a coach does while nobody touches it, beyond the truth table. Common practice, no source, where none is named. */
import { describe, expect, test } from 'vitest';
import { afflict } from '../../server/twin/afflict.ts';
import { makeRng } from '../../server/twin/rng.ts';
import { observeAll } from '../../server/twin/observe.ts';
import { makeSim } from '../../server/twin/sim.ts';
import type { Glimpse } from '../../server/twin/sim-shapes.ts';
import { psi, sheetOf, tight } from './coaches.ts';
import { makeCoach } from '../../server/twin/coach.ts';

const hours = 3600;
const p = tight();
const watch = (sim: ReturnType<typeof makeSim>, until: number, every: number): Glimpse[] => {
  const rows = [sim.look()];
  sim.advance(until, every, (g) => rows.push(g));
  return rows;
};
const off = (g: Glimpse, i: 0 | 1): number => g.rear[i] - p.rearHeight[i];

test('a bellows leak fed in AUTO pulls T down straight, in steps as the valve acts', () => {
  const sim = makeSim(afflict(p, [{ ailment: 'left bellows leak', size: 0.008 }]));
  sim.tankTo(p.cutOut);
  const rows = watch(sim, 5 * hours, 20);
  const fed = rows.filter((g) => (g.tank - g.bellows[0]) / psi > 4);
  const n = fed.length;
  const mean = (f: (g: Glimpse) => number): number => fed.reduce((a, g) => a + f(g), 0) / n;
  const mt = mean((g) => g.t);
  const my = mean((g) => g.tank);
  const slope = mean((g) => (g.t - mt) * (g.tank - my)) / mean((g) => (g.t - mt) ** 2);
  // Straight: no more than a step of the valve off the line, where the decay of a leaking tank would bend by many psi.
  for (const g of fed) expect(Math.abs(g.tank - my - slope * (g.t - mt)) / psi).toBeLessThan(3.5);
  const still = fed.slice(1).filter((g, i) => Math.abs(g.tank - fed[i]!.tank) / psi < 0.05).length;
  expect(still / n).toBeGreaterThan(0.5);
  expect((fed[0]!.tank - fed.at(-1)!.tank) / psi).toBeGreaterThan(40);
});

test('just pumped air is hot: T falls several psi in 10 to 15 minutes without a leak, then stands', () => {
  const sim = makeSim(afflict(p, []));
  sim.tankTo(20 * psi);
  sim.set({ key: true });
  sim.advance(600);
  expect(sim.controls.pump).toBe(false);
  sim.set({ key: false });
  const hot = makeSim(afflict(p, []));
  hot.tankTo(20 * psi);
  hot.set({ key: true });
  while (!hot.changes.some((c) => c.what === 'pump off')) hot.advance(hot.time() + 1);
  const start = hot.time();
  const top = hot.look().tank;
  hot.set({ key: false });
  hot.advance(start + 12 * 60);
  const later = hot.look().tank;
  expect((top - later) / psi).toBeGreaterThan(3);
  expect((top - later) / psi).toBeLessThan(15);
  hot.advance(start + 27 * 60);
  expect((later - hot.look().tank) / psi).toBeLessThan(0.25 * ((top - later) / psi));
});

test('cold night, SHUT: both sides sink with absolute temperature, T by Gay-Lussac, nothing leaks', () => {
  const drop = 15;
  const sim = makeSim(afflict(p, []));
  sim.set({ panel: ['shut', 'shut'], arm: ['neutral', 'neutral'] });
  sim.tankTo(p.cutOut);
  const before = sim.look();
  sim.weather({ start: p.ambient, drop, over: 10 * hours, since: 0 });
  sim.advance(14 * hours);
  const after = sim.look();
  const share = (p.ambient - drop) / p.ambient;
  expect((after.tank + p.atmosphere) / (before.tank + p.atmosphere)).toBeCloseTo(share, 3);
  for (const i of [0, 1] as const) {
    // Constant load, nearly constant B (the area grows a little on the way down): volume follows absolute temperature.
    const sunk = (p.volume * (1 - share)) / (p.area * p.lever);
    expect(-off(after, i) / sunk).toBeGreaterThan(0.8);
    expect(-off(after, i) / sunk).toBeLessThan(1.1);
  }
  expect(after.out).toBe(0);
});

const fill = (ownCheck: boolean): Glimpse => {
  const sim = makeSim(afflict(tight({ panel: { ...p.panel!, ownCheck } }), []));
  sim.tankTo(10 * psi);
  sim.set({ panel: ['fill', 'fill'] });
  sim.advance(1800);
  return sim.look();
};

describe('FILL joins tank and bellows around the inlet check', () => {
  test('with T below B the coach is let down', () => {
    expect(off(fill(false), 0)).toBeLessThan(-0.5 * p.toStops);
    expect(fill(false).tank / psi).toBeGreaterThan(15);
  });
  test('unless the panel has a check of its own', () => {
    expect(Math.abs(off(fill(true), 0))).toBeLessThan(0.001);
  });
  test('with T above B it goes up', () => {
    const sim = makeSim(afflict(p, []));
    sim.set({ panel: ['fill', 'fill'] });
    sim.advance(300);
    expect(off(sim.look(), 0)).toBeGreaterThan(0.8 * p.toTop);
  });
});

test('EMPTY lets both sides down to the stops; T is not drawn on', () => {
  const sim = makeSim(afflict(p, []));
  sim.set({ panel: ['empty', 'empty'] });
  sim.advance(600);
  expect(off(sim.look(), 0)).toBeLessThan(-p.toStops);
  expect(Math.abs(sim.look().tank - p.cutOut) / psi).toBeLessThan(0.2);
});

test('a leak after a protection valve draws T to its setting and no further', () => {
  const guarded = tight({}, 'larkfield-11');
  const sim = makeSim(afflict(guarded, [{ ailment: 'supply line leak', size: 0.02 }]));
  sim.tankTo(guarded.cutOut);
  sim.advance(40 * hours);
  expect(Math.abs(sim.look().tank - guarded.protection!) / 1000).toBeLessThan(5);
  expect(sim.look().supply / 1000).toBeLessThan(5);
});

const one = (key: boolean): Glimpse => {
  const sim = makeSim(
    afflict(p, [
      { ailment: 'left bellows leak', size: 0.01 },
      { ailment: 'motor open', size: 0 },
    ]),
  );
  sim.set({ key });
  sim.advance(5 * hours);
  return sim.look();
};
test('the key changes only the pump: heights and T of a leaking coach are the same key on below cut-in and key off', () => {
  expect(one(true).tank).toBeCloseTo(one(false).tank, 3);
  expect(one(true).rear[0]).toBeCloseTo(one(false).rear[0], 6);
});

test('with a solenoid on the sheet the key does close the suspension off', () => {
  const sim = makeSim(afflict(tight({ solenoid: true }), [{ ailment: 'left bellows leak', size: 0.01 }]));
  sim.advance(10 * hours);
  expect(Math.abs(sim.look().tank - p.cutOut) / psi).toBeLessThan(0.2);
  expect(off(sim.look(), 0)).toBeLessThan(-0.5 * p.toStops);
});

test('a height valve waits out its delay and its dead band', () => {
  const sim = makeSim(afflict(p, []));
  const band = p.deadBand[0] * p.heightPerArm;
  sim.stand(-1.05 * band, 0);
  const opened = (): number | undefined => sim.changes.find((c) => c.what === 'left fills')?.t;
  sim.advance(p.delay[0] - 0.1);
  expect(opened()).toBeUndefined();
  sim.advance(60);
  expect(opened()).toBeCloseTo(p.delay[0], 2);
  expect(off(sim.look(), 0)).toBeGreaterThan(-0.5 * band);
  const inside = makeSim(afflict(p, []));
  inside.stand(-0.9 * band, 0);
  inside.advance(3600);
  expect(inside.changes.length).toBe(0);
});

test('a reversed valve runs away to a stop', () => {
  const sim = makeSim(afflict(p, [{ ailment: 'left valve reversed', size: 0 }]));
  sim.stand(-1.2 * p.deadBand[0] * p.heightPerArm, 0);
  sim.set({ engine: true });
  sim.advance(1800);
  expect(off(sim.look(), 0)).toBeLessThan(-p.toStops);
});

test('a welded switch runs the pump past cut-out until the relief lifts', () => {
  const sim = makeSim(afflict(p, [{ ailment: 'switch welded', size: 0 }]));
  sim.set({ engine: true });
  sim.advance(1200);
  expect(sim.controls.pump).toBe(true);
  expect(sim.look().tank).toBeGreaterThan(p.cutOut * 1.1);
  expect(sim.look().tank).toBeLessThan(p.relief * 1.05);
});

test('a welded relay runs the pump with the key off', () => {
  const sim = makeSim(afflict(p, [{ ailment: 'relay welded', size: 0 }]));
  sim.advance(600);
  expect(sim.controls.pump).toBe(true);
});

test('three at once, with a lying gauge, run and are seen through', () => {
  const seen = observeAll(
    p,
    [
      { ailment: 'left bellows leak', size: 0.05 },
      { ailment: 'pump worn', size: 0.4 },
      { ailment: 'gauge high', size: 1e5 },
    ],
    makeRng(4),
  );
  expect(seen.get('left height shut')).toBe('drops');
  expect(seen.get('pump-up shut')).toBe('slow');
  expect(seen.get('second gauge')).toBe('coach gauge high');
});

test('a sound coach shows nothing, whatever its draw, in nineteen of twenty checks', () => {
  let odd = 0;
  let all = 0;
  for (let seed = 1; seed <= 6; seed++)
    for (const id of ['juniper-38', 'larkfield-11'] as const) {
      const coach = makeCoach(sheetOf(id), { seed });
      for (const [see, outcome] of observeAll(coach, [], makeRng(seed))) {
        if (outcome === null || see === 'hiss after stop') continue;
        all += 1;
        if (
          !/^(?:none|no fall|holds|level|no|yes|up|both|within|runs|starts|stops|rests|agrees|alike|little)$/.test(
            outcome,
          )
        )
          odd += 1;
        if (/pump cycles|quits hot/.test(see) && outcome === 'yes') odd += 1;
      }
    }
  expect(all).toBeGreaterThan(500);
  expect(odd / all).toBeLessThan(0.05);
});
