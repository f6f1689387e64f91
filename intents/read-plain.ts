/** One number that is simply a reading: which measure, which unit, which place. */
import { dimensionOf, type Dimension } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { chooseUnit } from './choose-unit.ts';
import {
  byDimension,
  coachSides,
  heightUnit,
  lengthy,
  measureDims,
  tapeLike,
  timeMeasures,
  voltParts,
} from './dims.ts';
import { findForNumber, nextReal, placeOfNumber } from './near.ts';
import { pairUp } from './pair-up.ts';
import type { PlaceItem } from './settled.ts';
import type { PlaceParts } from './place.ts';
import { pressurePlace, laterPlace, bracketOf, placeless } from './plain-place.ts';
import { durationAfter, tankOrCarried, withEnd } from './changes.ts';
import type { Measure } from './shapes.ts';
import { amountOf, assumed, carried, phraseOf, said, use, type Clause, type Loc, type Walk } from './walk.ts';
import { push } from './push.ts';
import { locOf } from './loc.ts';
import { settledBare, unreadable } from './ask-about.ts';
import { share } from './share.ts';
import { direction, askWheel } from './wheel-direction.ts';

export const readPlain = (w: Walk, c: Clause, n: Amounting, index: number): number => {
  const hit = placeOfNumber(w, c, index);
  // "left one's 11": the part spoken of
  if (hit?.item.one) locOf(w, hit.item);
  // "bay 3", "job 4410": which, not how much
  const named = c.items[index - 1];
  if (
    n.unit === null &&
    n.whole &&
    named?.k === 'unknown' &&
    /^(?:bay|lift|stall|job|ticket|ro|order|invoice|unit|fleet)$/.test(named.low)
  )
    return index + 1;
  const m = c.measure;
  let measure: Measure | null = m?.v ?? null;
  let unit = n.unit;
  const items = c.items;
  // "soaped it two times"
  if (n.unit === null && /^times?$/.test(phraseOf(items[index + 1]))) {
    use(w, n);
    return index + 1;
  }
  // "dash gauge reads 6 lbs low": it lies, by so much
  const off = items[index + 1];
  if (hit?.item.p.part === 'gauge' && off?.k === 'sign' && (off.v === 'low' || off.v === 'high') && n.value < 40) {
    const gauge = locOf(w, hit.item);
    push(w, { is: 'sign', what: said('reads wrong', off), there: true }, gauge, off);
    return index + 2;
  }
  // "relay has 12.4 in, 12.3 out": volts, not inches
  if (unit === 'in' && hit?.item.p.part && voltParts.has(hit.item.p.part) && /\din$|\d in$/.test(n.text)) unit = 'V';
  // "nearside shock 50 mm longer than the other": no height of the corner
  const than = items[index + 1];
  if (
    than?.k === 'unknown' &&
    /^(?:longer|shorter)$/.test(than.low) &&
    (hit?.item.p.part === 'shock' || w.subject?.p.part === 'shock')
  ) {
    // the first named is the one that is longer
    const first = items.find((it): it is PlaceItem => it.k === 'place' && it.p.part === 'shock');
    const shock = first ? locOf(w, first) : carried(w.subject);
    push(w, { is: 'sign', what: { v: 'wrong part', from: 'assumed', spans: [than.span] }, there: true }, shock, than);
    use(w, n);
    w.subject = shock;
    return index + 2;
  }
  if (unit === 'lb') {
    const heavy =
      measure === 'load' ||
      hit?.item.p.part === 'load' ||
      n.value > 300 ||
      items.some((it) => it.k === 'place' && it.p.part === 'load');
    unit = measure === 'torque' ? 'lbf ft' : heavy ? 'lb' : 'psi';
  }
  // "30A fuse blown": the size of a fuse is no reading
  const sized = items[index + 1];
  if (unit === 'A' && /^ ?(?:blade )?(?:fuse|breaker)\b/i.test(w.text.slice(n.span[1], n.span[1] + 16))) {
    use(w, n);
    return index + 1;
  }
  if (unit === 'A' && sized?.k === 'place' && ['fuse', 'breaker', 'relay'].includes(sized.p.part ?? '')) {
    use(w, n);
    return index + 1;
  }
  // "fuse was a twenty amp": its size
  if (
    unit === 'A' &&
    n.whole &&
    /^(?:a|new|another|the same)$/.test(
      phraseOf(items[index - 1])
        .split(' ')
        .at(-1) ?? '',
    ) &&
    (w.subject?.p.part === 'fuse' || hit?.item.p.part === 'fuse')
  ) {
    use(w, n, hit?.item);
    return index + 1;
  }
  if (measure && timeMeasures.includes(measure)) measure = null;
  let dim: Dimension | null = unit ? dimensionOf(unit) : null;
  if (dim === 'duration' || dim === 'rate') return index + 1;
  const next = items[nextReal(c, index)];
  // "ambient is forty degrees"
  if (dim === 'angle' && (measure === 'temperature' || hit?.item.p.part === 'ambient' || hit?.item.p.part === 'pump')) {
    unit = w.context.lengthUnit === 'in' ? 'F' : 'C';
    dim = 'temperature';
  }
  // "tank is 8 gallons": its size, which no fact holds
  if (
    dim === 'volume' &&
    !/\b(?:water|drain\w*|drip\w*|moisture|condensate|cup\w*|came out|come out|out of|outta|got|milky|rusty|emptied|sludge)\b/i.test(
      w.text,
    )
  )
    return index + 1;
  if (dim === 'volume') measure = 'water drained';
  // "8F out", "forty degrees out here": the weather
  const outdoors =
    /^(?:out|outside|outdoors|out here)$/.test(phraseOf(items[index + 1])) ||
    phraseOf(items[index + 1]).startsWith('out ');
  if (
    dim === 'angle' &&
    outdoors &&
    n.unit === 'deg' &&
    n.whole &&
    n.value >= 10 &&
    measure !== 'camber' &&
    measure !== 'toe'
  ) {
    unit = w.context.lengthUnit === 'in' ? 'F' : 'C';
    dim = 'temperature';
  }
  if (dim === 'temperature') measure = 'temperature';
  if (
    dim === 'voltage' &&
    (next?.k === 'change' || next?.k === 'sign') &&
    /^(?:drop|drops|dropped|lost|loss)$/.test(phraseOf(next))
  ) {
    measure = 'voltage drop';
    use(w, next);
  }
  const fell = items.slice(0, index).findLast((it) => !(it.k === 'filler' || it.k === 'prep'));
  if (
    dim === 'voltage' &&
    (fell?.k === 'sign' || fell?.k === 'change') &&
    /^(?:drop|drops|dropped|dropping|losing|loses|lost)$/.test(phraseOf(fell))
  ) {
    measure = 'voltage drop';
    use(w, fell);
  }
  // "drop on ground 0.9 v": volts lost there, nothing that goes down
  const dropped = w.facts.at(-1);
  if (
    dim === 'voltage' &&
    dropped?.is === 'sign' &&
    dropped.what.v === 'drops' &&
    dropped.there &&
    fell?.k === 'place' &&
    items.slice(0, index).some((it) => it.k === 'sign' && /^drops?$/.test(it.phrase) && w.used.has(it)) &&
    !items.slice(0, index).some((it) => it.k === 'num')
  ) {
    measure = 'voltage drop';
    w.facts.pop();
  }
  if (dim === 'ratio' && next?.k === 'measure' && next.v === 'humidity') {
    measure = 'humidity';
    use(w, next);
  }
  if (dim === 'length' && (unit === 'mi' || unit === 'km') && measure !== 'odometer')
    measure = n.value > 2500 ? 'odometer' : 'distance driven';
  // so many feet are no height of a coach
  if (unit === 'ft' && n.value >= 300 && !measure) measure = 'altitude';
  if (dim === 'voltage' && next?.k === 'measure' && next.v === 'voltage drop') {
    measure = 'voltage drop';
    use(w, next);
  }
  if (dim === 'ratio' && next?.k === 'measure' && next.v === 'humidity') {
    measure = 'humidity';
    use(w, next);
  }
  if (dim === 'length' && next?.k === 'sign' && next.v === 'bubbles') {
    measure = 'bubble size';
    use(w, next);
  }
  if ((dim === 'length' || (dim === null && tapeLike(n))) && next?.k === 'place' && next.p.part === 'shim') {
    measure = 'shim thickness';
    use(w, next);
  }
  if (
    (dim === 'length' || (dim === null && tapeLike(n))) &&
    next?.k === 'measure' &&
    ['free play', 'dead band', 'height'].includes(next.v) &&
    items[nextReal(c, items.indexOf(next))]?.k !== 'num'
  ) {
    measure = next.v;
    use(w, next);
  }
  if (measure && dim && !(measureDims[measure] ?? [dim]).includes(dim)) measure = null;
  // "right side low, maybe 2 cm": how low
  const standing = w.facts.at(-1);
  if (
    !hit &&
    !measure &&
    standing?.is === 'sign' &&
    standing.there &&
    (standing.what.v === 'low' || standing.what.v === 'high') &&
    lengthy(n, w.context) &&
    (dim === 'length' || (dim === null && tapeLike(n))) &&
    n.value < (n.unit === 'mm' ? 150 : n.unit === 'cm' ? 15 : 5)
  ) {
    w.facts.pop();
    const low = standing.what.v === 'low';
    push(
      w,
      {
        is: 'reading',
        where: standing.where,
        word: standing.word,
        what: { ...standing.what, v: 'height off' },
        amount: said(amountOf({ ...n, value: low ? -n.value : n.value }, unit ?? heightUnit(n, w.context), true), n),
        ...(standing.often ? { often: standing.often } : {}),
      },
      null,
      n,
    );
    return index + 1;
  }
  // "down 3mm n/s overnight, o/s 2mm": so much there, too
  const sank = w.lastReading;
  if (
    hit &&
    !measure &&
    sank &&
    (sank.what.v === 'height fall' || sank.what.v === 'height off') &&
    dim === 'length' &&
    hit.item.p.part === undefined &&
    Math.abs(n.value) < (n.unit === 'mm' ? 150 : n.unit === 'cm' ? 15 : 5)
  ) {
    const where = withEnd(w, findForNumber(w, c, index));
    push(
      w,
      {
        is: 'reading',
        what: { ...sank.what, from: 'carried' },
        amount: said(amountOf({ ...n, value: sank.amount.v.si < 0 ? -n.value : n.value }, unit!, true), n),
        ...(sank.often ? { often: sank.often } : {}),
        ...(sank.over ? { over: sank.over } : {}),
      },
      where,
      n,
    );
    if (where) w.subject = where;
    return index + 1;
  }
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
  // "8 psi in 20 minutes": so much in so long is a fall
  const spell =
    dim === 'pressure' && !hit && !measure && /^(?:in|over|per|every)$/.test(phraseOf(items[index + 1]))
      ? durationAfter(c, index)
      : null;
  if (spell && unit && n.to === undefined) {
    const where = tankOrCarried(w.subject?.p.part === 'bellows' ? w.subject : null);
    push(
      w,
      {
        is: 'reading',
        what: { v: 'pressure fall', from: 'assumed', spans: [n.span] },
        amount: said(amountOf(n, unit, true), n),
        over: said(amountOf(spell, spell.unit!), spell),
        ...(c.often ? { often: c.often.v } : {}),
      },
      where,
      n,
    );
    use(w, spell);
    return items.indexOf(spell) + 1;
  }
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
  else if (!loc) loc = placeless(w, dim!, measure, /^(?:inside|still inside)$/.test(phraseOf(items[index + 1])));
  else if (dim === 'pressure' && measure === 'pressure') loc = pressurePlace(w, loc);
  else if (loc.p.part === 'pump' && (dim === 'current' || dim === 'voltage')) loc = { ...loc, p: { part: 'motor' } };
  else if (dim === 'volume' && ['drain', 'dryer'].includes(loc.p.part ?? '')) loc = { ...loc, p: { part: 'tank' } };
  else if (dim === 'temperature' && loc.p.part === 'coach') loc = assumed({ part: 'ambient' });
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
    if (
      across?.k === 'num' &&
      (/^(?:over|across|on)$/.test(phraseOf(items[at - 1])) ||
        (phraseOf(items[at - 1]) === 'at' &&
          /^ ?(?:rim|wheel|tyre|tire|dia\w*)\b/i.test(w.text.slice(across?.span[1] ?? 0, (across?.span[1] ?? 0) + 10))))
    ) {
      fact.across = said(amountOf(across, across.unit!), across);
      use(w, across);
      return at + 1;
    }
  }
  return index + 1;
};
