/** How fast the tank may fall on this coach: the sheet's limit, else the benchmark, named as one. */
import { type Case, type Input, benchmark, benchmarkRate, sheetSource } from './case.ts';
import type { Source } from './finding.ts';

type Limit = { rate: number; words: string; source: Source; inputs: Input[] };

export const leakLimit = (c: Case): Limit => {
  const limit = c.sheet.supply?.leakLimit;
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
