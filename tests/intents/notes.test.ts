/** Every note of fixtures/notes, each held to what must be read of it (grammar: fixtures/notes/FORMAT.md). */
import { describe, expect, test } from 'vitest';
import { differences, fixtureFiles, fixturesOf, readFixture, right } from './fixture.ts';

const known = 'known-failures.jsonl';

for (const file of fixtureFiles().filter((f) => f !== known))
  describe(file, () => {
    for (const [i, f] of fixturesOf(file).entries())
      test(`${i + 1}: ${f.note.slice(0, 90)}`, () => {
        const { missing, extra } = differences(f, readFixture(f));
        expect({ missing, extra }).toEqual({ missing: [], extra: [] });
      });
  });

/** Notes the reader is known to fail. One that begins to pass belongs in the other files: move it. */
describe(known, () => {
  for (const f of fixturesOf(known))
    test(`still fails, or move it to its voice's file: ${f.note.slice(0, 70)}`, () => {
      expect(right(differences(f, readFixture(f)))).toBe(false);
    });
});

test('there are as many notes of each sort as were asked for', () => {
  const all = fixtureFiles()
    .filter((f) => f !== known)
    .flatMap(fixturesOf);
  const notes = new Set(all.map((f) => f.note));
  expect(notes.size).toBeGreaterThanOrEqual(500);
  expect(all.filter((f) => (f.hazards ?? []).length > 0).length).toBeGreaterThanOrEqual(60);
  expect(all.filter((f) => (f.amends ?? []).length > 0).length).toBeGreaterThanOrEqual(60);
  // negative notes: nothing of the suspension may be read from them
  expect(
    all.filter((f) => (f.facts ?? []).length === 0 && (f.amends ?? []).length === 0).length,
  ).toBeGreaterThanOrEqual(60);
  expect(new Set(all.map((f) => f.voice)).size).toBeGreaterThanOrEqual(5);
});
