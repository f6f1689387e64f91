/** What several readings together say that no one of them does: a needle that hangs, frost, a cold night. Pure. */
import { takePlace } from '../../intents/place.ts';
import type { Measure, Place, ReadingFact } from '../../intents/shapes.ts';
import type { Standing } from '../session/standing.ts';
import { type Evidence, trust } from './told.ts';

/** Readings in force of one measure at the places, each with its place in the order of the facts. */
const readingsAt = (
  standing: Standing,
  what: Measure,
  places: readonly Place[],
): { fact: ReadingFact; seq: number; i: number }[] =>
  standing.facts.flatMap(({ fact, seq }, i) =>
    fact.is === 'reading' && fact.what.v === what && places.includes(fact.where.v) ? [{ fact, seq, i }] : [],
  );

/** What the coach's gauge showed while another, or the switch, told where the tank was: the same at different pressures. */
const stuckNeedle = (standing: Standing): Evidence | null => {
  const shown = standing.facts.flatMap(({ fact, seq, note }, i) =>
    fact.is === 'reading' && fact.what.v === 'pressure' && fact.where.v === 'gauge' ? [{ fact, seq, note, i }] : [],
  );
  const truths = shown.flatMap(({ note }) => {
    const other = standing.facts.find(
      (h) => h.note === note && h.fact.is === 'reading' && beside.has(`${h.fact.what.v} ${h.fact.where.v}`),
    );
    return other?.fact.is === 'reading' ? [other.fact.amount.v.si] : [];
  });
  const values = shown.map((x) => x.fact.amount.v.si);
  const last = shown.at(-1);
  if (!last || truths.length < 2) return null;
  const moved = Math.max(...values) - Math.min(...values);
  const ranged = Math.max(...truths) - Math.min(...truths);
  if (ranged < 20 * last.fact.amount.v.pm || moved > 0.1 * ranged) return null;
  return {
    see: 'needle',
    outcome: 'stuck',
    weight: trust.own,
    because: shown.map((x) => x.fact.id),
    seq: last.seq,
    words: `gauge shows ${last.fact.amount.v.text} whatever the tank holds`,
    clock: last.i,
  };
};
/** Readings of the same air that do not come from the coach's gauge. */
const beside: ReadonlySet<string> = new Set([
  'pressure test port',
  'pressure tank',
  'cut-in pressure switch',
  'cut-out pressure switch',
]);

/** The coach's gauge has shown different pressures: its needle is not stuck. */
export const needleEvidence = (standing: Standing): Evidence[] => {
  const said = standing.facts.some(({ fact }) => fact.is === 'sign' && takePlace(fact.where.v)?.part === 'gauge');
  const sorted = readingsAt(standing, 'pressure', ['gauge', 'tank']).toSorted(
    (a, b) => a.fact.amount.v.si - b.fact.amount.v.si,
  );
  const low = sorted[0];
  const high = sorted.at(-1);
  const stuck = stuckNeedle(standing);
  if (stuck && !said) return [stuck];
  const second = standing.facts.some(({ fact }) => fact.is === 'reading' && fact.where.v === 'test port');
  if (said || !second || !low || !high) return [];
  if (high.fact.amount.v.si - low.fact.amount.v.si <= 2 * (low.fact.amount.v.pm + high.fact.amount.v.pm)) return [];
  return [
    {
      see: 'needle',
      outcome: 'moves',
      // Which gauge a pressure of the tank was read off is not always said.
      weight: trust.told,
      because: [low.fact.id, high.fact.id],
      seq: Math.max(low.seq, high.seq),
      words: `gauge read ${low.fact.amount.v.text} and ${high.fact.amount.v.text}`,
      clock: Math.max(low.i, high.i),
    },
  ];
};

/** Water freezes below it, and no ice is left well above it. K. */
const freezing = 273.15;
const noIce = 278;
export const frostEvidence = (standing: Standing): Evidence[] => {
  const coldest = readingsAt(standing, 'temperature', ['ambient']).toSorted(
    (a, b) => a.fact.amount.v.si - b.fact.amount.v.si,
  )[0];
  const k = coldest?.fact.amount.v.si ?? 0;
  if (!coldest || (k >= freezing && k <= noIce)) return [];
  return [
    {
      see: 'frost',
      outcome: k < freezing ? 'frost' : 'none',
      weight: trust[coldest.fact.word],
      because: [coldest.fact.id],
      seq: coldest.seq,
      words: `air around ${coldest.fact.amount.v.text}`,
      clock: coldest.i,
    },
  ];
};

/** Two readings of the air around, far enough apart to move a coach. K. */
const muchColder = 8;
export const temperatureEvidence = (standing: Standing): Evidence[] => {
  const read = readingsAt(standing, 'temperature', ['ambient']);
  if (read.length < 2) return [];
  const values = read.map((r) => r.fact.amount.v.si);
  const apart = Math.max(...values) - Math.min(...values);
  const last = read.at(-1)!;
  return [
    {
      see: 'temperature',
      outcome: apart >= muchColder ? 'much colder' : 'about the same',
      weight: trust.own,
      because: read.map((r) => r.fact.id),
      seq: last.seq,
      words: `air around ${read.map((r) => r.fact.amount.v.text).join(' and ')}`,
      clock: last.i,
    },
  ];
};
