/**
 * The next check: most expected information about what is wrong for its minutes, from where the coach is now; or the
 * repair, once repairing costs less than checking on. Pure.
 */
import type { Key } from '../chat/reply.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { provedWords, whyProof } from './after.ts';
import type { Check } from './check.ts';
import type { Fault } from './fault.ts';
import { type Hypothesis, hypothesesOf } from './hypotheses.ts';
import { burden, minutesOf, untouched } from './minutes.ts';
import { openProof, provedOf } from './proof.ts';
import { rankOf } from './rank.ts';
import { type Weighed, weigh } from './weigh.ts';
import { costing, costAfter } from './costing.ts';
import { type Candidate, candidates } from './candidates.ts';
import { whyCheck } from './why-check.ts';

export type Next =
  | { is: 'check'; check: Check; why: string; bits: number; hands: number; wait: number; keys: Key[] }
  | { is: 'close'; words: string; keys: Key[] }
  | { is: 'repair'; fault: Fault; why: string; hands: number; wait: number; keys: Key[] };

const asCheck = (w: Weighed, hs: readonly Hypothesis[], c: Candidate, first = false): Next => ({
  is: 'check',
  check: c.check,
  why: whyCheck(w, hs, c, first),
  bits: c.bits,
  hands: Math.round(c.minutes.hands),
  wait: Math.round(c.minutes.wait),
  keys: c.check.keys.map(({ label, text }) => ({ label, text })),
});

/** Seats and covers are worked on as the whole valve. */
const workOn = (fault: Fault): string =>
  /^(?:inlet seat|exhaust seat|inlet check|valve cover)$/.test(fault.part) && fault.side
    ? `${fault.side} height valve`
    : fault.where;

const repairKeys = (fault: Fault): Key[] =>
  fault.innocent
    ? []
    : [
        { label: 'replaced', text: `replaced ${workOn(fault)}` },
        { label: 'repaired', text: `repaired ${workOn(fault)}` },
      ];

export const nextStep = (standing: Standing, sheet: Sheet): Next | null => {
  const w = weigh(standing, sheet);
  if (w.seen.length === 0 && standing.facts.length === 0) return null;
  return nextFrom(w, standing, sheet);
};

/** The choice itself, from what has been weighed. */
export const nextFrom = (w: Weighed, standing: Standing, sheet: Sheet): Next | null => {
  const proof = openProof(w, standing);
  if (proof) {
    const m = minutesOf(proof.check, standing) ?? proof.check;
    return {
      is: 'check',
      check: proof.check,
      why: whyProof(proof, w),
      bits: 0,
      hands: Math.round(m.hands),
      wait: Math.round(m.wait),
      keys: proof.check.keys.map(({ label, text }) => ({ label, text })),
    };
  }
  const proved = provedOf(w, standing);
  if (proved)
    return {
      is: 'close',
      words: provedWords(proved, standing.complaint),
      keys: [{ label: 'close', text: 'close the session' }],
    };
  const hs = hypothesesOf(w);
  if (hs.length === 0) return null;
  const list = candidates(standing, sheet, w, hs);
  const standingComplaint = standing.complaint?.standing === true || standing.complaint === null;
  // Asked once: whoever goes on without it has his reasons.
  const askedBefore = standing.checks.some((c) => c.id === 'as found');
  if (untouched(standing) && standingComplaint && !askedBefore) {
    const asFound = list.filter((c) => c.check.setting === 'as found' && c.check.id !== 'rises first');
    const best = asFound.find((c) => c.check.id === 'as found') ?? asFound[0];
    if (best) return asCheck(w, hs, best, best.check.id === 'as found');
  }
  const best = list[0];
  const cost = costing(w, hs);
  const now = cost(hs.map((h) => h.p));
  const fault = now.first === null ? undefined : w.model.faults[now.first];
  const pFault = now.first === null ? 0 : w.posterior.marginals[now.first]!;
  const cheapest = (): number =>
    Math.min(...list.slice(0, 4).map((c) => burden(c.minutes, c.check) + costAfter(cost, hs, c)));
  if (fault && pFault > 0.5 && cheapest() >= now.cost)
    return {
      is: 'repair',
      fault,
      why: `${fault.title}: ${rankOf(pFault)}; mending it costs less than another check would save.`,
      hands: fault.hands,
      wait: fault.wait,
      keys: repairKeys(fault),
    };
  return best ? asCheck(w, hs, best) : null;
};
