/** Words for sides that need a second look: kerb, RH, L/R, the other, and the labels of this coach. */
import { beyond, phraseAt } from './idle.ts';
import type { Item } from './items.ts';
import type { Relative } from './lexicon.ts';
import type { PlaceParts } from './place.ts';
import type { Settled } from './settled.ts';
import type { Context, Side, Span } from './shapes.ts';

export const sideOf = (rel: Relative, traffic: 'right' | 'left'): Side => {
  // traffic keeps right: the driver sits left, the kerb is on the right
  const kerb: Side = traffic === 'right' ? 'right' : 'left';
  const other: Side = kerb === 'right' ? 'left' : 'right';
  return rel === 'kerb' || rel === 'passenger' ? kerb : other;
};

export const labelled = (
  phrase: string,
  raw: string,
  prev: Settled | undefined,
  labels: Context['labels'],
  /** A side "is in" it: what one of two controls stands in. */
  led = false,
): string | null => {
  const name = Object.hasOwn(labels, phrase) ? labels[phrase] : undefined;
  if (!name) return null;
  if (!name.startsWith('panel ')) return name;
  const shouted = raw.length >= 2 && raw === raw.toUpperCase() && /[A-Z]/.test(raw);
  const after = prev?.k === 'place' && (prev.p.part === 'panel' || prev.p.part === 'panel port');
  return shouted || after || led ? name : null;
};

export const slashedCorner = (items: readonly Item[], i: number, typed: string): PlaceParts | null => {
  if (typed !== 'r/r' && typed !== 'l/r') return null;
  const has = (phrase: string): boolean =>
    items.some((o) => (o.k === 'senses' && o.phrase === phrase) || (o.k === 'unknown' && o.low === phrase));
  const next = items[i + 1];
  const told =
    next?.k === 'num' ||
    (next?.k === 'senses' && next.senses.some((s) => s.k === 'sign')) ||
    (next?.k === 'senses' && next.senses.some((s) => s.k === 'place') && (items[i + 2]?.k === 'num' || has('l/r')));
  if (typed === 'r/r') return told || has('l/r') ? { side: 'right', end: 'rear' } : null;
  return has('r/r') || has('l/f') || has('r/f') ? { side: 'left', end: 'rear' } : null;
};

/** RH is right hand or ride height: a side that follows makes it a height, a part makes it a side. */
export const rightHand = (items: readonly Item[], i: number, base: { span: Span; phrase: string }): Settled => {
  const next = beyond(items, i + 1, true);
  const sideNext =
    next?.k === 'senses' && next.senses.some((s) => s.k === 'place' && (s.p.side !== undefined || s.rel !== undefined));
  const number = next?.k === 'num' && next.unit !== 'psi' && next.unit !== 'bar' && next.unit !== 'kPa';
  const laterSide = items
    .slice(i + 1)
    .some(
      (o) =>
        o.k === 'senses' &&
        o.senses.some(
          (s) =>
            (s.k === 'place' && s.p.side !== undefined && s.p.end !== undefined) ||
            (s.k === 'place' && s.rel !== undefined),
        ),
    );
  if (sideNext || (number && laterSide && !items.some((o) => o.k === 'senses' && /^(?:lh|lhs|l\/h)$/.test(o.phrase))))
    return { k: 'measure', v: 'height', ...base };
  return { k: 'place', p: { side: 'right' }, spans: [base.span], bare: 'rh', ...base };
};

export const otherOne = (items: readonly Item[], i: number, text: string): boolean => {
  const item = items[i]!;
  if (item.k === 'num' || item.k === 'sep' || item.k === 'join' || !/^(?:the )?other$/.test(phraseAt(items, i)))
    return false;
  const rest = text.slice(item.span[1], item.span[1] + 40).toLowerCase();
  return (
    /^ (?:one|side|bag|air bag|bellows|valve|shock|damper|corner|tyre|tire)\b/.test(rest) &&
    !/^ \w+ (?:side )?(?:is |does |was )?(?:too|also|as well|the same|same|likewise|identical|just the same|gauge)\b/.test(
      rest,
    ) &&
    !/\bthan the $/i.test(text.slice(Math.max(0, item.span[0] - 9), item.span[0]))
  );
};

/** A part follows a side at once: "right bag". */
export const partFollows = (raw: readonly Settled[], item: Settled): boolean => {
  const next = raw[raw.indexOf(item) + 1];
  return next?.k === 'place' && next.p.part !== undefined;
};
