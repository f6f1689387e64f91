/**
 * Whether a side sinks and how fast, by the tape: a bellows that carries its load leaks at constant pressure, so the
 * tank gauge cannot see it. First how long it stays level, then the air it loses.
 */
import { takePlace } from '../../../intents/place.ts';
import type { ReadingFact } from '../../../intents/shapes.ts';
import { fitSink } from '../../core/bellows-leak.ts';
import { z95 } from '../../core/line-fit.ts';
import { readingDeviation } from '../../core/reading-error.ts';
import type { Amount } from '../../core/amount.ts';
import { type Case, type Judge, inputOf, latest, middle, physics, readings } from '../case.ts';
import { cornerOf, heightRange, heightValue, nominalOf, tapeHalf } from '../corner-sheet.ts';
import type { Finding } from '../finding.ts';
import { clock, shown, typed } from '../show.ts';
import { coolingSink, spanOf, tapePoints, tapeSeries } from '../tape-episode.ts';
import { sinkFinding } from '../side-sink.ts';

const sideOf = (place: string): 'left' | 'right' | null => {
  const p = takePlace(place);
  return p && (p.side === 'left' || p.side === 'right') && p.end !== 'front' ? p.side : null;
};

const bySeries = (c: Case, last: ReadingFact): Finding[] => {
  const side = sideOf(last.where.v);
  const series = tapeSeries(c, last);
  const span = spanOf(series);
  if (!side || series.length < 2 || span < 300) return [];
  const cooling = coolingSink(c, series);
  const fit = fitSink(tapePoints(c, series, cooling));
  const t0 = series[0]!.at;
  return [
    sinkFinding(c, {
      place: last.where.v,
      side,
      last,
      rate: fit.rate,
      low: fit.rate - z95 * fit.rateSd,
      high: fit.rate + z95 * fit.rateSd,
      span,
      half: Math.max(...series.map((f) => tapeHalf(c, f))),
      now: heightValue(last),
      inputs: series.map((f) => inputOf(`${f.where.v} at ${clock(f.at, c.standing.zone)}`, f)),
      because: series.map((f) => f.id),
      notes: cooling ? [cooling.note] : ['a cold night sinks both sides alike without a leak: compare the sides'],
      drawing: {
        is: 'chart',
        unit: last.amount.v.unit,
        points: series.map((f) => ({
          t: (f.at - t0) / 1000,
          si: heightValue(f),
          pm: z95 * readingDeviation(2 * tapeHalf(c, f)),
        })),
        fit: [0, span * 1.5].map((t) => ({ t, si: fit.line.at0 + fit.line.slope * t })),
        limits:
          cornerOf(last.where.v) && heightRange(c, cornerOf(last.where.v)!)?.low
            ? [{ si: heightRange(c, cornerOf(last.where.v)!)!.low!.si, label: 'tolerance' }]
            : [],
      },
    }),
  ];
};

/** The time a fall took: said with it, or how long the coach stood ("down 2 in overnight, parked 14 h"). */
const tookOf = (c: Case, fact: ReadingFact): { over: Amount; from: string } | null => {
  if (fact.over) return { over: fact.over.v, from: fact.id };
  const stood = fact.often === 'standing' ? latest(c, 'standing time') : undefined;
  return stood ? { over: stood.amount.v, from: stood.id } : null;
};

/** A fall over a night of unknown length: how fast is not known. */
const howLong = (fact: ReadingFact): Finding => ({
  key: `height fall@${fact.where.v || 'coach'}`,
  verdict: 'cannot tell',
  words: `${fact.where.v || 'coach'} down ${typed(fact.amount.v, true)} after standing: how fast depends on how long it stood`,
  amount: shown(-middle(fact.amount.v), fact.amount.v.unit, fact.amount.v.pm, { difference: true }),
  because: [fact.id],
  why: {
    formula: 'rate = fall / time stood',
    inputs: [{ name: 'fall', text: typed(fact.amount.v, true), from: fact.id }],
    source: physics('the reading itself'),
    notes: [],
  },
  wants: { field: 'standing time', question: 'How long did it stand? ("parked 14 h")' },
});

/** "down 2 in in 14 h": the fall said with its time. */
const saidFall = (c: Case, fact: ReadingFact): Finding[] => {
  const front = takePlace(fact.where.v)?.end === 'front';
  const side = sideOf(fact.where.v) ?? 'left';
  if (front) return [];
  const took = tookOf(c, fact);
  if (!took) return fact.often === 'standing' ? [howLong(fact)] : [];
  if (took.over.si <= 0) return [];
  const { over } = took;
  const half = tapeHalf(c, fact);
  const span = over.si;
  const rate = middle(fact.amount.v) / span;
  const sd = Math.hypot((Math.SQRT2 * readingDeviation(2 * half)) / span, (rate * over.pm) / span / Math.sqrt(3));
  const corner = cornerOf(fact.where.v) ?? cornerOf(`${side} rear`);
  const nominal = corner ? nominalOf(heightRange(c, corner)) : null;
  return [
    sinkFinding(c, {
      place: fact.where.v || 'coach',
      side,
      unsided: sideOf(fact.where.v) === null,
      last: fact,
      rate,
      low: rate - z95 * sd,
      high: rate + z95 * sd,
      span,
      half,
      now: nominal,
      fromSheet: true,
      inputs: [{ name: 'fall', text: `${typed(fact.amount.v, true)} in ${typed(over)}`, from: fact.id }],
      because: [...new Set([fact.id, took.from])],
      notes: nominal === null ? [] : ['times counted from the sheet height'],
    }),
  ];
};

export const bellowsLeak: Judge = {
  subject: 'bellows leak',
  judge: (c) => {
    const newest = new Map<string, ReadingFact>();
    for (const f of c.fresh) if (f.is === 'reading' && f.what.v === 'height') newest.set(f.where.v, f);
    const stood = c.fresh.some((f) => f.is === 'reading' && f.what.v === 'standing time');
    const falls = [
      ...c.fresh.filter((f): f is ReadingFact => f.is === 'reading' && f.what.v === 'height fall'),
      // the night's length answered after the fall
      ...(stood
        ? readings(c, 'height fall').filter((f) => !f.over && f.often === 'standing' && !c.fresh.includes(f))
        : []),
    ];
    return [...[...newest.values()].flatMap((f) => bySeries(c, f)), ...falls.flatMap((f) => saidFall(c, f))];
  },
};
