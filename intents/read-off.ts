/** How far something is from where it should be: "3/8 low", "low by 1/2 in". */
import type { Amounting } from './amount-item.ts';
import { changeOf, withEnd } from './changes.ts';
import { heightUnit, lengthy } from './dims.ts';
import { find, findForNumber, nextReal } from './near.ts';
import { amountOf, carried, phraseOf, said, skippable, use, type Clause, type Walk } from './walk.ts';
import { push } from './push.ts';
import { locOf } from './loc.ts';
import { share } from './share.ts';

/** "3/8 low", "1/2 in lower than the right": number, then the word. */
export const readOff = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  let nextAt = nextReal(c, index);
  const next = c.items[nextAt];
  const way =
    next?.k === 'sign' && (next.v === 'low' || next.v === 'high')
      ? next.v
      : changeOf(next) === 'fall' && phraseOf(next) === 'down'
        ? 'low'
        : null;
  if (!way || !next || !lengthy(n, w.context)) return null;
  // "my gauge reads 2 low": no height
  if (c.items.slice(0, index).some((it) => it.k === 'place' && it.p.part === 'gauge')) return null;
  // "right side half down": no half inch
  if (n.unit === null && /^(?:half|quarter)$/i.test(n.text)) return null;
  if (
    phraseOf(c.items[nextReal(c, nextAt)]) === 'to' ||
    (c.items[nextAt + 1]?.k === 'prep' && phraseOf(c.items[nextAt + 1]) === 'to')
  )
    return null;
  const most =
    n.unit === 'mm' || (n.unit === null && w.context.lengthUnit === 'mm' && n.whole) ? 150 : n.unit === 'cm' ? 15 : 6;
  if (Math.abs(n.value) > most) return null;
  const own = findForNumber(w, c, index);
  // "coach is 5 cm low on the left": that side
  const sided = own?.p.part === 'coach' ? find(w, c, nextAt, true) : null;
  const loc = withEnd(w, (sided?.p.side ? sided : null) ?? own ?? find(w, c, nextAt, true) ?? carried(w.subject));
  const sign = way === 'low' ? -1 : 1;
  const fact = push(
    w,
    {
      is: 'reading',
      what: said('height off', next),
      amount: said(amountOf({ ...n, value: sign * n.value }, n.unit ?? heightUnit(n, w.context), true), n),
      ...(c.often ? { often: c.often.v } : {}),
    },
    loc,
    n,
  );
  share(w, fact);
  use(w, next);
  if (loc) w.subject = loc;
  // "lower than the driver side": only compared with
  const than = c.items.findIndex((it, j) => j > nextAt && phraseOf(it) === 'than');
  if (than > 0)
    for (let j = than; j < c.items.length && (skippable(c.items[j]) || c.items[j]!.k === 'place'); j += 1) {
      use(w, c.items[j]);
      nextAt = j;
    }
  return nextAt + 1;
};

/** "low 3/8", "sits low by 1/2 in". */
export const readLowBy = (w: Walk, c: Clause, index: number): number | null => {
  const item = c.items[index]!;
  if (item.k !== 'sign' || (item.v !== 'low' && item.v !== 'high')) return null;
  let at = nextReal(c, index);
  // "lower on the drivers side by an inch"
  const by = c.items.findIndex((it, j) => j > index && phraseOf(it) === 'by');
  const placed = c.items[at];
  const mid = placed?.k === 'place' && by > at && c.items[by + 1]?.k === 'num' && !placed.p.part ? placed : null;
  if (mid) {
    c.taken.add(at);
    at = by + 1;
  }
  const n = c.items[at];
  if (n?.k !== 'num' || n.clock !== undefined || n.to !== undefined) return null;
  if ((!mid && !(phraseOf(c.items[index + 1]) === 'by' || at === index + 1)) || !lengthy(n, w.context)) return null;
  const most = (n.unit ?? w.context.lengthUnit) === 'mm' && n.unit !== 'in' ? 100 : 4;
  if (Math.abs(n.value) >= most) return null;
  const loc = withEnd(w, (mid ? locOf(w, mid) : null) ?? find(w, c, index, false) ?? carried(w.subject));
  const fact = push(
    w,
    {
      is: 'reading',
      what: said('height off', item),
      amount: said(
        amountOf({ ...n, value: item.v === 'low' ? -n.value : n.value }, n.unit ?? heightUnit(n, w.context), true),
        n,
      ),
      ...(c.often ? { often: c.often.v } : {}),
    },
    loc,
    item,
  );
  share(w, fact);
  use(w, n);
  if (loc) w.subject = loc;
  return at + 1;
};
