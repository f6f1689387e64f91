/** What a disk does to a log, and what the log then says. */
import { spawnSync } from 'node:child_process';
import { chmodSync, copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import Database from 'better-sqlite3';
import { makeDesk } from '../../server/desk.ts';
import { logVersion } from '../../server/log/format.ts';
import { LogRefused } from '../../server/log/refused.ts';
import { type FileLog, sqliteLog } from '../../server/log/sqlite.ts';
import type { Draft, Entry } from '../../server/session/entry.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { transcriptOf } from './transcript.ts';
import { sheetHash, writtenV1 } from './written.ts';

const logs = new URL('../../fixtures/logs/', import.meta.url);
const ends: (() => void | Promise<void>)[] = [];
afterEach(async () => {
  for (const end of ends.splice(0).toReversed()) await end();
});
const folder = (): string => {
  const made = mkdtempSync(join(tmpdir(), 'soapwater-trouble-'));
  ends.push(() => rmSync(made, { recursive: true, force: true }));
  return made;
};
const opened = (file: string): FileLog => {
  const log = sqliteLog(file);
  ends.push(() => log.close());
  return log;
};
const refusal = async (work: () => unknown): Promise<string> => {
  try {
    await work();
  } catch (error) {
    if (error instanceof LogRefused) return error.message;
    throw error;
  }
  return 'taken';
};

const note = (id: string, text: string): Draft[] => [
  {
    is: 'note',
    by: 'KD',
    id,
    text,
    at: 1000,
    seen: 0,
    read: { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] },
  },
  { is: 'reply', by: 'soapwater', to: id, engine: 'test', blocks: [] },
];
const filled = async (log: FileLog, sessions = 4, notes = 12): Promise<void> => {
  for (let s = 0; s < sessions; s += 1) {
    const drafts: Draft[] = [{ is: 'opened', by: 'KD', coach: 'juniper-38', sheet: sheetHash, zone: 'UTC' }];
    for (let n = 0; n < notes; n += 1) drafts.push(...note(`note-${s}-${n}`, `tank ${n} psi, session ${s} note ${n}`));
    await log.append(`session-${s}`, 0, drafts, 1000 + s);
  }
};
const names = [0, 1, 2, 3].map((s) => `session-${s}`);

/** Words by which the session of each old log is found. */
const wordsIn: Readonly<Record<string, string>> = { 'v1.db': 'overniht level', 'v2.db': 'fixed bellows tape' };

describe('a log of an older format', () => {
  it('has one written by this format', () => {
    expect(readdirSync(logs)).toContain(`v${logVersion}.db`);
    expect(Object.keys(wordsIn)).toEqual(readdirSync(logs).filter((f) => f.endsWith('.db')));
  });

  it('opens at the desk, and goes on', async () => {
    const file = join(folder(), 'soapwater.db');
    copyFileSync(new URL('v2.db', logs), file);
    const sheet = loadSheet(readFileSync(new URL('../sheets/juniper-38.json', logs), 'utf8'), 'juniper-38');
    const desk = makeDesk({
      log: opened(file),
      // on offer today may be another sheet: the session keeps its own
      sheets: new Map(),
      engine: 'later',
      now: () => Date.UTC(2026, 9, 7, 18, 0),
    });
    const board = await desk.board('kept-for-later');
    expect(board.seq).toBe(28);
    expect(board.coach).toBe(sheet.sheet.coach);
    expect(board.latest.find((l) => l.key === 'pressure@tank')?.text).toContain('114');
    const more = { id: 'later-note-1', text: 'tank 112', at: Date.UTC(2026, 9, 7, 18, 0), seen: 28, by: 'KD' };
    expect((await desk.note('kept-for-later', more)).map((e) => e.seq)).toEqual([29, 30]);
  });

  it.each(readdirSync(logs).filter((f) => f.endsWith('.db')))(
    '%s opens with every entry word for word',
    async (name) => {
      const file = join(folder(), 'soapwater.db');
      copyFileSync(new URL(name, logs), file);
      const log = opened(file);
      const wanted = JSON.parse(readFileSync(new URL(name.replace('.db', '.json'), logs), 'utf8')) as Entry[];
      const session = wanted[0]!.session;
      const read = await log.read(session);
      expect(read).toEqual(wanted);
      // the words as they were shown, line for line
      expect(transcriptOf(read)).toBe(readFileSync(new URL(name.replace('.db', '.txt'), logs), 'utf8'));
      expect(log.check()).toEqual({ sessions: 1, entries: wanted.length });
      expect((await log.sessions({ words: wordsIn[name]! })).map((s) => s.session)).toEqual([session]);
      const first = wanted[0];
      expect(first?.is === 'opened' && (await log.getSheet(first.sheet))).toBeTruthy();
      expect(await log.append(session, wanted.length, note('added-later', 'tank 90 psi'), 9)).not.toBe('moved on');
    },
  );

  it('is copied beside itself before it is changed', () => {
    const at = folder();
    const file = join(at, 'soapwater.db');
    copyFileSync(new URL('v1.db', logs), file);
    opened(file);
    const copy = readdirSync(at).find((f) => f.startsWith('soapwater.db.format-1-'));
    const db = new Database(join(at, copy!), { readonly: true });
    expect(db.pragma('user_version', { simple: true })).toBe(1);
    expect(db.prepare('SELECT count(*) FROM entries').pluck().get()).toBe(writtenV1.flat().length);
    db.close();
  });
});

describe('a damaged log', () => {
  it('is refused at start, or at the entry that is damaged; never read as something else', async () => {
    const at = folder();
    const whole = join(at, 'whole.db');
    const first = sqliteLog(whole);
    await filled(first);
    const wanted = await Promise.all(names.map((n) => first.read(n)));
    await first.close();
    const bytes = readFileSync(whole);
    let random = 20_261_125;
    const next = (below: number): number => {
      random = (Math.imul(random, 1_664_525) + 1_013_904_223) >>> 0;
      return random % below;
    };
    const outcomes = { refused: 0, 'refused an entry': 0, 'not touched': 0 };
    for (let i = 0; i < 60; i += 1) {
      const hurt = Buffer.from(bytes);
      const count = 1 + next(40);
      const from = next(hurt.length - count);
      for (let b = 0; b < count; b += 1) hurt[from + b] = next(256);
      const file = join(at, `hurt-${i}.db`);
      writeFileSync(file, i % 10 === 9 ? hurt.subarray(0, from) : hurt);
      let outcome: keyof typeof outcomes = 'not touched';
      let log: FileLog | undefined;
      try {
        log = sqliteLog(file);
        for (const [n, name] of names.entries()) {
          const got = await log.read(name);
          // a session whose row is gone is found by the whole check
          if (JSON.stringify(got) !== JSON.stringify(wanted[n])) log.check();
          expect(got).toEqual(wanted[n]);
        }
      } catch (error) {
        if (!(error instanceof LogRefused)) throw error;
        outcome = log ? 'refused an entry' : 'refused';
      }
      await log?.close();
      outcomes[outcome] += 1;
    }
    expect(outcomes.refused).toBeGreaterThan(5);
    expect(outcomes['refused an entry']).toBeGreaterThan(5);
  });

  it('names the entry that somebody changed by hand', async () => {
    const file = join(folder(), 'soapwater.db');
    const first = sqliteLog(file);
    await filled(first);
    await first.close();
    const db = new Database(file);
    db.exec(
      `UPDATE entries SET body = replace(body, 'tank 3 psi', 'tank 9 psi') WHERE session = 'session-2' AND seq = 8`,
    );
    db.close();
    const log = opened(file);
    expect(await log.read('session-1')).toHaveLength(25);
    expect(await refusal(() => log.read('session-2'))).toContain('entry 8 of session-2 is not what was kept');
    expect(await refusal(() => log.check())).toContain('entry 8 of session-2');
  });

  it('finds an entry taken out at the end', async () => {
    const file = join(folder(), 'soapwater.db');
    const first = sqliteLog(file);
    await filled(first);
    await first.close();
    const db = new Database(file);
    db.exec(`DELETE FROM entries WHERE session = 'session-2' AND seq > 20`);
    db.close();
    expect(await refusal(() => opened(file).check())).toContain('session session-2 of');
  });
});

describe('a full disk', () => {
  it('refuses the note whole, keeps all that was kept, and goes on when there is room', async () => {
    const at = folder();
    const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', at]).status === 0;
    if (mounted) ends.push(() => void spawnSync('umount', [at]));
    const file = join(at, 'soapwater.db');
    // where no small disk may be mounted, the database is told to be full: the same SQLITE_FULL from the same commit
    let log = mounted ? opened(file) : sqliteLog(file, { pages: 80 });
    await filled(log, 1, 1);
    let kept = 3;
    let words = '';
    for (let i = 0; words === '' && i < 400; i += 1) {
      words = await refusal(async () => {
        if ((await log.append('session-0', kept, note(`full-note-${i}`, 'x'.repeat(4000)), 5)) !== 'moved on')
          kept += 2;
      });
      if (words === 'taken') words = '';
    }
    expect(words).toMatch(/^the disk of the log .* is full: make room, then send it again$/);
    expect(kept).toBeGreaterThan(20);
    expect(await log.read('session-0')).toHaveLength(kept);
    if (mounted) spawnSync('mount', ['-o', 'remount,size=4m', at]);
    else {
      await log.close();
      log = opened(file);
    }
    expect(await log.append('session-0', kept, note('after-full', 'tank 95 psi'), 6)).not.toBe('moved on');
    expect(log.check()).toEqual({ sessions: 1, entries: kept + 2 });
  });
});

/** Makes `file` unwritable and says how to undo it; null where this user is stopped by nothing. */
const readOnly = (file: string): (() => void) | null => {
  if (process.getuid?.() !== 0) {
    chmodSync(file, 0o444);
    return () => chmodSync(file, 0o644);
  }
  // nothing but the file system stops root
  if (spawnSync('mount', ['--bind', file, file]).status !== 0) return null;
  const undo = (): void => void spawnSync('umount', [file]);
  if (spawnSync('mount', ['-o', 'remount,bind,ro', file]).status === 0) return undo;
  undo();
  return null;
};

describe('a log file that may only be read', () => {
  it('is refused at start in one line that says what to do, and is left as it was', async (context) => {
    const file = join(folder(), 'soapwater.db');
    const log = sqliteLog(file);
    await filled(log, 1, 2);
    await log.close();
    const bytes = readFileSync(file);
    const undo = readOnly(file);
    if (!undo) return context.skip('this user may mount nothing and is stopped by no file mode');
    const words = await refusal(() => void sqliteLog(file));
    undo();
    expect(words).toMatch(/^the log .* cannot be written: make the file and its folder writable$/);
    expect(readFileSync(file).equals(bytes)).toBe(true);
    expect(opened(file).check()).toEqual({ sessions: 1, entries: 5 });
  });
});
