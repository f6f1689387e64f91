/** Corrections of what was said before: of whole notes, of a value, a side, a place, a measure; and in mid-sentence. */
import type { Amount } from '../server/core/amount.ts';
import { dimensionOf, fromSi, toSi, type Unit } from '../server/core/units.ts';
import { blankAmend, countOf } from './amends.ts';
import type { Amounting } from './amount-item.ts';
import { itemsOf } from './items.ts';
import { makePlace, type PlaceParts } from './place.ts';
import { settle } from './settle.ts';
import { type PlaceItem, type Settled } from './settled.ts';
import type { Amend, Context, Fact, Span } from './shapes.ts';
import { flatten, tokensOf } from './smooth.ts';
import { sortOut } from './sort-correction.ts';
import {
  midCorrection,
  putLead,
  sideNotSide,
  strongLead,
  swapForms,
  swapWords,
  trailMeant,
  undoForms,
  undoThen,
} from './words/amends.ts';

const spanOf = (text: string): Span => [0, text.length];

const ask =
  /^(?:(?:can you|could you|would you|you can|please|just|ok|so|hey|well|boss|mate|lets|let me|i want to|you better|better) )+/;

export const wholeUndo = (bare: string, span: Span): Amend | null => {
  // "scratch that it's fifty two not sixty two": one figure for another
  if (
    /\b(?:\d+|ten|eleven|twelve|thirteen|fourteen|fifteen|\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred)\b.* not (?:\d|\w+(?:teen|ty)\b|ten|eleven|twelve)/.test(
      bare,
    )
  )
    return null;
  const low = bare.replace(ask, '').replace(/ (?:please|pls|mate|thanks|boss)$/, '');
  for (const [kind, form] of undoForms) {
    const m = form.exec(low) ?? form.exec(bare) ?? form.exec(low.replace(/,/g, ''));
    if (m)
      return blankAmend(
        kind,
        [span],
        countOf(
          /\b(two|three|four|five|six|to|too|both|couple|[2-6])\b/.exec(
            low.replace(/\b(?:said|said to|to (?:me|you))\b.*/, ''),
          )?.[1] ?? m.groups?.['count'],
        ),
      );
  }
  if (swapForms.some((form) => form.test(low))) return { ...blankAmend('put', [span]), says: { swapSides: true } };
  return null;
};

/** "scratch that, tank 98 psi": what is taken back, and the rest, to be read as a note of its own. */
export const undoAndMore = (text: string): { cut: number; amend: Amend } | null => {
  const { low, at } = flatten(text);
  const m = undoThen.exec(low);
  if (!m || m[0].length >= low.length) return null;
  const cut = at[m[0].length] ?? text.length;
  return { cut, amend: blankAmend('drop', [[0, cut]]) };
};

const amountSaid = (n: Amounting, unit: Unit): NonNullable<Amend['says']['amount']> => ({
  si: toSi(n.value, unit),
  pm: (toSi(n.step, unit) - toSi(0, unit)) / 2,
  unit,
  text: n.text,
});

const placeSaid = (item: PlaceItem, text: string): string => {
  const p: PlaceParts = { ...item.p };
  // a wheel named only by which one keeps its part from what it corrects
  if (p.wheel && p.part === 'wheel' && !/wheel/i.test(text)) delete p.part;
  return makePlace(p);
};

/** The number is the amount's figure, in the amount's own unit. */
const isFigure = (n: Amounting, a: Amount): boolean =>
  Math.abs(toSi(n.value, a.unit) - a.si) < 1e-6 * Math.abs(a.si) + 1e-9;

/** The unit of a bare number that corrects: that of the reading it corrects. */
const unitFor = (n: Amounting, other: Amounting | null, context: Context): Unit => {
  // "scratch that, eight pounds": of a gauge, unless a weight was read
  if (n.unit === 'lb' && context.recent.flatMap((r) => r.facts).findLast((f) => f.is === 'reading')?.what.v !== 'load')
    return 'psi';
  if (n.unit) return n.unit;
  // 13 5/8 is read off a tape, whatever was read before
  if (n.step < 1 && Number.isInteger(1 / n.step) && ![0.1, 0.01, 0.001].includes(n.step)) return 'in';
  if (other?.unit) return other.unit;
  const readings = context.recent
    .flatMap((c) => c.facts)
    .filter((f): f is Extract<Fact, { is: 'reading' }> => f.is === 'reading');
  const hit = other ? readings.findLast((f) => isFigure(other, f.amount.v)) : undefined;
  const over = other ? readings.findLast((f) => f.over && isFigure(other, f.over.v)) : undefined;
  return hit?.amount.v.unit ?? over?.over?.v.unit ?? readings.at(-1)?.amount.v.unit ?? context.pressureUnit;
};

/** The figure stands in a note before this one. */
const saidBefore = (n: Amounting, context: Context): boolean =>
  context.recent
    .flatMap((c) => c.facts)
    .some((f) => f.is === 'reading' && [f.amount.v, f.from?.v, f.over?.v].some((a) => a && isFigure(n, a)));

const itemsFor = (text: string, context: Context): Settled[] => settle(itemsOf(tokensOf(text), text), text, context);

/** "make that 105", "no, right side", "98 not 89": what the note changes of what was said before; null when it does not. */
export const putCorrection = (text: string, context: Context): Amend | null => {
  const { low } = flatten(text);
  const trimmed = low.trim().replace(/[.! ]+$/, '');
  const span = spanOf(text);
  // "wait for the tank to reach 100": nothing is corrected
  if (/^wait(?:ing)? (?:for|until|till|til|on)\b/.test(trimmed)) return null;
  if (context.recent.length > 0 && swapWords.test(trimmed)) {
    const busy = itemsFor(text, context).some(
      (i) => i.k === 'num' || (i.k === 'place' && i.p.part !== undefined && i.p.part !== 'coach'),
    );
    const named = /\b(?:that|it|this) (?:was|is) (?:the |on the )?(.+)$|\bits (?:the )?(.+)$/.exec(trimmed);
    const meant = itemsFor(named?.[1] ?? named?.[2] ?? '', context).filter((i) => i.k === 'place');
    const place = meant.length === 1 ? meant[0] : undefined;
    if (place?.k === 'place' && place.p.side && place.p.end)
      return { ...blankAmend('put', [span]), says: { where: placeSaid(place, text) } };
    if (!busy) return { ...blankAmend('put', [span]), says: { swapSides: true } };
  }
  // "is not the left bag, was the left height valve"
  const instead =
    /^(?:(?:no|sorry|oops|ah|wait|wrong),? )*(?:it |that )?(?:is|was|isnt|wasnt|its) ?(?:not )?(?:the )?([^,.]+?)[,.] ?(?:it |that )?(?:is|was|its) (?:the )?([^,.]+)$/.exec(
      trimmed,
    );
  if (instead && /\bnot\b|nt\b/.test(trimmed) && context.recent.length > 0) {
    const sides = /^(?:left|right)$/;
    const places = itemsFor(instead[2]!, context).filter((i) => i.k !== 'filler' && i.k !== 'prep');
    const meant = places[0];
    if (sides.test(instead[2]!)) return { ...blankAmend('put', [span]), says: { where: instead[2]! } };
    if (places.length === 1 && meant?.k === 'place' && itemsFor(instead[1]!, context).some((i) => i.k === 'place'))
      return { ...blankAmend('put', [span]), says: { where: placeSaid(meant, text) } };
  }
  // "wait left not right": the one side for the other
  const sided = context.recent.length > 0 ? sideNotSide.exec(trimmed) : null;
  const [named, denied] = [sided?.[1], sided?.[2]].map((words) =>
    itemsFor(words ?? '', context).find((i) => i.k === 'place'),
  );
  if (named?.k === 'place' && denied?.k === 'place' && named.p.side && denied.p.side && named.p.side !== denied.p.side)
    return { ...blankAmend('put', [span]), says: { where: placeSaid(named, text) } };
  const strong = strongLead.test(trimmed) || trailMeant.test(trimmed);
  const lead = putLead.exec(trimmed);
  if (!strong && !hints.test(trimmed)) return null;
  if (
    !strongLead.test(trimmed) &&
    trimmed.replace(midCorrection, '\u0001').indexOf('\u0001') > 0 &&
    !/\bnot\b/.test(trimmed) &&
    !trailMeant.test(trimmed)
  )
    return null;
  const first = itemsFor(text, context)[0];
  if (first && (first.k === 'cond' || first.k === 'sign') && /^no /.test(first.phrase)) return null;
  // "no 12v at the relay": looked for, and not there
  if (/^no \d[\d.]* ?(?:v|volts?)\b.*\b(?:at|to|on|in|out)\b/.test(trimmed)) return null;
  if (/^no [a-z]/.test(trimmed)) {
    // "no voltage at the switch" denies, "no right side" corrects
    const second = itemsFor(trimmed.slice(3), context)[0];
    if (
      second &&
      (second.k === 'measure' ||
        second.k === 'unit' ||
        (second.k === 'unknown' &&
          /^(?:power|juice|feed|current|life|air|flow|noise|movement|play)$/.test(second.low)) ||
        (second.k === 'place' && second.p.part !== undefined && !second.p.side))
    )
      return null;
  }
  const turned = /^(?:make|change|turn) (?:the |that )?\d/.test(trimmed);
  const rest = (
    lead
      ? trimmed.slice(lead[0].length)
      : turned
        ? trimmed
            .replace(/,.*$/, '')
            .replace(/^change (?:the |that )?/, '')
            .replace(/(\d) an? (?=\d)/, '$1 to ')
        : trimmed
  )
    .replace(trailMeant, '')
    .replace(
      /[,.;] ?(?:i )?(?:misread|mistyped|misheard|wrong (?:line|scale|side of)|read it wrong|typed it wrong|fat fingered?)\b.*$/,
      '',
    )
    .trim();
  if (rest === '') return null;
  const items = itemsFor(rest, context);
  const { now, was, content, not } = sortOut(items);
  if ((turned || /^that \d[\d./ ]* (?:was|is|should)/.test(trimmed)) && now.nums.length === 2 && was.nums.length === 0)
    was.nums.push(now.nums.shift()!);
  if (content || items.some((i) => i.k === 'unknown' && !known.test(i.low) && !strong)) return null;
  const paired =
    (now.nums.length === 1 && was.nums.length === 1) ||
    (now.nums.length === 0 && was.nums.length === 0 && now.places.length >= 1 && was.places.length >= 1) ||
    (now.measures.length === 1 && was.measures.length === 1 && now.nums.length === 0) ||
    (now.units.length > 0 && was.units.length > 0) ||
    (now.wheels.length > 0 && was.wheels.length > 0) ||
    (was.units.length > 0 && now.nums.length === 1);
  // "its 98 now" alone is a new reading; "should be 98", "no, 98" and "98 not 89" are not
  if (!(strong || (paired && (not || lead !== null || was.nums.length > 0 || was.places.length > 0)))) return null;
  if (now.nums.length > 1 || was.nums.length > 1 || now.places.length > 2) return null;
  const place = now.places[0];
  const where = place ? placeSaid(place, text) : now.wheels[0];
  if (place?.ask) return null;
  // "sorry that was with the panel open": how it stood, and not where
  if (place && /\b(?:with|under) (?:the |my |an? )?$/i.test(rest.slice(0, place.span[0]))) return null;
  const value = now.nums[0];
  const what = now.measures.find((m) => m !== '' && m !== 'pressure' && m !== 'height');
  if (value) {
    const old = was.nums[0] ?? null;
    const unit = unitFor(value, old, context);
    // "cut out 110 should be 120": what it is and what it is to be, where nobody said 110 before
    if (old && (place ?? what) && / should (?:be|read)\b/.test(trimmed) && !saidBefore(old, context)) return null;
    return {
      ...blankAmend('put', [span]),
      says: {
        amount: amountSaid(value, unit),
        ...(old ? { was: amountSaid(old, old.unit ?? unit) } : {}),
        ...(where ? { where } : {}),
        ...(what ? { what } : {}),
      },
    };
  }
  const other = now.units[0];
  // "sorry meant bar", "thats psi not kpa"
  const onlyUnit = strong && now.units.length === 1 && items.every((i) => i.k === 'unit' || i.k === 'filler');
  if (other && (was.units.length > 0 || onlyUnit) && was.nums.length === 0 && !place) {
    // "thats psi not kpa": the same figure in the other unit
    const last = context.recent
      .flatMap((r) => r.facts)
      .findLast((f) => f.is === 'reading' && dimensionOf(f.amount.v.unit) === dimensionOf(other));
    if (last?.is !== 'reading') return null;
    const figure = fromSi(last.amount.v.si, last.amount.v.unit);
    const amount = {
      si: toSi(figure, other),
      pm: last.amount.v.pm,
      unit: other,
      text: `${Math.round(figure * 1e6) / 1e6} ${other}`,
    };
    return { ...blankAmend('put', [span]), says: { amount } };
  }
  if (was.nums.length > 0) return null;
  if (where) return { ...blankAmend('put', [span]), says: { where, ...(what ? { what } : {}) } };
  if (what && (strong || paired)) return { ...blankAmend('put', [span]), says: { what } };
  return null;
};

/** Without one of these a note corrects nothing. */
const hints = /\b(?:not|isnt|wasnt|arent|rather|instead|should|said|wrote|typed|meant|mean)\b/;

const known =
  /^(?:ment|mean|number|figure|value|entry|note|one|side|corner|typo|sorry|oops|nah|aint|fingers|fat|fingered|bus|shaky|brain)$/;

/** How many ends of a correction are tried. */
const mostEnds = 6;

/** "no 315 and thats after 20 mins settling": a correction first, then a note. Where the first part ends. */
export const correctionAndMore = (text: string, context: Context): { cut: number; amend: Amend } | null => {
  const { low, at } = flatten(text);
  if (!strongLead.test(low)) return null;
  let tried = 0;
  for (const m of low.matchAll(/,? and (?:thats|its|it was|that was|then)\b|[,;.] (?=[a-z])/g)) {
    // a correction ends soon; each end is read from the beginning
    if ((tried += 1) > mostEnds) break;
    const cut = at[m.index] ?? text.length;
    const amend = putCorrection(text.slice(0, cut), context);
    if (amend?.says.amount) return { cut, amend: { ...amend, spans: [[0, cut]] } };
  }
  return null;
};
