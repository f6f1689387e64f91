/** A reply as it is shown and stored: blocks of words and data, cautions first. */
import * as z from 'zod/mini';
import { Condition, NoteId, Open, Place } from '../../intents/shapes.ts';
import { Key, Taken } from '../../intents/taken.ts';
import { Drawing, Finding, Why } from '../findings/finding.ts';

export { Key, Taken };

/** A fault that may be behind it. `p` 0 to 1 for bars and sorting, `rank` in words is what is shown ("1 in 2"). */
export const Suspect = z.object({
  fault: z.string(),
  where: z.optional(Place),
  name: z.string(),
  p: z.number(),
  was: z.optional(z.number()),
  rank: z.string(),
  /** The part it is a fault of, where more than one fault of it is suspected: how sure that any of them is there. */
  of: z.optional(z.object({ part: z.string(), p: z.number(), rank: z.string() })),
  /** Findings that speak for (bits > 0) and against it. */
  speaks: z.array(z.object({ see: z.string(), words: z.string(), bits: z.number() })),
});
export type Suspect = z.infer<typeof Suspect>;

export const Block = z.discriminatedUnion('is', [
  z.object({ is: z.literal('took'), words: z.string(), list: z.array(Taken) }),
  /** First in the reply. `gate`: the answer it waits for; nothing under the coach goes on before. */
  z.object({
    is: z.literal('caution'),
    id: z.string(),
    words: z.string(),
    more: z.string(),
    gate: z.optional(z.object({ what: Condition, keys: z.array(Key), open: z.optional(Open) })),
  }),
  z.object({ is: z.literal('findings'), words: z.string(), list: z.array(Finding) }),
  z.object({ is: z.literal('suspects'), words: z.string(), list: z.array(Suspect) }),
  /** Minutes are estimates: hands-on and waiting apart. */
  z.object({
    is: z.literal('check'),
    id: z.string(),
    words: z.string(),
    why: z.string(),
    hands: z.number(),
    wait: z.number(),
    keys: z.array(Key),
    guide: z.optional(z.string()),
    destroys: z.optional(z.string()),
    /** What a bare number or yes/no after it answers. */
    open: z.optional(Open),
  }),
  z.object({
    is: z.literal('question'),
    id: z.string(),
    words: z.string(),
    keys: z.array(Key),
    open: z.optional(Open),
  }),
  /** A guide's step: one at a time; the keys are next, back and stop beside what to type. */
  z.object({
    is: z.literal('step'),
    guide: z.string(),
    step: z.int(),
    of: z.int(),
    title: z.string(),
    words: z.string(),
    expect: z.string(),
    keys: z.array(Key),
    open: z.optional(Open),
  }),
  /** Explanation, glossary, guide step; `terms` are glossary ids that occur in it. */
  z.object({
    is: z.literal('teach'),
    words: z.string(),
    lines: z.array(z.string()),
    terms: z.array(z.string()),
    why: z.optional(Why),
  }),
  /** Something taken back out loud, or contradictory. */
  z.object({ is: z.literal('withdrawn'), words: z.string() }),
  z.object({ is: z.literal('picture'), words: z.string(), drawing: Drawing }),
]);
export type Block = z.infer<typeof Block>;

export const Reply = z.object({
  to: NoteId,
  /** Hash of code and tables that made it. */
  engine: z.string(),
  blocks: z.array(Block),
});
export type Reply = z.infer<typeof Reply>;
