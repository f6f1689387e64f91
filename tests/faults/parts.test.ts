/** How sure it is of a part: any of its faults, each set of faults counted once. */
import { describe, expect, test } from 'vitest';
import { anyOf } from '../../server/faults/suspects.ts';
import { pairAt, type Posterior } from '../../server/faults/infer.ts';

/** A made-up posterior over sets of 3 faults, its marginals counted out from the sets. */
const sets: readonly (readonly [readonly number[], number])[] = [
  [[], 0.2],
  [[0], 0.3],
  [[1], 0.1],
  [[2], 0.15],
  [[0, 1], 0.08],
  [[0, 2], 0.07],
  [[1, 2], 0.04],
  [[0, 1, 2], 0.06],
];
const posterior = (): Posterior => {
  const n = 3;
  const [singles, marginals, pairs] = [new Float64Array(n), new Float64Array(n), new Float64Array((n * (n - 1)) / 2)];
  for (const [of, p] of sets) {
    for (const i of of) marginals[i]! += p;
    if (of.length === 1) singles[of[0]!] = p;
    if (of.length === 2) pairs[pairAt(n, of[0]!, of[1]!)] = p;
  }
  return { n, none: 0.2, unknown: 0, singles, pairs, triples: [{ of: [0, 1, 2], p: 0.06 }], marginals, logEvidence: 0 };
};

describe('the chance of any fault of a part', () => {
  test.each([[[0]], [[1]], [[0, 1]], [[1, 2]], [[0, 1, 2]]])(
    'of %j is what the sets that hold one of them add up to',
    (part) => {
      const counted = sets.reduce((sum, [of, p]) => sum + (of.some((i) => part.includes(i)) ? p : 0), 0);
      expect(anyOf(posterior(), new Set(part))).toBeCloseTo(counted, 12);
    },
  );
});
