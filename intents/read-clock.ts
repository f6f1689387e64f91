/** Times of day and days back, and what they are the times of. */
import type { Amounting } from './amount-item.ts';
import { nextReal, placesNear } from './near.ts';
import { clauseHasReading } from './read-time.ts';
import type { Settled } from './settled.ts';
import type { When } from './shapes.ts';
import { phraseOf, use, type Clause, type Walk } from './walk.ts';

/** A clock time at `n`: of the reading before it in the clause, else of what follows. */
export const setClock = (w: Walk, c: Clause, n: Amounting, clock: number): void => {
  const when: When = { text: n.text, clock, spans: [n.span] };
  const at = c.items.indexOf(n);
  // "yesterday at 22:00", "22:00 last night"
  const lead = /^(?:at|around|about|by)$/.test(phraseOf(c.items[at - 1])) ? c.items[at - 2] : c.items[at - 1];
  const day = [c.items[at + 1], lead].find((it): it is Extract<Settled, { k: 'day' }> => it?.k === 'day' && it.v === 1);
  if (day) {
    when.day = 1;
    if (/night|evening|afternoon/.test(day.phrase) && clock >= 240 && clock < 720) when.clock = clock + 720;
    use(w, day);
    if (w.pendingWhen?.day === 1) w.pendingWhen = null;
    const taken = w.facts.at(-1);
    if (taken?.when?.day === 1 && taken.when.clock === undefined && taken.when.spans[0]?.[0] === day.span[0]) {
      taken.when = { ...when, spans: [...when.spans, day.span] };
      use(w, n);
      return;
    }
  }
  if (!day && (/^\s*today\b/i.test(w.text.slice(n.span[1])) || /\btoday,? (?:at )?$/i.test(w.text.slice(0, n.span[0]))))
    when.today = true;
  use(w, n);
  const prev = w.lastReading;
  const numberBefore = c.items.slice(0, at).some((it) => it.k === 'num' && it.clock === undefined && w.used.has(it));
  if (prev && !prev.when && numberBefore) {
    prev.when = when;
    // "rr 13 5/8 lr 13 3/4 at 7:00": of all that was listed before it
    const since = c.items[0]!.span[0];
    for (const f of w.facts.toReversed()) {
      if (f === prev) continue;
      if (f.is !== 'reading' || f.when || f.what.v !== prev.what.v || (f.amount.spans[0]?.[0] ?? 0) < since) break;
      f.when = when;
    }
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

/** "yesterday", "last night" beside a fact. */
export const dayOf = (w: Walk, c: Clause, index: number): void => {
  const item = c.items[index];
  if (item?.k !== 'day') return;
  const when: When = { text: w.text.slice(...item.span), day: item.v, spans: [item.span] };
  const near = c.items[index + 1];
  if (near?.k === 'num' && near.clock !== undefined) return;
  if (w.used.has(item)) return;
  const before = c.items
    .slice(0, index)
    .some((it) => w.used.has(it) && (it.k === 'num' || it.k === 'work' || it.k === 'sign' || it.k === 'cond'));
  const last = w.facts.at(-1);
  use(w, item);
  const own =
    last !== undefined &&
    'what' in last &&
    [...last.what.spans, ...(last.is === 'reading' ? last.amount.spans : [])].some((s) => s[0] >= c.items[0]!.span[0]);
  if (before && own && !last.when) last.when = when;
  else if (c.items.slice(index + 1).some((it) => it.k === 'num' || it.k === 'work' || it.k === 'sign'))
    w.pendingWhen = when;
};

/** "gauge at 95 at 9": a bare hour after a reading. */
export const hourAfter = (w: Walk, c: Clause, n: Amounting, index: number): boolean => {
  const before = /@ ?$/.test(w.text.slice(0, n.span[0])) ? 'at' : phraseOf(c.items[index - 1]);
  const day = c.items[index - 1]?.k === 'day' || c.items[index + 1]?.k === 'day';
  if (day && n.unit === null && n.whole && n.value <= 12 && n.value >= 1) {
    setClock(w, c, n, n.value * 60);
    return true;
  }
  if (before !== 'at' && before !== 'by') return false;
  // "tank held at one fourteen": on the gauge
  const gauged = c.items.some((it) => it.k === 'place' && /^(?:tank|gauge|bellows)$/.test(it.p.part ?? ''));
  if (n.run && n.value >= 60 && n.value < 160 && gauged) return false;
  // "sticks at 640": kilopascals
  if (w.context.pressureUnit === 'kPa' && n.value >= 100 && n.value < 1000 && !n.run) return false;
  // "kicks in at 89 out at 121": the other switch point
  if (/^(?:on|off|in|out)$/.test(phraseOf(c.items[index - 2])) && /^cut-/.test(w.lastMeasure ?? '')) return false;
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
