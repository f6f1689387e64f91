/** The session log as the desk sees it: append-only, compare and append, async. Implementations: memory.ts, sqlite.ts. */
import type { Draft, Entry } from '../session/entry.ts';

export type SessionLine = {
  session: string;
  coach: string;
  opened: number;
  last: number;
  seq: number;
  closed: boolean;
  practice: boolean;
  /** The complaint, or the first note. */
  words: string;
};

/** `after`: only lines that stand after this one in the order. */
export type SessionFilter = {
  coach?: string;
  words?: string;
  most?: number;
  practice?: boolean;
  after?: { last: number; session: string };
};

/** Entries as they were kept, and the JSON text of each as stored. */
export type Kept = { readonly entries: readonly Entry[]; readonly bodies: readonly string[] };

export interface Log {
  /**
   * Appends `drafts` to `session` as one durable transaction, numbered from `after + 1` and stamped `kept`.
   * 'moved on' when the last seq is not `after`: nothing was written; fold again and step again. Raises LogRefused when
   * it cannot be written; nothing was then. Drafts are held to their shape, all but the program's `own` (stamp.ts).
   */
  append(
    session: string,
    after: number,
    drafts: readonly Draft[],
    kept: number,
    own?: boolean,
  ): Promise<Kept | 'moved on'>;
  /**
   * Appends entries kept by another log as they are: JSON text of each, numbers and stamps their own, in order from
   * `after + 1`. Raises LogRefused for one that is not of the shape, not in order, or a note that stands in another session.
   */
  adopt(session: string, after: number, bodies: readonly string[]): Promise<'kept' | 'moved on'>;
  /** Entries with seq > `after`, in order, at most `most`. Raises LogRefused when they are not what was kept. */
  read(session: string, after?: number, most?: number): Promise<Entry[]>;
  /** Mark of the session as of its last entry, see mark.ts; "" for none. */
  mark(session: string): Promise<string>;
  /** The note and the reply of a note id, whatever session it is in. */
  findNote(id: string): Promise<Entry[]>;
  /** Those used last first; of the same moment by name, from z to a. */
  sessions(filter?: SessionFilter): Promise<SessionLine[]>;
  /** Sheets by content hash; kept for ever, since sessions name them. */
  putSheet(hash: string, coach: string, json: string): Promise<void>;
  getSheet(hash: string): Promise<string | null>;
  close(): Promise<void>;
}
