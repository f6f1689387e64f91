/** A height said of a side alone is the rear's: the air side is what this bench is about. Taken as assumed, and shown so. */
import type { Fact, Reading } from '../../intents/shapes.ts';

const heights = new Set(['height', 'height off', 'height fall']);

export const atRear = (fact: Fact): Fact =>
  fact.is === 'reading' &&
  heights.has(fact.what.v) &&
  (fact.where.v === 'left' || fact.where.v === 'right' || fact.where.v === 'both')
    ? { ...fact, where: { ...fact.where, v: `${fact.where.v} rear`, from: 'assumed' } }
    : fact;

export const withCorners = (read: Reading): Reading => ({
  ...read,
  facts: read.facts.map(atRear),
  asks: read.asks.map((ask) => ({ ...ask, facts: ask.facts.map(atRear) })),
});
