/** The suspects as they are shown: faults with how sure, and what speaks for and against each. Pure. */
import type { Suspect } from '../chat/reply.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { leastLift } from './infer.ts';
import { innocence, liftOf } from './hypotheses.ts';
import { observableOf } from './observables.ts';
import { rankOf } from './rank.ts';
import { preparedOf } from './seen.ts';
import { type Weighed, weigh } from './weigh.ts';

/** Shown at most, and the least chance that is worth a line. */
const most = 6;
const least = 0.02;
export const nothingWrong = 'nothing wrong';
export const somethingElse = 'something else';

/**
 * Bits that one piece of evidence gives a cause: log2 of its chance under that cause against its chance under all others,
 * these weighed by their priors. Above 0 it speaks for the cause.
 */
export const bitsFor = (w: Weighed, e: number, cause: number): number => {
  const seen = w.seen[e];
  if (!seen) return 0;
  const { odds } = w.causes;
  const { underNone, underEach } = preparedOf(seen, odds.length);
  let others = underNone;
  let mass = 1;
  for (let c = 0; c < odds.length; c++) {
    if (c === cause) continue;
    others += odds[c]! * underEach[c]!;
    mass += odds[c]!;
  }
  return Math.log2(underEach[cause]! / (others / mass));
};

/** With it, alone or beside something else, what was seen is likelier than by chance. */
const explains = (w: Weighed, cause: number): boolean => {
  const { odds } = w.causes;
  const prior = odds[cause]! / (1 + odds[cause]!);
  return liftOf(w, cause) >= leastLift || w.posterior.marginals[cause]! > 2 * prior;
};

/** Same shape for what is not in the catalogue. */
const plain = (fault: string, name: string, p: number): Suspect => ({ fault, name, p, rank: rankOf(p), speaks: [] });

/** Something was heard that is not simply as it should be: an outcome other than the first of its observable. */
const heardOdd = (w: Weighed): boolean =>
  w.evidence.some((e) => !e.outcome.split('|').includes(observableOf(e.see)?.outcomes[0] ?? ''));

export const suspectsFrom = (w: Weighed): Suspect[] => {
  const { posterior, model } = w;
  if (w.seen.length === 0) return [];
  const out = model.faults.map((fault, i): Suspect => {
    const p = posterior.marginals[i]!;
    return { fault: fault.key, where: fault.where, name: fault.title, p, rank: rankOf(p), speaks: [] };
  });
  const sound = innocence(w);
  // Where nothing out of the ordinary was heard there is no complaint that nothing would explain.
  if (sound > least && heardOdd(w)) out.push(plain(nothingWrong, 'nothing is wrong with the air suspension', sound));
  if (posterior.unknown > 0.1) out.push(plain(somethingElse, 'something that is not on my list', posterior.unknown));
  const shown = out
    .toSorted((a, b) => b.p - a.p || a.fault.localeCompare(b.fault))
    .filter((s, i) => {
      const cause = model.index.get(s.fault);
      // What explains nothing of what was seen is no suspect, however common it is.
      return i === 0 || (s.p > least && (cause === undefined || explains(w, cause)));
    });
  return shown.slice(0, most).map((s) => {
    const cause = model.index.get(s.fault);
    if (cause === undefined) return s;
    return {
      ...s,
      speaks: w.evidence
        .map((e, k) => ({ see: e.see, words: e.words, bits: Math.round(bitsFor(w, k, cause) * 100) / 100 }))
        .filter((x) => Math.abs(x.bits) >= 0.1)
        .toSorted((a, b) => Math.abs(b.bits) - Math.abs(a.bits)),
    };
  });
};

export const suspectsOf = (standing: Standing, sheet: Sheet): Suspect[] => suspectsFrom(weigh(standing, sheet));
