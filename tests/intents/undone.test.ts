/** A work that is wanted, forgotten, refused, asked for or only spoken of was not done. */
import { describe, expect, test } from 'vitest';
import { factLine, readFixture } from './fixture.ts';

/** Base form, past, gerund. */
const verbs = [
  ['replace', 'replaced', 'replacing'],
  ['swap', 'swapped', 'swapping'],
  ['repair', 'repaired', 'repairing'],
  ['tighten', 'tightened', 'tightening'],
  ['clean', 'cleaned', 'cleaning'],
  ['adjust', 'adjusted', 'adjusting'],
  ['soap', 'soaped', 'soaping'],
  ['check', 'checked', 'checking'],
  ['remove', 'removed', 'removing'],
  ['reset', 'reset', 'resetting'],
  ['drain', 'drained', 'draining'],
] as const;
/** B: base form, P: past, G: gerund, O: what it is done to. */
const frames =
  'didnt B O|havent P O|havent P O yet|need to B O|gonna B O|should i B O|dont need to B O|cant B O|was going to B O|forgot to B O|want to B O|refused to B O|tried to B O|about to B O|will B O|waiting to B O|told him to B O|before G O|without G O|instead of G O|lets B O|have to B O|you should B O|he wants me to B O|O needs to be P|O should be P|O not P yet|O wasnt P|nobody P O|no need to B O|plan to B O|thinking of G O|maybe B O|i would B O|can you B O|please B O|tomorrow i B O|O to be P|ready to B O|B O next|if i B O|dont B O|almost P O|wont B O|i might B O|supposed to B O'.split(
    '|',
  );
const noteOf = (frame: string, [base, past, gerund]: (typeof verbs)[number]): string =>
  frame
    .replace('B', base)
    .replace('P', past)
    .replace('G', gerund)
    .replace('O', base === 'drain' ? 'the tank' : 'the left valve');

describe('no work is done', () => {
  test.each(frames)('%s', (frame) => {
    const done = verbs.flatMap((verb) => {
      const note = noteOf(frame, verb);
      return readFixture({ note })
        .facts.filter((f) => (f.is === 'work' && f.done) || (f.is === 'condition' && f.holds))
        .map((f) => `${note}: ${factLine(f)}`);
    });
    expect(done).toEqual([]);
  });
});

describe('work is done', () => {
  test.each(['P O', 'i P O', 'then i P O', 'P O yesterday'])('%s', (frame) => {
    const missed = verbs.flatMap((verb) => {
      const note = noteOf(frame, verb);
      return readFixture({ note }).facts.some((f) => f.is === 'work' && f.done) ? [] : [note];
    });
    expect(missed).toEqual([]);
  });

  test.each(['had to replace the left valve', 'after swapping the left valve it holds', 'ended up adjusting the link'])(
    '%s',
    (note) => {
      expect(readFixture({ note }).facts.some((f) => f.is === 'work' && f.done)).toBe(true);
    },
  );
});
