/** The sets of causes that still matter, as a short list with their chances: what a next check is chosen over. */
import { chanceUnder, type Posterior } from './infer.ts';
import { seenOf, type Weighed } from './weigh.ts';

export type Hypothesis = { readonly of: readonly number[]; readonly p: number };

const leastSingle = 1e-3;
const leastPair = 2e-3;

export const hypothesesOf = (posterior: Posterior, most = 60): Hypothesis[] => {
  const { n } = posterior;
  const out: Hypothesis[] = [{ of: [], p: posterior.none }];
  for (let i = 0; i < n; i++) {
    if (posterior.singles[i]! > leastSingle) out.push({ of: [i], p: posterior.singles[i]! });
    if (posterior.marginals[i]! < leastPair) continue;
    for (let j = i + 1; j < n; j++) {
      const p = posterior.pairs[i * n + j]!;
      if (p > leastPair) out.push({ of: [i, j], p });
    }
  }
  for (const t of posterior.triples) if (t.p > leastPair) out.push({ of: t.of, p: t.p });
  const kept = out.toSorted((a, b) => b.p - a.p).slice(0, most);
  const sum = kept.reduce((s, h) => s + h.p, 0);
  return sum > 0 ? kept.map((h) => ({ of: h.of, p: h.p / sum })) : [];
};

/** After everything that has been noted. */
const later = Number.POSITIVE_INFINITY;

/** P(outcome | hypothesis) of a check made now; the last outcome is "decided nothing". */
export const outlook = (
  w: Weighed,
  see: string,
  hypotheses: readonly Hypothesis[],
  weight = 0.97,
): number[][] | null => {
  const view = w.model.view(see);
  if (!view) return null;
  const outcomes = [...view.observable.outcomes, ''];
  const table = hypotheses.map(() => [] as number[]);
  for (const outcome of outcomes) {
    const seen = seenOf(w.model, { see, outcome, weight, clock: later }, w);
    if (!seen) return null;
    const chance = chanceUnder(seen, w.causes.odds.length);
    for (const [h, { of }] of hypotheses.entries()) table[h]!.push(chance(of));
  }
  return table.map((row) => {
    const sum = row.reduce((a, b) => a + b, 0);
    return row.map((p) => p / sum);
  });
};
