/** What a 12 V battery must still show at the end of a load test, and how the test is set up. */
import { loadTestLeast } from '../core/battery.ts';
import { si } from '../core/quantity.ts';
import { toSi } from '../core/units.ts';
import { type Case, type Input, latest } from './case.ts';
import type { Source } from './finding.ts';
import { shown, typed } from './show.ts';

/** Taken where none was said. */
const warm = 70;

export const loadTestSource: Source = {
  kind: 'rule',
  words: "a table several makers' workshop manuals share, BCI pattern: half the cold-cranking amps for 15 s",
};

export type LoadTest = {
  readonly least: number;
  readonly at: Input;
  /** Half the cold-cranking current, A; null where the sheet has none. */
  readonly load: number | null;
  readonly inputs: Input[];
  readonly notes: string[];
  readonly because: string[];
  readonly wants?: { field: string; question: string };
};

/** At `told` (a temperature said in a question), else as last read at battery or outside, else 70 F. */
export const loadTestOf = (c: Case, told?: { si: number; text: string }): LoadTest => {
  const read = told ? undefined : latest(c, 'temperature', (p) => p === 'battery' || p === 'ambient' || p === '');
  const at: Input = told
    ? { name: 'temperature', text: told.text, from: 'said in the question' }
    : read
      ? { name: 'temperature', text: typed(read.amount.v), from: read.id }
      : { name: 'temperature', text: '70 F (21 C)', from: 'assumed' };
  const least = loadTestLeast(si(told?.si ?? read?.amount.v.si ?? toSi(warm, 'F')));
  const cca = c.sheet.electrics?.battery?.cca;
  const load = cca ? cca.si / 2 : null;
  return {
    least,
    at,
    load,
    because: read ? [read.id] : [],
    inputs: [
      at,
      ...(cca && load !== null
        ? [
            {
              name: 'load',
              text: `${shown(load, 'A', 0.5).text}, half of ${cca.text}`,
              from: 'sheet: electrics.battery.cca',
            },
          ]
        : []),
    ],
    notes: [
      'read at the end of the 15 s, load still on; charged to three quarters or more before (12.45 V rested): a flat one fails whatever it is worth',
      "manuals differ: one allows 8.0 V at 0 F (-18 C), another asks a flat 9.7 V; the battery maker's own figure comes first",
      'vent the box, tester off before its clamps come on or off: no sparks near a battery',
    ],
    ...(cca
      ? {}
      : {
          wants: {
            field: 'electrics.battery.cca',
            question: 'How many cold-cranking amps is the battery rated for (CCA)?',
          },
        }),
  };
};
