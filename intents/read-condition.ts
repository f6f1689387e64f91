/** States of the coach: key, panel, stands, pump. */
import { dimension } from './amount-item.ts';
import { denied, find, isContent, nextReal, placeAt } from './near.ts';
import type { Settled } from './settled.ts';
import type { When } from './shapes.ts';
import { phraseOf, said, use, whereOf, wordOf, type Clause, type Loc, type Walk } from './walk.ts';
import { readNotSafe } from './not-safe.ts';
import { push } from './push.ts';

type CondItem = Extract<Settled, { k: 'cond' }>;

export const dayWhen = (w: Walk, c: Clause, index: number): { when?: When } => {
  const item = c.items.slice(index + 1, index + 4).find((it): it is Extract<Settled, { k: 'day' }> => it.k === 'day');
  if (!item || c.items.slice(index + 1, c.items.indexOf(item)).some((it) => it.k === 'num')) return {};
  use(w, item);
  return { when: { text: w.text.slice(...item.span), day: item.v, spans: [item.span] } };
};

/** Reads the state at `index`; the index after what it took. */
export const readCondition = (w: Walk, c: Clause, index: number): number => {
  const item = c.items[index] as CondItem;
  const not = readNotSafe(w, c, index);
  if (not !== null) return not;
  const next = c.items[nextReal(c, index)];
  // "panel raise does nothing": what it should do, it does not
  if (
    (item.v === 'panel fill' || item.v === 'panel empty') &&
    next?.k === 'sign' &&
    /^(?:does nothing|doesnt do anything|no response|not working|doesnt work|does not work|wont work|dead)$/.test(
      next.phrase,
    )
  ) {
    const at = find(w, c, c.items.indexOf(next), true);
    const loc = at?.p.side ? { ...at, p: { side: at.p.side } } : null;
    use(w, item);
    push(
      w,
      {
        is: 'sign',
        where: loc ? whereOf(loc) : { v: 'coach', from: 'assumed', spans: [] },
        word: 'own',
        what: said(item.v === 'panel fill' ? 'does not fill' : 'does not empty', next),
        there: true,
      },
      loc,
      next,
    );
    return c.items.indexOf(next) + 1;
  }
  const bare = /^(?:runs|running|run|ran|going|is going|still going|still running)$/.test(item.phrase);
  // "runs 12 mins": how long, not that
  if (
    item.v === 'pump running' &&
    item.holds &&
    /\bruns?$|^ran$| on$/.test(item.phrase) &&
    next?.k === 'num' &&
    dimension(next) === 'duration'
  )
    return index + 1;
  if (
    item.v === 'pump running' &&
    c.items.some(
      (it) =>
        it.k === 'sign' &&
        ['runs constantly', 'quits hot'].includes(it.v) &&
        c.items.indexOf(it) === nextReal(c, index),
    )
  ) {
    use(w, item);
    return index + 1;
  }
  if (
    planned(c, index) ||
    w.planned ||
    /\b(?:until|till|unless)\b[^,.;\n]{0,30}$/i.test(w.text.slice(Math.max(0, item.span[0] - 40), item.span[0]))
  ) {
    use(w, item);
    return index + 1;
  }
  const said0 = denied(c, index);
  // "nothing at the motor with the key on": the key is on
  const neg = said0 && /^(?:nothing|none|nil|nowt|nada)$/.test(phraseOf(said0)) ? null : said0;
  // "found n/s link disconnected": seen, not done
  if (
    item.v === 'link connected' &&
    !item.holds &&
    /disconnected|unhooked|undone|off$/.test(item.phrase) &&
    (/\b(?:is|was|were|are|found|hanging)\b.*(?:disconnected|unhooked|undone)/i.test(w.text.slice(...item.span)) ||
      c.items
        .slice(0, index)
        .some((it) =>
          /^(?:found|find|noticed|see|saw|discovered|came across)$/.test(it.k === 'unknown' ? it.low : phraseOf(it)),
        ))
  ) {
    const at = find(w, c, index, false);
    const loc: Loc = {
      p: { ...(at?.p.side ? { side: at.p.side } : {}), part: 'link' },
      from: at?.from ?? 'assumed',
      spans: at?.spans ?? [],
    };
    use(w, item);
    push(w, { is: 'sign', what: said('disconnected', item), there: true }, loc, item);
    w.subject = loc;
    return index + 1;
  }
  if (bare) {
    const near = placeAt(c, index, false);
    if (near && !['pump', 'motor'].includes(near.item.p.part ?? '')) return index + 1;
    if (near) use(w, near.item);
  }
  if (item.v === 'parked' && c.items.some((it) => it.k === 'num' && dimension(it) === 'duration')) return index + 1;
  const sided = item.v.startsWith('panel') || item.v.startsWith('arm') || item.v === 'link connected';
  const near = sided ? placeAt(c, index, false) : null;
  const spoken =
    near !== null &&
    item.v.startsWith('panel') &&
    c.items
      .slice(Math.min(near.index, index) + 1, Math.max(near.index, index))
      .some((it) => isContent(it) || it.k === 'neg' || phraseOf(it) === 'with');
  const loc = sided && !spoken ? find(w, c, index, false) : null;
  const side = loc?.p.side === 'left' || loc?.p.side === 'right' ? loc.p.side : undefined;
  const place: Loc | null = loc && side ? { ...loc, p: { side } } : null;
  if (item.v === 'link connected')
    w.subject = loc ?? { p: { ...(side ? { side } : {}), part: 'link' }, from: 'carried', spans: [] };
  use(w, item, neg);
  push(
    w,
    {
      is: 'condition',
      word: wordOf(w) === 'told' ? 'told' : 'own',
      what: said(item.v, item),
      holds: neg ? !item.holds : item.holds,
      ...dayWhen(w, c, index),
    },
    place,
    item,
  );
  return index + 1;
};

/** What is only meant to be done is no state yet. */
export const planned = (c: Clause, index: number): boolean =>
  c.items
    .slice(0, index)
    .some((it) =>
      /^(?:gonna|going to|about to|want to|need to|needs to|plan to|lets|will|ill|have to)$/.test(
        it.k === 'unknown' ? it.low : phraseOf(it),
      ),
    );
