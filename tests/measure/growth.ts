/** What a note, a list and a search cost when the log has grown, beside a young log. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readFileSync } from 'node:fs';
import { makeDesk } from '../../server/desk.ts';
import { sqliteLog } from '../../server/log/sqlite.ts';
import type { Draft } from '../../server/session/entry.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { root } from '../start/server.ts';
import { line, ms, percentile, timed } from './clock.ts';

const sheets = new Map([
  ['juniper-38', loadSheet(readFileSync(join(root, 'fixtures/sheets/juniper-38.json'), 'utf8'), 'juniper-38')],
]);
const empty = { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] };

const costs = async (sessions: number, notes: number): Promise<Record<string, number>> => {
  const folder = mkdtempSync(join(tmpdir(), 'soapwater-growth-'));
  const log = sqliteLog(join(folder, 'log.db'));
  for (let s = 0; s < sessions; s += 1) {
    const drafts: Draft[] = [
      { is: 'opened', by: 'MM', coach: 'juniper-38', sheet: sheets.get('juniper-38')!.hash, zone: 'UTC' },
    ];
    for (let n = 0; n < notes; n += 1) {
      const id = `grow-${s}-${n}`;
      drafts.push(
        {
          is: 'note',
          by: 'MM',
          id,
          text: `tank ${80 + (n % 30)} psi word${(s * 7 + n) % 900}`,
          at: n,
          seen: 0,
          read: empty,
        },
        { is: 'reply', by: 'soapwater', to: id, engine: 'x', blocks: [] },
      );
    }
    await log.append(`grow-${s}`, 0, drafts, s + 1);
  }
  const desk = makeDesk({ log, sheets, engine: 'x', now: Date.now });
  await desk.open({ session: 'probe-session', coach: 'juniper-38', by: 'MM' });
  const texts = ['tank 95 psi', 'left rear 13 1/4', 'comp off'];
  const note = await timed(120, (i) =>
    desk.note('probe-session', { id: `probe-note-${i}`, text: texts[i % 3]!, at: Date.now(), seen: 9999, by: 'MM' }),
  );
  const list = await timed(60, () => desk.sessions({}));
  const search = await timed(60, (i) => desk.sessions({ words: `word${i * 11}` }));
  await log.close();
  rmSync(folder, { recursive: true, force: true });
  return { note: percentile(note.slice(10, 40), 50), list: percentile(list, 50), search: percentile(search, 50) };
};

export const measureGrowth = async (): Promise<void> => {
  const young = await costs(5, 10);
  const old = await costs(2000, 25);
  for (const what of ['note', 'list', 'search'])
    line(
      `${what}, log of 100,000 entries`,
      ms(old[what]!),
      `log of 100: ${ms(young[what]!)}, ${(old[what]! / young[what]!).toFixed(1)} times`,
      'what it cost at 100',
    );
};
