/** How fast the tank may fall on this coach: the sheet's limit, else the benchmark, named as one. */
import type { SpecFact } from '../../intents/shapes.ts';
import { type Case, type Input, benchmark, benchmarkRate, noteSource, sheetSource } from './case.ts';
import type { Source } from './finding.ts';
import { typed } from './show.ts';

type Limit = { rate: number; words: string; source: Source; inputs: Input[] };

export const leakLimit = (c: Case): Limit => {
  const limit = c.sheet.supply?.leakLimit;
  // a limit given in a note holds for the session
  const said = c.facts.findLast(
    (f): f is SpecFact => f.is === 'spec' && f.what.v === 'pressure fall' && f.over !== undefined,
  );
  if (said?.over && said.over.si > 0) {
    const words = `${typed(said.high, true)} in ${typed(said.over)}`;
    return {
      rate: said.high.si / said.over.si,
      words,
      source: noteSource(),
      inputs: [{ name: 'limit', text: words, from: 'given in a note' }],
    };
  }
  return limit
    ? {
        rate: limit.fall.si / limit.over.si,
        words: `${limit.fall.text} in ${limit.over.text}`,
        source: sheetSource('supply.leakLimit'),
        inputs: [{ name: 'limit', text: `${limit.fall.text} in ${limit.over.text}`, from: 'sheet: supply.leakLimit' }],
      }
    : {
        rate: benchmarkRate,
        words: '3 psi in 5 min',
        source: benchmark(),
        inputs: [{ name: 'limit', text: '3 psi in 5 min', from: benchmark().words }],
      };
};
