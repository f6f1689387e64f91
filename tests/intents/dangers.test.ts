/**
 * Dangers in many wordings, and notes that only sound like one. Every mode by hand: common practice, no source. Where a
 * line names a danger without a mode, only the danger is asked for.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { blankContext, read } from '../../intents/read.ts';

type Danger = { note: string; hazards: string[] };
const lines = readFileSync(new URL('../../fixtures/dangers.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n');
const notes = lines.map((line) => JSON.parse(line) as Danger);
const mode = / (?:done|doing|intended|asked|warned)$/;
const seen = (note: string): string[] =>
  read(note, blankContext('note-id', { at: Date.UTC(2026, 9, 6, 23) })).hazards.map((h) => `${h.hazard} ${h.mode}`);

test.each(notes.map((n) => [n.note, n.hazards] as const))('%s', (note, hazards) => {
  const told = seen(note).map((h) => (hazards.includes(h.replace(mode, '')) ? h.replace(mode, '') : h));
  expect(told.toSorted()).toEqual(hazards.toSorted());
});

test('a danger is seen in capitals, in the middle of a longer note, and without its last letters', () => {
  const missed: string[] = [];
  for (const { note, hazards } of notes.filter((n) => n.hazards.length === 1)) {
    const named = hazards[0]!.replace(mode, '');
    const kinds = (text: string): string[] => seen(text).map((h) => h.replace(mode, ''));
    const said = [note.toUpperCase(), `tank 95 psi. ${note}. left rear 13 1/4`, note.replace(/\b(\w+)ing\b/g, '$1in')];
    missed.push(...said.filter((text) => !kinds(text).includes(named)));
  }
  expect(missed).toEqual([]);
});
