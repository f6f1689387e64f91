/**
 * The order of what one note said: states before what was read under them, except where the note moves the very same
 * state ("left bag 60 in AUTO, 58 in SHUT", "sinks in auto, holds in shut"): then each position goes before what was told
 * with it. Pure.
 */
import { takePlace } from '../../intents/place.ts';
import type { Fact } from '../../intents/shapes.ts';

/** What can stand in one position at a time. */
const switchOf = (fact: Fact): string | null => {
  if (fact.is !== 'condition') return null;
  const [first = ''] = fact.what.v.split(' ');
  return first === 'panel' || first === 'arm' ? `${first} ${takePlace(fact.where.v)?.side ?? ''}` : fact.what.v;
};

/** Position of a switch, or null: not the one that moves. */
const positionOf = (fact: Fact, moved: string | undefined): string | null =>
  fact.is === 'condition' && switchOf(fact) === moved ? `${fact.what.v} ${fact.holds}` : null;

/** The switch that the note moves from one position to another, when anything was read in it. */
const movedIn = (facts: readonly Fact[]): string | undefined => {
  const first = new Map<string, string>();
  for (const fact of facts) {
    const name = switchOf(fact);
    if (name === null || fact.is !== 'condition') continue;
    const position = `${fact.what.v} ${fact.holds}`;
    const had = first.get(name);
    if (had === undefined) first.set(name, position);
    else if (had !== position) return name;
  }
  return undefined;
};

const isTold = (fact: Fact): boolean => fact.is === 'reading' || fact.is === 'sign';

/**
 * Runs of facts in order of time and, where a state moves, in the order it moved; of each run its states count from its
 * first reading on. One run where nothing moves.
 */
export const runsOf = (facts: readonly Fact[]): readonly (readonly Fact[])[] => {
  const moved = movedIn(facts);
  if (moved === undefined) return [facts];
  const lead = facts.find((f) => isTold(f) || positionOf(f, moved) !== null);
  // "60 in auto, 58 in shut": the position comes after its reading; "auto 60, shut 58": before it.
  const after = lead !== undefined && isTold(lead);
  const runs: Fact[][] = [[]];
  for (const fact of facts) {
    const turns = positionOf(fact, moved) !== null;
    if (turns && !after && runs.at(-1)!.length > 0) runs.push([]);
    // What follows the last position was told in it.
    if (after && isTold(fact) && runs.at(-1)!.some((f) => positionOf(f, moved) !== null)) runs.push([]);
    runs.at(-1)!.push(fact);
  }
  return runs;
};
