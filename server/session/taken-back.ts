/** What corrections have taken back: the one rule for the board and for the page. Pure. */
import type { FactId, NoteId } from '../../intents/shapes.ts';
import type { NoteEntry } from './entry.ts';

/** Notes taken back: a note is void when a later note that is not itself void undoes it. */
export const voidNotes = (notes: readonly NoteEntry[]): ReadonlySet<NoteId> => {
  const gone = new Set<NoteId>();
  for (const note of notes.toReversed()) {
    if (gone.has(note.id)) continue;
    for (const amend of note.read.amends) for (const id of amend.notes) gone.add(id);
  }
  return gone;
};

/** Facts that corrections in force have dropped. */
export const droppedBy = (notes: readonly NoteEntry[], gone: ReadonlySet<NoteId>): ReadonlySet<FactId> => {
  const dropped = new Set<FactId>();
  for (const note of notes)
    if (!gone.has(note.id))
      for (const amend of note.read.amends)
        if (amend.do === 'drop' || amend.do === 'put') for (const id of amend.drops) dropped.add(id);
  return dropped;
};
