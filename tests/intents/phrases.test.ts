/** Every phrase of fixtures/phrases is read as what it means; one that is known to be missed says so once it is read. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isRead, type PhraseRow } from './phrase.ts';

const rows = readFileSync(new URL('../../fixtures/phrases/shop-talk.jsonl', import.meta.url), 'utf8')
  .split('\n')
  .filter((l) => l.trim() !== '')
  .map((l) => JSON.parse(l) as PhraseRow);

describe('shop talk', () => {
  test.each(rows.map((row) => [`${row.kind} ${row.name}`, row] as const))('%s', (_, row) => {
    expect(row.phrases.filter((p) => !isRead(row, p))).toEqual([]);
    expect((row.missed ?? []).filter((p) => isRead(row, p))).toEqual([]);
  });
  test('there are enough of them to mean something', () => {
    expect(rows.reduce((n, r) => n + r.phrases.length, 0)).toBeGreaterThan(2500);
  });
});
