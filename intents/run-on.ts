/** Where a clause begins that nobody set apart: neither a comma nor an "and" was typed. */
import { isDuration } from './changes.ts';
import { joinPlaces } from './merge-places.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Measure, Part } from './shapes.ts';
import { ofCorner } from './sign-place.ts';
import { phraseOf, skippable } from './walk.ts';
import { wired } from './words/fits.ts';
import { pumpSigns, signHomes } from './words/signs.ts';

type Items = readonly Settled[];

const tells = (i: Settled): boolean => i.k === 'sign' || i.k === 'cond' || i.k === 'work';
const lastReal = (items: Items): Settled | undefined => items.findLast((i) => !skippable(i));
/** The index of the first item from `at` on that is no filler. */
const past = (all: Items, at: number): number => {
  let j = at;
  while (all[j]?.k === 'filler') j += 1;
  return j;
};

/** Small words after which nothing is finished, unless they tell how a thing moved or where it wore. */
const adverbs = /^(?:inside|outside|out|up|off|down|over|through|on)$/;

/** What came before has said something, and nothing in it still waits; `alone`: also where what it is of was said before it. */
const complete = (items: Items, alone = false): boolean => {
  const teller = items.findLastIndex((i) => tells(i) || i.k === 'num' || i.k === 'neg');
  const last = items.findLast((i) => i.k !== 'filler');
  const told = items[teller];
  if (last === undefined) return false;
  if (told === undefined) return last.k === 'dir';
  if (['measure', 'neg', 'hedge', 'spec', 'told'].includes(last.k)) return false;
  // "front down rear up"
  if (last.k === 'change' && !(last.phrase === 'up' && items.at(-2)?.k === 'place')) return false;
  if (last.k === 'prep' && !adverbs.test(last.phrase)) return false;
  if (alone) return true;
  const placed = items.findIndex((i) => i.k === 'place');
  switch (told.k) {
    case 'cond':
      return true;
    case 'sign':
      return (
        (placed >= 0 && (placed < teller || last.k === 'place')) ||
        signHomes[told.v] !== undefined ||
        pumpSigns.has(told.v) ||
        last.k === 'often' ||
        /^(?:it|he|she|they|is|are|was|were)$/.test(
          phraseOf(items.slice(0, teller).findLast((i) => !/^(?:very|all|a|bit|so|too|still)$/.test(phraseOf(i)))),
        )
      );
    case 'work':
    case 'neg':
      return items.some((i, j) => j > teller && i.k === 'place') || (told.k === 'work' && placed >= 0);
    default:
      return (
        items
          .slice(0, teller)
          .some((i) => i.k === 'place' || i.k === 'measure' || i.k === 'change' || i.k === 'spec' || tells(i)) ||
        (last.k === 'place' && items.length > 1)
      );
  }
};

const leads =
  /^(?:when|while|if|what|that|before|after|until|till|because|cause|cos|where|which|who|as|once|than|how|so|since|like|though|and|or|but)$/;

/** "tyre worn inside i put soap on the valve": whoever speaks begins anew. */
const speaker = (items: Items, all: Items, at: number): boolean =>
  all[at]!.k === 'filler' &&
  /^(?:i|ive|we|weve)$/.test(phraseOf(all[at])) &&
  items.some((i) => tells(i) || i.k === 'num') &&
  !leads.test(phraseOf(items.at(-1))) &&
  !['hedge', 'told', 'neg'].includes(all[past(all, at + 1)]?.k ?? 'hedge');

/** The place that ends `items` follows right after a `kind`. */
const owned = (items: Items, kind: Settled['k']): boolean => {
  const at = items.findLastIndex((i) => i.k === 'place');
  return at > 0 && items.slice(0, at).findLast((i) => i.k !== 'filler')?.k === kind;
};

/** "lr 13 1/2 soaped the left bag": a deed, its thing right after it, behind what was said of another. */
const deed = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'work' || !complete(items) || leads.test(phraseOf(items.at(-1)))) return false;
  const last = lastReal(items);
  if (last === undefined || last.k === 'unknown' || all[past(all, at + 1)]?.k !== 'place') return false;
  // "swapped the shock changed the valve": the shock is of the deed before it
  return last.k !== 'place' || owned(items, 'work');
};

/** "lh arm slipped, reset it left valve u/s": what a deed was done to is said, and another thing follows. */
const handled = (items: Items, all: Items, at: number): boolean => {
  if (!['place', 'cond', 'sign'].includes(all[at]!.k)) return false;
  const end = items.findLastIndex((i) => !/^(?:now|again|back|today|just|too|ok|used|the|a)$/.test(phraseOf(i)));
  const object = items[end];
  return (
    object !== undefined &&
    ((object.k === 'work' && / (?:it|them)$/.test(object.phrase)) ||
      ((/^(?:it|them|both)$/.test(phraseOf(object)) || (object.k === 'unknown' && object.low === 'him')) &&
        items[end - 1]?.k === 'work'))
  );
};

/** "13 min in the first hour it took 11 to go": how long a thing took is of none before. */
const took = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'filler' || !complete(items, true)) return false;
  const word = phraseOf(all[at]);
  const next = word === 'it' ? all[at + 1] : all[at];
  const length = word === 'it' ? all[at + 2] : all[at + 1];
  // "pump-up 85 to 115 took 3:40": its own time
  const timed = items.findLast((i) => tells(i) || i.k === 'num');
  return /^(?:took|takes)$/.test(phraseOf(next)) && isDuration(length) && (timed?.k !== 'num' || isDuration(timed));
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

const ownThing = /^(?:pump|comp|compressor|compresor|panel|tank|key|engine|coach|bus) /;

/** "pump no run", "panel in lock": a word that names what it is of. */
const named = (items: Items, all: Items, at: number): boolean => {
  const item = all[at]!;
  return (
    (item.k === 'sign' || item.k === 'cond') &&
    (ownThing.test(item.phrase) || item.v === 'blows fuse') &&
    complete(items, true) &&
    !leads.test(phraseOf(items.at(-1)))
  );
};

/** "exhausting every few minutes lost 3 psi in 30 min", "a shim rr 116 down to 109": a change, told whole. */
const changed = (items: Items, all: Items, at: number): boolean => {
  const [one, two, three] = all.slice(at, at + 3);
  if (!complete(items, true)) return false;
  if (one?.k === 'change' && two?.k === 'num') return lastReal(items)?.k !== 'place' && lastReal(items)?.k !== 'num';
  return (
    one?.k === 'num' &&
    two?.k === 'change' &&
    phraseOf(three) === 'to' &&
    (owned(items, 'work') || lastReal(items)?.k === 'num')
  );
};

/** "height 13 1/2 51 in the left bag", "0.9 volts between batt and case": a number and, behind it, what it is of. */
const placedNumber = (items: Items, all: Items, at: number): boolean => {
  const item = all[at]!;
  if (item.k !== 'num' || item.clock !== undefined || !complete(items)) return false;
  const last = lastReal(items);
  const next = all[at + 1];
  if (phraseOf(next) === 'between' || (next?.k === 'unknown' && next.low === 'between')) return true;
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
  if (!complete(items, true)) return false;
  const [one, two, three, four] = all.slice(at, at + 4);
  if (phraseOf(one) === 'on' && two?.k === 'num' && phraseOf(three) === 'off' && four?.k === 'num') return true;
  const last = lastReal(items);
  const other = last?.k === 'num' || (last?.k === 'sign' && ofCorner.has(last.v));
  return isDuration(one) && phraseOf(two) === 'every' && three?.k === 'num' && other;
};

/** "takes 8 s to react it wanders": what it does. */
const it = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'filler' || !/^(?:it|its)$/.test(phraseOf(all[at])) || !complete(items, true)) return false;
  const before = items.at(-1);
  if (before === undefined || leads.test(phraseOf(before)) || before.k === 'prep' || before.k === 'work') return false;
  return ['sign', 'change'].includes(all[past(all, at + 1)]?.k ?? '');
};

/** "hisses all the time no 12v at the relay". */
const none = (items: Items, all: Items, at: number): boolean => {
  const next = all[at + 1];
  return all[at]!.k === 'neg' && next?.k === 'num' && next.unit === 'V' && complete(items);
};

/** "heater dont work sometimes the pump wont start": how often, before what it is said of. */
const oftenFirst = (items: Items, all: Items, at: number): boolean =>
  all[at]!.k === 'often' &&
  /^(?:sometimes|now and then|once in a while|occasionally)$/.test(phraseOf(all[at])) &&
  complete(items) &&
  all[past(all, at + 1)]?.k === 'place' &&
  ['sign', 'neg'].includes(all[past(all, past(all, at + 1) + 1)]?.k ?? '');

/** "soaped the left bag no bubbles soaped the right one": a second work after the first and its place begins anew. */
const anotherWork = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'work') return false;
  const first = items.findIndex((i) => i.k === 'work');
  if (first < 0) return false;
  const placed = items.findIndex((i, j) => j > first && i.k === 'place');
  return placed > 0 && items.slice(placed).some((i) => i.k === 'sign' || i.k === 'num' || i.k === 'neg');
};

/** "sags overnight fine when driving": a sign and its circumstance, then a sign with another. */
const anotherTime = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'sign') return false;
  const often = items.findLastIndex((i) => i.k === 'often');
  if (often < 0 || !items.slice(0, often).some((i) => i.k === 'sign')) return false;
  if (!items.slice(often + 1).every((i) => i.k === 'filler')) return false;
  for (let j = at + 1; j < all.length && all[j]!.k !== 'sep' && all[j]!.k !== 'join'; j += 1)
    if (all[j]!.k === 'often') return true;
  return false;
};

/**
 * "left bag cracked right bag ok": a place begins anew where what came before has its own place and its own word, no
 * preposition leads it, and a word or a number of its own follows.
 */
const anotherPlace = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'place') return false;
  // "now no leak lr tyre 58": its number is its own
  const denied = items.some((i) => i.k === 'neg') && all[past(all, at + 1)]?.k === 'num';
  if (!complete(items, denied)) return false;
  const led = items.findLast((i) => i.k !== 'filler');
  // "leans when its cold out": no preposition of the place
  const past1 = led ? items[items.indexOf(led) - 1] : undefined;
  const adverb =
    led?.k === 'prep' &&
    adverbs.test(led.phrase) &&
    (past1?.k === 'often' || /^(?:came|comes|went)$/.test(phraseOf(past1)));
  if ((led?.k === 'prep' && !adverb) || led?.k === 'work') return false;
  // "noise from the shock dryer puffs": two that cannot be one
  const item = all[at] as PlaceItem;
  if (led?.k === 'place' && joinPlaces(led.p, item.p) !== null && !(led.p.side && item.p.side)) return false;
  if (leads.test(phraseOf(items.at(-1)))) return false;
  // "leaning to left": said in the word itself; "leans left", "coach is down left back": which way
  const own = items.findLast((i) => i.k === 'place');
  if (
    led?.k === 'sign' &&
    (/ to$/.test(led.phrase) || (ofCorner.has(led.v) && (own?.p.part ?? 'coach') === 'coach' && !own?.p.side))
  )
    return false;
  const numbered = items.findLast((i) => tells(i) || i.k === 'num')?.k === 'num';
  for (let j = at + 1; j < all.length; j += 1) {
    const next = all[j]!;
    if (next.k === 'prep' && next.phrase === 'at' && all[j + 1]?.k === 'num') continue;
    if (next.k === 'sep' || next.k === 'join' || next.k === 'place' || next.k === 'prep') return false;
    // "bump stop gone rr key is off": the key is said with its state
    if (next.k === 'cond' && ownThing.test(next.phrase)) return false;
    if (next.k === 'sign' || next.k === 'neg' || next.k === 'cond' || next.k === 'change' || next.k === 'measure')
      return true;
    if (next.k === 'num') return !numbered;
    if (tells(next)) return false;
  }
  return false;
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

const thereIs = (items: Items, all: Items, at: number): boolean =>
  all[at]!.k === 'filler' &&
  /^theres?$/.test(phraseOf(all[at])) &&
  (items.some((i) => i.k === 'sign') || (complete(items, true) && /^(?:theres|is)$/.test(phraseOf(all[at + 1]))));

/** "rears 13 spec 12 1/2 to 13": a limit after its reading. */
const limit = (items: Items, all: Items, at: number): boolean =>
  all[at]!.k === 'spec' &&
  items.some((i) => i.k === 'place' || i.k === 'measure') &&
  items.some((i) => i.k === 'num') &&
  (all[at + 1]?.k === 'num' || complete(items));

const rules = [
  speaker,
  deed,
  handled,
  took,
  rise,
  measured,
  named,
  changed,
  placedNumber,
  pair,
  worked,
  it,
  none,
  oftenFirst,
  anotherWork,
  anotherTime,
  anotherPlace,
  rests,
  thereIs,
  limit,
];

/** Whether the item at `at` of `all` begins a clause, `items` being what stands in the open one. */
export const beginsAnew = (items: Items, all: Items, at: number): boolean =>
  items.length > 0 && rules.some((rule) => rule(items, all, at));
