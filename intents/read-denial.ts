/** What was looked for and not found, and what is only suspected. */
import { isContent, nextReal } from './near.ts';
import { makePlace, type PlaceParts } from './place.ts';
import { tidy } from './merge-places.ts';
import { type PlaceItem, type Settled } from './settled.ts';
import type { Sign } from './shapes.ts';
import { sideable } from './sideable.ts';
import { ofTheOther } from './sign-place.ts';
import { phraseOf, said, skippable, use, whereOf, type Clause, type Loc, type Walk } from './walk.ts';
import { pushNoVolts } from './no-volts.ts';
import { push } from './push.ts';
import { locOf } from './loc.ts';
import { share } from './share.ts';

/** "none on the left", "nothing at the valve": the last sign, denied there. */
export const readNone = (w: Walk, c: Clause, index: number): void => {
  const item = c.items[index]!;
  const phrase = phraseOf(item);
  const next = nextReal(c, index);
  const dead = c.items[next];
  // "no play in the left link": not loose
  if (
    /^(?:no|zero|without)$/.test(phrase) &&
    dead?.k === 'measure' &&
    dead.v === 'free play' &&
    !c.items.some((it) => it.k === 'num')
  ) {
    const at = c.places.find((i) => i > next) ?? c.places.findLast((i) => i < index);
    use(w, dead);
    if (at !== undefined)
      push(w, { is: 'sign', what: said('loose', dead), there: false }, locOf(w, c.items[at] as PlaceItem), item);
    return;
  }
  // "no volts at the switch": nothing on the meter
  if (
    /^(?:no|zero|without|nothing)$/.test(phrase) &&
    dead &&
    (dead.k === 'measure'
      ? dead.v === 'voltage'
      : dead.k === 'unit'
        ? dead.v === 'V'
        : /^(?:power|juice|feed)$/.test(dead.k === 'unknown' ? dead.low : '')) &&
    !c.items.some((it) => it.k === 'num')
  ) {
    const at = c.places.find((i) => i > next) ?? c.places.find((i) => i < index);
    if (at === undefined) return;
    pushNoVolts(w, item, locOf(w, c.items[at] as PlaceItem), said('voltage', dead));
    use(w, dead);
    return;
  }
  // "nothing at the motor": no volts there
  const dead0 = ['motor', 'relay output', 'switch output', 'switch input', 'relay coil', 'key switch'];
  if (
    phrase === 'nothing' &&
    dead?.k === 'place' &&
    dead0.includes(dead.p.part ?? '') &&
    w.lastSign === null &&
    !c.items.some((it) => it.k === 'num' || it.k === 'sign')
  ) {
    pushNoVolts(w, item, locOf(w, dead));
    return;
  }
  // "the right one not": what was seen on the other side, denied here
  const led = c.items.slice(0, index).findLast((it): it is PlaceItem => it.k === 'place');
  if (
    led &&
    /^(?:not|none|nothing|no|isnt|doesnt|wasnt)$/.test(phrase) &&
    c.items[next] === undefined &&
    !c.items.some(isContent)
  ) {
    const seen = w.context.recent.at(-1)?.facts.findLast((f) => f.is === 'sign');
    const sign = w.lastSign ?? (seen?.is === 'sign' ? seen.what.v : null);
    if (sign) {
      const loc = ofTheOther(w, locOf(w, led), sign);
      push(
        w,
        {
          is: 'sign',
          what: { v: sign, from: 'carried', spans: [item.span] },
          there: false,
        },
        loc,
        item,
      );
      w.subject = loc;
      return;
    }
  }
  const rest = c.items.slice(index + 1);
  // "soaped the crimp, nada": looked for and not found where it was looked for
  const worked = w.facts.at(-1);
  if (
    w.lastWork === 'soaped' &&
    w.lastSign === null &&
    worked?.is === 'work' &&
    worked.done &&
    /^(?:none|nothing|nil|nope|nada|nowt|zip)$/.test(phrase) &&
    (c.items.every((it) => it === item || skippable(it)) ||
      // "soaped everything lh side nothing"
      (c.items.some((it) => it.k === 'work') && rest.every(skippable) && worked.where.from === 'said'))
  ) {
    for (const f of w.facts
      .slice(w.facts.findLastIndex((x) => x.is === 'sign') + 1)
      .filter((x) => x.is === 'work' && x.what.v === 'soaped'))
      push(
        w,
        {
          is: 'sign',
          where: f.where,
          what: { v: 'bubbles', from: 'assumed', spans: [item.span] },
          there: false,
        },
        null,
        item,
      );
    return;
  }
  if (
    !/^(?:none|nothing|not|no|nil|nope|nada|nowt|zip)$/.test(phrase) ||
    rest.some(isContent) ||
    c.items[next]?.k !== 'place'
  )
    return;
  const soap = w.lastWork === 'soaped' || w.lastSign === 'bubbles';
  const said0: Sign | null =
    w.lastSign ?? (soap ? 'bubbles' : /^(?:nothing|none|nil|nowt|nada)$/.test(phrase) ? 'leaks' : null);
  const place = c.items[next];
  if (!said0 || (phrase === 'not' && !w.lastSign)) return;
  const p: PlaceParts = { ...place.p };
  if (!p.part && w.subject?.p.part && sideable.has(w.subject.p.part)) p.part = w.subject.p.part;
  const kin = locOf(w, place);
  if (kin.p.side && !p.side) p.side = kin.p.side;
  const loc: Loc = { ...locOf(w, place), p: tidy(p) };
  c.taken.add(next);
  push(
    w,
    {
      is: 'sign',
      where: { ...whereOf(loc), v: makePlace(loc.p) },
      what: { v: said0, from: w.lastSign ? 'carried' : 'assumed', spans: [item.span] },
      there: false,
    },
    loc,
    item,
  );
  w.subject = loc;
};

/** "maybe", "boss thinks": what follows is thought, not seen. */
export const guesses = (it: Settled): boolean =>
  it.k === 'hedge' ||
  (it.k === 'told' && /\b(?:thinks?|reckons?|suspects?|blames?|figures?|guess(?:es)?|believes?)$/.test(it.phrase));

/** "think its the left valve": a part that is doubted and nothing more is said of. */
export const readDoubt = (w: Walk, c: Clause): void => {
  const hedge = c.items.find(guesses);
  if (!hedge || c.items.some((it) => isContent(it) || it.k === 'neg' || it.k === 'spec')) return;
  const at = c.places.find((i) => (c.items[i] as PlaceItem).p.part !== undefined);
  if (at === undefined) return;
  const loc = locOf(w, c.items[at] as PlaceItem);
  if (['coach', 'floor', 'ambient', 'load'].includes(loc.p.part ?? '')) return;
  const fact = push(
    w,
    {
      is: 'sign',
      word: 'hunch',
      what: { v: 'not working', from: 'assumed', spans: [hedge.span] },
      there: true,
    },
    loc,
    hedge,
  );
  share(w, fact);
};
