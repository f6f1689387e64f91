/**
 * On small cases, the order of checks and repairs that costs least is found by looking at all of them; what the chosen
 * rule costs above it is its excess. Posteriors and tables are those of real complaints; five checks, six explanations.
 */
import { burden, minutesOf } from '../../server/faults/minutes.ts';
import { hypothesesOf } from '../../server/faults/hypotheses.ts';
import { expectedInformation, rowsOf } from '../../server/faults/information.ts';
import { type Candidate, candidates } from '../../server/faults/candidates.ts';
import { costOf } from '../../server/faults/costing.ts';
import { modelOf } from '../../server/faults/model.ts';
import { type Weighed, weighEvidence } from '../../server/faults/weigh.ts';
import type { Standing } from '../../server/session/standing.ts';
import type { Sheet } from '../../server/sheet/schema.ts';

type Hs = ReturnType<typeof hypothesesOf>;
type Small = { w: Weighed; hs: Hs; checks: { c: Candidate; cost: number }[] };

const after = (small: Small, ps: readonly number[], c: Candidate): { p: number; ps: number[] }[] => {
  const { width, cells } = c.table;
  const out: { p: number; ps: number[] }[] = [];
  for (let y = 0; y < width; y++) {
    const joint = small.hs.map((_, i) => ps[i]! * cells[i * width + y]!);
    const p = joint.reduce((a, b) => a + b, 0);
    if (p > 1e-6) out.push({ p, ps: joint.map((x) => x / p) });
  }
  return out;
};

/** Least expected minutes over every order of checks, repairing whenever that is cheaper. */
const least = (small: Small, ps: readonly number[], used: number): number => {
  let best = costOf(small.w, small.hs, ps).cost;
  for (const [k, { c, cost }] of small.checks.entries()) {
    if (used & (1 << k) || cost >= best) continue;
    let sum = cost;
    for (const o of after(small, ps, c)) sum += o.p * least(small, o.ps, used | (1 << k));
    best = Math.min(best, sum);
  }
  return best;
};

export type Rule = 'rate' | 'one step';
/** Expected minutes when the rule chooses. */
const ruled = (small: Small, ps: readonly number[], used: number, rule: Rule): number => {
  const now = costOf(small.w, small.hs, ps).cost;
  const open = small.checks.flatMap((x, k) => {
    if (used & (1 << k)) return [];
    const outcomes = after(small, ps, x.c);
    const step = x.cost + outcomes.reduce((s, o) => s + o.p * costOf(small.w, small.hs, o.ps).cost, 0);
    return [{ k, x, outcomes, step, rate: expectedInformation(ps, rowsOf(x.c.table)) / x.cost }];
  });
  const byStep = open.toSorted((a, b) => a.step - b.step)[0];
  if (!byStep || byStep.step >= now) return now;
  const pick = rule === 'one step' ? byStep : open.toSorted((a, b) => b.rate - a.rate)[0]!;
  return pick.x.cost + pick.outcomes.reduce((s, o) => s + o.p * ruled(small, o.ps, used | (1 << pick.k), rule), 0);
};

const complaints: readonly (readonly (readonly [string, string])[])[] = [
  [['left overnight', 'drops|on stops']],
  [
    ['left overnight', 'drops|on stops'],
    ['left height shut', 'drops'],
  ],
  [
    ['left overnight', 'drops|on stops'],
    ['left height shut', 'holds'],
  ],
  [['right driving', 'low']],
  [
    ['pump quiet', 'yes'],
    ['quiet at', 'below cut-in'],
  ],
  [['pump restart', 'blows fuse']],
  [['pump duty', 'cycles']],
  [['pump duty', 'constant']],
  [['tank fall shut', 'slow|fast']],
  [['pump-up', 'slow']],
  [['pump past cut-out', 'runs on']],
  [['ride', 'bounces']],
];

export const excess = (
  sheet: Sheet,
  standing: Standing,
  rule: Rule,
  most = 5,
): { mean: number; worst: number; cases: number } => {
  const model = modelOf(sheet);
  const all = complaints.map((list) => {
    const w = weighEvidence(
      model,
      list.map(([see, outcome], i) => ({ see, outcome, weight: 0.97, because: [], seq: i, words: '', clock: i })),
      [],
      false,
    );
    const hs = hypothesesOf(w, 6);
    const open = candidates(standing, sheet, w, hs).filter((c) => c.table.width <= 16);
    const checks = open
      .slice(0, most)
      .map((c) => ({ c, cost: burden(minutesOf(c.check, standing) ?? c.minutes, c.check) }));
    const small: Small = { w, hs, checks };
    const ps = hs.map((h) => h.p);
    const best = least(small, ps, 0);
    return best > 0 ? ruled(small, ps, 0, rule) / best - 1 : 0;
  });
  return { mean: all.reduce((a, b) => a + b, 0) / all.length, worst: Math.max(...all), cases: all.length };
};
