/** What a judge is handed: the fresh facts among all that stand, with the look-ups that every subject needs. Pure. */
import { takePlace } from '../../intents/place.ts';
import type { Fact, Measure, Place, ReadingFact, SpecFact } from '../../intents/shapes.ts';
import type { Amount } from '../core/amount.ts';
import type { Unit } from '../core/units.ts';
import { unknownState } from '../session/coach-state.ts';
import type { CoachState, Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Finding, Source, Why } from './finding.ts';
import { typed } from './show.ts';

export type Input = Why['inputs'][number];

/** A limit, open to one side or closed, with whose it is. */
export type Range = { low?: Amount; high?: Amount; nominal?: Amount; source: Source; because: string[] };

export type Case = {
  readonly fresh: readonly Fact[];
  readonly facts: readonly Fact[];
  readonly standing: Standing;
  readonly sheet: Sheet;
};

/** "60 psi in both bags", "both rears 13": one reading of each side, of the same fact. */
const eachSide = (fact: Fact): readonly Fact[] => {
  if (fact.is !== 'reading' || !fact.where.v.startsWith('both ')) return [fact];
  const had = sided.get(fact);
  if (had) return had;
  const made = (['left', 'right'] as const).map((side) => ({
    ...fact,
    where: { ...fact.where, v: fact.where.v.replace(/^both/, side) },
  }));
  sided.set(fact, made);
  return made;
};

/** The same ones each time: a case's fresh facts are among its facts. */
const sided = new WeakMap<Fact, readonly Fact[]>();

export const caseOf = (fresh: readonly Fact[], standing: Standing, sheet: Sheet): Case => ({
  fresh: fresh.flatMap(eachSide),
  facts: standing.facts.flatMap((h) => eachSide(h.fact)),
  standing,
  sheet,
});

/** A subject of judgement: looks at the fresh facts and says what they mean, or nothing. */
export type Judge = { readonly subject: string; readonly judge: (c: Case) => Finding[] };

export const stateAt = (c: Case, fact: Fact): CoachState => c.standing.stateAt.get(fact.id) ?? unknownState;

export const isReading = (fact: Fact): fact is ReadingFact => fact.is === 'reading';

type Index = {
  readonly byMeasure: ReadonlyMap<Measure, readonly ReadingFact[]>;
  readonly specs: readonly SpecFact[];
  readonly others: readonly Fact[];
};

/** One pass over the facts of a case serves all its judges; without it each look-up walks a long session again. */
const indices = new WeakMap<readonly Fact[], Index>();

const indexOf = (c: Case): Index => {
  const known = indices.get(c.facts);
  if (known) return known;
  const byMeasure = new Map<Measure, ReadingFact[]>();
  const specs: SpecFact[] = [];
  const others: Fact[] = [];
  for (const fact of c.facts)
    if (isReading(fact)) {
      const same = byMeasure.get(fact.what.v);
      if (same) same.push(fact);
      else byMeasure.set(fact.what.v, [fact]);
    } else if (fact.is === 'spec') specs.push(fact);
    else others.push(fact);
  const index = { byMeasure, specs, others };
  indices.set(c.facts, index);
  return index;
};

/** All readings of a measure at places that `at` accepts, in order of time. */
export const readings = (c: Case, what: Measure, at: (place: Place) => boolean = () => true): ReadingFact[] =>
  (indexOf(c).byMeasure.get(what) ?? []).filter((f) => at(f.where.v));

/** What was said besides readings and limits: signs, works, conditions. */
export const doings = (c: Case): readonly Fact[] => indexOf(c).others;

export const latest = (c: Case, what: Measure, at?: (place: Place) => boolean): ReadingFact | undefined =>
  readings(c, what, at).at(-1);

/** A spec's place covers `place` when each part of it that was said is the same ("rear" covers "left rear"). */
export const covers = (spec: Place, place: Place): boolean => {
  const a = takePlace(spec);
  const b = takePlace(place);
  if (!a || !b) return spec === place;
  const general = a.part === undefined || a.part === b.part || a.part === 'coach' || a.part === 'wheel';
  return (
    general &&
    (a.side === undefined || a.side === 'both' || a.side === b.side) &&
    (a.end === undefined || a.end === b.end) &&
    (a.wheel === undefined || a.wheel === b.wheel)
  );
};

/** The newest limit given in the session for a measure at a place. */
export const specOf = (c: Case, what: Measure, place: Place): SpecFact | undefined =>
  indexOf(c).specs.findLast((f) => f.what.v === what && covers(f.where.v, place));

/**
 * Readings of `what` that the fresh facts touch: fresh ones, and the newest at each place that a fresh limit covers.
 */
export const touched = (c: Case, what: Measure): ReadingFact[] => {
  const fresh = c.fresh.filter(isReading).filter((f) => f.what.v === what);
  const specs = c.fresh.filter((f): f is SpecFact => f.is === 'spec' && f.what.v === what);
  if (specs.length === 0) return fresh;
  const newest = new Map(readings(c, what).map((f) => [f.where.v, f]));
  for (const f of fresh) newest.delete(f.where.v);
  return [...fresh, ...[...newest.values()].filter((f) => specs.some((s) => covers(s.where.v, f.where.v)))];
};

export const sheetSource = (field: string): Source => ({ kind: 'sheet', words: `sheet: ${field}` });

export const noteSource = (): Source => ({ kind: 'note', words: 'given in this session' });

export const physics = (words: string): Source => ({ kind: 'physics', words });

export const practice = (): Source => ({ kind: 'practice', words: 'common practice, no source' });

/** 49 CFR 393.207(f), 3 psi in 5 minutes: a rule for commercial vehicles, quoted as a benchmark only. */
export const benchmarkRate = (3 * 6894.757293168361) / 300;

export const benchmark = (): Source => ({
  kind: 'rule',
  words: '49 CFR 393.207(f), 3 psi in 5 min, a commercial-vehicle rule: a benchmark for a private coach',
});

/** A note's amount may have been typed bare; a limit is shown with its unit. */
const withUnit = (amount: Amount): Amount => ({ ...amount, text: typed(amount) });

/** A limit given in a note stands before the sheet's. */
export const rangeOf = (
  c: Case,
  what: Measure,
  place: Place,
  onSheet: { low?: Amount | undefined; high?: Amount | undefined; nominal?: Amount | undefined } | undefined,
  field: string,
): Range | null => {
  const spec = specOf(c, what, place);
  if (spec) return { low: withUnit(spec.low), high: withUnit(spec.high), source: noteSource(), because: [spec.id] };
  if (!onSheet || (onSheet.low === undefined && onSheet.high === undefined)) return null;
  return {
    ...(onSheet.low ? { low: onSheet.low } : {}),
    ...(onSheet.high ? { high: onSheet.high } : {}),
    ...(onSheet.nominal ? { nominal: onSheet.nominal } : {}),
    source: sheetSource(field),
    because: [],
  };
};

/** Verdict of a value with its half resolution against a range: outside only when it is so beyond the resolution. */
export const verdictOf = (value: number, pm: number, range: Range | null): Finding['verdict'] => {
  if (!range) return 'no limit';
  const slack = pm * 1.0001;
  if (range.low && value < range.low.si - slack) return 'low';
  if (range.high && value > range.high.si + slack) return 'high';
  return 'within';
};

/** A reading as an input of a formula. */
export const inputOf = (name: string, fact: ReadingFact, amount: Amount = fact.amount.v): Input => ({
  name,
  text: typed(amount),
  from: fact.id,
});

export const sheetInput = (name: string, amount: Amount, field: string): Input => ({
  name,
  text: amount.text,
  from: `sheet: ${field}`,
});

/** Middle of what was said: of a range its middle, else the value. */
export const middle = (amount: Amount): number => (amount.to === undefined ? amount.si : (amount.si + amount.to) / 2);

/** Half width of what was said, SI. */
export const spread = (amount: Amount): number =>
  Math.max(
    amount.pm,
    amount.to === undefined ? 0 : Math.abs(amount.to - amount.si) / 2,
    amount.about ? 2 * amount.pm : 0,
  );

/** The unit of a pressure reading or of any other that findings are shown in. */
export const unitOf = (fact: ReadingFact): Unit => fact.amount.v.unit;
