/** Turns that are no repair: a frozen part warmed, a coach moved to a level floor. What was said before is of another state. Pure. */
import { takePlace } from '../../intents/place.ts';
import type { Standing } from '../session/standing.ts';
import { kindOfSee, sideOfSee } from './observables.ts';
import type { Mend } from './situation.ts';
import { type Evidence, trustSeen } from './told.ts';

const freezes: readonly string[] = [
  'height valve',
  'line',
  'bellows line',
  'supply line',
  'valve to panel line',
  'drain',
];
/** Valves and lines that were warmed: what was frozen is free from then on. */
export const thawsOf = (standing: Standing): Pick<Mend, 'clock' | 'side'>[] =>
  standing.facts.flatMap(({ fact }, clock) => {
    if (fact.is !== 'sign' || !fact.there || (fact.what.v !== 'warm' && fact.what.v !== 'hot')) return [];
    const place = takePlace(fact.where.v);
    if (!freezes.includes(place?.part ?? '')) return [];
    return [{ clock, side: place?.side === 'left' || place?.side === 'right' ? place.side : null }];
  });

/** Filled after it was warmed, and not before. */
export const thawEvidence = (
  known: readonly Evidence[],
  thaws: readonly Pick<Mend, 'clock' | 'side'>[],
): Evidence[] => {
  const fills = (e: Evidence, yes: boolean): boolean =>
    kindOfSee(e.see) === 'valve fills' && (yes ? e.outcome === 'yes' : e.outcome === 'no');
  return thaws.slice(0, 1).flatMap(({ clock }): Evidence[] => {
    const before = known.find((e) => e.clock < clock && fills(e, false));
    const after = known.find((e) => e.clock > clock && fills(e, true));
    return before && after ? [{ ...after, see: 'warm up', outcome: 'cured', words: `${after.words} once warmed` }] : [];
  });
};

/** A side that was off, taped again on a floor said to be level: did it come right by itself? */
export const movedEvidence = (known: readonly Evidence[]): Evidence[] => {
  const moved = known.find((e) => e.see === 'floor' && e.outcome === 'level');
  if (!moved || !known.some((e) => e.clock < moved.clock && isOff(e))) return [];
  const offBefore = known.filter((e) => e.clock < moved.clock && isOff(e));
  const after = offBefore.flatMap((off) => known.find((e) => e.see === off.see && e.clock > moved.clock) ?? []);
  const [last] = after.toSorted((a, b) => b.clock - a.clock);
  if (!last) return [];
  const right = after.every((e) => e.outcome === 'within');
  return [
    {
      ...last,
      see: 'moved to level',
      outcome: right ? 'level' : 'still off',
      words: `${last.words} on the level floor`,
    },
  ];
};
const isOff = (e: Evidence): boolean =>
  kindOfSee(e.see) === 'rear height' && ['low', 'far low', 'high'].includes(e.outcome);
/** What stood on a floor that turned out not to be level says nothing of the coach. */
export const onSlope = (known: readonly Evidence[]): ReadonlySet<Evidence> => {
  const came = known.find((e) => e.see === 'moved to level' && e.outcome === 'level');
  const moved = known.find((e) => e.see === 'floor' && e.outcome === 'level');
  return new Set(came && moved ? known.filter((e) => e.clock < moved.clock && (isOff(e) || e.see === 'lean')) : []);
};

/**
 * Found low with more in the tank than a bellows carries: whatever let it down, it was no check that leaks back, since
 * nothing runs from the bellows into a fuller tank.
 */
export const downWithTankUp = (known: readonly Evidence[]): Evidence[] => {
  const tank = known.findLast((e) => e.see === 'tank as found' && e.outcome === 'up');
  if (!tank) return [];
  return known
    .filter((e) => kindOfSee(e.see) === 'as found' && ['low', 'far low', 'on stops'].includes(e.outcome))
    .map((e) => ({
      ...e,
      see: `${sideOfSee(e.see) ?? 'left'} down with the tank up`,
      outcome: 'yes',
      // two figures, and nothing to misjudge between them
      weight: trustSeen,
      because: [...e.because, ...tank.because],
      words: `${e.words} with the ${tank.words}`,
      clock: Math.max(e.clock, tank.clock),
    }));
};
