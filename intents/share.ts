/** A fact said of places joined before it. */
import { tidy } from './merge-places.ts';
import { makePlace, type PlaceParts } from './place.ts';
import type { Fact } from './shapes.ts';
import { sideable } from './sideable.ts';
import { type Walk } from './walk.ts';

/** Says a fact again for places joined before it ("left and right bags cracked"). */
export const share = (w: Walk, fact: Fact | null): void => {
  if (!fact || w.pending.length === 0) return;
  const p = w.pending;
  w.pending = [];
  const own = fact.where.v;
  for (const loc of p) {
    const side = loc.p.side ?? '';
    const part = loc.p.part ?? partTail(own);
    const v = makePlace(tidy({ ...loc.p, part: part as PlaceParts['part'] }));
    if (v === own || side === '' || (part !== undefined && !sideable.has(part))) continue;
    w.facts.push({
      ...fact,
      id: `${w.context.note}.${w.facts.length}`,
      where: { v, from: 'said', spans: loc.spans },
    });
  }
};

const partTail = (place: string): string | undefined =>
  place.replace(/^(?:left|right|both)? ?(?:front|rear)? ?(?:forward|aft)? ?/, '') || undefined;
