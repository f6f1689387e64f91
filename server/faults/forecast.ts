/**
 * What a check made now would show under each set of causes still in play, and how many bits that tells. Pure; the rows of a
 * view under one set are kept, since the same sets come back with every note.
 *
 * I = H(Y) - E[H(Y | h)]. Observations are independent given h, so H(Y | h) of several is the sum of each one's: no
 * logarithm a set, one an outcome.
 */
import { type Hypothesis, rowUnder } from './hypotheses.ts';
import { entropy, entropyOfMixed, outcomeEntropy, type Table } from './information.ts';
import type { Model, View } from './model.ts';
import type { Weighed } from './weigh.ts';

/** Rows of one view by the slot of a set: `chances[slot * width + outcome]`, `noise[slot]` is H(Y | set), NaN until made. */
type Rows = { chances: Float64Array; noise: Float64Array };
/** Sets of causes met so far, each with its slot; the rows of the views they were asked of. */
type Sets = { readonly slots: Map<string, number>; readonly of: (readonly number[])[]; readonly rows: Map<View, Rows> };
/** Sets kept a model, all let go when there are more: some 100 single causes and the pairs of many sessions. */
const most = 800;
const kept = new WeakMap<Model, Sets>();

const noSets = (): Sets => ({ slots: new Map(), of: [], rows: new Map() });
const setsFor = (model: Model, coming: number): Sets => {
  const had = kept.get(model);
  if (had && had.of.length + coming <= most) return had;
  const made = noSets();
  kept.set(model, made);
  return made;
};

/** The sets of a list of hypotheses as slots, for many forecasts over the same list. */
export type Slots = { readonly sets: Sets; readonly at: Int32Array };
export const slotsOf = (w: Weighed, hypotheses: readonly Hypothesis[]): Slots => {
  const sets = setsFor(w.model, hypotheses.length);
  const sound = w.model.faults.length;
  const at = Int32Array.from(hypotheses, ({ of }) => {
    // What was mended shows a sound part from now on: causes past the faults fall away.
    const still = of.some((c) => c >= sound) ? of.filter((c) => c < sound) : of;
    const key = still.join(' ');
    const had = sets.slots.get(key);
    if (had !== undefined) return had;
    sets.slots.set(key, sets.of.length);
    return sets.of.push(still) - 1;
  });
  return { sets, at };
};

const roomFor = (sets: Sets, view: View): Rows => {
  const had = sets.rows.get(view);
  if (had && had.noise.length >= sets.of.length) return had;
  const size = Math.min(most, Math.max(64, 2 * sets.of.length));
  const chances = new Float64Array(size * view.width);
  const noise = new Float64Array(size).fill(Number.NaN);
  if (had) {
    chances.set(had.chances);
    noise.set(had.noise);
  }
  const made = { chances, noise };
  sets.rows.set(view, made);
  return made;
};

export type Forecast = {
  readonly see: string;
  /** Number of outcomes. */
  readonly width: number;
  readonly bits: number;
  readonly slots: Slots;
  readonly rows: Rows;
};

/** null where this coach has no such observable. `slots`: those of the hypotheses that `prior` is over. */
export const forecastOf = (w: Weighed, see: string, slots: Slots, prior: ArrayLike<number>): Forecast | null => {
  const view = w.model.view(see);
  if (!view) return null;
  const { width } = view;
  const { sets, at } = slots;
  const rows = roomFor(sets, view);
  const { chances, noise } = rows;
  const mixed = new Float64Array(width);
  let given = 0;
  for (let h = 0; h < at.length; h++) {
    const slot = at[h]!;
    if (Number.isNaN(noise[slot]!)) {
      const row = rowUnder(view, sets.of[slot]!);
      chances.set(row, slot * width);
      noise[slot] = entropy(row);
    }
    const p = prior[h]!;
    given += p * noise[slot]!;
    for (let k = 0, from = slot * width; k < width; k++) mixed[k] = mixed[k]! + p * chances[from + k]!;
  }
  return { see, width, slots, rows, bits: Math.max(0, entropyOfMixed(mixed) - given) };
};

/** P(outcome | h), a row a hypothesis. */
export const tableOf = ({ width, slots: { at }, rows: { chances } }: Forecast): Table => {
  const cells = new Float64Array(at.length * width);
  for (let h = 0, to = 0; h < at.length; h++)
    for (let k = 0, from = at[h]! * width; k < width; k++) cells[to++] = chances[from + k]!;
  return { width, cells };
};
/** H(Y | h), bits. */
export const noiseOf = ({ slots: { at }, rows: { noise } }: Forecast): Float64Array =>
  Float64Array.from(at, (slot) => noise[slot]!);

/** Expected information, bits, where H(Y | h) is known. */
export const bitsOf = (prior: ArrayLike<number>, table: Table, noise: ArrayLike<number>): number => {
  let given = 0;
  for (let h = 0; h < prior.length; h++) given += prior[h]! * noise[h]!;
  return Math.max(0, outcomeEntropy(prior, table) - given);
};
