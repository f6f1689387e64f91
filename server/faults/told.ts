/** One piece of evidence: what was observed, how far it is trusted, and what it rests on. */
import type { FactId } from '../../intents/shapes.ts';

export type Evidence = {
  see: string;
  /** One of its outcomes, or several as "drops|on stops". */
  outcome: string;
  weight: number;
  because: FactId[];
  seq: number;
  words: string;
  /** Place in the order of the facts: before or after a repair. */
  clock: number;
  /** Said again, against or instead of another. */
  note?: 'measured again' | 'contradicts' | 'echo' | 'gauge in doubt';
};

/** How far a report is trusted: seen by the tech, second-hand, a hunch. Estimates. */
export const trust = { own: 0.97, told: 0.7, hunch: 0.3 } as const;
/** The complaint itself, in the customer's words: he has lived with it. */
export const trustComplaint = 0.88;
/** A defect seen on the very part with one's own eyes and named: hardly ever a slip. */
export const trustSeen = 0.995;
/** What was read off an instrument and typed as a number: fewer slips than a remark. */
export const trustRead = 0.99;
/** Watched in a position of the panel that was not said. */
export const trustAssumed = 0.8;

/** Found against each other. */
export const trustContradicted = 0.5;

export const noteOf = (id: FactId): string => id.slice(0, id.lastIndexOf('.'));
export const outcomesOf = (e: Evidence): string[] => e.outcome.split('|');
export const disagree = (a: Evidence, b: Evidence): boolean => !outcomesOf(a).some((o) => outcomesOf(b).includes(o));
