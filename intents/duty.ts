/** "1.5 min on, 4 off": how the pump shares its time, each figure before its word. */
import { isDuration } from './changes.ts';
import type { Settled } from './settled.ts';
import { phraseOf } from './walk.ts';

/** The items with each figure put behind what it is of; `items` itself where nothing is said so. */
export const dutyRead = (items: readonly Settled[]): readonly Settled[] => {
  const at = items.findIndex((it, i) => isDuration(it) && phraseOf(items[i + 1]) === 'on');
  const on = items[at];
  if (!isDuration(on)) return items;
  const next = items[at + 2]?.k === 'sep' || items[at + 2]?.k === 'join' ? at + 3 : at + 2;
  const off = items[next];
  const word = items[next + 1];
  if (off?.k !== 'num' || off.clock !== undefined || !word || phraseOf(word) !== 'off') return items;
  if (off.unit !== null && !isDuration(off)) return items;
  const span = items[at + 1]!.span;
  return [
    ...items.slice(0, at),
    { k: 'measure', v: 'on time', span, phrase: 'on for' },
    on,
    { k: 'sep', hard: false, low: ',', span: [on.span[1], on.span[1]] },
    { k: 'measure', v: 'off time', span: word.span, phrase: 'off for' },
    { ...off, unit: off.unit ?? on.unit },
    ...items.slice(next + 2),
  ];
};
