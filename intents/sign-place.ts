/** Where a sign is: the place said with it, the thing spoken of, or its home; and when it is of something nobody knows. */
import { find } from './near.ts';
import type { PlaceParts } from './place.ts';
import { tidy } from './merge-places.ts';
import { type PlaceItem, type Settled } from './settled.ts';
import type { Sign } from './shapes.ts';
import { airSide } from './words/parts.ts';
import { sideable } from './sideable.ts';
import { ofAir } from './words/fits.ts';
import { assumed, carried, phraseOf, skippable, use, type Clause, type Loc, type Walk } from './walk.ts';
import { locOf } from './loc.ts';
import { placeAfter, pumpSigns, signHomes } from './words/signs.ts';

/** Signs that a corner has as such: a side named with one of them is the coach's, not a part's. */
export const ofCorner: ReadonlySet<Sign> = new Set([
  'low',
  'high',
  'leans',
  'level',
  'sags',
  'rises',
  'on stops',
  'holds',
  'drops',
  'comes up driving',
  'bounces',
  'bottoms',
  'fills',
  'empties',
  'does not fill',
  'does not empty',
  'pulls',
  'wanders',
  'bangs',
  'noisy',
  'slow build',
] as Sign[]);

/** "lr shock stone cold, rr warm": the same part on the side named now. */
export const ofTheOther = (w: Walk, own: Loc, name: Sign): Loc => {
  const s = w.subject?.p;
  if (own.p.part || !own.p.side || own.p.side === 'both' || w.subject?.old || !s?.part || !sideable.has(s.part))
    return own;
  // "exhaust hoses in water: no bubbles left or right"
  if (!s.side && !(airSide.has(s.part) && ['bubbles', 'leaks', 'hiss'].includes(name))) return own;
  if (s.side === 'both' || ofCorner.has(name)) return own;
  // "a shim at the right control arm, no air sound in right": no air is heard at that part
  if (ofAir.has(name) && !airSide.has(s.part)) return own;
  // "I hear hissing at the right rear": a corner said whole
  if (name === 'hiss' && own.p.end && !own.old && own.from === 'said') return own;
  return {
    ...own,
    p: tidy({ ...own.p, part: s.part, ...(own.p.end === undefined && s.end ? { end: s.end } : {}) }),
    from: own.from === 'said' ? 'carried' : own.from,
  };
};

const noun = (it: Settled | undefined): boolean =>
  it?.k === 'unknown' && /^[a-z]{4,}$/.test(it.low) && !/(?:ly|ing|ed|where|thing|times?)$/.test(it.low);

/** "lr shackle broken", "shackle on the left is cracked": a thing nobody knows has it, not the corner. */
export const unknownThing = (c: Clause, index: number): boolean => {
  const place = c.places.filter((i) => i < index).at(-1);
  if (place === undefined) return false;
  let led = place - 1;
  while (led >= 0 && skippable(c.items[led])) led -= 1;
  return c.items.slice(place + 1, index).some(noun) || (led < place - 1 && noun(c.items[led]));
};

/** "the shackle is broken": what is not known is not the thing spoken of before. */
export const unknownLead = (c: Clause, index: number): boolean => {
  // "steering wheel off center": a thing known to be none of ours
  const named = c.items.slice(0, index).findLast((it) => it.k !== 'filler');
  if (named?.k === 'unknown' && named.span[1] - named.span[0] > named.low.length) return true;
  let at = index - 1;
  while (
    at >= 0 &&
    c.items[at]!.k === 'filler' &&
    /^(?:is|are|was|were|looks|look|isnt|has|have)$/.test(phraseOf(c.items[at]))
  )
    at -= 1;
  // "sender bad?"
  if (at === 0 && index === 1 && noun(c.items[0]) && phraseOf(c.items[index]) === 'bad') return true;
  return at >= 1 && at === index - 2 && noun(c.items[at]) && /^(?:the|a|an|that|my)$/.test(phraseOf(c.items[at - 1]));
};

/** "found ice in the purge valve": where it is was said, and is not known. */
export const unknownIn = (c: Clause, index: number): boolean => {
  const [prep, article, thing] = c.items.slice(index + 1, index + 4);
  return (
    /^(?:in|on|inside|at)$/.test(phraseOf(prep)) &&
    article?.k === 'filler' &&
    /^(?:the|a|an|its|my)$/.test(article.phrase) &&
    noun(thing)
  );
};

export const placeOfSign = (w: Walk, c: Clause, index: number, name: Sign): Loc | null => {
  // "bag chafed on the shock bolt": what it rubs on is not what is chafed
  if (name === 'chafed') {
    const before = c.places.filter((i) => i < index && !c.taken.has(i)).at(-1);
    const after = c.places.find((i) => i > index);
    if (before !== undefined && (c.items[before] as PlaceItem).p.part !== undefined) {
      if (after !== undefined) {
        use(w, c.items[after]);
        c.taken.add(after);
      }
      return locOf(w, c.items[before] as PlaceItem);
    }
  }
  if (/(?:^|^now |^air )(?:pump|comp|compressor) /.test(phraseOf(c.items[index]))) return assumed({ part: 'pump' });
  const own = find(w, c, index, placeAfter.has(name));
  if (own) return ofTheOther(w, own, name);
  if (c.measure?.v === 'pressure' && ['sags', 'drops', 'holds', 'low', 'high', 'rises', 'leaks', 'ok'].includes(name)) {
    use(w, c.measure);
    return assumed({ part: 'tank' });
  }
  if (c.measure?.v === 'height' && ['holds', 'ok', 'level', 'drops'].includes(name)) {
    use(w, c.measure);
    return assumed({ part: 'coach' });
  }
  const home = signHomes[name];
  // "that side's creeping up"
  if (
    w.subject?.p.side &&
    /\b(?:that|this|the same|same) side/i.test(w.text.slice(c.items[0]!.span[0], c.items[index]!.span[0]))
  )
    return { p: { side: w.subject.p.side }, from: 'carried', spans: [] };
  if (pumpSigns.has(name)) return assumed({ part: 'pump' });
  const s = carried(w.subject);
  const attitude = [
    'sags',
    'leans',
    'level',
    'rises',
    'bounces',
    'bottoms',
    'wanders',
    'on stops',
    'comes up driving',
  ].includes(name);
  // air is not heard at a tyre that was only read
  if (s && ['tyre', 'wheel', 'axle'].includes(s.p.part ?? '') && ['hiss', 'bubbles', 'leaks'].includes(name))
    return home ? assumed(tidy({ part: home as PlaceParts['part'] })) : null;
  const whole =
    home === 'coach' &&
    s?.p.part !== undefined &&
    !(
      attitude ? ['bellows', 'coach'] : ['bellows', 'coach', 'tank', 'height valve', 'gauge', 'tyre', 'shock']
    ).includes(s.p.part);
  if (s && !(whole && name !== 'ok')) return s;
  return home ? assumed(tidy({ part: home as PlaceParts['part'] })) : null;
};
