/** Inference, order of repairs and information against published networks and worked cases. */
import { describe, expect, test } from 'vitest';
import { type Causes, infer } from '../../server/faults/infer.ts';
import type { Seen } from '../../server/faults/seen.ts';
import { entropy, expectedInformation } from '../../server/faults/information.ts';
import { bestInspectedOrder, bestOrder, expectedCost, expectedInspectedCost } from '../../server/faults/repair-cost.ts';
import { alarm, asia, chance, given } from './oracle.ts';

describe('the oracle gives the published results', () => {
  // Lauritzen and Spiegelhalter 1988; values as printed by gRain's and bnlearn's "asia" pages, the rest derived by enumeration.
  const asiaRows: [string, Record<string, boolean>, Record<string, boolean>, number][] = [
    ['lung', { lung: true }, {}, 0.055],
    ['bronc', { bronc: true }, {}, 0.45],
    ['either', { either: true }, {}, 0.064828],
    ['xray', { xray: true }, {}, 0.11029004],
    ['dysp', { dysp: true }, {}, 0.4359706],
    ['lung | asia, dysp', { lung: true }, { asia: true, dysp: true }, 0.09952515],
    ['bronc | asia, dysp', { bronc: true }, { asia: true, dysp: true }, 0.8114021],
    ['lung | asia, dysp, smoke', { lung: true }, { asia: true, dysp: true, smoke: true }, 0.1455191],
    ['tub | asia, dysp, xray', { tub: true }, { asia: true, dysp: true, xray: true }, 0.39171172],
    ['lung | xray', { lung: true }, { xray: true }, 0.4887114],
  ];
  test.each(asiaRows)('Asia: P(%s)', (_, ask, known, want) => expect(given(asia, ask, known)).toBeCloseTo(want, 7));
  // Russell and Norvig print .284 and .00513; further digits derived by enumeration.
  const alarmRows: [string, Record<string, boolean>, Record<string, boolean>, number][] = [
    ['burglary | john, mary', { burglary: true }, { john: true, mary: true }, 0.2841718],
    ['burglary | john, not mary', { burglary: true }, { john: true, mary: false }, 0.0051299],
    ['earthquake | john, mary', { earthquake: true }, { john: true, mary: true }, 0.1760668],
    ['john, mary | burglary', { john: true, mary: true }, { burglary: true }, 0.5922426],
  ];
  test.each(alarmRows)('alarm: P(%s)', (_, ask, known, want) => expect(given(alarm, ask, known)).toBeCloseTo(want, 6));
});

/** Evidence whose chance under a set of two causes is not noisy-max: put in as the only cause of a set of its own. */
const asCauses = (net: typeof alarm, roots: readonly [string, string], known: Record<string, boolean>): number[] => {
  const [a, b] = roots;
  const pa = chance(net, { [a]: true });
  const pb = chance(net, { [b]: true });
  const odds = Float64Array.of(pa / (1 - pa), pb / (1 - pb), (pa / (1 - pa)) * (pb / (1 - pb)));
  const like = (x: boolean, y: boolean): number => given(net, known, { [a]: x, [b]: y });
  const causes: Causes = { odds, links: new Float64Array(9) };
  const rows = [like(true, false), like(false, true), like(true, true)];
  const none = like(false, false);
  const seen: Seen = {
    ordered: true,
    width: 2,
    from: 1,
    to: 1,
    weight: 1,
    healthy: [1 - none, none],
    rows: rows.flatMap((p) => [1 - p, p]),
    strays: rows,
  };
  const { singles, unknown } = infer(causes, [seen], { triples: false });
  // The engine keeps a little for "something else", which a published network does not know.
  const within = 1 - unknown;
  return [(singles[0]! + singles[2]!) / within, (singles[1]! + singles[2]!) / within];
};

describe('the engine on published networks', () => {
  test('alarm: burglary and earthquake given both calls (Russell and Norvig: .284)', () => {
    const [burglary, earthquake] = asCauses(alarm, ['burglary', 'earthquake'], { john: true, mary: true });
    expect(burglary).toBeCloseTo(0.2841718, 6);
    expect(earthquake).toBeCloseTo(0.1760668, 6);
  });
  test('alarm: burglary given one call and not the other (.00513)', () => {
    const [burglary] = asCauses(alarm, ['burglary', 'earthquake'], { john: true, mary: false });
    expect(burglary).toBeCloseTo(0.0051299, 6);
  });
  test('Asia: tuberculosis and lung cancer, both roots of "either", given x-ray, asia, dyspnoea', () => {
    // Within fixed asia and unknown smoke: tub and lung are independent a priori, so they are two causes of xray and dysp.
    const fixed = asia.map((n) => (n.name === 'asia' ? { ...n, given: { '': 1 } } : n));
    const [tub, lung] = asCauses(fixed, ['tub', 'lung'], { xray: true, dysp: true });
    expect(tub).toBeCloseTo(0.39171172, 6);
    expect(lung).toBeCloseTo(0.44427051, 6);
  });
});

/** Two layers, noisy-or: causes make findings, each with a chance of its own, and a leak. */
describe('the engine against enumeration on two-layer noisy-or networks', () => {
  // Pearl 1988, noisy-or: P(not e | S) = (1 - leak) product of (1 - q).
  const layer = (seed: number): { p: number[]; q: number[][]; leak: number[] } => {
    let s = seed;
    const next = (): number => {
      s = (s * 16_807) % 2_147_483_647;
      return s / 2_147_483_647;
    };
    const n = 6;
    return {
      p: Array.from({ length: n }, () => 0.01 + 0.04 * next()),
      q: Array.from({ length: 4 }, () => Array.from({ length: n }, () => (next() < 0.5 ? 0 : 0.2 + 0.7 * next()))),
      leak: Array.from({ length: 4 }, () => 0.01 + 0.05 * next()),
    };
  };
  test.each([1, 2, 3, 4, 5, 6, 7, 8])('network %i: marginals over sets of up to two', (seed) => {
    const { p, q, leak } = layer(seed * 7919);
    const n = p.length;
    const found = q.map((_, e) => (seed + e) % 2);
    const sets: number[][] = [[]];
    for (let i = 0; i < n; i++) {
      sets.push([i]);
      for (let j = i + 1; j < n; j++) sets.push([i, j]);
    }
    const weightOf = (set: number[]): number =>
      set.reduce((w, i) => w * (p[i]! / (1 - p[i]!)), 1) *
      found.reduce((w, there, e) => {
        const not = set.reduce((x, i) => x * (1 - q[e]![i]!), 1 - leak[e]!);
        return w * (there ? 1 - not : not);
      }, 1);
    const unknown = 1e-4 * 0.5 ** found.length;
    const total = sets.reduce((w, s) => w + weightOf(s), unknown);
    const links = new Float64Array(n * n).fill(1);
    for (let i = 0; i < n; i++) links[i * n + i] = 0;
    const evidence = found.map((there, e): Seen => {
      const on = (i: number): number => 1 - (1 - leak[e]!) * (1 - q[e]![i]!);
      return {
        ordered: true,
        width: 2,
        from: there,
        to: there,
        weight: 1,
        healthy: [1 - leak[e]!, leak[e]!],
        rows: p.flatMap((_, i) => [1 - on(i), on(i)]),
        strays: p.map((_, i) => on(i) - leak[e]!),
      };
    });
    const got = infer({ odds: Float64Array.from(p, (x) => x / (1 - x)), links }, evidence, { triples: false });
    for (let i = 0; i < n; i++) {
      const want = sets.filter((s) => s.includes(i)).reduce((w, s) => w + weightOf(s), 0) / total;
      expect(got.marginals[i]).toBeCloseTo(want, 10);
    }
    expect(got.none).toBeCloseTo(weightOf([]) / total, 10);
  });
});

describe('order and expected cost of repair (Heckerman, Breese and Rommelse 1995, CACM 38(3))', () => {
  const permutations = <T>(xs: readonly T[]): T[][] =>
    xs.length < 2
      ? [[...xs]]
      : xs.flatMap((x, i) => permutations([...xs.slice(0, i), ...xs.slice(i + 1)]).map((r) => [x, ...r]));
  const repairs = [
    { name: 'a1', p: 0.45, cost: 10 },
    { name: 'a2', p: 0.3, cost: 4 },
    { name: 'a3', p: 0.15, cost: 1 },
    { name: 'a4', p: 0.1, cost: 20 },
  ];
  test('falling p / cost is the order of least expected cost, worked by hand: a3 a2 a1 a4, 11.90', () => {
    const order = bestOrder(repairs);
    expect(order.map((r) => r.name)).toEqual(['a3', 'a2', 'a1', 'a4']);
    expect(expectedCost(order)).toBeCloseTo(11.9, 9);
    expect(Math.min(...permutations(repairs).map(expectedCost))).toBeCloseTo(11.9, 9);
    expect(expectedCost(repairs.toSorted((a, b) => b.p - a.p))).toBeCloseTo(14.45, 9);
  });
  test('with a look before each repair the cost of repair drops out of the order: 120.3', () => {
    const looks = [
      { name: 'fitting', p: 0.4, look: 5, mend: 10 },
      { name: 'valve', p: 0.3, look: 20, mend: 120 },
      { name: 'bellows', p: 0.2, look: 8, mend: 300 },
      { name: 'tube', p: 0.1, look: 10, mend: 15 },
    ];
    const order = bestInspectedOrder(looks);
    expect(order.map((r) => r.name)).toEqual(['fitting', 'bellows', 'valve', 'tube']);
    expect(expectedInspectedCost(order)).toBeCloseTo(120.3, 9);
    expect(Math.min(...permutations(looks).map(expectedInspectedCost))).toBeCloseTo(120.3, 9);
  });
});

describe('entropy and information (Shannon 1948)', () => {
  test('of .4 .3 .2 .1 is 1.846439 bit', () => expect(entropy([0.4, 0.3, 0.2, 0.1])).toBeCloseTo(1.846439, 6));
  test('Bayes on .4 .3 .2 .1 with .9 .2 .2 .05', () => {
    const causes: Causes = { odds: Float64Array.of(0.3 / 0.4, 0.2 / 0.4, 0.1 / 0.4), links: new Float64Array(9) };
    const rows = [0.2, 0.2, 0.05];
    const seen: Seen = {
      ordered: true,
      width: 2,
      from: 1,
      to: 1,
      weight: 1,
      healthy: [0.1, 0.9],
      rows: rows.flatMap((p) => [1 - p, p]),
      strays: rows,
    };
    const got = infer(causes, [seen], { triples: false });
    // 0.774194 .129032 .086022 .010753, less what is kept for "something else".
    expect(got.none).toBeCloseTo(0.774194, 3);
    expect(got.singles[0]! / got.none).toBeCloseTo(0.129032 / 0.774194, 5);
    expect(got.singles[1]! / got.none).toBeCloseTo(0.086022 / 0.774194, 5);
    expect(got.singles[2]! / got.none).toBeCloseTo(0.010753 / 0.774194, 5);
  });
  test('a noiseless yes or no on even odds tells 1 bit, a coin nothing', () => {
    expect(
      expectedInformation(
        [0.5, 0.5],
        [
          [1, 0],
          [0, 1],
        ],
      ),
    ).toBeCloseTo(1, 12);
    expect(
      expectedInformation(
        [0.5, 0.5],
        [
          [0.5, 0.5],
          [0.5, 0.5],
        ],
      ),
    ).toBeCloseTo(0, 12);
  });
  test('a binary symmetric channel of .1 on even odds tells 1 - H(.1) = 0.531004 bit (Cover and Thomas)', () =>
    expect(
      expectedInformation(
        [0.5, 0.5],
        [
          [0.9, 0.1],
          [0.1, 0.9],
        ],
      ),
    ).toBeCloseTo(0.531004, 6));
});
