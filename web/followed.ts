/** The session that is followed: what is here of it, what is still to be asked for, and the copy this browser keeps. */
import type { FromPage, ToPage } from '../server/chat/protocol.ts';
import type { Entry } from '../server/session/entry.ts';
import { cellar } from './cellar.ts';
import { addBoard, addEarlier, addEntries, freshState, lastSeq, missing, type SessionState } from './session-state.ts';

/** Entries that come at first, and at each "earlier": 200 notes with their replies. */
export const tail = 400;
/** ms without change until the copy in this browser is written. */
const settled = 400;

type Frame<Is extends ToPage['is']> = Extract<ToPage, { is: Is }>;

export class Followed {
  state: SessionState | null = null;
  /** Earlier entries are on their way. */
  fetching = false;
  readonly #send: (frame: FromPage) => boolean;
  /** Pages of entries until the last of them. */
  #coming: Entry[] = [];
  #skipped = false;
  /** All of it is wanted, not its newest part: the transcript. */
  #whole = false;
  #keeping: ReturnType<typeof setTimeout> | undefined;

  constructor(send: (frame: FromPage) => boolean) {
    this.#send = send;
  }

  is(session: string): boolean {
    return this.state?.session === session;
  }

  begin(session: string): void {
    this.state = freshState(session);
    this.lost();
  }

  end(): void {
    this.state = null;
  }

  /** The connection is gone, and what was under way with it. */
  lost(): void {
    this.#coming = [];
    this.#skipped = this.fetching = false;
  }

  /** The server knows no such session: nothing more is coming. */
  unknown(): void {
    if (this.state) this.state = { ...this.state, loading: false };
  }

  /** What this browser kept of it, until the server's word comes; false: nothing, or no longer wanted. */
  async recall(session: string): Promise<boolean> {
    const kept = await cellar.session(session);
    if (!kept || !this.is(session) || lastSeq(this.state) > 0) return false;
    this.state = { session, entries: kept.entries, board: kept.board, loading: false, stale: true };
    return true;
  }

  /** 'gap': what lies before is asked for again. null: another session's, or more is to come. */
  entries(frame: Frame<'entries'>): 'in order' | 'gap' | null {
    if (this.state === null || !this.is(frame.session)) return null;
    // a long stretch comes in pages: drawn once, when all of it is here
    this.#coming.push(...frame.entries);
    this.#skipped ||= frame.skipped === true;
    if (frame.more) return null;
    const { state, gap } = addEntries(this.state, this.#coming, false, this.#skipped);
    this.#coming = [];
    this.#skipped = false;
    this.state = state;
    this.#keepSoon();
    this.#rest();
    return gap ? 'gap' : 'in order';
  }

  cameEarlier(frame: Frame<'earlier'>): void {
    // what was stopped and comes all the same is let go
    if (this.state === null || !this.is(frame.session) || !this.fetching) return;
    this.fetching = false;
    const before = missing(this.state);
    this.state = addEarlier(this.state, frame.entries);
    // an answer that brings nothing is not asked for for ever
    if (missing(this.state) < before) this.#rest();
  }

  board(frame: Frame<'board'>): void {
    if (this.state === null || !this.is(frame.board.session)) return;
    this.state = addBoard(this.state, frame.board);
    this.#keepSoon();
  }

  /** Asks for what stands before the first entry here. */
  earlier(): void {
    if (this.state === null || this.fetching || missing(this.state) === 0) return;
    const { session } = this.state;
    this.fetching = this.#send({ is: 'earlier', session, before: missing(this.state) + 1, most: tail });
  }

  /** No more of what stands before: what is here stays. */
  stop(): void {
    this.#whole = this.fetching = false;
  }

  want(whole: boolean): void {
    this.#whole = whole;
    this.#rest();
  }

  #rest(): void {
    if (this.#whole) this.earlier();
  }

  #keepSoon(): void {
    clearTimeout(this.#keeping);
    this.#keeping = setTimeout(() => {
      const s = this.state;
      if (s && s.entries.length > 0)
        void cellar.keepSession({ session: s.session, entries: s.entries, board: s.board, at: Date.now() });
    }, settled);
  }
}
