/** The suspects as they are shown: faults with how sure, and what speaks for and against each. Pure. */
import type { Suspect } from '../chat/reply.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { leastLift, pairAt, type Posterior } from './infer.ts';
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

/** Left and right of one kind are as likely to the last bit but one: what the order of summing leaves is no order of theirs. */
const inBillionths = (p: number): number => Math.round(p * 1e9);

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
    .toSorted((a, b) => inBillionths(b.p) - inBillionths(a.p) || a.fault.localeCompare(b.fault))
    .filter((s, i) => {
      const cause = model.index.get(s.fault);
      // What explains nothing of what was seen is no suspect, however common it is.
      return i === 0 || (s.p > least && (cause === undefined || explains(w, cause)));
    });
  return withParts(w, shown.slice(0, most)).map((s) => {
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

/** The part that a fault's place is a piece of: what is taken off and held in the hand. */
const pieces: Readonly<Record<string, readonly string[]>> = {
  bellows: ['bellows', 'bellows crimp', 'bellows fold', 'bead plate', 'piston'],
  'height valve': ['height valve', 'valve cover', 'inlet seat', 'inlet check', 'exhaust seat', 'exhaust port'],
  link: ['link', 'arm'],
  pump: ['pump', 'motor', 'pump head', 'reeds', 'rings', 'unloader', 'intake filter', 'brushes'],
};
const wholeOf = (where: string): string => {
  const [, side = '', part = where] = /^(left |right )?(.+)$/.exec(where) ?? [];
  const whole = Object.entries(pieces).find(([, list]) => list.includes(part))?.[0] ?? part;
  return `${side}${whole}`;
};

const wholesBy = new WeakMap<Weighed['model'], ReadonlyMap<string, ReadonlySet<number>>>();
/** Each part with the faults of it, by model: worked out once. */
const wholesOf = (model: Weighed['model']): ReadonlyMap<string, ReadonlySet<number>> => {
  const had = wholesBy.get(model);
  if (had) return had;
  const made = new Map<string, Set<number>>();
  model.faults.forEach((fault, i) => {
    const part = wholeOf(fault.where);
    made.set(part, (made.get(part) ?? new Set()).add(i));
  });
  wholesBy.set(model, made);
  return made;
};

/** Chance that at least one of these faults is there: each counted once, however many of them are. */
export const anyOf = ({ n, marginals, pairs, triples }: Posterior, faults: ReadonlySet<number>): number => {
  let p = 0;
  for (const i of faults) {
    p += marginals[i]!;
    for (const j of faults) if (i < j) p -= pairs[pairAt(n, i, j)]!;
  }
  for (const t of triples) p -= Math.max(0, t.of.filter((c) => faults.has(c)).length - 1) * t.p;
  return p;
};

/** The shown ones with the part's own figure where two or more are faults of one part. */
const withParts = (w: Weighed, shown: readonly Suspect[]): Suspect[] => {
  const parts = shown.map((s) => (s.where === undefined ? '' : wholeOf(s.where)));
  return shown.map((s, k) => {
    const part = parts[k]!;
    if (part === '' || parts.filter((other) => other === part).length < 2) return s;
    const p = anyOf(w.posterior, wholesOf(w.model).get(part) ?? new Set());
    return { ...s, of: { part, p, rank: rankOf(p) } };
  });
};

export const suspectsOf = (standing: Standing, sheet: Sheet): Suspect[] => suspectsFrom(weigh(standing, sheet));
