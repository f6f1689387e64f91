/** Where a word about a thing, a deed or whoever speaks begins a clause of its own. Pure. */
import { joinPlaces } from './merge-places.ts';
import {
  adverbs,
  complete,
  lastReal,
  isLed,
  leadsOn,
  owned,
  ownThing,
  past,
  tells,
  type Items,
} from './run-on-whole.ts';
import type { Settled } from './settled.ts';
import { ofCorner } from './sign-place.ts';
import { phraseOf } from './walk.ts';
import { placeAfter } from './words/signs.ts';

/** "tyre worn inside i put soap on the valve": whoever speaks begins anew. */
const speaker = (items: Items, all: Items, at: number): boolean =>
  all[at]!.k === 'filler' &&
  /^(?:i|ive|we|weve)$/.test(phraseOf(all[at])) &&
  (items.some((i) => tells(i) || i.k === 'num') ||
    (items.length > 3 && /^(?:so|and|but)$/.test(phraseOf(items.at(-1))))) &&
  !(isLed(items) && !/^(?:so|and|but|or)$/.test(phraseOf(items.at(-1)))) &&
  !['hedge', 'told'].includes(all[past(all, at + 1)]?.k ?? 'hedge');

/** "lr 13 1/2 soaped the left bag": a deed, its thing right after it, behind what was said of another. */
const deed = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'work' || !complete(items) || isLed(items)) return false;
  const last = lastReal(items);
  // "torqued the nuts aired it up slow": its thing is "it"
  const own = / (?:it|them)\b/.test(phraseOf(all[at])) || /^(?:it|them)$/.test(phraseOf(all[at + 1]));
  if (last === undefined || last.k === 'unknown' || (!own && all[past(all, at + 1)]?.k !== 'place')) return false;
  // "swapped the shock changed the valve": the shock is of the deed before it
  return last.k !== 'place' || owned(items, 'work') || (owned(items, 'sign') && last.p.part === undefined);
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

/** "pump no run", "panel in lock": a word that names what it is of. */
const named = (items: Items, all: Items, at: number): boolean => {
  const item = all[at]!;
  return (
    (item.k === 'sign' || item.k === 'cond') &&
    (ownThing.test(item.phrase) || item.v === 'blows fuse') &&
    complete(items, true) &&
    !isLed(items)
  );
};

/** "takes 8 s to react it wanders": what it does. */
const it = (items: Items, all: Items, at: number): boolean => {
  if (all[at]!.k !== 'filler' || !/^(?:it|its)$/.test(phraseOf(all[at])) || !complete(items, true)) return false;
  const before = items.at(-1);
  if (before === undefined || isLed(items) || before.k === 'prep' || before.k === 'work') return false;
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
  ((all[past(all, at + 1)]?.k === 'place' &&
    ['sign', 'neg'].includes(all[past(all, past(all, at + 1) + 1)]?.k ?? '')) ||
    (all[past(all, at + 1)]?.k === 'sign' && placeAhead(all, past(all, at + 1) + 1)));

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

/** "leans when its cold out", "toe 1/8 out": no preposition of what follows. */
const astray = (items: Items, led: Extract<Settled, { k: 'prep' }>): boolean => {
  const before = items[items.indexOf(led) - 1];
  return (
    adverbs.test(led.phrase) &&
    (before?.k === 'often' || before?.k === 'num' || /^(?:came|comes|went)$/.test(phraseOf(before)))
  );
};

/** Whose figure stands alone: nothing is heard or seen at them that a figure follows. */
const gauged: ReadonlySet<string | undefined> = new Set(['tank', 'battery', 'motor', 'pressure switch']);

/** A place within the next few words, before anything else is said. */
const placeAhead = (all: Items, at: number): boolean => {
  for (const next of all.slice(at, at + 6)) {
    if (next.k === 'place') return true;
    if (!['filler', 'prep', 'often', 'unknown'].includes(next.k) && !(next.k === 'num' && next.unit !== null))
      return false;
  }
  return false;
};

/** "pump shuts off hiss at the valve", "spec 95 no bubbles at the crimp": heard or seen, and where, said behind it. */
const seen = (items: Items, all: Items, at: number): boolean => {
  const sign = all[at]!.k === 'neg' ? all[at + 1] : all[at];
  const last = lastReal(items);
  return (
    sign?.k === 'sign' &&
    placeAfter.has(sign.v) &&
    !ofCorner.has(sign.v) &&
    complete(items, last?.k !== 'num') &&
    last?.k !== 'place' &&
    last?.k !== 'unknown' &&
    !(last?.k === 'sign' && placeAfter.has(last.v)) &&
    placeAhead(all, at + (all[at]!.k === 'neg' ? 2 : 1))
  );
};

/** "51 l 66 r bags on at 88": two of a pair were told. */
const pairDone = (items: Items, all: Items, at: number): boolean => {
  const item = all[at]!;
  if (!['place', 'measure', 'num', 'sign', 'cond'].includes(item.k)) return false;
  const real = items.filter((i) => i.k !== 'filler');
  const [a, b, c, d] = real.slice(-4);
  if (real.at(-5)?.k === 'place' || real.at(-5)?.k === 'measure') return false;
  return (
    a?.k === 'num' &&
    b?.k === 'place' &&
    c?.k === 'num' &&
    d?.k === 'place' &&
    b.p.side !== undefined &&
    d.p.side !== undefined &&
    b.p.side !== d.p.side &&
    !b.p.end &&
    !d.p.end &&
    (item.k !== 'place' || joinPlaces(d.p, item.p) === null)
  );
};

/**
 * "left bag cracked right bag ok": a place begins anew where what came before has its own place and its own word, no
 * preposition leads it, and a word or a number of its own follows.
 */
const anotherPlace = (items: Items, all: Items, at: number): boolean => {
  const item = all[at]!;
  if (item.k !== 'place') return false;
  const following = all[past(all, at + 1)];
  // "now no leak lr tyre 58": its number is its own
  const denied = following?.k === 'num' && items.some((i) => i.k === 'neg');
  const figured = gauged.has(item.p.part) && (following?.k === 'num' || following?.k === 'measure');
  // "a cup of milky water dryer is due", "rr 12 1/2 tank was at 60": what it is, was
  const verb = /^(?:is|was|were|are|isnt|wasnt)$/.test(phraseOf(all[at + 1]));
  if (!complete(items, denied || figured || verb)) return false;
  const led = items.findLast((i) => i.k !== 'filler');
  // "put a new link on both sides are level": put on, and not on both
  const putOn = verb && led?.k === 'prep' && led.phrase === 'on' && owned(items.slice(0, items.indexOf(led)), 'work');
  if ((led?.k === 'prep' && leadsOn(items) && !astray(items, led) && !putOn) || led?.k === 'work') return false;
  // "51 l 66 r": the second of a pair, each behind its number
  const [one, two, three] = items.filter((i) => i.k !== 'filler').slice(-3);
  if (one?.k === 'num' && two?.k === 'place' && three?.k === 'num' && items[0] === one) return false;
  // "noise from the shock dryer puffs": two that cannot be one
  if (led?.k === 'place' && joinPlaces(led.p, item.p) !== null && !(led.p.side && item.p.side)) return false;
  if (isLed(items)) return false;
  // "leaning to left": said in the word itself; "leans left", "coach is down left back": which way
  const own = items.findLast((i) => i.k === 'place');
  if (
    led?.k === 'sign' &&
    (/ to$/.test(led.phrase) || (ofCorner.has(led.v) && (own?.p.part ?? 'coach') === 'coach' && !own?.p.side))
  )
    return false;
  if (verb && !['prep', 'sep', 'join'].includes(all[past(all, at + 2)]?.k ?? 'sep')) return true;
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

const thereIs = (items: Items, all: Items, at: number): boolean =>
  all[at]!.k === 'filler' &&
  /^theres?$/.test(phraseOf(all[at])) &&
  (items.some((i) => i.k === 'sign') ||
    (complete(items, true) &&
      (phraseOf(all[at]) === 'theres' || phraseOf(all[at + 1]) === 'is') &&
      all[past(all, at + 1)]?.k === 'sign'));

/** Each says whether a clause begins at `at` of `all`, `items` being what stands in the open one. */
export const words = [
  speaker,
  deed,
  handled,
  named,
  it,
  none,
  seen,
  pairDone,
  oftenFirst,
  anotherWork,
  anotherTime,
  anotherPlace,
  thereIs,
];
