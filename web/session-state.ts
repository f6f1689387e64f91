/** One session as this page knows it: entries in order without a gap, and what stands now. Pure. */
import type { Board } from '../server/chat/protocol.ts';
import type { Entry } from '../server/session/entry.ts';

export type SessionState = {
  session: string;
  /** seq 1 first, each one more than the last. */
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

/**
 * Adds what came: entries already here are dropped, a gap keeps what is before it and says so, so that the page asks
 * again from there.
 */
export const addEntries = (
  state: SessionState,
  came: readonly Entry[],
  more: boolean,
): { state: SessionState; gap: boolean } => {
  let next = lastSeq(state) + 1;
  const added: Entry[] = [];
  let gap = false;
  for (const e of came.toSorted((a, b) => a.seq - b.seq)) {
    if (e.seq < next) continue;
    if (e.seq > next) {
      gap = true;
      break;
    }
    added.push(e);
    next += 1;
  }
  const entries = added.length > 0 ? [...state.entries, ...added] : state.entries;
  return { state: { ...state, entries, loading: more, stale: false }, gap };
};

export const addBoard = (state: SessionState, board: Board): SessionState =>
  state.board && state.board.seq > board.seq ? state : { ...state, board, stale: false };
