/** The connection: opens, opens again with growing pauses, notices a dead one. Knows frames, not what they mean. */
import type { FromPage, ToPage } from '../server/chat/protocol.ts';
import { readFrame } from './frame.ts';

export type Link = 'connecting' | 'live' | 'away';

/** ms: first pause after a loss, longest pause, how long an answer may take, how often a quiet line is tried. */
export type Patience = { first: number; most: number; answer: number; quiet: number };
const patience: Patience = { first: 250, most: 8000, answer: 7000, quiet: 20_000 };

export class Line {
  #socket: WebSocket | null = null;
  #tries = 0;
  #again: ReturnType<typeof setTimeout> | undefined;
  #watch: ReturnType<typeof setTimeout> | undefined;
  #stopped = true;
  readonly #url: string;
  readonly #onFrame: (frame: ToPage) => void;
  readonly #onLink: (link: Link) => void;
  readonly #patience: Patience;
  link: Link = 'connecting';

  constructor(url: string, onFrame: (frame: ToPage) => void, onLink: (link: Link) => void, wait = patience) {
    this.#url = url;
    this.#onFrame = onFrame;
    this.#onLink = onLink;
    this.#patience = wait;
  }

  start(): void {
    if (!this.#stopped) return;
    this.#stopped = false;
    addEventListener('online', this.#now);
    document.addEventListener('visibilitychange', this.#now);
    this.#open();
  }

  stop(): void {
    this.#stopped = true;
    removeEventListener('online', this.#now);
    document.removeEventListener('visibilitychange', this.#now);
    clearTimeout(this.#again);
    clearTimeout(this.#watch);
    this.#socket?.close();
    this.#socket = null;
  }

  /** false: nothing went out. */
  send(frame: FromPage): boolean {
    if (this.#socket?.readyState !== WebSocket.OPEN) return false;
    this.#socket.send(JSON.stringify(frame));
    this.#expect();
    return true;
  }

  /** A fresh connection in place of this one. */
  again(): void {
    this.#drop();
    clearTimeout(this.#again);
    this.#open();
  }

  /** Drops a connection that looks alive and answers nothing; the next one is tried at once. */
  #drop(): void {
    const dead = this.#socket;
    this.#socket = null;
    if (dead) {
      dead.onclose = dead.onmessage = dead.onerror = dead.onopen = null;
      dead.close();
    }
    this.#lost();
  }

  #expect(): void {
    clearTimeout(this.#watch);
    this.#watch = setTimeout(() => this.#drop(), this.#patience.answer);
  }

  #heard(): void {
    clearTimeout(this.#watch);
    this.#watch = setTimeout(() => this.send({ is: 'hello', v: 1 }), this.#patience.quiet);
  }

  #now = (): void => {
    if (document.visibilityState === 'hidden' || this.#stopped) return;
    if (this.#socket === null) this.#open();
    else if (this.#socket.readyState === WebSocket.OPEN) this.send({ is: 'hello', v: 1 });
  };

  #set(link: Link): void {
    if (this.link === link) return;
    this.link = link;
    this.#onLink(link);
  }

  #open(): void {
    clearTimeout(this.#again);
    if (this.#stopped || this.#socket) return;
    const socket = new WebSocket(this.#url);
    this.#socket = socket;
    this.#expect();
    socket.onopen = () => this.send({ is: 'hello', v: 1 });
    socket.onmessage = (event) => {
      this.#heard();
      const frame = readFrame(event.data);
      if (frame === null) return;
      if (frame.is === 'welcome') {
        this.#tries = 0;
        this.#set('live');
      }
      this.#onFrame(frame);
    };
    socket.onclose = () => {
      if (this.#socket !== socket) return;
      this.#socket = null;
      this.#lost();
    };
  }

  #lost(): void {
    clearTimeout(this.#watch);
    this.#set('away');
    if (this.#stopped) return;
    const pause = Math.min(this.#patience.most, this.#patience.first * 2 ** this.#tries) * (0.75 + Math.random() / 2);
    this.#tries = Math.min(this.#tries + 1, 12);
    clearTimeout(this.#again);
    this.#again = setTimeout(() => this.#open(), pause);
  }
}
