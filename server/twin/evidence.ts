/**
 * How likely each outcome of a check is under each ailment: the compiled table, read once and checked. Counts come from
 * compile.ts; a half is added to each so that nothing is impossible (Jeffreys). A check that decided nothing counts among
 * the outcomes: where the pump cannot run, hearing it stop speaks against that fault.
 */
import * as z from 'zod/mini';
import type { Ailment } from './ailments.ts';
import { airObservables } from './observables.ts';
import table from './compiled/evidence.json' with { type: 'json' };

const Counts = z.record(z.string(), z.array(z.int().check(z.nonnegative())));
export const EvidenceTable = z.object({
  v: z.literal(1),
  /** Makes this file again. */
  command: z.string(),
  seed: z.int(),
  /** Coaches drawn for each cause, with and without a panel alike. */
  draws: z.int(),
  /** code-hash.ts over the sources that made it. */
  code: z.string(),
  /** cause -> check -> count of each outcome in the order of observables.ts, then of checks that decided nothing. */
  panel: z.record(z.string(), Counts),
  noPanel: z.record(z.string(), Counts),
  /** What the first coach drawn for a cause showed (compile.ts, sampleOf). */
  samples: z.object({ panel: z.record(z.string(), z.string()), noPanel: z.record(z.string(), z.string()) }),
});
export type EvidenceTable = z.infer<typeof EvidenceTable>;

export const evidenceTable: EvidenceTable = EvidenceTable.parse(table);

const outcomesOf = new Map(airObservables.map((o) => [o.see, o.outcomes]));

/** Chance from counts with a half added to each, the undecided among them. */
export const chanceFrom = (counts: readonly number[], index: number): number =>
  ((counts[index] ?? 0) + 0.5) / (counts.reduce((a, b) => a + b, 0) + 0.5 * counts.length);

/**
 * P(outcome | ailment) for a check in its state; above 0 always. Where the table has no row for an ailment (a panel's, on
 * a coach without one) the sound coach's row answers. 1 for a check or outcome it does not know: says nothing.
 */
export const likelihood = (see: string, outcome: string, ailment: Ailment | 'none', hasPanel: boolean): number => {
  const causes = hasPanel ? evidenceTable.panel : evidenceTable.noPanel;
  const index = outcomesOf.get(see)?.indexOf(outcome) ?? -1;
  const counts = (causes[ailment] ?? causes['none'])?.[see];
  return index < 0 || !counts ? 1 : chanceFrom(counts, index);
};
