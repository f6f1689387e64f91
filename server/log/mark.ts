/**
 * The mark of a session: a digest over all its entries, in order. Two logs with the same mark hold the same entries,
 * letter for letter; an entry changed, dropped or moved gives another mark. It proves sameness, not who wrote it: keep
 * the mark of a signed session on the paper that was signed.
 */
import { createHash } from 'node:crypto';

/** Mark of an empty session. */
export const noMark = '';

/** Mark after `body` (the entry's JSON text as stored) follows what has the mark `before`: SHA-256 (FIPS 180-4), hex. */
export const markAfter = (before: string, body: string): string =>
  createHash('sha256').update(before).update('\n').update(body).digest('hex');

/** Mark of a session of these entries, from the first on. */
export const markOf = (entries: readonly unknown[]): string =>
  entries.map((e) => JSON.stringify(e)).reduce(markAfter, noMark);
