/** Whether what stands in an open clause has been said whole, so that what follows may begin anew. Pure. */
import type { Settled } from './settled.ts';
import { phraseOf, skippable } from './walk.ts';
import { pumpSigns, signHomes } from './words/signs.ts';

export type Items = readonly Settled[];

export const tells = (i: Settled): boolean => i.k === 'sign' || i.k === 'cond' || i.k === 'work';
export const lastReal = (items: Items): Settled | undefined => items.findLast((i) => !skippable(i));
/** The index of the first item from `at` on that is no filler. */
export const past = (all: Items, at: number): number => {
  let j = at;
  while (all[j]?.k === 'filler') j += 1;
  return j;
};

/** Small words after which nothing is finished, unless they tell how a thing moved or where it wore. */
export const adverbs = /^(?:inside|outside|out|up|off|down|over|through|on)$/;

/** The preposition that ends `items` still waits for its thing: "at the", and not "at the bottom". */
export const leadsOn = (items: Items): boolean =>
  items
    .slice(items.findLastIndex((i) => i.k === 'prep') + 1)
    .every((i) => /^(?:the|a|an|my|his|its|this|that|both|all|same|other|either|each|one)$/.test(phraseOf(i)));

/** What came before has said something, and nothing in it still waits; `alone`: also where what it is of was said before it. */
export const complete = (items: Items, alone = false): boolean => {
  const teller = items.findLastIndex((i) => tells(i) || i.k === 'num' || i.k === 'neg');
  const last = items.findLast((i) => i.k !== 'filler');
  const told = items[teller];
  if (last === undefined) return false;
  // "never gets to cut out tank stays at 102": spoken of, and not read
  const spoken =
    last.k === 'measure' &&
    /^cut-/.test(last.v) &&
    /^(?:to|before|until|till)$/.test(phraseOf(items[items.indexOf(last) - 1]));
  if (spoken) return alone || items.some((i) => i.k === 'place');
  if (told === undefined) return last.k === 'dir';
  // "checked for leaks again none"
  if (last.k === 'neg' && /^(?:none|nothing)$/.test(last.phrase) && items.some((i) => i !== last && tells(i)))
    return true;
  if (['measure', 'neg', 'hedge', 'spec', 'told'].includes(last.k)) return false;
  // "front down rear up"
  if (last.k === 'change' && !(last.phrase === 'up' && items.at(-2)?.k === 'place')) return false;
  if (last.k === 'prep' && !adverbs.test(last.phrase) && leadsOn(items)) return false;
  if (alone) return true;
  const placed = items.findIndex((i) => i.k === 'place');
  switch (told.k) {
    case 'cond':
      return true;
    case 'sign':
      return (
        (placed >= 0 && (placed < teller || last.k === 'place')) ||
        signHomes[told.v] !== undefined ||
        pumpSigns.has(told.v) ||
        last.k === 'often' ||
        /^(?:it|he|she|they|is|are|was|were)$/.test(
          phraseOf(items.slice(0, teller).findLast((i) => !/^(?:very|all|a|bit|so|too|still)$/.test(phraseOf(i)))),
        )
      );
    case 'work':
    case 'neg':
      return items.some((i, j) => j > teller && i.k === 'place') || (told.k === 'work' && placed >= 0);
    default:
      return (
        items
          .slice(0, teller)
          .some((i) => i.k === 'place' || i.k === 'measure' || i.k === 'change' || i.k === 'spec' || tells(i)) ||
        (last.k === 'place' && items.length > 1)
      );
  }
};

const leads =
  /^(?:when|while|if|what|that|before|after|until|till|because|cause|cos|where|which|who|as|once|than|how|so|since|like|though|with|w|and|or|but)$/;

/** What comes before leads what follows into another's circumstance: "with the", "when". */
export const isLed = (items: Items): boolean =>
  leads.test(phraseOf(items.findLast((i) => !/^(?:the|a|an|my|his|its)$/.test(phraseOf(i)))));

/** The place that ends `items` follows right after a `kind`. */
export const owned = (items: Items, kind: Settled['k']): boolean => {
  const at = items.findLastIndex((i) => i.k === 'place');
  return at > 0 && items.slice(0, at).findLast((i) => i.k !== 'filler')?.k === kind;
};

/** Words that name what they are of: "pump no run", "panel in lock". */
export const ownThing = /^(?:pump|comp|compressor|compresor|panel|tank|key|engine|coach|bus) /;
