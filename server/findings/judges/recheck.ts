/** After shims, a torsion bar, an arm or the switch was set: what is to be measured again. A repair is proved elsewhere. */
import type { WorkFact } from '../../../intents/shapes.ts';
import { type Judge, practice } from '../case.ts';
import { recheckOf, rechecks } from '../recheck-after.ts';

/** Works that set something; what was renewed has its proof. */
const settings: readonly string[] = ['shimmed', 'adjusted', 'set', 'levelled'];

export const recheck: Judge = {
  subject: 'what to recheck',
  judge: (c) => {
    const last = c.fresh.findLast((f): f is WorkFact => f.is === 'work' && f.done && settings.includes(f.what.v));
    const row = last ? recheckOf(last) : undefined;
    if (!last || !row || row === rechecks.at(-1)) return [];
    return [
      {
        key: `recheck@${last.where.v}`,
        verdict: 'no limit',
        words: row.words,
        because: [last.id],
        why: {
          formula: 'what the work moves is measured again, nearest first',
          inputs: [],
          source: practice(),
          notes: [...row.lines],
        },
      },
    ];
  },
};
