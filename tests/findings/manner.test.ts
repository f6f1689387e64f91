/** What bears on all that a note tells stands in its facts: judging never looks at the words again. */
import { describe, expect, it } from 'vitest';
import { blankContext, read } from '../../intents/read.ts';
import { judge } from '../../server/findings/judge.ts';
import { fold } from '../../server/session/fold.ts';
import { factOf, juniper } from './bench.ts';
import { SessionMaker } from '../session/entries.ts';

const manners = (note: string): string[] =>
  read(note, blankContext('note-id')).facts.map((f) => `${f.what.v}: ${f.manner?.join(' ') ?? ''}`.trim());

describe('manner', () => {
  it.each([
    ['as found: tank 22, lr 11 1/2', ['pressure: as found', 'height: as found']],
    ['lr 12 as it was found', ['height: as found']],
    ['tank 22, lr 11 1/2', ['pressure:', 'height:']],
    ['hiss at the unloader for a moment', ['hiss: briefly']],
    ['left rear sinks only with the tank drained', ['sags: only tank down', 'tank drained:']],
  ])('%s', (note, facts) => {
    expect(manners(note)).toEqual(facts);
  });

  it('is what makes a height one as found, whatever the words of the note', () => {
    const height = factOf('reading height @ left rear = 11 1/2 in');
    const sees = (fact: object): string[] => {
      const maker = new SessionMaker(juniper.id);
      const id = maker.note('as found', [fact as typeof height]);
      const standing = fold(maker.entries);
      const fresh = standing.facts.filter((h) => h.note === id).map((h) => h.fact);
      return judge(fresh, standing, juniper).flatMap((f) => f.evidence?.map((e) => e.see) ?? []);
    };
    expect(sees({ ...height, manner: ['as found'] })).toContain('left as found');
    expect(sees(height)).not.toContain('left as found');
  });
});
