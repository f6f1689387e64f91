import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { blankContext, read } from '../../intents/read.ts';
import { partitions, scan } from '../../intents/scan.ts';
import { Reading, type Span } from '../../intents/shapes.ts';
import { tell } from '../../intents/tell.ts';
import { fixtureFiles, fixturesOf } from './fixture.ts';

const at = Date.UTC(2026, 9, 6, 23, 30);
const notes = fixtureFiles().flatMap((file) => fixturesOf(file).map((f) => f.note));
/** Any UTF-16 units, lone surrogates included, and text in the manner of notes cut and joined anywhere. */
const anyText = fc.oneof(
  fc.string({ unit: fc.integer({ min: 0, max: 0xffff }).map((n) => String.fromCharCode(n)), maxLength: 4000 }),
  fc.string({ unit: 'grapheme', maxLength: 4000 }),
  fc.array(fc.tuple(fc.constantFrom(...notes), fc.nat(40), fc.nat(60)), { maxLength: 60 }).map((parts) =>
    parts
      .map(([note, from, length]) => note.slice(from, from + length))
      .join(' ')
      .slice(0, 4000),
  ),
  fc
    .array(fc.constantFrom(...' -/.,:;"\'°½¼#+~%0123456789lrin psi at to no'.split('')), { maxLength: 400 })
    .map((marks) => marks.join('')),
);
const anyContext = fc.record({
  traffic: fc.constantFrom('right' as const, 'left' as const, null),
  pressureUnit: fc.constantFrom('psi' as const, 'kPa' as const, 'bar' as const),
  lengthUnit: fc.constantFrom('in' as const, 'mm' as const, 'cm' as const),
  zone: fc.constantFrom('UTC', 'America/Denver', 'Europe/London', 'Asia/Kathmandu'),
});

const spansOf = (value: unknown): Span[] => {
  if (Array.isArray(value)) return value.flatMap(spansOf);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (key === 'spans' ? (inner as Span[]) : spansOf(inner)));
};

describe('whatever the text', () => {
  test('the tokens lie end to end over it', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        expect(partitions(scan(text), text)).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  test('a reading comes back, in shape, and its spans lie in the text', () => {
    fc.assert(
      fc.property(anyText, anyContext, (text, more) => {
        const reading = read(text, blankContext('note-id', { at, ...more }));
        const parsed = z.safeParse(Reading, reading);
        expect(parsed.error?.issues ?? []).toEqual([]);
        for (const [from, to] of [...spansOf({ ...reading, asks: [] }), ...reading.unread]) {
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeGreaterThan(from);
          expect(to).toBeLessThanOrEqual(text.length);
        }
        const ids = reading.facts.map((f) => f.id);
        expect(new Set(ids).size).toBe(ids.length);
        for (const fact of reading.facts) expect(Number.isFinite(fact.at)).toBe(true);
        expect(() => tell(reading, blankContext('note-id', { at, ...more }), text)).not.toThrow();
      }),
      { numRuns: 400 },
    );
  });

  test('the same text and context read the same', () => {
    fc.assert(
      fc.property(anyText, (text) => {
        const context = blankContext('note-id', { at });
        expect(read(text, context)).toEqual(read(text, context));
      }),
      { numRuns: 60 },
    );
  });
});

test('a word that no table knows is never swallowed', () => {
  const strange = fc.constantFrom('fnord', 'blarg', 'zzyzx', 'quuxly', 'wibblenaut');
  fc.assert(
    fc.property(fc.constantFrom('left rear low', 'tank 95 psi', 'comp runs', 'panel shut'), strange, (note, word) => {
      const text = `${note} ${word}`;
      const reading = read(text, blankContext('note-id', { at }));
      expect(reading.unread.map((s) => text.slice(...s)).join(' ')).toContain(word);
    }),
  );
});

/** Least processor time of a few readings, ms; not the wall clock: a busy machine must not fail this. */
const fastest = (text: string): number => {
  let best = Infinity;
  for (let i = 0; i < 5; i += 1) {
    const from = process.cpuUsage();
    read(text, blankContext('note-id', { at }));
    const { user, system } = process.cpuUsage(from);
    best = Math.min(best, (user + system) / 1000);
  }
  return best;
};

test.each([
  ['notes joined', `${notes.slice(0, 40).join('. ')}. `],
  ['one word', 'leveling '],
  ['figures', '13 1/4 '],
  ['words nobody knows', 'resevwar compresser gurgled '],
  ['a quote never closed', 'under the jack and '],
  ['no spaces', 'left'],
  ['marks', '?!'],
  // each of these once made a pattern go back over itself without bound
  ['small talk', '\\night٣'],
  ['sorries', 'ah sorry '],
  ['taking back', 'scratch what i said '],
  ['fractions', '1/'],
])('eight times the length takes about eight times as long: %s', (_, piece) => {
  const base = piece.repeat(Math.max(1, Math.round(2000 / piece.length)));
  fastest(base);
  // a reader quadratic in the length would need 64 times as long; short runs get a floor against the clock's grain
  expect(fastest(base.repeat(8)) / Math.max(0.3, fastest(base))).toBeLessThan(24);
});

test('a correction that never ends costs no more than a few readings of the same length', () => {
  // each end of it was once read from the beginning: 24 times
  expect(fastest('no, '.repeat(250)) / fastest('tank 95, '.repeat(111))).toBeLessThan(8);
});

test.each(['constructor', 'toString', 'valueOf', 'hasOwnProperty'])(
  'a word that every object has is a word like any other: %s',
  (word) => {
    for (const note of [`had relief ${word} bare`, `took the line ${word}`, `${word} 95 psi`, `tank ${word} ${word}`])
      expect(Reading.safeParse(read(note, blankContext('note-id', { at }))).success).toBe(true);
  },
);
