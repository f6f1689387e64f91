/** Corrections: of whole notes, of a value, of a side, and those made in mid-sentence. */
import { dimensionOf } from '../server/core/units.ts';
import { makePlace, takePlace } from './place.ts';
import { tidy } from './merge-places.ts';
import type { Amend, Context, Fact, Span } from './shapes.ts';

const counts: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  '1': 1,
  '2': 2,
  '3': 3,
  '4': 4,
  '5': 5,
  '6': 6,
  both: 2,
  to: 2,
  too: 2,
  couple: 2,
};
export const countOf = (word: string | undefined): number =>
  word !== undefined && Object.hasOwn(counts, word) ? counts[word]! : 1;

export const blankAmend = (kind: Amend['do'], spans: Span[], count = 1): Amend => ({
  do: kind,
  count,
  says: {},
  notes: [],
  drops: [],
  puts: [],
  spans,
});

const withoutHeld = (fact: Extract<Fact, { is: 'reading' }>): Extract<Fact, { is: 'reading' }> => {
  const { held: _held, ...rest } = fact;
  return rest;
};

/** Facts that a correction may aim at, newest first. */
const targets = (context: Context): Fact[] => context.recent.flatMap((n) => n.facts).toReversed();

const otherSide = (place: string): string => {
  const p = takePlace(place);
  if (!p || (p.side !== 'left' && p.side !== 'right')) return place;
  return makePlace({ ...p, side: p.side === 'left' ? 'right' : 'left' });
};

const withPlace = (old: string, wanted: string): string => {
  const a = takePlace(old) ?? {};
  const b = takePlace(wanted) ?? {};
  return makePlace(tidy({ ...a, ...Object.fromEntries(Object.entries(b).filter(([, v]) => v !== undefined)) }));
};

/**
 * Names the fact a correction is about and what takes its place, from the notes before it. Empty when none fits: the
 * session turns that into a question.
 */
export const aimAmend = (amend: Amend, context: Context, number: number): Amend => {
  const recent = targets(context);
  const id = `${context.note}.${number}`;
  if (amend.do === 'undo' || amend.do === 'drop')
    return { ...amend, notes: context.recent.slice(-amend.count).map((n) => n.id) };
  if (amend.do !== 'put') return amend;
  const { amount, was, where, what, swapSides } = amend.says;
  if (swapSides) {
    const last = context.recent.findLast((n) => n.facts.some((f) => otherSide(f.where.v) !== f.where.v));
    const hit = (last?.facts ?? []).filter((f) => otherSide(f.where.v) !== f.where.v);
    return {
      ...amend,
      drops: hit.map((f) => f.id),
      puts: hit.map((f, i) => ({
        ...f,
        id: `${context.note}.${number + i}`,
        where: { ...f.where, v: otherSide(f.where.v), from: 'said' as const },
      })),
    };
  }
  type Reading0 = Extract<Fact, { is: 'reading' }>;
  const readings = recent.filter((f): f is Reading0 => f.is === 'reading');
  const same = (a: number, b: number): boolean => Math.abs(a - b) <= Math.max(1e-9, Math.abs(b) * 1e-6);
  const measured = (v: string | undefined): Partial<Reading0> =>
    v === undefined ? {} : ({ what: { v, from: 'said', spans: amend.spans } } as Partial<Reading0>);
  if (amount) {
    const dim = dimensionOf(amount.unit);
    const alike = (f: Reading0): boolean => dimensionOf(f.amount.v.unit) === dim;
    const timed =
      dim === 'duration' ? readings.find((f) => f.over && (was === undefined || same(f.over.v.si, was.si))) : undefined;
    const put = (hit: Reading0, change: Partial<Reading0>): Amend => ({
      ...amend,
      drops: [hit.id],
      puts: [{ ...withoutHeld(hit), id, ...change, ...measured(what) }],
    });
    const value = { amount: { v: amount, from: 'said' as const, spans: amend.spans } };
    if (timed && !readings.some((f) => alike(f) && was !== undefined && same(f.amount.v.si, was.si)))
      return put(timed, { over: value.amount });
    const place = where === undefined ? {} : { where: { v: where, from: 'said' as const, spans: amend.spans } };
    const byWas = was === undefined ? undefined : readings.find((f) => same(f.amount.v.si, was.si));
    if (byWas)
      return put(byWas, {
        ...value,
        ...(where ? { where: { ...byWas.where, v: withPlace(byWas.where.v, where), from: 'said' } } : {}),
      });
    if (was !== undefined) return amend;
    if (where !== undefined) {
      // the same amount elsewhere, else another amount there
      const moved = readings.find((f) => alike(f) && same(f.amount.v.si, amount.si));
      const there = readings.find((f) => f.where.v === where && (alike(f) || amount.unit === f.amount.v.unit));
      const near =
        moved ??
        there ??
        readings.find((f) => alike(f) && withPlace(f.where.v, where) === f.where.v) ??
        readings.find(alike);
      return near ? put(near, { ...value, ...place }) : amend;
    }
    // a value of quite another size corrects none of them: asked about
    const near = (f: Reading0): boolean =>
      f.amount.v.si === 0 ||
      amount.si === 0 ||
      f.held !== undefined ||
      !alike(f) ||
      (amount.si / f.amount.v.si > 0.25 && amount.si / f.amount.v.si < 4);
    const hit = readings.find((f) => alike(f) && near(f)) ?? (readings.some(alike) ? undefined : readings[0]);
    return hit ? put(hit, value) : amend;
  }
  if (what !== undefined && where === undefined) {
    const hit = readings[0];
    return hit ? { ...amend, drops: [hit.id], puts: [{ ...withoutHeld(hit), id, ...measured(what) }] } : amend;
  }
  if (where !== undefined) {
    const hit = recent.find((f) => f.where.v !== '' && f.is !== 'condition') ?? recent[0];
    if (!hit) return amend;
    const note = context.recent.find((n) => n.facts.some((f) => f.id === hit.id));
    const same = (note?.facts ?? []).filter((f) => f.where.v === hit.where.v);
    return {
      ...amend,
      drops: same.map((f) => f.id),
      puts: same.map((f, i) => ({
        ...f,
        id: `${context.note}.${number + i}`,
        where: { ...f.where, v: withPlace(f.where.v, where), from: 'said' as const },
      })),
    };
  }
  return amend;
};
