/** The unit of a number that has none. */
import { dimensionOf, toSi, type Unit } from '../server/core/units.ts';
import {
  coachSides,
  heightLike,
  heightUnit,
  measureUnit,
  pressureParts,
  pressureUnit,
  tapeLike,
  voltParts,
} from './dims.ts';
import type { Amounting } from './amount-item.ts';
import { isDuration } from './changes.ts';
import { heightRange } from './limits.ts';
import { takePlace, type PlaceParts } from './place.ts';
import type { Context, Measure, ReadingFact } from './shapes.ts';
import { assumed, phraseOf, type Clause, type Loc, type Walk } from './walk.ts';

export type Choice = { measure: Measure | null; unit: Unit; from: 'said' | 'carried' | 'assumed'; loc?: Loc | null };

/** The unit of a number that has none, from its place, its measure, what went before, or the question that stands open. */
export const chooseUnit = (
  w: Walk,
  c: Clause,
  n: Amounting,
  measure: Measure | null,
  place: PlaceParts | null,
): Choice | null => {
  const ctx = w.context;
  // "wont build past 60": on the tank's gauge
  if (measure === null && !place && w.lastSign === 'slow build' && !w.lastReading)
    return {
      measure: 'pressure',
      unit: pressureUnit(ctx, n, w.lastUnit),
      from: 'assumed',
      loc: assumed({ part: 'tank' }),
    };
  // "fuel half tank": how full, of no gauge
  if (measure === null && place?.part === 'tank' && /^(?:half|quarter|third)$/i.test(n.text)) return null;
  const lastPressure = w.lastMeasure === 'pressure' && w.lastUnit !== null && dimensionOf(w.lastUnit) === 'pressure';
  const subject = w.subject?.p;
  const inNote = w.lastReading !== null;
  const wheel = place?.wheel !== undefined || place?.part === 'wheel';
  if (measure === 'toe' || measure === 'camber' || measure === 'thrust') {
    if (measure !== 'toe') return { measure, unit: 'deg', from: 'assumed' };
    if (tapeLike(n)) return { measure, unit: 'in', from: 'assumed' };
    return w.lastMeasure === 'toe' && w.lastUnit ? { measure, unit: w.lastUnit, from: 'carried' } : null;
  }
  if (!measure && wheel && (w.lastMeasure === 'toe' || w.lastMeasure === 'camber') && w.lastUnit && inNote)
    return {
      measure: w.lastMeasure,
      unit: tapeLike(n) && dimensionOf(w.lastUnit) === 'length' ? 'in' : w.lastUnit,
      from: 'carried',
    };
  // "tires lr fwd 102 psi lr aft 98": of the tyres spoken of
  if (
    !measure &&
    place &&
    (wheel || (coachSides(place) && !heightLike(n, ctx))) &&
    !tapeLike(n) &&
    ((w.lastMeasure === 'pressure' && takePlace(w.lastReading?.where.v ?? '')?.part === 'tyre') ||
      (wheel && !inNote && w.all.some((i) => i.k === 'place' && i.p.part === 'tyre')))
  )
    return { measure: 'pressure', unit: pressureUnit(ctx, n, w.lastUnit), from: 'carried' };
  if (measure === 'dead band' || measure === 'free play' || measure === 'shim thickness') {
    const unit = tapeLike(n) ? 'in' : n.step < 1 ? ctx.lengthUnit : null;
    return unit ? { measure, unit, from: 'assumed' } : null;
  }
  if (measure === 'pressure' && place && !place.part && heightLike(n, ctx) && tapeLike(n))
    return { measure: 'height', unit: 'in', from: 'assumed' };
  // "air spring height 9 1/4": how tall it stands
  if (measure === 'height' && place?.part === 'bellows' && tapeLike(n)) return { measure, unit: 'in', from: 'assumed' };
  if (measure === 'height' && place?.part && pressureParts.has(place.part))
    return { measure: 'pressure', unit: pressureUnit(ctx, n, w.lastUnit), from: 'assumed' };
  // "33 cm left and 34.5 right": off the same tape
  if (
    (measure === null || measure === 'height') &&
    inNote &&
    w.lastMeasure === 'height' &&
    (w.lastUnit === 'mm' || w.lastUnit === 'cm') &&
    !tapeLike(n) &&
    place &&
    coachSides(place)
  ) {
    const like = toSi(n.value, w.lastUnit) / w.lastReading!.amount.v.si;
    if (like > 0.6 && like < 1.6) return { measure: 'height', unit: w.lastUnit, from: 'carried' };
  }
  const own = measureUnit(measure, ctx, n, w.lastUnit);
  if (
    own &&
    measure === 'pressure' &&
    !place &&
    !subject?.part &&
    !inNote &&
    !/press|psi/.test(phraseOf(c.measure ?? undefined))
  )
    return ctx.open?.unit
      ? { measure: ctx.open.what ?? 'pressure', unit: ctx.open.unit, from: 'carried', loc: openPlace(w) }
      : null;
  if (own && measure === 'pressure' && (place?.part ? voltParts.has(place.part) : false))
    return { measure: 'voltage', unit: 'V', from: 'assumed' };
  // "motor pulling 22 A, battery is 11.6"
  if (own && measure === 'current' && place?.part === 'battery' && w.lastMeasure === 'current')
    return { measure: 'voltage', unit: 'V', from: 'assumed' };
  if (own && measure === 'current' && n.whole && n.value > 80 && place?.part && pressureParts.has(place.part))
    return null;
  if (
    own &&
    !(
      measure === 'pressure' &&
      place &&
      coachSides(place) &&
      heightLike(n, ctx) &&
      !lastPressure &&
      place.end !== undefined
    )
  )
    return { measure, unit: own, from: 'assumed' };
  const part = place?.part;
  const lastPart = takePlace(w.lastReading?.where.v ?? '')?.part;
  if (
    part &&
    part === lastPart &&
    !measure &&
    w.lastMeasure &&
    w.lastUnit &&
    ['delay', 'dead band', 'voltage drop', 'free play', 'temperature', 'resistance', 'torque'].includes(w.lastMeasure)
  )
    return { measure: w.lastMeasure, unit: w.lastUnit, from: 'carried' };
  // "motor drew 28 A now 22": the same again
  if (
    part &&
    part === lastPart &&
    w.lastMeasure === 'current' &&
    inNote &&
    /\b(?:now|then|was|from|to) $/i.test(w.text.slice(0, n.span[0]).slice(-6))
  )
    return { measure: 'current', unit: w.lastUnit ?? 'A', from: 'carried' };
  if (part && voltParts.has(part)) return { measure: 'voltage', unit: 'V', from: 'assumed' };
  if (part && w.lastMeasure === 'load' && inNote) return { measure: 'load', unit: w.lastUnit!, from: 'carried' };
  if (part && pressureParts.has(part)) {
    if (part === 'tyre' && w.lastMeasure !== 'pressure' && tapeLike(n)) return null;
    return { measure: 'pressure', unit: pressureUnit(ctx, n, w.lastUnit), from: 'assumed' };
  }
  if (part === 'ambient')
    return { measure: 'temperature', unit: w.context.lengthUnit === 'mm' ? 'C' : 'F', from: 'assumed' };
  if (place && coachSides(place)) {
    if (w.lastMeasure === 'load' && inNote && n.value > 300)
      return { measure: 'load', unit: w.lastUnit!, from: 'carried' };
    if (w.lastWork === 'weighed' && n.value > 300)
      return { measure: 'load', unit: ctx.lengthUnit === 'in' ? 'lb' : 'kg', from: 'assumed' };
    // a figure far from the pressure before it is no pressure: "tyres 640, rears 355"
    const like =
      w.lastReading?.what.v === 'pressure' && w.lastUnit ? toSi(n.value, w.lastUnit) / w.lastReading.amount.v.si : 1;
    // "left bag 57, LR 13": named by its bag and then by its corner, which is a height
    const said = w.lastReading?.where.spans.map((s) => w.text.slice(...s)).join(' ') ?? '';
    const otherName =
      place.end !== undefined && heightLike(n, ctx) && /bag|bellow/i.test(said) && !/\b[lr]h?r\b|rear/i.test(said);
    // "tank 8.2 bar n/s 335": no bag is read in another unit, a tape is
    if (
      lastPressure &&
      w.lastUnit === 'bar' &&
      ctx.lengthUnit === 'mm' &&
      n.whole &&
      heightLike(n, ctx) &&
      lastPart === 'tank'
    )
      return { measure: 'height', unit: 'mm', from: 'assumed' };
    const bellowsBefore =
      (subject?.part === 'bellows' && !otherName) ||
      (subject?.part === 'tyre' && (!heightLike(n, ctx) || (like > 0.65 && like < 1.5)));
    if (lastPressure && !tapeLike(n) && (!place.end || (bellowsBefore && (!heightLike(n, ctx) || n.whole)))) {
      const u = pressureUnit(ctx, n, w.lastUnit);
      if (!place.end || bellowsBefore) return { measure: 'pressure', unit: u, from: 'carried' };
    }
    if (heightLike(n, ctx)) return { measure: 'height', unit: heightUnit(n, ctx), from: 'assumed' };
    // "lr -1/2 rr +1/8": against where it should be
    if (n.signed && place.end && Math.abs(n.value) < (ctx.lengthUnit === 'mm' ? 60 : 4))
      return { measure: 'height off', unit: heightUnit(n, ctx), from: 'assumed' };
    // "LR 13 1/4 RR 14" on a coach in millimetres: the same tape
    if (
      inNote &&
      w.lastMeasure === 'height' &&
      w.lastUnit === 'in' &&
      n.value >= heightRange.in[0] &&
      n.value <= heightRange.in[1]
    )
      return { measure: 'height', unit: 'in', from: 'carried' };
    if (
      !place.end &&
      (place.side === 'left' || place.side === 'right') &&
      n.whole &&
      n.value >= 30 &&
      ctx.pressureUnit === 'psi'
    )
      return { measure: 'pressure', unit: 'psi', from: 'assumed' };
    if (bellowsBefore && lastPressure) return { measure: 'pressure', unit: w.lastUnit!, from: 'carried' };
    return null;
  }
  if (
    part &&
    inNote &&
    w.lastMeasure === 'voltage' &&
    (part === 'pump' || part === 'pressure switch' || part === 'motor')
  )
    return { measure: 'voltage', unit: 'V', from: 'carried' };
  if (place) return null;
  if (ctx.open?.unit ?? ctx.open?.what) {
    const unit = ctx.open?.unit ?? measureUnit(ctx.open?.what ?? null, ctx, n, null);
    // a gauge is not read in eighths: what a tape says answers no question of a pressure
    if (unit && dimensionOf(unit) === 'pressure' && tapeLike(n) && n.step <= 1 / 8) return null;
    return unit ? { measure: ctx.open?.what ?? null, unit, from: 'carried', loc: openPlace(w) } : null;
  }
  // "41 F now, 66 last night"
  if (
    inNote &&
    w.lastUnit &&
    w.lastReading?.what.v === 'temperature' &&
    w.lastReading.where.v === 'ambient' &&
    Math.abs(n.value) < 125 &&
    c.items.some((it) => it.k === 'day' || it.k === 'often')
  )
    return { measure: 'temperature', unit: w.lastUnit, from: 'carried' };
  if (
    inNote &&
    w.lastUnit &&
    n.value !== 0 &&
    ['pressure', 'height', 'voltage', 'voltage drop', 'current'].includes(w.lastMeasure ?? '')
  ) {
    if (w.lastMeasure === 'height' && !heightLike(n, ctx)) return null;
    return {
      measure: w.lastMeasure,
      unit: w.lastMeasure === 'pressure' ? pressureUnit(ctx, n, w.lastUnit) : w.lastUnit,
      from: 'carried',
    };
  }
  if (inNote && w.lastMeasure === 'load' && n.value > 300 && w.lastUnit)
    return { measure: 'load', unit: w.lastUnit, from: 'carried' };
  // "half hour later 115", "07:10 this morning 329": read again what was read before
  const again = !inNote && (w.pendingWhen !== null || timed(c) || rereads(c)) ? lastRead(ctx) : null;
  if (again && within(n, again))
    return {
      measure: again.what.v,
      unit: again.amount.v.unit,
      from: 'carried',
      loc: { p: takePlace(again.where.v) ?? {}, from: 'carried', spans: [] },
    };
  if (subject?.part && pressureParts.has(subject.part) && subject.part !== 'height valve')
    return { measure: 'pressure', unit: pressureUnit(ctx, n, w.lastUnit), from: 'assumed' };
  if (subject && coachSides(subject) && heightLike(n, ctx))
    return { measure: 'height', unit: heightUnit(n, ctx), from: 'assumed' };
  return null;
};

/** "now 94", "still 105". */
const rereads = (c: Clause): boolean => c.items.some((it) => /^(?:now|still|again)$/.test(phraseOf(it)));
const timed = (c: Clause): boolean =>
  c.items.some((it) => (it.k === 'num' && it.clock !== undefined) || isDuration(it));
/** The reading of the last note that had one, if it had only one place. */
const lastRead = (ctx: Context): ReadingFact | null => {
  const readings = (ctx.recent.findLast((r) => r.facts.some((f) => f.is === 'reading'))?.facts ?? []).filter(
    (f): f is ReadingFact =>
      f.is === 'reading' && ['pressure', 'height', 'voltage', 'current', 'temperature'].includes(f.what.v),
  );
  const last = readings.at(-1);
  return last && readings.every((f) => f.where.v === last.where.v && f.what.v === last.what.v) ? last : null;
};
/** A number of the same size as that reading: the same thing read again. */
const within = (n: Amounting, r: ReadingFact): boolean => {
  const ratio = toSi(n.value, r.amount.v.unit) / r.amount.v.si;
  return ratio > 0.4 && ratio < 2.5;
};

export const openPlace = (w: Walk): Loc => ({
  p: takePlace(w.context.open?.where ?? '') ?? {},
  from: 'carried',
  spans: [],
});
