/** A tank that rises from below cut-in was filled by the pump. */
import { describe, expect, test } from 'vitest';
import { evidenceOf } from '../../server/faults/evidence.ts';
import { suspectsOf } from '../../server/faults/suspects.ts';
import { juniper, standingOf } from './bench.ts';

const ran = (notes: readonly string[]): string[] =>
  evidenceOf(standingOf(juniper, notes), juniper)
    .filter((e) => e.see === 'pump called')
    .map((e) => `${e.outcome}: ${e.words}`);

describe('the pump ran when called', () => {
  test.each<[string, string[], string[]]>([
    ['60 to 110 psi', ['tank 60', 'tank 110'], ['runs: tank rose from 60 psi to 110 psi']],
    ['so little that warming does it', ['tank 60', 'tank 66'], []],
    ['from above cut-in', ['tank 95', 'tank 110'], []],
    ['downwards', ['tank 110', 'tank 60'], []],
    ['filled by hand in between', ['tank 60', 'pumped up the tank', 'tank 110'], []],
    ['with the switch bridged', ['tank 60', 'jumped the pressure switch, pump runs', 'tank 110'], []],
    ['a bag and not the tank', ['left bag 30', 'left bag 60'], []],
  ])('%s', (_name, notes, told) => {
    expect(ran(notes)).toEqual(told);
  });

  test('and so no contact, relay or fuse is suspected any more of keeping it from running', () => {
    const electric = (notes: string[]): boolean =>
      suspectsOf(standingOf(juniper, notes), juniper).some((s) => /contacts|relay|fuse/.test(s.name));
    expect(electric(['tank 60', 'pump wont run'])).toBe(true);
    expect(electric(['tank 60, pump slow to build', 'tank 110'])).toBe(false);
  });
});
