/**
 * What a check made now would show under each set of causes still in play, and how many bits that tells. Pure; the rows of a
 * view under one set are kept, since the same sets come back with every note.
 *
 * I = H(Y) - E[H(Y | h)]. Observations are independent given h, so H(Y | h) of several is the sum of each one's: no
 * logarithm a set, one an outcome.
 */
import { type Hypothesis, rowUnder } from './hypotheses.ts';
import { entropy, outcomeEntropy } from './information.ts';
import type { View } from './model.ts';
import type { Weighed } from './weigh.ts';

export type Forecast = {
  readonly see: string;
  /** P(outcome | h). */
  readonly table: readonly ArrayLike<number>[];
  /** H(Y | h), bits. */
  readonly noise: ArrayLike<number>;
  readonly bits: number;
};

type Row = { readonly chances: readonly number[]; readonly noise: number };
/** Sets kept a view: some 100 single causes and the pairs of a few sessions. */
const most = 400;
const kept = new WeakMap<View, Map<number, Row>>();

const rowOf = (view: View, of: readonly number[], sound: number): Row => {
  // What was mended shows a sound part from now on: causes past the faults fall away.
  const still = of.some((c) => c >= sound) ? of.filter((c) => c < sound) : of;
  const make = (): Row => {
    const chances = rowUnder(view, still);
    return { chances, noise: entropy(chances) };
  };
  if (still.length > 2) return make();
  const rows = kept.get(view) ?? new Map<number, Row>();
  kept.set(view, rows);
  const key = ((still[0] ?? -1) + 1) * (sound + 1) + (still[1] ?? -1) + 1;
  const had = rows.get(key);
  if (had) return had;
  if (rows.size >= most) rows.clear();
  const made = make();
  rows.set(key, made);
  return made;
};

/** null where this coach has no such observable. */
export const forecastOf = (
  w: Weighed,
  see: string,
  hypotheses: readonly Hypothesis[],
  prior: ArrayLike<number>,
): Forecast | null => {
  const view = w.model.view(see);
  if (!view) return null;
  const rows = hypotheses.map(({ of }) => rowOf(view, of, w.model.faults.length));
  const table = rows.map((r) => r.chances);
  const noise = rows.map((r) => r.noise);
  return { see, table, noise, bits: bitsOf(prior, table, noise) };
};

/** Expected information, bits, where H(Y | h) is known. */
export const bitsOf = (
  prior: ArrayLike<number>,
  table: readonly ArrayLike<number>[],
  noise: ArrayLike<number>,
): number => {
  let given = 0;
  for (let h = 0; h < table.length; h++) given += prior[h]! * noise[h]!;
  return Math.max(0, outcomeEntropy(prior, table) - given);
};
