/** How a battery is load tested, and what it must show. */
import { loadTestOf, loadTestSource } from '../load-test.ts';
import { shown } from '../show.ts';
import { said, type Workout } from './question.ts';

export const loadTests: Workout = {
  subject: 'load test',
  work: (q) => {
    if (!/\bload[ -]?test/.test(q.words)) return null;
    const test = loadTestOf(q.c, said(q, 'temperature')[0]);
    return {
      words: `at least ${shown(test.least, 'V', 0.05).text} at ${test.at.text}${test.at.from === 'assumed' ? ', assumed' : ''}, after 15 s at ${test.load === null ? 'half its cold-cranking amps' : shown(test.load, 'A', 0.5).text}`,
      lines: test.notes,
      why: {
        formula: 'least volts by temperature, straight between 0 F (8.5 V) and 70 F (9.6 V)',
        inputs: test.inputs,
        source: loadTestSource,
        notes: [],
      },
      ...(test.wants ? { wants: test.wants } : {}),
    };
  },
};
