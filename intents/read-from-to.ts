/** From one value to another: "116 down to 109", "0 to 90 took 11 min". */
import { dimensionOf, toSi, type Unit } from '../server/core/units.ts';
import { dimension, type Amounting } from './amount-item.ts';
import { changeOf, isDuration, durationAfter, durationBefore, tankOrCarried, withEnd, bellowsOf } from './changes.ts';
import { byDimension, coachSides, heightLike, heightUnit, measureUnit, pressureUnit, voltParts } from './dims.ts';
import { locOf } from './loc.ts';
import { tidy } from './merge-places.ts';
import { findForNumber, placesNear } from './near.ts';
import { makePlace } from './place.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Measure } from './shapes.ts';
import {
  amountOf,
  assumed,
  carried,
  phraseOf,
  said,
  skippable,
  use,
  whereOf,
  type Clause,
  type Loc,
  type Walk,
} from './walk.ts';
import { push } from './push.ts';

/** "tank 7.8 bar, fell to 7.4 in 20 mins": from the reading before to this one; null when there is none. */
export const readFellTo = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  const by = c.items.slice(0, index).findLastIndex((it) => changeOf(it) !== null);
  if (by < 0 || !/^(?:to|now at)$/.test(phraseOf(c.items[index - 1])) || index - by > 3) return null;
  const last = w.lastReading;
  if (!last || last.from || last.when || !['pressure', 'height'].includes(last.what.v) || w.facts.at(-1) !== last)
    return null;
  const unit = n.unit ?? last.amount.v.unit;
  if (dimensionOf(unit) !== dimensionOf(last.amount.v.unit) || c.items.slice(0, by).some((it) => it.k === 'num'))
    return null;
  const place = placesNear(w, c, index);
  if (place && makePlace(tidy(place)) !== last.where.v) return null;
  const over = durationAfter(c, index) ?? durationBefore(w, c, by);
  last.from = last.amount;
  last.amount = said(amountOf(n, unit), n);
  if (over) last.over = said(amountOf(over, over.unit!), over);
  use(w, n, over, c.items[by]);
  return over ? Math.max(index, c.items.indexOf(over)) + 1 : index + 1;
};

/** Pa, gauge: more than a bag of a coach is filled to (common practice, no source). */
const tankFrom = 550_000;

/** Pa: less than that is no filling of a tank. */
const lifted = 100_000;
const risen = (w: Walk, n: Amounting): number => {
  const unit =
    n.unit === 'lb' ? 'psi' : (n.unit ?? pressureUnit(w.context, { ...n, value: n.to ?? n.value }, w.lastUnit));
  return dimensionOf(unit) === 'pressure' ? toSi((n.to ?? n.value) - n.value, unit) : 0;
};

const emptyWord = (item: Settled | undefined): boolean =>
  /^(?:empty|nothing|zero|flat|scratch|dead empty)$/.test(phraseOf(item));

/** Two values: "116 down to 109 in a quarter hour", "0-100 in 9 min", "18 to 20 amps"; null when there are not two. */
export const readFromTo = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  const items = c.items;
  // "341/339 -> 335/338": one of a pair
  if (n.unit === null && n.whole && /\d ?\/ ?$/.test(w.text.slice(Math.max(0, n.span[0] - 4), n.span[0]))) return null;
  const over0 = n.to === undefined ? null : durationAfter(c, index);
  if (
    n.to !== undefined &&
    (n.unit === null || dimension(n) === 'pressure' || n.unit === 'lb' || n.value === 0) &&
    ((n.value === 0 && n.to > 20) || (over0 !== null && risen(w, n) > lifted))
  )
    return pair(w, c, n, { ...n, value: n.to }, index, index, over0 ?? durationBefore(w, c, index));
  // "tank 109 from 116": what it was, said last
  const was = items[index + 2];
  if (
    phraseOf(items[index + 1]) === 'from' &&
    was?.k === 'num' &&
    was.clock === undefined &&
    n.to === undefined &&
    dimension(was) === dimension(n) &&
    (dimension(n) === null || dimension(n) === 'pressure') &&
    phraseOf(items[index + 3]) !== 'to' &&
    Math.abs(was.value - n.value) < 0.6 * Math.max(was.value, n.value)
  )
    return pair(w, c, was, n, index, index + 2, durationAfter(c, index + 2));
  const toAt = items.findIndex(
    (it, j) =>
      (j > index && j <= index + 3 && stillThere(it) && sameNext(items, j, n)) ||
      (j > index &&
        j <= index + 3 &&
        (it.k === 'prep' || it.k === 'filler') &&
        /^(?:to|then|now)$/.test(it.phrase) &&
        (it.phrase === 'to' || isFalling(items.slice(index + 1, j)))),
  );
  if (toAt < 0) return null;
  const secondAt = items.findIndex((it, j) => j > toAt && it.k === 'num');
  const second = items[secondAt];
  if (second?.k !== 'num' || second.clock !== undefined || secondAt - index > 5) return null;
  const gap = items.slice(index + 1, secondAt);
  if (
    !gap.every(
      (it) =>
        skippable(it) || stillThere(it) || it.k === 'sign' || it.k === 'change' || it.k === 'place' || it.k === 'unit',
    )
  )
    return null;
  if (gap.some((it) => it.k === 'place' && !isFalling(gap))) return null;
  if ((dimension(second) ?? dimension(n)) === 'duration') return null;
  const over = durationAfter(c, secondAt) ?? durationBefore(w, c, index);
  const up = second.value > n.value;
  const rangeWords = items
    .slice(0, secondAt)
    .some(
      (it) =>
        changeOf(it) !== null ||
        phraseOf(it) === 'from' ||
        phraseOf(it) === 'took' ||
        (it.k === 'measure' && it.v === 'pump-up'),
    );
  // "bleeds down 10 to 12 psi in an hour": what falls so much falls between the two
  const falls = items.slice(0, index).findLast((it) => !skippable(it));
  if (up && over && falls && (changeOf(falls) === 'fall' || (falls.k === 'sign' && falls.v === 'sags'))) {
    n.to = second.value;
    n.unit ??= second.unit;
    n.step = Math.max(n.step, second.step);
    use(w, second);
    return null;
  }
  const took = items.slice(secondAt).some((it) => /^(?:took|takes|take)$/.test(phraseOf(it)));
  const dim = dimension(second) ?? dimension(n);
  if (up && !over && !rangeWords && !took && (n.value > 0 || (dim !== null && dim !== 'pressure'))) {
    n.to = second.value;
    n.unit ??= second.unit;
    n.step = Math.max(n.step, second.step);
    use(w, second);
    return null;
  }
  return pair(w, c, n, second, index, secondAt, over);
};

/** "112 still 112", "13 3/4 stays 13 3/4": read again, and no other. */
const stillThere = (it: Settled): boolean =>
  /^(?:still|stays|stayed|remains|remained|holds|and still|now)$/.test(it.k === 'unknown' ? it.low : phraseOf(it)) &&
  it.k !== 'num';
const sameNext = (items: readonly Settled[], at: number, n: Amounting): boolean => {
  const next = items.slice(at + 1).find((it) => !skippable(it));
  return next?.k === 'num' && next.value === n.value && next.clock === undefined;
};

const isFalling = (items: readonly Settled[]): boolean => items.some((it) => changeOf(it) !== null);

/** "battery to motor 12.5 to 10.4": read at one end of the wires and at the other, volts whatever was said. */
const acrossWires = (w: Walk, c: Clause, n: Amounting, second: Amounting): boolean => {
  const ends = c.items.filter((it): it is PlaceItem => it.k === 'place' && it.p.part !== undefined);
  const [from, to] = ends;
  if (!from || !to || ends.length > 2 || from.p.part === to.p.part) return false;
  if (!ends.every((it) => voltParts.has(it.p.part!))) return false;
  if (![n, second].every((it) => it.unit === null || dimensionOf(it.unit) === 'voltage')) return false;
  for (const [it, at] of [
    [n, from],
    [second, to],
  ] as const)
    push(
      w,
      {
        is: 'reading',
        what: { ...said<Measure>('voltage', it), from: it.unit ? 'said' : 'assumed' },
        amount: said(amountOf(it, 'V'), it),
      },
      locOf(w, at),
      it,
    );
  use(w, second);
  for (const it of c.items) if (changeOf(it) || it.k === 'place') use(w, it);
  return true;
};

const pair = (
  w: Walk,
  c: Clause,
  n: Amounting,
  second: Amounting,
  index: number,
  secondAt: number,
  took: Amounting | null,
): number | null => {
  if (acrossWires(w, c, n, second)) return Math.max(secondAt, index) + 1;
  const over = took ?? (second.value <= n.value ? w.spell : null);
  const before = placesNear(w, c, index);
  const unit: Unit =
    (second.unit === 'lb' ? 'psi' : second.unit) ??
    (n.unit === 'lb' ? 'psi' : n.unit) ??
    measureUnit(c.measure?.v ?? null, w.context, second, w.lastUnit) ??
    (((before && coachSides(before)) || (!before && w.subject && coachSides(w.subject.p))) &&
    heightLike(second, w.context)
      ? heightUnit(second, w.context)
      : pressureUnit(w.context, second, w.lastUnit));
  const dim = dimensionOf(unit);
  if (!['pressure', 'length', 'temperature', 'voltage'].includes(dim)) return null;
  let loc: Loc | null =
    findForNumber(w, c, index) ??
    (secondAt > index ? findForNumber(w, c, secondAt) : null) ??
    (dim === 'pressure' ? tankOrCarried(w.subject) : carried(w.subject));
  if (dim === 'pressure') loc = bellowsOf(loc);
  else loc = withEnd(w, loc);
  const up = second.value > n.value;
  const part = loc?.p.part ?? 'tank';
  // "rr bag chafed, 10 to 100 in 13 min": no bag is filled so far
  const carriedFar =
    up && over !== null && loc?.from !== 'said' && (n.value === 0 || toSi(second.value, unit) > tankFrom);
  const pumpUp =
    dim === 'pressure' &&
    up &&
    (over !== null || n.value === 0) &&
    ((part !== 'bellows' && part !== 'tyre') || carriedFar);
  const what: Measure = pumpUp ? 'pump-up' : (byDimension[dim] ?? 'pressure');
  if (
    pumpUp ||
    ['gauge', 'pump', 'coach'].includes(part) ||
    (loc?.from !== 'said' && ['tyre', 'discharge line'].includes(part))
  )
    loc = { ...assumed({ part: 'tank' }), ...(loc?.p.part === 'tank' ? loc : {}) };
  push(
    w,
    {
      is: 'reading',
      what: said(what, n),
      amount: said({ ...amountOf({ ...second, unit }, unit), to: undefined }, second),
      from: said({ ...amountOf({ ...n, unit }, unit), to: undefined }, n),
      ...(over ? { over: said(amountOf(over, over.unit!), over) } : {}),
      ...(c.often ? { often: c.often.v } : {}),
    },
    loc,
    n,
  );
  use(w, second, over);
  for (const it of c.items.slice(0, Math.max(secondAt, index))) if (changeOf(it) || stillThere(it)) use(w, it);
  if (loc && !pumpUp) w.subject = loc;
  const end = Math.max(secondAt, index, over ? c.items.indexOf(over) : 0);
  return end + 1;
};

/** "twelve minutes to get from empty up to a hundred psi": empty is nothing on the gauge. */
export const readFromEmpty = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  const empty = c.items
    .slice(0, index)
    .findIndex((it, j) => emptyWord(it) && /^(?:from|zero)$/.test(phraseOf(c.items[j - 1]) || 'from'));
  if (empty < 0 || !c.items.slice(empty, index).some((it) => phraseOf(it) === 'to')) return null;
  const over =
    durationAfter(c, index) ??
    c.items.slice(0, index).find((it): it is Amounting => it.k === 'num' && isDuration(it)) ??
    null;
  if (!over || (n.unit !== null && dimension(n) !== 'pressure')) return null;
  const unit = n.unit ?? pressureUnit(w.context, n, w.lastUnit);
  const zero: Amounting = { ...n, value: 0, text: '0', unit };
  push(
    w,
    {
      is: 'reading',
      where: whereOf(assumed({ part: 'tank' })),
      what: said('pump-up', n),
      amount: said(amountOf(n, unit), n),
      from: said(amountOf(zero, unit), c.items[empty]!),
      over: said(amountOf(over, over.unit!), over),
    },
    null,
    n,
  );
  use(w, over, c.items[empty]);
  for (const it of c.items) if (it.k === 'cond' && emptyWord(it)) use(w, it);
  return Math.max(index, c.items.indexOf(over)) + 1;
};
