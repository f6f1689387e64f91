/** The battery: charge as a band when it rests, volts under the pump's load, hydrometer. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { chargeBand, chargeFromGravity, gravityAt80F, restedTables } from '../../core/battery.ts';
import { si } from '../../core/quantity.ts';
import { toSi } from '../../core/units.ts';
import {
  type Case,
  type Input,
  type Judge,
  inputOf,
  latest,
  middle,
  practice,
  sheetSource,
  spread,
  stateAt,
  touched,
} from '../case.ts';
import type { Finding } from '../finding.ts';
import { againstRange } from '../limits.ts';
import { shown, typed } from '../show.ts';

/** Above this it is on charge, or was a moment ago. From memory. */
const charging = 12.9;
/** Half charge: below it a lead-acid battery is called discharged. Common practice, no source. */
const half = 0.5;
/** Rested below this it is half empty. Common practice, no source. */
const halfVolts = 12.2;

/** The pump has been called: by the key, or it was tried and would not. */
const called = (c: Case, fact: ReadingFact): boolean =>
  stateAt(c, fact).key === true ||
  c.facts.some(
    (f) =>
      f.is === 'sign' &&
      f.there &&
      /^(?:wont run|clicks|hums|stalls)$/.test(f.what.v) &&
      /^(?:pump|motor|relay|)$/.test(f.where.v),
  );

/** Read while the pump pulls on it: against what the motor needs plus what may be lost on the way. */
const underLoad = (c: Case, fact: ReadingFact): Finding => {
  const { minVolts } = c.sheet.pump ?? {};
  const drop = c.sheet.electrics?.drop;
  const least = minVolts && drop ? minVolts.si + drop.si : null;
  return againstRange(
    fact,
    least === null
      ? null
      : {
          low: { si: least, pm: 0.05, unit: 'V', text: shown(least, 'V', 0.05).text },
          source: sheetSource('pump.minVolts + electrics.drop'),
          because: [],
        },
    {
      key: 'voltage@battery',
      name: 'battery, pump running',
      words: (text, verdict, limits) =>
        `battery ${text} with the pump running${verdict === 'no limit' ? '' : verdict === 'low' ? `, too low: should be ${limits}` : `, enough (${limits})`}`,
      formula: 'least volts of the motor plus the drop allowed on the way',
      notes: ['load pulls the volts down: the charge is read at rest'],
      wants: {
        field: 'pump.minVolts',
        question: 'What is the least voltage this pump needs at its terminals while it runs?',
      },
      evidence: (verdict) =>
        verdict === 'low' || verdict === 'within' ? [{ see: 'battery volts', outcome: verdict }] : [],
    },
  );
};

const rested = (c: Case, fact: ReadingFact): Finding => {
  const volts = middle(fact.amount.v);
  const kind = c.sheet.electrics?.battery?.kind;
  const band = chargeBand(si(volts), kind ?? 'flooded', spread(fact.amount.v));
  const percent = (share: number): number => Math.round((share * 100) / 5) * 5;
  const charged = volts > charging;
  const verdict: Finding['verdict'] = charged
    ? 'cannot tell'
    : band.high < half
      ? 'low'
      : band.low >= half
        ? 'within'
        : 'cannot tell';
  const inputs: Input[] = [
    inputOf('battery', fact),
    { name: 'kind', text: kind ?? 'flooded', from: kind ? 'sheet: electrics.battery' : 'assumed' },
  ];
  const cold = latest(c, 'temperature', (p) => p === 'ambient' || p === 'battery');
  if (cold) inputs.push(inputOf('temperature', cold));
  return {
    key: 'charge@battery',
    verdict,
    words: charged
      ? `battery ${typed(fact.amount.v)}: on charge or just off it, says nothing of its state`
      : `battery ${typed(fact.amount.v)} at rest: between ${percent(band.low)} and ${percent(band.high)} % charged${verdict === 'low' ? ', low' : ''}`,
    amount: charged
      ? shown(volts, 'V', spread(fact.amount.v))
      : shown((band.low + band.high) / 2, '%', (band.high - band.low) / 2, { low: band.low, high: band.high }),
    limit: { low: shown(half, '%', 0.005), source: practice() },
    because: [fact.id],
    why: {
      formula: 'rested volts read off every table, lowest to highest',
      inputs,
      source: {
        kind: 'rule',
        words: `published tables of rested volts, which disagree: ${restedTables.map((t) => t.name).join('; ')}`,
      },
      notes: [
        'assumed: at rest. Just charged, it needs about 6 h, or a load for a moment, before it counts',
        ...(kind === 'AGM' || kind === 'gel'
          ? ['the tables are for flooded ones; this kind rests 0.1 to 0.2 V higher (from memory)']
          : []),
        ...(cold ? ['a cold battery keeps its rested volts within some hundredths but gives less current'] : []),
        'no sparks near a battery',
      ],
    },
    ...(!charged && called(c, fact)
      ? { evidence: [{ see: 'battery volts', outcome: volts < halfVolts ? 'low' : 'within' }] }
      : {}),
  };
};

const gravity = (c: Case, fact: ReadingFact): Finding => {
  const read = middle(fact.amount.v);
  const warm = latest(c, 'temperature', (p) => p === 'battery' || p === 'ambient');
  const at80 = gravityAt80F(read, si(warm?.amount.v.si ?? toSi(80, 'F')));
  const share = chargeFromGravity(at80);
  return {
    key: 'gravity@battery',
    verdict: share < half ? 'low' : 'within',
    words: `battery ${typed(fact.amount.v)}${warm ? `, ${at80.toFixed(3)} at 80 F` : ''}: about ${Math.round(share * 20) * 5} % charged`,
    amount: shown(share, '%', 0.05),
    limit: { low: shown(half, '%', 0.005), source: practice() },
    because: [fact.id, ...(warm ? [warm.id] : [])],
    why: {
      formula: 'reading + 0.004 for each 10 F over 80 F, then the table of charge by specific gravity',
      inputs: [
        inputOf('specific gravity', fact),
        warm ? inputOf('temperature', warm) : { name: 'temperature', text: '80 F', from: 'assumed' },
      ],
      source: { kind: 'rule', words: "a battery maker's table after the BCI pattern" },
      notes: ['eyes and skin covered; cells that differ by more than 0.05 point to a bad cell (from memory)'],
    },
  };
};

export const battery: Judge = {
  subject: 'battery',
  judge: (c) => {
    const out: Finding[] = [];
    const volts = touched(c, 'voltage')
      .filter((f) => f.where.v === 'battery')
      .at(-1);
    if (volts) {
      const state = stateAt(c, volts);
      const sameNote = c.fresh.some((f) => f.is === 'reading' && (f.where.v === 'motor' || f.what.v === 'current'));
      if (state.pump === true || (state.pump === null && sameNote)) out.push(underLoad(c, volts));
      else if (state.engine !== true) out.push(rested(c, volts));
    }
    const sg = touched(c, 'specific gravity').at(-1);
    if (sg) out.push(gravity(c, sg));
    return out;
  },
};
