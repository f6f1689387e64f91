/**
 * When repairing costs less than looking on: expected cost of repair against a check, worked by hand (Heckerman, Breese
 * and Rommelse, Decision-theoretic troubleshooting, CACM 38(3), 1995), and the chosen order beside the best there is.
 */
import { describe, expect, test } from 'vitest';
import type { Fault } from '../../server/faults/fault.ts';
import { type Candidate } from '../../server/faults/candidates.ts';
import { costAfter, costOf } from '../../server/faults/costing.ts';
import type { Weighed } from '../../server/faults/weigh.ts';
import { fold } from '../../server/session/fold.ts';
import { excess } from '../measure/diagnosis-exhaustive.ts';
import { juniper } from './bench.ts';

/** Two faults; each repair is proved in 10 minutes: 30 and 60 minutes in all. */
const w = {
  model: { faults: [{ hands: 20, wait: 0 } as Fault, { hands: 50, wait: 0 } as Fault] },
} as unknown as Weighed;
const hs = [
  { of: [0], p: 0.6 },
  { of: [1], p: 0.4 },
];
const looked = (rows: number[][]): Candidate =>
  ({ table: { width: 2, cells: Float64Array.from(rows.flat()) } }) as unknown as Candidate;

describe('two faults, .6 and .4, repairs of 30 and 60 minutes', () => {
  const now = costOf(w, hs, [0.6, 0.4]);
  test('the first by p / cost is tried first; the expected cost is .6 x 30 + .4 x 90 = 54', () => {
    expect(now.first).toBe(0);
    expect(now.cost).toBeCloseTo(54, 9);
  });
  test('a check that tells all leaves .6 x 30 + .4 x 60 = 42: worth making below 12 minutes, and not above', () => {
    const after = costAfter((ps) => costOf(w, hs, ps), hs, looked([[1, 0], [0, 1]])); // prettier-ignore
    expect(after).toBeCloseTo(42, 9);
    expect(11 + after).toBeLessThan(now.cost);
    expect(13 + after).toBeGreaterThan(now.cost);
  });
  test('a check that tells .9 from .1: P(yes) = .58, the two repairs in either order, leaves 46.8', () => {
    // yes: .54 and .04 of .58: cost (.54 x 30 + .04 x 90); no: .06 and .36 of .42: .36/60 > .06/30: second first.
    const byHand = 0.54 * 30 + 0.04 * 90 + 0.36 * 60 + 0.06 * 90;
    expect(byHand).toBeCloseTo(46.8, 9);
    expect(costAfter((ps) => costOf(w, hs, ps), hs, looked([[0.9, 0.1], [0.1, 0.9]]))).toBeCloseTo(byHand, 9); // prettier-ignore
  });
  test('a check that tells nothing saves nothing', () => {
    expect(costAfter((ps) => costOf(w, hs, ps), hs, looked([[0.5, 0.5], [0.5, 0.5]]))).toBeCloseTo(now.cost, 9); // prettier-ignore
  });
  test('both at once cost both repairs', () => {
    expect(costOf(w, [{ of: [0, 1], p: 1 }], [1]).cost).toBeCloseTo(90, 9);
  });
});

test('beside the best order found by trying all orders of four checks, the chosen one costs 2 % more on the mean, 10 % at worst', () => {
  const blank = fold([]);
  const standing = { ...blank, state: { ...blank.state, key: true } };
  const e = excess(juniper, standing, 'rate', 4);
  expect(e.cases).toBeGreaterThanOrEqual(12);
  expect(e.mean).toBeGreaterThanOrEqual(0);
  expect(e.mean).toBeLessThan(0.02);
  expect(e.worst).toBeLessThan(0.1);
}, 30_000);
