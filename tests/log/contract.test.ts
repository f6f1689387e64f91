import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { MessageChannel } from 'node:worker_threads';
import { afterEach, describe, expect, it } from 'vitest';
import { farLog, serveLog } from '../../server/log/far.ts';
import type { Log, SessionLine } from '../../server/log/log.ts';
import { markAfter, noMark } from '../../server/log/mark.ts';
import { memoryLog } from '../../server/log/memory.ts';
import { LogRefused, sqliteLog } from '../../server/log/sqlite.ts';
import type { Draft } from '../../server/session/entry.ts';

const folders: string[] = [];
const open: Log[] = [];
const file = (): string => {
  const folder = mkdtempSync(join(tmpdir(), 'soapwater-log-'));
  folders.push(folder);
  return join(folder, 'soapwater.db');
};
afterEach(async () => {
  for (const log of open.splice(0)) await log.close().catch(() => undefined);
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

const opened: Draft = { is: 'opened', by: 'KD', coach: 'juniper-38', sheet: 'a'.repeat(64), zone: 'America/Denver' };
const note = (id: string, text: string): Extract<Draft, { is: 'note' }> => ({
  is: 'note',
  by: 'KD',
  id,
  text,
  at: 1000,
  seen: 0,
  read: { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] },
});
const reply = (to: string): Draft => ({ is: 'reply', by: 'soapwater', to, engine: 'test', blocks: [] });

const logs: readonly [string, () => Log][] = [
  ['in memory', () => memoryLog()],
  ['in SQLite', () => sqliteLog(file())],
  [
    'across a port',
    () => {
      const { port1, port2 } = new MessageChannel();
      serveLog(port1, sqliteLog(file()));
      const log = farLog(port2);
      return { ...log, close: () => log.close().finally(() => port1.close()) };
    },
  ],
];

describe.each(logs)('the log %s', (_, make) => {
  const fresh = (): Log => {
    const log = make();
    open.push(log);
    return log;
  };

  it('numbers entries without a gap and stamps them', async () => {
    const log = fresh();
    expect(await log.append('session-1', 0, [opened], 5)).not.toBe('moved on');
    expect(await log.append('session-1', 1, [note('note-01', 'a'), reply('note-01')], 6)).not.toBe('moved on');
    expect((await log.read('session-1')).map((e) => [e.seq, e.kept, e.is])).toEqual([
      [1, 5, 'opened'],
      [2, 6, 'note'],
      [3, 6, 'reply'],
    ]);
  });

  it('hands back what it kept, as it is read again and as the text whose mark it has', async () => {
    const log = fresh();
    // an undefined and a minus zero, which the stored text does not hold
    const drafts = [
      { ...opened, practice: undefined },
      { ...note('note-01', 'a'), at: -0 },
      reply('note-01'),
    ] as Draft[];
    const kept = await log.append('session-1', 0, drafts, 5, true);
    if (kept === 'moved on') throw new Error('it had not');
    expect(kept.entries).toStrictEqual(await log.read('session-1'));
    expect(kept.bodies).toEqual(kept.entries.map((e) => JSON.stringify(e)));
    expect(kept.bodies.reduce(markAfter, noMark)).toBe(await log.mark('session-1'));
  });

  it('writes nothing when the session has moved on', async () => {
    const log = fresh();
    await log.append('session-1', 0, [opened], 5);
    expect(await log.append('session-1', 0, [note('note-01', 'a')], 6)).toBe('moved on');
    expect(await log.append('session-1', 2, [note('note-01', 'a')], 6)).toBe('moved on');
    expect(await log.read('session-1')).toHaveLength(1);
  });

  it('keeps nothing that is not of the shape, and no number that is none', async () => {
    const log = fresh();
    await log.append('session-1', 0, [opened], 5);
    const bad: Draft[] = [
      { is: 'remark', by: '', about: 1, text: 'by nobody' },
      { ...note('note-01', 'a'), at: Number.NaN },
      { ...note('note-01', 'a'), at: Number.POSITIVE_INFINITY },
    ];
    for (const draft of bad)
      for (const own of [false, draft.is === 'note'])
        await expect(log.append('session-1', 1, [draft], 6, own)).rejects.toThrow(/by|expected/i);
    expect(await log.read('session-1')).toHaveLength(1);
  });

  it('a draft does not bring its own number, session or time', async () => {
    const log = fresh();
    await log.append('session-1', 0, [{ ...opened, seq: 7, session: 'session-9', kept: 1, v: 3 } as Draft], 5);
    expect(await log.read('session-1')).toMatchObject([{ v: 1, session: 'session-1', seq: 1, kept: 5 }]);
  });

  it('reads on from where a page stands, in pages', async () => {
    const log = fresh();
    await log.append(
      'session-1',
      0,
      [opened, note('note-01', 'a'), reply('note-01'), note('note-02', 'b'), reply('note-02')],
      5,
    );
    expect((await log.read('session-1', 2, 2)).map((e) => e.seq)).toEqual([3, 4]);
  });

  it('finds a note and its reply by the id of the note', async () => {
    const log = fresh();
    await log.append('session-1', 0, [opened, note('note-01', 'a'), reply('note-01')], 5);
    expect((await log.findNote('note-01')).map((e) => e.is)).toEqual(['note', 'reply']);
    expect(await log.findNote('note-99')).toEqual([]);
  });

  it('lists sessions, newest first, and finds them by words and coach', async () => {
    const log = fresh();
    await log.append('session-1', 0, [opened, note('note-01', 'sags overnight'), reply('note-01')], 5);
    await log.append(
      'session-2',
      0,
      [{ ...opened, coach: 'larkfield-11' }, note('note-02', 'pump never stops'), reply('note-02')],
      9,
    );
    expect((await log.sessions()).map((s) => [s.session, s.words])).toEqual([
      ['session-2', 'pump never stops'],
      ['session-1', 'sags overnight'],
    ]);
    expect((await log.sessions({ words: 'overn' })).map((s) => s.session)).toEqual(['session-1']);
    expect((await log.sessions({ words: 'OVERNIGHT, juniper' })).map((s) => s.session)).toEqual(['session-1']);
    expect(await log.sessions({ words: 'overnight larkfield' })).toEqual([]);
    expect((await log.sessions({ coach: 'larkfield-11' })).map((s) => s.session)).toEqual(['session-2']);
    expect(await log.sessions({ words: '"; drop table entries; --' })).toEqual([]);
  });

  it('lists sessions page by page, each once, also those used in the same moment and those found by words', async () => {
    const log = fresh();
    for (let n = 1; n <= 7; n += 1) await log.append(`session-${n}`, 0, [opened], n < 6 ? 5 : n);
    const all = ['session-7', 'session-6', 'session-5', 'session-4', 'session-3', 'session-2', 'session-1'];
    for (const filter of [{}, { words: 'juniper' }, { coach: 'juniper-38' }]) {
      const seen: SessionLine[] = [];
      for (let page = await log.sessions({ ...filter, most: 2 }); page.length > 0;) {
        seen.push(...page);
        const { last, session } = page.at(-1)!;
        page = await log.sessions({ ...filter, most: 2, after: { last, session } });
      }
      expect(seen.map((s) => s.session)).toEqual(all);
    }
  });

  it('knows a closed session and a reopened one', async () => {
    const log = fresh();
    await log.append('session-1', 0, [opened, { is: 'closed', by: 'KD', signed: 'KD', words: '' }], 5);
    expect((await log.sessions())[0]?.closed).toBe(true);
    await log.append('session-1', 2, [{ is: 'reopened', by: 'KD', words: '' }], 6);
    expect((await log.sessions())[0]?.closed).toBe(false);
  });

  it('keeps sheets by their hash and never changes one', async () => {
    const log = fresh();
    await log.putSheet('h1', 'juniper-38', '{"a":1}');
    await log.putSheet('h1', 'juniper-38', '{"a":2}');
    expect(await log.getSheet('h1')).toBe('{"a":1}');
    expect(await log.getSheet('h2')).toBeNull();
  });

  it('gives two sessions the same mark only when they hold the same entries', async () => {
    const log = fresh();
    expect(await log.mark('session-1')).toBe('');
    await log.append('session-1', 0, [opened, note('note-01', 'a'), reply('note-01')], 5);
    const mark = await log.mark('session-1');
    expect(mark).toMatch(/^[0-9a-f]{64}$/);
    const other = fresh();
    await other.append('session-1', 0, [opened], 5);
    expect(await other.mark('session-1')).not.toBe(mark);
    await other.append('session-1', 1, [note('note-01', 'b'), reply('note-01')], 5);
    expect(await other.mark('session-1')).not.toBe(mark);
    const same = fresh();
    await same.append('session-1', 0, [opened, note('note-01', 'a')], 5);
    await same.append('session-1', 2, [reply('note-01')], 5);
    expect(await same.mark('session-1')).toBe(mark);
  });

  it('adopts the entries of another log as they are, and no other', async () => {
    const from = fresh();
    await from.append('session-1', 0, [opened, note('note-01', 'a'), reply('note-01')], 5);
    const bodies = (await from.read('session-1')).map((e) => JSON.stringify(e));
    const to = fresh();
    expect(await to.adopt('session-1', 0, bodies.slice(0, 2))).toBe('kept');
    expect(await to.adopt('session-1', 0, bodies)).toBe('moved on');
    await expect(to.adopt('session-1', 2, bodies.slice(0, 1))).rejects.toThrow('out of its place');
    await expect(to.adopt('session-1', 2, ['{"v":1}'])).rejects.toThrow('not of the shape');
    await expect(to.adopt('session-1', 2, ['{'])).rejects.toThrow('not JSON');
    expect(await to.adopt('session-1', 2, bodies.slice(2))).toBe('kept');
    expect(await to.read('session-1')).toEqual(await from.read('session-1'));
    expect(await to.mark('session-1')).toBe(await from.mark('session-1'));
    expect(await to.sessions()).toEqual(await from.sessions());
    const renamed = bodies.map((b) => b.replace('"session-1"', '"session-2"'));
    await expect(to.adopt('session-2', 0, renamed)).rejects.toThrow('note note-01 stands in the log already');
    expect(await to.read('session-2')).toEqual([]);
  });

  it('refuses an entry that is not of the shape, whole', async () => {
    const log = fresh();
    await log.append('session-1', 0, [opened], 5);
    await expect(
      log.append('session-1', 1, [note('note-01', 'a'), { is: 'note', by: '' } as unknown as Draft], 6),
    ).rejects.toThrow(/by|expected/i);
    expect(await log.read('session-1')).toHaveLength(1);
  });
});

describe('the SQLite file', () => {
  it('is synced in full and held by one process alone', () => {
    const path = file();
    const log = sqliteLog(path);
    open.push(log);
    expect(log.pragmas()).toMatchObject({ synchronous: 2, locking_mode: 'exclusive', user_version: 2 });
    expect(() => sqliteLog(path)).toThrow('held by another soapwater');
  });

  it('is there after a restart', async () => {
    const path = file();
    const first = sqliteLog(path);
    await first.append('session-1', 0, [opened, note('note-01', 'a'), reply('note-01')], 5);
    await first.close();
    const second = sqliteLog(path);
    open.push(second);
    expect(await second.read('session-1')).toHaveLength(3);
  });

  it('says in words that a file is damaged', async () => {
    const { writeFileSync } = await import('node:fs');
    const path = file();
    writeFileSync(path, 'this is no database, and long enough to be looked at as one'.repeat(40));
    expect(() => sqliteLog(path)).toThrow(LogRefused);
    expect(() => sqliteLog(path)).toThrow('damaged');
  });

  it('refuses a file of a newer format', async () => {
    const path = file();
    const { default: Database } = await import('better-sqlite3');
    const db = new Database(path);
    db.pragma('user_version = 99');
    db.close();
    expect(() => sqliteLog(path)).toThrow('newer soapwater');
  });
});
