/** Which sense of a phrase is meant, from what stands beside it. */
import type { Amounting } from './amount-item.ts';
import { beyond } from './idle.ts';
import type { Item } from './items.ts';
import type { Sense } from './lexicon.ts';

const isNum = (item: Item | undefined): item is Amounting => item?.k === 'num';

export const only = (item: Item | undefined, k: Sense['k']): boolean =>
  item?.k === 'senses' && item.senses.some((s) => s.k === k);

const behind = (items: readonly Item[], i: number): Item | undefined => {
  for (let j = i; j >= 0; j -= 1) {
    const it = items[j]!;
    if (it.k === 'senses' && it.senses.every((s) => s.k === 'filler' || s.k === 'prep')) continue;
    return it;
  }
  return undefined;
};

const rank: readonly Sense['k'][] = [
  'place',
  'wheel',
  'sign',
  'cond',
  'work',
  'measure',
  'often',
  'unit',
  'neg',
  'hedge',
  'told',
  'prep',
  'filler',
];

const best = (senses: readonly Sense[]): Sense => {
  for (const k of rank) for (const sense of senses) if (sense.k === k) return sense;
  return senses[0]!;
};

export const pick = (items: readonly Item[], i: number, senses: readonly Sense[]): Sense => {
  if (senses.length === 1) return senses[0]!;
  const get = <K extends Sense['k']>(k: K): Extract<Sense, { k: K }> | undefined =>
    senses.find((s): s is Extract<Sense, { k: K }> => s.k === k);
  const next = beyond(items, i + 1, true);
  const prev = behind(items, i - 1);
  const measure = get('measure');
  if (measure && isNum(next)) return measure;
  if (measure && only(next, 'measure')) return measure;
  const work = get('work');
  const sign = get('sign');
  const often = get('often');
  const cond = get('cond');
  if (often && !cond && (prev || next) && !isNum(next)) return often;
  if (often && cond && items.some((it, j) => j !== i && it.k === 'senses' && it.senses.some((s) => s.k === 'sign')))
    return often;
  if (work && sign) {
    if (only(next, 'place') && !only(prev, 'place')) return work;
    return sign;
  }
  const place = get('place');
  if (work && place) return only(next, 'place') ? work : place;
  if (place && measure) return isNum(next) || isNum(prev) ? measure : place;
  if (place && sign) return only(next, 'place') || only(prev, 'place') ? sign : place;
  return best(senses);
};
