/** Two values of an end are left, then right. */
import { makePlace, takePlace } from './place.ts';
import type { PlaceItem } from './settled.ts';
import type { Fact } from './shapes.ts';
import { sideable } from './sideable.ts';
import { type Walk } from './walk.ts';

/** Two values for both ends of an end ("fronts 15 1/4 and 15 3/8"): left, then right. */
export const pairUp = (w: Walk, fact: Fact, item: PlaceItem | undefined): void => {
  if (fact.is !== 'reading') return;
  const prev = w.facts[w.facts.indexOf(fact) - 1];
  if (prev?.is !== 'reading' || prev.what.v !== fact.what.v || prev.when || fact.when) return;
  const a = takePlace(prev.where.v);
  if (!a || prev.where.v !== fact.where.v) return;
  const open =
    (a.side === undefined || a.side === 'both') &&
    (a.end !== undefined || a.side === 'both' || (a.part !== undefined && sideable.has(a.part)));
  const again =
    item !== undefined && w.text.slice(...item.span).length > 0 && item.span[0] > (prev.amount.spans[0]?.[1] ?? 0);
  // "front 14,200 drive 20,100": of something else
  const between = w.text.slice(prev.amount.spans[0]?.[1] ?? 0, fact.amount.spans[0]?.[0] ?? 0);
  const named = /[a-z]{3,}/i.test(
    between.replace(/\b(?:and|then|inch|inches|psi|bar|kpa|lbs|pounds|the|other)\b/gi, ''),
  );
  if (!open || again || named) return;
  prev.where = { ...prev.where, v: makePlace({ ...a, side: 'left' }), from: 'assumed' };
  fact.where = { ...fact.where, v: makePlace({ ...a, side: 'right' }), from: 'assumed' };
};
