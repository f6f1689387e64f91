/** One line of the read-back, and a tap. */
import * as z from 'zod/mini';

/** A tap: writes `text` into the note line. */
export const Key = z.object({ label: z.string(), text: z.string() });
export type Key = z.infer<typeof Key>;

/** `from` says how sure; a tap on `mends` writes a correction into the line. */
export const Taken = z.object({
  words: z.string(),
  from: z.enum(['said', 'carried', 'assumed']),
  kind: z.enum([
    'reading',
    'sign',
    'work',
    'condition',
    'spec',
    'amend',
    'ask',
    'hunch',
    'held',
    'unread',
    'ambiguous',
  ]),
  mends: z.array(Key),
});
export type Taken = z.infer<typeof Taken>;
