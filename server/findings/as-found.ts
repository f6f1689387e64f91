/** Readings taken after standing, before anything was touched: they tell of the night, not of the valve. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { type Case, readings, stateAt } from './case.ts';

/** Said that the coach was left standing and nothing has been touched since. */
export const asFound = (c: Case, fact: ReadingFact): boolean => {
  const s = stateAt(c, fact);
  const parked = s.because['parked']?.fact.holds === true || readings(c, 'standing time').length > 0;
  return parked && s.pumpedAt === null && s.key !== true && s.engine !== true && s.pump !== true;
};

/** Taken after standing, before anything was touched: said, or a complaint about standing with nothing pumped yet. */
export const isAsFound = (c: Case, fact: ReadingFact): boolean =>
  asFound(c, fact) ||
  (c.standing.complaint?.standing === true && stateAt(c, fact).pumpedAt === null && stateAt(c, fact).key !== true);
