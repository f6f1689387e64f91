/** What the reader is told besides the text: from what stands and the sheet. Pure. */
import type { Context, NoteId } from '../../intents/shapes.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';

/** How many notes back a correction may aim. */
const reach = 12;

/** This coach's own words for panel positions and lines, lower case, to canonical words. */
export const labelsOf = (sheet: Sheet): Record<string, string> => {
  const out: Record<string, string> = {};
  if (sheet.panel)
    for (const position of ['auto', 'fill', 'empty', 'shut'] as const)
      out[sheet.panel[position].toLowerCase()] = `panel ${position}`;
  for (const line of sheet.lines ?? []) out[line.label.toLowerCase()] = line.what.toLowerCase();
  return out;
};

export const readingOf = (
  sheet: Sheet,
  zone: string,
): Pick<Context, 'zone' | 'traffic' | 'pressureUnit' | 'lengthUnit' | 'labels'> => ({
  zone,
  traffic: sheet.traffic ?? null,
  pressureUnit: sheet.units.pressure,
  lengthUnit: sheet.units.length,
  labels: labelsOf(sheet),
});

/** `seen`: the last entry on the page that typed it; nothing after it can be aimed at by a correction. */
export const contextOf = (standing: Folded, sheet: Sheet, note: { id: NoteId; at: number; seen: number }): Context => ({
  ...readingOf(sheet, standing.zone),
  note: note.id,
  at: note.at,
  open: standing.open,
  recent: standing.tape.notes
    .filter((n) => n.seq <= note.seen && !standing.voided.has(n.id))
    .slice(-reach)
    .map((n) => ({
      id: n.id,
      facts: standing.facts
        .filter((h) => h.note === n.id)
        .concat(standing.held.filter((h) => h.note === n.id))
        .map((h) => h.fact),
    })),
});
