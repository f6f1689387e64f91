/** Water drained, against what the air should have let go since the tank was last drained. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { type Case, type Judge, inputOf, middle, physics, practice, sheetInput } from '../case.ts';
import type { Finding } from '../finding.ts';
import { dutyIn } from '../pump-cycle.ts';
import { shown, spell, typed } from '../show.ts';
import { waterPerSecond, waterText, weatherOf } from '../water-made.ts';

/** More than this is much, whatever the weather: about a cup. An estimate of ours, no published source. */
const much = 0.25e-3;

/** A tank with this share of water and more is swamped: what the diagnosis calls much. An estimate of ours, no source. */
const swampShare = 0.04;

/** Seconds since the last draining in this session, else the sheet's interval. */
const interval = (c: Case, fact: ReadingFact): { s: number; text: string; from: string } | null => {
  const before = c.facts.findLast(
    (f) => f.is === 'work' && f.done && f.what.v === 'drained' && f.at < fact.at - 3_600_000,
  );
  if (before) return { s: (fact.at - before.at) / 1000, text: spell((fact.at - before.at) / 1000), from: before.id };
  const every = c.sheet.supply?.drainEvery;
  return every ? { s: every.si, text: every.text, from: 'sheet: supply.drainEvery, assumed kept' } : null;
};

const judgeWater = (c: Case, fact: ReadingFact): Finding => {
  const v = middle(fact.amount.v);
  const metric = c.sheet.units.length !== 'in' && c.sheet.units.length !== 'ft';
  const weather = weatherOf(c);
  const since = interval(c, fact);
  const duty = dutyIn(c);
  const share = duty?.share ?? null;
  const made = 'missing' in weather ? null : waterPerSecond(c, weather);
  const expected = made && since && share !== null ? made.perSecond * since.s * share : null;
  const limit = expected === null ? much : Math.max(2 * expected, 0.03e-3);
  const verdict: Finding['verdict'] = v > limit ? 'high' : 'within';
  const tank = c.sheet.supply?.tank?.si;
  const swamped = v > (tank === undefined ? limit : Math.max(limit, swampShare * tank));
  const wants =
    'missing' in weather
      ? { field: 'humidity', question: weather.missing }
      : !made
        ? { field: 'pump.delivery', question: 'How much free air does the pump deliver at pressure?' }
        : !since
          ? { field: 'supply.drainEvery', question: 'How long since the tank was last drained?' }
          : share === null
            ? { field: 'duty', question: 'How long does the pump run and rest (on time, off time)?' }
            : undefined;
  return {
    key: 'water drained@tank',
    verdict,
    words:
      expected === null
        ? `${typed(fact.amount.v)} of water drained${verdict === 'high' ? ': much' : ''}`
        : `${typed(fact.amount.v)} of water drained, ${waterText(expected, metric)} to be expected${verdict === 'high' ? ': more than the air can have brought' : ''}`,
    amount: shown(v, fact.amount.v.unit, fact.amount.v.pm),
    limit: {
      high: shown(limit, fact.amount.v.unit, Math.max(limit * 0.02, 0.5e-6)),
      source:
        expected === null
          ? { kind: 'practice', words: 'about a cup: an estimate, no source' }
          : { kind: 'physics', words: 'twice the water that the air drawn in lets go' },
    },
    because: [fact.id],
    why: {
      formula: 'air pumped x (humidity ratio drawn in - saturated ratio at tank pressure), over the time the pump ran',
      inputs: [
        inputOf('drained', fact),
        ...(made?.inputs ?? ('missing' in weather ? [] : weather.inputs)),
        ...(since ? [{ name: 'since the last draining', text: since.text, from: since.from }] : []),
        ...(duty?.cycle.inputs ?? []),
        ...(c.sheet.supply?.drainEvery
          ? [sheetInput('drain every', c.sheet.supply.drainEvery, 'supply.drainEvery')]
          : []),
      ],
      source: expected === null ? practice() : physics('Hyland and Wexler, ASHRAE Fundamentals 2017 ch. 1'),
      notes: [
        'water in the tank leaves less room for air: it pumps up and falls faster',
        ...(c.sheet.supply?.dryer ? ['a dryer is fitted: much water means it has had its day'] : []),
      ],
    },
    ...(wants ? { wants } : {}),
    evidence: [{ see: 'tank water', outcome: swamped ? 'much' : 'little' }],
  };
};

export const water: Judge = {
  subject: 'water',
  judge: (c) => {
    const fresh = c.fresh.filter((f): f is ReadingFact => f.is === 'reading' && f.what.v === 'water drained').at(-1);
    return fresh ? [judgeWater(c, fresh)] : [];
  },
};
