/** Answers to questions and commands. Pure: the same for a logged note and for a question that is not kept. */
import type { Ask } from '../../intents/shapes.ts';
import { whatKilledIt } from '../faults/after.ts';
import { explainWhy, whatIf } from '../faults/explain.ts';
import { howSure, whatWouldChange } from '../faults/sure.ts';
import { explainWhyNot } from '../faults/why-not.ts';
import { nextBlock } from '../faults/next-block.ts';
import { workOut } from '../findings/workout.ts';
import { glossaryFor, glossaryIn } from '../guides/glossary.ts';
import { guideFor, stepBlock } from '../guides/steps.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import { elsewhereBlocks, helpBlocks, safeBlocks, talkBlocks } from './asides.ts';
import { commandBlocks } from './commands.ts';
import { circuitNow } from './circuit-now.ts';
import type { Block } from './reply.ts';
import { summaryBlocks } from './summary.ts';
import { supposed } from './supposed.ts';
import { teach } from './teach.ts';

type Worked = NonNullable<ReturnType<typeof workOut>>;
const workedBlocks = (worked: Worked): Block[] => [
  teach(worked.words, worked.lines, worked.why),
  ...(worked.drawing ? [{ is: 'picture' as const, words: worked.words, drawing: worked.drawing }] : []),
  ...(worked.wants
    ? [{ is: 'question' as const, id: `wants-${worked.wants.field}`, words: worked.wants.question, keys: [] }]
    : []),
];

const answersWithSession = (ask: Ask, standing: Folded, sheet: Sheet, at: number): Block[] => {
  switch (ask.ask) {
    case 'next': {
      // In a guide a bare "next" is its next step; "what next" is still the next check.
      if (standing.guide && /^\s*next\W*$/i.test(ask.words))
        return commandBlocks({ ...ask, about: 'next step' }, standing, sheet);
      const next = nextBlock(standing, sheet);
      return next
        ? [next]
        : [teach('Nothing stands open. Tell me what you see: tank pressure, four heights, what the pump does.')];
    }
    case 'why':
      if (
        /\b(?:killed|caused|broke|ruined|wrecked|cooked|burnt|brought|root cause|what (?:else|other))\b/i.test(
          ask.words,
        )
      ) {
        const [first, ...more] = whatKilledIt(standing, sheet);
        if (first) return [teach(first, more)];
      }
      return explainWhy(ask.about, ask.words, standing, sheet).map((e) => teach(e.words, e.lines, e.why));
    case 'why not':
      return explainWhyNot(ask.about, standing, sheet).map((e) => teach(e.words, e.lines, e.why));
    case 'how sure':
      return (/\b(?:change|sway|prove|disprove)\b/i.test(ask.words) ? whatWouldChange : howSure)(standing, sheet).map(
        (e) => teach(e.words, e.lines, e.why),
      );
    case 'what if': {
      const blocks = supposed(ask, standing, sheet, at);
      if (blocks.length > 0) return blocks;
      return whatIf(ask.words, standing, sheet).map((e) => teach(e.words, e.lines, e.why));
    }
    case 'summary':
      return summaryBlocks(standing, sheet);
    case 'safe': {
      // "can i hear it" is a question of size, not of safety
      const worked = /\b(?:drive|safe|road|under|move|go)\b/i.test(ask.words) ? null : workOut(ask, standing, sheet);
      return worked ? workedBlocks(worked) : safeBlocks(standing);
    }
    case 'command':
      return commandBlocks(ask, standing, sheet);
    case 'meaning':
    case 'limit':
    case 'how long':
    case 'work out': {
      // Names nothing: what was found last is meant.
      if (/^\W*(?:so |and |ok )?what (?:does|do) (?:that|this|it) mean\W*$/i.test(ask.words))
        return explainWhy(undefined, ask.words, standing, sheet).map((e) => teach(e.words, e.lines, e.why));
      const worked = workOut(ask, standing, sheet);
      if (worked) return workedBlocks(worked);
      return answersAlone({ ...ask, ask: 'what is' });
    }
    case 'how': {
      const guide = guideFor(ask.words) ?? guideFor(ask.about ?? '');
      return guide
        ? stepBlock(guide, 0, sheet, standing.gates, circuitNow(standing, sheet))
        : answersAlone({ ...ask, ask: 'what is' });
    }
    case 'what is': {
      // "what is due", "what does a full water tank do": sums without a number of their own.
      const sum =
        /\d|\bdue\b|\batmospher|\babsolute\b|\b(?:air )?(?:volume|room)\b|\bfull (?:fresh |water )|\bshims? (?:do|should) i\b/i.test(
          ask.words,
        );
      const worked = sum || !inGlossary(ask) ? workOut(ask, standing, sheet) : null;
      return worked ? workedBlocks(worked) : answersAlone(ask);
    }
    case 'help':
    case 'talk':
    case 'elsewhere':
      return answersAlone(ask);
  }
};

const inGlossary = (ask: Ask): boolean => (glossaryFor(ask.about ?? '') ?? glossaryFor(ask.words)) !== undefined;

/** What needs no session: the glossary, help, courtesy. */
const answersAlone = (ask: Ask): Block[] => {
  switch (ask.ask) {
    case 'talk':
      return talkBlocks();
    case 'elsewhere':
      return elsewhereBlocks(ask.about ?? 'that');
    case 'help':
      return helpBlocks();
    default: {
      const entry = glossaryFor(ask.about ?? '') ?? glossaryIn(ask.words);
      if (entry)
        return [
          teach(`${entry.term}: ${entry.plain}`, [
            entry.why,
            ...(entry.see.length > 0 ? [`See also: ${entry.see.join(', ')}`] : []),
          ]),
        ];
      return [
        teach('I have no answer to that.', [
          'Ask "what next", "why ...", "how do I ...", "what is a ...", "summary", or type what you see.',
        ]),
      ];
    }
  }
};

/** `at`: ms since the epoch, for what is supposed to be so now. */
export const answerAsk = (ask: Ask, standing: Folded, sheet: Sheet, { at }: { at: number }): Block[] =>
  answersWithSession(ask, standing, sheet, at);
export { answersAlone };
