/**
 * "protection valve: 810 in, 0 out": what stands before a valve in the supply and what it lets through. Before it is the
 * tank's pressure; no height is meant.
 */
import type { PlaceItem, Settled } from './settled.ts';
import type { Context } from './shapes.ts';
import { phraseOf, skippable } from './walk.ts';

const passed: ReadonlySet<string> = new Set(['protection valve', 'regulator', 'dryer']);
const isOut = (item: Settled | undefined): boolean =>
  item !== undefined && (item.k === 'unknown' ? item.low === 'out' : phraseOf(item) === 'out');

export const inAndOut = (items: readonly Settled[], context: Context): Settled[] => {
  const at = items.findIndex((it) => it.k === 'num' && it.unit === 'in' && / ?in$/.test(it.text));
  const into = items[at];
  if (into?.k !== 'num') return [...items];
  const valve = items.slice(0, at).findLast((it): it is PlaceItem => it.k === 'place' && it.p.part !== undefined);
  const next = items.findIndex((it, i) => i > at && it.k !== 'sep' && it.k !== 'join' && !skippable(it));
  const out = items[next];
  const after = items.slice(next + 1).find((it) => it.k !== 'filler' || isOut(it));
  if (!valve || !passed.has(valve.p.part ?? '') || out?.k !== 'num' || !isOut(after)) return [...items];
  const place = (p: PlaceItem['p'], span: PlaceItem['span']): PlaceItem => ({
    k: 'place',
    p,
    span,
    spans: [],
    phrase: p.part ?? '',
    assumed: true,
  });
  const unit = out.unit ?? context.pressureUnit;
  return items.flatMap((it, i): Settled[] => {
    if (i === at) return [place({ part: 'tank' }, into.span), { ...into, unit, text: into.text.replace(/ ?in$/, '') }];
    if (i === next) return [place(valve.p, out.span), { ...out, unit }];
    return isOut(it) && it === after ? [{ k: 'filler', span: it.span, phrase: 'out' }] : [it];
  });
};
