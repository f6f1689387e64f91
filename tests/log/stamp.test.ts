/**
 * Note and reply are not held to their shape each time one is kept: here all that the program makes of every note in the
 * fixtures is, and loses nothing by it.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { makeDesk } from '../../server/desk.ts';
import { memoryLog } from '../../server/log/memory.ts';
import { Entry } from '../../server/session/entry.ts';
import { loadSheet } from '../../server/sheet/load.ts';

const folder = new URL('../../fixtures/', import.meta.url);
const text = (path: string): string => readFileSync(new URL(path, folder), 'utf8');
const coaches = ['juniper-38', 'larkfield-11'] as const;
const sheets = new Map(coaches.map((id) => [id, loadSheet(text(`sheets/${id}.json`), id)] as const));
const files = readdirSync(new URL('notes/', folder)).filter((f) => f.endsWith('.jsonl'));
const asSession = 30;

test.each(files)(
  'entries made of the notes in %s are of their shape, nothing missing, nothing more',
  async (file) => {
    const notes = text(`notes/${file}`)
      .split('\n')
      .filter(Boolean)
      .map((line) => (JSON.parse(line) as { note: string }).note);
    const desk = makeDesk({ log: memoryLog(), sheets, engine: 'test', now: () => 1_790_000_000_000 });
    let session = '';
    for (const [i, note] of notes.entries()) {
      if (i % asSession === 0) {
        session = `session-${i}`;
        await desk.open({ session, coach: coaches[(i / asSession) % 2]!, by: 'KD' });
      }
      await desk.note(session, { id: `stamp-${i}-note`, text: note, at: 1_790_000_000_000, seen: 9999, by: 'KD' });
      for (const entry of await desk.read(session, 1 + 2 * (i % asSession)))
        expect(Entry.parse(entry), note).toStrictEqual(entry);
    }
  },
  60_000,
);

test('so are those of a practice session', async () => {
  const desk = makeDesk({ log: memoryLog(), sheets, engine: 'test', now: () => 1_790_000_000_000, seed: () => 11 });
  await desk.open({ session: 'practice', coach: 'juniper-38', by: 'KD', practice: 2 });
  for (const [i, note] of ['read tank', 'soap left crimp', 'wait 20 min', 'hint', 'reveal'].entries())
    await desk.note('practice', { id: `stamp-${i}-note`, text: note, at: 1_790_000_000_000, seen: 9999, by: 'KD' });
  const entries = await desk.read('practice');
  expect(entries).toHaveLength(13);
  for (const entry of entries) expect(Entry.parse(entry)).toStrictEqual(entry);
});
