/** Times: clock readings, "20 min ago", "after 14 hrs", run and rest times of the pump, hours parked. */
import { dimensionOf } from '../server/core/units.ts';
import { timeMeasures } from './dims.ts';
import type { Amounting } from './items.ts';
import { find, nextReal, placesNear } from './near.ts';
import type { Settled } from './settle.ts';
import type { Fact, Measure, When } from './shapes.ts';
import {
  amountOf,
  assumed,
  phraseOf,
  push,
  said,
  skippable,
  use,
  whereOf,
  wordOf,
  type Clause,
  type Draft,
  type Loc,
  type Measured,
  type Walk,
} from './walk.ts';

const clauseHasReading = (c: Clause, index: number): boolean =>
  c.items.slice(0, index).some((i) => i.k === 'num' || i.k === 'sign');

/** A clock time at `n`: of the reading before it in the clause, else of what follows. */
export const setClock = (w: Walk, c: Clause, n: Amounting, clock: number): void => {
  const when: When = { text: n.text, clock, spans: [n.span] };
  const at = c.items.indexOf(n);
  // "yesterday at 22:00", "22:00 last night"
  const lead = /^(?:at|around|about|by)$/.test(phraseOf(c.items[at - 1])) ? c.items[at - 2] : c.items[at - 1];
  const day = [c.items[at + 1], lead].find((it): it is Extract<Settled, { k: 'day' }> => it?.k === 'day' && it.v === 1);
  if (day) {
    when.day = 1;
    use(w, day);
    if (w.pendingWhen?.day === 1) w.pendingWhen = null;
    const taken = w.facts.at(-1);
    if (taken?.when?.day === 1 && taken.when.clock === undefined && taken.when.spans[0]?.[0] === day.span[0]) {
      taken.when = { ...when, spans: [...when.spans, day.span] };
      use(w, n);
      return;
    }
  }
  use(w, n);
  const prev = w.lastReading;
  const numberBefore = c.items.slice(0, at).some((it) => it.k === 'num' && it.clock === undefined && w.used.has(it));
  if (prev && !prev.when && numberBefore) {
    prev.when = when;
    return;
  }
  const lastFact = w.facts.at(-1);
  const told = c.items
    .slice(0, at)
    .some((it) => w.used.has(it) && (it.k === 'cond' || it.k === 'work' || it.k === 'sign'));
  if (lastFact && !lastFact.when && told && !c.items.slice(at + 1).some((it) => it.k === 'num')) {
    lastFact.when = when;
    if (lastFact.is === 'condition' && w.text[n.span[1]] === ':') w.pendingWhen = when;
    return;
  }
  // "on LOCK at 8.15: nsr 292": of the state and of what was read then
  if (lastFact?.is === 'condition' && !lastFact.when && told && c.items.slice(0, at).every((it) => it.k !== 'num'))
    lastFact.when = when;
  w.pendingWhen = when;
};

/** Minutes since midnight that a bare number can stand for: 9, 905, 0935, 1410; null when none. */
export const clockOf = (n: Amounting): number | null => {
  if (n.unit !== null || !n.whole) return null;
  if (n.value < 24 && n.value >= 1) return n.value * 60;
  if (n.value >= 100 && n.value < 2400 && n.value % 100 < 60) return Math.floor(n.value / 100) * 60 + (n.value % 100);
  return null;
};

/** A bare number that stands as a time before what it is the time of: "1410 rr 13 1/4", "nine oh five tank one ten". */
export const leadsAsClock = (c: Clause, n: Amounting, index: number): boolean => {
  if (n.unit !== null || !(n.run || /^\d{4}$/.test(n.text)) || clockOf(n) === null || n.value < 500) return false;
  const at = nextReal(c, index);
  const next = c.items[at];
  const prev = c.items[index - 1];
  if (prev?.k === 'place') return false;
  if (next?.k === 'num') return true;
  return next?.k === 'place' && c.items[nextReal(c, at)]?.k === 'num';
};

const pumpPlace: Loc = assumed({ part: 'pump' });

const pushTime = (w: Walk, c: Clause, what: Measure, by: Settled, n: Amounting, loc: Loc | null): void => {
  // on so long, then off so long: the run was a cycle's
  const prev = w.facts.at(-1);
  if (what === 'off time' && prev?.is === 'reading' && prev.what.v === 'run time')
    prev.what = { ...prev.what, v: 'on time' };
  push(
    w,
    {
      is: 'reading',
      where: whereOf(loc),
      word: wordOf(w),
      what: said(what, by),
      amount: said(amountOf(n, n.unit!), n),
      ...(c.often && what !== 'standing time' && what !== 'run time' ? { often: c.often.v } : {}),
    } as Draft,
    loc,
    n,
  );
  use(w, by);
};

/** A duration at `index`; the index after it. */
export const readDuration = (w: Walk, c: Clause, n: Amounting, index: number): number => {
  const items = c.items;
  const before = phraseOf(items[index - 1]);
  const after = items[index + 1];
  const next = phraseOf(after);
  const seconds = amountOf(n, n.unit!).si;
  const dayish = n.unit === 'd' || n.unit === 'week' || n.unit === 'month' || n.unit === 'year';
  const days =
    n.unit === 'month'
      ? Math.round(n.value) * 30
      : n.unit === 'year'
        ? Math.round(n.value) * 365
        : Math.round(seconds / 86_400);
  const attach = (patch: Partial<When>): number => {
    const when: When = { text: n.text, spans: [n.span], ...patch };
    use(w, n);
    const last = w.facts.at(-1);
    const inClause = items
      .slice(0, index)
      .some((it) => w.used.has(it) && (it.k === 'num' || it.k === 'work' || it.k === 'sign' || it.k === 'cond'));
    // "tank 95, 20 min ago": a clause of its own
    const alone = items.every((it) => it === n || w.used.has(it) || skippable(it));
    if (last && !last.when && (inClause || alone) && last.is !== 'condition') last.when = when;
    else w.pendingWhen = when;
    return index + 1;
  };
  const word = next === '' && after?.k === 'unknown' ? after.low : next;
  if (word === 'ago' || word === 'back' || word === 'earlier') {
    use(w, after);
    return attach(dayish ? { day: days } : { ago: seconds });
  }
  if (word === 'later' || word === 'after' || word === 'on') {
    const standsAlone = word !== 'on' || (!pumpNear(w, c) && items[index + 2]?.k !== 'num');
    if (
      standsAlone &&
      !(
        word === 'after' &&
        items[index + 2]?.k !== 'num' &&
        items[index + 2]?.k !== 'place' &&
        items.length > index + 2
      )
    ) {
      use(w, after);
      return attach({ after: seconds });
    }
  }
  // "after 12 min run"
  if (/^(?:run|running|runtime|of running)$/.test(word) && pumpNear(w, c)) {
    use(w, after);
    pushTime(w, c, 'run time', n, n, pumpPlace);
    return index + 1;
  }
  // "comes on every five minutes"
  const wakes = items.slice(0, index).find((it) => it.k === 'measure' && it.v === 'cut-in');
  if (before === 'every' && wakes && pumpNear(w, c) && seconds <= 1800) {
    push(
      w,
      {
        is: 'sign',
        where: whereOf(pumpPlace),
        word: wordOf(w),
        what: said('short cycles', wakes),
        there: true,
      } as Draft,
      pumpPlace,
      wakes,
    );
    use(w, n, items[index - 1]);
    return index + 1;
  }
  const m = c.measure ?? items.findLast((it, j): it is Measured => it.k === 'measure' && j < index && !w.used.has(it));
  const trailing = items
    .slice(index + 1)
    .find((it): it is Measured => it.k === 'measure' && timeMeasures.includes(it.v));
  const by = m && timeMeasures.includes(m.v) ? m : (trailing ?? null);
  const fallBefore =
    w.lastReading &&
    !w.lastReading.over &&
    clauseHasReading(c, index) &&
    (w.lastReading.what.v.endsWith('fall') || w.lastReading.from !== undefined);
  if (fallBefore && (before === 'in' || before === 'over' || before === 'for' || before === 'after') && w.lastReading) {
    w.lastReading.over = said(amountOf(n, n.unit!), n);
    use(w, n);
    return index + 1;
  }
  if (by && !w.used.has(by)) {
    const loc =
      by.v === 'delay'
        ? (find(w, c, index, false) ??
          (w.subject?.p.part === 'height valve' ? w.subject : assumed({ part: 'height valve' })))
        : by.v === 'standing time' || by.v === 'settling time'
          ? null
          : pumpPlace;
    pushTime(w, c, by.v, by, n, loc);
    if (loc && by.v === 'delay') w.subject = loc;
    return index + 1;
  }
  const parked =
    items.find((it) => it.k === 'cond' && it.v === 'parked') ??
    items.find(
      (it) => it.k === 'often' && it.v === 'standing' && /stood|parked|sat|standing|sitting|sits/.test(it.phrase),
    );
  if (parked && before !== 'in' && !/^(?:every|each)$/.test(before)) {
    for (const f of w.facts)
      if (f.often === 'standing' && parked.k === 'often' && c.often === parked && f.at === w.context.at) delete f.often;
    c.often = null;
    pushTime(w, c, 'standing time', parked, n, null);
    return index + 1;
  }
  // on 20 s off 3 min; 20 s on, 3 min off; 1 min every 20
  if (pumpNear(w, c) || cycling(w)) {
    const led =
      w.used.has(items[index - 1]!) && items[index - 1]!.k !== 'cond'
        ? undefined
        : /(?:^| )(on|off)$/.exec(before)?.[1];
    const way =
      led !== undefined
        ? led
        : word === 'on' || word === 'off'
          ? word
          : /^(?:rests?|rested|resting|idle|idles|quiet|waits)$/.test(before) &&
              ['run time', 'on time'].includes(w.lastMeasure ?? '')
            ? 'off'
            : null;
    if (way) {
      pushTime(w, c, way === 'on' ? 'on time' : 'off time', (word === way ? after : items[index - 1])!, n, pumpPlace);
      return index + 1;
    }
    if (before === 'every' && w.lastReading?.what.v === 'run time' && clauseHasReading(c, index)) {
      w.lastReading.over = said(amountOf(n, n.unit!), n);
      use(w, n);
      return index + 1;
    }
    const verb = items.slice(0, index).findLast((it) => it.k === 'cond' || it.k === 'sign' || it.k === 'measure');
    if (/\b(?:runs?|ran|running)\b/.test(phraseOf(verb)) || before === 'for' || quits(c)) {
      pushTime(w, c, 'run time', n, n, pumpPlace);
      return index + 1;
    }
  }
  if (/^(?:after|in|within)$/.test(before) && clauseHasReading(c, index)) {
    if (w.lastReading && !w.lastReading.when && w.facts.at(-1) === w.lastReading && before !== 'within')
      return attach({ after: seconds });
    return index + 1;
  }
  if (before === 'over' && w.lastReading && !w.lastReading.over && clauseHasReading(c, index)) {
    w.lastReading.over = said(amountOf(n, n.unit!), n);
    use(w, n);
    return index + 1;
  }
  if (before === 'after' && items.slice(index + 1).some((it) => it.k === 'num')) return attach({ after: seconds });
  if (fallBefore && w.lastReading) {
    w.lastReading.over = said(amountOf(n, n.unit!), n);
    use(w, n);
  }
  // a time beside signs ("bubbles after 30 s") qualifies, it measures nothing: shown as unread
  return index + 1;
};
const quits = (c: Clause): boolean => c.items.some((it) => it.k === 'sign' && it.v === 'quits hot');
const cycling = (w: Walk): boolean => w.lastSign === 'short cycles' || w.facts.at(-1)?.where.v === 'pump';
const pumpNear = (w: Walk, c: Clause): boolean =>
  c.items.some(
    (it) =>
      (it.k === 'place' && it.p.part === 'pump') ||
      (it.k === 'cond' && it.v === 'pump running') ||
      (it.k === 'sign' && ['quits hot', 'short cycles'].includes(it.v)),
  ) || w.subject?.p.part === 'pump';

/** "yesterday", "last night" beside a fact. */
export const dayOf = (w: Walk, c: Clause, index: number): void => {
  const item = c.items[index];
  if (item?.k !== 'day') return;
  const when: When = { text: w.text.slice(...item.span), day: item.v, spans: [item.span] };
  const near = c.items[index + 1];
  if (near?.k === 'num' && near.clock !== undefined) return;
  const before = c.items
    .slice(0, index)
    .some((it) => w.used.has(it) && (it.k === 'num' || it.k === 'work' || it.k === 'sign' || it.k === 'cond'));
  const last = w.facts.at(-1);
  use(w, item);
  if (before && last && !last.when) last.when = when;
  else if (c.items.slice(index + 1).some((it) => it.k === 'num' || it.k === 'work' || it.k === 'sign'))
    w.pendingWhen = when;
};

/** "gauge at 95 at 9": a bare hour after a reading. */
export const hourAfter = (w: Walk, c: Clause, n: Amounting, index: number): boolean => {
  const before = phraseOf(c.items[index - 1]);
  const day = c.items[index - 1]?.k === 'day' || c.items[index + 1]?.k === 'day';
  if (day && n.unit === null && n.whole && n.value <= 12 && n.value >= 1) {
    setClock(w, c, n, n.value * 60);
    return true;
  }
  if (before !== 'at' && before !== 'by') return false;
  if (n.unit !== null || !n.whole || c.measure || !w.lastReading || w.lastReading.when || !clauseHasReading(c, index))
    return false;
  const clock = clockOf(n);
  if (
    clock === null ||
    (n.value >= 24 && !(n.run ?? /^\d{3,4}$/.test(n.text))) ||
    placesNear(w, c, index)?.part === 'motor'
  )
    return false;
  setClock(w, c, n, clock);
  return true;
};
export const factsOfReading = (facts: readonly Fact[]): number => facts.filter((f) => f.is === 'reading').length;
export const isDurationUnit = (n: Amounting): boolean => n.unit !== null && dimensionOf(n.unit) === 'duration';
