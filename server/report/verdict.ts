/** The first line of the owner's report: how it stands with the coach, in one plain word. It clears nothing. Pure. */
import type { Block } from '../chat/reply.ts';
import type { Entry } from '../session/entry.ts';
import type { Item, OwnerReport } from './shapes.ts';

type Check = Extract<Block, { is: 'check' }>;

/** What was asked for last, after the work at `last`. */
const askedLast = (entries: readonly Entry[], last: number): Check | undefined => {
  for (const e of entries.toReversed()) {
    if (e.is !== 'reply' || e.seq < last) continue;
    const check = e.blocks.findLast((b): b is Check => b.is === 'check');
    if (check) return check;
  }
  return undefined;
};

/** `last`: seq of the last mending work, -Infinity where there was none. */
export const verdictOf = (
  entries: readonly Entry[],
  last: number,
  notSafe: readonly Item[],
  asked: readonly Item[],
): OwnerReport['word'] => {
  if (notSafe.length > 0)
    return {
      is: 'not safe',
      words: 'Not safe to move',
      more: 'Do not move it, keep clear of it. Towing by the maker’s method.',
    };
  if (asked.length > 0)
    return {
      is: 'open',
      words: 'A question of safety is open',
      more: 'It is not moved and nobody goes under before it is answered.',
    };
  if (last === -Infinity)
    return { is: 'not mended', words: 'Looked at, nothing mended', more: 'What was complained of still stands.' };
  const next = askedLast(entries, last);
  return next?.id === 'close'
    ? { is: 'proved', words: 'Mended, and proved by the test that fits the complaint', more: '' }
    : {
        is: 'not proved',
        words: 'Mended, not proved yet',
        more:
          next && !next.id.startsWith('repair ')
            ? `Still to be shown: ${next.words}`
            : 'The test that fits the complaint is still to come.',
      };
};
