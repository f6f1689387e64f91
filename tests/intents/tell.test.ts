import { expect, test } from 'vitest';
import { plain } from '../../intents/plain.ts';
import { read } from '../../intents/read.ts';
import type { Fact } from '../../intents/shapes.ts';
import { tell } from '../../intents/tell.ts';
import { contextFor, factLine, fixtureFiles, fixturesOf, readFixture } from './fixture.ts';

const fixtures = fixtureFiles().flatMap((file) => fixturesOf(file));
const takes = fixtures.map((f) => ({
  f,
  reading: readFixture(f),
  context: contextFor({ ...f, open: null }, 'note-id', []),
}));

test('every fact said back plainly reads to the same fact', () => {
  const wrong: string[] = [];
  const seen = new Set<string>();
  for (const { reading, context } of takes)
    for (const fact of reading.facts) {
      const said = plain(fact);
      if (seen.has(said)) continue;
      seen.add(said);
      const back = read(said, context);
      const got = back.facts.map(factLine).join(' & ');
      if (got !== factLine(fact) || back.ambiguous.length > 0) wrong.push(`${said}: ${factLine(fact)}, read as ${got}`);
    }
  expect(seen.size).toBeGreaterThan(300);
  expect(wrong).toEqual([]);
});

test('every candidate of a question is a note that says one thing and leaves no question', () => {
  const wrong: string[] = [];
  for (const { f, reading, context } of takes)
    for (const amb of reading.ambiguous) {
      expect(amb.candidates.length, f.note).toBeGreaterThanOrEqual(2);
      for (const { text } of amb.candidates) {
        const back = read(text, context);
        // another word of the same note may have to be asked about on its own
        if (back.facts.length === 0 || back.ambiguous.length >= reading.ambiguous.length)
          wrong.push(`${f.note}: ${text}: ${back.facts.length} facts, ${back.ambiguous.length} questions`);
      }
    }
  expect(wrong).toEqual([]);
});

test('a tap that mends an assumed place changes that fact and no other', () => {
  const context = contextFor({ note: '' }, 'note-two', []);
  const first = read('95 psi, lr 13 1/4', { ...context, note: 'note-one' });
  expect(first.facts.map((x) => x.where.from)).toEqual(['assumed', 'said']);
  const [line] = tell(first, context, '95 psi, lr 13 1/4');
  expect(line?.from).toBe('assumed');
  expect(line?.mends.map((key) => key.label)).toEqual(['left bellows', 'right bellows', 'tyre', 'test port']);
  for (const key of line?.mends ?? []) {
    const back = read(key.text, { ...context, recent: [{ id: 'note-one', facts: first.facts }] });
    expect(back.facts).toEqual([]);
    expect(back.amends).toHaveLength(1);
    expect(back.amends[0]?.drops).toEqual(['note-one.0']);
    expect(back.amends[0]?.puts.map((x: Fact) => x.where.v)).toEqual([key.label]);
    expect(back.amends[0]?.puts.map((x) => (x.is === 'reading' ? x.amount.v.si : 0))).toEqual(
      first.facts.slice(0, 1).map((x) => (x.is === 'reading' ? x.amount.v.si : 1)),
    );
  }
});

test('each fact, correction, question and unread word has its line', () => {
  for (const { f, reading, context } of takes) {
    const lines = tell(reading, context, f.note);
    const want =
      reading.facts.length +
      reading.amends.length +
      reading.asks.filter((a) => a.ask !== 'talk').length +
      reading.ambiguous.length +
      (reading.unread.length > 0 ? 1 : 0);
    expect(lines).toHaveLength(want);
    for (const line of lines) expect(line.words).not.toMatch(/undefined|NaN|\[object|^\s|\s$/);
  }
});

test('a held reading says so, a hunch and a report keep their owner', () => {
  const context = contextFor({ note: '' }, 'note-id', []);
  const lines = (note: string): string[] =>
    tell(read(note, context), context, note).map((t) => `${t.kind}: ${t.words}`);
  expect(lines('950 psi in the tank')).toEqual(['held: tank 950 psi: held back, not believed']);
  expect(lines('think its the left valve')).toEqual(['hunch: left height valve: not working (a hunch, no evidence)']);
  expect(lines('driver says it leans left')).toEqual(['sign: left: leans (second-hand)']);
  expect(lines('lr 3/8 low')).toEqual(['reading: left rear 3/8 in low']);
  expect(lines('tank drops 6 psi in 10 min')).toEqual(['reading: tank down 6 psi in 10 min']);
  expect(lines('spec rear 13 1/2 +- 1/4')).toEqual(['spec: limit given: rear height 13 1/4 in to 13 3/4 in']);
});
