/** Random numbers by seed: the same seed gives the same coach on every machine. */
export type Rng = {
  /** Uniform in [0, 1). */
  readonly next: () => number;
  readonly uniform: (low: number, high: number) => number;
  /** Uniform in the logarithm; both ends above zero. */
  readonly log: (low: number, high: number) => number;
  readonly normal: (mean: number, deviation: number) => number;
  readonly chance: (p: number) => boolean;
  readonly pick: <T>(list: readonly T[]) => T;
};

/** Mixes words and numbers into a 32-bit seed (FNV-1a). */
export const seedOf = (...parts: readonly (string | number)[]): number => {
  let hash = 0x811c9dc5;
  for (const char of parts.join('|')) {
    hash ^= char.codePointAt(0) ?? 0;
    hash = Math.imul(hash, 0x01000193);
  }
  return hash >>> 0;
};

/** mulberry32: 32 bits of state, enough for draws of coaches, not for secrets. */
export const makeRng = (seed: number): Rng => {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
  return {
    next,
    uniform: (low, high) => low + (high - low) * next(),
    log: (low, high) => low * (high / low) ** next(),
    normal: (mean, deviation) =>
      mean + deviation * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    chance: (p) => next() < p,
    pick: (list) => list[Math.floor(next() * list.length)] ?? list[0]!,
  };
};
