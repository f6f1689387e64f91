/** What one note says in which position of a switch, as the reader gives it. */
import { describe, expect, it } from 'vitest';
import { juniper, standingOf } from '../faults/bench.ts';

/** Each reading or sign of the last note with the position that `of` was in, in order of telling. */
const under = (notes: readonly string[], of: 'panel' | 'arm'): string[] => {
  const standing = standingOf(juniper, notes);
  const last = `note-${String(notes.length - 1).padStart(3, '0')}`;
  return standing.facts.flatMap(({ fact, note }) => {
    if (note !== last || (fact.is !== 'reading' && fact.is !== 'sign')) return [];
    const state = standing.stateAt.get(fact.id)!;
    const told = fact.is === 'reading' ? fact.amount.v.text : `${fact.there ? '' : 'no '}${fact.what.v}`;
    return [`${told}: ${of === 'panel' ? state.panel : state.arm.left}`];
  });
};

describe('a note that moves the very same switch', () => {
  it.each([
    ['left bag 60 in AUTO, 58 in SHUT', ['60: auto', '58: shut']],
    ['left rear sinks in auto, holds in shut', ['sags: auto', 'holds: shut']],
    ['panel auto tank 96, panel shut tank 94', ['96: auto', '94: shut']],
    ['panel shut, LR 12 1/2; in auto 13', ['12 1/2: shut', '13: auto']],
  ])('%s', (note, told) => {
    expect(under([note], 'panel')).toEqual(told);
    // whatever stood before it
    expect(under(['panel fill', note], 'panel')).toEqual(told);
  });

  it('goes by the arm as well', () => {
    expect(under(['left arm up 60 at the left bag, left arm neutral 58'], 'arm')).toEqual(['60: fill', '58: neutral']);
  });

  it('leaves the coach in the position told last', () => {
    expect(standingOf(juniper, ['left bag 60 in AUTO, 58 in SHUT']).state.panel).toBe('shut');
    expect(standingOf(juniper, ['panel shut, LR 12 1/2; in auto 13']).state.panel).toBe('auto');
  });
});

describe('a note that moves none twice', () => {
  it('counts its states before its readings, wherever they stand in it', () => {
    expect(under(['95 psi, LR 13, panel shut'], 'panel')).toEqual(['95 psi: shut', '13: shut']);
    expect(under(['panel auto', 'tank 96 key off panel shut'], 'panel')).toEqual(['96: shut']);
  });
});
