/** A fact said of places joined before it. */
import { tidy } from './merge-places.ts';
import { makePlace, type PlaceParts } from './place.ts';
import type { Fact } from './shapes.ts';
import { sideable } from './sideable.ts';
import type { Loc, Walk } from './walk.ts';

/** Characters between two things of one list: " and the ", ", then the ". */
const FAR = 12;

/** "check valve and dryer leak": each of two things without a side, named right beside each other. */
const isListed = (fact: Fact, loc: Loc, next: Loc | undefined): boolean => {
  if (fact.is !== 'sign' || loc.p.side !== undefined || loc.p.part === undefined || loc.p.end !== undefined)
    return false;
  const after = (next?.spans ?? fact.where.spans)[0];
  const end = loc.spans.at(-1)?.[1];
  return after !== undefined && end !== undefined && after[0] >= end && after[0] - end <= FAR;
};

/** Says a fact again for places joined before it ("left and right bags cracked"). */
export const share = (w: Walk, fact: Fact | null): void => {
  if (!fact || w.pending.length === 0) return;
  const p = w.pending;
  w.pending = [];
  const own = fact.where.v;
  for (const [i, loc] of p.entries()) {
    const side = loc.p.side ?? '';
    const part = loc.p.part ?? partTail(own);
    const v = makePlace(tidy({ ...loc.p, part: part as PlaceParts['part'] }));
    const sided = side !== '' && (part === undefined || sideable.has(part));
    if (v === own || !(sided || isListed(fact, loc, p[i + 1]))) continue;
    w.facts.push({
      ...fact,
      id: `${w.context.note}.${w.facts.length}`,
      where: { v, from: 'said', spans: loc.spans },
    });
  }
};

const partTail = (place: string): string | undefined =>
  place.replace(/^(?:left|right|both)? ?(?:front|rear)? ?(?:forward|aft)? ?/, '') || undefined;
