/** Hands over what waits in the outbox, in order, and settles what the server says to it. */
import type { ToPage } from '../server/chat/protocol.ts';
import type { Entry } from '../server/session/entry.ts';
import { cellar } from './cellar.ts';
import { idOf, type Outbox, type OutFrame } from './outbox.ts';
import { keeps, withPictures } from './sending.ts';

type Refused = Extract<ToPage, { is: 'refused' }>;

/** A refusal after which the same frame is tried again; every other one is for good. */
const passing = new Set(['too fast', 'log failed', 'no hello']);
/** Refusals of one frame rather than of what the page asked to see. */
const aboutFrame = new Set([
  'no such coach',
  'session exists',
  'session closed',
  'estimate changed',
  'sheet changed',
  'bad frame',
  'too big',
  'not allowed',
]);
/** Frames handed over and not yet answered, at most: the server slows a flood, and order must hold. */
const inFlight = 8;
/** ms until what still waits is tried again: after a full hand, and after a refusal that passes. */
const soon = 400;
const later = 1500;

export type Hands = {
  live: () => boolean;
  /** false: it did not go out. */
  hand: (frame: OutFrame) => boolean;
  /** The note is kept, and not all of its pictures. */
  lost: (note: Extract<Entry, { is: 'note' }>, words: string) => void;
  changed: () => void;
};

export class Sender {
  readonly #outbox: Outbox;
  readonly #to: Hands;
  /** What is to be said of a note once it is kept, by the key it waits under. */
  readonly #lost = new Map<string, readonly string[]>();
  #busy = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(outbox: Outbox, to: Hands) {
    this.#outbox = outbox;
    this.#to = to;
  }

  flush(): void {
    if (!this.#busy && this.#waits && this.#to.live()) void this.#go();
  }

  get #waits(): boolean {
    return this.#outbox.list.some((p) => p.state === 'waiting');
  }

  #again(after: number): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => this.flush(), after);
  }

  /** Pictures go first, since a note names them by their hash. */
  async #go(): Promise<void> {
    this.#busy = true;
    let out = true;
    try {
      for (const p of this.#outbox.list) {
        if (p.state !== 'waiting') continue;
        if (this.#outbox.list.filter((x) => x.state === 'sent').length >= inFlight) break;
        const ready = await withPictures(p);
        // taken back while its pictures went up
        if (!this.#outbox.list.some((x) => x.key === p.key)) continue;
        if (ready?.lost.length) this.#lost.set(p.key, ready.lost);
        out = ready !== null && this.#to.live() && this.#to.hand(ready.frame);
        if (!out) break;
        this.#outbox.mark(p.key, { state: 'sent' });
      }
    } finally {
      this.#busy = false;
    }
    this.#to.changed();
    if (this.#waits) this.#again(out ? soon : later);
  }

  /** Entries came: what they keep waits no more. */
  settle(entries: readonly Entry[]): void {
    if (this.#outbox.list.length === 0) return;
    for (const entry of entries)
      for (const p of this.#outbox.list)
        if (p.state !== 'refused' && keeps(entry, p)) {
          this.#outbox.remove(p.key);
          if (entry.is === 'note') for (const words of this.#lost.get(p.key) ?? []) this.#to.lost(entry, words);
          this.#lost.delete(p.key);
          for (const key of p.pictures ?? []) void cellar.dropPicture(key);
        }
  }

  /** 'again': it is sent once more by itself; 'stands': it was there already; 'refused': marked; 'not ours': about no frame of the outbox. */
  refusal(frame: Refused): 'again' | 'stands' | 'refused' | 'not ours' {
    const mine = this.#outbox.list.find(
      (p) =>
        p.state === 'sent' &&
        (frame.id === undefined ? p.frame.is !== 'note' && aboutFrame.has(frame.why) : idOf(p.frame) === frame.id),
    );
    if (passing.has(frame.why)) {
      if (mine) this.#outbox.mark(mine.key, { state: 'waiting' });
      else this.#outbox.unsend();
      this.#again(later);
      return 'again';
    }
    if (!mine) return 'not ours';
    if (frame.why === 'session exists') {
      this.#outbox.remove(mine.key);
      return 'stands';
    }
    this.#outbox.mark(mine.key, { state: 'refused', words: frame.words });
    return 'refused';
  }
}
