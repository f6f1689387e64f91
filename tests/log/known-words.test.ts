/** Words the log is known to hold are not written again: what is found by search is the same. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { knownWords } from '../../server/log/known-words.ts';
import { sqliteLog } from '../../server/log/sqlite.ts';
import type { Draft } from '../../server/session/entry.ts';

const ends: (() => void)[] = [];
afterEach(() => ends.splice(0).forEach((end) => end()));
const opened: Draft = { is: 'opened', by: 'KD', coach: 'juniper-38', sheet: 'a'.repeat(64), zone: 'America/Denver' };
const remark = (text: string): Draft => ({ is: 'remark', by: 'KD', about: 1, text });

test('a word is new once for each session, and again when what was written may have been undone', () => {
  const known = knownWords();
  expect([known.isNew('a', 'tank'), known.isNew('a', 'tank'), known.isNew('b', 'tank')]).toEqual([true, false, true]);
  known.forget();
  expect(known.isNew('a', 'tank')).toBe(true);
});

test('of many sessions and words only so many are held: the others are taken for new', () => {
  const known = knownWords();
  for (let s = 0; s < 400; s += 1) known.isNew(`session-${s}`, 'tank');
  expect([known.isNew('session-399', 'tank'), known.isNew('session-0', 'tank')]).toEqual([false, true]);
  for (let w = 0; w < 600; w += 1) known.isNew('session-1', `word-${w}`);
  expect(known.isNew('session-1', 'word-0')).toBe(true);
});

test('a word of a note that failed with its commit is written with the next that says it', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'soapwater-words-'));
  ends.push(() => rmSync(folder, { recursive: true, force: true }));
  const log = sqliteLog(join(folder, 'log.db'));
  await log.append('session-1', 0, [opened], 5);
  // the second has no blocks: it fails once the words of the first are written
  const bad = { is: 'reply', by: 'soapwater', to: 'note-01', engine: 'test' } as unknown as Draft;
  await expect(log.append('session-1', 1, [remark('zulu at the crimp'), bad], 6, true)).rejects.toThrow(
    /blocks|undefined/,
  );
  expect(await log.sessions({ words: 'zulu' })).toHaveLength(0);
  await log.append('session-1', 1, [remark('zulu at the crimp')], 7);
  expect(await log.sessions({ words: 'zulu' })).toHaveLength(1);
  await log.close();
});
