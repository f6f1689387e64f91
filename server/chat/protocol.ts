/** The socket protocol, both ways. One JSON object a frame. zod/mini: the page checks what it receives by the same schema. */
import * as z from 'zod/mini';
import { NoteId } from '../../intents/shapes.ts';
import { Open } from '../../intents/shapes.ts';
import { Entry, Photo } from '../session/entry.ts';
import { decidedFields, estimateFields } from '../session/estimate.ts';
import { Block, Suspect } from './reply.ts';

const SessionId = z.string().check(z.regex(/^[a-z0-9-]{6,40}$/));
const Initials = z.string().check(z.trim(), z.minLength(1), z.maxLength(20));
const limitText = 4000;
/** Entries in one frame, at most. */
export const pageOfEntries = 500;
/** Sessions in one frame, at most: what a list costs does not grow with the log. */
export const pageOfSessions = 50;
/** Where a page of a list ended: its last line. */
const After = z.strictObject({ last: z.number(), session: SessionId });

export const FromPage = z.discriminatedUnion('is', [
  /** First frame. Answered by 'welcome'. */
  z.strictObject({ is: z.literal('hello'), v: z.literal(1) }),
  /** A new session on a coach (sheet id). Answered by 'entries' with the 'opened' entry. The page makes the session id: resending is harmless. */
  z.strictObject({
    is: z.literal('open'),
    session: SessionId,
    coach: z.string().check(z.maxLength(40)),
    by: Initials,
    practice: z.optional(z.int().check(z.minimum(1), z.maximum(5))),
  }),
  /** Sends entries after `after` and everything that comes. Answered by 'entries' (in pages of at most 500) and 'board'. */
  z.strictObject({
    is: z.literal('follow'),
    session: SessionId,
    after: z.int().check(z.minimum(0)),
    /** Of a longer past only so many: a page shows the newest of a long session first. */
    last: z.optional(z.int().check(z.minimum(1), z.maximum(pageOfEntries))),
  }),
  /** The entries just before `before`. Answered by 'earlier'. */
  z.strictObject({
    is: z.literal('earlier'),
    session: SessionId,
    before: z.int().check(z.minimum(2)),
    most: z.int().check(z.minimum(1), z.maximum(pageOfEntries)),
  }),
  z.strictObject({
    is: z.literal('note'),
    session: SessionId,
    id: NoteId,
    text: z.string().check(z.maxLength(limitText)),
    at: z.number(),
    seen: z.int().check(z.minimum(0)),
    by: Initials,
    photos: z.optional(z.array(Photo)),
  }),
  /** A pure question: answered by 'answer', never logged. `session` null: the glossary, outside any session. */
  z.strictObject({
    is: z.literal('ask'),
    session: z.nullable(SessionId),
    id: NoteId,
    text: z.string().check(z.maxLength(limitText)),
  }),
  z.strictObject({
    is: z.literal('remark'),
    session: SessionId,
    about: z.int(),
    text: z.string().check(z.minLength(1), z.maxLength(limitText)),
    by: Initials,
  }),
  z.strictObject({
    is: z.literal('close'),
    session: SessionId,
    signed: z.string().check(z.trim(), z.minLength(1), z.maxLength(60)),
    words: z.string().check(z.maxLength(limitText)),
  }),
  z.strictObject({
    is: z.literal('reopen'),
    session: SessionId,
    words: z.string().check(z.maxLength(limitText)),
    by: Initials,
  }),
  /** What the job would cost; takes the place of an earlier one. Answered by 'entries' to all who follow. */
  z.strictObject({ is: z.literal('estimate'), session: SessionId, by: Initials, ...estimateFields }),
  /** A line of the newest estimate approved or declined, and by whom. */
  z.strictObject({ is: z.literal('decide'), session: SessionId, by: Initials, ...decidedFields }),
  /** The session goes on by the newest version of its coach's sheet, named by its hash. */
  z.strictObject({
    is: z.literal('resheet'),
    session: SessionId,
    by: Initials,
    sheet: z.string().check(z.regex(/^[a-f0-9]{64}$/)),
  }),
  z.strictObject({
    is: z.literal('list'),
    words: z.optional(z.string().check(z.maxLength(200))),
    coach: z.optional(z.string()),
    /** Those older than this line of the list. */
    after: z.optional(After),
  }),
]);
export type FromPage = z.infer<typeof FromPage>;

/** Coded refusals: the number is for the record, the word for programs, `words` for the person. DEVELOPERS.md lists each. */
export const refusals = {
  'bad json': 4001,
  'bad frame': 4002,
  'unknown frame': 4003,
  'too big': 4004,
  'too fast': 4005,
  'no hello': 4006,
  'no such session': 4010,
  'no such coach': 4011,
  'session exists': 4012,
  'session closed': 4013,
  'same id other text': 4014,
  'estimate changed': 4015,
  'sheet changed': 4016,
  'not allowed': 4020,
  'wrong version': 4021,
  'log failed': 4030,
} as const;
export type Refusal = keyof typeof refusals;

/** What stands now: computed, never stored. */
export const Board = z.object({
  session: SessionId,
  seq: z.int(),
  coach: z.string(),
  practice: z.boolean(),
  closed: z.boolean(),
  /** Latest reading of each place and measure; verdict as judged when it came. */
  latest: z.array(
    z.object({
      key: z.string(),
      where: z.string(),
      what: z.string(),
      text: z.string(),
      si: z.number(),
      pm: z.number(),
      unit: z.string(),
      at: z.number(),
      seq: z.int(),
      verdict: z.optional(z.enum(['within', 'low', 'high', 'cannot tell', 'no limit'])),
      low: z.optional(z.number()),
      high: z.optional(z.number()),
      lowText: z.optional(z.string()),
      highText: z.optional(z.string()),
    }),
  ),
  /** Readings over time, per key, for the charts. */
  series: z.array(
    z.object({
      key: z.string(),
      unit: z.string(),
      points: z.array(z.object({ at: z.number(), si: z.number(), pm: z.number() })),
    }),
  ),
  /** State of the coach in words, with where each comes from: "panel shut (said 9:05)". */
  state: z.array(
    z.object({ what: z.string(), words: z.string(), from: z.enum(['said', 'carried', 'assumed', 'unknown']) }),
  ),
  /** Whether anybody may be under it, as far as it was said; `at` ms since the epoch, `by` initials. */
  under: z.object({
    held: z.boolean(),
    words: z.string(),
    short: z.string(),
    list: z.array(
      z.object({
        what: z.string(),
        is: z.enum(['yes', 'no', 'unknown']),
        words: z.string(),
        at: z.optional(z.number()),
        by: z.optional(z.string()),
      }),
    ),
  }),
  gates: z.array(z.object({ what: z.string(), words: z.string(), answered: z.boolean() })),
  suspects: z.array(Suspect),
  checksDone: z.array(z.object({ id: z.string(), words: z.string(), outcome: z.string() })),
  next: z.nullable(Block),
  open: z.nullable(Open),
  /** Air circuit: parts lit by suspects, volumes joined in the present state. */
  circuit: z.object({
    lit: z.array(z.object({ part: z.string(), p: z.number() })),
    joined: z.array(z.string()),
    panel: z.boolean(),
  }),
  /** What the page's reader needs to read as the server will: all of Context but note and at. */
  reading: z.object({
    zone: z.string(),
    traffic: z.nullable(z.enum(['right', 'left'])),
    pressureUnit: z.string(),
    lengthUnit: z.string(),
    labels: z.record(z.string(), z.string()),
  }),
});
export type Board = z.infer<typeof Board>;

export const SessionLine = z.object({
  session: z.string(),
  coach: z.string(),
  opened: z.number(),
  last: z.number(),
  seq: z.int(),
  closed: z.boolean(),
  practice: z.boolean(),
  words: z.string(),
});

export const ToPage = z.discriminatedUnion('is', [
  z.object({
    is: z.literal('welcome'),
    v: z.literal(1),
    engine: z.string(),
    now: z.number(),
    coaches: z.array(
      z.object({ id: z.string(), coach: z.string(), zone: z.string(), units: z.string(), panel: z.boolean() }),
    ),
    role: z.enum(['works', 'reviews', 'learns']),
    /** Sheets in the data folder that could not be used: the file, and what is wrong where. */
    refusedSheets: z.optional(z.array(z.object({ file: z.string(), words: z.string() }))),
  }),
  z.object({
    is: z.literal('entries'),
    session: z.string(),
    entries: z.array(Entry),
    more: z.boolean(),
    /** What stands between `after` and these was left out, as `last` asked for. */
    skipped: z.optional(z.boolean()),
  }),
  z.object({ is: z.literal('earlier'), session: z.string(), entries: z.array(Entry) }),
  z.object({ is: z.literal('board'), board: Board }),
  z.object({ is: z.literal('answer'), id: NoteId, blocks: z.array(Block) }),
  z.object({
    is: z.literal('sessions'),
    list: z.array(SessionLine),
    /** There are older ones. */
    more: z.boolean(),
    /** As it was asked for. */
    after: z.optional(After),
  }),
  z.object({ is: z.literal('refused'), code: z.int(), why: z.string(), words: z.string(), id: z.optional(z.string()) }),
]);
export type ToPage = z.infer<typeof ToPage>;
