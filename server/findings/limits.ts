/** A reading held against a range: the shape most findings share. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { rangeText } from '../core/range-text.ts';
import type { Unit } from '../core/units.ts';
import { type Input, type Range, inputOf, middle, physics, spread, unitOf, verdictOf } from './case.ts';
import type { Drawing, Finding, Why } from './finding.ts';
import { shown, shownAmount, typed } from './show.ts';

export const limitOf = (range: Range | null, unit: Unit): Finding['limit'] =>
  range
    ? {
        ...(range.low ? { low: shownAmount(range.low, unit) } : {}),
        ...(range.high ? { high: shownAmount(range.high, unit) } : {}),
        source: range.source,
      }
    : undefined;

/** "85 to 91 psi", "at most 3 psi", "at least 11.0 V". */
export const rangeWords = (range: Range, unit: Unit): string => {
  const low = range.low ? shownAmount(range.low, unit).text : null;
  const high = range.high ? shownAmount(range.high, unit).text : null;
  if (low !== null && low === high) return low;
  const tail = ` ${unit}`;
  const once = low !== null && low.endsWith(tail) && high?.endsWith(tail) === true;
  return rangeText(once ? low.slice(0, -tail.length) : low, high);
};

export const stripOf = (range: Range | null, unit: Unit, pins: Extract<Drawing, { is: 'strip' }>['pins']): Drawing => ({
  is: 'strip',
  unit,
  ...(range?.low ? { low: range.low.si, lowText: shownAmount(range.low, unit).text } : {}),
  ...(range?.high ? { high: range.high.si, highText: shownAmount(range.high, unit).text } : {}),
  ...(range?.nominal ? { nominal: range.nominal.si } : {}),
  pins,
});

export const rangeInputs = (range: Range | null, unit: Unit, name = 'limit'): Input[] =>
  range ? [{ name, text: rangeWords(range, unit), from: range.because[0] ?? range.source.words }] : [];

type Told = {
  key: string;
  name: string;
  /** Words by verdict; the number with its unit is handed in. */
  words: (value: string, verdict: Finding['verdict'], limits: string) => string;
  formula: string;
  notes?: string[];
  inputs?: Input[];
  source?: Why['source'];
  wants?: Finding['wants'];
  evidence?: (verdict: Finding['verdict']) => Finding['evidence'];
};

/** Judges the reading itself against `range`. */
export const againstRange = (fact: ReadingFact, range: Range | null, told: Told): Finding => {
  const unit = unitOf(fact);
  const value = middle(fact.amount.v);
  const pm = spread(fact.amount.v);
  const text = typed(fact.amount.v);
  const verdict = verdictOf(value, pm, range);
  const evidence = told.evidence?.(verdict);
  return {
    key: told.key,
    verdict,
    words: told.words(text, verdict, range ? rangeWords(range, unit) : ''),
    amount: { ...shown(value, unit, pm), text },
    ...(range ? { limit: limitOf(range, unit) } : {}),
    because: [fact.id, ...(range?.because ?? [])],
    why: {
      formula: told.formula,
      inputs: [inputOf(told.name, fact), ...rangeInputs(range, unit), ...(told.inputs ?? [])],
      source: told.source ?? range?.source ?? physics('the reading itself'),
      notes: told.notes ?? [],
    },
    drawing: stripOf(range, unit, [{ si: value, pm, label: text }]),
    ...(!range && told.wants ? { wants: told.wants } : {}),
    ...(evidence && evidence.length > 0 ? { evidence } : {}),
  };
};
