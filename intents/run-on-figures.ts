/** Where a figure, a measure or a limit begins a clause of its own. Pure. */
import { dimension } from './amount-item.ts';
import { isDuration } from './changes.ts';
import { complete, lastReal, owned, past, tells, type Items } from './run-on-whole.ts';
import type { Settled } from './settled.ts';
import type { Measure, Part } from './shapes.ts';
import { ofCorner } from './sign-place.ts';
import { phraseOf } from './walk.ts';
import { wired } from './words/fits.ts';

/** "13 min in the first hour it took 11 to go": how long a thing took is of none before. */
const took = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'filler') return false;
  const verb = phraseOf(all[at]) === 'it' ? at + 1 : at;
  if (!/^(?:took|takes)$/.test(phraseOf(all[verb])) || !isDuration(all[verb + 1]) || !complete(items, true))
    return false;
  // "pump-up 85 to 115 took 3:40": its own time
  const timed = items.findLast((i) => tells(i) || i.k === 'num');
  return timed?.k !== 'num' || isDuration(timed);
};

/** "left rear 13 10 to 100 in 13 min": a rise said whole. */
const rise = (items: Items, all: Items, at: number): boolean => {
  const [from, to, end, within, time] = all.slice(at, at + 5);
  if (from?.k !== 'num' || phraseOf(to) !== 'to' || end?.k !== 'num' || !complete(items, true)) return false;
  return (
    lastReal(items)?.k !== 'place' &&
    /^(?:in|took|takes)$/.test(phraseOf(within)) &&
    isDuration(time) &&
    end.value > 3 * from.value
  );
};

/** "drain is plugged cuts in at 88", "95 psi load test good": something else is measured. */
const measured = (items: Items, all: Items, at: number): boolean => {
  const item = all[at]!;
  if (item.k !== 'measure' || !complete(items, true) || /^(?:reads|reading|measures|taped|tapes)$/.test(item.phrase))
    return false;
  const next = all[past(all, at + 1)];
  if (next?.k !== 'num' && next?.k !== 'sign' && next?.k !== 'place') return false;
  const last = lastReal(items);
  return last?.k !== 'place'
    ? next.k !== 'place' || item.v === 'toe' || item.v === 'camber'
    : last.p.part !== undefined && apart(item.v, last.p.part);
};

/** What a measure is of, where it cannot be of any part. */
const apart = (measure: Measure, part: Part): boolean => {
  switch (measure) {
    case 'toe':
    case 'camber':
      return !['wheel', 'axle', 'tyre', 'coach'].includes(part);
    case 'cut-in':
    case 'cut-out':
      return !['pressure switch', 'pump', 'gauge'].includes(part);
    case 'load test':
      return part !== 'battery';
    case 'current':
      return !wired.has(part) && part !== 'pump';
    default:
      return false;
  }
};

/** "exhausting every few minutes lost 3 psi in 30 min", "a shim rr 116 down to 109": a change, told whole. */
const changed = (items: Items, all: Items, at: number): boolean => {
  const [one, two, three] = all.slice(at, at + 3);
  const figure = (one?.k === 'change' && two?.k === 'num') || (one?.k === 'num' && two?.k === 'change');
  if (!figure || !complete(items, true)) return false;
  if (one?.k === 'change') return lastReal(items)?.k !== 'place' && lastReal(items)?.k !== 'num';
  return phraseOf(three) === 'to' && (owned(items, 'work') || lastReal(items)?.k !== 'place');
};

/** "height 13 1/2 51 in the left bag", "0.9 volts between batt and case": a number and, behind it, what it is of. */
const placedNumber = (items: Items, all: Items, at: number): boolean => {
  const item = all[at]!;
  if (item.k !== 'num' || item.clock !== undefined || !complete(items)) return false;
  const last = lastReal(items);
  const next = all[at + 1];
  if (phraseOf(next) === 'between' || (next?.k === 'unknown' && next.low === 'between')) return true;
  // "cut out at 118 20 A pump fuse blown": what the fuse is made for
  if (
    last?.k !== 'sign' &&
    dimension(item) === 'current' &&
    next?.k === 'place' &&
    /^(?:fuse|breaker)$/.test(next.p.part ?? '')
  )
    return true;
  // "crimp leaks 20 F": what the weather was
  if (item.unit === 'F' || item.unit === 'C') return true;
  if (next?.k !== 'prep' || !/^(?:in|at)$/.test(next.phrase)) return false;
  const of = all[past(all, at + 2)];
  if (of?.k !== 'place') return false;
  if (last?.k === 'num') return last.clock === undefined && !isDuration(last);
  // "bubbles at the crimp 60 in both bags"
  return (
    next.phrase === 'in' && ['tank', 'bellows'].includes(of.p.part ?? '') && (last?.k === 'place' || last?.k === 'sign')
  );
};

const side = (i: Settled | undefined): boolean => i?.k === 'place' && i.p.side !== undefined && i.p.end === undefined;

/** "a cup of water 51 l 66 r": two numbers, each with its side behind it. */
const pair = (items: Items, all: Items, at: number): boolean =>
  all[at]!.k === 'num' &&
  complete(items, true) &&
  lastReal(items)?.k !== 'place' &&
  side(all[at + 1]) &&
  all[at + 2]?.k === 'num' &&
  side(all[at + 3]);

/** "both were down on 85 off 115", "it bottoms out 1 min every 20": what the switch and the pump do. */
const worked = (items: Items, all: Items, at: number): boolean => {
  const [one, two, three, four] = all.slice(at, at + 4);
  if (phraseOf(one) === 'on' && two?.k === 'num' && phraseOf(three) === 'off' && four?.k === 'num')
    return complete(items, true);
  const last = lastReal(items);
  const other = last?.k === 'num' || (last?.k === 'sign' && ofCorner.has(last.v));
  return isDuration(one) && phraseOf(two) === 'every' && three?.k === 'num' && other && complete(items, true);
};

/** "runs 2 min rests 3": each its own. */
const rests = (items: Items, all: Items, at: number): boolean => {
  const item = all[at]!;
  return (
    item.k === 'measure' &&
    item.v === 'off time' &&
    items.at(-1)?.k === 'num' &&
    items.some((i) => i.k === 'cond' && i.v === 'pump running')
  );
};

/** "rears 13 spec 12 1/2 to 13": a limit after its reading. */
const limit = (items: Items, all: Items, at: number): boolean =>
  all[at]!.k === 'spec' &&
  ((items.some((i) => i.k === 'place' || i.k === 'measure') &&
    items.some((i) => i.k === 'num') &&
    (all[at + 1]?.k === 'num' || complete(items))) ||
    // "needle doesnt move sheet calls for rears 13"
    (/^(?:sheet|book|manual|plate|spec is)/.test(phraseOf(all[at])) &&
      complete(items, true) &&
      lastReal(items)?.k !== 'place'));

/** Each says whether a clause begins at `at` of `all`, `items` being what stands in the open one. */
export const figures = [took, rise, measured, changed, placedNumber, pair, worked, rests, limit];
