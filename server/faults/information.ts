/** Entropy and expected information, in bits. Pure numbers. */

/** H = -sum p log2 p, bits (Shannon 1948). */
export const entropy = (p: readonly number[]): number => p.reduce((h, x) => (x > 0 ? h - x * Math.log2(x) : h), 0);

/** All outcomes of several observations that are independent given a hypothesis: product of their chances. */
const joint = (rows: readonly (readonly number[])[]): number[] =>
  rows.reduce<number[]>((acc, row) => acc.flatMap((a) => row.map((b) => a * b)), [1]);

/** Joint outcome chances per hypothesis, from tables of one observation each: tables[t][h][outcome]. */
export const jointTable = (tables: readonly (readonly (readonly number[])[])[], count: number): number[][] =>
  Array.from({ length: count }, (_, h) => joint(tables.map((t) => t[h] ?? [1])));

/**
 * Information that an observation Y is expected to give about hypothesis h: I = H(Y) - E[H(Y | h)], bits.
 * `prior` sums to 1; `table[h][y]` = P(y | h).
 */
export const expectedInformation = (prior: readonly number[], table: readonly (readonly number[])[]): number => {
  const width = table[0]?.length ?? 0;
  let given = 0;
  const y: number[] = Array.from({ length: width }, () => 0);
  for (const [h, row] of table.entries()) {
    const p = prior[h] ?? 0;
    for (let k = 0; k < width; k++) y[k] = y[k]! + p * row[k]!;
    given += p * entropy(row);
  }
  return Math.max(0, entropy(y) - given);
};
