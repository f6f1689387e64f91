/**
 * Types a few notes on each coach in memory once the server listens, so that the first tech of the morning does not wait
 * for tables to be built. Yields between notes: a real note is never kept waiting behind more than one of these.
 */
import { makeDesk } from './desk.ts';
import { memoryLog } from './log/memory.ts';
import type { LoadedSheet } from './sheet/load.ts';

const notes = ['sags overnight', 'tank 95, left rear low', 'panel shut', 'tank 93', 'bubbles at left bag crimp'];

export const warmUp = async (sheets: ReadonlyMap<string, LoadedSheet>): Promise<void> => {
  const desk = makeDesk({ log: memoryLog(), sheets, engine: 'warm', now: Date.now });
  for (const coach of sheets.keys()) {
    const session = `warm-${coach}`.slice(0, 40);
    await desk.open({ session, coach, by: 'warm' });
    for (const [i, text] of notes.entries()) {
      await new Promise((resolve) => setTimeout(resolve, 20));
      await desk.note(session, { id: `${session.slice(0, 30)}-${i}`, text, at: Date.now(), seen: 99, by: 'warm' });
    }
  }
};
