/** Corrections name their target before anything is stored. Pure. */
import type { Amend, NoteId, Reading } from '../../intents/shapes.ts';
import type { Folded } from '../session/fold.ts';

const isUndo = (standing: Folded, id: NoteId): boolean => {
  const note = standing.tape.notes.find((n) => n.id === id);
  return note?.read.amends.some((a) => a.do === 'undo' || a.do === 'redo') ?? false;
};

/** Notes an undo takes back: the newest `count` in force that the page had seen, corrections among them. */
const undoTargets = (standing: Folded, seen: number, count: number): NoteId[] =>
  standing.tape.notes
    .filter((n) => n.seq <= seen && !standing.voided.has(n.id))
    .filter((n) => n.read.facts.length > 0 || n.read.amends.length > 0)
    .slice(-count)
    .map((n) => n.id);

const redoTargets = (standing: Folded, seen: number, count: number): NoteId[] =>
  standing.tape.notes
    .filter((n) => n.seq <= seen && !standing.voided.has(n.id) && isUndo(standing, n.id))
    .slice(-count)
    .map((n) => n.id);

export type Resolved = {
  read: Reading;
  /** Corrections that could not be aimed, with the question to put. */
  open: { amend: Amend; question: string }[];
};

/**
 * `read` with every correction aimed at notes or facts in force. One that cannot be aimed, or that another page's note
 * has overtaken since this page last looked, keeps empty targets and comes back as a question.
 */
export const aim = (read: Reading, standing: Folded, seen: number): Resolved => {
  const overtaken = standing.tape.notes.some((n) => n.seq > seen && !standing.voided.has(n.id));
  const open: Resolved['open'] = [];
  const amends = read.amends.map((amend): Amend => {
    let aimed = amend;
    if (amend.do === 'undo' || (amend.do === 'drop' && amend.drops.length === 0))
      aimed = { ...amend, notes: undoTargets(standing, seen, amend.count) };
    else if (amend.do === 'redo') aimed = { ...amend, notes: redoTargets(standing, seen, amend.count) };
    const empty = aimed.notes.length === 0 && aimed.drops.length === 0;
    if (!overtaken && !empty) return aimed;
    open.push({
      amend,
      question: overtaken
        ? 'Another note came in meanwhile. Which one do you mean?'
        : amend.do === 'redo'
          ? 'There is nothing taken back to restore.'
          : amend.do === 'undo' || amend.do === 'drop'
            ? 'There is no note to take back.'
            : 'Which reading should I change?',
    });
    return { ...aimed, notes: [], drops: [], puts: [] };
  });
  return { read: { ...read, amends }, open };
};
