/** Places told by those named before them: "soaped both", "no bubbles on either", "the forward one". */
import { makePlace } from './place.ts';
import type { PlaceItem, Settled } from './settled.ts';

const bothOf = (it: Settled): it is PlaceItem =>
  it.k === 'place' && it.p.side === 'both' && it.p.part === undefined && it.p.end === undefined;
const named = (it: Settled): it is PlaceItem => it.k === 'place' && it.p.part !== undefined && !it.ask && !it.other;
const links = (it: Settled): boolean => it.k === 'join' || it.k === 'filler' || (it.k === 'sep' && !it.hard);
const anyOfThem = (it: Settled): boolean => it.k === 'filler' && /^on (?:any|all) of them$/.test(it.phrase);

/** The parts named one after another before `at`, where they are different things and not the two sides of one. */
const listBefore = (items: readonly Settled[], at: number): readonly PlaceItem[] => {
  const list: PlaceItem[] = [];
  for (let i = at - 1; i >= 0 && at - i < 24; i -= 1) {
    const it = items[i]!;
    if (named(it)) list.unshift(it);
    else if (list.length > 0 && !links(it)) break;
    else if (it.k === 'sep' && it.hard) break;
  }
  return new Set(list.map((it) => it.p.part)).size >= 2 &&
    new Set(list.map((it) => makePlace(it.p))).size === list.length
    ? list
    : [];
};

/** "both" of a check valve and a discharge line is the check valve and the discharge line. */
const spreadBoth = (items: readonly Settled[]): Settled[] =>
  items.flatMap((it, at): Settled[] => {
    if (!bothOf(it) && !anyOfThem(it)) return [it];
    const list = listBefore(items, at);
    // "no bubbles on either" of two, "on any of them" of more
    if (list.length === 0 || (bothOf(it) && list.length !== 2)) return [it];
    const led = items.slice(0, at).findLast((o) => o.k !== 'filler');
    // "the check valve and the dryer both leak": they were just named
    if (led === list.at(-1)) return [{ k: 'filler', span: it.span, phrase: 'both' }];
    return list.flatMap((one, i): Settled[] => {
      const again: PlaceItem = { ...one, span: it.span, spans: [it.span] };
      return i === 0 ? [again] : [{ k: 'join', span: it.span }, again];
    });
  });

/** "left rear aft wheel bearing loose, forward one ok": what the other wheel of a side has. */
const sameOfWheel = (items: readonly Settled[]): Settled[] => {
  let last: PlaceItem | undefined;
  return items.map((it) => {
    if (it.k === 'sep' && it.hard) last = undefined;
    if (it.k !== 'place') return it;
    const of = last;
    if (it.p.part !== undefined) last = it;
    if (
      of?.p.wheel === undefined ||
      of.p.part === 'wheel' ||
      !(it.p.part === undefined || it.p.part === 'wheel') ||
      it.p.wheel === undefined ||
      it.p.wheel === of.p.wheel ||
      /wheel/.test(it.phrase)
    )
      return it;
    last = { ...it, p: { ...it.p, part: of.p.part! } };
    return last;
  });
};

/** "Nearside rear: forward wheel 1 degree, aft wheel half": the two wheels of the side that stands at the head. */
const ofTheSide = (items: readonly Settled[]): Settled[] => {
  let head: PlaceItem | undefined;
  return items.map((it, at) => {
    if (it.k !== 'place') return it;
    const { side, end, part, wheel } = it.p;
    if ((side === 'left' || side === 'right') && end === 'rear' && part === undefined && wheel === undefined) {
      const next = items[at + 1];
      head = next?.k === 'sep' ? it : undefined;
      return it;
    }
    if (side !== undefined) head = undefined;
    if (head === undefined || part !== 'wheel' || end === undefined || wheel !== undefined) return it;
    return { ...it, p: { side: head.p.side!, end: 'rear', wheel: end === 'front' ? 'forward' : 'aft', part } };
  });
};

export const namedBefore = (items: readonly Settled[]): Settled[] => sameOfWheel(ofTheSide(spreadBoth(items)));
