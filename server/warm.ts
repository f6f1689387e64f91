/**
 * Types a few notes on each coach in memory once the server listens, so that the first tech of the morning does not wait
 * for tables to be built. Yields between notes: a real note is never kept waiting behind more than one of these.
 */
import { makeDesk } from './desk.ts';
import { memoryLog } from './log/memory.ts';
import type { LoadedSheet } from './sheet/load.ts';

const notes = ['sags overnight', 'tank 95, left rear low', 'panel shut', 'tank 93', 'bubbles at left bag crimp'];
/** A cold note takes 200 ms, the second of its kind 20, a warm one two: what runs often is compiled for it. */
const rounds = 4;

export const warmUp = async (sheets: ReadonlyMap<string, LoadedSheet>): Promise<void> => {
  const desk = makeDesk({ log: memoryLog(), sheets, engine: 'warm', now: Date.now });
  for (let round = 0; round < rounds; round += 1)
    for (const coach of sheets.keys()) {
      const session = `warm-${round}-${coach}`.slice(0, 40);
      await desk.open({ session, coach, by: 'warm' });
      for (const [i, text] of notes.entries()) {
        await new Promise((resolve) => setTimeout(resolve, 20));
        await desk.note(session, { id: `${session.slice(0, 30)}-${i}`, text, at: Date.now(), seen: 99, by: 'warm' });
      }
    }
};
