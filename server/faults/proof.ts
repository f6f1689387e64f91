/**
 * The proof that a repair holds: it matches the complaint (an overnight complaint overnight in AUTO, what rides by a road
 * test and heights taped again), it is asked for until it is brought, and then the session may close. Pure.
 */
import type { Part } from '../../intents/shapes.ts';
import type { Standing } from '../session/standing.ts';
import type { Check } from './check.ts';
import { checkOf, confirmOf } from './checks.ts';
import type { Evidence } from './evidence.ts';
import type { Fault } from './fault.ts';
import { kindOfSee } from './observables.ts';
import type { Mend } from './situation.ts';
import type { Weighed } from './weigh.ts';

/** What was complained of, by observable, and the check that shows it gone. */
const byComplaint: readonly (readonly [check: string, kinds: readonly string[]])[] = [
  [
    'overnight',
    [
      'overnight',
      'as found',
      'coach overnight',
      'tank as found',
      'fall stops',
      'height auto',
      'height shut',
      'tank down',
    ],
  ],
  [
    'hold auto',
    ['tank fall auto', 'tank fall shut', 'tank fall outlet closed', 'tank bubbles at', 'soap supply', 'soap tank'],
  ],
  ['runs on', ['pump past cut-out', 'cut-out', 'relief look', 'key off']],
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
  ['second gauge', ['second gauge', 'needle']],
  ['road test', ['ride', 'bang', 'tyre wear', 'front tyre wear', 'shock after drive', 'toe camber', 'string check']],
];

/** Work on these is proved on the road, whatever was complained of. */
const riding: ReadonlySet<Part> = new Set([
  'bellows',
  'shock',
  'shock bushing',
  'control arm',
  'pin',
  'bushing',
  'wheel bearing',
  'axle',
  'bump stop',
]);

/** What else than the check's own observables answers it. */
const alsoBy: Readonly<Record<string, readonly string[]>> = {
  overnight: ['coach overnight', 'left as found', 'right as found'],
  drive: ['coach driving', 'left rear height', 'right rear height', 'left stance', 'right stance'],
  'pump cycles': ['pump duty'],
  'pump call': ['pump restart', 'cut-in', 'cut-out', 'tank below cut-in'],
  'pump-up': ['pump-up shut'],
  'runs on': ['cut-out', 'key off'],
  'hold auto': ['tank fall shut', 'tank fall outlet closed'],
  'road test': ['coach driving', 'left rear height', 'right rear height', 'left stance', 'right stance'],
};

const complaintCheck = (evidence: readonly Evidence[], complaint: Standing['complaint'], mended: Fault): Check => {
  if (complaint?.standing === true) return checkOf('overnight')!;
  const about = evidence.filter((e) => complaint === null || e.seq === complaint.seq);
  const kinds = new Set((about.length > 0 ? about : evidence).map((e) => kindOfSee(e.see)));
  const told =
    about.length > 0 || evidence.length > 0
      ? byComplaint.find(([, list]) => list.some((k) => kinds.has(k)))
      : undefined;
  if (told) return checkOf(told[0])!;
  // The complaint was not understood: what found the fault shows it gone, as long as nothing must be opened for it.
  const own = about.length === 0 ? confirmOf(mended) : undefined;
  return own && own.gate !== 'dead' ? own : checkOf('drive')!;
};

export const proofsFor = (evidence: readonly Evidence[], complaint: Standing['complaint'], mended: Fault): Check[] => {
  const first = complaintCheck(evidence, complaint, mended);
  const ride = checkOf('road test')!;
  if (!riding.has(mended.part) || first.id === ride.id) return [first];
  return first.id === 'drive' ? [ride] : [first, ride];
};

const since = (check: Check, w: Weighed, after: number): Evidence[] => {
  const sees = new Set([...check.settles, ...(alsoBy[check.id] ?? [])]);
  return w.evidence.filter((e) => e.clock > after && sees.has(e.see));
};

/** A road test is one only once it was driven: that it stands level in the bay is not asked. */
const driven = (standing: Standing, after: number): boolean =>
  standing.facts.some(
    ({ fact }, i) =>
      i > after &&
      ((fact.is === 'work' && fact.done && fact.what.v === 'road tested') ||
        (fact.is === 'condition' && fact.what.v === 'driving') ||
        (fact.is === 'reading' && fact.what.v === 'distance driven') ||
        (fact.is === 'sign' && fact.often === 'driving')),
  );

/** Evidence that answers the check since the repair; empty as long as it is open. */
const answersTo = (check: Check, w: Weighed, standing: Standing, after: number): Evidence[] => {
  const found = since(check, w, after);
  return check.id === 'road test' && !driven(standing, after) ? [] : found;
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

export const likely = 0.3;

/** What was mended that most likely was the matter; null where nothing likely was. */
export const mendedOf = (w: Weighed): Mended | null => {
  const all = mendedFaults(w);
  const together = all.reduce((s, x) => s + x.p, 0);
  return all[0] && together >= likely ? all[0] : null;
};

/** The proof that stands out: something likely was mended, and not all that must be shown since has been. */
export const openProof = (w: Weighed, standing: Standing): { check: Check; mended: Mended; first: boolean } | null => {
  const mended = mendedOf(w);
  if (!mended) return null;
  const proofs = proofsFor(w.evidence, standing.complaint, mended.fault);
  const open = proofs.findIndex((check) => answersTo(check, w, standing, mended.mend.clock).length === 0);
  return open < 0 ? null : { check: proofs[open]!, mended, first: open === 0 };
};

/** Outcomes that say it is as it should be. */
const right: ReadonlySet<string> = new Set([
  'holds',
  'level',
  'none',
  'stops',
  'starts',
  'within',
  'no',
  'rests',
  'runs',
  'agrees',
  'moves',
  'fine',
  'even',
  'warm',
  'up',
]);

/** A suspect that is still about keeps the session open. */
const stillSuspected = 0.15;

export type Proved = { readonly mended: Mended; readonly pairs: readonly { before: string | null; after: string }[] };

/** All proofs brought, each as it should be, and nobody else suspected: what it was before and is after. */
export const provedOf = (w: Weighed, standing: Standing): Proved | null => {
  const mended = mendedOf(w);
  if (!mended || openProof(w, standing)) return null;
  const { marginals } = w.posterior;
  if (w.model.faults.some((f, i) => !f.innocent && marginals[i]! >= stillSuspected)) return null;
  const after = mended.mend.clock;
  const found = proofsFor(w.evidence, standing.complaint, mended.fault).flatMap((c) =>
    answersTo(c, w, standing, after),
  );
  if (found.some((e) => !e.outcome.split('|').every((o) => right.has(o)))) return null;
  const before = (e: Evidence): string | null =>
    w.evidence.find((b) => b.clock < after && b.see === e.see && b.outcome !== e.outcome)?.words ?? null;
  const pairs = found.map((e) => ({ before: before(e), after: e.words }));
  const told = pairs.filter(
    (p, i) => pairs.findIndex((o) => o.after === p.after && (o.before ?? p.before) === p.before) === i,
  );
  return { mended, pairs: told.toSorted((a, b) => Number(b.before !== null) - Number(a.before !== null)) };
};
