/** How long a pump-up should take, duty from on and off times, settling. */
import { dutyOf } from '../../core/duty.ts';
import { ratedVolts } from '../../core/pump-up.ts';
import { si } from '../../core/quantity.ts';
import { stepToSi } from '../../core/units.ts';
import { latest, middle, practice } from '../case.ts';
import { expectedPumpUp, lowVolts } from '../expected-pump-up.ts';
import { switchRange } from '../judges/tank-pressure.ts';
import { shown, spell, typed } from '../show.ts';
import { tankSide } from '../tank-episode.ts';
import { waterSaid } from './air-room.ts';
import { amountInput, bare, type Question, said, type Workout, type Worked } from './question.ts';

/** From and to, Pa: said, else from the tank's last reading (or empty) to cut-out. */
const span = (q: Question): { from: number; to: number; assumed: string[] } | null => {
  const unit = q.c.sheet.units.pressure;
  const told = q.amounts
    .filter((a) => said(q, 'pressure').includes(a) || bare(q).includes(a))
    .map((a) => (bare(q).includes(a) ? stepToSi(a.si, said(q, 'pressure')[0]?.unit ?? unit) : a.si));
  const read = latest(q.c, 'pressure', tankSide);
  const out = switchRange(q.c, 'cut-out');
  const top = out?.low && out.high ? (out.low.si + out.high.si) / 2 : null;
  if (told.length >= 2) return { from: told[0]!, to: told[1]!, assumed: [] };
  const to = told[0] ?? top;
  if (to === null || to === undefined) return null;
  const from = read && middle(read.amount.v) < to ? middle(read.amount.v) : 0;
  return {
    from,
    to,
    assumed: [
      from === 0 ? 'assumed: from empty' : `from the tank's last reading (${read!.id})`,
      ...(told.length === 0 ? ['to cut-out'] : []),
    ],
  };
};

const pumpUp = (q: Question): Worked | null => {
  const s = span(q);
  if (!s)
    return {
      words: 'to what pressure?',
      lines: [],
      wants: { field: 'supply.cutOut', question: 'At what pressure should the pump stop?' },
    };
  const unit = q.c.sheet.units.pressure;
  const expected = expectedPumpUp(q.c, s.from, s.to, q.c.standing.state.panel, false, waterSaid(q));
  if (!expected)
    return {
      words: 'the sheet does not say how strong the pump is',
      lines: [],
      wants: {
        field: q.c.sheet.supply?.tank ? 'pump.delivery' : 'supply.tank',
        question: q.c.sheet.supply?.tank
          ? 'How much free air does the pump deliver, at two pressures?'
          : 'What is the volume of the air tank?',
      },
    };
  const [told] = said(q, 'voltage');
  const read = latest(q.c, 'voltage', (place) => place === 'motor');
  const volts = told
    ? { v: told.si, text: told.text, from: 'said' }
    : read && { v: middle(read.amount.v), text: typed(read.amount.v), from: read.id };
  const weak =
    volts && volts.v > 0 && volts.v < ratedVolts ? [lowVolts(volts.text, volts.v, expected.time, volts.from)] : [];
  return {
    words: `${shown(s.from, unit, 3500).text} to ${shown(s.to, unit, 3500).text} should take about ${spell(expected.time)}`,
    lines: [
      ...s.assumed,
      ...expected.notes,
      ...weak,
      ...(q.c.sheet.pump?.runLimit && expected.time > q.c.sheet.pump.runLimit.si
        ? [`longer than its run limit of ${q.c.sheet.pump.runLimit.text}: let it rest on the way`]
        : []),
    ],
    why: { formula: expected.formula, inputs: expected.inputs, source: expected.source, notes: [] },
  };
};

export const pumping: Workout = {
  subject: 'pump',
  work: (q) => {
    if (/settle/.test(q.words))
      return {
        words: 'about 15 minutes after pumping, and until the heights stand still (common practice, no source)',
        lines: ['just pumped air is hot: it falls several psi by itself as it cools'],
        why: { formula: 'p/T constant while it cools', inputs: [], source: practice(), notes: [] },
      };
    const times = said(q, 'duration');
    if (/\bduty|\bon\b.*\boff\b/.test(q.words) && times.length >= 2) {
      const [on, off] = [times[0]!, times[1]!];
      const duty = dutyOf(si(on.si), si(off.si));
      const limit = q.c.sheet.pump?.duty;
      return {
        words: `${Math.round(duty * 100)} % of the time${limit ? `, limit ${limit.text} (sheet: pump.duty)` : ''}`,
        lines: [],
        why: {
          formula: 'on / (on + off)',
          inputs: [amountInput('on', on), amountInput('off', off)],
          source: practice(),
          notes: [],
        },
      };
    }
    const asks = q.ask.ask === 'how long' || q.ask.ask === 'limit' || q.ask.ask === 'work out';
    const pumps =
      /pump|fill|build|compressor|\bcomp\b/.test(q.words) && /long|time|minutes|take|fill|up\b/.test(q.words);
    // "how long should 0 to 110 take": two pressures and nothing else that could take time
    const rises =
      /\btakes?\b/.test(q.words) && said(q, 'pressure').length + bare(q).length >= 2 && /\bto\b/.test(q.words);
    return asks && (pumps || rises) && !/run\b/.test(q.words) ? pumpUp(q) : null;
  },
};
