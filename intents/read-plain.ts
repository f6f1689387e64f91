/** One number that is simply a reading: which measure, which unit, which place. */
import { dimensionOf, toSi } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { settledBare, unreadable } from './ask-about.ts';
import { durationAfter, withEnd } from './changes.ts';
import { chooseUnit } from './choose-unit.ts';
import { byDimension, coachSides } from './dims.ts';
import { locOf } from './loc.ts';
import { measureBeside } from './measure-beside.ts';
import { findForNumber, nextReal, placeOfNumber } from './near.ts';
import { readNumberCase } from './number-case.ts';
import { pairUp } from './pair-up.ts';
import { takePlace, type PlaceParts } from './place.ts';
import { bracketOf, laterPlace, placeless, pressurePlace } from './plain-place.ts';
import { push } from './push.ts';
import { readFurther, readSpell } from './read-further.ts';
import { share } from './share.ts';
import { amountOf, assumed, carried, phraseOf, said, use, type Clause, type Loc, type Walk } from './walk.ts';
import { askWheel, direction } from './wheel-direction.ts';

/** Metres: no arm or link of a height valve is longer. Common practice, no source. */
const longestArm = 0.33;

export const readPlain = (w: Walk, c: Clause, n: Amounting, index: number): number => {
  const hit = placeOfNumber(w, c, index);
  // "left one's 11": the part spoken of
  if (hit?.item.one) locOf(w, hit.item);
  const elsewise = readNumberCase(w, c, n, index, hit);
  if (elsewise !== null) return elsewise;
  const m = c.measure;
  const items = c.items;
  const near = measureBeside(w, c, n, index, hit);
  if (!near) return index + 1;
  const { outdoors } = near;
  let { measure, unit, dim } = near;
  const further = readFurther(w, c, n, index, hit, near);
  if (further !== null) return further;
  // "pressure switch adjusted, now 119 psi": the point spoken of before
  if (
    !measure &&
    !hit &&
    dim === 'pressure' &&
    w.subject?.p.part === 'pressure switch' &&
    (w.lastMeasure === 'cut-in' || w.lastMeasure === 'cut-out' || w.limited)
  )
    measure = w.limited?.v ?? w.lastMeasure;
  let from: 'said' | 'assumed' | 'carried' = 'said';
  let loc: Loc | null = null;
  if (!unit) {
    const wheelPlace = hit?.item.p ?? null;
    const choice = chooseUnit(w, c, n, measure, wheelPlace);
    if (!choice) {
      unreadable(w, n, hit && (hit.item.bare ?? (hit.item.p.part ? undefined : hit.item.bare)) ? hit.item : undefined);
      if (hit) use(w, hit.item);
      use(w, m);
      return index + 1;
    }
    measure = choice.measure ?? measure;
    unit = choice.unit;
    from = choice.from;
    loc = choice.loc ?? null;
    dim = dimensionOf(unit);
  } else if (
    !measure &&
    (hit?.item.p.wheel || (hit?.item.p.end === 'front' && !hit.item.p.part && n.value < 3)) &&
    (w.lastMeasure === 'toe' || w.lastMeasure === 'camber') &&
    (dim === 'angle' || dim === 'length')
  )
    measure = w.lastMeasure;
  else if (!measure && dim === 'angle' && (w.lastMeasure === 'toe' || w.lastMeasure === 'camber'))
    measure = w.lastMeasure;
  const fell = readSpell(w, c, n, index, hit, { measure, unit, dim });
  if (fell !== null) return fell;
  // "drop on the feed cable 0.4 V and on the ground 0.1": lost there, too
  if (
    !measure &&
    dim === 'voltage' &&
    (w.lastMeasure === 'voltage drop' || (n.value < 3 && hit?.item.p.part === 'ground' && /\bdrop/i.test(w.text))) &&
    /^(?:ground|feed cable)$/.test(hit?.item.p.part ?? '')
  )
    measure = 'voltage drop';
  // "lost 12 lbs in 20 min with it open and 1 lb with it shut": lost, too
  const lost = w.lastReading;
  if (
    !measure &&
    dim === 'pressure' &&
    lost?.what.v === 'pressure fall' &&
    lost.over &&
    n.to === undefined &&
    toSi(n.value, unit) < lost.amount.v.si * 1.5 &&
    /\b(?:and|but|then|vs|only)(?: only| about| just)* $/i.test(w.text.slice(0, n.span[0]).slice(-18)) &&
    phraseOf(items[index + 1]) === 'with'
  ) {
    push(
      w,
      {
        is: 'reading',
        where: { ...lost.where, from: 'carried', spans: [] },
        what: { v: 'pressure fall', from: 'carried', spans: [] },
        amount: said(amountOf(n, unit, true), n),
        over: { ...lost.over, from: 'carried', spans: [] },
      },
      null,
      n,
    );
    return index + 1;
  }
  // "duty 10 percent": of nothing that is kept
  if (!measure && dim !== 'count' && !byDimension[dim!]) return index + 1;
  measure ??= byDimension[dim!] ?? 'count';
  if (measure === 'height' && dim !== 'length') measure = byDimension[dim!] ?? 'count';
  use(w, m);
  const own =
    measure === 'shim thickness' &&
    w.all.some((it) => it.k === 'place' && /^(?:bracket|control arm)$/.test(it.p.part ?? ''))
      ? bracketOf(w, c)
      : ['distance driven', 'odometer', 'altitude', 'humidity', 'barometer'].includes(measure) ||
          (measure === 'temperature' && outdoors)
        ? null
        : findForNumber(w, c, index);
  loc = own ?? loc;
  if (own?.item?.ask) {
    use(w, n);
    return index + 1;
  }
  if (own?.item?.bare && !settledBare(w, own.item)) {
    unreadable(w, n, own.item);
    return index + 1;
  }
  if (measure === 'cut-in' || measure === 'cut-out')
    loc = {
      p: { part: 'pressure switch' },
      from: own?.p.part === 'pressure switch' ? 'said' : 'assumed',
      spans: own?.spans ?? [],
    };
  else if (measure === 'load test')
    loc = { p: { part: 'battery' }, from: own?.p.part === 'battery' ? 'said' : 'assumed', spans: own?.spans ?? [] };
  else if (measure === 'toe' || measure === 'camber') {
    const s = w.subject?.p;
    let p: PlaceParts | null =
      own?.p ?? (s && (s.part === 'wheel' || coachSides(s) || s.part === 'tyre' || s.part === 'axle') ? s : null);
    if (p && p.wheel && !p.side && s?.side) p = { ...p, side: s.side };
    if (p) {
      const one = p.side === 'left' || p.side === 'right';
      p = p.part === 'tyre' || (one && p.part === undefined) ? { ...p, part: 'wheel' } : p;
      if (one && p.end !== 'front' && !p.wheel) {
        askWheel(w, c, measure, p, n, index, own?.item);
        return index + 1;
      }
      loc = { p, from: own?.from ?? 'carried', spans: own?.spans ?? [] };
    }
  } else if (
    measure === 'distance driven' ||
    measure === 'odometer' ||
    measure === 'altitude' ||
    measure === 'humidity' ||
    measure === 'barometer'
  )
    loc = null;
  else if (!loc)
    loc = placeless(
      w,
      dim!,
      measure,
      /^(?:inside|still inside)$/.test(phraseOf(items[index + 1])) ||
        (phraseOf(items[index + 1]) === 'in' && phraseOf(items[index + 2]) === 'it'),
    );
  else if (dim === 'pressure' && measure === 'pressure') loc = pressurePlace(w, loc);
  // "batt 12.5 pulling 19 A": the battery has its volts, the motor pulls the amps
  else if (dim === 'current' && loc.p.part === 'battery' && c.items.slice(0, index).some((it) => it.k === 'num'))
    loc = assumed({ part: 'motor' });
  else if (loc.p.part === 'pump' && (dim === 'current' || dim === 'voltage')) loc = { ...loc, p: { part: 'motor' } };
  else if (dim === 'volume' && ['drain', 'dryer'].includes(loc.p.part ?? '')) loc = { ...loc, p: { part: 'tank' } };
  else if (
    dim === 'temperature' &&
    (loc.p.part === 'coach' ||
      (loc.from !== 'said' && phraseOf(items[index + 1]) === 'out' && items[nextReal(c, index)]?.k !== 'place'))
  )
    loc = assumed({ part: 'ambient' });
  // "adjusted the link 1 turn": of what was turned
  const turned = w.facts.at(-1);
  if (measure === 'turns' && turned?.is === 'work' && /\b(?:link|torsion bar|arm)$/.test(turned.where.v))
    loc = { p: takePlace(turned.where.v)!, from: 'carried', spans: [] };
  if (measure === 'height') loc = withEnd(w, loc);
  if (measure === 'free play' && !own) loc = laterPlace(w, c, index) ?? loc;
  if (measure === 'bubble size' || measure === 'voltage drop')
    loc = laterPlace(w, c, index) ?? own ?? carried(w.subject);

  if (dim === 'voltage' && !loc) {
    unreadable(w, n);
    return index + 1;
  }
  if (measure === 'height') {
    const part = loc?.p.part;
    if (!loc) {
      unreadable(w, n);
      return index + 1;
    }
    if (part === 'shim') {
      measure = 'shim thickness';
      loc = bracketOf(w, c) ?? loc;
    } else if (part === 'arm' && /\b(?:mov\w+|travel\w*|before anything|push\w*)\b/i.test(w.text)) {
      // "i can move the arm half an inch before anything happens"
      measure = 'dead band';
      loc = { ...loc, p: { ...(loc.p.side ? { side: loc.p.side } : {}), part: 'height valve' } };
    } else if ((part === 'arm' || part === 'link') && toSi(n.value, unit) > longestArm) {
      // "replaced valve & link, set both to 345 mm": of what, nobody said
      unreadable(w, n);
      return index + 1;
    } else if (part === 'arm' || part === 'link') measure = 'arm length';
    else if (part && !['wheel', 'coach', 'frame', 'axle', 'bellows', 'tyre', 'floor'].includes(part)) {
      unreadable(w, n);
      return index + 1;
    } else if (part === 'axle' || part === 'frame' || part === 'floor')
      loc = w.subject && coachSides(w.subject.p) ? carried(w.subject) : loc;
  }
  let value = n;
  // "no 12v at motor": nothing on the meter
  const none = items[index - 1];
  const dead = measure === 'voltage' && none?.k === 'neg' && /^(?:no|zero|without)$/.test(phraseOf(none));
  if (dead) {
    use(w, none);
    value = { ...n, value: 0, step: 1, text: '0' };
  }
  if ((measure === 'toe' || measure === 'camber' || measure === 'thrust') && !n.signed) {
    const dir = direction(w, c, index) ?? (/out/.test(phraseOf(m ?? undefined)) ? 'out' : null);
    if (dir === 'out') value = { ...n, value: -Math.abs(n.value) };
  } else if (measure === 'toe' || measure === 'camber') direction(w, c, index);
  const when = c.items.slice(index + 1, index + 3).find((it) => it.k === 'day');
  const fact = push(
    w,
    {
      is: 'reading',
      what:
        m && m.v === measure
          ? said(measure, m)
          : {
              v: measure,
              from: from === 'carried' ? 'carried' : unit === n.unit ? 'said' : 'assumed',
              spans: [n.span],
            },
      amount: { v: amountOf(value, unit), from: n.slip || dead ? 'assumed' : n.unit ? 'said' : from, spans: [n.span] },
      ...(c.often && !when && measure !== 'distance driven' && measure !== 'odometer' ? { often: c.often.v } : {}),
    },
    loc,
    n,
  );
  // a switch point is said once
  if (measure === 'cut-in' || measure === 'cut-out') c.measure = null;
  if (fact && loc && (loc.p.part !== 'pressure switch' || measure === 'voltage') && loc.p.part !== 'ambient')
    w.subject = loc;
  if (fact && loc) pairUp(w, fact, own?.item);
  share(w, fact);
  if (fact?.is === 'reading' && measure === 'bubble size') {
    const over = durationAfter(c, index);
    if (over) fact.over = said(amountOf(over, over.unit!), over);
    use(w, over);
  }
  if (
    fact &&
    measure === 'shim thickness' &&
    items
      .slice(0, index)
      .some((it) =>
        /^(?:added|add|put|fitted|installed|slipped|stuck)/.test(it.k === 'unknown' ? it.low : phraseOf(it)),
      )
  ) {
    const by = items.find((it) =>
      /^(?:added|add|put|fitted|installed|slipped|stuck)/.test(it.k === 'unknown' ? it.low : phraseOf(it)),
    )!;
    push(w, { is: 'work', word: 'own', what: said('shimmed', by), done: true }, loc, by);
  }
  // "98 not 89": the second is what it was
  const neg = items[nextReal(c, index)];
  const other = neg ? items[nextReal(c, items.indexOf(neg))] : undefined;
  if (neg?.k === 'neg' && other?.k === 'num') use(w, neg, other);
  if (fact?.is === 'reading' && (measure === 'toe' || measure === 'camber')) {
    const at = items.findIndex(
      (it, j) => j > index && it.k === 'num' && it.unit !== null && dimensionOf(it.unit) === 'length',
    );
    const across = items[at];
    // "1/8 in over 24 in": over a length, not more than it
    const over =
      across?.k === 'num' && across.about === 'at least' && /\bover\b/i.test(w.text.slice(n.span[1], across.span[1]));
    if (over) delete across.about;
    if (
      across?.k === 'num' &&
      (over ||
        /^(?:over|across|on)$/.test(phraseOf(items[at - 1])) ||
        (phraseOf(items[at - 1]) === 'at' &&
          /^ ?(?:rim|wheel|tyre|tire|dia\w*)\b/i.test(w.text.slice(across?.span[1] ?? 0, (across?.span[1] ?? 0) + 10))))
    ) {
      fact.across = said(amountOf(across, across.unit!), across);
      use(w, across);
      return at + 1;
    }
    const rim = items.find((it, j) => j > index && it.k === 'unknown' && it.low === 'rim');
    if (rim && /^[^\d,]*\b(?:over|across|at|on) (?:the )?$/i.test(w.text.slice(n.span[1], rim.span[0]))) use(w, rim);
  }
  return index + 1;
};
