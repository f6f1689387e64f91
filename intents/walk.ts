/** The state of one walk through a note: what was read so far, what carries forward, and how a fact is put together. */
import { dimensionOf, stepToSi, toSi, type Unit } from '../server/core/units.ts';
import type { Amounting } from './items.ts';
import { plausible } from './limits.ts';
import { makePlace, takePlace, type PlaceParts } from './place.ts';
import { tidy, type PlaceItem, type Settled } from './settle.ts';
import type { Ambiguity, Context, Fact, Measure, ReadingFact, Said, Sign, When, Work } from './shapes.ts';
import { sideable } from './sideable.ts';
import { airSide } from './words/parts.ts';

export type Loc = {
  p: PlaceParts;
  from: 'said' | 'carried' | 'assumed';
  spans: Said<string>['spans'];
  item?: PlaceItem;
};
export type Draft = Omit<Fact, 'id' | 'at'>;
export type Measured = Extract<Settled, { k: 'measure' }>;

export type Walk = {
  readonly context: Context;
  readonly text: string;
  /** What else the note holds: its first `noteItems`, so that a look at it costs the same in any note. */
  readonly all: readonly Settled[];
  readonly facts: Fact[];
  readonly ambiguous: Ambiguity[];
  readonly used: Set<Settled>;
  /** What "it" is: the place spoken of last. */
  subject: Loc | null;
  /** Places said before a join that share what comes ("left and right bags cracked"). */
  pending: Loc[];
  /** Places that the last work was done on, when there were several. */
  group: Loc[];
  lastUnit: Unit | null;
  lastMeasure: Measure | null;
  lastSign: Sign | null;
  lastWork: Work | null;
  lastReading: ReadingFact | null;
  pendingWhen: When | null;
  /** The clock time that led this clause: of every reading in it. */
  lineWhen: When | null;
  told: boolean;
  hunch: boolean;
  /** A limit is being given: numbers are limits until the sentence ends. */
  spec: boolean;
  lastEnd: PlaceParts['end'];
  /** A measure named in the clause before without a number. */
  waiting: Measured | null;
  /** A measure that stands alone before a list: "camber: ...". */
  heading: Measured | null;
  /** A plan goes on past a join: "gonna jack it up and put stands under". */
  planned: boolean;
};

export type Clause = {
  readonly items: readonly Settled[];
  readonly hard: boolean;
  /** How it ended: a join shares, a comma does not. */
  readonly joined: boolean;
  readonly places: readonly number[];
  readonly taken: Set<number>;
  often: Extract<Settled, { k: 'often' }> | null;
  measure: Measured | null;
};

const noteItems = 200;
export const startWalk = (all: readonly Settled[], text: string, context: Context): Walk => ({
  context,
  text,
  all: all.slice(0, noteItems),
  facts: [],
  ambiguous: [],
  used: new Set(),
  subject: null,
  pending: [],
  group: [],
  lastUnit: null,
  lastMeasure: null,
  lastSign: null,
  lastWork: null,
  lastReading: null,
  pendingWhen: null,
  lineWhen: null,
  told: false,
  hunch: false,
  spec: false,
  lastEnd: undefined,
  planned: false,
  waiting: null,
  heading: null,
});

export const phraseOf = (item: Settled | undefined): string => (item && 'phrase' in item ? item.phrase : '');
export const skippable = (item: Settled | undefined): boolean => item?.k === 'filler' || item?.k === 'prep';
export const use = (w: Walk, ...items: (Settled | null | undefined)[]): void => {
  for (const item of items) if (item) w.used.add(item);
};
export const wordOf = (w: Walk): 'own' | 'told' | 'hunch' => (w.hunch ? 'hunch' : w.told ? 'told' : 'own');
export const whereOf = (loc: Loc | null): Said<string> =>
  loc ? { v: makePlace(loc.p), from: loc.from, spans: loc.spans } : { v: '', from: 'assumed', spans: [] };
export const said = <T>(v: T, ...items: Settled[]): Said<T> => ({
  v,
  from: items.some((i) => ('near' in i && i.near) || ('slip' in i && i.slip)) ? 'assumed' : 'said',
  spans: items.map((i) => i.span),
});
export const assumed = (p: PlaceParts): Loc => ({ p, from: 'assumed', spans: [] });
export const carried = (loc: Loc | null): Loc | null =>
  loc ? { ...loc, from: loc.from === 'assumed' ? 'assumed' : 'carried', spans: [] } : null;

/** What `n` amounts to in `unit`; `difference`: a change, which has no zero point. */
export const amountOf = (n: Amounting, unit: Unit, difference = false): ReadingFact['amount']['v'] => {
  const value = (v: number): number => (difference ? stepToSi(v, unit) : toSi(v, unit));
  return {
    si: value(n.value),
    pm: stepToSi(n.step, unit) * (n.about === 'about' ? 2.5 : 0.5),
    unit,
    text: n.text,
    ...(n.to === undefined ? {} : { to: value(n.to) }),
    ...(n.about ? { about: n.about } : {}),
  };
};

/** Adds a fact; null when its place must be asked about first, or the note holds more than anyone says. */
export const push = (w: Walk, draft: Draft, loc: Loc | null, item: Settled): Fact | null => {
  w.used.add(item);
  if (w.facts.length >= 200 || loc?.item?.ask) return null;
  if (loc?.item?.bare && !settledBare(w, loc.item)) {
    askBare(w, loc.item, item);
    return null;
  }
  const twin = draft.is === 'reading' ? undefined : w.facts.slice(-4).find((f) => isTwin(f, draft));
  if (twin) return twin;
  const when = w.pendingWhen ?? (draft.is === 'reading' ? w.lineWhen : null);
  const full = {
    ...draft,
    id: `${w.context.note}.${w.facts.length}`,
    at: w.context.at,
    ...(when && !draft.when && draft.is !== 'condition' ? { when } : {}),
  } as Fact;
  const drained = w.facts.at(-1);
  if (full.is === 'reading' && full.what.v === 'water drained' && !full.when && drained?.is === 'work' && drained.when)
    full.when = { ...drained.when, spans: [] };
  if (full.is === 'reading') {
    const limits = plausible[full.what.v];
    const si = full.amount.v.si;
    if (limits && (si < limits[0] - 1e-9 || si > limits[1] + 1e-9)) full.held = 'implausible';
    w.lastReading = full;
    w.lastUnit = full.amount.v.unit;
    w.lastMeasure = full.what.v;
    w.lineWhen = w.pendingWhen ?? w.lineWhen;
    w.pendingWhen = null;
  }
  w.facts.push(full);
  if (loc?.p.end) w.lastEnd = loc.p.end;
  return full;
};

/** Says a fact again for places joined before it ("left and right bags cracked"). */
export const share = (w: Walk, fact: Fact | null): void => {
  if (!fact || w.pending.length === 0) return;
  const p = w.pending;
  w.pending = [];
  const own = fact.where.v;
  for (const loc of p) {
    const side = loc.p.side ?? '';
    const part = loc.p.part ?? partTail(own);
    const v = makePlace(tidy({ ...loc.p, part: part as PlaceParts['part'] }));
    if (v === own || side === '' || (part !== undefined && !sideable.has(part))) continue;
    w.facts.push({
      ...fact,
      id: `${w.context.note}.${w.facts.length}`,
      where: { v, from: 'said', spans: loc.spans },
    });
  }
};
const partTail = (place: string): string | undefined =>
  place.replace(/^(?:left|right|both)? ?(?:front|rear)? ?(?:forward|aft)? ?/, '') || undefined;

const placeBefore = (w: Walk, item: PlaceItem): PlaceParts | undefined => {
  const at = w.all.indexOf(item);
  for (let i = at - 1; i >= 0 && at - i < 12; i -= 1) {
    const it = w.all[i]!;
    if (it.k === 'place' && it.p.side) return it.p;
  }
  return undefined;
};
const isTwin = (f: Fact, d: Draft): boolean => {
  const g = d as Fact;
  return (
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
    f.is !== 'spec' &&
    !g.when
  );
};

/** `l` and `r` are sides where both stand in the note; `rh` where `lh` does, or a part or an end is named with it. */
export const settledBare = (w: Walk, item: PlaceItem): boolean => {
  const has = (b: string): boolean => w.all.some((i) => i.k === 'place' && i.bare === b);
  if (item.p.part !== undefined || item.p.end !== undefined) return true;
  if (item.bare === 'r' || item.bare === 'l') return has('l') && has('r');
  if (item.bare === 'rh') return w.all.some((i) => i.k === 'place' && /^(?:lh|lhs|l\/h|left)/.test(i.phrase));
  if (item.bare === 'ps') return w.all.some((i) => i.k === 'place' && /^(?:ds|driver)/.test(i.phrase));
  return false;
};
const bareMeanings: Readonly<Record<string, readonly string[]>> = {
  l: ['left', 'left rear'],
  r: ['right', 'rear', 'right rear'],
  rh: ['right', 'right rear'],
  'l/r': ['left rear', 'both'],
  ps: ['passenger side', 'pressure switch'],
};
const askBare = (w: Walk, item: PlaceItem, what: Settled): void => {
  w.ambiguous.push({
    question: `${w.text.slice(...item.span)}: which?`,
    candidates: (bareMeanings[item.bare ?? ''] ?? ['left', 'right']).map((label) => ({
      label,
      text: `${label} ${w.text.slice(...what.span)}`,
    })),
    spans: [item.span],
  });
  use(w, item, what);
};

/** The place of an item as said; parts of a side take the side spoken of before. */
export const locOf = (w: Walk, item: PlaceItem): Loc => {
  w.used.add(item);
  let p = item.p;
  let from: Loc['from'] = item.near || item.assumed ? 'assumed' : 'said';
  const s = placeBefore(w, item) ?? w.subject?.p;
  const sub = p.part !== undefined && airSide.has(p.part) && p.part !== 'bellows' && p.part !== 'height valve';
  const inherits =
    p.part !== undefined &&
    !p.side &&
    ((sub && s?.part !== undefined && airSide.has(s.part)) ||
      (joints.has(p.part) &&
        !/s$/.test(item.phrase) &&
        !/\ball (?:the )?$/i.test(w.text.slice(Math.max(0, item.span[0] - 8), item.span[0])) &&
        w.subject?.p.part !== undefined &&
        airSide.has(w.subject.p.part)) ||
      (p.part === s?.part && sideable.has(p.part)));
  // "soaped its fitting", "damper leaking, bushes ok": of the thing spoken of
  const kind =
    w.subject?.p.side && !p.side
      ? ownPart(w.subject.p.part, p.part, /\b(?:its|his|her|their) $/i.test(w.text.slice(0, item.span[0]).slice(-6)))
      : undefined;
  if (kind && w.subject) {
    const its = w.subject.p;
    return { p: tidy({ ...its, part: kind }), from: 'carried', spans: item.spans, item };
  }
  if (inherits && s && (s.side === 'left' || s.side === 'right')) {
    p = { ...p, side: s.side };
    if (from === 'said') from = 'carried';
  }
  if (item.other) {
    const s = w.subject?.p.side ? w.subject.p : sidedBefore(w, item);
    if (s?.side === 'left' || s?.side === 'right')
      p = tidy({ ...s, ...p, part: p.part ?? s.part, side: s.side === 'left' ? 'right' : 'left' });
    from = 'carried';
    item.p = p;
  }
  // "the right one": of what was spoken of
  const kin = item.one && !p.part ? (w.subject?.p.part ?? partBefore(w, item) ?? partOfLast(w)) : undefined;
  if (kin && sideable.has(kin)) {
    p = tidy({ ...p, part: kin, ...(p.end === undefined && w.subject?.p.end ? { end: w.subject.p.end } : {}) });
    from = from === 'said' ? 'carried' : from;
    item.p = p;
  }
  return { p, from, spans: item.spans, item };
};
const ownPart = (of: PlaceParts['part'], part: PlaceParts['part'], its: boolean): PlaceParts['part'] =>
  of === 'shock' && part === 'bushing'
    ? 'shock bushing'
    : its && of === 'bellows' && part === 'fitting'
      ? 'bellows line'
      : undefined;
/** Named bare, they are those of the part spoken of. */
const joints: ReadonlySet<string> = new Set(['fitting', 'line']);
const sidedBefore = (w: Walk, item: PlaceItem): PlaceParts | undefined => {
  const before = w.all
    .slice(0, w.all.indexOf(item))
    .findLast((it): it is PlaceItem => it.k === 'place' && it.p.side !== undefined);
  const last = w.context.recent.at(-1)?.facts.findLast((f) => takePlace(f.where.v)?.side !== undefined);
  return before?.p ?? (last ? (takePlace(last.where.v) ?? undefined) : undefined);
};
const partOfLast = (w: Walk): PlaceParts['part'] => {
  const last = w.context.recent.at(-1)?.facts.findLast((f) => (takePlace(f.where.v)?.part ?? 'coach') !== 'coach');
  return last ? takePlace(last.where.v)?.part : undefined;
};
const partBefore = (w: Walk, item: PlaceItem): PlaceParts['part'] =>
  w.all.slice(0, w.all.indexOf(item)).findLast((it): it is PlaceItem => it.k === 'place' && it.p.part !== undefined)?.p
    .part;

/** A number that nothing settles: asks, with notes that say it plainly. */
export const unreadable = (w: Walk, n: Amounting, also?: PlaceItem): void => {
  const t = n.text;
  const own = n.unit ? '' : ` ${w.context.pressureUnit}`;
  const d = n.unit ? dimensionOf(n.unit) : null;
  const corners = ['left rear', 'right rear', 'left front', 'right front'];
  const places =
    d === 'voltage'
      ? ['battery', 'motor', 'relay']
      : d === 'length'
        ? corners
        : ['tank', 'left bellows', 'right bellows', 'tyre'];
  w.ambiguous.push({
    question: d === 'length' ? `${t}: which corner?` : d === 'voltage' ? `${t}: where?` : `${t}: of what?`,
    candidates: places.map((label) => ({ label, text: `${label} ${t}${d ? '' : own}` })),
    spans: also ? [also.span, n.span] : [n.span],
  });
  use(w, n, also);
};
