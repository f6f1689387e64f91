/** Tyre pressures, brought to the temperature that the sheet's figure holds at. */
import { takePlace } from '../../../intents/place.ts';
import type { ReadingFact } from '../../../intents/shapes.ts';
import { type Case, type Judge, inputOf, middle, readings, spread, touched, unitOf, verdictOf } from '../case.ts';
import type { Finding } from '../finding.ts';
import { limitOf, rangeInputs, stripOf } from '../limits.ts';
import { shown, typed } from '../show.ts';
import { tyreShare, tyreWanted } from '../tyre-wanted.ts';

const one = (c: Case, fact: ReadingFact): Finding => {
  const p = takePlace(fact.where.v);
  const end = p?.end ?? 'rear';
  const unit = unitOf(fact);
  const { range, inputs, notes, because } = tyreWanted(c, fact, end);
  const value = middle(fact.amount.v);
  const pm = spread(fact.amount.v);
  const verdict = verdictOf(value, pm, range);
  const want = range?.nominal ?? range?.low;
  return {
    key: `pressure@${fact.where.v}`,
    verdict,
    words: `${fact.where.v} ${typed(fact.amount.v)}${verdict === 'no limit' ? '' : verdict === 'within' ? `, right (${want!.text})` : `, ${verdict}: should be ${want!.text}`}`,
    amount: shown(value, unit, pm),
    ...(range ? { limit: limitOf(range, unit) } : {}),
    because: [fact.id, ...(range?.because ?? []), ...because],
    why: {
      formula: 'p2 = (p1 + pa) T2/T1 - pa, at constant volume',
      inputs: [inputOf('tyre', fact), ...inputs, ...rangeInputs(range, unit)],
      source: range?.source ?? { kind: 'physics', words: 'gas law of Gay-Lussac' },
      notes: [...notes, 'heights and alignment count only with the tyres right'],
    },
    drawing: stripOf(range, unit, [{ si: value, pm, label: typed(fact.amount.v) }]),
    ...(range
      ? {}
      : { wants: { field: `tyres.${end}`, question: `What cold pressure should the ${end} tyres have?` } }),
  };
};

/** Left against right of one end and wheel. */
const pair = (c: Case, fact: ReadingFact): Finding | null => {
  const p = takePlace(fact.where.v);
  if (p?.side !== 'left' && p?.side !== 'right') return null;
  const mate = fact.where.v.replace(/^(left|right)/, p.side === 'left' ? 'right' : 'left');
  const other = readings(c, 'pressure', (place) => place === mate).findLast(
    (f) => Math.abs(f.at - fact.at) <= 3_600_000,
  );
  if (!other) return null;
  const apart = Math.abs(middle(fact.amount.v) - middle(other.amount.v));
  const limit = (tyreShare * (middle(fact.amount.v) + middle(other.amount.v))) / 2;
  const unit = unitOf(fact);
  const pm = spread(fact.amount.v);
  const name = fact.where.v.replace(/^(left|right) /, '');
  return {
    key: `side to side@${name}`,
    verdict: apart > limit + pm ? 'high' : 'within',
    words: `${name} left and right ${shown(apart, unit, pm, { difference: true }).text} apart`,
    amount: shown(apart, unit, pm, { difference: true }),
    limit: {
      high: shown(limit, unit, pm, { difference: true }),
      source: { kind: 'practice', words: '3 % of the pair: common practice, no source' },
    },
    because: [fact.id, other.id],
    why: {
      formula: 'difference of the two',
      inputs: [inputOf(fact.where.v, fact), inputOf(mate, other)],
      source: { kind: 'practice', words: 'common practice, no source' },
      notes: [],
    },
  };
};

export const tyres: Judge = {
  subject: 'tyres',
  judge: (c) => {
    const fresh = new Map(
      touched(c, 'pressure')
        .filter((f) => f.where.v.endsWith('tyre'))
        .map((f) => [f.where.v, f]),
    );
    const seen = new Set<string>();
    return [...fresh.values()].flatMap((f) => {
      const two = pair(c, f);
      const again = two !== null && seen.has(two.key);
      if (two) seen.add(two.key);
      return [one(c, f), ...(two && !again ? [two] : [])];
    });
  },
};
