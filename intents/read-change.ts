/** Falls, rises and differences: "drops 6 psi in 10 min", "116 down to 109", "0 to 90 took 11 min", "3/8 low". */
import { dimensionOf, type Unit } from '../server/core/units.ts';
import {
  byDimension,
  coachSides,
  heightLike,
  heightUnit,
  lengthy,
  measureUnit,
  pressureParts,
  pressureUnit,
} from './dims.ts';
import { dimension, type Amounting } from './items.ts';
import { find, findForNumber, nextReal, placesNear } from './near.ts';
import { makePlace } from './place.ts';
import { tidy, type Settled } from './settle.ts';
import type { Measure } from './shapes.ts';
import {
  amountOf,
  assumed,
  carried,
  locOf,
  phraseOf,
  push,
  said,
  share,
  skippable,
  unreadable,
  use,
  whereOf,
  wordOf,
  type Clause,
  type Draft,
  type Loc,
  type Walk,
} from './walk.ts';
import { changeWords } from './words/changes.ts';

const falls = new Set(changeWords.fall.split('|'));
const rises = new Set(changeWords.rise.split('|'));
export const changeOf = (item: Settled | undefined): 'fall' | 'rise' | null => {
  const phrase = phraseOf(item);
  if (item?.k === 'change') return item.v;
  if (item?.k !== 'sign' && item?.k !== 'measure') return null;
  return falls.has(phrase) ? 'fall' : rises.has(phrase) ? 'rise' : null;
};
const isDuration = (n: Amounting | undefined): n is Amounting => n?.unit != null && dimensionOf(n.unit) === 'duration';
export const durationAfter = (c: Clause, i: number): Amounting | null => {
  const n = c.items.slice(i + 1, i + 8).find((it): it is Amounting => it.k === 'num');
  if (!isDuration(n)) return null;
  const after = phraseOf(c.items[c.items.indexOf(n) + 1]);
  return after === 'later' || after === 'ago' ? null : n;
};
const durationBefore = (w: Walk, c: Clause, i: number): Amounting | null => {
  const n = c.items.slice(0, i).findLast((it): it is Amounting => it.k === 'num');
  return isDuration(n) && !w.used.has(n) ? n : null;
};
export const tankOrCarried = (loc: Loc | null): Loc =>
  loc?.p.part && pressureParts.has(loc.p.part) && loc.p.part !== 'height valve'
    ? { ...loc, from: 'carried', spans: [] }
    : assumed({ part: 'tank' });
/** A height's side takes the end spoken of before ("12 1/2 left rear and 13 1/4 on the right"). */
export const withEnd = (w: Walk, loc: Loc | null): Loc | null =>
  loc && (loc.p.side === 'left' || loc.p.side === 'right') && !loc.p.end && !loc.p.part && w.lastEnd
    ? { ...loc, p: { ...loc.p, end: w.lastEnd }, from: loc.from === 'said' ? 'carried' : loc.from }
    : loc;
const bellowsOf = (loc: Loc | null): Loc | null =>
  loc && coachSides(loc.p) ? { ...loc, p: { side: loc.p.side, part: 'bellows' } } : loc;

/** A change word at `index` with its amount after it; the index after what was taken, or null. */
export const readFall = (w: Walk, c: Clause, index: number): number | null => {
  const item = c.items[index]!;
  const changing = changeOf(item);
  let at = nextReal(c, index);
  // "is down left back 3 inch": the place stands between
  const mid = c.items[at];
  const beyond = mid?.k === 'place' ? c.items[nextReal(c, at)] : undefined;
  const placed =
    mid?.k === 'place' &&
    beyond?.k === 'num' &&
    beyond.unit !== null &&
    dimensionOf(beyond.unit) === 'length' &&
    !c.taken.has(at)
      ? mid
      : null;
  if (placed) {
    c.taken.add(at);
    at = nextReal(c, at);
  }
  const ahead = c.items[at];
  if (!changing || ahead?.k !== 'num' || ahead.clock !== undefined || w.used.has(ahead)) return null;
  const preps = c.items
    .slice(index + 1, at)
    .filter((it) => it.k === 'prep')
    .map(phraseOf);
  if (preps.some((p) => ['to', 'at', 'in', 'over', 'on', 'into', 'through', 'from', 'near'].includes(p))) return null;
  if (ahead.unit && !['pressure', 'length', 'mass'].includes(dimensionOf(ahead.unit))) return null;
  const over = durationAfter(c, at);
  // "dropped 95 to 89": from and to, read by the number
  if (
    c.items.slice(at + 1, at + 4).some((it) => it.k === 'prep' && it.phrase === 'to') &&
    c.items
      .slice(at + 1, at + 5)
      .filter((it) => it.k === 'num')
      .some((it) => it !== over)
  )
    return null;
  const near = placesNear(w, c, index) ?? placesNear(w, c, at);
  const corner = near ? coachSides(near) : w.subject ? coachSides(w.subject.p) || w.subject.p.part === 'coach' : false;
  let u: Unit | null = ahead.unit === 'lb' ? 'psi' : ahead.unit;
  if (!u) {
    const tape = lengthy(ahead, w.context) && ahead.step < 1;
    if (near && !corner && near.part && pressureParts.has(near.part)) u = pressureUnit(w.context, ahead, w.lastUnit);
    else if (corner) u = tape || lengthy(ahead, w.context) ? heightUnit(ahead, w.context) : null;
    else if (w.lastUnit && w.lastReading && ['pressure', 'length'].includes(dimensionOf(w.lastUnit))) u = w.lastUnit;
    else if (w.subject?.p.part && pressureParts.has(w.subject.p.part)) u = pressureUnit(w.context, ahead, w.lastUnit);
    else if (tape && ahead.step !== 0.1) u = 'in';
  }
  if (!u) {
    unreadable(w, ahead);
    use(w, item, over);
    return at + 1;
  }
  const d = dimensionOf(u);
  let loc: Loc | null = (placed ? locOf(w, placed) : null) ?? find(w, c, index, false) ?? findForNumber(w, c, at);
  loc ??= d === 'pressure' ? tankOrCarried(w.subject) : carried(w.subject);
  if (d === 'length') loc = withEnd(w, loc);
  if (d === 'pressure') loc = bellowsOf(loc);
  if (d === 'pressure' && loc?.p.part && !pressureParts.has(loc.p.part)) loc = assumed({ part: 'tank' });
  if (d === 'pressure' && loc && ['gauge', 'coach', 'pump'].includes(loc.p.part ?? ''))
    loc = { ...loc, p: { part: 'tank' } };
  const off =
    d === 'length' &&
    !over &&
    !c.often &&
    /^(?:down|low|lower|is down|down by|up|lower by|up by)$/.test(item.k === 'measure' ? '' : phraseOf(item));
  const what: Measure = off
    ? 'height off'
    : d === 'pressure'
      ? changing === 'fall'
        ? 'pressure fall'
        : 'pressure rise'
      : 'height fall';
  const sign = off ? (changing === 'fall' ? -1 : 1) : what === 'height fall' && changing === 'rise' ? -1 : 1;
  const fact = push(
    w,
    {
      is: 'reading',
      where: whereOf(loc),
      word: wordOf(w),
      what: said(what, item),
      amount: said(amountOf({ ...ahead, value: sign * ahead.value }, u, true), ahead),
      ...(over ? { over: said(amountOf(over, over.unit!), over) } : {}),
      ...(c.often ? { often: c.often.v } : {}),
    } as Draft,
    loc,
    item,
  );
  share(w, fact);
  use(w, ahead, over);
  if (loc) w.subject = loc;
  return over ? Math.max(at, c.items.indexOf(over)) + 1 : at + 1;
};

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
  if (
    phraseOf(c.items[nextReal(c, nextAt)]) === 'to' ||
    (c.items[nextAt + 1]?.k === 'prep' && phraseOf(c.items[nextAt + 1]) === 'to')
  )
    return null;
  const most =
    n.unit === 'mm' || (n.unit === null && w.context.lengthUnit === 'mm' && n.whole) ? 150 : n.unit === 'cm' ? 15 : 6;
  if (Math.abs(n.value) > most) return null;
  const loc = withEnd(w, findForNumber(w, c, index) ?? find(w, c, nextAt, true) ?? carried(w.subject));
  const sign = way === 'low' ? -1 : 1;
  const fact = push(
    w,
    {
      is: 'reading',
      where: whereOf(loc),
      word: wordOf(w),
      what: said('height off', next),
      amount: said(amountOf({ ...n, value: sign * n.value }, n.unit ?? heightUnit(n, w.context), true), n),
      ...(c.often ? { often: c.often.v } : {}),
    } as Draft,
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
      where: whereOf(loc),
      word: wordOf(w),
      what: said('height off', item),
      amount: said(
        amountOf({ ...n, value: item.v === 'low' ? -n.value : n.value }, n.unit ?? heightUnit(n, w.context), true),
        n,
      ),
      ...(c.often ? { often: c.often.v } : {}),
    } as Draft,
    loc,
    item,
  );
  share(w, fact);
  use(w, n);
  if (loc) w.subject = loc;
  return at + 1;
};

const emptyWord = (item: Settled | undefined): boolean =>
  /^(?:empty|nothing|zero|flat|scratch|dead empty)$/.test(phraseOf(item));

/** Two values: "116 down to 109 in a quarter hour", "0-100 in 9 min", "18 to 20 amps"; null when there are not two. */
export const readFromTo = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  const items = c.items;
  const over0 = n.to === undefined ? null : durationAfter(c, index);
  if (
    n.to !== undefined &&
    ((n.value === 0 && n.to > 20) ||
      (over0 !== null && (n.unit === null || dimension(n) === 'pressure') && n.to - n.value > 15))
  )
    return pair(w, c, n, { ...n, value: n.to }, index, index, over0 ?? durationBefore(w, c, index));
  const toAt = items.findIndex(
    (it, j) =>
      j > index &&
      j <= index + 3 &&
      (it.k === 'prep' || it.k === 'filler') &&
      /^(?:to|then|now)$/.test(it.phrase) &&
      (it.phrase === 'to' || isFalling(items.slice(index + 1, j))),
  );
  if (toAt < 0) return null;
  const secondAt = items.findIndex((it, j) => j > toAt && it.k === 'num');
  const second = items[secondAt];
  if (second?.k !== 'num' || second.clock !== undefined || secondAt - index > 5) return null;
  const gap = items.slice(index + 1, secondAt);
  if (!gap.every((it) => skippable(it) || it.k === 'sign' || it.k === 'change' || it.k === 'place' || it.k === 'unit'))
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
const isFalling = (items: readonly Settled[]): boolean => items.some((it) => changeOf(it) !== null);

const pair = (
  w: Walk,
  c: Clause,
  n: Amounting,
  second: Amounting,
  index: number,
  secondAt: number,
  over: Amounting | null,
): number | null => {
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
  const pumpUp = dim === 'pressure' && up && (over !== null || n.value === 0) && part !== 'bellows' && part !== 'tyre';
  const what: Measure = pumpUp ? 'pump-up' : (byDimension[dim] ?? 'pressure');
  if (pumpUp || ['gauge', 'pump', 'coach'].includes(part))
    loc = { ...assumed({ part: 'tank' }), ...(loc?.p.part === 'tank' ? loc : {}) };
  push(
    w,
    {
      is: 'reading',
      where: whereOf(loc),
      word: wordOf(w),
      what: said(what, n),
      amount: said({ ...amountOf({ ...second, unit }, unit), to: undefined }, second),
      from: said({ ...amountOf({ ...n, unit }, unit), to: undefined }, n),
      ...(over ? { over: said(amountOf(over, over.unit!), over) } : {}),
      ...(c.often ? { often: c.often.v } : {}),
    } as Draft,
    loc,
    n,
  );
  use(w, second, over);
  for (const it of c.items.slice(0, Math.max(secondAt, index))) if (changeOf(it)) use(w, it);
  if (loc && !pumpUp) w.subject = loc;
  const end = Math.max(secondAt, index, over ? c.items.indexOf(over) : 0);
  return end + 1;
};

/** "twelve minutes to get from empty up to a hundred psi": empty is nothing on the gauge. */
export const readFromEmpty = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  const empty = c.items.findIndex(
    (it, j) => j < index && emptyWord(it) && /^(?:from|zero)$/.test(phraseOf(c.items[j - 1]) || 'from'),
  );
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
      word: wordOf(w),
      what: said('pump-up', n),
      amount: said(amountOf(n, unit), n),
      from: said(amountOf(zero, unit), c.items[empty]!),
      over: said(amountOf(over, over.unit!), over),
    } as Draft,
    null,
    n,
  );
  use(w, over, c.items[empty]);
  for (const it of c.items) if (it.k === 'cond' && emptyWord(it)) use(w, it);
  return Math.max(index, c.items.indexOf(over)) + 1;
};
