/**
 * What was typed and is not yet known to be kept by the server. Each frame stands under a key of its own, so that two
 * pages in one browser cannot overwrite each other's; sent again with the same id it is harmless.
 */
import type { FromPage } from '../server/chat/protocol.ts';
import { keep } from './keep.ts';

export type OutFrame = Extract<
  FromPage,
  { is: 'note' | 'open' | 'remark' | 'close' | 'reopen' | 'estimate' | 'decide' | 'resheet' }
>;
/** waiting: not handed to a connection; sent: handed over, no word yet; refused: the server will never take it. */
export type Pending = {
  key: string;
  frame: OutFrame;
  made: number;
  state: 'waiting' | 'sent' | 'refused';
  words?: string | undefined;
  /** Pictures that stand in this browser until they are uploaded. */
  pictures?: string[] | undefined;
};

export const idOf = (frame: OutFrame): string =>
  frame.is === 'note' ? frame.id : `${frame.is}:${frame.session}${frame.is === 'decide' ? `:${frame.line}` : ''}`;

const kinds: ReadonlySet<unknown> = new Set(['note', 'open', 'remark', 'close', 'reopen'] satisfies OutFrame['is'][]);
/** What this page wrote itself, perhaps an older one; a field gone astray is the server's to refuse, in words. */
const isOut = (f: Partial<OutFrame> | null | undefined): f is OutFrame =>
  typeof f === 'object' &&
  f !== null &&
  kinds.has(f.is) &&
  typeof f.session === 'string' &&
  (f.is !== 'note' || (typeof f.id === 'string' && typeof f.text === 'string' && typeof f.at === 'number'));

const stored = (key: string): Pending | null => {
  try {
    const raw = JSON.parse(keep.get(key) ?? '') as {
      frame?: Partial<OutFrame>;
      made: number;
      words?: string;
      pictures?: string[];
    };
    if (!isOut(raw.frame)) return null;
    return {
      key,
      frame: raw.frame,
      made: raw.made,
      state: raw.words === undefined ? 'waiting' : 'refused',
      words: raw.words,
      pictures: raw.pictures,
    };
  } catch {
    return null;
  }
};

const write = (p: Pending): void => {
  keep.set(p.key, JSON.stringify({ frame: p.frame, made: p.made, words: p.words, pictures: p.pictures }));
};

export class Outbox {
  list: readonly Pending[] = [];

  constructor() {
    this.list = keep
      .names('out.')
      .map(stored)
      .filter((p) => p !== null)
      .toSorted((a, b) => a.made - b.made);
  }

  add(frame: OutFrame, made: number, pictures?: string[]): Pending {
    const p: Pending = {
      key: `out.${made.toString(36).padStart(9, '0')}.${idOf(frame)}`,
      frame,
      made,
      state: 'waiting',
      pictures,
    };
    write(p);
    this.list = [...this.list, p];
    return p;
  }

  mark(key: string, change: Partial<Pick<Pending, 'state' | 'words' | 'frame' | 'pictures'>>): void {
    this.list = this.list.map((p) => {
      if (p.key !== key) return p;
      const next = { ...p, ...change };
      if (change.state !== 'sent') write(next);
      return next;
    });
  }

  /** A connection died: what was handed to it has to be handed over again. */
  unsend(): void {
    this.list = this.list.map((p) => (p.state === 'sent' ? { ...p, state: 'waiting' } : p));
  }

  remove(key: string): void {
    keep.drop(key);
    this.list = this.list.filter((p) => p.key !== key);
  }
}
