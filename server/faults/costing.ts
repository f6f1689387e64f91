/** What repairing costs in expected minutes, as things stand and once a check has been made. Pure. */
import type { Fault } from './fault.ts';
import type { Hypothesis } from './hypotheses.ts';
import type { Weighed } from './weigh.ts';
import type { Candidate } from './candidates.ts';

/** Proof after a repair. Minutes, an estimate. */
const proofMinutes = 10;

const repairMinutes = (f: Fault): number => f.hands + 0.7 * f.wait + proofMinutes;

/**
 * Expected minutes until what was complained of is mended, trying repairs in falling p / cost, each proved before the
 * next: the sum over sets of faults of the costs up to the last member of the set. For one fault at a time this is the
 * expected cost of repair of repair-cost.ts.
 */
export const costOf = (
  w: Weighed,
  hs: readonly Hypothesis[],
  ps: ArrayLike<number>,
): { cost: number; first: number | null } => costing(w, hs)(ps);

type Costing = (ps: ArrayLike<number>) => { cost: number; first: number | null };

/** costOf for one list of sets and many chances: which repairs there are and what each costs is looked up once. */
export const costing = (w: Weighed, hs: readonly Hypothesis[]): Costing => {
  const m = w.model.faults.length;
  const at = new Map<number, number>();
  for (const h of hs) for (const c of h.of) if (c < m && !at.has(c)) at.set(c, at.size);
  const causes = [...at.keys()];
  const minutes = Float64Array.from(causes, (c) => repairMinutes(w.model.faults[c]!));
  const n = causes.length;
  // members of set i: sets[k] for ends[i - 1] <= k < ends[i]
  const members = hs.map((h) => h.of.flatMap((c) => at.get(c) ?? []));
  const sets = Int32Array.from(members.flat());
  let end = 0;
  const ends = Int32Array.from(members, (set) => (end += set.length));
  const worth = new Float64Array(n);
  const upTo = new Float64Array(n);
  const order = Int32Array.from({ length: n }, (_, k) => k);
  return (ps) => {
    worth.fill(0);
    for (let i = 0, k = 0; i < ends.length; i++)
      for (const p = ps[i]!; k < ends[i]!; k++) worth[sets[k]!] = worth[sets[k]!]! + p;
    // Falling p / cost (repair-cost.ts, bestOrder), ties as they come; from the order before, which is near it.
    for (let k = 0; k < n; k++) worth[k] = worth[k]! / minutes[k]!;
    for (let k = 1; k < n; k++) {
      const one = order[k]!;
      const w = worth[one]!;
      let to = k;
      for (; to > 0; to--) {
        const other = order[to - 1]!;
        if (worth[other]! > w || (worth[other] === w && other < one)) break;
        order[to] = other;
      }
      order[to] = one;
    }
    let sum = 0;
    for (let k = 0; k < n; k++) {
      const one = order[k]!;
      sum += minutes[one]!;
      upTo[one] = sum;
    }
    let cost = 0;
    for (let i = 0, k = 0; i < ends.length; i++) {
      let last = 0;
      for (; k < ends[i]!; k++) if (upTo[sets[k]!]! > last) last = upTo[sets[k]!]!;
      cost += ps[i]! * last;
    }
    return { cost, first: causes[order[0] ?? -1] ?? null };
  };
};

const leastOutcome = 0.004;

/** Expected minutes of repair once the check has been made, its own minutes not counted. */
export const costAfter = (cost: Costing, hs: readonly Hypothesis[], c: Candidate): number => {
  const { width, cells } = c.table;
  const ps = new Float64Array(hs.length);
  let sum = 0;
  let seen = 0;
  for (let y = 0; y < width; y++) {
    let py = 0;
    for (let i = 0; i < hs.length; i++) py += hs[i]!.p * cells[i * width + y]!;
    if (py < leastOutcome) continue;
    for (let i = 0; i < hs.length; i++) ps[i] = (hs[i]!.p * cells[i * width + y]!) / py;
    sum += py * cost(ps).cost;
    seen += py;
  }
  return seen > 0 ? sum / seen : 0;
};
