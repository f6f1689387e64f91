/** How the suspects would stand after an answer nobody has given yet. Pure: nothing of it is kept. */
import type { Standing } from '../session/standing.ts';
import type { CheckKey } from './check.ts';
import { mendsOf } from './situation.ts';
import { weighEvidence, type Weighed } from './weigh.ts';

/** How far an answer that is only supposed is trusted: as one typed with care. */
const trust = 0.97;

/** `w` with what `gives` would show weighed in as the newest evidence; its own words are `words`. */
export const supposing = (w: Weighed, standing: Standing, gives: CheckKey['gives'], words = ''): Weighed =>
  weighEvidence(
    w.model,
    [
      ...w.evidence,
      ...gives.map(([see, outcome]) => ({
        see,
        outcome,
        weight: trust,
        because: [],
        seq: standing.seq + 1,
        words,
        clock: standing.facts.length,
      })),
    ],
    mendsOf(standing),
    false,
  );
