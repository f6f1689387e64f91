/** A draft as the log keeps it: numbered, stamped, and as text. Pure, the same for every log. */
import { type Draft, Entry } from '../session/entry.ts';

/** `entry` is what `body`, the JSON text that is stored, says: whoever is shown it sees what will be read again. */
export type Stamped = { readonly entry: Entry; readonly body: string };

/**
 * `own`: the program's own making from a note, held to its shape by tests/log/stamp.test.ts: to check each again takes a
 * tenth of a note's time. What is no number is written as null, and no entry holds a null: that is looked for.
 */
export const stampedAs = (draft: Draft, session: string, seq: number, kept: number, own: boolean): Stamped => {
  const stamps = { v: 1, session, seq, kept } as const;
  // first for whoever reads the file, and nothing of a draft takes their place
  const made = Object.assign({ ...stamps }, draft, stamps);
  if (own) {
    const body = JSON.stringify(made);
    if (!body.includes('null')) return { entry: JSON.parse(body) as Entry, body };
  }
  const body = JSON.stringify(Entry.parse(made));
  return { entry: JSON.parse(body) as Entry, body };
};
