/**
 * The log in one SQLite file: the only place where the database is touched. One process holds the file (exclusive
 * lock); every append is one transaction, synced to the disk before it returns.
 */
import { accessSync, constants, existsSync, statSync } from 'node:fs';
import Database from 'better-sqlite3';
import type { Entry } from '../session/entry.ts';
import { adopted } from './adopted.ts';
import { bringUp } from './format.ts';
import { makeGroup } from './group.ts';
import { knownWords } from './known-words.ts';
import type { Log, SessionLine } from './log.ts';
import { markAfter, noMark } from './mark.ts';
import { LogRefused, refusedBy } from './refused.ts';
import { type Stamped, stampedAs } from './stamp.ts';
import { mostWords, splitWords, wordsOf } from './words.ts';

export { LogRefused };

/** Up to this size the whole file is checked at each start; above it only after a start that did not end by itself. */
const checkedAlways = 32 * 1024 * 1024;
const wholeRead = 1_000_000;

const parsed = (body: string): Entry => JSON.parse(body) as Entry;

const damaged = (file: string): LogRefused =>
  new LogRefused(`the log ${file} is damaged: restore a backup, or move it away to start anew`);

const openFile = (file: string, pages: number | undefined): Database.Database => {
  let db: Database.Database | undefined;
  try {
    // what a killed server leaves behind: the write-ahead file is gone after a clean end
    const unclean = existsSync(`${file}-wal`);
    // the database opens a file that may only be read, and then speaks of its lock
    if (existsSync(file)) accessSync(file, constants.W_OK);
    db = new Database(file, { timeout: 250 });
    db.pragma('locking_mode = EXCLUSIVE');
    db.pragma('journal_mode = WAL');
    db.pragma('synchronous = FULL');
    db.pragma('wal_autocheckpoint = 400');
    if (pages !== undefined) db.pragma(`max_page_count = ${pages}`);
    // the exclusive lock is taken by the first write
    db.exec('BEGIN IMMEDIATE; COMMIT');
    if ((unclean || statSync(file).size <= checkedAlways) && db.pragma('quick_check(1)', { simple: true }) !== 'ok')
      throw damaged(file);
    bringUp(db, file);
    if (db.pragma('synchronous', { simple: true }) !== 2 || db.pragma('locking_mode', { simple: true }) !== 'exclusive')
      throw new LogRefused(`the log ${file} would not be synced to the disk, or not be held by this server alone`);
    return db;
  } catch (error) {
    db?.close();
    throw refusedBy(error, file);
  }
};

type Row = { seq: number; body: string; mark: string };
type Line = Omit<SessionLine, 'closed' | 'practice'> & { closed: number; practice: number };

export type FileLog = Log & {
  /** As append, of entries stamped already: their JSON text. */
  readonly put: (session: string, after: number, bodies: readonly string[]) => Promise<'kept' | 'moved on'>;
  /** As read and findNote, as JSON text. */
  readonly bodies: (session: string, after?: number, most?: number) => Promise<string[]>;
  readonly noteBodies: (id: string) => Promise<string[]>;
  readonly pragmas: () => Record<string, unknown>;
  /** Reads every page and every entry of the file. Raises LogRefused naming what is not as it was kept. */
  readonly check: () => { sessions: number; entries: number };
  /** Copies the log as of now to the new file `to`, while in use. */
  readonly backup: (to: string) => Promise<void>;
};

/** Opens, checks and brings up the file. `pages`: most database pages it may grow to. Raises LogRefused. */
export const sqliteLog = (file: string, { pages }: { pages?: number } = {}): FileLog => {
  const db = openFile(file, pages);
  const guarded = <T>(work: () => T): T => {
    try {
      return work();
    } catch (error) {
      throw error instanceof Database.SqliteError ? refusedBy(error, file) : error;
    }
  };

  const lastOf = db.prepare<[string], { seq: number; mark: string }>(
    'SELECT seq, mark FROM sessions WHERE session = ?',
  );
  const insert = db.prepare('INSERT INTO entries (session, seq, kept, note, body, mark) VALUES (?, ?, ?, ?, ?, ?)');
  const open = db.prepare(
    "INSERT INTO sessions (session, coach, opened, last, seq, closed, practice, words, told, mark) VALUES (@session, @coach, @kept, @kept, @seq, 0, @practice, '', 0, '')",
  );
  const touch = db.prepare('UPDATE sessions SET last = @kept, seq = @seq, mark = @mark WHERE session = @session');
  const setClosed = db.prepare('UPDATE sessions SET closed = @closed WHERE session = @session');
  const setWords = db.prepare(
    'UPDATE sessions SET words = @words, told = @told WHERE session = @session AND told < @told',
  );
  const known = knownWords();
  const addWord = db.prepare('INSERT OR IGNORE INTO words (word, session) VALUES (?, ?)');
  const readRows = db.prepare<[string, number, number], Row>(
    'SELECT seq, body, mark FROM entries WHERE session = ? AND seq > ? ORDER BY seq LIMIT ?',
  );
  const markAt = db.prepare('SELECT mark FROM entries WHERE session = ? AND seq = ?').pluck();
  const noteRows = db.prepare<[string], { session: string; seq: number }>(
    'SELECT session, seq FROM entries WHERE note = ? ORDER BY seq',
  );
  const putSheet = db.prepare('INSERT OR IGNORE INTO sheets (hash, coach, json) VALUES (?, ?, ?)');
  const getSheet = db.prepare('SELECT json FROM sheets WHERE hash = ?').pluck();
  const allSessions = db.prepare('SELECT session FROM sessions ORDER BY session').pluck();

  const put = (entry: Entry, body: string, before: string): string => {
    const { session, seq, kept } = entry;
    const mark = markAfter(before, body);
    insert.run(session, seq, kept, entry.is === 'note' ? entry.id : entry.is === 'reply' ? entry.to : null, body, mark);
    if (entry.is === 'opened') open.run({ session, coach: entry.coach, kept, seq, practice: entry.practice ? 1 : 0 });
    if (entry.is === 'closed' || entry.is === 'reopened')
      setClosed.run({ session, closed: entry.is === 'closed' ? 1 : 0 });
    if (entry.is === 'note')
      setWords.run({ session, words: entry.text, told: entry.read.facts.some((f) => f.is === 'sign') ? 2 : 1 });
    for (const word of wordsOf(entry)) if (known.isNew(session, word)) addWord.run(word, session);
    return mark;
  };
  const append = db.transaction(
    (session: string, after: number, make: () => readonly Stamped[]): readonly Stamped[] | 'moved on' => {
      const last = lastOf.get(session);
      if ((last?.seq ?? 0) !== after) return 'moved on';
      let mark = last?.mark ?? noMark;
      const stamped = make();
      for (const { entry, body } of stamped) mark = put(entry, body, mark);
      const newest = stamped.at(-1)?.entry;
      if (newest) touch.run({ session, kept: newest.kept, seq: newest.seq, mark });
      return stamped;
    },
  );

  const readChecked = (session: string, after = 0, most = wholeRead): string[] => {
    // asked at every note, when there is mostly nothing new: the mark of an entry stands behind its long text
    if ((lastOf.get(session)?.seq ?? 0) <= after) return [];
    let mark = after === 0 ? noMark : (markAt.get(session, after) as string | undefined);
    if (mark === undefined) return [];
    const bodies: string[] = [];
    for (const row of readRows.iterate(session, after, most)) {
      mark = markAfter(mark, row.body);
      if (mark !== row.mark || row.seq !== after + bodies.length + 1)
        throw new LogRefused(`entry ${row.seq} of ${session} is not what was kept: restore a backup of ${file}`);
      bodies.push(row.body);
    }
    return bodies;
  };
  const noteBodies = (id: string): string[] => noteRows.all(id).flatMap((r) => readChecked(r.session, r.seq - 1, 1));

  const group = makeGroup(
    db.transaction((work) => work()),
    () => db.inTransaction,
  );
  /** `work` within the next commit; what the database raises is put in words. */
  const durable = <T>(work: () => T): Promise<T> =>
    group.run(work).catch((error: unknown) => {
      // words written with what failed were undone with it
      known.forget();
      throw error instanceof Database.SqliteError ? refusedBy(error, file) : error;
    });

  return {
    append: async (session, after, drafts, kept, own = false) => {
      const stamped = await durable(() =>
        append(session, after, () => drafts.map((draft, i) => stampedAs(draft, session, after + i + 1, kept, own))),
      );
      return stamped === 'moved on'
        ? stamped
        : { entries: stamped.map((s) => s.entry), bodies: stamped.map((s) => s.body) };
    },
    adopt: async (session, after, bodies) => {
      const stamped = await durable(() =>
        append(session, after, () =>
          adopted(session, after, bodies).map((entry, i) => {
            if (entry.is === 'note' && noteRows.get(entry.id))
              throw new LogRefused(`note ${entry.id} stands in the log already`);
            return { entry, body: bodies[i]! };
          }),
        ),
      );
      return stamped === 'moved on' ? stamped : 'kept';
    },
    put: async (session, after, bodies) => {
      const stamped = await durable(() =>
        append(session, after, () => bodies.map((body) => ({ entry: parsed(body), body }))),
      );
      return stamped === 'moved on' ? stamped : 'kept';
    },
    bodies: async (session, after, most) => guarded(() => readChecked(session, after, most)),
    noteBodies: async (id) => guarded(() => noteBodies(id)),
    read: async (session, after, most) => guarded(() => readChecked(session, after, most)).map(parsed),
    mark: async (session) => lastOf.get(session)?.mark ?? noMark,
    findNote: async (id) => guarded(() => noteBodies(id)).map(parsed),
    sessions: async (filter = {}) => {
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
      if (filter.after !== undefined) {
        where.push('(last, session) < (?, ?)');
        values.push(filter.after.last, filter.after.session);
      }
      for (const word of splitWords(filter.words ?? '').slice(0, mostWords)) {
        where.push('session IN (SELECT session FROM words WHERE word >= ? AND word < ?)');
        values.push(word, `${word}\u{10FFFF}`);
      }
      const rows = guarded(() =>
        db
          .prepare<unknown[], Line>(
            `SELECT session, coach, opened, last, seq, closed, practice, words FROM sessions WHERE ${where.join(' AND ')} ORDER BY last DESC, session DESC LIMIT ?`,
          )
          .all(...values, filter.most ?? 100),
      );
      return rows.map((r) => ({ ...r, closed: r.closed === 1, practice: r.practice === 1 }));
    },
    putSheet: async (hash, coach, json) => {
      guarded(() => putSheet.run(hash, coach, json));
    },
    getSheet: async (hash) => guarded(() => (getSheet.get(hash) as string | undefined) ?? null),
    close: async () => {
      group.flush();
      db.close();
    },
    pragmas: () => ({
      synchronous: db.pragma('synchronous', { simple: true }),
      locking_mode: db.pragma('locking_mode', { simple: true }),
      journal_mode: db.pragma('journal_mode', { simple: true }),
      user_version: db.pragma('user_version', { simple: true }),
    }),
    check: () =>
      guarded(() => {
        if (db.pragma('integrity_check(1)', { simple: true }) !== 'ok') throw damaged(file);
        let entries = 0;
        const names = allSessions.all() as string[];
        for (const session of names) {
          const last = lastOf.get(session)!;
          const all = readChecked(session);
          if (all.length !== last.seq || markAt.get(session, all.length) !== last.mark)
            throw new LogRefused(`session ${session} of ${file} lacks entries: restore a backup`);
          entries += all.length;
        }
        return { sessions: names.length, entries };
      }),
    backup: async (to) => {
      await db.backup(to).catch((error: unknown) => Promise.reject(refusedBy(error, to)));
    },
  };
};
