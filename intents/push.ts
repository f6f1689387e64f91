/** Adds a fact to what was read. */
import { settledBare, askBare } from './ask-about.ts';
import { canBe } from './limits.ts';
import type { Settled } from './settled.ts';
import type { Fact } from './shapes.ts';
import { sideable } from './sideable.ts';
import { whereOf, wordOf, type Draft, type Loc, type Walk } from './walk.ts';

/** Said beside a column of readings, of no one time of it. */
const weather: ReadonlySet<string> = new Set(['temperature', 'humidity', 'barometer']);

/** Adds a fact; null when its place must be asked about first, or the note holds more than anyone says. */
export const push = (w: Walk, draft: Draft, loc: Loc | null, item: Settled): Fact | null => {
  w.used.add(item);
  if (w.facts.length >= 200 || loc?.item?.ask) return null;
  if (loc?.item?.bare && !settledBare(w, loc.item)) {
    askBare(w, loc.item, item);
    return null;
  }
  const when = w.pendingWhen ?? (draft.is === 'reading' && !weather.has(draft.what.v) ? w.lineWhen : null);
  const { first } = w;
  const often =
    draft.is === 'reading' &&
    !draft.often &&
    (draft.from ?? draft.what.v.endsWith('fall')) &&
    first?.k === 'often' &&
    first.v === 'standing'
      ? first.v
      : null;
  const full: Fact = {
    where: whereOf(loc && loc.p.part && !sideable.has(loc.p.part) ? { ...loc, p: { part: loc.p.part } } : loc),
    word: wordOf(w),
    ...draft,
    ...(often ? { often } : {}),
    id: `${w.context.note}.${w.facts.length}`,
    at: w.context.at,
    ...(when && !draft.when && draft.is !== 'condition' ? { when } : {}),
  };
  const twin = full.is === 'reading' || full.when ? undefined : w.facts.slice(-4).find((f) => isTwin(f, full));
  if (twin) return twin;
  const drained = w.facts.at(-1);
  if (full.is === 'reading' && full.what.v === 'water drained' && !full.when && drained?.is === 'work' && drained.when)
    full.when = { ...drained.when, spans: [] };
  if (full.is === 'reading') {
    if (!canBe(full.what.v, full.amount.v.si)) full.held = 'implausible';
    w.lastReading = full;
    // inches of mercury are the weather's, no unit of a gauge that follows
    if (full.what.v !== 'barometer') w.lastUnit = full.amount.v.unit;
    w.lastMeasure = full.what.v;
    w.lineWhen = w.pendingWhen ?? w.lineWhen;
    w.pendingWhen = null;
  }
  w.facts.push(full);
  if (loc?.p.end) w.lastEnd = loc.p.end;
  return full;
};

const isTwin = (f: Fact, g: Fact): boolean =>
  f.is === g.is &&
  f.where.v === g.where.v &&
  'what' in f &&
  'what' in g &&
  f.what.v === g.what.v &&
  (f.is !== 'sign' ||
    g.is !== 'sign' ||
    (f.there === g.there && (f.often === g.often || g.often === undefined) && f.word === g.word)) &&
  (f.is !== 'condition' || g.is !== 'condition' || f.holds === g.holds) &&
  (f.is !== 'work' || g.is !== 'work' || f.done === g.done) &&
  f.is !== 'spec';
