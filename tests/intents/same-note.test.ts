/** The same note written another way reads the same: what the thumb, the clipboard and the microphone make of it. */
import { describe, expect, test } from 'vitest';
import type { Reading } from '../../intents/shapes.ts';
import { factLine, fixtureFiles, fixturesOf, readFixture, type Fixture } from './fixture.ts';

const notes = fixtureFiles()
  .filter((f) => f !== 'known-failures.jsonl')
  .flatMap(fixturesOf);
const closed = notes.filter((f) => !f.open);

const said = (r: Reading): string[] =>
  [
    ...r.facts.map(factLine),
    ...r.hazards.map((h) => `danger ${h.hazard} ${h.mode}`),
    ...r.asks.map((a) => `asks ${a.ask}`),
    ...r.amends.map((a) => `amends ${a.do}`),
    ...r.ambiguous.map(() => 'ambiguous'),
  ].toSorted();

/** The notes that read otherwise once `rewrite` has been over them. */
const otherwise = (of: readonly Fixture[], rewrite: (note: string, i: number) => string, kept = said): string[] =>
  of.flatMap((f, i) => {
    const note = rewrite(f.note, i);
    if (note === f.note) return [];
    const before = kept(readFixture(f));
    const after = kept(readFixture({ ...f, note }));
    return JSON.stringify(after) === JSON.stringify(before) ? [] : [note];
  });
const dangers = (r: Reading): string[] => r.hazards.map((h) => h.hazard).toSorted();

const leads = ['ok so ', 'right then ', 'just checked, ', 'UPDATE: ', 'note: ', 'job 114: ', 'quick one - ', 'fyi '];
const tails = [' thanks', ' cheers', ', over', '. will call later', ' btw', ' for now', ' atm', ' lol'];

describe('a note reads the same', () => {
  test('with two spaces, tabs and line ends of two characters', () => {
    expect(otherwise(notes, (n, i) => ` ${n.replaceAll(' ', i % 2 ? '  ' : '\t').replaceAll('\n', '\r\n')} `)).toEqual(
      [],
    );
  });

  test('with semicolons for commas', () => {
    expect(otherwise(notes, (n) => n.replace(/,(?= )/g, ';'))).toEqual([]);
  });

  test('after what says nothing of the coach', () => {
    expect(otherwise(closed, (n, i) => leads[i % leads.length]! + n)).toEqual([]);
  });

  test('before thanks and words by the way', () => {
    const told = closed.filter((f) => !f.note.endsWith('?'));
    expect(otherwise(told, (n, i) => n.replace(/[.!]$/, '') + tails[i % tails.length]!)).toEqual([]);
  });
});

describe('a danger is heard', () => {
  test('over a stop as over a comma', () => {
    const lost = closed.filter((f) => {
      const note = f.note.replaceAll(', ', '. ');
      const before = dangers(readFixture(f));
      const after = dangers(readFixture({ ...f, note }));
      return before.some((h) => !after.includes(h));
    });
    expect(lost.map((f) => f.note)).toEqual([]);
  });

  test('in capitals', () => {
    expect(otherwise(notes, (n) => n.toUpperCase(), dangers)).toEqual([]);
  });
});

test('spans of a note written unevenly lie on its own words', () => {
  const note = '  job 7:\tleft rear   low ;  tank  95 psi  thanks ';
  const reading = readFixture({ note });
  const words = reading.facts.flatMap((f) => ('what' in f ? f.what.spans : [])).map((s) => note.slice(...s));
  expect(words).toContain('low');
  expect(reading.facts.flatMap((f) => f.where.spans).map((s) => note.slice(...s))).toContain('left rear');
  expect(reading.unread.map((s) => note.slice(...s))).toEqual(['job 7']);
});
