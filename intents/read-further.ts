/** Amounts that carry on from what was just said: how low it is, how far it sank there too, so much in so long. */
import type { Amounting } from './amount-item.ts';
import { durationAfter, tankOrCarried, withEnd } from './changes.ts';
import { heightUnit, lengthy, tapeLike } from './dims.ts';
import type { Beside } from './measure-beside.ts';
import { findForNumber, type Hit } from './near.ts';
import { push } from './push.ts';
import { amountOf, phraseOf, said, use, type Clause, type Walk } from './walk.ts';

/** What is known of the number by what stands beside it. */
type Known = Pick<Beside, 'measure' | 'unit' | 'dim'>;

/** "right side low, maybe 2 cm", "down 3 mm n/s, o/s 2 mm": the index after what was taken, or null. */
export const readFurther = (
  w: Walk,
  c: Clause,
  n: Amounting,
  index: number,
  hit: Hit | null,
  { measure, unit, dim }: Known,
): number | null => {
  // "right side low, maybe 2 cm": how low
  const standing = w.facts.at(-1);
  if (
    !hit &&
    !measure &&
    standing?.is === 'sign' &&
    standing.there &&
    (standing.what.v === 'low' || standing.what.v === 'high') &&
    lengthy(n, w.context) &&
    (dim === 'length' || (dim === null && tapeLike(n))) &&
    n.value < (n.unit === 'mm' ? 150 : n.unit === 'cm' ? 15 : 5)
  ) {
    w.facts.pop();
    const low = standing.what.v === 'low';
    push(
      w,
      {
        is: 'reading',
        where: standing.where,
        word: standing.word,
        what: { ...standing.what, v: 'height off' },
        amount: said(amountOf({ ...n, value: low ? -n.value : n.value }, unit ?? heightUnit(n, w.context), true), n),
        ...(standing.often ? { often: standing.often } : {}),
      },
      null,
      n,
    );
    return index + 1;
  }
  // "down 3mm n/s overnight, o/s 2mm": so much there, too
  const sank = w.lastReading;
  if (
    hit &&
    !measure &&
    sank &&
    (sank.what.v === 'height fall' || sank.what.v === 'height off') &&
    dim === 'length' &&
    hit.item.p.part === undefined &&
    Math.abs(n.value) < (n.unit === 'mm' ? 150 : n.unit === 'cm' ? 15 : 5)
  ) {
    const where = withEnd(w, findForNumber(w, c, index));
    push(
      w,
      {
        is: 'reading',
        what: { ...sank.what, from: 'carried' },
        amount: said(amountOf({ ...n, value: sank.amount.v.si < 0 ? -n.value : n.value }, unit!, true), n),
        ...(sank.often ? { often: sank.often } : {}),
        ...(sank.over ? { over: sank.over } : {}),
      },
      where,
      n,
    );
    if (where) w.subject = where;
    return index + 1;
  }
  return null;
};

/** "8 psi in 20 minutes": so much in so long is a fall; the index after what was taken, or null. */
export const readSpell = (
  w: Walk,
  c: Clause,
  n: Amounting,
  index: number,
  hit: Hit | null,
  { measure, unit, dim }: Known,
): number | null => {
  const items = c.items;
  const spell =
    dim === 'pressure' && !hit && !measure && /^(?:in|over|per|every)$/.test(phraseOf(items[index + 1]))
      ? durationAfter(c, index)
      : null;
  if (spell && unit && n.to === undefined) {
    const where = tankOrCarried(w.subject?.p.part === 'bellows' ? w.subject : null);
    push(
      w,
      {
        is: 'reading',
        what: { v: 'pressure fall', from: 'assumed', spans: [n.span] },
        amount: said(amountOf(n, unit, true), n),
        over: said(amountOf(spell, spell.unit!), spell),
        ...(c.often ? { often: c.often.v } : {}),
      },
      where,
      n,
    );
    use(w, spell);
    return items.indexOf(spell) + 1;
  }
  return null;
};
