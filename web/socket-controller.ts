/**
 * The one owner of the socket: what the server said, what waits to be sent, which session is followed. Elements read
 * its fields and call its methods; it asks its host to draw again when something changed.
 */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { ToPage } from '../server/chat/protocol.ts';
import type { Block } from '../server/chat/reply.ts';
import type { Entry } from '../server/session/entry.ts';
import { cellar } from './cellar.ts';
import { newId } from './ids.ts';
import { Line, type Link, type Patience } from './line.ts';
import { idOf, Outbox, type OutFrame, type Pending } from './outbox.ts';
import { addBoard, addEntries, freshState, lastSeq, type SessionState } from './session-state.ts';
import { keep } from './keep.ts';
import { keeps, withPictures } from './sending.ts';

export type Welcome = Extract<ToPage, { is: 'welcome' }>;
export type Refused = Extract<ToPage, { is: 'refused' }>;

/** A refusal after which the same frame is tried again; every other one is for good. */
const passing = new Set(['too fast', 'log failed', 'no hello']);
/** Refusals of one frame rather than of what the page asked to see. */
const aboutFrame = new Set([
  'no such coach',
  'session exists',
  'session closed',
  'bad frame',
  'too big',
  'not allowed',
]);
/** Frames handed over and not yet answered, at most: the server slows a flood, and order must hold. */
const inFlight = 8;
/** The server lets a page follow eight. */
const mostFollows = 7;

export class SocketController implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #line: Line;
  readonly outbox = new Outbox();
  link: Link = 'connecting';
  welcome: Welcome | null = null;
  state: SessionState | null = null;
  sessions: Extract<ToPage, { is: 'sessions' }>['list'] | null = null;
  /** Answers to questions that are not logged, by the id of the question. */
  answers: ReadonlyMap<string, readonly Block[]> = new Map();
  refused: Refused | null = null;
  #keeping: ReturnType<typeof setTimeout> | undefined;
  #search = '';
  #sending = false;
  #later: ReturnType<typeof setTimeout> | undefined;
  #follows = new Set<string>();
  /** Pages of entries until the last of them. */
  #coming: Entry[] = [];

  constructor(host: ReactiveControllerHost, url: string, patience?: Patience) {
    this.#host = host;
    this.#line = new Line(
      url,
      (frame) => this.#frame(frame),
      (link) => this.#linked(link),
      patience,
    );
    host.addController(this);
    const kept = keep.get('welcome');
    if (kept !== null)
      try {
        this.welcome = JSON.parse(kept) as Welcome;
      } catch {
        keep.drop('welcome');
      }
  }

  hostConnected(): void {
    this.#line.start();
  }

  hostDisconnected(): void {
    this.#line.stop();
  }

  /** Goes to a session: first what this browser kept of it, then what the server has. */
  async follow(session: string): Promise<void> {
    if (this.state?.session === session) return;
    this.state = freshState(session);
    this.#coming = [];
    this.answers = new Map();
    this.refused = null;
    this.#changed();
    const kept = await cellar.session(session);
    if (this.state?.session !== session) return;
    if (kept && lastSeq(this.state) === 0) {
      this.state = { session, entries: kept.entries, board: kept.board, loading: false, stale: true };
      this.#changed();
    }
    this.#ask();
  }

  leave(): void {
    this.state = null;
    this.#changed();
  }

  /** A new session; its id is made here, so that it can be opened and typed into before the server is reached. */
  open(coach: string, by: string, practice?: number): string {
    const session = newId();
    this.#queue({ is: 'open', session, coach, by, ...(practice === undefined ? {} : { practice }) });
    return session;
  }

  note(text: string, by: string, at = Date.now(), pictures: string[] = []): string {
    const id = newId();
    const { session } = this.#followed();
    this.#queue({ is: 'note', session, id, text, at, seen: lastSeq(this.state), by }, pictures);
    return id;
  }

  remark(about: number, text: string, by: string): void {
    this.#queue({ is: 'remark', session: this.#followed().session, about, text, by });
  }

  close(signed: string, words: string): void {
    this.#queue({ is: 'close', session: this.#followed().session, signed, words });
  }

  reopen(words: string, by: string): void {
    this.#queue({ is: 'reopen', session: this.#followed().session, words, by });
  }

  /** Asked and answered in place, never logged. The id is where the answer will stand; null while not connected. */
  ask(text: string): string | null {
    const id = newId();
    return this.#line.send({ is: 'ask', session: this.state?.session ?? null, id, text }) ? id : null;
  }

  list(words = ''): void {
    this.#search = words;
    this.#line.send({ is: 'list', ...(words === '' ? {} : { words }) });
  }

  /** Takes back a note that has not left this page; its text goes to the caller. */
  takeBack(key: string): string {
    const p = this.outbox.list.find((x) => x.key === key);
    this.outbox.remove(key);
    this.#changed();
    return p?.frame.is === 'note' ? p.frame.text : '';
  }

  /** Waiting, sent and refused frames of the followed session, oldest first. */
  get pending(): readonly Pending[] {
    const session = this.state?.session;
    return this.outbox.list.filter((p) => p.frame.session === session);
  }

  clearRefusal(): void {
    this.refused = null;
    this.#changed();
  }

  #followed(): SessionState {
    if (this.state === null) throw new Error('no session is followed');
    return this.state;
  }

  #changed(): void {
    this.#host.requestUpdate();
  }

  #queue(frame: OutFrame, pictures: string[] = []): void {
    this.outbox.add(frame, Date.now(), pictures.length > 0 ? pictures : undefined);
    this.#changed();
    void this.#flush();
  }

  #linked(link: Link): void {
    this.link = link;
    this.#follows.clear();
    this.#coming = [];
    if (link === 'live') {
      this.#ask();
      this.list(this.#search);
      void this.#flush();
    } else this.outbox.unsend();
    this.#changed();
  }

  /** Asks for the entries after the last one here. A session whose `open` still waits is opened first. */
  #ask(): void {
    if (this.state === null || this.link !== 'live') return;
    const session = this.state.session;
    if (this.outbox.list.some((p) => p.frame.is === 'open' && p.frame.session === session)) return;
    this.#follow(session);
  }

  #follow(session: string, after = lastSeq(this.state)): void {
    // a page may follow so many sessions on one connection; a fresh one forgets the old ones
    if (!this.#follows.has(session) && this.#follows.size >= mostFollows) return this.#line.again();
    this.#follows.add(session);
    this.#line.send({ is: 'follow', session, after });
  }

  /** Hands over what waits, in order. Pictures go first, since a note names them by their hash. */
  async #flush(): Promise<void> {
    if (this.#sending || this.link !== 'live') return;
    this.#sending = true;
    try {
      for (const p of this.outbox.list) {
        if (p.state !== 'waiting') continue;
        if (this.outbox.list.filter((x) => x.state === 'sent').length >= inFlight) break;
        const frame = await withPictures(p);
        if (frame === null || !this.#line.send(frame)) break;
        this.outbox.mark(p.key, { state: 'sent' });
        if (frame.is === 'open' && this.state?.session === frame.session) this.#follow(frame.session);
        // a note is answered to who sent it; of the rest only those who follow the session hear
        else if (frame.is !== 'note' && frame.is !== 'open' && !this.#follows.has(frame.session))
          this.#follow(frame.session, Number.MAX_SAFE_INTEGER);
      }
    } finally {
      this.#sending = false;
    }
    this.#changed();
    if (this.link === 'live' && this.outbox.list.some((p) => p.state === 'waiting')) {
      clearTimeout(this.#later);
      this.#later = setTimeout(() => void this.#flush(), 400);
    }
  }

  #frame(frame: ToPage): void {
    switch (frame.is) {
      case 'welcome':
        this.welcome = frame;
        keep.set('welcome', JSON.stringify(frame));
        break;
      case 'entries':
        this.#entries(frame);
        break;
      case 'board':
        if (this.state?.session === frame.board.session) {
          this.state = addBoard(this.state, frame.board);
          this.#keepSoon();
        }
        break;
      case 'answer':
        this.answers = new Map([...this.answers, [frame.id, frame.blocks]]);
        break;
      case 'sessions':
        this.sessions = frame.list;
        break;
      case 'refused':
        this.#refusal(frame);
        break;
    }
    this.#changed();
  }

  #entries(frame: Extract<ToPage, { is: 'entries' }>): void {
    for (const entry of frame.entries)
      for (const p of this.outbox.list) {
        if (p.state !== 'refused' && keeps(entry, p)) {
          this.outbox.remove(p.key);
          for (const key of p.pictures ?? []) void cellar.dropPicture(key);
        }
      }
    if (this.state?.session !== frame.session) return;
    // a long session comes in pages: drawn once, when all of it is here
    this.#coming.push(...frame.entries);
    if (frame.more) return;
    const { state, gap } = addEntries(this.state, this.#coming, false);
    this.#coming = [];
    this.state = state;
    if (this.outbox.list.some((p) => p.state === 'waiting')) void this.#flush();
    if (gap) this.#ask();
    this.#keepSoon();
  }

  #refusal(frame: Refused): void {
    const mine = this.outbox.list.find(
      (p) =>
        p.state === 'sent' &&
        (frame.id === undefined ? p.frame.is !== 'note' && aboutFrame.has(frame.why) : idOf(p.frame) === frame.id),
    );
    if (passing.has(frame.why)) {
      if (mine) this.outbox.mark(mine.key, { state: 'waiting' });
      else this.outbox.unsend();
      setTimeout(() => void this.#flush(), 1500);
      return;
    }
    if (mine) {
      // an 'open' that came twice is no fault: the session stands
      if (frame.why === 'session exists') {
        this.outbox.remove(mine.key);
        this.#ask();
        return;
      }
      this.outbox.mark(mine.key, { state: 'refused', words: frame.words });
    } else this.refused = frame;
    if (this.state && frame.why === 'no such session') this.state = { ...this.state, loading: false };
  }

  #keepSoon(): void {
    clearTimeout(this.#keeping);
    this.#keeping = setTimeout(() => {
      const s = this.state;
      if (s && s.entries.length > 0)
        void cellar.keepSession({ session: s.session, entries: s.entries, board: s.board, at: Date.now() });
    }, 400);
  }
}
