/** What the leading suspect hangs on: its chance without each piece of evidence, and with its prior a third or three times. */
import { infer } from './infer.ts';
import type { Weighed } from './weigh.ts';

export type Hang = { readonly what: string; readonly p: number; readonly leads: boolean };
export type Sensitivity = {
  readonly p: number;
  /** Chance of the suspect when one piece of evidence is left out. */
  readonly without: readonly Hang[];
  /** Chance with its prior a third of what the table says, and three times. */
  readonly low: Hang;
  readonly high: Hang;
};

const times = 3;
const leads = (marginals: Float64Array, cause: number, m: number): boolean => {
  for (let c = 0; c < m; c++) if (marginals[c]! > marginals[cause]!) return false;
  return true;
};

export const sensitivityOf = (w: Weighed, cause: number): Sensitivity => {
  const m = w.model.faults.length;
  const without = w.seen.map((_, i): Hang => {
    const { marginals } = infer(
      w.causes,
      w.seen.filter((__, k) => k !== i),
      { triples: false },
    );
    return { what: w.evidence[i]?.words ?? '', p: marginals[cause]!, leads: leads(marginals, cause, m) };
  });
  const withPrior = (factor: number): Hang => {
    const odds = w.causes.odds.slice();
    odds[cause] = odds[cause]! * factor;
    const { marginals } = infer({ odds, links: w.causes.links }, w.seen, { triples: false });
    return { what: `prior times ${factor < 1 ? '1/3' : '3'}`, p: marginals[cause]!, leads: leads(marginals, cause, m) };
  };
  return { p: w.posterior.marginals[cause]!, without, low: withPrior(1 / times), high: withPrior(times) };
};
