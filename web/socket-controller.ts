/**
 * The one owner of the socket: what the server said, what waits to be sent, which session is followed. Elements read
 * its fields and call its methods; it asks its host to draw again when something changed.
 */
import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { ToPage } from '../server/chat/protocol.ts';
import type { Block } from '../server/chat/reply.ts';
import { Followed, tail } from './followed.ts';
import { newId } from './ids.ts';
import { keep } from './keep.ts';
import { Line, type Link, type Patience } from './line.ts';
import { Outbox, type OutFrame, type Pending } from './outbox.ts';
import { Sender } from './sender.ts';
import { lastSeq, type SessionState } from './session-state.ts';

export type Welcome = Extract<ToPage, { is: 'welcome' }>;
export type Refused = Extract<ToPage, { is: 'refused' }>;

/** The server lets a page follow eight. */
const mostFollows = 7;

/** What the server said last time, until it says it again. */
const keptWelcome = (): Welcome | null => {
  try {
    return JSON.parse(keep.get('welcome') ?? 'null') as Welcome | null;
  } catch {
    keep.drop('welcome');
    return null;
  }
};

export class SocketController implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #line: Line;
  readonly #sender: Sender;
  readonly #followed = new Followed((frame) => this.#line.send(frame));
  readonly outbox = new Outbox();
  link: Link = 'connecting';
  welcome: Welcome | null = keptWelcome();
  sessions: Extract<ToPage, { is: 'sessions' }>['list'] | null = null;
  /** There are older sessions than those of the list. */
  olderThere = false;
  /** Answers to questions that are not logged, by the id of the question. */
  answers: ReadonlyMap<string, readonly Block[]> = new Map();
  refused: Refused | null = null;
  #search = '';
  #follows = new Set<string>();

  constructor(host: ReactiveControllerHost, url: string, patience?: Patience) {
    this.#host = host;
    this.#line = new Line(
      url,
      (frame) => this.#frame(frame),
      (link) => this.#linked(link),
      patience,
    );
    this.#sender = new Sender(this.outbox, {
      live: () => this.link === 'live',
      hand: (frame) => this.#hand(frame),
      lost: ({ session, seq, by }, text) => this.#queue({ is: 'remark', session, about: seq, text, by }),
      changed: () => this.#changed(),
    });
    host.addController(this);
  }

  hostConnected(): void {
    this.#line.start();
  }

  hostDisconnected(): void {
    this.#line.stop();
  }

  /** The followed session as this page knows it; null: none is followed. */
  get state(): SessionState | null {
    return this.#followed.state;
  }

  /** Goes to a session: first what this browser kept of it, then what the server has. `whole`: all of it, to be read back. */
  async follow(session: string, whole = false): Promise<void> {
    this.#followed.want(whole);
    if (this.#followed.is(session)) return;
    this.#followed.begin(session);
    this.answers = new Map();
    this.refused = null;
    this.#changed();
    if (await this.#followed.recall(session)) this.#changed();
    if (this.#followed.is(session)) this.#ask();
  }

  /** Earlier entries are on their way. */
  get fetching(): boolean {
    return this.#followed.fetching;
  }

  leave(): void {
    this.#followed.end();
    this.#changed();
  }

  /** Asks for the entries before the first one here. */
  earlier(): void {
    this.#followed.earlier();
    this.#changed();
  }

  /** The rest of a transcript that was stopped. */
  whole(): void {
    this.#followed.want(true);
    this.#changed();
  }

  stopFetching(): void {
    this.#followed.stop();
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
    const session = this.#session();
    this.#queue({ is: 'note', session, id, text, at, seen: lastSeq(this.state), by }, pictures);
    return id;
  }

  remark(about: number, text: string, by: string): void {
    this.#queue({ is: 'remark', session: this.#session(), about, text, by });
  }

  close(signed: string, words: string): void {
    this.#queue({ is: 'close', session: this.#session(), signed, words });
  }

  reopen(words: string, by: string): void {
    this.#queue({ is: 'reopen', session: this.#session(), words, by });
  }

  /** What an estimate or another version of the sheet asks for: it waits and goes with the rest. */
  hand(frame: OutFrame): void {
    this.#queue(frame);
  }

  /** Asks the server anew which coaches there are. */
  greet(): void {
    this.#line.send({ is: 'hello', v: 1 });
  }

  /** Asked and answered in place, never logged. The id is where the answer will stand; null while not connected. */
  ask(text: string): string | null {
    const id = newId();
    return this.#line.send({ is: 'ask', session: this.state?.session ?? null, id, text }) ? id : null;
  }

  /** Those after the last one of the list. */
  olderSessions(): void {
    const end = this.sessions?.at(-1);
    if (!end) return;
    const after = { last: end.last, session: end.session };
    this.#line.send({ is: 'list', ...(this.#search === '' ? {} : { words: this.#search }), after });
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

  #session(): string {
    if (this.state === null) throw new Error('no session is followed');
    return this.state.session;
  }

  #changed(): void {
    this.#host.requestUpdate();
  }

  #queue(frame: OutFrame, pictures: string[] = []): void {
    this.outbox.add(frame, Date.now(), pictures.length > 0 ? pictures : undefined);
    this.#changed();
    this.#sender.flush();
  }

  #linked(link: Link): void {
    this.link = link;
    this.#follows.clear();
    this.#followed.lost();
    if (link === 'live') {
      this.#ask();
      this.list(this.#search);
      this.#sender.flush();
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
    this.#line.send({ is: 'follow', session, after, last: tail });
  }

  /** To the connection; false: not now. A note is answered to who sent it; of the rest only those who follow hear. */
  #hand(frame: OutFrame): boolean {
    if (!this.#line.send(frame)) return false;
    if (frame.is === 'open') {
      if (this.#followed.is(frame.session)) this.#follow(frame.session);
    } else if (frame.is !== 'note' && !this.#follows.has(frame.session))
      this.#follow(frame.session, Number.MAX_SAFE_INTEGER);
    return true;
  }

  #frame(frame: ToPage): void {
    switch (frame.is) {
      case 'welcome':
        this.welcome = frame;
        keep.set('welcome', JSON.stringify(frame));
        break;
      case 'entries':
        this.#sender.settle(frame.entries);
        switch (this.#followed.entries(frame)) {
          case 'gap':
            this.#ask();
            break;
          case 'in order':
            this.#sender.flush();
            break;
          case null:
            break;
        }
        // a session that was opened while this page went there: its answer may come before it was followed
        if (this.#followed.is(frame.session) && !this.#follows.has(frame.session)) this.#ask();
        break;
      case 'earlier':
        this.#followed.cameEarlier(frame);
        break;
      case 'board':
        this.#followed.board(frame);
        break;
      case 'answer':
        this.answers = new Map([...this.answers, [frame.id, frame.blocks]]);
        break;
      case 'sessions':
        this.#listed(frame);
        break;
      case 'refused':
        this.#refusal(frame);
        break;
    }
    this.#changed();
  }

  /** The list anew, or what comes after the end of it; an answer to an end that is not it any more is left. */
  #listed({ list, more, after }: Extract<ToPage, { is: 'sessions' }>): void {
    const end = this.sessions?.at(-1);
    if (after && (end?.session !== after.session || end.last !== after.last)) return;
    this.sessions = after ? [...(this.sessions ?? []), ...list] : list;
    this.olderThere = more;
  }

  #refusal(frame: Refused): void {
    const fate = this.#sender.refusal(frame);
    // an 'open' that came twice is no fault: the session stands
    if (fate === 'stands') this.#ask();
    if (fate === 'not ours') this.refused = frame;
    if (frame.why === 'no such session') this.#followed.unknown();
  }
}
