/**
 * What each check made now would show under each set of causes still in play, and how many bits that tells. Pure; what all
 * observables show under one set is kept as one row, since the same sets come back with every note.
 *
 * I = H(Y) - E[H(Y | h)]. Observations are independent given h, so H(Y | h) of several is the sum of each one's: no
 * logarithm a set, one an outcome.
 */
import { type Hypothesis, rowUnder } from './hypotheses.ts';
import { entropy, entropyOfMixed, type Table } from './information.ts';
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

/** The rows of the hypotheses looked at: hypothesis h has the row at `slots[h] * width`. */
type Under = { readonly slots: Int32Array; readonly rows: Float64Array; readonly width: number };

export type Forecast = {
  readonly see: string;
  /** Number of outcomes. */
  readonly width: number;
  readonly bits: number;
  /** E[H(Y | h)], bits. */
  readonly given: number;
  /** Where its outcomes begin in a row. */
  readonly from: number;
  readonly under: Under;
};

/** P(outcome | h). */
export const tableOf = ({ width, from, under }: Forecast): Table => {
  const { slots, rows } = under;
  const cells = new Float64Array(slots.length * width);
  for (let h = 0, to = 0; h < slots.length; h++)
    for (let k = 0, at = slots[h]! * under.width + from; k < width; k++) cells[to++] = rows[at++]!;
  return { width, cells };
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
  const under: Under = { slots, rows, width: all };
  return (see) => {
    const place = places.get(see);
    if (!place) return null;
    const { from, noise } = place;
    const { width } = place.view;
    const given = mixed[noise]!;
    return { see, width, bits: Math.max(0, entropyOfMixed(mixed, from, from + width) - given), given, from, under };
  };
};

/** Room for the joint outcomes of several observations under one hypothesis, and for their mixture; used anew each time. */
let joint = new Float64Array(128);
let wider = new Float64Array(128);
let mixture = new Float64Array(128);

/**
 * Bits that observations tell together which are independent given a hypothesis, `size` the product of their widths: no
 * table of them all is made, since ten checks are weighed at each note and most are not asked for.
 */
export const jointBits = (prior: ArrayLike<number>, used: readonly Forecast[], size: number): number => {
  if (joint.length < size) {
    joint = new Float64Array(size);
    wider = new Float64Array(size);
    mixture = new Float64Array(size);
  }
  mixture.fill(0, 0, size);
  for (let h = 0; h < prior.length; h++) {
    joint[0] = prior[h]!;
    let width = 1;
    for (const f of used) {
      const { slots, rows } = f.under;
      const at = slots[h]! * f.under.width + f.from;
      for (let a = 0, to = 0; a < width; a++) {
        const p = joint[a]!;
        for (let b = 0; b < f.width; b++) wider[to++] = p * rows[at + b]!;
      }
      width *= f.width;
      [joint, wider] = [wider, joint];
    }
    for (let k = 0; k < width; k++) mixture[k] = mixture[k]! + joint[k]!;
  }
  const given = used.reduce((sum, f) => sum + f.given, 0);
  return Math.max(0, entropyOfMixed(mixture, 0, size) - given);
};
