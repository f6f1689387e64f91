/** A recording against the moment it is put in: nothing of it lies ahead, and an old one is not taken for today's. */
import { expect, test } from 'vitest';
import { noteFromLogger } from '../../server/core/logger-csv.ts';

const now = { minutes: 9 * 60 + 30, date: '2026-11-25' };

test('elapsed times without a start end now, and it is said', () => {
  const { text, said } = noteFromLogger('min,tank psi\n0,112\n10,111\n20,110\n', { now });
  expect(text).toBe('tank\n9:10 112 psi\n9:20 111 psi\n9:30 110 psi');
  expect(said.join(' ')).toContain('taken as of now, so that it began at 9:10');
});

test('a start that was said is kept, and without a moment nothing is put before the note', () => {
  expect(noteFromLogger('min,tank psi\n0,112\n10,111\n', { now, startedAt: 545 }).text).toContain('9:05 112 psi');
  expect(noteFromLogger('min,tank psi\n0,112\n10,111\n', {}).text).not.toContain('9:');
});

test('a recording of another week is refused with its date; last night is taken', () => {
  const file = (date: string): string => `time,tank psi\n${date} 08:00,112\n${date} 08:10,111\n`;
  expect(() => noteFromLogger(file('2026-11-17'), { now })).toThrow(/line 2: the recording is of 2026-11-17/);
  expect(noteFromLogger(file('2026-11-24'), { now }).text).toContain('112 psi');
});
