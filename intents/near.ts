/** Which place in a clause belongs to which word. */
import { dimensionOf } from '../server/core/units.ts';
import { isDuration } from './changes.ts';
import { pressureParts, voltParts } from './dims.ts';
import type { PlaceParts } from './place.ts';
import { joinPlaces } from './merge-places.ts';
import { type PlaceItem, type Settled } from './settled.ts';
import { sideable } from './sideable.ts';
import { locOf } from './loc.ts';
import { phraseOf, skippable, use, type Clause, type Loc, type Walk } from './walk.ts';

/** What one thing has, wherever it sits. */
const apart: ReadonlySet<string> = new Set([
  'torn',
  'corroded',
  'off line',
  'broken',
  'bent',
  'worn',
  'cracked',
  'stuck',
  'loose',
  'missing',
]);

export type Hit = { item: PlaceItem; index: number; after: boolean };
/** Parts that a number alone can be a reading of. */
const measurable: ReadonlySet<string> = new Set([
  ...pressureParts,
  ...voltParts,
  'pump',
  'pressure switch',
  'wheel',
  'axle',
  'ambient',
]);
const content = new Set(['num', 'sign', 'work', 'measure', 'cond', 'change']);
export const isContent = (item: Settled | undefined): boolean => item !== undefined && content.has(item.k);

/** Index of the next item that says something. */
export const nextReal = (c: Clause, i: number): number => {
  let j = i + 1;
  while (j < c.items.length && skippable(c.items[j])) j += 1;
  return j;
};
const between = (c: Clause, a: number, b: number, test: (item: Settled) => boolean): boolean =>
  c.items.slice(a + 1, b).some(test);
const plainNumber = (item: Settled): boolean => item.k === 'num' && item.clock === undefined;

/** "none of this is the place spoken of": after "than" and "not" a place is only compared with. */
const compared = (c: Clause, index: number): boolean => {
  for (let j = index - 1; j >= 0 && index - j <= 3; j -= 1) {
    const phrase = phraseOf(c.items[j]);
    if (phrase === 'than' || (phrase === 'as' && phraseOf(c.items[j - 1]) === 'same')) return true;
    // "the check valve before the dryer leaks": where it sits
    if (beside.test(phrase) && c.items[j - 1]?.k === 'place') return true;
    if (!skippable(c.items[j])) return false;
  }
  return false;
};

/** What follows these is another circumstance, not this thing's place. */
const stops = /^(?:when|while|before|because|once|if|after|since|even)$/;
/** Beside these another thing stands, and is not meant. */
const beside = /^(?:behind|before|ahead of|upstream of|under|beneath|below|above|beside|near|next to|past|around)$/;

const follower = (c: Clause, i: number, signToo: boolean): { index: number; prep: boolean } | null => {
  let j = i + 1;
  let prep = false;
  while (
    j < c.items.length &&
    (skippable(c.items[j]) ||
      c.items[j]!.k === 'often' ||
      c.items[j]!.k === 'dir' ||
      (c.items[j]!.k === 'unknown' && j - i < 5) ||
      // "hisses 2 sec at the dryer"
      (signToo && isDuration(c.items[j]) && j - i < 4) ||
      (c.items[j]!.k === 'unit' && j - i < 6) ||
      (signToo && c.items[j]!.k === 'neg'))
  ) {
    if (stops.test(phraseOf(c.items[j]))) return null;
    if (c.items[j]!.k === 'prep') prep = true;
    j += 1;
  }
  return c.items[j]?.k === 'place' && !compared(c, j) ? { index: j, prep } : null;
};

/** Something was said before in the clause that the sign can be of. */
const w0 = (c: Clause, i: number): boolean => c.items.slice(0, i).some((it) => it.k === 'place' || it.k === 'work');

/** The place of a sign, a work or a state at `i`: before it, unless one follows and `after` says that is usual. */
export const placeAt = (c: Clause, i: number, after: boolean): Hit | null => {
  const before = c.places.filter((p) => p < i && !c.taken.has(p) && !compared(c, p)).at(-1);
  const ahead = follower(c, i, after);
  const thing = c.items[i]!;
  const onlyBy = thing.k === 'sign' && ['hot', 'cold', 'warm', 'burnt', 'corroded'].includes(thing.v);
  // "line is pinched behind the frame bracket": where it is, not what
  const next =
    ahead &&
    before !== undefined &&
    c.items
      .slice(i + 1, ahead.index)
      .some((it) => beside.test(phraseOf(it)) || (onlyBy && /^(?:by|on|against)$/.test(phraseOf(it))))
      ? null
      : ahead;
  if (next && before !== undefined) {
    const item = c.items[next.index] as PlaceItem;
    const prior = c.items[before] as PlaceItem;
    // "reeds broken in the head", "link bent at the arm": the first has it, the other tells where it is
    const what = c.items[i]!;
    if (
      next.prep &&
      c.items.slice(before + 1, i).every(skippable) &&
      prior.p.part !== undefined &&
      item.p.part !== undefined &&
      what.k === 'sign' &&
      apart.has(what.v)
    )
      return {
        item: { ...prior, p: item.p.side && !prior.p.side ? { ...prior.p, side: item.p.side } : prior.p },
        index: before,
        after: false,
      };
    const owned = isContent(c.items[nextReal(c, next.index)]);
    const sideOnly = !item.p.part && !prior.p.side && !prior.p.end && prior.p.part !== undefined;
    const partOnly =
      item.p.part !== undefined && !item.p.side && prior.p.part !== undefined && prior.p.part !== item.p.part;
    const partBoth =
      (next.prep || phraseOf(c.items[i]) === 'off') &&
      item.p.part !== undefined &&
      prior.p.part !== undefined &&
      !prior.p.side;
    // "the left one bubbles at the exhaust port": whose port it is
    const sideLeads =
      next.prep &&
      !prior.p.part &&
      prior.p.side !== undefined &&
      item.p.part !== undefined &&
      !item.p.side &&
      sideable.has(item.p.part);
    if (!owned && (sideOnly || partOnly || partBoth || sideLeads)) {
      const p = joinPlaces(prior.p, item.p);
      if (p) {
        c.taken.add(before);
        return { item: { ...item, p, spans: [...prior.spans, ...item.spans] }, index: next.index, after: true };
      }
    }
  }
  if (next) {
    const item = c.items[next.index] as PlaceItem;
    const follow = c.items[nextReal(c, next.index)];
    const owned =
      follow !== undefined &&
      (follow.k === 'num' || follow.k === 'sign' || follow.k === 'neg' || follow.k === 'change');
    if (next.prep) {
      if (before === undefined || after || !(c.items[before] as PlaceItem).p.part || (item.p.part && !owned))
        if (!(owned && before !== undefined && follow?.k === 'num')) return { item, index: next.index, after: true };
    } else if (
      before === undefined &&
      (!owned || (after && !(follow?.k === 'num' && item.p.part === undefined && w0(c, i))))
    )
      return { item, index: next.index, after: true };
  }
  return before === undefined ? null : { item: c.items[before] as PlaceItem, index: before, after: false };
};

/** "with 50 psi on it": the place spoken of before, whoever took it. */
const ofIt = (c: Clause, i: number): boolean =>
  /^(?:on|in|behind)$/.test(phraseOf(c.items[i + 1])) && phraseOf(c.items[i + 2]) === 'it';

/** The place of the number at `i`. */
export const placeOfNumber = (w: Walk, c: Clause, i: number): Hit | null => {
  const before = c.places.filter((p) => p < i && !c.taken.has(p) && !compared(c, p)).at(-1);
  if (ofIt(c, i)) {
    const last = c.places.filter((p) => p < i).at(-1);
    if (last !== undefined) return { item: c.items[last] as PlaceItem, index: last, after: false };
  }
  const next = follower(c, i, false);
  // "battery 12.6 at rest and 11.9 with the pump": while that ran
  if (
    next &&
    w.subject?.p.part === 'battery' &&
    (c.items[next.index] as PlaceItem).p.part === 'pump' &&
    /\bwith (?:the )?$/i.test(w.text.slice(0, c.items[next.index]!.span[0]).slice(-10))
  ) {
    c.taken.add(next.index);
    use(w, c.items[next.index]);
    return null;
  }
  const after = next ? { item: c.items[next.index] as PlaceItem, index: next.index, after: true } : null;
  const own = before === undefined ? null : { item: c.items[before] as PlaceItem, index: before, after: false };
  const head = next ? headThenPlaces(c) : null;
  if (next && head) {
    const item = c.items[next.index] as PlaceItem;
    return { item: { ...item, p: { ...head.p, ...item.p } }, index: next.index, after: true };
  }
  // "13-1/8 lr 13-3/8 rr": a clause that begins with a number and ends with a place says each place after its number
  if (after && numbersLead(c)) {
    // "35 left 48 right in the bags": of one kind of part, said once
    const last = (c.items[c.places.at(-1)!] as PlaceItem).p;
    const p = after.item.p;
    return p.part === undefined && !p.end && p.side && last.part !== undefined && sideable.has(last.part)
      ? { ...after, item: { ...after.item, p: { part: last.part, ...p } } }
      : after;
  }
  const followed = next ? c.items[nextReal(c, next.index)] : undefined;
  // "12.4 at the battery 3.1 at the motor": each before its place
  const third = next && followed?.k === 'num' ? follower(c, c.items.indexOf(followed), false) : null;
  const afterOwned = followed?.k === 'num' && followed.clock === undefined && !(next?.prep && third?.prep);
  if (!own) return afterOwned && !next!.prep ? null : after;
  // "left rear low 95 psi": the corner is low; a gauge is on the tank
  const n = c.items[i];
  const low = between(c, own.index, i, (it) => it.k === 'sign');
  if (
    n?.k === 'num' &&
    n.unit !== null &&
    dimensionOf(n.unit) === 'pressure' &&
    low &&
    own.item.p.end &&
    !own.item.p.part
  )
    return after;
  // "both bags hold 50 psi off the coach": no gauge is on a coach
  if (!after || (after.item.p.part === 'coach' && own.item.p.part !== undefined)) return own;
  // "the bag is 52 left": a part, then its side
  if (
    !own.item.p.side &&
    own.item.p.part &&
    after.item.p.side &&
    !after.item.p.part &&
    !after.item.p.end &&
    !next!.prep &&
    !afterOwned
  ) {
    const p = joinPlaces(own.item.p, after.item.p);
    if (p)
      return {
        item: { ...after.item, p, spans: [...own.item.spans, ...after.item.spans] },
        index: after.index,
        after: true,
      };
  }
  // "pop the drain plug w/ 90 in the tank": only one of the two can have a number
  const holds = (hit: Hit): boolean => hit.item.p.part === undefined || measurable.has(hit.item.p.part);
  if (own.item.p.part === 'coach' && (after.item.p.side ?? after.item.p.end) && !afterOwned) return after;
  if (next!.prep && !afterOwned && !holds(own) && holds(after)) return after;
  // "60 psi still in the bag": what it is in
  const into = c.items.slice(i + 1, next!.index).findLast((it) => it.k === 'prep');
  if (
    !afterOwned &&
    /^(?:in|inside)$/.test(phraseOf(into)) &&
    ['bellows', 'tank'].includes(after.item.p.part ?? '') &&
    own.item.p.part !== after.item.p.part &&
    own.item.p.part !== undefined
  )
    return after;
  // "my gauge 6.8 at tank": where it was put
  if (next!.prep && !afterOwned && own.item.p.part === 'gauge' && after.item.p.part && after.item.p.part !== 'gauge')
    return after;
  // each place before a number has one: "left bag 54 right 61"; a second number may name its own ("13 with 51 in the bag")
  const busy =
    between(c, own.index, i, plainNumber) ||
    between(c, own.index, i, (it) => it.k === 'sign' || it.k === 'work' || it.k === 'cond');
  const worked = c.items.slice(0, own.index).some((it) => it.k === 'work' || (it.k === 'sign' && w.used.has(it)));
  if (next!.prep && !afterOwned && (busy || (worked && after.item.p.part !== undefined))) return after;
  return own;
};

/** "rear 287 n/s 289 o/s", "tyres 95 front 90 rear": what they are of, then each place after its number. */
const headThenPlaces = (c: Clause): PlaceItem | null => {
  // "rear frame ht 13.4 L 13.4 R after road test": until another circumstance
  const end = c.items.findIndex((it) => /^(?:after|before|when|while|with)$/.test(phraseOf(it)));
  const told = end < 0 ? c.items : c.items.slice(0, end);
  const [head, ...rest] = told.filter((it) => !skippable(it) && it.k !== 'unknown' && it.k !== 'measure');
  if (head?.k !== 'place' || head.p.side || rest.length < 4 || rest.length % 2 !== 0) return null;
  const ends = head.p.end !== undefined;
  if (ends === (head.p.part !== undefined) || (head.p.part && !sideable.has(head.p.part))) return null;
  const fits = rest.every((it, j) =>
    j % 2 === 0
      ? plainNumber(it)
      : it.k === 'place' &&
        (!it.p.part || it.p.part === head.p.part) &&
        (ends ? it.p.side !== undefined && !it.p.end : Boolean(it.p.side ?? it.p.end)),
  );
  return fits ? head : null;
};
/** Number, place, number, place ..., nothing else that says something. */
const numbersLead = (c: Clause): boolean => {
  const all = c.items.filter((it) => !skippable(it) && it.k !== 'unknown' && it.k !== 'often');
  // "frame to axle 13.6 l 13.4 r": between what it is measured
  const lead = all.findIndex((it) => it.k === 'num');
  const gap = all
    .slice(0, Math.max(0, lead))
    .every((it) => it.k === 'place' && /^(?:frame|axle|floor|ground)$/.test(it.p.part ?? ''));
  // "12.7 batt 12.1 relay 11.0 motor running"
  const end = all.at(-1)?.k === 'cond' ? -1 : undefined;
  const real = all.slice(gap ? lead : 0, end);
  const letters = real.filter((it) => it.k === 'place' && it.bare !== undefined && !it.p.part && !it.p.end);
  // "14 l 13 1/2 r": one letter alone may be another word, the pair is none
  const pair =
    real.length === 4 &&
    real.every((it, j) => j % 2 === 0 || (it.k === 'place' && it.p.side === (j === 1 ? 'left' : 'right')));
  return (
    real.length >= 4 &&
    real.length % 2 === 0 &&
    (letters.length === 0 || pair) &&
    real.every((it, j) => (j % 2 === 0 ? plainNumber(it) : it.k === 'place'))
  );
};

const claim = (w: Walk, c: Clause, hit: Hit | null): Loc | null => {
  if (!hit) return null;
  if (hit.after) c.taken.add(hit.index);
  return locOf(w, hit.item);
};
export const find = (w: Walk, c: Clause, i: number, after: boolean): Loc | null => claim(w, c, placeAt(c, i, after));
export const findForNumber = (w: Walk, c: Clause, i: number): Loc | null => claim(w, c, placeOfNumber(w, c, i));
export const placesNear = (w: Walk, c: Clause, i: number): PlaceParts | null => placeOfNumber(w, c, i)?.item.p ?? null;

/** The word that denies what stands at `i`. */
export const denied = (c: Clause, i: number): Settled | null => {
  let placed = false;
  for (let j = i - 1; j >= 0 && i - j <= 4; j -= 1) {
    const it = c.items[j]!;
    // "nope still leaking": an answer, and no denial of it
    if (
      it.k === 'neg' &&
      /^(?:nope|nah|naw|no)$/.test(it.phrase) &&
      j === 0 &&
      c.items.slice(1, 4).some((o) => phraseOf(o) === 'still')
    )
      return null;
    // "no bangs sits level": a verb of its own
    if (it.k === 'sign' && /^(?:sits|stays|looks|holds|fills|runs|works|rides|comes) /.test(phraseOf(c.items[i])))
      return null;
    // "no exhaust with arm down": the arm is down
    if (c.items[i]!.k === 'cond' && /^(?:with|w|when|while)$/.test(phraseOf(it))) return null;
    if (it.k === 'neg') return it;
    if (!skippable(it) && it.k !== 'sign' && it.k !== 'place' && it.k !== 'often') return null;
    if (it.k === 'sign' && (c.items[i]!.k === 'cond' || (j < i - 1 && !skippable(c.items[j + 1])))) return null;
    // "no leak on left bag leak on right bag": the first is denied, and has its place
    if (it.k === 'sign' && placed) return null;
    placed ||= it.k === 'place';
  }
  return null;
};
