/** Format of the log's file, version by version. A step is never changed once a file was written by it. */
import type { Database } from 'better-sqlite3';
import type { Entry } from '../session/entry.ts';
import { markAfter, noMark } from './mark.ts';
import { LogRefused } from './refused.ts';
import { wordsOf } from './words.ts';

type Row = { session: string; seq: number; body: string };

/** Marks over the entries, and one row for a word of a session in place of the full text of each note. */
const toVersion2 = (db: Database): void => {
  db.exec(`ALTER TABLE entries ADD COLUMN mark TEXT NOT NULL DEFAULT '';
    ALTER TABLE sessions ADD COLUMN mark TEXT NOT NULL DEFAULT '';
    DROP TABLE words;
    CREATE TABLE words (word TEXT NOT NULL, session TEXT NOT NULL, PRIMARY KEY (word, session)) WITHOUT ROWID;`);
  const setMark = db.prepare('UPDATE entries SET mark = ? WHERE session = ? AND seq = ?');
  const setLast = db.prepare('UPDATE sessions SET mark = ? WHERE session = ?');
  const addWord = db.prepare('INSERT OR IGNORE INTO words VALUES (?, ?)');
  const sessions = db.prepare('SELECT session FROM sessions').pluck().all() as string[];
  const rows = db.prepare<[string], Row>('SELECT session, seq, body FROM entries WHERE session = ? ORDER BY seq');
  for (const session of sessions) {
    let mark = noMark;
    for (const { seq, body } of rows.all(session)) {
      mark = markAfter(mark, body);
      setMark.run(mark, session, seq);
      for (const word of wordsOf(JSON.parse(body) as Entry)) addWord.run(word, session);
    }
    setLast.run(mark, session);
  }
};

const steps: readonly ((db: Database) => void)[] = [
  (db) =>
    db.exec(`CREATE TABLE entries (session TEXT NOT NULL, seq INTEGER NOT NULL, kept INTEGER NOT NULL, note TEXT, body TEXT NOT NULL, PRIMARY KEY (session, seq)) WITHOUT ROWID;
   CREATE INDEX entries_note ON entries (note) WHERE note IS NOT NULL;
   CREATE TABLE sessions (session TEXT PRIMARY KEY, coach TEXT NOT NULL, opened INTEGER NOT NULL, last INTEGER NOT NULL, seq INTEGER NOT NULL, closed INTEGER NOT NULL, practice INTEGER NOT NULL, words TEXT NOT NULL, told INTEGER NOT NULL) WITHOUT ROWID;
   CREATE INDEX sessions_last ON sessions (last);
   CREATE INDEX sessions_coach ON sessions (coach, last);
   CREATE TABLE sheets (hash TEXT PRIMARY KEY, coach TEXT NOT NULL, json TEXT NOT NULL) WITHOUT ROWID;
   CREATE VIRTUAL TABLE words USING fts5 (session UNINDEXED, text, tokenize = 'unicode61');`),
  toVersion2,
];
export const logVersion = steps.length;

/** Brings `db` up to `logVersion`; an old file is first copied beside itself. Raises LogRefused for a newer one. */
export const bringUp = (db: Database, file: string): void => {
  const version = db.pragma('user_version', { simple: true }) as number;
  if (version > logVersion)
    throw new LogRefused(
      `the log ${file} was written by a newer soapwater (format ${version}, this one knows ${logVersion})`,
    );
  if (version > 0 && version < logVersion) db.prepare('VACUUM INTO ?').run(`${file}.format-${version}-${Date.now()}`);
  for (let v = version; v < logVersion; v += 1)
    db.transaction(() => {
      steps[v]!(db);
      db.pragma(`user_version = ${v + 1}`);
    })();
};
