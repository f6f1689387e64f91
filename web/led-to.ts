/** From a note on to what it led to: what was asked and the note that answered it, the figure read again, work done. Pure. */
import type { Entry, NoteEntry } from '../server/session/entry.ts';
import { takenBack } from './exchanges.ts';

/** `seq`: the note it leads to; `key`: of the finding that was found again, where it is one. */
export type Onward = { seq: number; words: string; key?: string };

const part = (place: string): string => place.replace(/ (?:crimp|fold)$/, '');

/** By the seq of the note that began it; what was taken back leads nowhere. */
export const ledTo = (entries: readonly Entry[]): ReadonlyMap<number, readonly Onward[]> => {
  const { notes: undone } = takenBack(entries);
  const notes = new Map(entries.flatMap((e) => (e.is === 'note' && !undone.has(e.id) ? [[e.id, e] as const] : [])));
  const live = [...notes.values()];
  const out = new Map<number, Onward[]>();
  const add = (from: NoteEntry, on: Onward): void => {
    const list = out.get(from.seq) ?? [];
    if (!list.some((o) => o.seq === on.seq && o.words === on.words)) out.set(from.seq, [...list, on]);
  };
  /** The newest note in which a finding of the key stood. */
  const found = new Map<string, NoteEntry>();
  /** Places suspected last, with the note that made them so. */
  let suspected: { places: ReadonlySet<string>; note: NoteEntry } | null = null;
  for (const e of entries) {
    const note = e.is === 'note' ? notes.get(e.id) : undefined;
    if (note)
      for (const fact of note.read.facts)
        if (fact.is === 'work' && fact.done && suspected?.places.has(part(fact.where.v)))
          add(suspected.note, { seq: note.seq, words: `${fact.what.v} ${fact.where.v}` });
    const from = e.is === 'reply' ? notes.get(e.to) : undefined;
    if (e.is !== 'reply' || !from) continue;
    for (const b of e.blocks) {
      if (b.is === 'findings')
        for (const f of b.list) {
          const before = found.get(f.key);
          if (before && before.seq !== from.seq) add(before, { seq: from.seq, words: `again: ${f.words}`, key: f.key });
          found.set(f.key, from);
        }
      if (b.is === 'suspects')
        suspected = { places: new Set(b.list.flatMap((s) => (s.where ? [part(s.where)] : []))), note: from };
      if (b.is === 'check' || b.is === 'question') {
        const answer = live.find((n) => n.seq > from.seq && n.read.facts.length > 0);
        if (answer) add(from, { seq: answer.seq, words: `${b.words} “${answer.text}”` });
      }
    }
  }
  return out;
};
