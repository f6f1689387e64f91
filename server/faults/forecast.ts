/**
 * What each check made now would show under each set of causes still in play, and how many bits that tells. Pure; what all
 * observables show under one set is kept as one row, since the same sets come back with every note.
 *
 * I = H(Y) - E[H(Y | h)]. Observations are independent given h, so H(Y | h) of several is the sum of each one's: no
 * logarithm a set, one an outcome.
 */
import { type Hypothesis, rowUnder } from './hypotheses.ts';
import { entropy, entropyOfMixed, outcomeEntropy, type Table } from './information.ts';
import type { Model, View } from './model.ts';
import { observables } from './observables.ts';
import type { Weighed } from './weigh.ts';

/** Sets kept a model, all let go when there are more: some 100 single causes and the pairs of many sessions. */
const most = 800;

/** Where the outcomes of an observable stand in a row, and where its H(Y | set) does. */
type Place = { readonly view: View; readonly from: number; readonly noise: number };
/** Sets of causes met so far, a row each: the chances of all outcomes of all observables, then the noise of each. */
type Sets = {
  readonly places: ReadonlyMap<string, Place>;
  readonly width: number;
  readonly slots: Map<string, number>;
  rows: Float64Array;
};
const kept = new WeakMap<Model, Sets>();

const noSets = (model: Model): Sets => {
  const views = observables.flatMap(({ see }) => model.view(see) ?? []);
  const outcomes = views.reduce((sum, v) => sum + v.width, 0);
  const places = new Map<string, Place>();
  let from = 0;
  for (const [i, view] of views.entries()) {
    places.set(view.observable.see, { view, from, noise: outcomes + i });
    from += view.width;
  }
  return { places, width: outcomes + views.length, slots: new Map(), rows: new Float64Array(0) };
};

const setsFor = (model: Model, coming: number): Sets => {
  const had = kept.get(model);
  if (had && had.slots.size + coming <= most) return had;
  const made = noSets(model);
  kept.set(model, made);
  return made;
};

/** The slot of a set; its row is made when it is new. */
const slotOf = (sets: Sets, of: readonly number[]): number => {
  const key = of.join(' ');
  const had = sets.slots.get(key);
  if (had !== undefined) return had;
  const slot = sets.slots.size;
  sets.slots.set(key, slot);
  if (sets.rows.length < (slot + 1) * sets.width) {
    const roomier = new Float64Array(Math.min(most, Math.max(64, 2 * slot)) * sets.width);
    roomier.set(sets.rows);
    sets.rows = roomier;
  }
  for (const { view, from, noise } of sets.places.values()) {
    const row = rowUnder(view, of);
    sets.rows.set(row, slot * sets.width + from);
    sets.rows[slot * sets.width + noise] = entropy(row);
  }
  return slot;
};

export type Forecast = {
  readonly see: string;
  /** Number of outcomes. */
  readonly width: number;
  readonly bits: number;
  /** P(outcome | h). */
  readonly table: () => Table;
  /** H(Y | h), bits. */
  readonly noise: () => Float64Array;
};

/** Forecasts over the hypotheses of `w`; null for what this coach has no such observable of. */
export const forecastsOf = (w: Weighed, hypotheses: readonly Hypothesis[]): ((see: string) => Forecast | null) => {
  const sets = setsFor(w.model, hypotheses.length);
  const sound = w.model.faults.length;
  const slots = Int32Array.from(hypotheses, ({ of }) =>
    // What was mended shows a sound part from now on: causes past the faults fall away.
    slotOf(sets, of.some((c) => c >= sound) ? of.filter((c) => c < sound) : of),
  );
  const { places, width: all, rows } = sets;
  // the mixture over the hypotheses of every outcome, and the mean of every noise
  const mixed = new Float64Array(all);
  for (let h = 0; h < slots.length; h++) {
    const { p } = hypotheses[h]!;
    for (let k = 0, at = slots[h]! * all; k < all; k++, at++) mixed[k] = mixed[k]! + p * rows[at]!;
  }
  return (see) => {
    const place = places.get(see);
    if (!place) return null;
    const { from, noise } = place;
    const { width } = place.view;
    return {
      see,
      width,
      bits: Math.max(0, entropyOfMixed(mixed, from, from + width) - mixed[noise]!),
      table: () => {
        const cells = new Float64Array(slots.length * width);
        for (let h = 0, to = 0; h < slots.length; h++)
          for (let k = 0, at = slots[h]! * all + from; k < width; k++) cells[to++] = rows[at++]!;
        return { width, cells };
      },
      noise: () => Float64Array.from(slots, (slot) => rows[slot * all + noise]!),
    };
  };
};

/** Expected information, bits, where H(Y | h) is known. */
export const bitsOf = (prior: ArrayLike<number>, table: Table, noise: ArrayLike<number>): number => {
  let given = 0;
  for (let h = 0; h < prior.length; h++) given += prior[h]! * noise[h]!;
  return Math.max(0, outcomeEntropy(prior, table) - given);
};
