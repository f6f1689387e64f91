/** A session in one line, for lists. */
import type { Entry } from '../session/entry.ts';
import type { SessionLine } from './log.ts';

/** Null where there is no entry. The words are the first note that says a sign, else the first note. */
export const lineOf = (entries: readonly Entry[]): SessionLine | null => {
  const first = entries[0];
  const last = entries.at(-1);
  if (first?.is !== 'opened' || !last) return null;
  const notes = entries.filter((e) => e.is === 'note');
  const complaint = notes.find((n) => n.read.facts.some((f) => f.is === 'sign')) ?? notes[0];
  const closing = entries.findLast((e) => e.is === 'closed' || e.is === 'reopened');
  return {
    session: first.session,
    coach: first.coach,
    opened: first.kept,
    last: last.kept,
    seq: last.seq,
    closed: closing?.is === 'closed',
    practice: first.practice !== undefined,
    words: complaint?.text ?? '',
  };
};
