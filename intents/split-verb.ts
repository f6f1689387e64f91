/** "took the line off": a verb and its small word, with what it was done to between them. */
import type { Item } from './items.ts';
import type { Work } from './shapes.ts';
import { phraseAt } from './idle.ts';
import { splitVerbs } from './words/verbs.ts';

/** How far the small word may stand: "took the left bag's union off". */
const reach = 6;

const pronouns = /^(?:it|them|that|both)$/;
const aims = /^(?:for|on|to|of|there|in|onto|the)$/;

/** What it was done to: a place, or a word that stands for one. */
const isPlace = (items: readonly Item[], i: number): boolean => {
  const item = items[i]!;
  return (item.k === 'senses' && item.senses.some((s) => s.k === 'place')) || pronouns.test(phraseAt(items, i));
};

const workOf = (items: readonly Item[], i: number): { work: Work; to: number } | null => {
  const verb = phraseAt(items, i).replace(/ (?:the|my|that)$/, '');
  if (!Object.hasOwn(splitVerbs, verb)) return null;
  let placed = false;
  for (let j = i + 1; j < Math.min(items.length, i + reach); j += 1) {
    const item = items[j]!;
    if (item.k === 'sep' || item.k === 'join' || item.k === 'num') return null;
    const small = phraseAt(items, j);
    const words = splitVerbs[verb]!;
    const work = Object.hasOwn(words, small) ? words[small] : undefined;
    if (work !== undefined && placed)
      return pronouns.test(phraseAt(items, j - 1)) && aims.test(phraseAt(items, j + 1)) ? null : { work, to: j };
    placed ||= isPlace(items, j);
  }
  return null;
};

/** The items with such verbs made one work each; the small word stays as filler. */
export const joinSplitVerbs = (items: readonly Item[]): readonly Item[] => {
  let out: Item[] | null = null;
  for (let i = 0; i < items.length; i += 1) {
    const found = workOf(items, i);
    const verb = items[i]!;
    const small = found ? items[found.to]! : undefined;
    if (!found || !small || verb.k === 'num' || verb.k === 'sep' || verb.k === 'join') continue;
    out ??= [...items];
    out[i] = {
      k: 'senses',
      senses: [{ k: 'work', v: found.work }],
      phrase: `${phraseAt(items, i)} ${phraseAt(items, found.to)}`,
      span: verb.span,
    };
    out[found.to] = { k: 'senses', senses: [{ k: 'filler' }], phrase: 'there', span: small.span };
  }
  return out ?? items;
};
