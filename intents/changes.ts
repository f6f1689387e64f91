/** What falls, rises and differences have in common. */
import { dimensionOf } from '../server/core/units.ts';
import { dimension, oneOfUnit, type Amounting } from './amount-item.ts';
import { coachSides, pressureParts } from './dims.ts';

import type { Settled } from './settled.ts';
import { assumed, phraseOf, type Clause, type Loc, type Walk } from './walk.ts';
import { changeWords } from './words/changes.ts';

const falls = new Set(changeWords.fall.split('|'));

const rises = new Set(changeWords.rise.split('|'));

export const changeOf = (item: Settled | undefined): 'fall' | 'rise' | null => {
  const phrase = phraseOf(item);
  if (item?.k === 'change') return item.v;
  if (item?.k !== 'sign' && item?.k !== 'measure') return null;
  return falls.has(phrase) ? 'fall' : rises.has(phrase) ? 'rise' : null;
};

export const isDuration = (it: Settled | undefined): it is Amounting => it?.k === 'num' && dimension(it) === 'duration';

export const durationAfter = (c: Clause, i: number): Amounting | null => {
  const n = c.items.slice(i + 1, i + 8).find((it): it is Amounting => it.k === 'num');
  if (!isDuration(n)) return null;
  const after = phraseOf(c.items[c.items.indexOf(n) + 1]);
  return after === 'later' || after === 'ago' ? null : n;
};

/** "drops half an inch every hour": one of it. */
export const perOne = (c: Clause, i: number): Amounting | null => {
  const unit = c.items[i + 2];
  if (
    !/^(?:every|each|per)$/.test(phraseOf(c.items[i + 1])) ||
    unit?.k !== 'unit' ||
    dimensionOf(unit.v) !== 'duration'
  )
    return null;
  return oneOfUnit(unit);
};

export const durationBefore = (w: Walk, c: Clause, i: number): Amounting | null => {
  const n = c.items.slice(0, i).findLast((it): it is Amounting => it.k === 'num');
  return isDuration(n) && !w.used.has(n) ? n : null;
};

export const tankOrCarried = (loc: Loc | null): Loc =>
  loc?.p.part && pressureParts.has(loc.p.part) && loc.p.part !== 'height valve'
    ? { ...loc, from: 'carried', spans: [] }
    : assumed({ part: 'tank' });

/** A height's side takes the end spoken of before ("12 1/2 left rear and 13 1/4 on the right"). */
export const withEnd = (w: Walk, loc: Loc | null): Loc | null =>
  loc && (loc.p.side === 'left' || loc.p.side === 'right') && !loc.p.end && !loc.p.part && w.lastEnd
    ? { ...loc, p: { ...loc.p, end: w.lastEnd }, from: loc.from === 'said' ? 'carried' : loc.from }
    : loc;

export const bellowsOf = (loc: Loc | null): Loc | null =>
  loc && coachSides(loc.p) ? { ...loc, p: { side: loc.p.side, part: 'bellows' } } : loc;
