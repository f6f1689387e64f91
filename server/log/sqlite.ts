/**
 * The log in one SQLite file: the only place where the database is touched. One process holds the file (exclusive
 * lock); every append is one transaction, synced to the disk before it returns.
 */
import Database from 'better-sqlite3';
import { Entry } from '../session/entry.ts';
import type { Log, SessionLine } from './log.ts';

/** The log cannot be opened or trusted: `words` say it to a person in one line. */
export class LogRefused extends Error {
  constructor(words: string, cause?: unknown) {
    super(words, { cause });
    this.name = 'LogRefused';
  }
}

/** Format of the file. Each step brings a file of the version before it up; never changed once landed. */
const migrations: readonly string[] = [
  `CREATE TABLE entries (session TEXT NOT NULL, seq INTEGER NOT NULL, kept INTEGER NOT NULL, note TEXT, body TEXT NOT NULL, PRIMARY KEY (session, seq)) WITHOUT ROWID;
   CREATE INDEX entries_note ON entries (note) WHERE note IS NOT NULL;
   CREATE TABLE sessions (session TEXT PRIMARY KEY, coach TEXT NOT NULL, opened INTEGER NOT NULL, last INTEGER NOT NULL, seq INTEGER NOT NULL, closed INTEGER NOT NULL, practice INTEGER NOT NULL, words TEXT NOT NULL, told INTEGER NOT NULL) WITHOUT ROWID;
   CREATE INDEX sessions_last ON sessions (last);
   CREATE INDEX sessions_coach ON sessions (coach, last);
   CREATE TABLE sheets (hash TEXT PRIMARY KEY, coach TEXT NOT NULL, json TEXT NOT NULL) WITHOUT ROWID;
   CREATE VIRTUAL TABLE words USING fts5 (session UNINDEXED, text, tokenize = 'unicode61');`,
];
export const logVersion = migrations.length;

const reason = (error: unknown, file: string): string => {
  const code = error instanceof Database.SqliteError ? error.code : ((error as { code?: string }).code ?? '');
  if (/SQLITE_BUSY|SQLITE_LOCKED/.test(code))
    return `the log ${file} is held by another soapwater: stop that one first`;
  if (/SQLITE_NOTADB|SQLITE_CORRUPT/.test(code))
    return `the log ${file} is damaged: restore a backup, or move it away to start anew`;
  if (/SQLITE_READONLY|SQLITE_CANTOPEN|EACCES|EROFS/.test(code)) return `the log ${file} cannot be written`;
  if (/SQLITE_FULL|ENOSPC/.test(code)) return `the disk of the log ${file} is full`;
  return `the log ${file} cannot be opened: ${error instanceof Error ? error.message : String(error)}`;
};

type Row = { body: string };
type Line = Omit<SessionLine, 'closed' | 'practice'> & { closed: number; practice: number };

/** Opens, checks and brings up the file. Raises LogRefused. */
export const sqliteLog = (
  file: string,
): Log & { readonly pragmas: () => Record<string, unknown>; readonly backup: (to: string) => Promise<void> } => {
  let db: Database.Database;
  try {
    db = new Database(file, { timeout: 250 });
    db.pragma('locking_mode = EXCLUSIVE');
    db.pragma('journal_mode = WAL');
    db.pragma('synchronous = FULL');
    db.pragma('foreign_keys = ON');
    db.pragma('wal_autocheckpoint = 400');
    // an exclusive lock is taken by the first write
    db.exec('BEGIN IMMEDIATE; COMMIT');
    if (db.pragma('quick_check(1)', { simple: true }) !== 'ok')
      throw new LogRefused(`the log ${file} is damaged: restore a backup, or move it away to start anew`);
    const version = db.pragma('user_version', { simple: true }) as number;
    if (version > migrations.length)
      throw new LogRefused(
        `the log ${file} was written by a newer soapwater (format ${version}, this one knows ${migrations.length})`,
      );
    for (let v = version; v < migrations.length; v += 1)
      db.transaction(() => {
        db.exec(migrations[v]!);
        db.pragma(`user_version = ${v + 1}`);
      })();
    if (db.pragma('synchronous', { simple: true }) !== 2)
      throw new LogRefused(`the log ${file} would not be synced to the disk`);
  } catch (error) {
    if (error instanceof LogRefused) throw error;
    throw new LogRefused(reason(error, file), error);
  }

  const lastSeq = db.prepare('SELECT seq FROM sessions WHERE session = ?').pluck();
  const insert = db.prepare('INSERT INTO entries (session, seq, kept, note, body) VALUES (?, ?, ?, ?, ?)');
  const open = db.prepare("INSERT INTO sessions VALUES (@session, @coach, @kept, @kept, @seq, 0, @practice, '', 0)");
  const touch = db.prepare('UPDATE sessions SET last = @kept, seq = @seq WHERE session = @session');
  const setClosed = db.prepare('UPDATE sessions SET closed = @closed WHERE session = @session');
  const setWords = db.prepare(
    'UPDATE sessions SET words = @words, told = @told WHERE session = @session AND told < @told',
  );
  const addWords = db.prepare('INSERT INTO words (session, text) VALUES (?, ?)');
  const readRows = db.prepare<[string, number, number], Row>(
    'SELECT body FROM entries WHERE session = ? AND seq > ? ORDER BY seq LIMIT ?',
  );
  const noteRows = db.prepare<[string], Row>('SELECT body FROM entries WHERE note = ? ORDER BY seq');
  const putSheet = db.prepare('INSERT OR IGNORE INTO sheets (hash, coach, json) VALUES (?, ?, ?)');
  const getSheet = db.prepare('SELECT json FROM sheets WHERE hash = ?').pluck();

  const append = db.transaction((session: string, after: number, stamped: readonly Entry[]): 'kept' | 'moved on' => {
    if (((lastSeq.get(session) as number | undefined) ?? 0) !== after) return 'moved on';
    for (const entry of stamped) {
      const { seq, kept } = entry;
      insert.run(
        session,
        seq,
        kept,
        entry.is === 'note' ? entry.id : entry.is === 'reply' ? entry.to : null,
        JSON.stringify(entry),
      );
      if (entry.is === 'opened') open.run({ session, coach: entry.coach, kept, seq, practice: entry.practice ? 1 : 0 });
      else touch.run({ session, kept, seq });
      if (entry.is === 'closed' || entry.is === 'reopened')
        setClosed.run({ session, closed: entry.is === 'closed' ? 1 : 0 });
      if (entry.is === 'note') {
        addWords.run(session, entry.text);
        setWords.run({ session, words: entry.text, told: entry.read.facts.some((f) => f.is === 'sign') ? 2 : 1 });
      }
      if (entry.is === 'remark') addWords.run(session, entry.text);
      if (entry.is === 'opened') addWords.run(session, entry.coach);
      if (entry.is === 'reply')
        for (const block of entry.blocks) if (block.is === 'findings') addWords.run(session, block.words);
    }
    return 'kept';
  });

  const query = (words: string): string =>
    words
      .split(/[^\p{L}\p{N}]+/u)
      .filter(Boolean)
      .slice(0, 12)
      .map((w) => `"${w}"*`)
      .join(' ');

  return {
    append: async (session, after, drafts, kept) =>
      append(
        session,
        after,
        drafts.map((draft, i) => Entry.parse({ ...draft, v: 1, session, seq: after + i + 1, kept })),
      ),
    read: async (session, after = 0, most = 1_000_000) =>
      readRows.all(session, after, most).map((r) => JSON.parse(r.body) as Entry),
    findNote: async (id) => noteRows.all(id).map((r) => JSON.parse(r.body) as Entry),
    sessions: async (filter = {}) => {
      const words = query(filter.words ?? '');
      const where = ['1'];
      const values: unknown[] = [];
      if (filter.coach !== undefined) {
        where.push('coach = ?');
        values.push(filter.coach);
      }
      if (filter.practice !== undefined) {
        where.push('practice = ?');
        values.push(filter.practice ? 1 : 0);
      }
      if (words !== '') {
        where.push('session IN (SELECT session FROM words WHERE words MATCH ?)');
        values.push(words);
      }
      const rows = db
        .prepare<unknown[], Line>(
          `SELECT session, coach, opened, last, seq, closed, practice, words FROM sessions WHERE ${where.join(' AND ')} ORDER BY last DESC LIMIT ?`,
        )
        .all(...values, filter.most ?? 100);
      return rows.map((r) => ({ ...r, closed: r.closed === 1, practice: r.practice === 1 }));
    },
    putSheet: async (hash, coach, json) => {
      putSheet.run(hash, coach, json);
    },
    getSheet: async (hash) => (getSheet.get(hash) as string | undefined) ?? null,
    close: async () => {
      db.close();
    },
    backup: async (to) => {
      await db.backup(to);
    },
    pragmas: () => ({
      synchronous: db.pragma('synchronous', { simple: true }),
      locking_mode: db.pragma('locking_mode', { simple: true }),
      journal_mode: db.pragma('journal_mode', { simple: true }),
      user_version: db.pragma('user_version', { simple: true }),
    }),
  };
};
