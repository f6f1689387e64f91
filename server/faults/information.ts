/** Entropy and expected information, in bits. Pure numbers. */

/** H = -sum p log2 p, bits (Shannon 1948). */
export const entropy = (p: readonly number[]): number => p.reduce((h, x) => (x > 0 ? h - x * Math.log2(x) : h), 0);

/** Joint outcome chances per hypothesis of observations that are independent given it: tables[t][h][outcome]. */
export const jointTable = (tables: readonly (readonly ArrayLike<number>[])[], count: number): Float64Array[] =>
  Array.from({ length: count }, (_, h) => {
    let joint = Float64Array.of(1);
    for (const t of tables) {
      const row = t[h] ?? [1];
      const next = new Float64Array(joint.length * row.length);
      for (let a = 0; a < joint.length; a++)
        for (let b = 0; b < row.length; b++) next[a * row.length + b] = joint[a]! * row[b]!;
      joint = next;
    }
    return joint;
  });

const log = (x: number): number => (x > 0 ? x * Math.log2(x) : 0);

/**
 * Information that an observation Y is expected to give about hypothesis h: I = H(Y) - E[H(Y | h)], bits.
 * `prior` sums to 1; `table[h][y]` = P(y | h).
 */
export const expectedInformation = (prior: ArrayLike<number>, table: readonly ArrayLike<number>[]): number => {
  const width = table[0]?.length ?? 0;
  let bits = 0;
  for (let k = 0; k < width; k++) {
    let y = 0;
    for (let h = 0; h < table.length; h++) {
      const p = table[h]![k]!;
      y += prior[h]! * p;
      bits += prior[h]! * log(p);
    }
    bits -= log(y);
  }
  return Math.max(0, bits);
};

/** H(Y), bits, of the mixture over hypotheses. */
export const outcomeEntropy = (prior: ArrayLike<number>, table: readonly ArrayLike<number>[]): number => {
  const width = table[0]?.length ?? 0;
  const mixed = new Float64Array(width);
  for (let h = 0; h < table.length; h++) {
    const p = prior[h]!;
    const row = table[h]!;
    for (let k = 0; k < width; k++) mixed[k] = mixed[k]! + p * row[k]!;
  }
  let bits = 0;
  for (let k = 0; k < width; k++) bits -= log(mixed[k]!);
  return bits;
};
