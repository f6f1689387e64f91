/** A case that may come, an order, a hope, a question or another coach tells nothing of this one. */
import { describe, expect, test } from 'vitest';
import { factLine, readFixture } from './fixture.ts';

const said = [
  'left bag leaks',
  'check valve leaks back',
  'left rear is low',
  'pump runs',
  'left valve is stuck',
  'link is bent',
  'it holds',
  'no leaks',
  'right bag is ok',
  'left valve replaced',
  'bubbles at the crimp',
];
const frames = [
  'if {} then replace it',
  'if {} it is the valve',
  'not sure if {}',
  "don't know if {}",
  'let me know if {}',
  'check if {}',
  'will see if {}',
  'hope {}',
  'other bus {}',
  'the other coach {}',
  'last bus {}',
  '{}?',
  'unless {}',
  'in case {}',
  'when {} call me',
  'wait until {}',
  'told him to check if {}',
  'make sure {}',
];

describe('what is not said of this coach as it is', () => {
  test.each(frames)('%s', (frame) => {
    const facts = said.flatMap((words) => {
      const note = frame.replace('{}', words);
      return readFixture({ note })
        .facts.filter((f) => f.word !== 'hunch' && !(f.is === 'work' && !f.done))
        .map((f) => `${note}: ${factLine(f)}`);
    });
    expect(facts).toEqual([]);
  });

  test('is shown as unread, and what stands beside it is read', () => {
    const note = 'tank 104, if it drops below 90 call me';
    const r = readFixture({ note });
    expect(r.facts.map((f) => f.is)).toEqual(['reading']);
    expect(r.unread.map((s) => note.slice(...s))).toEqual(['if it drops below 90 call me']);
  });

  test('is shown once where two such stretches lie in one another', () => {
    const note = 'if it leaks let me know if pump runs then replace it';
    expect(readFixture({ note }).unread.map((s) => note.slice(...s))).toEqual([note]);
  });

  test('ends where this coach is named again', () => {
    const r = readFixture({ note: 'the other bus leans left, this one leans right' });
    expect(r.facts.map(factLine)).toEqual(['sign leans @ right']);
  });

  test('is a hunch where a list ends in its question', () => {
    const r = readFixture({ note: 'right side wont come down, exhaust of right valve blocked?' });
    expect(r.facts.map((f) => f.word)).toEqual(['own', 'hunch']);
  });
});
