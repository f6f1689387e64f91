/** Which place a place word is: whose side it takes, which part "the right one" is. */
import { tidy } from './merge-places.ts';
import { takePlace, type PlaceParts } from './place.ts';
import type { PlaceItem } from './settled.ts';
import { sideable } from './sideable.ts';
import { type Loc, type Walk } from './walk.ts';
import { airSide } from './words/parts.ts';

const placeBefore = (w: Walk, item: PlaceItem): PlaceParts | undefined => {
  const at = w.all.indexOf(item);
  for (let i = at - 1; i >= 0 && at - i < 12; i -= 1) {
    const it = w.all[i]!;
    if (it.k === 'place' && it.p.side) return it.p;
  }
  return undefined;
};

/** The place of an item as said; parts of a side take the side spoken of before. */
export const locOf = (w: Walk, item: PlaceItem): Loc => {
  w.used.add(item);
  let p = item.p;
  let from: Loc['from'] = item.near || item.assumed ? 'assumed' : 'said';
  const s = placeBefore(w, item) ?? w.here?.p ?? w.subject?.p;
  const sub = p.part !== undefined && airSide.has(p.part) && p.part !== 'bellows' && p.part !== 'height valve';
  const inherits =
    p.part !== undefined &&
    !p.side &&
    ((w.here !== undefined && airSide.has(p.part)) ||
      (sub && s?.part !== undefined && airSide.has(s.part)) ||
      // "soaped everything on the left, bubbles at the crimp"
      (sub && s !== undefined && s.part === undefined && s.end !== 'front' && w.lastWork === 'soaped') ||
      (joints.has(p.part) &&
        !/s$/.test(item.phrase) &&
        !/\ball (?:the )?$/i.test(w.text.slice(Math.max(0, item.span[0] - 8), item.span[0])) &&
        w.subject?.p.part !== undefined &&
        airSide.has(w.subject.p.part)) ||
      (p.part === 'bellows' &&
        /^(?:bellows (?:line|crimp|fold)|bead plate|piston)$/.test(s?.part ?? '') &&
        /\b(?:the|that) $/i.test(w.text.slice(0, item.span[0]).slice(-5))) ||
      (['bellows', 'height valve'].includes(p.part) &&
        s !== undefined &&
        !s.part &&
        !s.end &&
        w.facts.at(-1)?.is === 'condition' &&
        w.facts.at(-1)?.where.v === s.side) ||
      (p.part === 'height valve' &&
        /^(?:link|arm)$/.test(s?.part ?? '') &&
        item.phrase === 'valve' &&
        /\bthe $/i.test(w.text.slice(0, item.span[0]).slice(-4))) ||
      (p.part === s?.part && sideable.has(p.part) && !/\bnew $/i.test(w.text.slice(0, item.span[0]).slice(-5))));
  // "soaped its fitting", "damper leaking, bushes ok": of the thing spoken of
  const kind =
    w.subject?.p.side && !p.side
      ? ownPart(w.subject.p.part, p.part, /\b(?:its|his|her|their) $/i.test(w.text.slice(0, item.span[0]).slice(-6)))
      : undefined;
  if (kind && w.subject) {
    const its = w.subject.p;
    return { p: tidy({ ...its, part: kind }), from: 'carried', spans: item.spans, item };
  }
  if (inherits && s && (s.side === 'left' || s.side === 'right')) {
    p = { ...p, side: s.side };
    if (from === 'said') from = 'carried';
  }
  // "tyre there is cupped": at the place spoken of
  const spot = w.subject?.p.side ? w.subject.p : placeBefore(w, item);
  if (
    spot?.side &&
    p.part &&
    !p.side &&
    /^ (?:there|on that side|that side)\b/i.test(w.text.slice(item.span[1], item.span[1] + 14))
  )
    p = tidy({
      ...(spot.wheel ? { wheel: spot.wheel } : {}),
      ...(spot.end ? { end: spot.end } : {}),
      side: spot.side,
      part: p.part,
    });
  if (item.other) {
    const s = w.subject?.p.side ? w.subject.p : sidedBefore(w, item);
    if (s?.side === 'left' || s?.side === 'right')
      p = tidy({ ...s, ...p, part: p.part ?? s.part, side: s.side === 'left' ? 'right' : 'left' });
    from = 'carried';
    item.p = p;
  }
  // "the right one": of what was spoken of
  const kin = item.one && !p.part ? (w.subject?.p.part ?? partBefore(w, item) ?? partOfLast(w)) : undefined;
  if (kin && sideable.has(kin)) {
    p = tidy({ ...p, part: kin, ...(p.end === undefined && w.subject?.p.end ? { end: w.subject.p.end } : {}) });
    from = from === 'said' ? 'carried' : from;
    item.p = p;
  }
  return { p, from, spans: item.spans, item };
};

const ownPart = (of: PlaceParts['part'], part: PlaceParts['part'], its: boolean): PlaceParts['part'] =>
  of === 'shock' && part === 'bushing'
    ? 'shock bushing'
    : its && of === 'bellows' && (part === 'fitting' || part === 'line')
      ? 'bellows line'
      : // "pry bar at the right arm: play at the pins, bushings worn"
        (of === 'control arm' || of === 'pin') && (part === 'pin' || part === 'bushing')
        ? part
        : undefined;

/** Named bare, they are those of the part spoken of. */
const joints: ReadonlySet<string> = new Set(['fitting', 'line']);

const sidedBefore = (w: Walk, item: PlaceItem): PlaceParts | undefined => {
  const before = w.all
    .slice(0, w.all.indexOf(item))
    .findLast((it): it is PlaceItem => it.k === 'place' && it.p.side !== undefined);
  const last = w.context.recent.at(-1)?.facts.findLast((f) => takePlace(f.where.v)?.side !== undefined);
  return before?.p ?? (last ? (takePlace(last.where.v) ?? undefined) : undefined);
};

const partOfLast = (w: Walk): PlaceParts['part'] => {
  const last = w.context.recent.at(-1)?.facts.findLast((f) => (takePlace(f.where.v)?.part ?? 'coach') !== 'coach');
  return last ? takePlace(last.where.v)?.part : undefined;
};

const partBefore = (w: Walk, item: PlaceItem): PlaceParts['part'] =>
  w.all.slice(0, w.all.indexOf(item)).findLast((it): it is PlaceItem => it.k === 'place' && it.p.part !== undefined)?.p
    .part;
