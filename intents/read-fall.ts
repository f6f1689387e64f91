/** A change with its amount: "drops 6 psi in 10 min". */
import { dimensionOf, type Unit } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { changeOf, durationAfter, durationBefore, perOne, tankOrCarried, withEnd, bellowsOf } from './changes.ts';
import { coachSides, heightUnit, lengthy, pressureParts, pressureUnit } from './dims.ts';
import { find, findForNumber, nextReal, placesNear } from './near.ts';
import type { PlaceItem } from './settled.ts';
import type { Measure } from './shapes.ts';
import {
  amountOf,
  assumed,
  carried,
  phraseOf,
  said,
  skippable,
  use,
  type Clause,
  type Loc,
  type Walk,
} from './walk.ts';
import { push } from './push.ts';
import { locOf } from './loc.ts';
import { rateOf, readRate } from './read-rate.ts';
import { share } from './share.ts';
import { unreadable } from './ask-about.ts';

/** "Drops 10 to 12 psi in an hour": what falls so much falls between the two, and not from the one to the other. */
const takeRange = (w: Walk, c: Clause, changing: 'fall' | 'rise', n: Amounting, at: number): void => {
  const second = c.items[at + 2];
  if (
    changing !== 'fall' ||
    phraseOf(c.items[at + 1]) !== 'to' ||
    second?.k !== 'num' ||
    second.clock !== undefined ||
    second.value <= n.value ||
    n.to !== undefined ||
    durationAfter(c, at + 2) === null
  )
    return;
  n.to = second.value;
  n.unit ??= second.unit;
  n.step = Math.max(n.step, second.step);
  use(w, second, c.items[at + 1]);
};

/** A change word at `index` with its amount after it; the index after what was taken, or null. */
export const readFall = (w: Walk, c: Clause, index: number): number | null => {
  const item = c.items[index]!;
  const changing = changeOf(item);
  let at = nextReal(c, index);
  // "is down left back 3 inch": the place stands between
  const mid = c.items[at];
  const beyond = mid?.k === 'place' ? c.items[nextReal(c, at)] : undefined;
  const placed =
    mid?.k === 'place' &&
    beyond?.k === 'num' &&
    beyond.unit !== null &&
    dimensionOf(beyond.unit) === 'length' &&
    !c.taken.has(at)
      ? mid
      : null;
  if (placed) {
    c.taken.add(at);
    at = nextReal(c, at);
  }
  const ahead = c.items[at];
  if (!changing || ahead?.k !== 'num' || ahead.clock !== undefined || w.used.has(ahead)) return null;
  const preps = c.items
    .slice(placed ? c.items.indexOf(placed) + 1 : index + 1, at)
    .filter((it) => it.k === 'prep')
    .map(phraseOf);
  if (preps.some((p) => ['to', 'at', 'in', 'over', 'on', 'into', 'through', 'from', 'near'].includes(p))) return null;
  // "no leak @ 115 psi"
  if (w.text.slice(item.span[1], ahead.span[0]).includes('@')) return null;
  if (changing === 'fall' && rateOf(w, ahead)) {
    const rated = readRate(w, c, ahead, at, (placed ? locOf(w, placed) : null) ?? find(w, c, index, false));
    use(w, item);
    return rated;
  }
  if (ahead.unit && !['pressure', 'length', 'mass'].includes(dimensionOf(ahead.unit))) return null;
  takeRange(w, c, changing, ahead, at);
  const over =
    durationAfter(c, at) ??
    perOne(c, at) ??
    (phraseOf(c.items[index - 1]) === 'to' ? durationBefore(w, c, index) : null) ??
    (changing === 'fall' && ahead.unit !== null ? w.spell : null);
  // "loses 2 psi every 10": ten of what was not said
  const per = over === null ? c.items[at + 2] : undefined;
  if (
    per?.k === 'num' &&
    per.unit === null &&
    per.clock === undefined &&
    /^(?:every|in|per|each|over)$/.test(phraseOf(c.items[at + 1])) &&
    !w.used.has(per)
  )
    unreadable(w, per);
  // "dropped 95 to 89": from and to, read by the number
  if (
    ahead.to === undefined &&
    c.items.slice(at + 1, at + 4).some((it) => it.k === 'prep' && it.phrase === 'to') &&
    c.items
      .slice(at + 1, at + 5)
      .filter((it) => it.k === 'num')
      .some((it) => it !== over)
  )
    return null;
  const near = placesNear(w, c, index) ?? placesNear(w, c, at);
  const corner = near ? coachSides(near) : w.subject ? coachSides(w.subject.p) || w.subject.p.part === 'coach' : false;
  let u: Unit | null = ahead.unit === 'lb' ? 'psi' : ahead.unit;
  if (!u) {
    const tape = lengthy(ahead, w.context) && ahead.step < 1;
    // a gauge is not read in sixteenths
    const eighths = /[/\u2150-\u215e]/.test(ahead.text) && ahead.step <= 1 / 8;
    if (eighths) u = 'in';
    else if (near && !corner && near.part && pressureParts.has(near.part))
      u = pressureUnit(w.context, ahead, w.lastUnit);
    else if (corner) u = tape || lengthy(ahead, w.context) ? heightUnit(ahead, w.context) : null;
    else if (w.lastUnit && w.lastReading && ['pressure', 'length'].includes(dimensionOf(w.lastUnit))) u = w.lastUnit;
    else if (w.subject?.p.part && pressureParts.has(w.subject.p.part)) u = pressureUnit(w.context, ahead, w.lastUnit);
    else if (tape && ahead.step !== 0.1) u = 'in';
  }
  if (!u) {
    unreadable(w, ahead);
    use(w, item, over);
    return at + 1;
  }
  const d = dimensionOf(u);
  let loc: Loc | null = (placed ? locOf(w, placed) : null) ?? find(w, c, index, false) ?? findForNumber(w, c, at);
  if (d === 'length' && loc && (loc.p.part === 'coach' || (loc.p.end && !loc.p.side && !loc.p.part))) {
    const later = c.places.find(
      (i) => i > at && (c.items[i] as PlaceItem).p.side !== undefined && !(c.items[i] as PlaceItem).p.part,
    );
    const side = later === undefined ? null : locOf(w, c.items[later] as PlaceItem);
    if (side) loc = loc.p.end ? { ...side, p: { end: loc.p.end, ...side.p } } : side;
  }
  // "went down 1/2 in 30 minutes on lr": said last
  const end = over ? c.items.indexOf(over) : -1;
  if (!loc && end > at && c.items[end + 1]?.k === 'prep' && c.items[nextReal(c, end)]?.k === 'place')
    loc = find(w, c, end, true);
  // "10 mm an hour o/s only": said last, with no word between
  const last = over ? c.items.findIndex((it) => it.span[0] >= over.span[1]) : -1;
  const lone = c.items[last];
  if (!loc && lone?.k === 'place' && c.items.slice(last + 1).every(skippable)) {
    c.taken.add(last);
    loc = locOf(w, lone);
  }
  loc ??= d === 'pressure' ? tankOrCarried(w.subject) : carried(w.subject);
  if (d === 'length') loc = withEnd(w, loc);
  if (d === 'pressure') loc = bellowsOf(loc);
  if (d === 'pressure' && loc?.p.part && !pressureParts.has(loc.p.part)) loc = assumed({ part: 'tank' });
  if (d === 'pressure' && loc && ['gauge', 'coach', 'pump'].includes(loc.p.part ?? ''))
    loc = { ...loc, p: { part: 'tank' } };
  // "nsr down 18 mm overnight, osr down 3": it, too
  const alike = w.lastReading?.what.v === 'height fall' && d === 'length' && !over && !c.often ? w.lastReading : null;
  const off =
    d === 'length' &&
    !alike &&
    !over &&
    !c.often &&
    /^(?:down|low|lower|is down|down by|up|lower by|up by)$/.test(item.k === 'measure' ? '' : phraseOf(item));
  const what: Measure = off
    ? 'height off'
    : d === 'pressure'
      ? changing === 'fall'
        ? 'pressure fall'
        : 'pressure rise'
      : 'height fall';
  const sign = off ? (changing === 'fall' ? -1 : 1) : what === 'height fall' && changing === 'rise' ? -1 : 1;
  const fact = push(
    w,
    {
      is: 'reading',
      what: said(what, item),
      amount: said(amountOf({ ...ahead, value: sign * ahead.value }, u, true), ahead),
      ...(over ? { over: said(amountOf(over, over.unit!), over) } : {}),
      ...(alike?.over ? { over: alike.over } : {}),
      ...(c.often ? { often: c.often.v } : alike?.often ? { often: alike.often } : {}),
    },
    loc,
    item,
  );
  share(w, fact);
  use(w, ahead, over);
  // one of a unit: its word is read
  if (over && !c.items.includes(over)) use(w, c.items[at + 2]);
  if (loc) w.subject = loc;
  return over ? Math.max(at, c.items.indexOf(over)) + 1 : at + 1;
};
