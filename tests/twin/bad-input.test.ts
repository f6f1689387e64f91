/** What cannot be is refused by name, and no run returns a number that is not one. */
import { describe, expect, test } from 'vitest';
import { ImpossibleInput } from '../../server/core/quantity.ts';
import { Sheet } from '../../server/sheet/schema.ts';
import { ailments } from '../../server/twin/ailments.ts';
import { afflict } from '../../server/twin/afflict.ts';
import { makeCoach } from '../../server/twin/coach.ts';
import { observe } from '../../server/twin/observe.ts';
import { checkParams } from '../../server/twin/params.ts';
import { makeRng } from '../../server/twin/rng.ts';
import { run } from '../../server/twin/run.ts';
import { makeSim } from '../../server/twin/sim.ts';
import { type Ail, drawSize, kindOf, sizes } from '../../server/twin/sizes.ts';
import { sheetOf, tight } from './coaches.ts';

const refused = (f: () => unknown): string => {
  try {
    f();
  } catch (error) {
    if (error instanceof ImpossibleInput) return error.input;
    throw error;
  }
  return 'nothing';
};

describe('parameters', () => {
  test.each([
    ['tank', { tank: 0 }, 'tank'],
    ['tank not a number', { tank: Number.NaN }, 'tank'],
    ['cut-in above cut-out', { cutIn: 9e5, cutOut: 8e5 }, 'cutIn'],
    ['relief under cut-out', { relief: 5e5 }, 'relief'],
    ['a load below zero', { load: [-1, 1e4] as const }, 'left load'],
    ['bellows used up before the stops', { volume: 1e-3 }, 'springs.volume'],
    ['critical ratio', { criticalRatio: 1.2 }, 'criticalRatio'],
    ['a night to absolute zero', { nightDrop: 400 }, 'nightDrop'],
    [
      'a pump that sucks',
      {
        delivery: [
          [0, -1],
          [1e5, 1],
        ] as const,
      },
      'pump.delivery[0].flow',
    ],
    [
      'a delivery that turns back',
      {
        delivery: [
          [1e5, 1e-4],
          [0, 1e-4],
        ] as const,
      },
      'pump.delivery[1].at',
    ],
  ] as const)('%s', (_, over, name) => {
    expect(refused(() => checkParams({ ...tight(), ...over }))).toBe(name);
  });
  test('a coach above the air', () => {
    const high = { ...sheetOf('juniper-38'), altitude: { si: 20_000, pm: 1, unit: 'm' as const, text: '20000 m' } };
    expect(refused(() => makeCoach(high, { seed: 1 }))).toBe('altitude');
  });
  test('a seed that is no whole number', () =>
    expect(refused(() => makeCoach(sheetOf('juniper-38'), { seed: 0.5 }))).toBe('seed'));
});

describe('ailments', () => {
  test.each([-0.1, Number.NaN, Number.POSITIVE_INFINITY, 1e9])('a size of %d', (size) => {
    for (const ailment of ailments)
      expect(refused(() => afflict(tight(), [{ ailment, size }]))).toBe(`${ailment} size`);
  });
  test('a panel fault without a panel, a protection fault without the valve', () => {
    expect(refused(() => afflict(tight({ panel: null }), [{ ailment: 'panel left shut', size: 0 }]))).toBe(
      'panel left shut',
    );
    expect(
      refused(() => afflict(tight({ protection: null }), [{ ailment: 'protection valve stuck', size: 0.001 }])),
    ).toBe('protection valve stuck');
  });
  test('a name that is none', () =>
    expect(refused(() => afflict(tight(), [{ ailment: 'flat battery' as 'tank leak', size: 1 }]))).toBe(
      'flat battery',
    ));
});

describe('times, states and checks', () => {
  test('time running backwards', () => {
    const sim = makeSim(afflict(tight(), []));
    sim.advance(10);
    expect(refused(() => sim.advance(5))).toBe('until');
    expect(refused(() => sim.advance(20, 0))).toBe('every');
  });
  test('a tank below vacuum', () =>
    expect(refused(() => makeSim(afflict(tight(), [])).tankTo(-2e5))).toBe('tank pressure'));
  test('a script that ends before it begins, a deed outside it', () => {
    expect(refused(() => run(tight(), [], { until: 0, every: 1, deeds: [] }))).toBe('script until');
    expect(
      refused(() => run(tight(), [], { until: 10, every: 1, deeds: [{ at: 20, deed: { do: 'key', on: true } }] })),
    ).toBe('time of "key"');
  });
  test('a check that is none', () =>
    expect(refused(() => observe('left vibes', tight(), [], makeRng(1)))).toBe('check "left vibes"'));
});

test('a sheet that says nothing still makes a coach', () => {
  const bare = Sheet.parse({
    v: 1,
    id: 'bare',
    coach: 'Bare (demo)',
    source: 'invented',
    units: {
      pressure: 'psi',
      length: 'in',
      temperature: 'F',
      volume: 'gal',
      distance: 'mi',
      mass: 'lb',
      torque: 'lbf ft',
    },
    zone: 'America/Denver',
  });
  for (let seed = 0; seed < 20; seed++) expect(() => makeCoach(bare, { seed })).not.toThrow();
});

test('every ailment at its smallest, largest and most extreme size runs a night of finite numbers', () => {
  for (const ailment of ailments) {
    const row = sizes[kindOf(ailment).kind];
    for (const size of [row.low, row.high, row.most]) {
      // The other side is the mirror image; the largest holes empty everything in seconds.
      if (ailment.startsWith('right ')) continue;
      const coach = tight({ protection: 4.2e5 });
      const { rows } = run(coach, [{ ailment, size }], {
        until: 5400,
        every: 600,
        weather: { start: 290, drop: 10, over: 3600, since: 0 },
        deeds: [
          { at: 0, deed: { do: 'engine', on: true } },
          { at: 900, deed: { do: 'key', on: false } },
        ],
      });
      for (const g of rows)
        for (const value of [g.tank, ...g.bellows, ...g.rear, ...g.front, g.tankTemperature, g.mass])
          expect(Number.isFinite(value), `${ailment} ${size}`).toBe(true);
    }
  }
});

test('random coaches with two or three random ailments never stop the solver', () => {
  for (let seed = 0; seed < 24; seed++) {
    const rng = makeRng(seed);
    const coach = makeCoach(sheetOf(seed % 2 ? 'juniper-38' : 'larkfield-11'), { seed, panel: true, protection: true });
    const ails: Ail[] = [0, 1, 2].map(() => {
      const ailment = rng.pick(ailments);
      return { ailment, size: drawSize(ailment, rng) };
    });
    const { rows } = run(coach, ails, {
      until: 3 * 3600,
      every: 3600,
      deeds: [
        { at: 0, deed: { do: 'engine', on: true } },
        { at: 1200, deed: { do: 'key', on: false } },
        { at: 5000, deed: { do: 'panel', left: 'fill', right: 'empty' } },
        { at: 7000, deed: { do: 'panel', left: 'auto', right: 'auto' } },
      ],
    });
    expect(Number.isFinite(rows.at(-1)!.mass)).toBe(true);
  }
});
