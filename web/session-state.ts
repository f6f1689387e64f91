/** One session as this page knows it: entries in order without a gap, and what stands now. Pure. */
import type { Board } from '../server/chat/protocol.ts';
import type { Entry } from '../server/session/entry.ts';

export type SessionState = {
  session: string;
  /** In order, each seq one more than the last; of a long session the newest, earlier ones are asked for. */
  entries: readonly Entry[];
  board: Board | null;
  /** Entries are still coming in pages. */
  loading: boolean;
  /** Came out of this browser's keeping and has not been confirmed by the server since. */
  stale: boolean;
};

export const freshState = (session: string): SessionState => ({
  session,
  entries: [],
  board: null,
  loading: true,
  stale: false,
});

export const lastSeq = (state: SessionState | null): number => state?.entries.at(-1)?.seq ?? 0;

/** Entries that stand before the first one here. */
export const missing = (state: SessionState | null): number => Math.max(0, (state?.entries[0]?.seq ?? 1) - 1);

/** The run without a gap that begins at `from` in entries sorted by seq. */
const run = (sorted: readonly Entry[], from: number): Entry[] => {
  const out: Entry[] = [];
  for (const e of sorted) if (e.seq === from + out.length) out.push(e);
  return out;
};

/**
 * Adds what came. What is here already is dropped; a gap keeps what is before it and says so, so that the page asks
 * again from there. `skipped`: the server left out what lies between, so these stand alone.
 */
export const addEntries = (
  state: SessionState,
  came: readonly Entry[],
  more: boolean,
  skipped = false,
): { state: SessionState; gap: boolean } => {
  const sorted = came.toSorted((a, b) => a.seq - b.seq);
  const held = skipped ? [] : state.entries;
  const next = held.length > 0 ? (held.at(-1)?.seq ?? 0) + 1 : (sorted[0]?.seq ?? 1);
  const added = run(sorted, next);
  const gap = (sorted.at(-1)?.seq ?? 0) >= next + added.length;
  const joined = addEarlier({ ...state, entries: added.length > 0 || skipped ? [...held, ...added] : held }, sorted);
  return { state: { ...joined, loading: more, stale: false }, gap };
};

/** Puts what lies just before the first entry here in front of it. */
export const addEarlier = (state: SessionState, came: readonly Entry[]): SessionState => {
  const first = state.entries[0]?.seq ?? 1;
  const before = came.filter((e) => e.seq < first).toSorted((a, b) => a.seq - b.seq);
  const from = before[0]?.seq ?? first;
  const front = run(before, from);
  // one that does not reach up to what is here would leave a gap
  return front.length === 0 || from + front.length !== first
    ? state
    : { ...state, entries: [...front, ...state.entries] };
};

export const addBoard = (state: SessionState, board: Board): SessionState =>
  state.board && state.board.seq > board.seq ? state : { ...state, board, stale: false };
