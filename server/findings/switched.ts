/** Whether panel, arm or tank outlet was moved between two readings: only readings of one state make a fall. */
import type { ReadingFact } from '../../intents/shapes.ts';
import type { CoachState, Standing } from '../session/standing.ts';
import { type Case, stateAt } from './case.ts';

/** A reading this shortly before the panel is moved is the first of the new position. An estimate of ours. ms */
const justBefore = 2 * 60_000;

/** Unknown is whatever the other is. */
export const sameState = (a: CoachState, b: CoachState): boolean =>
  (a.panel ?? b.panel) === (b.panel ?? a.panel) &&
  (a.outletClosed ?? false) === (b.outletClosed ?? false) &&
  (a.arm.left ?? b.arm.left) === (b.arm.left ?? a.arm.left) &&
  (a.arm.right ?? b.arm.right) === (b.arm.right ?? a.arm.right);

const places = new WeakMap<Standing['facts'], ReadonlyMap<string, number>>();
const placeOf = (facts: Standing['facts'], id: string): number => {
  const known = places.get(facts) ?? new Map(facts.map((h, i) => [h.fact.id, i]));
  places.set(facts, known);
  return known.get(id) ?? -1;
};

/**
 * `a` before `b`. Where the position was not known at `a`, a note between the two that tells nothing else moved it there;
 * `watched`: two readings stood already, so that it was told in answer to which position they were of.
 */
export const switchedBetween = (c: Case, a: ReadingFact, b: ReadingFact, watched: boolean): boolean => {
  const { facts } = c.standing;
  const [one, two] = [stateAt(c, a), stateAt(c, b)];
  if (!sameState(one, two)) return true;
  const [from, to] = [placeOf(facts, a.id), placeOf(facts, b.id)];
  const note = facts[to]?.note;
  for (let i = from + 1; i < to; i++) {
    const { fact, note: own } = facts[i]!;
    if (fact.is !== 'condition') continue;
    if (!sameState(one, stateAt(c, fact))) return true;
    const unknown = one.panel === null && fact.what.v.startsWith('panel ') && fact.holds;
    if (unknown && !watched && own !== note && fact.at - a.at > justBefore) return true;
  }
  return false;
};
