/** Corrections: of whole notes, of a value, of a side, and those made in mid-sentence. */
import { makePlace, takePlace } from './place.ts';
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
};
export const countOf = (word: string | undefined): number => (word ? (counts[word] ?? 1) : 1);

export const blankAmend = (kind: Amend['do'], spans: Span[], count = 1): Amend => ({
  do: kind,
  count,
  says: {},
  notes: [],
  drops: [],
  puts: [],
  spans,
});

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
  return makePlace({ ...a, ...Object.fromEntries(Object.entries(b).filter(([, v]) => v !== undefined)) });
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
  const { amount, was, where, swapSides } = amend.says;
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
  if (amount) {
    const fits = (f: Fact): f is Extract<Fact, { is: 'reading' }> =>
      f.is === 'reading' &&
      (was === undefined || Math.abs(f.amount.v.si - was.si) <= Math.max(1e-9, Math.abs(was.si) * 1e-6)) &&
      (where === undefined || where === '' || f.where.v === where || makePlace({ ...takePlace(f.where.v) }) === where);
    const hit =
      recent.find(fits) ??
      (was === undefined && !where
        ? recent.find((f): f is Extract<Fact, { is: 'reading' }> => f.is === 'reading')
        : undefined);
    if (!hit) return amend;
    return {
      ...amend,
      drops: [hit.id],
      puts: [{ ...hit, id, held: undefined, amount: { v: amount, from: 'said', spans: amend.spans } } as Fact],
    };
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
