/** Commands to the assistant: steps of a guide, timers, practice, report, closing. */
import type { Ask } from '../../intents/shapes.ts';
import { provedWords } from '../faults/after.ts';
import { nextBlock } from '../faults/next-block.ts';
import { openProof, provedOf } from '../faults/proof.ts';
import { weigh } from '../faults/weigh.ts';
import { guideById, guideEnded, stepBlock } from '../guides/steps.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import { circuitNow } from './circuit-now.ts';
import type { Block } from './reply.ts';
import { summaryBlocks } from './summary.ts';

const say = (words: string, lines: readonly string[] = []): Block => ({
  is: 'teach',
  words,
  lines: [...lines],
  terms: [],
});

const inGuide = (standing: Folded, sheet: Sheet, by: number): Block[] => {
  const at = standing.guide;
  const guide = at ? guideById(at.id) : undefined;
  if (!at || !guide) return [say('No guide is open. Ask "how do i ..." to begin one.')];
  const step = at.step + by;
  if (step >= guide.steps.length) return [guideEnded(guide)];
  return stepBlock(guide, Math.max(0, step), sheet, standing.gates, circuitNow(standing, sheet));
};

export const commandBlocks = (ask: Ask, standing: Folded, sheet: Sheet): Block[] => {
  switch (ask.about) {
    case 'next step':
      return inGuide(standing, sheet, 1);
    case 'back':
      return inGuide(standing, sheet, -1);
    case 'stop guide': {
      const guide = standing.guide ? guideById(standing.guide.id) : undefined;
      return guide ? [guideEnded(guide)] : [say('No guide is open.')];
    }
    case 'skip check': {
      const next = nextBlock(standing, sheet);
      return [
        say('Left out. What is typed of it later is taken all the same.'),
        ...(next ? [next] : [say('Nothing else is worth its minutes now.')]),
      ];
    }
    case 'start timer':
    case 'stop timer':
      return [
        say(
          ask.about === 'start timer'
            ? 'The timer runs on this page. Type the reading when it rings.'
            : 'Timer stopped.',
        ),
      ];
    case 'practice':
      return [
        say(
          'Practice has a coach of its own: open it from the list of sessions, so that nothing of it mixes with this coach.',
        ),
      ];
    case 'report':
    case 'show readings':
      return [
        ...summaryBlocks(standing, sheet),
        say('The whole of it stands under "transcript", to print or to take along as CSV or JSON.'),
      ];
    case 'close session':
      return [
        say(
          'Sign it off with "close" at the top of the session: initials, and what you leave it as.',
          closing(standing, sheet),
        ),
      ];
    case 'save sheet':
      return [
        say(
          "A limit given in a note holds for this session. To keep it, put it on the coach's sheet file and start a new session.",
        ),
      ];
    default:
      return [say('That I cannot do.')];
  }
};

const closing = (standing: Folded, sheet: Sheet): string[] => [
  ...standing.pending.map((g) => `Not answered: ${g.words}`),
  ...proofLines(standing, sheet),
];

/** What proves the repair, before and after; else what is still to be shown. */
const proofLines = (standing: Folded, sheet: Sheet): string[] => {
  const w = weigh(standing, sheet);
  const proved = provedOf(w, standing);
  if (proved) return [provedWords(proved, standing.complaint)];
  const open = openProof(w, standing);
  if (open) return [`Still to be shown: ${open.check.words}`];
  return untested(standing);
};

const untested = (standing: Folded): string[] =>
  standing.facts.some(
    ({ fact }) => fact.is === 'work' && (fact.what.v === 'overnight tested' || fact.what.v === 'road tested'),
  )
    ? []
    : ['No proof typed yet: overnight in AUTO for a standing complaint, a road test and recheck for arms and bellows.'];
