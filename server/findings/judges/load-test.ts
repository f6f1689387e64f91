/** The battery at the end of a load test, against the least volts for its temperature. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { chargeBand } from '../../core/battery.ts';
import { si } from '../../core/quantity.ts';
import { type Case, type Judge, inputOf, middle, rangeOf, readings, spread, verdictOf } from '../case.ts';
import type { Finding } from '../finding.ts';
import { loadTestOf, loadTestSource } from '../load-test.ts';
import { shown, typed } from '../show.ts';

/** A load this far off half the cold-cranking current is another test. An estimate of ours. */
const off = 0.15;
/** Charge from which the test counts: makers' manuals. */
const enough = 0.75;
/** Volts read within so long before it tell whether it was charged, ms. */
const before = 4 * 3_600_000;

const judgeOne = (c: Case, fact: ReadingFact): Finding => {
  const test = loadTestOf(c);
  const volts = middle(fact.amount.v);
  const range = rangeOf(
    c,
    'load test',
    'battery',
    { low: { si: test.least, pm: 0.05, unit: 'V', text: shown(test.least, 'V', 0.05).text } },
    '',
  )!;
  const said = range.because.length > 0;
  const least = range.low ?? { si: test.least, text: shown(test.least, 'V', 0.05).text, pm: 0.05, unit: 'V' as const };
  const verdict = verdictOf(volts, spread(fact.amount.v), { ...range, low: least });
  const rested = readings(c, 'voltage', (p) => p === 'battery').findLast(
    (f) => f.at <= fact.at && f.at > fact.at - before && middle(f.amount.v) > 6 && middle(f.amount.v) < 12.9,
  );
  const kind = c.sheet.electrics?.battery?.kind ?? 'flooded';
  const flat =
    rested !== undefined && chargeBand(si(middle(rested.amount.v)), kind, spread(rested.amount.v)).high < enough;
  const drawn = readings(c, 'current', (p) => p === 'battery').findLast((f) => Math.abs(f.at - fact.at) <= 600_000);
  const otherLoad =
    drawn !== undefined && test.load !== null && Math.abs(middle(drawn.amount.v) / test.load - 1) > off
      ? `loaded with ${typed(drawn.amount.v)}, half its cold-cranking amps are ${shown(test.load, 'A', 0.5).text}: the limit is for that`
      : null;
  const low = verdict === 'low';
  return {
    key: 'load test@battery',
    verdict: low && flat ? 'cannot tell' : verdict,
    words: low
      ? flat
        ? `battery ${typed(fact.amount.v)} on the load test, under ${least.text}, but it was not charged (${typed(rested.amount.v)} before): charge it and test again`
        : `battery ${typed(fact.amount.v)} on the load test, fails: should be at least ${least.text}. Charge it and test once more, then renew it`
      : `battery ${typed(fact.amount.v)} on the load test, good (at least ${least.text})`,
    amount: shown(volts, 'V', spread(fact.amount.v)),
    limit: { low: shown(least.si, 'V', 0.05), source: said ? range.source : loadTestSource },
    because: [fact.id, ...range.because, ...test.because, ...(flat ? [rested.id] : [])],
    why: {
      formula: 'volts after 15 s at half the cold-cranking current, against the least for the temperature',
      inputs: [inputOf('load test', fact), ...test.inputs, ...(drawn ? [inputOf('loaded with', drawn)] : [])],
      source: said ? range.source : loadTestSource,
      notes: [...(otherLoad ? [otherLoad] : []), ...test.notes],
    },
    drawing: {
      is: 'strip',
      unit: 'V',
      low: least.si,
      lowText: least.text,
      pins: [{ si: volts, pm: spread(fact.amount.v), label: typed(fact.amount.v) }],
    },
    ...(test.wants ? { wants: test.wants } : {}),
  };
};

export const loadTest: Judge = {
  subject: 'load test',
  judge: (c) => {
    const last = c.fresh.findLast((f): f is ReadingFact => f.is === 'reading' && f.what.v === 'load test');
    return last ? [judgeOne(c, last)] : [];
  },
};
