/**
 * The shortest honest way to a hidden fault that could be found: checks chosen one by one for what they are expected to
 * tell per minute, knowing only the complaint and the table, answered by the coach itself. Several weights of waiting
 * against hands are tried, the least minutes kept. With several faults each is looked for in turn, the found ones mended.
 */
import { minutesOf } from './check-minutes.ts';
import type { Cause } from './compile.ts';
import { evidenceTable, likelihood } from './evidence.ts';
import { airObservables } from './observables.ts';
import { observeIn } from './observe.ts';
import { type Case, innocent } from './practice-case.ts';
import { makeRng } from './rng.ts';
import { type Scene, makeScene } from './scene.ts';

export type Step = { see: string; outcome: string; minutes: number };
export type Sequence = {
  steps: Step[];
  minutes: number;
  /** Whether every fault came out first. */
  found: boolean;
  /** Faults that no check here tells from the ones found: a look at the part decides. */
  among: Cause[];
};

/** min; longer checks belong to the proof after the repair, not to the search. */
const longest = 130;
/** Share of the chances that counts as found; bits below which no check is worth its minutes. */
const enough = 0.7;
const worthIt = 0.06;

type Check = { see: string; minutes: { hands: number; wait: number }; rows: { outcome: string; by: Float64Array }[] };
type Table = { causes: Cause[]; checks: Check[] };

const tables = new Map<boolean, Table>();
const tableFor = (hasPanel: boolean): Table => {
  const had = tables.get(hasPanel);
  if (had) return had;
  const causes = Object.keys(hasPanel ? evidenceTable.panel : evidenceTable.noPanel).filter(
    (c) => c !== 'none',
  ) as Cause[];
  const checks = airObservables.map((o): Check => ({
    see: o.see,
    minutes: minutesOf(o.see),
    rows: o.outcomes.map((outcome) => ({
      outcome,
      by: Float64Array.from(causes, (c) => likelihood(o.see, outcome, c, hasPanel)),
    })),
  }));
  const table = { causes, checks };
  tables.set(hasPanel, table);
  return table;
};

const entropy = (p: Float64Array): number => {
  let h = 0;
  for (const x of p) if (x > 0) h -= x * Math.log2(x);
  return h;
};
const given = (p: Float64Array, by: Float64Array): { chance: number; p: Float64Array } => {
  const joint = p.map((x, i) => x * by[i]!);
  const chance = joint.reduce((a, b) => a + b, 0);
  return { chance, p: chance > 0 ? joint.map((x) => x / chance) : joint };
};

/** One search for `wanted`; `waiting` is the weight of a minute of waiting against one of hands. */
const search = (scene: Scene, wanted: Cause, told: Case['told'], waiting: number): Sequence => {
  const { causes, checks } = tableFor(scene.q.p.panel !== null);
  const target = causes.indexOf(wanted);
  let p = new Float64Array(causes.length).fill(1 / causes.length);
  const take = (see: string, outcome: string): void => {
    const row = checks.find((c) => c.see === see)?.rows.find((r) => r.outcome === outcome);
    if (row) p = Float64Array.from(given(p, row.by).p);
  };
  for (const t of told) take(t.see, t.outcome);
  const used = new Set(told.map((t) => t.see));
  const steps: Step[] = [];
  let minutes = 0;
  while (p[target]! < enough) {
    const h = entropy(p);
    let best: { check: Check; worth: number } | null = null;
    for (const check of checks) {
      if (used.has(check.see) || check.minutes.hands + check.minutes.wait > longest) continue;
      let bits = 0;
      for (const row of check.rows) {
        const after = given(p, row.by);
        if (after.chance > 1e-9) bits += after.chance * (h - entropy(after.p));
      }
      if (bits < worthIt) continue;
      const worth = bits / (check.minutes.hands + waiting * check.minutes.wait);
      if (!best || worth > best.worth) best = { check, worth };
    }
    if (!best) break;
    const { see, minutes: cost } = best.check;
    used.add(see);
    const outcome = observeIn(scene, see);
    minutes += cost.hands + cost.wait;
    steps.push({ see, outcome: outcome ?? 'does not decide', minutes: cost.hands + cost.wait });
    if (outcome !== null) take(see, outcome);
  }
  const mine = p[target]!;
  const first = mine >= 0.9 * Math.max(...p);
  return {
    steps,
    minutes,
    found: first,
    among: first ? causes.filter((_, i) => i !== target && p[i]! > 0.5 * mine) : [],
  };
};

/** Faults that a walk round the coach shows. */
const inSight = (cause: Cause): boolean => /link off|link slipped|shock dead|panel left/.test(cause);
const walkRound = 5;

/** The best of the sequences tried for each fault of the case in turn; what is innocent stays and is not hunted. */
export const bestSequence = (drawn: Pick<Case, 'p' | 'ails' | 'told' | 'sceneSeed'>): Sequence => {
  // A good order begins with a walk round, whatever it is.
  const visible = drawn.ails.filter((a) => inSight(a.ailment));
  const outcome = visible.length > 0 ? visible.map((a) => a.ailment).join(', ') : 'nothing';
  const all: Sequence = {
    steps: [{ see: 'look round', outcome, minutes: walkRound }],
    minutes: walkRound,
    found: true,
    among: [],
  };
  let left = drawn.ails.filter((a) => !visible.includes(a));
  let told = drawn.told;
  for (;;) {
    const hunted = left.filter((a) => !innocent.includes(a.ailment));
    if (hunted.length === 0) return all;
    const scene = makeScene(drawn.p, left, makeRng(drawn.sceneSeed));
    const tries = hunted.flatMap((ail) =>
      [0.3, 0.7, 1].map((waiting) => ({ ail, way: search(scene, ail.ailment, told, waiting) })),
    );
    const first = tries.toSorted(
      (a, b) => Number(b.way.found) - Number(a.way.found) || a.way.minutes - b.way.minutes,
    )[0]!;
    all.steps.push(...first.way.steps);
    all.minutes += first.way.minutes;
    all.found &&= first.way.found;
    all.among.push(...first.way.among);
    // Mended: what was seen before no longer speaks of the coach as it is.
    left = left.filter((a) => a !== first.ail);
    told = [];
  }
};
