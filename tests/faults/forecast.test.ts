/** The quick way to expected information and repair cost says what the plain formulas say. */
import { describe, expect, test } from 'vitest';
import { forecastsOf } from '../../server/faults/forecast.ts';
import { type Hypothesis, hypothesesOf, outlook } from '../../server/faults/hypotheses.ts';
import { expectedInformation, rowsOf } from '../../server/faults/information.ts';
import { modelOf } from '../../server/faults/model.ts';
import { candidates } from '../../server/faults/candidates.ts';
import { costOf } from '../../server/faults/costing.ts';
import { observables } from '../../server/faults/observables.ts';
import { bestOrder } from '../../server/faults/repair-cost.ts';
import { type Weighed, weighEvidence } from '../../server/faults/weigh.ts';
import { makeRng } from '../../server/twin/rng.ts';
import { juniper, larkfield, seen, standingOf } from './bench.ts';

const rng = makeRng(8_113);
const situations = Array.from({ length: 24 }, (_, n) => {
  const sheet = n % 2 === 0 ? juniper : larkfield;
  const model = modelOf(sheet);
  const can = observables.filter((o) => model.view(o.see));
  const evidence = Array.from({ length: 1 + (n % 7) }, (__, k) => {
    const o = can[Math.floor(rng.next() * can.length)]!;
    return seen(o.see, o.outcomes[Math.floor(rng.next() * o.outcomes.length)]!, k);
  });
  const w = weighEvidence(model, evidence, [], true);
  return { sheet, w, hs: hypothesesOf(w), words: evidence.map((e) => e.words).join(', ') };
});

const plainCost = (w: Weighed, hs: readonly Hypothesis[], ps: readonly number[]): number => {
  const chance = new Map<number, number>();
  for (const [i, h] of hs.entries()) for (const c of h.of) chance.set(c, (chance.get(c) ?? 0) + ps[i]!);
  const order = bestOrder(
    [...chance].map(([c, p]) => {
      const f = w.model.faults[c]!;
      return { c, p, cost: f.hands + 0.7 * f.wait + 10 };
    }),
  );
  const upTo = new Map<number, number>();
  let sum = 0;
  for (const r of order) upTo.set(r.c, (sum += r.cost));
  return hs.reduce((all, h, i) => all + ps[i]! * Math.max(0, ...h.of.map((c) => upTo.get(c)!)), 0);
};

describe('forecast', () => {
  test.each(situations.map((s) => [s.words, s] as const))(
    '%s: each observable tells what the plain sum says',
    (_, s) => {
      const prior = s.hs.map((h) => h.p);
      const forecast = forecastsOf(s.w, s.hs);
      const apart = observables.map(({ see }) => {
        const table = outlook(s.w, see, s.hs);
        const quick = forecast(see);
        if (!table || !quick) return table === quick ? 0 : 1;
        return Math.abs(quick.bits - expectedInformation(prior, table));
      });
      expect(Math.max(...apart)).toBeLessThan(1e-9);
    },
  );
  test.each(situations.map((s) => [s.words, s] as const))(
    '%s: so do the candidates, whose order is by rate',
    (_, s) => {
      const prior = s.hs.map((h) => h.p);
      const list = candidates(standingOf(s.sheet, ['left rear low']), s.sheet, s.w, s.hs);
      for (const c of list) expect(c.bits).toBeCloseTo(expectedInformation(prior, rowsOf(c.table)), 9);
      expect(list.map((c) => c.rate)).toEqual(list.map((c) => c.rate).toSorted((a, b) => b - a));
    },
  );
  test.each(situations.map((s) => [s.words, s] as const))('%s: so does the cost of repair', (_, s) => {
    const ps = s.hs.map(() => rng.next());
    const sum = ps.reduce((a, b) => a + b, 0);
    const even = ps.map((p) => p / sum);
    for (const chances of [s.hs.map((h) => h.p), even])
      expect(costOf(s.w, s.hs, chances).cost).toBeCloseTo(plainCost(s.w, s.hs, chances), 6);
  });
});
