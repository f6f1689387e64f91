/** The papers as data: what the page draws, prints and offers as files. zod/mini, so that schemas can be published of them. */
import * as z from 'zod/mini';
import { Drawing, Shown } from '../findings/finding.ts';
import { Photo } from '../session/entry.ts';
import { EstimateLine } from '../session/estimate.ts';

const Verdict = z.enum(['within', 'low', 'high', 'cannot tell', 'no limit']);

/** One thing said, and the entry it was said in. */
export const Item = z.object({ words: z.string(), more: z.string(), at: z.number(), seq: z.int(), by: z.string() });
export type Item = z.infer<typeof Item>;

/** The same figure before the work and after it. SI beside the words. */
export const Compared = z.object({
  key: z.string(),
  title: z.string(),
  unit: Shown.shape.unit,
  before: z.nullable(z.object({ text: z.string(), si: z.number(), pm: z.number(), at: z.number(), verdict: Verdict })),
  after: z.nullable(z.object({ text: z.string(), si: z.number(), pm: z.number(), at: z.number(), verdict: Verdict })),
  /** "13 1/2 in to 14 in", and whose limit it is; '' where there is none. */
  limit: z.string(),
  source: z.string(),
  drawing: z.nullable(Drawing),
});
export type Compared = z.infer<typeof Compared>;

/** A thing due: by the calendar, by the odometer, or not to be told, with the reason. */
export const Due = z.object({
  what: z.string(),
  /** Plain words: "due 6 May 2027 or at 25 000 mi, whichever comes first". */
  words: z.string(),
  /** Day it is due on the coach's wall calendar, YYYY-MM-DD. */
  date: z.nullable(z.string()),
  overdue: z.boolean(),
  /** When it was last done; null: never, as far as these sessions tell. */
  last: z.nullable(z.object({ at: z.number(), session: z.string(), words: z.string() })),
  source: z.string(),
});
export type Due = z.infer<typeof Due>;

export const Shop = z.strictObject({
  v: z.literal(1),
  name: z.optional(z.string().check(z.trim(), z.maxLength(120))),
  /** Address, telephone: printed under the name as it stands. */
  lines: z.optional(z.string().check(z.trim(), z.maxLength(400))),
  /** Labour an hour. */
  labour: z.optional(z.number().check(z.minimum(0), z.maximum(100_000))),
  currency: z.optional(z.string().check(z.trim(), z.minLength(1), z.maxLength(12))),
});
export type Shop = z.infer<typeof Shop>;

export const CostedLine = z.object({
  ...EstimateLine.shape,
  /** null: cannot be told, because a price or the rate is not known. */
  parts: z.array(z.object({ name: z.string(), price: z.optional(z.number()) })),
  labour: z.nullable(z.number()),
  material: z.nullable(z.number()),
  total: z.nullable(z.number()),
  /** What was last said to this line as it stands; null: nothing yet. */
  decided: z.nullable(z.object({ yes: z.boolean(), name: z.string(), words: z.string(), at: z.number() })),
});
export type CostedLine = z.infer<typeof CostedLine>;

export const Estimate = z.object({
  /** seq of the entry; 0: none was written yet. */
  seq: z.int(),
  at: z.number(),
  by: z.string(),
  rate: z.nullable(z.number()),
  currency: z.string(),
  lines: z.array(CostedLine),
  /** Of the approved lines and of all; null where one of them cannot be told. */
  approved: z.nullable(z.number()),
  total: z.nullable(z.number()),
  /** What has to be asked before it adds up. */
  missing: z.array(z.string()),
});
export type Estimate = z.infer<typeof Estimate>;

export const OwnerReport = z.object({
  v: z.literal(1),
  session: z.string(),
  coach: z.string(),
  zone: z.string(),
  practice: z.boolean(),
  shop: z.object({ name: z.string(), lines: z.string() }),
  opened: z.number(),
  closed: z.nullable(z.object({ at: z.number(), signed: z.string(), words: z.string() })),
  typed: z.array(z.string()),
  sheet: z.object({ hash: z.string(), source: z.string() }),
  complaint: z.nullable(Item),
  /** How it stands, in one word; it clears nothing. */
  word: z.object({
    is: z.enum(['not safe', 'open', 'not mended', 'not proved', 'proved']),
    words: z.string(),
    more: z.string(),
  }),
  /** Why it must not be moved; empty: nothing of the kind stands, which clears nothing. */
  notSafe: z.array(Item),
  found: z.array(Item),
  cause: z.nullable(Item),
  done: z.array(Item),
  declined: z.array(Item),
  compared: z.array(Compared),
  photos: z.array(z.object({ ...Photo.shape, when: z.enum(['before', 'after']), note: z.string(), at: z.number() })),
  due: z.array(Due),
  cautions: z.array(Item),
  estimate: z.nullable(Estimate),
  /** Digest over all entries up to `entries`. */
  mark: z.string(),
  entries: z.int(),
  printed: z.number(),
});
export type OwnerReport = z.infer<typeof OwnerReport>;

export const CoachHistory = z.object({
  v: z.literal(1),
  coach: z.string(),
  name: z.string(),
  zone: z.string(),
  sheet: z.object({ hash: z.string(), source: z.string() }),
  sessions: z.array(
    z.object({
      session: z.string(),
      opened: z.number(),
      closed: z.boolean(),
      signed: z.string(),
      words: z.string(),
      off: z.array(z.string()),
      work: z.array(z.string()),
    }),
  ),
  /** Every reading in force of a place over all visits, oldest first. */
  series: z.array(
    z.object({
      key: z.string(),
      title: z.string(),
      unit: Shown.shape.unit,
      points: z.array(
        z.object({
          at: z.number(),
          si: z.number(),
          pm: z.number(),
          text: z.string(),
          session: z.string(),
          seq: z.int(),
          verdict: z.optional(Verdict),
        }),
      ),
      low: z.optional(z.number()),
      high: z.optional(z.number()),
      source: z.string(),
      /** "13 1/2 in to 14 in"; '' where there is none. */
      limit: z.string(),
    }),
  ),
  work: z.array(z.object({ words: z.string(), at: z.number(), by: z.string(), session: z.string(), seq: z.int() })),
  due: z.array(Due),
});
export type CoachHistory = z.infer<typeof CoachHistory>;
