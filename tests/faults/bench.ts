/** Sessions for tests of the diagnosis: notes read by the reader, folded, weighed; no server. */
import { readFileSync } from 'node:fs';
import { read } from '../../intents/read.ts';
import type { Context } from '../../intents/shapes.ts';
import type { Evidence } from '../../server/faults/evidence.ts';
import { fold } from '../../server/session/fold.ts';
import type { Entry } from '../../server/session/entry.ts';
import type { Standing } from '../../server/session/standing.ts';
import { Sheet } from '../../server/sheet/schema.ts';

export const sheetOf = (id: 'juniper-38' | 'larkfield-11'): Sheet =>
  Sheet.parse(JSON.parse(readFileSync(new URL(`../../fixtures/sheets/${id}.json`, import.meta.url), 'utf8')));

export const juniper = sheetOf('juniper-38');
export const larkfield = sheetOf('larkfield-11');

export const contextFor = (sheet: Sheet, note: string, at: number): Context => ({
  note,
  at,
  zone: 'America/Denver',
  traffic: 'right',
  pressureUnit: sheet.units.pressure,
  lengthUnit: sheet.units.length,
  labels: {},
  open: null,
  recent: [],
});

const minute = 60_000;
const start = Date.UTC(2026, 9, 6, 15, 0);

/** Notes in order, ten minutes apart; `asked`: the check that was on the table before the note of that index. */
export const standingOf = (
  sheet: Sheet,
  notes: readonly string[],
  asked: Readonly<Record<number, string>> = {},
): Standing => {
  const entries: Entry[] = [];
  const put = (entry: object): void => {
    entries.push({ v: 1, session: 'test-session', seq: entries.length + 1, kept: start, by: 'KD', ...entry } as Entry);
  };
  put({ is: 'opened', coach: sheet.id, sheet: 'f'.repeat(64), zone: 'America/Denver' });
  for (const [i, text] of notes.entries()) {
    const id = `note-${String(i).padStart(3, '0')}`;
    const at = start + i * 10 * minute;
    put({ is: 'note', id, text, at, seen: entries.length, read: read(text, contextFor(sheet, id, at)) });
    const next = asked[i + 1];
    put({
      is: 'reply',
      to: id,
      engine: 'test',
      blocks: next ? [{ is: 'check', id: next, words: '', why: '', hands: 1, wait: 0, keys: [] }] : [],
    });
  }
  return fold(entries);
};

export const seen = (see: string, outcome: string, clock = 0, weight = 0.97): Evidence => ({
  see,
  outcome,
  weight,
  because: [`note-${String(clock).padStart(3, '0')}.0`],
  seq: clock,
  words: `${see}: ${outcome}`,
  clock,
});
