/** What pages were shown and told was kept, held against each other and against the log. */
import { createHash } from 'node:crypto';
import type { Entry } from '../../server/session/entry.ts';

const print = (entry: Entry): string => createHash('sha1').update(JSON.stringify(entry)).digest('base64');

export class Witness {
  /** Faults in words; empty is what is wanted. */
  readonly faults: string[] = [];
  /** Text of each note that was answered, by its id. */
  readonly answered = new Map<string, string>();
  /** Print of each entry that any page was shown, by session and seq - 1. */
  readonly #shown = new Map<string, string[]>();

  fault(words: string): void {
    if (this.faults.length < 20) this.faults.push(words);
  }

  /** A page was shown `entry`: whoever saw that number before must have seen the same. */
  saw(page: string, entry: Entry): void {
    const list = this.#shown.get(entry.session) ?? [];
    this.#shown.set(entry.session, list);
    const mine = print(entry);
    const before = (list[entry.seq - 1] ??= mine);
    if (before !== mine) this.fault(`${page} was shown another entry ${entry.seq} of ${entry.session}`);
  }

  /** Holds a session as it stands in the log against all that was shown of it. */
  session(session: string, entries: readonly Entry[]): void {
    const shown = this.#shown.get(session) ?? [];
    entries.forEach((entry, i) => {
      if (entry.seq !== i + 1) this.fault(`${session}: ${entry.seq} stands where ${i + 1} belongs`);
      if (shown[i] !== undefined && shown[i] !== print(entry))
        this.fault(`${session}: entry ${entry.seq} is not the one that was shown`);
    });
    if (shown.length > entries.length)
      this.fault(`${session}: entries ${entries.length + 1} to ${shown.length} were shown and are lost`);
  }

  /** Holds all notes of the log against those that were answered. */
  notes(all: readonly Entry[]): void {
    const texts = new Map<string, string>();
    const replies = new Map<string, number>();
    for (const entry of all) {
      if (entry.is === 'note') {
        if (texts.has(entry.id)) this.fault(`note ${entry.id} is kept twice`);
        texts.set(entry.id, entry.text);
      } else if (entry.is === 'reply') replies.set(entry.to, (replies.get(entry.to) ?? 0) + 1);
    }
    for (const [id, text] of this.answered)
      if (texts.get(id) !== text) this.fault(`note ${id} was answered and is ${texts.has(id) ? 'changed' : 'lost'}`);
    for (const id of texts.keys())
      if (replies.get(id) !== 1) this.fault(`note ${id} has ${replies.get(id) ?? 0} replies`);
  }
}
