/**
 * What a note says, as plain data: the shapes every layer speaks. Written with zod/mini, so that the page can carry
 * them under a strict CSP; types are derived from the schemas, never the other way round.
 */
import * as z from 'zod/mini';
import { unitNames } from '../server/core/units.ts';
import { conditions, hazards, measures, parts, signs, works } from './names.ts';

/** Half-open range of UTF-16 units in the raw text of the note. */
export const Span = z.tuple([z.int(), z.int()]);
export type Span = z.infer<typeof Span>;

export const NoteId = z.string().check(z.regex(/^[a-z0-9-]{6,40}$/));
export type NoteId = z.infer<typeof NoteId>;
/** `${NoteId}.${n}`, n counting from 0 in the order of the text. */
export const FactId = z.string().check(z.regex(/^[a-z0-9-]{6,40}\.\d{1,3}$/));
export type FactId = z.infer<typeof FactId>;

export const Side = z.enum(['left', 'right']);
export type Side = z.infer<typeof Side>;
export const End = z.enum(['front', 'rear']);
export type End = z.infer<typeof End>;
export const Part = z.enum(parts);
export type Part = z.infer<typeof Part>;

/**
 * A place in canonical words: `[left|right|both] [front|rear] [forward|aft] [part]`, each once, in that order, e.g.
 * "left rear", "tank", "right bellows crimp", "left rear forward wheel", "both rear". "" where none was said.
 * `forward` and `aft` are the two wheels of a side of the tandem. Make and take apart only with intents/place.ts.
 */
export const Place = z.string();
export type Place = z.infer<typeof Place>;

export const From = z.enum(['said', 'carried', 'assumed']);
const said = <T extends z.ZodMiniType>(v: T) => z.object({ v, from: From, spans: z.array(Span) });
export type Said<T> = { v: T; from: z.infer<typeof From>; spans: Span[] };

export const UnitName = z.enum(unitNames);

/** The schema of core/amount.ts's Amount: SI value beside the number and unit as typed. */
export const AmountShape = z.object({
  si: z.number(),
  pm: z.number(),
  unit: UnitName,
  text: z.string(),
  to: z.optional(z.number()),
  about: z.optional(z.enum(['about', 'just under', 'just over', 'at least', 'at most'])),
});

export const Measure = z.enum(measures);
export type Measure = z.infer<typeof Measure>;
export const Sign = z.enum(signs);
export type Sign = z.infer<typeof Sign>;
export const Condition = z.enum(conditions);
export type Condition = z.infer<typeof Condition>;
export const Work = z.enum(works);
export type Work = z.infer<typeof Work>;
export const HazardName = z.enum(hazards);
export type HazardName = z.infer<typeof HazardName>;

/**
 * When, as said. `clock`: minutes since midnight on the coach's wall clock; `ago`: seconds before the note was typed;
 * `after`: seconds after the reading before it; `day`: whole days back ("last night", "yesterday" are 1); `today` where that was said.
 * Where the day was not said: `guess` that it was taken as yesterday's, `fast` the minutes that the clock it was read on
 * was taken to be ahead.
 */
export const When = z.object({
  text: z.string(),
  clock: z.optional(z.number()),
  ago: z.optional(z.number()),
  after: z.optional(z.number()),
  day: z.optional(z.int()),
  today: z.optional(z.literal(true)),
  guess: z.optional(z.literal('yesterday')),
  fast: z.optional(z.number()),
  spans: z.array(Span),
});
export type When = z.infer<typeof When>;

/** own: the tech saw it; told: second-hand ("driver reports"); hunch: "think its the valve". */
export const Word = z.enum(['own', 'told', 'hunch']);
/** What bears on a fact besides its circumstance: seen before anything was touched, for a moment, only with the tank down. */
export const Manner = z.enum(['as found', 'briefly', 'only tank down']);
export type Manner = z.infer<typeof Manner>;
/** How regularly, where it was said. */
export const Often = z.enum(['always', 'sometimes', 'standing', 'driving', 'cold', 'hot', 'wet', 'restart', 'loaded']);

const base = {
  id: FactId,
  /** ms since the epoch at which it was so: from `when`, else from the note's own time. */
  at: z.number(),
  when: z.optional(When),
  where: said(Place),
  word: Word,
  often: z.optional(Often),
  manner: z.optional(z.array(Manner)),
  /** Read, but not believed: kept, shown, asked about, never evaluated until it is confirmed. */
  held: z.optional(z.enum(['implausible'])),
};

export const Fact = z.discriminatedUnion('is', [
  /**
   * `amount` is the reading. `from`: the value it started at ("116 down to 109", "0 to 90 took 11 min"); `over`: how
   * long it took; `across`: the length it was measured over ("1/8 toe over 24 in").
   */
  z.object({
    ...base,
    is: z.literal('reading'),
    what: said(Measure),
    amount: said(AmountShape),
    from: z.optional(said(AmountShape)),
    over: z.optional(said(AmountShape)),
    across: z.optional(said(AmountShape)),
  }),
  /** Something seen, heard, felt or smelt. `there` false: looked for and not found ("no bubbles"). */
  z.object({ ...base, is: z.literal('sign'), what: said(Sign), there: z.boolean() }),
  /** `done` false: said to be still to do or declined ("didn't swap the valve"). */
  z.object({ ...base, is: z.literal('work'), what: said(Work), done: z.boolean() }),
  z.object({ ...base, is: z.literal('condition'), what: said(Condition), holds: z.boolean() }),
  /** `over`: the time that a limit of a fall is for ("spec is 3 psi in 10 min"). */
  z.object({
    ...base,
    is: z.literal('spec'),
    what: said(Measure),
    low: AmountShape,
    high: AmountShape,
    over: z.optional(AmountShape),
  }),
]);
export type Fact = z.infer<typeof Fact>;
export type ReadingFact = Extract<Fact, { is: 'reading' }>;
export type SignFact = Extract<Fact, { is: 'sign' }>;
export type WorkFact = Extract<Fact, { is: 'work' }>;
export type ConditionFact = Extract<Fact, { is: 'condition' }>;
export type SpecFact = Extract<Fact, { is: 'spec' }>;

/**
 * A correction. The reader says what was said; the session names the target before anything is stored:
 * `undo` voids whole notes (`notes`), `redo` restores them, `drop` withdraws facts, `put` replaces `drops[i]` by
 * `puts[i]`. `says` keeps what the words asked for, for the read-back. A correction whose target could not be named has
 * empty targets and is turned into a question.
 */
export const Amend = z.object({
  do: z.enum(['undo', 'redo', 'drop', 'put']),
  count: z.int(),
  says: z.object({
    amount: z.optional(AmountShape),
    was: z.optional(AmountShape),
    where: z.optional(Place),
    what: z.optional(z.string()),
    /** Sides changed over ("wrong side", "other way round"). */
    swapSides: z.optional(z.boolean()),
  }),
  notes: z.array(NoteId),
  drops: z.array(FactId),
  puts: z.array(Fact),
  spans: z.array(Span),
});
export type Amend = z.infer<typeof Amend>;

export const AskKind = z.enum([
  'meaning', // what does 95 mean
  'why', // why the check valve, why that
  'why not', // why not the bellows
  'next', // what next
  'how', // how do i check cut in
  'what if', // what if the left was 14
  'what is', // whats a height valve
  'how sure',
  'how long', // how long till it is down
  'limit', // what should the tank be
  'safe', // can i drive it
  'work out', // what is 1/8 in over 41 in in degrees; wire for 30 A over 20 ft
  'summary',
  'help',
  'command', // start timer, next step, back, stop, practice, close
  'talk', // morning, thanks
  'elsewhere', // brakes, fridge, water tank: not this system
]);
export type AskKind = z.infer<typeof AskKind>;

/**
 * A question or a command. `about`: the topic in canonical words (a place, part, measure, sign, work or command name),
 * `words` as typed. `facts`: what the question supposes ("what if the left was 14") or inquires about ("what does 95
 * mean"); these are never evidence. `amounts`: numbers for "work out".
 */
export const Ask = z.object({
  ask: AskKind,
  about: z.optional(z.string()),
  words: z.string(),
  facts: z.array(Fact),
  amounts: z.array(AmountShape),
  spans: z.array(Span),
});
export type Ask = z.infer<typeof Ask>;

/** warned: the tech speaks against it or says it was kept off ("stay out from under"). */
export const Hazard = z.object({
  hazard: HazardName,
  mode: z.enum(['done', 'doing', 'intended', 'asked', 'warned']),
  spans: z.array(Span),
});
export type Hazard = z.infer<typeof Hazard>;

/** Two or more readings of the same words. Each candidate's `text` is a note that says it plainly: one tap sends it. */
export const Ambiguity = z.object({
  question: z.string(),
  candidates: z.array(z.object({ label: z.string(), text: z.string() })),
  spans: z.array(Span),
});
export type Ambiguity = z.infer<typeof Ambiguity>;

export const Reading = z.object({
  facts: z.array(Fact),
  amends: z.array(Amend),
  asks: z.array(Ask),
  hazards: z.array(Hazard),
  ambiguous: z.array(Ambiguity),
  unread: z.array(Span),
});
export type Reading = z.infer<typeof Reading>;

/** The question that stands open: a bare number or yes/no is its answer. `yes` and `no` are notes that say it in full. */
export const Open = z.object({
  id: z.string(),
  what: z.optional(Measure),
  where: z.optional(Place),
  unit: z.optional(UnitName),
  yes: z.optional(z.string()),
  no: z.optional(z.string()),
  /** Notes that say in full what "left" and "right" answer. */
  left: z.optional(z.string()),
  right: z.optional(z.string()),
});
export type Open = z.infer<typeof Open>;

/** All the reader knows besides the text: plain data, so that the reader has no clock and no session. */
export const Context = z.object({
  note: NoteId,
  /** ms since the epoch at which the note was typed, and the IANA zone of the coach for clock times in it. */
  at: z.number(),
  zone: z.string(),
  /** Side of the road that traffic keeps to where the coach was built to run; null: curb, driver, near side are asked. */
  traffic: z.nullable(z.enum(['right', 'left'])),
  pressureUnit: UnitName,
  lengthUnit: UnitName,
  /** Labels on this coach's panel and lines, lower case, to canonical words of names.ts ("travel" -> "panel auto"). */
  labels: z.record(z.string(), z.string()),
  open: z.nullable(Open),
  /** Facts of the last notes in force, oldest first, none after `seen`; what corrections and "same as before" aim at. */
  recent: z.array(z.object({ id: NoteId, facts: z.array(Fact) })),
});
export type Context = z.infer<typeof Context>;
