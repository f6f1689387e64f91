/** Pump-up time against the sheet: a time it gives, else its delivery curve over the volumes joined. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import { deliveryAt, meanDelivery, ratedVolts } from '../../core/pump-up.ts';
import { si } from '../../core/quantity.ts';
import { type Case, type Judge, latest, middle, readings, stateAt } from '../case.ts';
import { atmosphereOf } from '../atmosphere.ts';
import type { Finding } from '../finding.ts';
import { sheetUnit, shown, spell, typed } from '../show.ts';
import { joinedVolume, waterIn } from '../tank-volume.ts';
import { curveOf, expectedPumpUp, lowVolts } from '../expected-pump-up.ts';

/** A pump that takes up to this much longer is within. An estimate of ours, no published source. */
const slack = 1.25;

/** One that takes less than this share of the time fills less than the tank. An estimate of ours, no published source. */
const quick = 0.75;

const judgeOne = (c: Case, fact: ReadingFact): Finding => {
  const to = middle(fact.amount.v);
  const state = stateAt(c, fact);
  const known = fact.from ?? null;
  const from = known ? middle(known.v) : 0;
  const time = fact.over!.v;
  const water = waterIn(c, fact.at);
  const expected = to > from ? expectedPumpUp(c, from, to, state.panel, state.outletClosed === true, water) : null;
  const unit = fact.amount.v.unit;
  const pm = Math.max(time.pm, 5);
  const ratio = expected ? middle(time) / expected.time : null;
  const filling = expected !== null && middle(time) <= slack * expected.most;
  const verdict: Finding['verdict'] =
    ratio === null ? 'no limit' : ratio < quick ? 'low' : ratio <= slack ? 'within' : filling ? 'cannot tell' : 'high';
  const volume = joinedVolume(c, state.panel, water);
  // what the time leaves no room for
  const missing = volume && ratio !== null ? volume.v * (1 - ratio) : null;
  const tank = c.sheet.supply?.tank?.si ?? 0;
  const { p } = atmosphereOf(c);
  const notes = [...(expected?.notes ?? [])];
  if (!known) notes.push('assumed: pumped from 0');
  if (volume && to > from) {
    const mean = meanDelivery(volume.v, si(from), si(to), si(middle(time)), p);
    const curve = curveOf(c);
    const flow = sheetUnit('flow', c.sheet);
    const at = (from + to) / 2;
    const share = curve ? mean / deliveryAt(curve, si(at)) : null;
    notes.push(
      `mean delivery shown ${shown(mean, flow, mean * 0.02).text} of free air${share === null ? '' : `, about ${Math.round(share * 20) * 5} % of the sheet's at ${shown(at, unit, 4000).text}`}`,
      'water in the tank makes it look quicker, a leak or the bellows filling make it look slower',
    );
  }
  const volts = latest(c, 'voltage', (place) => place === 'motor');
  if (volts && expected && middle(volts.amount.v) > 0 && middle(volts.amount.v) < ratedVolts)
    notes.push(lowVolts(typed(volts.amount.v), middle(volts.amount.v), expected.time, volts.id));
  const tooQuick =
    missing !== null && missing < tank
      ? `: too quick, as if ${shown(missing, c.sheet.units.volume, missing * 0.06).text}${water ? ' more' : ''} of water took the room of air; drain it, or it did not start at ${known ? typed(known.v) : 'nothing'}`
      : ': too quick for this pump and tank, a time or a pressure is wrong';
  const shut = state.panel === 'shut' || state.outletClosed === true;
  const span = `${known ? typed(known.v) : shown(0, unit, 3000).text} to ${typed(fact.amount.v)}`;
  return {
    key: 'pump-up@tank',
    verdict,
    words:
      ratio === null
        ? `${span} took ${typed(time)}`
        : `${span} took ${typed(time)}, should take about ${spell(expected!.time)}${verdict === 'high' ? `: ${ratio.toPrecision(2)} times too long` : verdict === 'low' ? tooQuick : verdict === 'cannot tell' ? `, or ${spell(expected!.most)} if the bellows filled too: repeat it with them up` : ''}`,
    amount: shown(middle(time), time.unit, pm),
    ...(expected
      ? {
          limit: {
            low: shown(expected.time * quick, time.unit, 15),
            high: shown(expected.time * slack, time.unit, 15),
            source: expected.source,
          },
        }
      : {}),
    because: [fact.id, ...(water ? [water.input.from] : [])],
    why: {
      formula: expected?.formula ?? 'time taken',
      inputs: [{ name: 'pump-up', text: `${span} in ${typed(time)}`, from: fact.id }, ...(expected?.inputs ?? [])],
      source: expected?.source ?? { kind: 'physics', words: 'the reading itself' },
      notes: [
        ...notes,
        ...(expected
          ? [`called slow over ${slack} times, too quick under ${quick} of the expected time: estimates, no source`]
          : []),
      ],
    },
    ...(expected && verdict !== 'cannot tell'
      ? {
          evidence: [
            { see: shut ? 'pump-up shut' : 'pump-up', outcome: verdict === 'high' ? 'slow' : 'within' },
            ...(verdict === 'low' ? [{ see: 'filled too soon', outcome: 'yes' }] : []),
          ],
        }
      : expected
        ? {}
        : {
            wants: volume
              ? { field: 'pump.pumpUp', question: `How long should the pump take from ${span}?` }
              : { field: 'supply.tank', question: 'What is the volume of the air tank?' },
          }),
  };
};

export const pumpUp: Judge = {
  subject: 'pump-up',
  judge: (c) => {
    const fresh = c.fresh.filter(
      (f): f is ReadingFact => f.is === 'reading' && f.what.v === 'pump-up' && f.over !== undefined && f.over.v.si > 0,
    );
    // water drained after it tells what room the air had
    const drained = c.fresh.some((f) => f.is === 'reading' && f.what.v === 'water drained');
    const before = readings(c, 'pump-up').findLast((f) => f.over !== undefined && f.over.v.si > 0 && !f.held);
    const last = fresh.at(-1) ?? (drained && before && waterIn(c, before.at) ? before : undefined);
    return last ? [judgeOne(c, last)] : [];
  },
};
