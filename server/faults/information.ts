/** Entropy and expected information, in bits. Pure numbers. */

/** H = -sum p log2 p, bits (Shannon 1948). */
export const entropy = (p: readonly number[]): number => p.reduce((h, x) => (x > 0 ? h - x * Math.log2(x) : h), 0);

/** P(outcome | h) of some `count` hypotheses: `cells[h * width + outcome]`. */
export type Table = { readonly width: number; readonly cells: Float64Array };

/** A row a hypothesis. */
export const rowsOf = ({ width, cells }: Table): Float64Array[] =>
  Array.from({ length: cells.length / width }, (_, h) => cells.subarray(h * width, (h + 1) * width));

/** Joint outcome chances per hypothesis of observations that are independent given it; the last one's outcome runs fastest. */
export const jointTable = (tables: readonly Table[], count: number): Table =>
  tables.reduce<Table>(
    (joint, t) => {
      const width = joint.width * t.width;
      const cells = new Float64Array(count * width);
      for (let h = 0, at = 0; h < count; h++)
        for (let a = 0; a < joint.width; a++) {
          const p = joint.cells[h * joint.width + a]!;
          for (let b = 0; b < t.width; b++) cells[at++] = p * t.cells[h * t.width + b]!;
        }
      return { width, cells };
    },
    { width: 1, cells: new Float64Array(count).fill(1) },
  );

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

/** H(Y), bits, of the outcome chances from `from` to before `to`. */
export const entropyOfMixed = (mixed: Float64Array, from = 0, to = mixed.length): number => {
  let bits = 0;
  for (let k = from; k < to; k++) bits -= log(mixed[k]!);
  return bits;
};
