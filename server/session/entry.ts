/** The entries of the session log: what is stored, in order, for ever. zod/mini: the page reads them too. */
import * as z from 'zod/mini';
import { NoteId, Reading } from '../../intents/shapes.ts';
import { Reply } from '../chat/reply.ts';
import { decidedFields, estimateFields } from './estimate.ts';

const stamp = {
  v: z.literal(1),
  session: z.string().check(z.regex(/^[a-z0-9-]{6,40}$/)),
  /** Gapless from 1 within the session; the only order there is. */
  seq: z.int().check(z.positive()),
  /** Server's clock, ms since the epoch: for the record, never for physics. */
  kept: z.number(),
  /** Initials of who typed, or "soapwater". */
  by: z.string().check(z.minLength(1), z.maxLength(20)),
};

export const Photo = z.object({
  id: z.string().check(z.regex(/^[a-f0-9]{64}$/)),
  width: z.int(),
  height: z.int(),
  words: z.string(),
});
export type Photo = z.infer<typeof Photo>;

export const Entry = z.discriminatedUnion('is', [
  z.object({
    ...stamp,
    is: z.literal('opened'),
    coach: z.string(),
    sheet: z.string(),
    zone: z.string(),
    /** Practice sessions never count in a coach's history. */
    practice: z.optional(z.object({ seed: z.int(), level: z.int() })),
  }),
  /** The session goes on by another version of the sheet. */
  z.object({ ...stamp, is: z.literal('sheet'), sheet: z.string() }),
  z.object({
    ...stamp,
    is: z.literal('note'),
    id: NoteId,
    text: z.string(),
    /** When it was typed, by the page's clock: feeds physics. */
    at: z.number(),
    /** Last seq on that page when it was typed: what a correction in it may aim at. */
    seen: z.int(),
    photos: z.optional(z.array(Photo)),
    read: Reading,
  }),
  z.object({ ...stamp, is: z.literal('reply'), ...Reply.shape }),
  z.object({ ...stamp, is: z.literal('remark'), about: z.int(), text: z.string() }),
  z.object({ ...stamp, is: z.literal('closed'), signed: z.string(), words: z.string() }),
  z.object({ ...stamp, is: z.literal('reopened'), words: z.string() }),
  /** What the job would cost; a later one takes the place of it. */
  z.object({ ...stamp, is: z.literal('estimate'), ...estimateFields }),
  /** A line of an estimate approved or declined. */
  z.object({ ...stamp, is: z.literal('decided'), ...decidedFields }),
]);
export type Entry = z.infer<typeof Entry>;
type Unstamped<E> = E extends Entry ? Omit<E, 'v' | 'session' | 'seq' | 'kept'> : never;
/** An entry before the log has numbered and stamped it. */
export type Draft = Unstamped<Entry>;
export type NoteEntry = Extract<Entry, { is: 'note' }>;
export type EstimateEntry = Extract<Entry, { is: 'estimate' }>;
export type ReplyEntry = Extract<Entry, { is: 'reply' }>;
