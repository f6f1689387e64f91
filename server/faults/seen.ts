/**
 * One piece of evidence made ready for inference: what does not depend on the rest of the evidence is worked out once for
 * each and kept, since the same pieces come back with every note of a session and in other sessions. Pure numbers.
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

export type Prepared = {
  readonly n: number;
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
  /** Chance under no cause and under each alone, trust included. */
  readonly underNone: number;
  readonly underEach: Float64Array;
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
  const flat = ((1 - seen.weight) * (to - from + 1)) / width;
  const none = topHigh - topLow;
  return {
    n,
    ordered: seen.ordered,
    weight: seen.weight,
    flat,
    none,
    alone,
    high,
    low,
    topHigh,
    topLow,
    strays,
    underNone: seen.weight * none + flat,
    underEach: alone.map((p) => seen.weight * p + flat),
  };
};

const ready = new WeakMap<Seen, Prepared>();
/** `seen` over `n` causes, made ready; the same one again is the same one ready. */
export const preparedOf = (seen: Seen, n: number): Prepared => {
  const had = ready.get(seen);
  if (had?.n === n) return had;
  const made = prepare(seen, n);
  ready.set(seen, made);
  return made;
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

/** P(e | S), trust included. */
export const chanceUnder = (e: Prepared, set: readonly number[]): number => e.weight * chanceOf(e, set) + e.flat;

const makePairs = (e: Prepared): Float64Array => {
  const { n, ordered, weight, flat, alone, high, low, topHigh, topLow, strays } = e;
  const out = new Float64Array((n * (n - 1)) / 2);
  let at = 0;
  for (let i = 0; i < n; i++) {
    const highI = topHigh * high[i]!;
    const lowI = topLow * low[i]!;
    const strayI = strays[i]!;
    const saysI = strayI * alone[i]!;
    for (let j = i + 1; j < n; j++) {
      let q: number;
      if (ordered) {
        q = highI * high[j]! - lowI * low[j]!;
        if (q < floor) q = floor;
      } else q = (saysI + strays[j]! * alone[j]!) / (strayI + strays[j]!);
      out[at++] = weight * q + flat;
    }
  }
  return out;
};

/** Pieces whose pairs are kept: what a few dozen sessions show, 40 kB each. The one used longest ago goes first. */
const mostPairs = 200;
const pairs = new Map<Prepared, Float64Array>();

/** P(e | i and j), trust included, for all pairs i < j in order: (0, 1), (0, 2) ... (1, 2) ... */
export const pairsUnder = (e: Prepared): Float64Array => {
  const had = pairs.get(e);
  const out = had ?? makePairs(e);
  if (had) pairs.delete(e);
  else
    for (const oldest of pairs.keys())
      if (pairs.size >= mostPairs) pairs.delete(oldest);
      else break;
  pairs.set(e, out);
  return out;
};
