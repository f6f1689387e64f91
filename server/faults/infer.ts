/**
 * Exact inference over which faults are there: none, one, two, and three where two explain badly. Pure numbers.
 *
 * P(S | E) is proportional to P(S) * product over e of P(e | S), with P(S) = product of prior odds, times how much likelier
 * linked pairs are than by chance. A set of faults shows, on a check whose outcomes run from healthy to worst, the worst
 * that any of them shows (noisy-max with leak: P(Y <= k | S) = H(k) * product of F_i(k) / H(k), F_i and H the cumulated
 * chances under fault i alone and healthy); on one without such an order each fault has its say by how far it strays from
 * healthy. Reports that are not quite trusted (weight w < 1) say: w * P(e | S) + (1 - w) / outcomes.
 *
 * Beside the sets stands "something else": every outcome alike, with a small prior. Where it wins, nothing here fits.
 */

import { chanceUnder, pairsUnder, preparedOf, type Seen } from './seen.ts';

export type Causes = {
  readonly odds: Float64Array;
  /** n x n; 0 where two exclude each other. */
  readonly links: Float64Array;
};

export type Posterior = {
  readonly n: number;
  readonly none: number;
  readonly unknown: number;
  /** Chance of each cause alone; of each pair at pairAt; triples as a list. */
  readonly singles: Float64Array;
  readonly pairs: Float64Array;
  readonly triples: readonly { readonly of: readonly [number, number, number]; readonly p: number }[];
  /** Chance that cause i is there at all. */
  readonly marginals: Float64Array;
  /** log2 of the chance of all evidence. */
  readonly logEvidence: number;
};

/** Where the chance of causes i < j stands among the pairs of n: (0, 1), (0, 2) ... (1, 2) ... */
export const pairAt = (n: number, i: number, j: number): number => i * n - (i * (i + 1)) / 2 + j - i - 1;

/** Prior weight of "something else" against "nothing", and when triples are worth the time. */
export const unknownOdds = 1e-4;
const triplesFrom = 0.2;
const triplesSeeds = 40;

/** A cause that makes the evidence less than this much likelier than none explains nothing of it. */
export const leastLift = 1.5;

type Prior = {
  /** Of each pair i < j, in order. */
  readonly pairs: Float64Array;
  /** Sum of the prior weights of all sets weighed. */
  readonly mass: number;
};
const priors = new WeakMap<Causes, Prior>();
const priorOf = (causes: Causes): Prior => {
  const had = priors.get(causes);
  if (had) return had;
  const { odds, links } = causes;
  const n = odds.length;
  const pairs = new Float64Array((n * (n - 1)) / 2);
  let mass = 1 + unknownOdds;
  for (let i = 0, k = 0; i < n; i++) {
    mass += odds[i]!;
    for (let j = i + 1; j < n; j++, k++) {
      pairs[k] = odds[i]! * odds[j]! * links[i * n + j]!;
      mass += pairs[k]!;
    }
  }
  const made = { pairs, mass };
  priors.set(causes, made);
  return made;
};

export type InferOptions = {
  readonly triples?: boolean;
  /** How likely a coach is brought in without anything that explains what is seen, against one with. 1: as likely. */
  readonly noReason?: number;
};

export const infer = (causes: Causes, evidence: readonly Seen[], options: InferOptions = {}): Posterior => {
  const { odds, links } = causes;
  const n = odds.length;
  const es = evidence.map((s) => preparedOf(s, n));
  const singles = new Float64Array(n);
  let none = 1;
  let unknown = unknownOdds;
  for (const [i, e] of es.entries()) {
    none *= e.underNone;
    const seen = evidence[i]!;
    unknown *= (seen.to - seen.from + 1) / seen.width;
  }
  let total = none + unknown;
  for (let c = 0; c < n; c++) {
    let p = odds[c]!;
    for (const e of es) p *= e.underEach[c]!;
    singles[c] = p;
    total += p;
  }
  const before = priorOf(causes);
  const pairs = before.pairs.slice();
  for (const e of es) {
    const under = pairsUnder(e);
    for (let k = 0; k < pairs.length; k++) pairs[k] = pairs[k]! * under[k]!;
  }
  for (let k = 0; k < pairs.length; k++) total += pairs[k]!;
  // Coaches come in for a reason: sets that explain nothing of what was seen are rarer in a shop than on the road.
  const noReason = options.noReason ?? 1;
  if (noReason !== 1 && es.length > 0) {
    const idle: number[] = [];
    for (let c = 0; c < n; c++) if (odds[c]! > 0 && singles[c]! < leastLift * none * odds[c]!) idle.push(c);
    let sum = none;
    for (const [k, i] of idle.entries()) {
      sum += singles[i]!;
      singles[i] = singles[i]! * noReason;
      for (let m = 0; m < k; m++) {
        const at = pairAt(n, idle[m]!, i);
        sum += pairs[at]!;
        pairs[at] = pairs[at]! * noReason;
      }
    }
    none *= noReason;
    total -= sum * (1 - noReason);
  }
  const triples: { of: readonly [number, number, number]; p: number }[] = [];
  if (options.triples !== false && es.length > 0 && unknown / total > triplesFrom) {
    const seeds: { i: number; j: number; p: number }[] = [];
    for (let i = 0; i < n; i++)
      for (let j = i + 1; j < n; j++) {
        const p = pairs[pairAt(n, i, j)]!;
        if (p > 0) seeds.push({ i, j, p });
      }
    seeds.sort((a, b) => b.p - a.p);
    const done = new Set<string>();
    for (const { i, j } of seeds.slice(0, triplesSeeds))
      for (let c = 0; c < n; c++) {
        if (c === i || c === j) continue;
        const of = [i, j, c].toSorted((a, b) => a - b) as [number, number, number];
        const key = of.join(' ');
        if (done.has(key)) continue;
        done.add(key);
        const [x, y, z] = of;
        let p = odds[x]! * odds[y]! * odds[z]! * links[x * n + y]! * links[x * n + z]! * links[y * n + z]!;
        if (p === 0) continue;
        for (const e of es) p *= chanceUnder(e, of);
        triples.push({ of, p });
        total += p;
      }
  }
  const marginals = new Float64Array(n);
  for (let c = 0; c < n; c++) {
    singles[c] = singles[c]! / total;
    marginals[c] = singles[c]!;
  }
  for (let i = 0, k = 0; i < n; i++)
    for (let j = i + 1; j < n; j++, k++) {
      const p = pairs[k]! / total;
      if (p === 0) continue;
      pairs[k] = p;
      marginals[i] = marginals[i]! + p;
      marginals[j] = marginals[j]! + p;
    }
  for (const t of triples) {
    t.p /= total;
    for (const c of t.of) marginals[c] = marginals[c]! + t.p;
  }
  return {
    n,
    none: none / total,
    unknown: unknown / total,
    singles,
    pairs,
    triples,
    marginals,
    logEvidence: Math.log2(total / before.mass),
  };
};
