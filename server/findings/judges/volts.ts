/** Volts at battery and motor, the drop between them, and the motor's current. */
import type { Place, ReadingFact } from '../../../intents/shapes.ts';
import {
  type Case,
  type Judge,
  covers,
  inputOf,
  latest,
  middle,
  rangeOf,
  readings,
  specOf,
  spread,
  stateAt,
  touched,
} from '../case.ts';
import type { Finding } from '../finding.ts';
import { againstRange } from '../limits.ts';
import { drop, dropFinding, moment } from '../voltage-drop.ts';

const at = (part: string) => (place: Place) => place === part;

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
