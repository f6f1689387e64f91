/**
 * Readings that no finding judges but that are the outcome of a check: volts at the switch and the relay, play at a pin,
 * the pressure past a valve, a tandem measured out of square, heights watched with the tank empty. Pure.
 */
import { takePlace } from '../../intents/place.ts';
import type { FactId, Part, ReadingFact } from '../../intents/shapes.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { sides } from './fault.ts';
import { bridgedNotes } from './bridged.ts';

export type Measured = {
  see: string;
  outcome: string;
  because: FactId[];
  seq: number;
  words: string;
  clock: number;
};

type At = { fact: ReadingFact; i: number; seq: number; note: string };

/** Under it a terminal counts as dead, over it as fed. V, common practice, no source. */
const deadBelow = 2;
const fedFrom = 9;
/** Past a valve: so much of what stands before it still counts as nothing. */
const nothingPast = 0.1;
/** Wheelbases that differ by more than this are not square. 1/4 in, common practice, no source. m */
const square = 0.00635;
/** Play that can be seen at a pin or bushing. 1/16 in, an estimate of ours. m */
const play = 0.0016;

const readingsOf = (standing: Standing): At[] =>
  standing.facts.flatMap(({ fact, seq, note }, i) => (fact.is === 'reading' ? [{ fact, i, seq, note }] : []));

const one = (see: string, outcome: string, ...from: At[]): Measured => {
  const last = from.toSorted((a, b) => a.i - b.i).at(-1)!;
  return {
    see,
    outcome,
    because: from.map((a) => a.fact.id),
    seq: last.seq,
    words: from.map((a) => `${a.fact.amount.v.text} at ${a.fact.where.v || 'the coach'}`).join(', '),
    clock: last.i,
  };
};

const volts = (all: readonly At[], part: Part, upTo = Infinity): At | undefined =>
  all.findLast((a) => a.i <= upTo && a.fact.what.v === 'voltage' && a.fact.where.v === part);
const si = (a: At): number => a.fact.amount.v.si;

/** The tank stood above cut-in when it was last read up to there: an open switch is as it should be. */
const restsRightly = (all: readonly At[], sheet: Sheet, upTo: number): boolean => {
  const high = sheet.supply?.cutIn?.high;
  const tank = all.findLast((a) => a.i <= upTo && a.fact.what.v === 'pressure' && a.fact.where.v === 'tank');
  return high !== undefined && tank !== undefined && si(tank) > high.si + tank.fact.amount.v.pm;
};

const atSwitch = (all: readonly At[], standing: Standing, sheet: Sheet): Measured[] => {
  const bridged = bridgedNotes(standing);
  const own = all.filter((a) => !bridged.has(a.note) && a.fact.what.v === 'voltage');
  return own.flatMap((a): Measured[] => {
    const v = si(a);
    if (a.fact.where.v === 'switch input' && v < deadBelow) return [one('switch volts', 'none in', a)];
    // Volts "at the switch", which terminal not said: it is fed.
    if (a.fact.where.v === 'pressure switch' && v >= fedFrom) return [one('switch volts', 'through|none out', a)];
    if (a.fact.where.v !== 'switch output' || restsRightly(all, sheet, a.i)) return [];
    const into = own.findLast((x) => x.fact.where.v === 'switch input' && x.i <= a.i);
    const from = into ? [into, a] : [a];
    if (v >= fedFrom) return [one('switch volts', 'through', ...from)];
    return v < deadBelow ? [one('switch volts', into ? 'none out' : 'none out|none in', ...from)] : [];
  });
};

const atRelay = (all: readonly At[], sheet: Sheet): Measured[] => {
  const coil = volts(all, 'relay coil');
  const out = volts(all, 'relay output');
  if (coil && out && si(coil) < deadBelow && si(out) >= fedFrom) return [one('what sticks', 'the relay', coil, out)];
  if (coil && si(coil) < deadBelow)
    return restsRightly(all, sheet, coil.i) ? [] : [one('relay volts', 'nothing at the coil', coil)];
  if (coil && out && si(coil) >= fedFrom)
    return [one('relay volts', si(out) < deadBelow ? 'nothing out' : 'good', coil, out)];
  return [];
};

/** What comes out of the protection valve, or to the height valves, against the tank. */
const pastValve = (all: readonly At[]): Measured[] =>
  (['protection valve', 'supply line', 'height valve'] as const).flatMap((part) => {
    const past = all.findLast((a) => a.fact.what.v === 'pressure' && takePlace(a.fact.where.v)?.part === part);
    const tank =
      past && all.findLast((a) => a.fact.what.v === 'pressure' && a.fact.where.v === 'tank' && a.seq <= past.seq);
    if (!past || !tank || si(tank) <= 0) return [];
    const none = si(past) < nothingPast * si(tank);
    if (part === 'protection valve') return [one('past protection', none ? 'nothing' : 'passes', tank, past)];
    return none ? [one('regulated supply', 'none', tank, past)] : [];
  });

const joints: ReadonlySet<string> = new Set(['pin', 'bushing', 'control arm']);
const playAt = (all: readonly At[]): Measured[] =>
  all.flatMap((a) => {
    if (a.fact.what.v !== 'free play') return [];
    const place = takePlace(a.fact.where.v);
    const side = place?.side;
    if (side !== 'left' && side !== 'right') return [];
    const loose = si(a) >= play;
    const part = place?.part ?? '';
    if (joints.has(part)) return [one(`${side} pry bushings`, loose ? 'arm pins' : 'tight', a)];
    if (part === 'shock bushing') return [one(`${side} pry bushings`, loose ? 'shock bushing' : 'tight', a)];
    if (part === 'wheel bearing' || part === 'wheel') return [one(`${side} rock wheel`, loose ? 'play' : 'tight', a)];
    return [];
  });

const outOfSquare = (all: readonly At[], sheet: Sheet): Measured[] => {
  const limit = sheet.alignment?.thrust;
  return all.flatMap((a) => {
    if (a.fact.what.v === 'wheelbase difference')
      return [one('string check', Math.abs(si(a)) > square ? 'not parallel' : 'square', a)];
    if (a.fact.what.v === 'thrust' && limit)
      return [one('string check', Math.abs(si(a)) > limit.si + a.fact.amount.v.pm ? 'not parallel' : 'square', a)];
    return [];
  });
};

/** Tank at zero, arm in fill, the tape on that side twice: does the bellows run back into the tank? */
const intoEmptyTank = (all: readonly At[], standing: Standing): Measured[] => {
  const empty = (a: At): boolean => {
    const state = standing.stateAt.get(a.fact.id);
    if (state?.because['tank drained']?.fact.holds === true) return true;
    const tank = all.findLast(
      (t) => t.fact.what.v === 'pressure' && t.fact.where.v === 'tank' && (t.i <= a.i || t.note === a.note),
    );
    return tank !== undefined && si(tank) <= 2 * tank.fact.amount.v.pm;
  };
  return sides.flatMap((side) => {
    const heights = all.filter(
      (a) =>
        a.fact.what.v === 'height' &&
        takePlace(a.fact.where.v)?.side === side &&
        takePlace(a.fact.where.v)?.end !== 'front',
    );
    return heights.flatMap((a, k) => {
      if (standing.stateAt.get(a.fact.id)?.arm[side] !== 'fill' || !empty(a)) return [];
      const before = a.fact.from?.v.si ?? heights[k - 1]?.fact.amount.v.si;
      if (before === undefined) return [];
      return [one(`${side} inlet check`, before - si(a) > 3 * a.fact.amount.v.pm ? 'sinks' : 'holds', a)];
    });
  });
};

export const measuredEvidence = (standing: Standing, sheet: Sheet): Measured[] => {
  const all = readingsOf(standing);
  return [
    ...atSwitch(all, standing, sheet),
    ...atRelay(all, sheet),
    ...pastValve(all),
    ...playAt(all),
    ...outOfSquare(all, sheet),
    ...intoEmptyTank(all, standing),
  ];
};
