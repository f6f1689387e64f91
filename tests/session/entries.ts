/** Builds entries for tests: plain facts, numbered and stamped. */
import type { Amend, Fact, Reading } from '../../intents/shapes.ts';
import type { Block } from '../../server/chat/reply.ts';
import type { Entry } from '../../server/session/entry.ts';

export const said = <T>(v: T): { v: T; from: 'said'; spans: [] } => ({ v, from: 'said', spans: [] });

type Loose<T> = T extends Fact
  ? Omit<T, 'id' | 'at' | 'word' | 'where'> & { where: string; at?: number; held?: 'implausible' }
  : never;
export type LooseFact = Loose<Fact>;

const minute = 60_000;

export class SessionMaker {
  readonly entries: Entry[] = [];
  #clock = Date.UTC(2026, 9, 6, 15, 0);
  constructor(coach = 'juniper-38', sheet = 'f'.repeat(64)) {
    this.#put({ is: 'opened', by: 'KD', coach, sheet, zone: 'America/Denver' });
  }
  #put(entry: object): void {
    this.entries.push({
      v: 1,
      session: 'test-session',
      seq: this.entries.length + 1,
      kept: this.#clock,
      ...entry,
    } as Entry);
  }
  /** A note with these facts and its reply, `after` minutes after the one before; returns its id. */
  note(
    text: string,
    facts: readonly LooseFact[],
    more: { amends?: Amend[]; after?: number; blocks?: Block[] } = {},
  ): string {
    this.#clock += (more.after ?? 1) * minute;
    const id = `note-${String(this.entries.length).padStart(3, '0')}`;
    const read: Reading = {
      facts: facts.map((f, i) => ({ at: this.#clock, word: 'own', ...f, id: `${id}.${i}`, where: said(f.where) })),
      amends: more.amends ?? [],
      asks: [],
      hazards: [],
      ambiguous: [],
      unread: [],
    };
    this.#put({ is: 'note', by: 'KD', id, text, at: this.#clock, seen: this.entries.length, read });
    this.#put({ is: 'reply', by: 'soapwater', to: id, engine: 'test', blocks: more.blocks ?? [] });
    return id;
  }
}

export const amend = (part: Partial<Amend> & Pick<Amend, 'do'>): Amend => ({
  count: 1,
  says: {},
  notes: [],
  drops: [],
  puts: [],
  spans: [],
  ...part,
});

export const condition = (what: string, holds: boolean, where = ''): LooseFact =>
  ({ is: 'condition', what: said(what), holds, where }) as LooseFact;
export const sign = (what: string, where: string, there = true): LooseFact =>
  ({ is: 'sign', what: said(what), there, where }) as LooseFact;
export const vented = (where: string): LooseFact => ({ is: 'work', what: said('vented'), done: true, where });
export const psi = (value: number, where = 'tank'): LooseFact => ({
  is: 'reading',
  what: said('pressure'),
  amount: said({ si: value * 6894.757293168361, pm: 3447, unit: 'psi', text: `${value} psi` }),
  where,
});
