/** What the page says to a note typed at the bench. */
import type { Block } from '../chat/reply.ts';
import { benchOf } from './bench-note.ts';
import { guideById } from './steps.ts';
import { termsIn } from './glossary.ts';

/**
 * The verdict of a bench note as a block, with what it was taken to mean; null when the open guide is not the bench
 * test and the note does not itself say where the air is on, or when it says nothing of bubbles.
 */
export const benchBlock = (note: string, open: { id: string; step: number } | null): Block | null => {
  const set = open ? (guideById(open.id)?.steps[open.step]?.bench ?? null) : null;
  const read = benchOf(note, set);
  if (!read) return null;
  const words = `Bench: air on the ${read.airOn}, arm at ${read.arm}, ${read.port === 'none' ? 'no bubbles' : `bubbles at the ${read.port}`}: ${read.words}.`;
  const lines = [
    ...(read.assumed.length > 0 ? [`Taken from the step, not from the note: ${read.assumed.join(', ')}.`] : []),
    ...(read.again === null ? [] : [`Before it counts: ${read.again}.`]),
    'Common practice, no source.',
  ];
  return { is: 'teach', words, lines, terms: termsIn(words) };
};
