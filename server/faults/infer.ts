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

/** One piece of evidence as numbers over causes 0..n-1. Outcomes `from`..`to` (inclusive) of the check were seen. */
export type Seen = {
  readonly ordered: boolean;
  /** Number of outcomes, undecided included. */
  readonly width: number;
  readonly from: number;
  readonly to: number;
  /** 0..1: how far the report is trusted. */
  readonly weight: number;
  readonly healthy: ArrayLike<number>;
  /** Chance of outcome k under cause c: rows[c * width + k]. */
  readonly rows: ArrayLike<number>;
  readonly strays: ArrayLike<number>;
};

export type Causes = {
  readonly odds: Float64Array;
  /** n x n; 0 where two exclude each other. */
  readonly links: Float64Array;
};

export type Posterior = {
  readonly n: number;
  readonly none: number;
  readonly unknown: number;
  /** Chance of each cause alone; pairs[i * n + j], i < j; triples as a list. */
  readonly singles: Float64Array;
  readonly pairs: Float64Array;
  readonly triples: readonly { readonly of: readonly [number, number, number]; readonly p: number }[];
  /** Chance that cause i is there at all. */
  readonly marginals: Float64Array;
  /** log2 of the chance of all evidence. */
  readonly logEvidence: number;
};

/** Prior weight of "something else" against "nothing", and when triples are worth the time. */
export const unknownOdds = 1e-4;
const triplesFrom = 0.2;
const triplesSeeds = 40;

type Prepared = {
  readonly ordered: boolean;
  readonly weight: number;
  readonly flat: number;
  readonly none: number;
  readonly alone: Float64Array;
  readonly high: Float64Array;
  readonly low: Float64Array;
  readonly topHigh: number;
  readonly topLow: number;
  readonly strays: Float64Array;
};

const prepare = (seen: Seen, n: number): Prepared => {
  const { width, from, to, healthy, rows } = seen;
  const alone = new Float64Array(n);
  const high = new Float64Array(n);
  const low = new Float64Array(n);
  let topHigh = 0;
  let topLow = 0;
  for (let k = 0; k <= to; k++) {
    topHigh += healthy[k] ?? 0;
    if (k < from) topLow += healthy[k] ?? 0;
  }
  for (let c = 0; c < n; c++) {
    let upTo = 0;
    let before = 0;
    for (let k = 0; k <= to; k++) {
      const p = rows[c * width + k] ?? 0;
      upTo += p;
      if (k < from) before += p;
    }
    alone[c] = upTo - before;
    high[c] = topHigh > 0 ? Math.min(1, upTo / topHigh) : 0;
    low[c] = topLow > 0 ? Math.min(1, before / topLow) : 0;
  }
  const strays = Float64Array.from({ length: n }, (_, c) => (seen.strays[c] ?? 0) + 1e-6);
  return {
    ordered: seen.ordered,
    weight: seen.weight,
    flat: ((1 - seen.weight) * (to - from + 1)) / width,
    none: topHigh - topLow,
    alone,
    high,
    low,
    topHigh,
    topLow,
    strays,
  };
};

const floor = 1e-6;

/** P(e | S) before trust, for causes of S. */
const chanceOf = (e: Prepared, set: readonly number[]): number => {
  if (set.length === 0) return e.none;
  if (set.length === 1) return e.alone[set[0]!]!;
  if (e.ordered) {
    let high = e.topHigh;
    let low = e.topLow;
    for (const c of set) {
      high *= e.high[c]!;
      low *= e.low[c]!;
    }
    return Math.max(floor, high - low);
  }
  let sum = 0;
  let says = 0;
  for (const c of set) {
    sum += e.strays[c]! * e.alone[c]!;
    says += e.strays[c]!;
  }
  return sum / says;
};

const trusted = (e: Prepared, p: number): number => e.weight * p + e.flat;

/** Chance of one piece of evidence under a set of causes, trust included: for explanation and for choosing checks. */
export const chanceUnder = (seen: Seen, n: number): ((set: readonly number[]) => number) => {
  const e = prepare(seen, n);
  return (set) => trusted(e, chanceOf(e, set));
};

/** A cause that makes the evidence less than this much likelier than none explains nothing of it. */
export const leastLift = 1.5;

export type InferOptions = {
  readonly triples?: boolean;
  /** How likely a coach is brought in without anything that explains what is seen, against one with. 1: as likely. */
  readonly noReason?: number;
};

export const infer = (causes: Causes, evidence: readonly Seen[], options: InferOptions = {}): Posterior => {
  const { odds, links } = causes;
  const n = odds.length;
  const es = evidence.map((s) => prepare(s, n));
  const singles = new Float64Array(n);
  const pairs = new Float64Array(n * n);
  let none = 1;
  let unknown = unknownOdds;
  for (const [i, e] of es.entries()) {
    none *= trusted(e, e.none);
    const seen = evidence[i]!;
    unknown *= (seen.to - seen.from + 1) / seen.width;
  }
  let total = none + unknown;
  for (let c = 0; c < n; c++) {
    let p = odds[c]!;
    for (const e of es) p *= e.weight * e.alone[c]! + e.flat;
    singles[c] = p;
    total += p;
  }
  for (let i = 0; i < n; i++) {
    const oi = odds[i]!;
    for (let j = i + 1; j < n; j++) {
      let p = oi * odds[j]! * links[i * n + j]!;
      if (p === 0) continue;
      for (const e of es) {
        let q: number;
        if (e.ordered) {
          q = e.topHigh * e.high[i]! * e.high[j]! - e.topLow * e.low[i]! * e.low[j]!;
          if (q < floor) q = floor;
        } else {
          const a = e.strays[i]!;
          const b = e.strays[j]!;
          q = (a * e.alone[i]! + b * e.alone[j]!) / (a + b);
        }
        p *= e.weight * q + e.flat;
      }
      pairs[i * n + j] = p;
      total += p;
    }
  }
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
        const at = idle[m]! * n + i;
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
      for (let j = i + 1; j < n; j++) if (pairs[i * n + j]! > 0) seeds.push({ i, j, p: pairs[i * n + j]! });
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
        for (const e of es) p *= trusted(e, chanceOf(e, of));
        triples.push({ of, p });
        total += p;
      }
  }
  const marginals = new Float64Array(n);
  for (let c = 0; c < n; c++) {
    singles[c] = singles[c]! / total;
    marginals[c] = singles[c]!;
  }
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      const p = pairs[i * n + j]! / total;
      if (p === 0) continue;
      pairs[i * n + j] = p;
      marginals[i] = marginals[i]! + p;
      marginals[j] = marginals[j]! + p;
    }
  for (const t of triples) {
    t.p /= total;
    for (const c of t.of) marginals[c] = marginals[c]! + t.p;
  }
  const priorTotal = priorMass(causes);
  return {
    n,
    none: none / total,
    unknown: unknown / total,
    singles,
    pairs,
    triples,
    marginals,
    logEvidence: Math.log2(total / priorTotal),
  };
};

/** Sum of the prior weights of all sets weighed. */
const priorMass = ({ odds, links }: Causes): number => {
  const n = odds.length;
  let sum = 1 + unknownOdds;
  for (let i = 0; i < n; i++) {
    sum += odds[i]!;
    for (let j = i + 1; j < n; j++) sum += odds[i]! * odds[j]! * links[i * n + j]!;
  }
  return sum;
};
