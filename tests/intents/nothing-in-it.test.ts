/** States that stand for "no air in it" open gates: the begin of a longer figure is none of them. */
import { describe, expect, test } from 'vitest';
import { lexicon } from '../../intents/lexicon.ts';
import { blankContext, read } from '../../intents/read.ts';

const states = [...lexicon]
  .filter(([phrase, senses]) => / (?:0|zero)$/.test(phrase) && senses.some((s) => s.k === 'cond' && s.holds))
  .map(([phrase]) => phrase);
const holds = (note: string): string[] =>
  read(note, blankContext('note-1')).facts.flatMap((f) => (f.is === 'condition' && f.holds ? [f.what.v] : []));

describe('a state that ends in nothing', () => {
  test('there are some, and each holds as it stands', () => {
    expect(states.length).toBeGreaterThan(15);
    expect(states.filter((s) => holds(s).length === 0)).toEqual([]);
  });
  test.each(['.4 bar', ',4 bar', '.4', '-20 psi', ' point four bar'])(
    'does not where the figure goes on with "%s"',
    (rest) => {
      expect(states.filter((s) => holds(s + rest).length > 0)).toEqual([]);
    },
  );
});
