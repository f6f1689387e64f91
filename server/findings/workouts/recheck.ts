/** What is to be measured again after shims, a bar, an arm, a switch or a repair of the air side. */
import { doings, practice } from '../case.ts';
import { recheckOf, rechecks } from '../recheck-after.ts';
import type { Question, Workout, Worked } from './question.ts';

const work = (q: Question): Worked | null => {
  if (!/re-?check|check (?:again|after)/.test(q.words)) return null;
  const last = doings(q.c).findLast(
    (f) => f.is === 'work' && f.done && f.what.v !== 'checked' && f.what.v !== 'soaped',
  );
  const hit = rechecks.find((a) => a.asked.test(q.words)) ?? (last?.is === 'work' ? recheckOf(last) : undefined);
  const base = hit ?? rechecks.at(-1)!;
  return {
    words: base.words,
    lines: [...base.lines],
    why: { formula: 'what the work moves is measured again, nearest first', inputs: [], source: practice(), notes: [] },
  };
};

export const recheck: Workout = { subject: 'what to recheck', work };
