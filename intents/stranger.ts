/** "coffee machine dead again": a sign of something nobody here knows. */
import { takePlace } from './place.ts';
import type { Settled } from './settled.ts';
import type { Fact, Sign } from './shapes.ts';

/** Signs that anything can have; the others are said of an air suspension only. */
const ofAnything: ReadonlySet<Sign> = new Set([
  'ok',
  'works',
  'not working',
  'low',
  'high',
  'loose',
  'dirty',
  'oily',
  'wet',
  'water',
  'stuck',
  'broken',
  'hot',
  'cold',
  'warm',
  'noisy',
  'aged',
  'worn',
  'missing',
  'level',
  'flat',
  'cracked',
  'drops',
] as Sign[]);

const noun = (item: Settled): boolean =>
  item.k === 'unknown' && /^[a-z]{4,}$/.test(item.low) && !/(?:ly|ing|ed|where|thing|times?|ever|less)$/.test(item.low);

const cuts = (item: Settled | undefined): boolean => item === undefined || item.k === 'sep' || item.k === 'join';

const ofCorners: ReadonlySet<Sign> = new Set(['low', 'high', 'level', 'flat', 'drops', 'ok'] as Sign[]);

/** "sway bar link broken left": the side is said, and the thing that broke is none of ours. */
const namedItself = (f: Extract<Fact, { is: 'sign' }>, items: readonly Settled[]): boolean => {
  const place = takePlace(f.where.v);
  const span = f.what.spans[0];
  if (!span || !place || (f.where.v !== '' && !place.side) || place.part !== undefined || ofCorners.has(f.what.v))
    return false;
  const thing = items.findLast((it) => it.span[1] <= span[0] && it.k !== 'filler');
  return thing !== undefined && noun(thing) && f.where.spans.every((s) => s[0] > span[0]);
};

/**
 * Whether a sign that any thing can have, and whose place nobody said, stands in a clause with a thing nobody knows: it
 * is that thing's, and the words stay unread.
 */
export const ofAStranger = (f: Fact, items: readonly Settled[]): boolean => {
  if (f.is !== 'sign' || !ofAnything.has(f.what.v)) return false;
  if (f.where.from !== 'assumed') return namedItself(f, items);
  const part = takePlace(f.where.v)?.part;
  const span = f.what.spans[0];
  if (!span || (part !== undefined && part !== 'coach')) return false;
  const at = items.findIndex((it) => it.span[0] >= span[0]);
  let from = at;
  while (!cuts(items[from - 1])) from -= 1;
  let to = at;
  while (!cuts(items[to + 1])) to += 1;
  return items.slice(from, to + 1).some(noun);
};
