/** Which way a wheel points or leans, and which of the two it is. */
import type { Amounting } from './amount-item.ts';
import type { PlaceParts } from './place.ts';
import type { PlaceItem } from './settled.ts';
import type { Measure } from './shapes.ts';
import { phraseOf, use, type Clause, type Walk } from './walk.ts';

/** "1/8 out", "out 1/8", "-0.5 deg", "top in": which way a wheel points or leans. */
export const direction = (w: Walk, c: Clause, index: number): 'in' | 'out' | null => {
  const at = (j: number): 'in' | 'out' | null => {
    const it = c.items[j];
    if (it?.k === 'dir') return it.v;
    if (it?.k === 'neg' && /^neg$/.test(it.phrase)) return 'out';
    const m = /^(?:toe |toed )?(in|out)$/.exec(phraseOf(it));
    return m ? (m[1] as 'in' | 'out') : null;
  };
  for (let j = index + 1; j < Math.min(c.items.length, index + 5); j += 1) {
    if (
      c.items[j]!.k === 'num' ||
      (c.items[j]!.k === 'measure' &&
        !w.used.has(c.items[j]!) &&
        (j > index + 1 || (c.measure !== null && c.items.slice(j + 1).some((it) => it.k === 'num'))))
    )
      break;
    const dir = at(j);
    const amountNext = c.items[j + 1]?.k === 'num' && c.items[j]?.k === 'filler';
    if (dir && !amountNext) {
      use(w, c.items[j]);
      return dir;
    }
  }
  for (let j = index - 1; j >= Math.max(0, index - 4); j -= 1) {
    if (c.items[j]!.k === 'num') break;
    const dir = w.used.has(c.items[j]!) ? null : at(j);
    if (c.items[j]!.k === 'measure' && !dir) break;
    if (dir) {
      use(w, c.items[j]);
      return dir;
    }
  }
  return null;
};

export const askWheel = (
  w: Walk,
  c: Clause,
  measure: Measure,
  p: PlaceParts,
  n: Amounting,
  index: number,
  item?: PlaceItem,
): void => {
  const dir = direction(w, c, index);
  const t = `${n.text}${n.unit ? '' : measure === 'camber' ? ' deg' : ' in'}${dir ? ` ${dir === 'out' && measure === 'camber' ? 'negative' : dir}` : ''}`;
  w.ambiguous.push({
    question: `${measure} ${n.text}: which wheel of that side?`,
    candidates: (['forward', 'aft'] as const).map((v) => ({
      label: v === 'forward' ? 'front wheel of the two' : 'rear wheel of the two',
      text: `${measure} ${p.side} rear ${v} wheel ${t}`,
    })),
    spans: item ? [item.span, n.span] : [n.span],
  });
  use(w, n, item, c.measure);
};
