/** What ends "as found": anything that lets air in or out, or moves the coach. */
import type { Fact } from '../../intents/shapes.ts';

const conditions: readonly string[] = [
  'key on',
  'engine running',
  'pump running',
  'panel fill',
  'panel empty',
  'panel shut',
  'arm neutral',
  'arm fill',
  'arm exhaust',
  'tank outlet closed',
  'tank drained',
  'air vented',
  'bellows vented',
  'just pumped',
  'driving',
];
const works: readonly string[] = [
  'pumped up',
  'drained',
  'levelled',
  'vented',
  'road tested',
  'replaced',
  'rebuilt',
  'adjusted',
  'set',
  'disconnected',
];

export const touches = (fact: Fact): boolean =>
  (fact.is === 'condition' && fact.holds && conditions.includes(fact.what.v)) ||
  (fact.is === 'condition' && !fact.holds && fact.what.v === 'link connected') ||
  (fact.is === 'work' && fact.done && works.includes(fact.what.v)) ||
  (fact.is === 'reading' && (fact.what.v === 'pump-up' || fact.what.v === 'cut-in' || fact.what.v === 'cut-out'));
