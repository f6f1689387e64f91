/** Facts held against sheet and physics. Pure. */
import type { Fact } from '../../intents/shapes.ts';
import { ImpossibleInput } from '../core/quantity.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { caseOf } from './case.ts';
import type { Finding } from './finding.ts';
import { impossibleWords } from './impossible-words.ts';
import { judges } from './judges/table.ts';

/** A calculation refused its input: said, with the input named, rather than dropped. */
const refusal = (subject: string, error: ImpossibleInput, fresh: readonly Fact[], sheet: Sheet): Finding => ({
  key: `impossible@${subject}`,
  verdict: 'cannot tell',
  words: `${subject} not worked out: ${impossibleWords(error, sheet)}`,
  because: fresh.map((f) => f.id),
  why: { formula: subject, inputs: [], source: { kind: 'physics', words: 'the input cannot be' }, notes: [] },
});

/**
 * Findings that the `fresh` facts touch, among all that stand (`standing.facts` holds the fresh ones too). Held
 * (implausible) facts are not judged. Never raises for what a note can say: an impossible input becomes a finding.
 */
export const judge = (fresh: readonly Fact[], standing: Standing, sheet: Sheet): Finding[] => {
  const counted = fresh.filter((f) => !f.held);
  if (counted.length === 0) return [];
  const c = caseOf(counted, standing, sheet);
  return judges.flatMap((j) => {
    try {
      return j.judge(c);
    } catch (error) {
      if (error instanceof ImpossibleInput) return [refusal(j.subject, error, counted, sheet)];
      throw error;
    }
  });
};
