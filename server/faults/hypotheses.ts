/**
 * The sets of causes that still matter for what was seen, as a short list with their chances: what a next check is chosen
 * over. A cause that explains nothing (it is there by chance or not) is folded into the set without it.
 */
import { leastLift, pairAt } from './infer.ts';
import type { View } from './model.ts';
import type { Weighed } from './weigh.ts';

export type Hypothesis = { readonly of: readonly number[]; readonly p: number };

const least = 1e-3;

/** How much likelier the evidence is with cause i alone than with none. */
export const liftOf = ({ posterior, causes }: Weighed, i: number): number =>
  posterior.singles[i]! / (posterior.none * causes.odds[i]! + 1e-300);

/**
 * Chance that nothing is there which explains what was seen: none, or only what is there by chance and has no part in it.
 * A fault's own chance counts what else may be there by chance; this is its like for the sound coach.
 */
export const innocence = (w: Weighed): number => {
  const { posterior, causes } = w;
  const { n, singles, pairs } = posterior;
  const idle: number[] = [];
  for (let i = 0; i < n; i++) if (causes.odds[i]! > 0 && liftOf(w, i) < leastLift) idle.push(i);
  let sum = posterior.none;
  for (const [k, i] of idle.entries()) {
    sum += singles[i]!;
    for (let m = 0; m < k; m++) sum += pairs[pairAt(n, idle[m]!, i)]!;
  }
  return sum;
};

export const hypothesesOf = (w: Weighed, most = 48): Hypothesis[] => {
  const { posterior, causes } = w;
  const { n, singles, pairs, marginals } = posterior;
  // of each single cause, and of none
  const alone = new Float64Array(n);
  let none = posterior.none;
  const more: Hypothesis[] = [];
  const addSingle = (i: number, p: number): void => {
    if (liftOf(w, i) < leastLift) none += p;
    else alone[i] = alone[i]! + p;
  };
  for (let i = 0; i < n; i++) {
    if (singles[i]! > least / 4) addSingle(i, singles[i]!);
    if (marginals[i]! < least) continue;
    for (let j = i + 1; j < n; j++) {
      const p = pairs[pairAt(n, i, j)]!;
      if (p < least / 4) continue;
      const link = causes.links[i * n + j]!;
      const withJ = p / (singles[i]! * causes.odds[j]! * link + 1e-300);
      const withI = p / (singles[j]! * causes.odds[i]! * link + 1e-300);
      if (withJ >= leastLift && withI >= leastLift) more.push({ of: [i, j], p });
      else addSingle(withJ < withI ? i : j, p);
    }
  }
  for (const t of posterior.triples) if (t.p > least) more.push({ of: [...t.of], p: t.p });
  const kept = [{ of: [], p: none }, ...Array.from(alone, (p, i) => ({ of: [i], p })), ...more]
    .filter((h) => h.p > least)
    .toSorted((a, b) => b.p - a.p)
    .slice(0, most);
  const sum = kept.reduce((s, h) => s + h.p, 0);
  return sum > 0 ? kept.map((h) => ({ of: h.of, p: h.p / sum })) : [];
};

const floor = 1e-6;

/** P(outcome | faults) for all outcomes of a view, by the rules of infer.ts. */
const rowOf = ({ width, healthy, rows, strays, observable }: View, faults: readonly number[]): number[] => {
  const out: number[] = [];
  const one = faults[0];
  if (one === undefined) for (let k = 0; k < width; k++) out.push(healthy[k]!);
  else if (faults.length === 1) for (let k = 0; k < width; k++) out.push(rows[one * width + k]!);
  else if (observable.ordered) {
    let before = 0;
    let top = 0;
    const upTo = faults.map(() => 0);
    for (let k = 0; k < width; k++) {
      top += healthy[k]!;
      let high = top;
      for (const [f, fault] of faults.entries()) {
        upTo[f] = upTo[f]! + rows[fault * width + k]!;
        high *= Math.min(1, upTo[f] / top);
      }
      out.push(Math.max(floor, high - before));
      before = high;
    }
  } else
    for (let k = 0; k < width; k++) {
      let sum = 0;
      let says = 0;
      for (const fault of faults) {
        const stray = strays[fault]! + 1e-6;
        sum += stray * rows[fault * width + k]!;
        says += stray;
      }
      out.push(sum / says);
    }
  return out;
};

/** How far a check made with care is trusted. */
const care = 0.97;

/** P(outcome | faults of one hypothesis) of a check made now, trust included; the last is "decided nothing". */
export const rowUnder = (view: View, faults: readonly number[], weight = care): number[] => {
  const flat = (1 - weight) / view.width;
  const row = rowOf(view, faults);
  const sum = row.reduce((a, b) => a + b, 0);
  return row.map((p) => (weight * p) / sum + flat);
};

/** rowUnder for each hypothesis; null where this coach has no such observable. */
export const outlook = (w: Weighed, see: string, hypotheses: readonly Hypothesis[]): number[][] | null => {
  const view = w.model.view(see);
  if (!view) return null;
  const m = w.model.faults.length;
  // What was mended shows a sound part from now on.
  return hypotheses.map(({ of }) => rowUnder(view, of.some((c) => c >= m) ? of.filter((c) => c < m) : of));
};
