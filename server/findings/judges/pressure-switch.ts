/** Cut-in, cut-out and their difference. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import {
  type Case,
  type Judge,
  inputOf,
  latest,
  middle,
  practice,
  sheetSource,
  spread,
  touched,
  unitOf,
} from '../case.ts';
import type { Finding } from '../finding.ts';
import { againstRange } from '../limits.ts';
import { shown } from '../show.ts';
import { adviceFor, cureWords, nutNotes, pointOf } from '../switch-advice.ts';
import { switchRange } from './tank-pressure.ts';

const point = (c: Case, fact: ReadingFact, which: 'cut-in' | 'cut-out'): Finding => {
  const range = switchRange(c, which);
  return againstRange(fact, range, {
    key: `${which}@pressure switch`,
    name: which,
    words: (text, verdict, limits) =>
      verdict === 'no limit'
        ? `${which} at ${text}`
        : `${which} at ${text}, ${verdict === 'within' ? 'within' : `${verdict}: should be`} ${limits}`,
    formula: `${which} as read, against its range`,
    wants: {
      field: which === 'cut-in' ? 'supply.cutIn' : 'supply.cutOut',
      question: `At what pressure should the pump ${which === 'cut-in' ? 'start' : 'stop'} on this coach (lowest and highest)?`,
    },
    evidence: (verdict) =>
      verdict === 'within' || verdict === 'low' || verdict === 'high' ? [{ see: which, outcome: verdict }] : [],
  });
};

const difference = (c: Case): Finding | null => {
  const low = latest(c, 'cut-in');
  const high = latest(c, 'cut-out');
  if (!low || !high) return null;
  const unit = unitOf(high);
  const pm = spread(low.amount.v) + spread(high.amount.v);
  const apart = middle(high.amount.v) - middle(low.amount.v);
  const cutIn = switchRange(c, 'cut-in');
  const cutOut = switchRange(c, 'cut-out');
  const known = cutIn?.low && cutIn.high && cutOut?.low && cutOut.high;
  const least = known ? cutOut.low!.si - cutIn.high!.si : null;
  const most = known ? cutOut.high!.si - cutIn.low!.si : null;
  const verdict: Finding['verdict'] =
    apart <= 0
      ? 'low'
      : least === null || most === null
        ? 'no limit'
        : apart < least - pm
          ? 'low'
          : apart > most + pm
            ? 'high'
            : 'within';
  const text = shown(apart, unit, pm / 2, { difference: true }).text;
  const advised = adviceFor(c, pointOf(low, 'cut-in'), pointOf(high, 'cut-out'));
  return {
    key: 'difference@pressure switch',
    verdict,
    words:
      apart <= 0
        ? `cut-out is not above cut-in: one of the two readings is wrong`
        : `cut-in to cut-out ${text} apart${verdict === 'low' ? ', the pump cycles short' : ''}${cureWords(advised, unit, pm)}`,
    amount: shown(apart, unit, pm / 2, { difference: true }),
    ...(least !== null && most !== null
      ? {
          limit: {
            low: shown(least, unit, pm / 2, { difference: true }),
            high: shown(most, unit, pm / 2, { difference: true }),
            source: sheetSource('supply.cutOut less supply.cutIn'),
          },
        }
      : {}),
    because: [low.id, high.id],
    why: {
      formula: 'cut-out less cut-in',
      inputs: [inputOf('cut-in', low), inputOf('cut-out', high)],
      source: known ? sheetSource('supply.cutIn, supply.cutOut') : practice(),
      notes: advised === null || advised.do === 'leave' ? [] : [...nutNotes],
    },
  };
};

export const pressureSwitch: Judge = {
  subject: 'switch',
  judge: (c) => {
    const ins = touched(c, 'cut-in').at(-1);
    const outs = touched(c, 'cut-out').at(-1);
    const out: Finding[] = [];
    if (ins) out.push(point(c, ins, 'cut-in'));
    if (outs) out.push(point(c, outs, 'cut-out'));
    const apart = ins || outs ? difference(c) : null;
    return apart ? [...out, apart] : out;
  },
};
