/** The state of one walk through a note: what was read so far, what carries forward, and how a fact is put together. */
import { stepToSi, toSi, type Unit } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { makePlace, type PlaceParts } from './place.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Ambiguity, Context, Fact, Measure, ReadingFact, Said, Sign, When, Work } from './shapes.ts';

export type Loc = {
  p: PlaceParts;
  from: 'said' | 'carried' | 'assumed';
  spans: Said<string>['spans'];
  item?: PlaceItem;
  /** Spoken of in a sentence before this one. */
  old?: boolean;
};

type DraftOf<F> = F extends Fact ? Omit<F, 'id' | 'at' | 'where' | 'word'> & Partial<Pick<F, 'where' | 'word'>> : never;
/** A fact as a reader found it; a `where` or `word` it does not give is that of its place and of the walk. */
export type Draft = DraftOf<Fact>;

export type Measured = Extract<Settled, { k: 'measure' }>;

export type Walk = {
  readonly context: Context;
  readonly text: string;
  /** What the sentence begins with. */
  first: Settled | undefined;
  /** What else the note holds: its first `noteItems`, so that a look at it costs the same in any note. */
  readonly all: readonly Settled[];
  readonly facts: Fact[];
  readonly ambiguous: Ambiguity[];
  readonly used: Set<Settled>;
  /** What "it" is: the place spoken of last. */
  subject: Loc | null;
  /** Places said before a join that share what comes ("left and right bags cracked"). */
  pending: Loc[];
  /** Places named one after another before a denial: "drain, relief, gauge line no bubbles". */
  listed: Loc[];
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
  /** A circumstance that stood alone before a comma ("sat overnight, ..."): of what sank or held after it. */
  lineOften: 'standing' | null;
  told: boolean;
  hunch: boolean;
  /** A limit is being given: numbers are limits until the sentence ends. */
  spec: boolean;
  /** What the last limit was of. */
  limited: Measured | null;
  /** Where the one who writes stands: "im on the left side now". */
  here?: Loc;
  lastEnd: PlaceParts['end'];
  /** A measure named in the clause before without a number. */
  waiting: Measured | null;
  /** How long the state of the clause before had lasted: "LOCK 20 mins, tank 780 down to 762". */
  spell: Amounting | null;
  /** A measure that stands alone before a list: "camber: ...". */
  heading: Measured | null;
  /** A plan goes on past a join: "gonna jack it up and put stands under". */
  planned: boolean;
  /** What is wanted goes on past a join: "needs soap + overnight test". */
  wanted: boolean;
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
  first: undefined,
  all: all.slice(0, noteItems),
  facts: [],
  ambiguous: [],
  used: new Set(),
  subject: null,
  pending: [],
  listed: [],
  group: [],
  lastUnit: null,
  lastMeasure: null,
  lastSign: null,
  lastWork: null,
  lastReading: null,
  pendingWhen: null,
  lineWhen: null,
  lineOften: null,
  told: false,
  hunch: false,
  spec: false,
  limited: null,
  lastEnd: undefined,
  planned: false,
  wanted: false,
  waiting: null,
  heading: null,
  spell: null,
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
