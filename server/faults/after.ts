/** After a repair: what brought the fault on, what else it may have done, and the words that ask for the proof. Pure. */
import type { Block } from '../chat/reply.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { faultOf } from './catalogue.ts';
import type { Check } from './check.ts';
import { confirmOf } from './checks.ts';
import type { Fault } from './fault.ts';
import { likely, type Mended, mendedFaults, type Proved } from './proof.ts';
import { type Weighed, weigh } from './weigh.ts';

const sameSide = (a: Fault, b: Fault): boolean => a.side === null || b.side === null || a.side === b.side;

/** Faults that usually bring `fault` on. */
export const causesOf = (fault: Fault, w: Weighed): Fault[] =>
  w.model.faults.filter(
    (f) => f.kind !== fault.kind && sameSide(f, fault) && f.damages.some((d) => d.fault === fault.kind),
  );

/** Faults that `fault` usually brings on. */
export const damagesOf = (fault: Fault, w: Weighed): { fault: Fault; words: string }[] =>
  fault.damages.flatMap(({ fault: kind, words }) => {
    const hit = w.model.faults.filter((f) => f.kind === kind);
    const other =
      kind === fault.kind ? hit.filter((f) => f.side !== fault.side) : hit.filter((f) => sameSide(f, fault));
    return other.map((f) => ({ fault: f, words }));
  });

const answered = (w: Weighed, check: Check | undefined): boolean =>
  check === undefined || check.settles.every((s) => w.evidence.some((e) => e.see === s));

/** Questions after a repair: what killed it, what else it did. Each names the check that answers it. */
export const afterRepair = (standing: Standing, sheet: Sheet): Extract<Block, { is: 'question' }>[] => {
  const w = weigh(standing, sheet);
  const [top] = mendedFaults(w);
  if (!top || top.p < likely) return [];
  const { fault } = top;
  const out: Extract<Block, { is: 'question' }>[] = [];
  const roots = causesOf(fault, w).flatMap((f) => {
    const check = confirmOf(f);
    return check && !answered(w, check) ? [{ f, check }] : [];
  });
  const list = roots.slice(0, 3).map(({ f, check }) => `${f.title} (${check.words})`);
  out.push({
    is: 'question',
    id: `root ${fault.key}`,
    words: `What brought it on? Usually: ${fault.usually}.${list.length > 0 ? ` Look for: ${list.join('; ')}` : ''}`,
    keys: [],
  });
  const hurt = damagesOf(fault, w).filter(({ fault: f }) => !answered(w, confirmOf(f)));
  if (hurt.length > 0)
    out.push({
      is: 'question',
      id: `collateral ${fault.key}`,
      words: `What else may it have done? ${hurt
        .slice(0, 3)
        .map(({ fault: f, words }) => `${f.title}: ${words}`)
        .join('; ')}.`,
      keys: [],
    });
  return out;
};

/** "what killed it": of the part just mended, else of the leading suspect; empty when nothing points anywhere. */
export const whatKilledIt = (standing: Standing, sheet: Sheet): string[] => {
  const after = afterRepair(standing, sheet).map((q) => q.words);
  if (after.length > 0) return after;
  const fault = faultOf(standing.suspects[0]?.fault ?? '');
  return fault
    ? [
        `If it is ${fault.title}: usually ${fault.usually}.`,
        ...(fault.damages.length > 0
          ? [`What it may do besides: ${fault.damages.map((d) => d.words).join('; ')}.`]
          : []),
      ]
    : [];
};

export const whyProof = (
  { check, mended, first }: { check: Check; mended: Mended; first: boolean },
  w: Weighed,
): string => {
  if (!first)
    return `The other half of the proof: ${mended.mend.words}, and what rides is proved on the road, heights taped again after it.`;
  const after =
    check.id === 'overnight'
      ? 'An overnight complaint is proved overnight, in AUTO'
      : check.id === 'road test'
        ? 'What rides is proved by a road test and heights taped again after it'
        : 'The proof that fits the complaint';
  const [root] = causesOf(mended.fault, w);
  return `${after}: ${mended.mend.words}, nothing since shows that it helped. Meanwhile ask what brought it on: ${mended.fault.usually}${root ? ` (${root.title}?)` : ''}.`;
};

const shownPairs = 3;

/** "Proved": what it was before and is after, in words. */
export const provedWords = ({ mended, pairs }: Proved, complaint: Standing['complaint']): string => {
  const told = pairs
    .slice(0, shownPairs)
    .map(({ before, after }) => (before === null ? `after: ${after}` : `before: ${before}; after: ${after}`));
  const was = complaint && pairs.every((p) => p.before === null) ? [`before: ${complaint.words}`] : [];
  return `Proved: ${mended.mend.words}. ${[...was, ...told].join('. ')}.`;
};
