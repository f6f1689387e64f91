/** Corners by place: their heights on the sheet or given in the session. */
import { takePlace } from '../../intents/place.ts';
import type { Place, ReadingFact } from '../../intents/shapes.ts';
import type { Corner } from '../core/heights.ts';
import type { Amount } from '../core/amount.ts';
import { convertedText } from '../core/limit-text.ts';
import { type Case, type Range, middle, rangeOf, readings, spread, stateAt } from './case.ts';
import { shown } from './show.ts';

export const cornerOf = (place: Place): Corner | null => {
  const p = takePlace(place);
  if (!p || !p.side || p.side === 'both' || !p.end) return null;
  return `${p.side}${p.end === 'front' ? 'Front' : 'Rear'}`;
};

export const cornerPlace: Readonly<Record<Corner, Place>> = {
  leftFront: 'left front',
  rightFront: 'right front',
  leftRear: 'left rear',
  rightRear: 'right rear',
};

/** Nominal with its tolerance as a range, m. */
export const heightRange = (c: Case, corner: Corner): Range | null => {
  const row = c.sheet.heights?.[corner];
  const { unit } = row?.nominal ?? { unit: c.sheet.units.length };
  const edge = (v: number): Amount => ({
    si: v,
    pm: row?.tolerance.pm ?? 0,
    unit,
    text: shown(v, unit, unit === 'in' ? 0 : (row?.tolerance.pm ?? 0)).text,
  });
  const range = rangeOf(
    c,
    'height',
    cornerPlace[corner],
    row
      ? {
          low: edge(row.nominal.si - row.tolerance.si),
          high: edge(row.nominal.si + row.tolerance.si),
          nominal: row.nominal,
        }
      : undefined,
    `heights.${corner}`,
  );
  if (!range?.low || !range.high || range.nominal) return range;
  const mid = (range.low.si + range.high.si) / 2;
  // "book says rear 345": one figure is the height wanted, and the sheet's tolerance stands on it
  if (row && range.low.si === range.high.si) {
    const given = range.low;
    const limit = (v: number): Amount => ({ ...given, si: v, text: convertedText(v, given.unit, given.pm) });
    return {
      low: limit(mid - row.tolerance.si),
      high: limit(mid + row.tolerance.si),
      nominal: given,
      source: {
        ...range.source,
        words: `${range.source.words}, tolerance ${row.tolerance.text} of sheet: heights.${corner}`,
      },
      because: range.because,
    };
  }
  return { ...range, nominal: { ...range.low, si: mid } };
};

export const nominalOf = (range: Range | null): number | null => range?.nominal?.si ?? null;

/** A tape that nobody described is read to an eighth of an inch. */
const eighth = 0.0254 / 8;

/**
 * Half the division a height was read to. On an inch tape "14" and "13 1/2" are read to the marks of the tape, which are
 * finer than the writing: the sheet's tape step counts, or the writing where it is finer still. In millimetres the
 * coarser of the two.
 */
export const tapeHalf = (c: Case, fact: ReadingFact): number => {
  const { amount } = fact;
  const tape = c.sheet.heights?.tapeStep;
  const step = tape?.si;
  // a tape in millimetres says nothing of the inch tape that a height in inches was read from
  const inchStep = tape?.unit === 'in' || tape?.unit === 'ft' ? step : undefined;
  const wide = amount.v.to === undefined && !amount.v.about ? 0 : spread(amount.v);
  if (amount.v.unit === 'in' || amount.v.unit === 'ft')
    return Math.max(Math.min(amount.v.pm, (inchStep ?? eighth) / 2), wide);
  return Math.max(spread(amount.v), (step ?? 0) / 2);
};

/** Heights taken more than this apart, or with air or work in between, are not one set. */
const setMillis = 45 * 60_000;

/** The newest height of each corner that belongs to one set with `fact`. */
export const setWith = (c: Case, fact: ReadingFact): Partial<Record<Corner, ReadingFact>> => {
  const out: Partial<Record<Corner, ReadingFact>> = {};
  const mine = stateAt(c, fact);
  for (const other of readings(c, 'height')) {
    const corner = cornerOf(other.where.v);
    if (!corner || Math.abs(other.at - fact.at) > setMillis) continue;
    const theirs = stateAt(c, other);
    if (theirs.pumpedAt !== mine.pumpedAt || theirs.panel !== mine.panel) continue;
    const worked = c.facts.some(
      (f) =>
        f.is === 'work' &&
        f.done &&
        /^(?:adjusted|set|levelled|replaced|inflated|vented)$/.test(f.what.v) &&
        f.at > Math.min(other.at, fact.at) &&
        f.at <= Math.max(other.at, fact.at) &&
        f.id.split('.')[0] !== other.id.split('.')[0],
    );
    if (!worked) out[corner] = other;
  }
  const own = cornerOf(fact.where.v);
  if (own) out[own] = fact;
  return out;
};

export const heightValue = (fact: ReadingFact): number => middle(fact.amount.v);
