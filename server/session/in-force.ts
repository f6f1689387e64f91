/** Which facts of the notes are in force, and in what order they count. Pure. */
import type { FactId, NoteId } from '../../intents/shapes.ts';
import type { NoteEntry } from './entry.ts';
import { runsOf } from './said-order.ts';
import type { Held } from './standing.ts';

/** A fact with what it is ordered by: the time it counts from, then the note, conditions before readings (said-order.ts). */
export type Row = { readonly held: Held; readonly from: number; readonly order: number };

export const later = (a: Row, b: Row): number => a.from - b.from || a.order - b.order;

/** Rows of `notes` in order of time; conditions of a note count from its earliest reading on. */
export const inForce = (
  notes: readonly NoteEntry[],
  gone: ReadonlySet<NoteId>,
  dropped: ReadonlySet<FactId>,
): readonly Row[] => {
  const out: Row[] = [];
  for (const note of notes) {
    if (gone.has(note.id)) continue;
    const facts = [...note.read.facts, ...note.read.amends.flatMap((a) => (a.do === 'put' ? a.puts : []))].filter(
      (f) => !dropped.has(f.id),
    );
    const runs = runsOf(facts);
    for (const [i, run] of runs.entries()) {
      const earliest = run.reduce((t, f) => Math.min(t, f.at), note.at);
      for (const fact of run) {
        const states = fact.is === 'condition' || fact.is === 'work';
        out.push({
          held: { fact, seq: note.seq, note: note.id, by: note.by },
          from: fact.is === 'condition' && !fact.when ? earliest : fact.at,
          order: note.seq * 2 + (i * 2 + (states ? 0 : 1)) / runs.length,
        });
      }
    }
  }
  return out.toSorted(later);
};
