/** A question to be worked out: its words and numbers, beside what stands. */
import type { Ask } from '../../../intents/shapes.ts';
import type { Amount } from '../../core/amount.ts';
import { type Dimension, type Unit, dimensionOf } from '../../core/units.ts';
import type { Standing } from '../../session/standing.ts';
import type { Sheet } from '../../sheet/schema.ts';
import { type Case, caseOf } from '../case.ts';
import type { Drawing, Why } from '../finding.ts';

export type Worked = {
  words: string;
  lines: string[];
  why?: Why;
  drawing?: Drawing;
  wants?: { field: string; question: string };
};

export type Question = {
  readonly ask: Ask;
  /** Lower case, apostrophes out. */
  readonly words: string;
  /** Numbers said, without units named as the wanted one ("to kPa"). */
  readonly amounts: readonly Amount[];
  readonly c: Case;
  readonly metric: boolean;
};

/** One subject: its answer, or null where the question is not its own. */
export type Workout = { readonly subject: string; readonly work: (q: Question) => Worked | null };

/** "650 kpa" as it is written: the number as typed, the unit by its name. */
const written = (a: Amount): Amount => {
  const number = /^[-+]?[\d.,/ ]*\d/.exec(a.text)?.[0];
  return number === undefined ||
    a.unit === 'count' ||
    dimensionOf(a.unit) === 'duration' ||
    /^(?:to|in|into|as)\b/i.test(a.text)
    ? a
    : { ...a, text: `${number} ${a.unit}` };
};

export const questionOf = (ask: Ask, standing: Standing, sheet: Sheet): Question => ({
  ask,
  words: `${ask.words.toLowerCase().replace(/['’]/g, '')} `.replace(/\s+/g, ' '),
  amounts: ask.amounts.filter((a) => !/^(?:to|in|into|as)\b/i.test(a.text)).map(written),
  c: caseOf([], standing, sheet),
  metric: sheet.units.length !== 'in' && sheet.units.length !== 'ft',
});

/** Amounts of a dimension, in the order they were said. */
export const said = (q: Question, dimension: Dimension): Amount[] =>
  q.amounts.filter((a) => dimensionOf(a.unit) === dimension);

/** Numbers without a unit. */
export const bare = (q: Question): Amount[] => said(q, 'count');

export const amountInput = (name: string, amount: Amount): Why['inputs'][number] => ({
  name,
  text: amount.text,
  from: 'said in the question',
});

/** The unit of a bare length: a fraction is of an inch wherever the coach was built, else the coach's own. */
export const lengthUnit = (q: Question, amount: Amount): Unit =>
  amount.text.includes('/') ? 'in' : q.c.sheet.units.length;
