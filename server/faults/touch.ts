/** What ends "as found": anything that lets air in or out, or moves the coach. */
import type { Fact } from '../../intents/shapes.ts';
import { doneMeaning } from '../session/works.ts';

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

export const touches = (fact: Fact): boolean =>
  (fact.is === 'condition' && fact.holds && conditions.includes(fact.what.v)) ||
  (fact.is === 'condition' && !fact.holds && fact.what.v === 'link connected') ||
  doneMeaning(fact, 'moves') ||
  (fact.is === 'reading' && (fact.what.v === 'pump-up' || fact.what.v === 'cut-in' || fact.what.v === 'cut-out'));
