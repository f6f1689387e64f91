/**
 * Writes a log of today's format with today's replies into fixtures/logs, beside its entries and its transcript:
 * node tests/tools/bundle.mjs tests/tools/write-log.ts. A log that was written is never written again.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeDesk } from '../../server/desk.ts';
import { logVersion } from '../../server/log/format.ts';
import { sqliteLog } from '../../server/log/sqlite.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { transcriptOf } from '../log/transcript.ts';

const root = process.env['SOAPWATER_ROOT'] ?? '.';
const at = (ending: string): string => join(root, 'fixtures', 'logs', `v${logVersion}.${ending}`);
if (existsSync(at('db'))) {
  console.error(`soapwater: ${at('db')} stands already; logs that were written stay as they are`);
  process.exit(1);
}

const notes = [
  'coach sags overnight, left side worst',
  'tank 112 at 11:05, 104 at 11:35, comp off, panel LOCK',
  'LR 13 1/4 RR 14',
  'make that 105',
  'bubbles at lh bag crimp, none on the right',
  'what does cut-in mean',
  'going under to look, not on stands',
  'on stands, wheels chocked',
  'replaced the left bellows',
  'owner says it was “fixed” last year <b>&',
  'undo',
  'tank 114, one hour later 114',
];
let clock = Date.UTC(2026, 9, 6, 18, 0);
const log = sqliteLog(at('db'));
const sheet = loadSheet(readFileSync(join(root, 'fixtures/sheets/juniper-38.json'), 'utf8'), 'juniper-38');
const desk = makeDesk({
  log,
  sheets: new Map([['juniper-38', sheet]]),
  engine: `format-${logVersion}`,
  now: () => clock,
});
const session = 'kept-for-later';
await desk.open({ session, coach: 'juniper-38', by: 'KD' });
for (const [n, text] of notes.entries()) {
  clock += 4 * 60_000;
  const { seq } = await desk.standing(session);
  await desk.note(session, { id: `kept-note-${n}`, text, at: clock, seen: seq, by: 'KD' });
}
await desk.remark(session, 6, 'Tape was checked in May.', 'RV');
await desk.close(session, 'KD', 'level, tight and dry');
await desk.reopen(session, 'came back a week later', 'KD');
const entries = await desk.read(session);
writeFileSync(at('json'), `${JSON.stringify(entries, null, 1)}\n`);
writeFileSync(at('txt'), transcriptOf(entries));
await log.close();
