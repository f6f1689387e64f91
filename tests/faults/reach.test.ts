/** Nothing in the catalogue is dead weight: every fault can be found, every check tells something, every name exists. */
import { describe, expect, test } from 'vitest';
import { catalogue, faultRows } from '../../server/faults/catalogue.ts';
import { checkRows, checks, confirmOf } from '../../server/faults/checks.ts';
import { airGivens } from '../../server/faults/givens/air.ts';
import { givens } from '../../server/faults/givens.ts';
import { hypothesesOf, outlook } from '../../server/faults/hypotheses.ts';
import { expectedInformation } from '../../server/faults/information.ts';
import { ailmentOf, featuresOf, type Model, modelOf } from '../../server/faults/model.ts';
import { observableOf, observables } from '../../server/faults/observables.ts';
import { weighEvidence } from '../../server/faults/weigh.ts';
import { cautionFor } from '../../server/guides/cautions.ts';
import { guideById } from '../../server/guides/steps.ts';
import { airObservables } from '../../server/twin/observables.ts';
import { type Sheet, Sheet as SheetSchema } from '../../server/sheet/schema.ts';
import { readFileSync } from 'node:fs';
import { seen, juniper } from './bench.ts';

const juniperRaw: unknown = JSON.parse(
  readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8'),
);

/** A coach that has everything, so that every fault is possible on it. */
const full: Sheet = ((): Sheet => {
  const raw = JSON.parse(readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8')) as {
    supply: object;
  };
  return SheetSchema.parse({
    ...raw,
    supply: { ...raw.supply, dryer: true, protection: '60 psi', regulator: '100 psi', unloader: true, relay: true },
  });
})();
const model: Model = modelOf(full);

/** Chance row of the leading explanation: a fault's, or a sound coach's. */
const rowOf = (on: Model, see: string, fault: number | null): Float64Array | null => {
  const view = on.view(see);
  if (!view) return null;
  return fault === null ? view.healthy : view.rows.subarray(fault * view.width, (fault + 1) * view.width);
};

/** A short list of observations that puts the fault first: each time what it makes likely and the leader does not. */
const shortest = (index: number, on: Model = model): [string, string][] | null => {
  const list: [string, string][] = [];
  for (let step = 0; step < 10; step++) {
    const w = weighEvidence(
      on,
      list.map(([s, o], i) => seen(s, o, i)),
      [],
      false,
    );
    const { marginals, none } = w.posterior;
    let leader: number | null = null;
    for (let c = 0; c < marginals.length; c++)
      if (c !== index && marginals[c]! > (leader === null ? none : marginals[leader]!)) leader = c;
    const best = leader === null ? none : marginals[leader]!;
    if (list.length > 0 && marginals[index]! > best && marginals[index]! > none) return list;
    let pick: { see: string; outcome: string; gain: number } | null = null;
    for (const { see, outcomes } of observables) {
      if (list.some(([s]) => s === see)) continue;
      const mine = rowOf(on, see, index)!;
      const theirs = rowOf(on, see, leader)!;
      for (const [k, outcome] of outcomes.entries()) {
        if (mine[k]! < 0.25) continue;
        const gain = Math.log(mine[k]! / theirs[k]!);
        if (gain > 0.02 && (!pick || gain > pick.gain)) pick = { see, outcome, gain };
      }
    }
    if (!pick) return null;
    list.push([pick.see, pick.outcome]);
  }
  return null;
};

describe('catalogue', () => {
  test('holds at least 60 kinds of fault, all of the coach that has everything', () => {
    expect(faultRows.length).toBeGreaterThanOrEqual(60);
    expect(model.faults.length).toBe(catalogue.length);
    expect(new Set(catalogue.map((f) => f.key)).size).toBe(catalogue.length);
  });
  test.each(faultRows.map((f) => [f.id, f] as const))('%s names what exists', (_, f) => {
    const [fault] = catalogue.filter((x) => x.kind === f.id);
    expect(confirmOf(fault!)).toBeDefined();
    expect(f.prior).toBeGreaterThan(0);
    expect(f.prior).toBeLessThan(0.1);
    expect(f.priorWhy.length).toBeGreaterThan(8);
    expect(ailmentOf(fault!) !== null).toBe(f.ailment !== undefined);
    for (const d of f.damages) expect(faultRows.map((r) => r.id)).toContain(d.fault);
  });
  test.each(catalogue.map((f, i) => [f.key, i] as const))(
    '%s can be found: some observations put it first',
    (_, i) => {
      expect(shortest(i)).not.toBeNull();
    },
    60_000,
  );
  test.each(catalogue.map((f, i) => [f.key, i] as const))('%s: its confirming check can speak for it', (_, i) => {
    const check = confirmOf(model.faults[i]!)!;
    const lifts = check.settles.some((see) => {
      const view = model.view(see)!;
      return view.observable.outcomes.some((__, k) => view.rows[i * view.width + k]! > 2 * view.healthy[k]!);
    });
    // A side that is not loaded or shaken by the fault itself is settled by what it does to the other.
    expect(lifts || model.faults[i]!.innocent === true).toBe(true);
  });
});

describe('the catalogue is whole', () => {
  test.each(faultRows.map((f) => [f.id, f] as const))(
    '%s says how it is mended, what brings it on, and what it costs',
    (_, f) => {
      expect(f.repair.length).toBeGreaterThan(8);
      expect(f.usually.length).toBeGreaterThan(2);
      expect(f.symptoms.length).toBeGreaterThan(0);
      expect(f.hands).toBeGreaterThanOrEqual(0);
      // what is no fault needs neither hands, parts nor cautions
      expect(f.innocent === true || f.hands > 0).toBe(true);
      expect(f.innocent === true || f.cautions.length > 0).toBe(true);
      for (const d of f.damages) {
        expect(d.times).toBeGreaterThan(1);
        expect(d.words.length).toBeGreaterThan(5);
      }
    },
  );
  test('parts are named wherever something is renewed', () => {
    const bare = faultRows.filter((f) => /\b(?:replace|renew)\b/i.test(f.repair) && f.parts.length === 0);
    expect(bare.map((f) => f.id)).toEqual([]);
  });
  test('some faults bring others on, and something brings each of those on', () => {
    expect(faultRows.filter((f) => f.damages.length > 0).length).toBeGreaterThan(20);
  });
});

describe('these tests can fail', () => {
  /** The model with one fault's rows made those of a sound coach. */
  const mute = (index: number): Model => ({
    ...model,
    view: (see) => {
      const view = model.view(see);
      if (!view) return null;
      const rows = view.rows.slice();
      rows.set(view.healthy, index * view.width);
      const strays = view.strays.slice();
      strays[index] = 0;
      return { ...view, rows, strays };
    },
  });
  test('a fault that shows nothing is not found by any observations', () => {
    for (const key of ['left bellows leak', 'drain leak', 'relay dead', 'right shock dead']) {
      const i = model.index.get(key)!;
      expect(shortest(i)).not.toBeNull();
      expect(shortest(i, mute(i))).toBeNull();
    }
  });
  test('a check of what nothing shows tells nothing', () => {
    const w = weighEvidence(model, [], []);
    const hs = [{ of: [], p: 0.5 }, ...model.faults.slice(0, 5).map((_, i) => ({ of: [i], p: 0.1 }))];
    const told = (see: string): number =>
      expectedInformation(
        hs.map((h) => h.p),
        outlook(w, see, hs)!,
      );
    const still = observables.find((o) =>
      model.faults.slice(0, 5).every((_, i) => model.view(o.see)!.strays[i]! < 1e-9),
    )!;
    expect(told(still.see)).toBeLessThan(1e-9);
  });
});

describe('checks', () => {
  test.each(checks.map((c) => [c.key, c] as const))(
    '%s settles what can be observed and tells something',
    (_, check) => {
      expect(check.settles.length).toBeGreaterThan(0);
      for (const see of check.settles) expect(observableOf(see)).toBeDefined();
      for (const k of check.keys)
        for (const [see, outcome] of k.gives)
          for (const o of outcome.split('|')) expect(observableOf(see)?.outcomes).toContain(o);
      const w = weighEvidence(model, [], []);
      const hs = hypothesesOf(w, 200).concat(model.faults.map((f, i) => ({ of: [i], p: f.prior })));
      const sum = hs.reduce((s, h) => s + h.p, 0);
      const told = check.settles.map((see) =>
        expectedInformation(
          hs.map((h) => h.p / sum),
          outlook(w, see, hs)!,
        ),
      );
      expect(Math.max(...told)).toBeGreaterThan(0.001);
    },
  );
  test('every observable of the air side is settled by some check, or follows from one', () => {
    const settled = new Set(checks.flatMap((c) => c.settles));
    const vague = new Set(['pump cycles shut', 'pump duty', 'soap tank', 'fall stops']);
    for (const { see } of airObservables) expect(settled.has(see) || vague.has(see)).toBe(true);
  });
  test('no row is named twice, and none needs what another forbids', () => {
    expect(new Set(checkRows.map((c) => c.id)).size).toBe(checkRows.length);
    for (const c of checkRows) expect(c.needs === undefined || c.needs !== c.without).toBe(true);
  });
});

describe('what is named elsewhere exists', () => {
  test('every check has its guide', () =>
    expect(checkRows.filter((c) => guideById(c.guide) === undefined).map((c) => `${c.id}: ${c.guide}`)).toEqual([]));
  test('every caution of a fault is one of the cautions', () =>
    expect(faultRows.flatMap((f) => f.cautions.filter((id) => cautionFor(id) === undefined))).toEqual([]));
});

describe('stated chances', () => {
  test.each(givens.map((g) => [g.see, g] as const))(
    '%s: every row sums to one and names faults of the catalogue',
    (_, g) => {
      const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);
      expect(sum(g.healthy)).toBeCloseTo(1, 6);
      expect(g.healthy.length).toBe(g.outcomes.length);
      for (const row of g.rows) {
        expect(sum(row.chance)).toBeCloseTo(1, 6);
        expect(row.chance.length).toBe(g.outcomes.length);
        for (const f of row.faults) expect(catalogue.some((c) => c.kind === f || c.key === f)).toBe(true);
      }
    },
  );
  test.each(Object.entries(airGivens))('%s: rows beside the simulated coach fit its outcomes', (see, rows) => {
    const o = observables.find((x) => x.see === see || x.see === `left ${see}`)!;
    for (const row of rows) {
      expect(row.chance.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 6);
      expect(row.chance.length).toBe(o.outcomes.length);
      for (const f of row.faults) expect(catalogue.some((c) => c.kind === f)).toBe(true);
    }
  });
});

test('a coach without a panel has no panel faults and is not asked about one', () => {
  const { panel: _, ...rest } = JSON.parse(JSON.stringify(juniperRaw)) as { panel: unknown };
  const bare = SheetSchema.parse({ ...rest, panel: null });
  expect(featuresOf(bare).has('panel')).toBe(false);
  expect(modelOf(bare).faults.some((f) => f.needs === 'panel')).toBe(false);
  expect(modelOf(juniper).faults.some((f) => f.needs === 'panel')).toBe(true);
});
