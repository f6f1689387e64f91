/** Corrections of what was said before: of whole notes, of a value, a side, a place, a measure; and in mid-sentence. */
import { dimensionOf, fromSi, toSi, type Unit } from '../server/core/units.ts';
import { blankAmend, countOf } from './amends.ts';
import { dimension, itemsOf, type Amounting } from './items.ts';
import { makePlace, type PlaceParts } from './place.ts';
import { settle, type PlaceItem, type Settled } from './settle.ts';
import type { Amend, Context, Fact, Span } from './shapes.ts';
import { flatten, tokensOf } from './smooth.ts';
import {
  midCorrection,
  putLead,
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

type Side = {
  nums: Amounting[];
  places: PlaceItem[];
  wheels: ('forward' | 'aft')[];
  measures: string[];
  units: Unit[];
};
const side = (): Side => ({ nums: [], places: [], wheels: [], measures: [], units: [] });

/** Sorts what a correction names into what it is and what it was said to be. */
const sortOut = (items: readonly Settled[]): { now: Side; was: Side; content: boolean; not: boolean } => {
  const now = side();
  const was = side();
  let content = false;
  let not = false;
  let into = now;
  items.forEach((item, i) => {
    const phrase = 'phrase' in item ? item.phrase : item.k === 'unknown' ? item.low : '';
    const next = items[i + 1];
    const nextPhrase = next && 'phrase' in next ? next.phrase : next?.k === 'unknown' ? next.low : '';
    if (item.k === 'neg' || (/^(?:rather|instead)$/.test(phrase) && /^(?:than|of)$/.test(nextPhrase))) {
      into = was;
      not = true;
    } else if (/^should/.test(phrase) && now.nums.length === 1 && was.nums.length === 0) {
      was.nums.push(now.nums.pop()!);
      into = now;
    } else if (/^(?:said|wrote|typed|told|entered|writing|typing|putting|saying)$/.test(phrase)) into = was;
    else if (/^(?:meant|mean|meaning|should|actually|but|correct|make|real|really)$/.test(phrase)) into = now;
    else if (item.k === 'sep' || item.k === 'join') {
      if (
        into === was &&
        (was.nums.length > 0 || was.places.length > 0 || was.measures.length > 0 || was.units.length > 0) &&
        now.nums.length === 0 &&
        now.places.length === 0
      )
        into = now;
    } else if (item.k === 'spec') {
      // "the 51 should be 57": what stood before it was wrong
      if (now.nums.length === 1 && was.nums.length === 0 && items.slice(i).some((it) => it.k === 'num'))
        was.nums.push(now.nums.pop()!);
      into = now;
    } else if (item.k === 'num' && item.clock === undefined) into.nums.push(item);
    else if (item.k === 'place') into.places.push(item);
    else if (item.k === 'wheel') into.wheels.push(item.v);
    else if (item.k === 'measure') into.measures.push(/^(?:read|reads|reading|says|tape)/.test(phrase) ? '' : item.v);
    else if (item.k === 'unit') into.units.push(item.v);
    else if (
      item.k === 'cond' ||
      item.k === 'work' ||
      item.k === 'change' ||
      item.k === 'hedge' ||
      item.k === 'told' ||
      (item.k === 'num' && item.clock !== undefined) ||
      item.k === 'day' ||
      item.k === 'often'
    )
      content = true;
    else if (
      item.k === 'sign' &&
      !/^(?:right|level|lower|higher|is right|off|wrong|bad|is wrong|misread|slipped|dropped|swapped over|ok|good)$/.test(
        phrase,
      )
    )
      content = true;
    else if (item.k === 'filler' && /^(?:later|ago)$/.test(phrase)) content = true;
  });
  return { now, was, content, not };
};

const placeSaid = (item: PlaceItem, text: string): string => {
  const p: PlaceParts = { ...item.p };
  // a wheel named only by which one keeps its part from what it corrects
  if (p.wheel && p.part === 'wheel' && !/wheel/i.test(text)) delete p.part;
  return makePlace(p);
};

/** The unit of a bare number that corrects: that of the reading it corrects. */
const unitFor = (n: Amounting, other: Amounting | null, context: Context): Unit => {
  if (n.unit) return n.unit;
  if (other?.unit) return other.unit;
  const readings = context.recent
    .flatMap((c) => c.facts)
    .filter((f): f is Extract<Fact, { is: 'reading' }> => f.is === 'reading');
  const hit = other
    ? readings.findLast(
        (f) => Math.abs(toSi(other.value, f.amount.v.unit) - f.amount.v.si) < 1e-6 * Math.abs(f.amount.v.si) + 1e-9,
      )
    : undefined;
  const over = other
    ? readings.findLast((f) => f.over && Math.abs(toSi(other.value, f.over.v.unit) - f.over.v.si) < 1e-6)
    : undefined;
  return hit?.amount.v.unit ?? over?.over?.v.unit ?? readings.at(-1)?.amount.v.unit ?? context.pressureUnit;
};

const itemsFor = (text: string, context: Context): Settled[] => settle(itemsOf(tokensOf(text), text), text, context);

/** "make that 105", "no, right side", "98 not 89": what the note changes of what was said before; null when it does not. */
export const putCorrection = (text: string, context: Context): Amend | null => {
  const { low } = flatten(text);
  const trimmed = low.trim().replace(/[.! ]+$/, '');
  const span = spanOf(text);
  if (context.recent.length > 0 && swapWords.test(trimmed)) {
    const busy = itemsFor(text, context).some(
      (i) => i.k === 'num' || (i.k === 'place' && i.p.part !== undefined && i.p.part !== 'coach'),
    );
    if (!busy) return { ...blankAmend('put', [span]), says: { swapSides: true } };
  }
  const strong = strongLead.test(trimmed) || trailMeant.test(trimmed);
  const lead = putLead.exec(trimmed);
  if (!strong && !hints.test(trimmed)) return null;
  if (
    !strongLead.test(trimmed) &&
    trimmed.replace(midCorrection, '\u0001').indexOf('\u0001') > 0 &&
    !trailMeant.test(trimmed)
  )
    return null;
  const first = itemsFor(text, context)[0];
  if (first && (first.k === 'cond' || first.k === 'sign') && /^no /.test(first.phrase)) return null;
  if (/^no [a-z]/.test(trimmed)) {
    // "no voltage at the switch" denies, "no right side" corrects
    const second = itemsFor(trimmed.slice(3), context)[0];
    if (
      second &&
      (second.k === 'measure' ||
        second.k === 'unit' ||
        (second.k === 'place' && second.p.part !== undefined && !second.p.side))
    )
      return null;
  }
  const rest = (lead ? trimmed.slice(lead[0].length) : trimmed).replace(trailMeant, '').trim();
  if (rest === '') return null;
  const items = itemsFor(rest, context);
  const { now, was, content, not } = sortOut(items);
  if (content || items.some((i) => i.k === 'unknown' && !known.test(i.low) && !strong)) return null;
  const paired =
    (now.nums.length === 1 && was.nums.length === 1) ||
    (now.nums.length === 0 && was.nums.length === 0 && now.places.length >= 1 && was.places.length >= 1) ||
    (now.measures.length === 1 && was.measures.length === 1 && now.nums.length === 0) ||
    (now.units.length > 0 && was.units.length > 0) ||
    (was.units.length > 0 && now.nums.length === 1);
  // "its 98 now" alone is a new reading; "should be 98", "no, 98" and "98 not 89" are not
  if (!(strong || (paired && (not || lead !== null || was.nums.length > 0 || was.places.length > 0)))) return null;
  if (now.nums.length > 1 || was.nums.length > 1 || now.places.length > 2) return null;
  const place = now.places[0];
  const where = place ? placeSaid(place, text) : now.wheels[0];
  if (place?.ask) return null;
  const value = now.nums[0];
  const what = now.measures.find((m) => m !== '' && m !== 'pressure' && m !== 'height');
  if (value) {
    const old = was.nums[0] ?? null;
    const unit = unitFor(value, old, context);
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
  if (other && was.units.length > 0 && was.nums.length === 0 && !place) {
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
  /^(?:ment|number|figure|value|entry|note|one|side|corner|typo|sorry|oops|nah|aint|fingers|fat|fingered|bus|shaky|brain)$/;

/** "no 315 and thats after 20 mins settling": a correction first, then a note. Where the first part ends. */
export const correctionAndMore = (text: string, context: Context): { cut: number; amend: Amend } | null => {
  const { low, at } = flatten(text);
  if (!strongLead.test(low)) return null;
  for (const m of low.matchAll(/,? and (?:thats|its|it was|that was|then)\b|[,;.] (?=[a-z])/g)) {
    const cut = at[m.index] ?? text.length;
    const amend = putCorrection(text.slice(0, cut), context);
    if (amend?.says.amount) return { cut, amend: { ...amend, spans: [[0, cut]] } };
  }
  return null;
};

/** "95 no wait 98": what went before the correction gives way to what follows it. Works on settled items. */
export const midway = (items: Settled[], text: string): { items: Settled[]; covered: Span[] } => {
  const { low, at } = flatten(text);
  const covered: Span[] = [];
  let out = items;
  for (const m of low.matchAll(midCorrection)) {
    const from = at[m.index]!;
    const to = at[Math.min(m.index + m[0].trimEnd().replace(/,$/, '').length, at.length - 1)]!;
    const before = out.filter((i) => i.span[1] <= from && i.k !== 'filler' && i.k !== 'prep');
    const after = out.filter((i) => i.span[0] >= to && i.k !== 'filler' && i.k !== 'sep' && i.k !== 'join');
    const next = after[0];
    if (!next || before.length === 0) {
      // "hums, the compressor I mean": the place comes last
      if (before.length > 0 && !next) covered.push([from, to]);
      continue;
    }
    const kin = (i: Settled): boolean =>
      next.k === 'num'
        ? i.k === 'num' &&
          (i.clock === undefined) === (next.clock === undefined) &&
          (dimension(next) === null || dimension(i) === null || dimension(i) === dimension(next))
        : i.k === next.k && (next.k === 'place' || next.k === 'sign' || next.k === 'cond' || next.k === 'work');
    const old = before.findLast(kin);
    if (!old) continue;
    covered.push([from, to], old.span);
    const drop = new Set<Settled>(
      out.filter(
        (i) =>
          (i.span[0] >= from && i.span[1] <= to) ||
          (i.k === 'sep' && i.span[0] >= old.span[1] && i.span[1] <= next.span[0]),
      ),
    );
    drop.add(old);
    // "right rear is 3/8 low i mean left rear is 3/8 low": all of it said again
    const until = out.findIndex((i) => i.span[0] >= to && (i.k === 'sep' || i.k === 'join'));
    const again = out.slice(out.indexOf(next), until < 0 ? undefined : until);
    const since = out.findLastIndex((i) => i.span[1] <= from && (i.k === 'sep' || i.k === 'join'));
    const told = out.slice(since + 1).filter((i) => i.span[1] <= from);
    const kinds = (list: readonly Settled[]): string[] =>
      list.map((i) => i.k).filter((k) => k === 'place' || k === 'num' || k === 'sign');
    if (
      next.k === 'place' &&
      kinds(told).includes('place') &&
      new Set(kinds(told)).size >= 2 &&
      [...new Set(kinds(told))].every((k) => kinds(again).includes(k))
    ) {
      covered.push(...told.map((i) => i.span));
      const gone = new Set<Settled>(told);
      out = out.filter((i) => !gone.has(i) && !(i.span[0] >= from && i.span[1] <= to));
      continue;
    }
    // the new value moves to the old one's place, so that its subject stays; its own neighbours come along
    if (next.k === 'place' && old.k === 'place') {
      const merged: Settled = {
        ...next,
        p: { ...old.p, ...Object.fromEntries(Object.entries(next.p).filter(([, v]) => v !== undefined)) },
      };
      out = out.map((i) => (i === old ? merged : i)).filter((i) => i !== next && (!drop.has(i) || i === merged));
    } else if (next.k === 'num' && old.k === 'num') {
      const moved: Settled = { ...next, unit: next.unit ?? old.unit };
      const placeBetween = out.some((i) => i.k === 'place' && i.span[0] >= to && i.span[1] <= next.span[0]);
      out = placeBetween
        ? out.filter((i) => !drop.has(i))
        : out.map((i) => (i === old ? moved : i)).filter((i) => i !== next && (!drop.has(i) || i === moved));
    } else out = out.filter((i) => !drop.has(i));
  }
  return { items: out, covered };
};
