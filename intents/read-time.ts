/** Times: clock readings, "20 min ago", "after 14 hrs", run and rest times of the pump, hours parked. */
import type { Amounting } from './amount-item.ts';
import { timeMeasures } from './dims.ts';
import { find, findForNumber, placesNear } from './near.ts';
import type { Settled } from './settled.ts';
import type { Measure, When } from './shapes.ts';
import {
  amountOf,
  assumed,
  phraseOf,
  said,
  skippable,
  use,
  type Clause,
  type Loc,
  type Measured,
  type Walk,
} from './walk.ts';
import { push } from './push.ts';

export const clauseHasReading = (c: Clause, index: number): boolean =>
  c.items.slice(0, index).some((i) => i.k === 'num' || i.k === 'sign');

/** A side named for a delay is that side's valve. */
const ofValve = (loc: Loc | null): Loc | null =>
  loc && !loc.p.part && loc.p.side ? { ...loc, p: { side: loc.p.side, part: 'height valve' } } : loc;

const pumpPlace: Loc = assumed({ part: 'pump' });

const pushTime = (w: Walk, c: Clause, named: Measure, by: Settled, n: Amounting, loc: Loc | null): void => {
  // "comes on every five minutes, runs 40 s", "runs 2 min per cycle": each time
  const each = /^ ?(?:per|each|every|a) (?:cycle|time|go|run)\b/i.exec(w.text.slice(n.span[1], n.span[1] + 16));
  const what = named === 'run time' && (w.lastSign === 'short cycles' || each) ? 'on time' : named;
  // on so long, then off so long: the run was a cycle's
  const prev = w.facts.at(-1);
  if (what === 'off time' && prev?.is === 'reading' && prev.what.v === 'run time')
    prev.what = { ...prev.what, v: 'on time' };
  push(
    w,
    {
      is: 'reading',
      what: said(what, by),
      amount: said(amountOf(n, n.unit!), n),
      ...(c.often && what !== 'standing time' && what !== 'run time' ? { often: c.often.v } : {}),
    },
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
  // "another 10 min, 104": so long after the reading before
  if (before === 'another' && (w.lastReading ?? w.context.recent.at(-1))) {
    use(w, items[index - 1]);
    return attach({ after: seconds });
  }
  // "before 20 minute was 101": so long ago
  if (before === 'before' && items.slice(index + 1).some((it) => it.k === 'num')) {
    use(w, items[index - 1]);
    return attach(dayish ? { day: days } : { ago: seconds });
  }
  // "Pump-up: 0 to 100 psi, 9 min": what it took
  const filled = w.facts.at(-1);
  if (
    filled?.is === 'reading' &&
    filled.what.v === 'pump-up' &&
    !filled.over &&
    items.every((it) => it === n || skippable(it))
  ) {
    filled.over = said(amountOf(n, n.unit!), n);
    use(w, n);
    return index + 1;
  }
  // "after 12 min run"
  if (/^(?:run|running|runtime|of running)$/.test(word) && pumpNear(w, c)) {
    use(w, after);
    pushTime(w, c, 'run time', n, n, pumpPlace);
    return index + 1;
  }
  // "comes on every five minutes"
  // "has not come on for an hour": it rests, it does not refuse
  const rested = w.facts.at(-1);
  if (
    rested?.is === 'sign' &&
    rested.what.v === 'wont run' &&
    seconds >= 1200 &&
    /\b(?:has ?n[o']?t|have ?n[o']?t|did ?n[o']?t|has not|did not|not)\b[^.;,]{0,30}\b(?:for|in|all)\b[^.;,]{0,12}$/i.test(
      w.text.slice(0, n.span[0]),
    )
  ) {
    rested.what = { ...rested.what, v: 'short cycles' };
    rested.there = false;
    use(w, n);
    return index + 1;
  }
  const wakes = items.slice(0, index).find(
    (it) =>
      (it.k === 'measure' && it.v === 'cut-in') ||
      // "pump runs every 5 minutes"
      (it.k === 'cond' && it.v === 'pump running' && /runs?$/.test(it.phrase) && w.lastReading?.what.v !== 'run time'),
  );
  if (before === 'every' && wakes && pumpNear(w, c) && seconds <= 1800) {
    push(
      w,
      {
        is: 'sign',
        what: said('short cycles', wakes),
        there: true,
      },
      pumpPlace,
      wakes,
    );
    use(w, n, items[index - 1]);
    w.lastSign = 'short cycles';
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
  // "delay n/s 8 secs, o/s 14 secs"
  if (!by && w.lastMeasure === 'delay' && placesNear(w, c, index)?.side) {
    const at = find(w, c, index, false) ?? findForNumber(w, c, index);
    if (at) {
      pushTime(w, c, 'delay', n, n, ofValve(at));
      return index + 1;
    }
  }
  if (by && !w.used.has(by)) {
    const loc =
      by.v === 'delay'
        ? (ofValve(find(w, c, index, false)) ??
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
    // "as found key off 10 hrs": so long it stood
    (seconds >= 3600
      ? items.find((it, j) => it.k === 'cond' && it.v === 'key on' && !it.holds && j < index)
      : undefined) ??
    items.find(
      (it) => it.k === 'often' && it.v === 'standing' && /stood|parked|sat|standing|sitting|sits/.test(it.phrase),
    );
  // "comes on every 5 minutes even when parked": how often
  const each = /\b(?:every|each)(?: about| like)? $/i.test(w.text.slice(Math.max(0, n.span[0] - 14), n.span[0]));
  if (parked && before !== 'in' && !/^(?:every|each)$/.test(before) && !each) {
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
        : /(?:^| )(on|off)$/.exec(before === 'for' ? phraseOf(items[index - 2]) : before)?.[1];
    const way =
      led !== undefined
        ? led
        : (word === 'on' || word === 'off') &&
            !(items[index + 2]?.k === 'num' && /(?:^| )(?:runs?|ran|on)$/.test(before))
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
      if (verb?.k === 'cond') use(w, verb);
      pushTime(w, c, 'run time', n, n, pumpPlace);
      return index + 1;
    }
  }
  // "never stops, 1 hour already": so long it has run
  if (
    (/^(?:already|straight|nonstop|solid|so far|now)$/.test(word) || /^(?:for)$/.test(before)) &&
    (w.lastSign === 'runs on' || w.lastSign === 'runs constantly') &&
    w.facts.at(-1)?.is === 'sign'
  ) {
    pushTime(w, c, 'run time', n, n, pumpPlace);
    return index + 1;
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
  ) ||
  w.subject?.p.part === 'pump' ||
  // "on 40 secs off 9 mins": nothing else goes so
  /\bon (?:for )?\d[\d.]* ?(?:s|secs?|seconds?|m|mins?|minutes?)\b[^.;]{0,12}\boff (?:for )?\d/i.test(w.text);
