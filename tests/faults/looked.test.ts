/** What is looked at itself speaks louder than what it brings about. */
import { expect, test } from 'vitest';
import { evidenceOf } from '../../server/faults/evidence.ts';
import { suspectsOf } from '../../server/faults/suspects.ts';
import { weigh } from '../../server/faults/weigh.ts';
import { juniper, standingOf } from './bench.ts';

const first = (notes: readonly string[]): string => suspectsOf(standingOf(juniper, notes), juniper)[0]?.name ?? '';
const slow = ['left side low, tank 110', 'left bag 12 psi, right bag 58'];

test('a plugged screen at the valve is the plugged feed; a clean one is not', () => {
  const plugged = 'left height valve inlet or its screen is plugged';
  expect(first(slow)).not.toBe(plugged);
  expect(first([...slow, 'left valve screen plugged with rust'])).toBe(plugged);
  const p = (notes: readonly string[]): number => weigh(standingOf(juniper, notes), juniper).posterior.marginals[at]!;
  const at = weigh(standingOf(juniper, slow), juniper).model.faults.findIndex(
    (f) => f.key === 'left valve feed plugged',
  );
  expect(p([...slow, 'left valve screen ok'])).toBeLessThan(p(slow) / 5);
});

test('what one of two parts does, which one not said, is of neither until it is', () => {
  const told = (note: string): string[] =>
    evidenceOf(standingOf(juniper, ['arm up', note]), juniper).map((e) => `${e.see}: ${e.outcome}`);
  expect(told('nothing goes into the bag')).toEqual([]);
  expect(told('links look fine')).toEqual(['left link look: fine', 'right link look: fine']);
  expect(told('nothing goes into the left bag').some((e) => e.startsWith('left '))).toBe(true);
  expect(told('nothing goes into the left bag').some((e) => e.startsWith('right '))).toBe(false);
});
