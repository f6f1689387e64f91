/** After a repair: the proof that fits the complaint, what brought the fault on, and what else it may have done. Pure. */
import type { Block } from '../chat/reply.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { faultOf } from './catalogue.ts';
import type { Check } from './check.ts';
import { checkOf, confirmOf } from './checks.ts';
import type { Evidence } from './evidence.ts';
import type { Fault } from './fault.ts';
import { kindOfSee } from './observables.ts';
import type { Mend } from './situation.ts';
import { type Weighed, weigh } from './weigh.ts';

/** What was complained of, by observable, and the check that shows it gone. */
const proofs: readonly (readonly [check: string, kinds: readonly string[]])[] = [
  [
    'overnight',
    ['overnight', 'as found', 'coach overnight', 'tank as found', 'fall stops', 'height auto', 'height shut'],
  ],
  [
    'hold auto',
    ['tank fall auto', 'tank fall shut', 'tank fall outlet closed', 'tank bubbles at', 'soap supply', 'soap tank'],
  ],
  ['runs on', ['pump past cut-out', 'cut-out', 'relief look']],
  ['restart', ['pump restart']],
  ['pump-up', ['pump-up', 'pump-up shut', 'quits hot', 'pump hot', 'filter look', 'hand at intake']],
  ['pump cycles', ['pump duty', 'pump cycles auto', 'pump cycles shut', 'hiss after stop']],
  [
    'pump call',
    [
      'pump called',
      'pump quiet',
      'quiet at',
      'motor volts',
      'battery volts',
      'motor legs',
      'fuse look',
      'switch volts',
      'relay volts',
    ],
  ],
  ['tyre wear look', ['tyre wear']],
];

export const proofFor = (evidence: readonly Evidence[], complaintSeq: number | undefined, standing: boolean): Check => {
  if (standing) return checkOf('overnight')!;
  const about = evidence.filter((e) => e.seq === complaintSeq || complaintSeq === undefined);
  const kinds = new Set((about.length > 0 ? about : evidence).map((e) => kindOfSee(e.see)));
  return checkOf(proofs.find(([, list]) => list.some((k) => kinds.has(k)))?.[0] ?? 'drive')!;
};

export type Mended = { readonly fault: Fault; readonly mend: Mend; readonly p: number };

/** Faults that were likely there and have been worked on, likeliest first: chance that it was there and is gone. */
export const mendedFaults = (w: Weighed): Mended[] => {
  const m = w.model.faults.length;
  const out: Mended[] = [];
  for (let c = m; c < w.faultOfCause.length; c++)
    out.push({ fault: w.model.faults[w.faultOfCause[c]!]!, mend: w.mendedAt[c]!, p: w.posterior.marginals[c]! });
  return out.filter((x) => !x.fault.innocent).toSorted((a, b) => b.p - a.p);
};

const likely = 0.3;

/** The proof that stands out: something likely was mended, and nothing since has shown that it helped. */
export const openProof = (w: Weighed, standing: Standing): { check: Check; mended: Mended } | null => {
  const [top] = mendedFaults(w);
  if (!top) return null;
  const together = mendedFaults(w).reduce((s, x) => s + x.p, 0);
  if (together < likely) return null;
  const check = proofFor(w.evidence, standing.complaint?.seq, standing.complaint?.standing ?? false);
  const settles = new Set(check.settles);
  const covers = [...check.settles, ...check.settles.map((s) => s.replace('overnight', 'as found'))];
  const since = w.evidence.some((e) => e.clock > top.mend.clock && (settles.has(e.see) || covers.includes(e.see)));
  return since ? null : { check, mended: top };
};

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

export const whyProof = ({ check, mended }: { check: Check; mended: Mended }, w: Weighed): string => {
  const after =
    check.id === 'overnight'
      ? 'An overnight complaint is proved overnight, in AUTO'
      : 'The proof that fits the complaint';
  const [root] = causesOf(mended.fault, w);
  return `${after}: ${mended.mend.words}, nothing since shows that it helped. Meanwhile ask what brought it on: ${mended.fault.usually}${root ? ` (${root.title}?)` : ''}.`;
};
