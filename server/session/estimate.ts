/** What a job would cost, line by line, and what was said to each line: the shapes as they are logged. */
import * as z from 'zod/mini';

const words = (most: number) => z.string().check(z.trim(), z.minLength(1), z.maxLength(most));
const minutes = z.number().check(z.minimum(0), z.maximum(6000));
const money = z.number().check(z.minimum(0), z.maximum(1_000_000));

export const EstimateLine = z.object({
  id: z.string().check(z.regex(/^[a-z0-9-]{1,40}$/)),
  /** The work, in words for the owner. */
  words: words(300),
  /** A price left out is not known yet; it is asked for, never guessed. In the estimate's currency. */
  parts: z.array(z.object({ name: words(120), price: z.optional(money) })).check(z.maxLength(20)),
  /** Minutes of hands, charged, and minutes of waiting (cure, settle, pump up), not charged. */
  hands: minutes,
  wait: minutes,
  /** Why it is proposed: the finding or suspect it came from. */
  why: z.optional(z.string().check(z.maxLength(300))),
});
export type EstimateLine = z.infer<typeof EstimateLine>;

export const estimateFields = {
  lines: z.array(EstimateLine).check(z.minLength(1), z.maxLength(40)),
  /** The shop's rate an hour as it was when this was written; left out where the shop has not set one. */
  rate: z.optional(money),
  currency: z.optional(words(12)),
};

export const decidedFields = {
  /** seq of the estimate that was shown, and the line of it. */
  about: z.int(),
  line: EstimateLine.shape.id,
  yes: z.boolean(),
  /** Who said so: the owner or who speaks for the owner. */
  name: words(60),
  words: z.string().check(z.maxLength(500)),
};
