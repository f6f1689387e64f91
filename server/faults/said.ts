/** What signs and conditions that were typed say, through the tables in signs/, by the state the coach was in then. Pure. */
import { type PlaceParts, takePlace } from '../../intents/place.ts';
import type { ConditionFact, Sign, SignFact } from '../../intents/shapes.ts';
import { airSide } from '../../intents/words/parts.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { sides } from './fault.ts';
import { askedBefore, fits, momentOf } from './moment.ts';
import { kindOfSee, observableOf } from './observables.ts';
import { air } from './signs/air.ts';
import { looks } from './signs/looks.ts';
import { pump_ } from './signs/pump.ts';
import type { SignRule } from './signs/rule.ts';
import { stance } from './signs/stance.ts';
import { type Evidence, trust, trustComplaint, trustSeen } from './told.ts';

const rules: readonly SignRule[] = [...air, ...looks, ...stance, ...pump_];

/** Looked at, not inferred. */
const looked: ReadonlySet<string> = new Set([
  'bellows look',
  'bump stop look',
  'shock length',
  'link look',
  'valve screen look',
  'line look',
  'supply look',
  'fuse look',
  'discharge look',
]);

const weightOf = (standing: Standing, fact: SignFact, seq: number, see: string): number =>
  fact.word === 'own' && fact.there && looked.has(kindOfSee(see))
    ? trustSeen
    : fact.word === 'told' && standing.complaint?.seq === seq
      ? trustComplaint
      : trust[fact.word];

const wordsOfSign = (fact: SignFact): string =>
  `${fact.there ? '' : 'no '}${fact.what.v}${fact.where.v ? ` at ${fact.where.v}` : ''}${fact.often ? `, ${fact.often}` : ''}`;

/** Said of parts without a side they are of both: nobody finds one of two in order and says so of none. */
const inOrder: ReadonlySet<Sign> = new Set([
  'ok',
  'holds',
  'level',
  'fills',
  'empties',
  'works',
  'reads right',
] as Sign[]);

/** What ails a part that stands on both sides, and which one was not said. */
export const isOneOfTwo = (fact: SignFact, place: PlaceParts): boolean =>
  fact.there &&
  place.side === undefined &&
  place.part !== undefined &&
  airSide.has(place.part) &&
  !inOrder.has(fact.what.v);

export const signEvidence = (standing: Standing, sheet: Sheet, index: number, fact: SignFact): Evidence[] => {
  const place = takePlace(fact.where.v);
  if (!place) return [];
  const moment = momentOf(standing, sheet, index);
  const part = place.part ?? '';
  // "nothing goes into the bag": of one of the two, and which one is asked; "no bubbles at the bags" is of both
  const oneOfTwo = isOneOfTwo(fact, place);
  const found = rules.find(
    (r) =>
      !(r.side === 'each' && oneOfTwo) &&
      r.there === fact.there &&
      r.signs.includes(fact.what.v) &&
      r.parts.includes(part) &&
      (r.end === undefined || r.end === place.end) &&
      (r.side === 'any' ||
        (r.side === 'side'
          ? place.side !== undefined
          : place.side === undefined || (r.side === 'each' && place.side === 'both'))) &&
      fits(r.when, moment),
  );
  const front = place.end === 'front' && (part === '' || part === 'wheel');
  const on = place.side === undefined || place.side === 'both' ? sides : [place.side];
  const held = standing.facts[index]!;
  const one = (see: string, outcome: string): Evidence => ({
    see,
    outcome,
    weight: weightOf(standing, fact, held.seq, see),
    because: [fact.id],
    seq: held.seq,
    words: wordsOfSign(fact),
    clock: index,
  });
  if (front && fact.there && (fact.what.v === 'low' || fact.what.v === 'high' || fact.what.v === 'level'))
    return on.map((side) => one(`${side} front height`, fact.what.v === 'level' ? 'within' : fact.what.v));
  if (fact.what.v === 'leans' && fact.there && place.side && place.side !== 'both') return [one('lean', place.side)];
  if (!found || (front && found.end !== 'front')) return [];
  // The tandem's tyres are the ones whose wear and pressure the rear tells; a front one speaks by rules of its own.
  if (
    place.end === 'front' &&
    part === 'tyre' &&
    found.end !== 'front' &&
    found.gives.some(([see]) => see === 'tyre wear')
  )
    return [];
  return found.gives.flatMap(([see, outcome]) =>
    found.side === 'none' || found.side === 'any' || observableOf(see)
      ? [one(see, outcome)]
      : on.map((side) => one(`${side} ${see}`, outcome)),
  );
};

/** A link was off before: its being on again says that it was put back. */
const takenOff = (standing: Standing, index: number): boolean =>
  standing.facts
    .slice(0, index)
    .some(({ fact }) => fact.is === 'condition' && fact.what.v === 'link connected' && !fact.holds);

/** The key was turned off in this very note, or the pump was heard with it off. */
const keySaidOff = (standing: Standing, index: number): boolean => {
  const { fact, note } = standing.facts[index]!;
  const key = standing.stateAt.get(fact.id)?.because['key on'];
  if (fact.is !== 'condition' || !key) return false;
  const ran = standing.facts
    .slice(0, index)
    .some(({ fact: f }) => f.is === 'sign' && f.there && f.what.v === 'runs on');
  return fact.holds || (ran && key.note === note) || askedBefore(standing, standing.facts[index]!.seq) === 'key off';
};

export const conditionEvidence = (standing: Standing, index: number, fact: ConditionFact): Evidence[] => {
  const held = standing.facts[index]!;
  const one = (see: string, outcome: string, words: string): Evidence[] => [
    { see, outcome, weight: trust[fact.word], because: [fact.id], seq: held.seq, words, clock: index },
  ];
  const panel = /^panel (auto|fill|empty|shut)$/.exec(fact.what.v)?.[1];
  const asked = askedBefore(standing, held.seq);
  // A note that measures tells where it was put for that, not where it was found.
  const looked = standing.facts.every((h) => h.note !== held.note || h.fact.is === 'condition');
  // Nobody empties a coach to look at it: the first that is said of the panel is how it was found.
  const first = !standing.facts
    .slice(0, index)
    .some((h) => h.fact.is === 'condition' && h.fact.what.v.startsWith('panel '));
  if (panel && fact.holds && looked && (asked === 'panel look' || (panel === 'empty' && first)))
    return one('panel look', panel, `panel found in ${panel.toUpperCase()}`);
  // Off by itself, not taken off for a test.
  const side = takePlace(fact.where.v)?.side;
  if (fact.what.v === 'link connected' && !fact.holds && side && side !== 'both' && !asked?.endsWith('link off'))
    return one(`${side} link look`, 'off', `${side} link off`);
  // "Links on" leaves open whether they are straight.
  if (fact.what.v === 'link connected' && fact.holds && !asked?.endsWith('link off') && !takenOff(standing, index))
    return (side && side !== 'both' ? [side] : sides).flatMap((s) =>
      one(`${s} link look`, 'fine|bent or slipped', `${s} link on`),
    );
  if (fact.what.v === 'pump running' && !fact.holds && asked === 'runs on')
    return one('pump past cut-out', 'stops', 'pump stops');
  // Said not to run, and now it does, by its own switch.
  const quiet = standing.facts
    .slice(0, index)
    .some(
      ({ fact: f }) =>
        f.is === 'sign' &&
        f.there &&
        (f.what.v === 'wont run' || f.what.v === 'not working') &&
        /^(?:pump|motor)$/.test(f.where.v),
    );
  if (fact.what.v === 'pump running' && fact.holds && quiet && standing.stateAt.get(fact.id)?.key !== false)
    return one('pump called', 'runs', 'pump runs');
  // A welded relay ignores the key.
  if (fact.what.v === 'pump running' && standing.stateAt.get(fact.id)?.key === false && keySaidOff(standing, index))
    return one(
      'key off',
      fact.holds ? 'runs on' : 'stops',
      fact.holds ? 'pump runs with the key off' : 'pump stops with the key off',
    );
  if (fact.what.v === 'floor level')
    return one('floor', fact.holds ? 'level' : 'not level', fact.holds ? 'floor level' : 'floor not level');
  return [];
};
