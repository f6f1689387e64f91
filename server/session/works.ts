/**
 * What a work that was done means for what was known before it: one row a work, so that a new one must say it of all.
 * Common practice, no source.
 */
import type { Fact, Work, WorkFact } from '../../intents/shapes.ts';

type Meaning =
  /** What was said of that part before is of another state of it. */
  | 'part'
  /** Figures before and after it are compared, as before and after the repair. */
  | 'repair'
  /** A sign seen on that very part, that stops the coach, falls. */
  | 'clears'
  /** A service item that names that part is done. */
  | 'service'
  /** Lets air in or out, or moves the coach: "as found" ends. */
  | 'moves'
  /** A fall of a height ends: what is read after it is not of the same standing. */
  | 'height'
  /** A fall of the tank ends. */
  | 'tank'
  /** An owner reads it as work on the coach; the others are tests and moves of the shop's own. */
  | 'told';

const meanings: Readonly<Record<Work, readonly Meaning[]>> = {
  replaced: ['part', 'repair', 'clears', 'service', 'moves', 'height', 'tank', 'told'],
  repaired: ['part', 'repair', 'clears', 'height', 'tank', 'told'],
  rebuilt: ['part', 'repair', 'clears', 'service', 'moves', 'height', 'tank', 'told'],
  cleaned: ['part', 'repair', 'service', 'height', 'tank', 'told'],
  tightened: ['part', 'repair', 'height', 'tank', 'told'],
  adjusted: ['part', 'repair', 'service', 'moves', 'height', 'tank', 'told'],
  set: ['part', 'repair', 'service', 'moves', 'height', 'tank', 'told'],
  soaped: [],
  drained: ['service', 'moves', 'height', 'tank', 'told'],
  checked: ['service', 'told'],
  removed: ['repair', 'height', 'tank', 'told'],
  refitted: ['part', 'repair', 'clears', 'height', 'tank', 'told'],
  rerouted: ['part', 'repair', 'height', 'tank', 'told'],
  lubricated: ['service', 'height', 'tank', 'told'],
  shimmed: ['part', 'repair', 'height', 'tank', 'told'],
  levelled: ['moves', 'height', 'tank', 'told'],
  'pumped up': ['clears', 'moves', 'height', 'tank'],
  vented: ['moves', 'height', 'tank'],
  opened: ['height', 'tank'],
  closed: ['height', 'tank'],
  disconnected: ['moves', 'height', 'tank', 'told'],
  connected: ['part', 'repair', 'clears', 'height', 'tank', 'told'],
  tripped: ['height', 'tank', 'told'],
  tapped: ['tank'],
  'road tested': ['moves', 'height', 'tank', 'told'],
  'overnight tested': ['height', 'tank', 'told'],
  declined: ['tank'],
  reset: ['part', 'repair', 'clears', 'height', 'tank', 'told'],
  inflated: ['part', 'clears', 'height', 'tank', 'told'],
  washed: ['tank', 'told'],
  weighed: ['tank', 'told'],
};

/** A work that was done and means `what` for what was known before it. */
export const doneMeaning = (fact: Fact, what: Meaning): fact is WorkFact =>
  fact.is === 'work' && fact.done && meanings[fact.what.v].includes(what);
