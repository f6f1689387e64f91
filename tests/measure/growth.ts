/** What a note, opening, a list and a search cost when the log has grown, beside a young log. Sessions of real replies. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readFileSync } from 'node:fs';
import { pageOfSessions } from '../../server/chat/protocol.ts';
import { makeDesk } from '../../server/desk.ts';
import { memoryLog } from '../../server/log/memory.ts';
import { sqliteLog } from '../../server/log/sqlite.ts';
import type { Draft } from '../../server/session/entry.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { root } from '../start/server.ts';
import { line, ms, percentile, timed } from './clock.ts';

const sheets = new Map([
  ['juniper-38', loadSheet(readFileSync(join(root, 'fixtures/sheets/juniper-38.json'), 'utf8'), 'juniper-38')],
]);

/** Drafts of one session as the program itself writes it; "growname" stands where its ids differ. */
const written = async (notes: number): Promise<string> => {
  const desk = makeDesk({ log: memoryLog(), sheets, engine: 'x', now: Date.now });
  await desk.open({ session: 'growth', coach: 'juniper-38', by: 'MM' });
  const texts = ['sags overnight', 'tank 95 psi', 'left rear 13 1/4', 'comp off', 'panel shut', 'tank 93'];
  for (let n = 0; n < notes; n += 1)
    await desk.note('growth', { id: `growname-${n}`, text: texts[n % 6]!, at: Date.now(), seen: 999, by: 'MM' });
  return JSON.stringify(await desk.read('growth'));
};

const costs = async (sessions: number, notes: number): Promise<Record<string, number>> => {
  const folder = mkdtempSync(join(tmpdir(), 'soapwater-growth-'));
  const log = sqliteLog(join(folder, 'log.db'));
  const body = await written(notes);
  for (let s = 0; s < sessions; s += 1) {
    // its own words besides, so that a search finds few of them
    const drafts = JSON.parse(
      body.replaceAll('growname', `grow-${s}`).replaceAll('"sags overnight"', `"sags overnight word${s % 900}"`),
    ) as Draft[];
    await log.append(`grow-${s}`, 0, drafts, s + 1);
  }
  const desk = makeDesk({ log, sheets, engine: 'x', now: Date.now });
  await desk.open({ session: 'probe-session', coach: 'juniper-38', by: 'MM' });
  const texts = ['tank 95 psi', 'left rear 13 1/4', 'comp off'];
  const note = await timed(120, (i) =>
    desk.note('probe-session', { id: `probe-note-${i}`, text: texts[i % 3]!, at: Date.now(), seen: 9999, by: 'MM' }),
  );
  // as the socket asks
  const most = pageOfSessions + 1;
  const list = await timed(60, () => desk.sessions({ most }));
  const search = await timed(60, (i) => desk.sessions({ words: `word${i * 11}`, most }));
  const common = await timed(60, (i) => desk.sessions({ words: ['tank', 'panel', 'overnight'][i % 3]!, most }));
  // by a desk that has not seen it: read, folded and shown
  const opening = await timed(40, async (i) => {
    const cold = makeDesk({ log, sheets, engine: 'x', now: Date.now });
    const session = `grow-${(i * 37) % sessions}`;
    await cold.board(session);
    await cold.read(session);
  });
  await log.close();
  rmSync(folder, { recursive: true, force: true });
  return {
    note: percentile(note.slice(10, 40), 50),
    opening: percentile(opening, 50),
    list: percentile(list, 50),
    search: percentile(search, 50),
    'search of a common word': percentile(common, 50),
  };
};

export const measureGrowth = async (): Promise<void> => {
  // notes and openings beside a log of 100 entries, what is listed beside one of 100 sessions
  const young = await costs(2, 25);
  const middle = await costs(100, 25);
  const old = await costs(2000, 25);
  for (const [what, from, name] of [
    ['note', young, '100 entries'],
    ['opening', young, '100 entries'],
    ['list', middle, '100 sessions'],
    ['search', middle, '100 sessions'],
    ['search of a common word', middle, '100 sessions'],
  ] as const)
    line(
      `${what}, 2,000 sessions, 100,000 entries`,
      ms(old[what]!),
      `${name}: ${ms(from[what]!)}, ${(old[what]! / from[what]!).toFixed(1)} times`,
      'what it cost then',
    );
};
