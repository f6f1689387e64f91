/** Readings taken after standing, before anything was touched: they tell of the night, not of the valve. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { type Case, readings, stateAt } from './case.ts';

/** Said that the coach was left standing and nothing has been touched since. */
export const asFound = (c: Case, fact: ReadingFact): boolean => {
  const s = stateAt(c, fact);
  const parked = s.because['parked']?.fact.holds === true || readings(c, 'standing time').length > 0;
  return parked && s.pumpedAt === null && s.key !== true && s.engine !== true && s.pump !== true;
};

/** "As found: tank 22, lr 11 1/2": said so in the note of the reading. */
const saidSo = (fact: ReadingFact): boolean => fact.manner?.includes('as found') === true;

/** Taken after standing, before anything was touched: said, or a complaint about standing with nothing pumped yet. */
export const isAsFound = (c: Case, fact: ReadingFact): boolean =>
  asFound(c, fact) ||
  (saidSo(fact) && stateAt(c, fact).pumpedAt === null && stateAt(c, fact).key !== true) ||
  (c.standing.complaint?.standing === true && stateAt(c, fact).pumpedAt === null && stateAt(c, fact).key !== true);

/** Tank at or under what the bellows carry, nothing pumping: the valves have nothing to level with. */
export const tankDown = (c: Case, fact: ReadingFact, side: 'left' | 'right'): boolean => {
  const carried = c.sheet.springs?.pressure?.[side]?.low;
  const s = stateAt(c, fact);
  if (!carried || s.key === true || s.engine === true || s.pump === true) return false;
  const note = fact.id.slice(0, fact.id.lastIndexOf('.') + 1);
  const tanks = readings(c, 'pressure', (p) => p === 'tank');
  const tank = tanks.findLast((f) => f.id.startsWith(note)) ?? tanks.findLast((f) => f.at <= fact.at);
  return tank !== undefined && tank.amount.v.si < carried.si;
};
