/** Pump cycles: duty, the leak that the off time shows, the delivery that the on time shows, and the run limit. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { deliveryFromCycle, dutyOf, leakFromOff } from '../../core/duty.ts';
import { deliveryAt } from '../../core/pump-up.ts';
import { si } from '../../core/quantity.ts';
import {
  type Case,
  type Input,
  type Judge,
  inputOf,
  latest,
  middle,
  practice,
  sheetInput,
  sheetSource,
  stateAt,
} from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import type { Finding } from '../finding.ts';
import { sheetUnit, shown, typed } from '../show.ts';
import { type PumpCycle, pumpCycle } from '../pump-cycle.ts';
import { curveOf } from '../expected-pump-up.ts';
import { joinedVolume } from '../tank-volume.ts';
import { switchRange } from './tank-pressure.ts';

/** A pump that rests this long between runs is at rest. An estimate of ours, no published source. */
const rests = 3600;
/** Truck press takes 30 % and more of on time as a leak, 10 % and less as sound: engine compressors, a benchmark. */
const press = { low: 0.1, high: 0.3 };

/** Cut-out less cut-in: as read in this session, else the middles of the sheet's ranges. */
const bandOf = (c: Case): { band: number; at: number; inputs: Input[] } | null => {
  const [low, high] = [latest(c, 'cut-in'), latest(c, 'cut-out')];
  if (low && high && middle(high.amount.v) > middle(low.amount.v))
    return {
      band: middle(high.amount.v) - middle(low.amount.v),
      at: (middle(high.amount.v) + middle(low.amount.v)) / 2,
      inputs: [inputOf('cut-in', low), inputOf('cut-out', high)],
    };
  const [a, b] = [switchRange(c, 'cut-in'), switchRange(c, 'cut-out')];
  if (!a?.low || !a.high || !b?.low || !b.high) return null;
  const [cutIn, cutOut] = [(a.low.si + a.high.si) / 2, (b.low.si + b.high.si) / 2];
  if (cutOut <= cutIn) return null;
  const unit = sheetUnit('pressure', c.sheet);
  return {
    band: cutOut - cutIn,
    at: (cutOut + cutIn) / 2,
    inputs: [
      {
        name: 'cut-in',
        text: `${shown(cutIn, unit, (a.high.si - a.low.si) / 2).text}, middle of its range`,
        from: a.source.words,
      },
      {
        name: 'cut-out',
        text: `${shown(cutOut, unit, (b.high.si - b.low.si) / 2).text}, middle of its range`,
        from: b.source.words,
      },
    ],
  };
};

const cycle = (c: Case, { on: ton, off: toff, said, inputs: given, facts }: PumpCycle): Finding => {
  const duty = dutyOf(si(ton), si(toff));
  const onSheet = c.sheet.pump?.duty;
  const limit = onSheet?.si ?? press.high;
  const notes: string[] = [];
  const inputs: Input[] = [...given];
  const state = stateAt(c, facts.at(-1)!);
  const volume = joinedVolume(c, state.panel);
  const band = bandOf(c);
  let feeds = '';
  let doubt = '';
  if (volume && band && toff > 0) {
    const { p, input } = atmosphereOf(c);
    inputs.push(...band.inputs, ...volume.inputs, input);
    const leak = leakFromOff(volume.v, band.band, si(toff), p);
    const unit = sheetUnit('flow', c.sheet);
    feeds = `${shown(leak, unit, leak * 0.05).text} of free air (${shown(leak, unit === 'cfm' ? 'L/min' : 'cfm', leak * 0.05).text})`;
    notes.push(`the off time shows a leak of ${feeds}, if only the tank side leaks`);
    const curve = curveOf(c);
    if (ton > 0) {
      const delivery = deliveryFromCycle(volume.v, band.band, si(ton), si(toff), p);
      const share = curve ? delivery / deliveryAt(curve, si(band.at)) : null;
      notes.push(
        `the on time shows a delivery of ${shown(delivery, unit, delivery * 0.05).text}${share === null ? '' : `, about ${Math.round(share * 20) * 5} % of the sheet's`}`,
      );
      if (share !== null && share > 1.3) {
        doubt = 'so short a run fills more than this pump can: water in the tank, or a time is wrong';
        notes.push('the leak is smaller too where water takes the room of air');
      }
    }
  }
  const often = toff >= rests ? 'rests' : 'cycles';
  const shut = state.panel === 'shut';
  const auto = state.panel === 'auto' || !c.sheet.panel;
  const see: NonNullable<Finding['evidence']> = [{ see: 'pump duty', outcome: often }];
  const verdict: Finding['verdict'] = duty > limit ? 'high' : 'within';
  // One observation, one line of evidence: with the panel known the cycling speaks for its state.
  const evidence = shut
    ? [{ see: 'pump cycles shut', outcome: often === 'rests' ? 'no' : 'yes' }]
    : state.panel === 'auto' || (auto && c.sheet.panel === null)
      ? [{ see: 'pump cycles auto', outcome: often === 'rests' ? 'no' : 'yes' }]
      : see;
  return {
    key: 'duty@pump',
    verdict,
    words: `pump runs ${Math.round(duty * 100)} % of the time (${said})${verdict === 'high' ? `, over ${onSheet?.text ?? '30 %'}` : ''}${doubt ? `; ${doubt}` : feeds ? `: it feeds a leak of ${feeds}` : ''}`,
    amount: shown(duty, '%', 0.005),
    limit: {
      high: onSheet ? shown(onSheet.si, '%', 0.005) : shown(press.high, '%', 0.005),
      source: onSheet
        ? sheetSource('pump.duty')
        : {
            kind: 'practice',
            words: 'truck press, engine compressors, 30 % and more is a leak: a benchmark, no source for this pump',
          },
    },
    because: facts.map((f) => f.id),
    why: {
      formula: 'duty = on / (on + off); leak = V band / (pa off); delivery = V band / (pa on) + leak',
      inputs: [...inputs, ...(onSheet ? [sheetInput('duty allowed', onSheet, 'pump.duty')] : [])],
      source: onSheet ? sheetSource('pump.duty') : practice(),
      notes: [...notes, `10 % and less is sound, 30 % and more a leak (truck press, engine compressors)`],
    },
    ...(volume
      ? {}
      : {
          wants: {
            field: 'supply.tank',
            question: 'What is the volume of the air tank? (gives the leak that the off time shows)',
          },
        }),
    evidence,
  };
};

const run = (c: Case, fact: ReadingFact): Finding => {
  const limit = c.sheet.pump?.runLimit;
  const rest = c.sheet.pump?.rest;
  const t = middle(fact.amount.v);
  const verdict: Finding['verdict'] = !limit ? 'no limit' : t > limit.si ? 'high' : 'within';
  return {
    key: 'run time@pump',
    verdict,
    words: `pump ran ${typed(fact.amount.v)}${!limit ? '' : verdict === 'high' ? `, over its limit of ${limit.text}: let it cool${rest ? ` ${rest.text}` : ''}` : `, limit ${limit.text}`}`,
    amount: shown(t, fact.amount.v.unit, fact.amount.v.pm),
    ...(limit
      ? { limit: { high: shown(limit.si, fact.amount.v.unit, fact.amount.v.pm), source: sheetSource('pump.runLimit') } }
      : {}),
    because: [fact.id],
    why: {
      formula: 'longest run against the limit',
      inputs: [
        inputOf('run', fact),
        ...(limit ? [sheetInput('limit', limit, 'pump.runLimit')] : []),
        ...(rest ? [sheetInput('rest', rest, 'pump.rest')] : []),
      ],
      source: limit ? sheetSource('pump.runLimit') : practice(),
      notes: [],
    },
    ...(limit ? {} : { wants: { field: 'pump.runLimit', question: 'How long may this pump run at a stretch?' } }),
  };
};

export const duty: Judge = {
  subject: 'duty',
  judge: (c) => {
    const out: Finding[] = [];
    const fresh = c.fresh.filter((f): f is ReadingFact => f.is === 'reading');
    const times = pumpCycle(c);
    if (times?.facts.some((f) => fresh.some((x) => x.id === f.id))) out.push(cycle(c, times));
    const ran = fresh.filter((f) => f.what.v === 'run time').at(-1);
    if (ran) out.push(run(c, ran));
    return out;
  },
};
