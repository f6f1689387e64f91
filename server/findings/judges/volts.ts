/** Volts at battery and motor, the drop between them, and the motor's current. */
import type { Place, ReadingFact } from '../../../intents/shapes.ts';
import { resistanceOf, wireResistance } from '../../core/wire.ts';
import { roomTemperature } from '../../core/air.ts';
import { si } from '../../core/quantity.ts';
import {
  type Case,
  type Input,
  type Judge,
  type Range,
  covers,
  inputOf,
  latest,
  middle,
  practice,
  rangeOf,
  readings,
  specOf,
  spread,
  stateAt,
  touched,
} from '../case.ts';
import type { Finding } from '../finding.ts';
import { againstRange, limitOf, rangeInputs } from '../limits.ts';
import { shown } from '../show.ts';

const at = (part: string) => (place: Place) => place === part;
/** Readings of one moment: under the same load. */
const moment = 10 * 60_000;
const loaded = (c: Case, fact: ReadingFact): boolean => stateAt(c, fact).pump !== false;

const motor = (c: Case, fact: ReadingFact): Finding => {
  const range = rangeOf(
    c,
    'voltage',
    'motor',
    c.sheet.pump?.minVolts ? { low: c.sheet.pump.minVolts } : undefined,
    'pump.minVolts',
  );
  const value = middle(fact.amount.v);
  return againstRange(fact, range, {
    key: 'voltage@motor',
    name: 'volts at the motor',
    words: (text, verdict, limits) =>
      value < 1
        ? `no volts at the motor (${text})`
        : `${text} at the motor${verdict === 'no limit' ? '' : verdict === 'low' ? `, too low: should be ${limits}` : `, enough (${limits})`}`,
    formula: 'volts at the motor while it is called, against the least it needs',
    notes: [loaded(c, fact) ? 'assumed: read with the pump called' : 'pump was off: volts without load say little'],
    wants: {
      field: 'pump.minVolts',
      question: 'What is the least voltage this pump needs at its terminals while it runs?',
    },
    evidence: (verdict) =>
      stateAt(c, fact).pump === false && value >= 1
        ? []
        : value < 1
          ? [{ see: 'motor volts', outcome: 'none' }]
          : verdict === 'low' || verdict === 'within'
            ? [{ see: 'motor volts', outcome: verdict }]
            : [],
  });
};

/** V lost between two readings of the same moment; or a drop said straight. */
const drop = (c: Case, battery: ReadingFact, end: ReadingFact): Finding => {
  const lost = middle(battery.amount.v) - middle(end.amount.v);
  const pm = Math.hypot(spread(battery.amount.v), spread(end.amount.v));
  const range = rangeOf(
    c,
    'voltage drop',
    '',
    c.sheet.electrics?.drop ? { high: c.sheet.electrics.drop } : undefined,
    'electrics.drop',
  );
  return dropFinding(
    c,
    lost,
    pm,
    range,
    [inputOf('battery', battery), inputOf('motor', end)],
    [battery.id, end.id],
    'volts at the battery less volts at the motor, same moment',
    end.at,
  );
};

const copper = (c: Case): { ohm: number; inputs: Input[] } | null => {
  const { feed, ground } = c.sheet.electrics ?? {};
  if (!feed || !ground) return null;
  const ohm = [feed, ground].reduce((sum, leg) => sum + wireResistance(leg.awg, si(leg.length.si), roomTemperature), 0);
  return {
    ohm,
    inputs: [
      { name: 'feed', text: `${feed.length.text} of AWG ${feed.awg}`, from: 'sheet: electrics.feed' },
      { name: 'ground', text: `${ground.length.text} of AWG ${ground.awg}`, from: 'sheet: electrics.ground' },
    ],
  };
};

const dropFinding = (
  c: Case,
  lost: number,
  pm: number,
  range: Range | null,
  inputs: Input[],
  because: string[],
  formula: string,
  when: number,
): Finding => {
  const limit = range?.high;
  const verdict: Finding['verdict'] =
    lost < -pm ? 'cannot tell' : !limit ? 'no limit' : lost > limit.si + pm ? 'high' : 'within';
  const amps = latest(c, 'current', (p) => p === 'motor' || p === '' || p === 'pump');
  const current = amps && Math.abs(amps.at - when) <= moment ? amps : null;
  const wires = copper(c);
  const notes: string[] = [];
  const more: Input[] = [];
  if (current && middle(current.amount.v) > 0 && lost > 0) {
    const ohm = resistanceOf(si(lost), si(middle(current.amount.v)));
    more.push(inputOf('current', current));
    notes.push(`${shown(ohm, 'mohm', Math.max(0.0005, (pm / lost) * ohm)).text} in the circuit, from V / I`);
    if (wires) {
      more.push(...wires.inputs);
      const own = wires.ohm * middle(current.amount.v);
      notes.push(
        `the copper alone should lose ${shown(own, 'V', 0.005).text} at that current (20 C assumed); the other ${shown(Math.max(0, lost - own), 'V', Math.max(pm, 0.05)).text} is joints, switch, relay, fuse or ground: measure leg by leg`,
      );
    }
  }
  const text = shown(lost, 'V', pm, { difference: true }).text;
  return {
    key: 'voltage drop@battery to motor',
    verdict,
    words:
      verdict === 'cannot tell'
        ? 'more volts at the motor than at the battery: not read at the same moment'
        : `${text} lost between battery and motor${limit ? `, limit ${shown(limit.si, 'V', limit.pm).text}` : ''}`,
    amount: shown(lost, 'V', pm, { difference: true }),
    ...(range ? { limit: limitOf(range, 'V') } : {}),
    because: [...because, ...(current ? [current.id] : [])],
    why: {
      formula,
      inputs: [...inputs, ...more, ...rangeInputs(range, 'V')],
      source: range?.source ?? practice(),
      notes: ['assumed: both read with the pump running, at the same moment', ...notes],
    },
    ...(range
      ? {}
      : {
          wants: { field: 'electrics.drop', question: 'How much may be lost between battery and motor on this coach?' },
        }),
  };
};

const current = (c: Case, fact: ReadingFact): Finding => {
  const range = rangeOf(c, 'current', 'motor', c.sheet.pump?.current, 'pump.current');
  const value = middle(fact.amount.v);
  const { fuse } = c.sheet.pump ?? {};
  return againstRange(fact, range, {
    key: 'current@motor',
    name: 'current of the motor',
    words: (text, verdict, limits) =>
      value < 0.5
        ? `motor draws nothing (${text})`
        : `motor draws ${text}${verdict === 'no limit' ? '' : verdict === 'within' ? `, within ${limits}` : `, ${verdict}: should be ${limits}`}`,
    formula: 'current with the pump running, against its range',
    notes: [
      ...(fuse && value > fuse.si
        ? [`over the fuse of ${fuse.text} (sheet: pump.fuse): it will blow; a bigger fuse is not the cure`]
        : []),
      ...(range && value > (range.high?.si ?? Infinity)
        ? ['high: binding, a pump starting against pressure, low volts at the start']
        : []),
      ...(range && value < (range.low?.si ?? 0) && value >= 0.5
        ? ['low: volts lost on the way, or a pump that does no work']
        : []),
    ],
    wants: { field: 'pump.current', question: 'What current should this pump draw, lowest and highest?' },
    evidence: (verdict) =>
      value < 0.5
        ? [{ see: 'motor current', outcome: 'none' }]
        : verdict === 'no limit' || verdict === 'cannot tell'
          ? []
          : [{ see: 'motor current', outcome: verdict }],
  });
};

export const volts: Judge = {
  subject: 'volts and amps',
  judge: (c) => {
    const out: Finding[] = [];
    const fresh = touched(c, 'voltage');
    const freshMotor = fresh.filter((f) => f.where.v === 'motor' || f.where.v === 'pump').at(-1);
    if (freshMotor) out.push(motor(c, freshMotor));
    const dropSpec = c.fresh.some((f) => f.is === 'spec' && f.what.v === 'voltage drop');
    const end =
      freshMotor ??
      (fresh.some((f) => f.where.v === 'battery') || dropSpec ? latest(c, 'voltage', at('motor')) : undefined);
    const start = end
      ? readings(c, 'voltage', at('battery')).findLast((f) => Math.abs(f.at - end.at) <= moment)
      : undefined;
    if (end && start && stateAt(c, end).pump !== false) out.push(drop(c, start, end));
    for (const fact of touched(c, 'voltage drop').filter((f) => /^(?:|motor|pump|battery)$/.test(f.where.v))) {
      const range =
        specOf(c, 'voltage drop', fact.where.v) || c.sheet.electrics?.drop
          ? rangeOf(
              c,
              'voltage drop',
              fact.where.v,
              c.sheet.electrics?.drop ? { high: c.sheet.electrics.drop } : undefined,
              'electrics.drop',
            )
          : null;
      out.push(
        dropFinding(
          c,
          middle(fact.amount.v),
          spread(fact.amount.v),
          range,
          [inputOf('drop', fact)],
          [fact.id],
          'drop as measured, pump running',
          fact.at,
        ),
      );
    }
    const amps = touched(c, 'current')
      .filter((f) => covers('', f.where.v) && /^(?:motor|pump|)$/.test(f.where.v))
      .at(-1);
    if (amps) out.push(current(c, amps));
    return out;
  },
};
