/** What the tank gauge reads, against cut-in, cut-out, relief and protection; and two gauges against each other. */
import type { ReadingFact } from '../../../intents/shapes.ts';
import {
  type Case,
  type Judge,
  type Range,
  middle,
  physics,
  rangeOf,
  readings,
  spread,
  stateAt,
  touched,
  unitOf,
} from '../case.ts';
import type { Finding } from '../finding.ts';
import { tankSide } from '../tank-episode.ts';
import { againstRange } from '../limits.ts';
import { shown, shownAmount, typed } from '../show.ts';
import { isAsFound } from '../as-found.ts';

export const switchRange = (c: Case, which: 'cut-in' | 'cut-out'): Range | null =>
  rangeOf(
    c,
    which,
    'pressure switch',
    which === 'cut-in' ? c.sheet.supply?.cutIn : c.sheet.supply?.cutOut,
    which === 'cut-in' ? 'supply.cutIn' : 'supply.cutOut',
  );

const now = (c: Case, fact: ReadingFact): Finding => {
  const cutIn = switchRange(c, 'cut-in');
  const cutOut = switchRange(c, 'cut-out');
  const state = stateAt(c, fact);
  const { relief, protection } = c.sheet.supply ?? {};
  const value = middle(fact.amount.v);
  const pm = spread(fact.amount.v);
  const band: Range | null =
    cutIn?.low && cutOut?.high
      ? {
          low: cutIn.low,
          high: cutOut.high,
          source: {
            kind: cutIn.source.kind === 'note' || cutOut.source.kind === 'note' ? 'note' : 'sheet',
            words: [...new Set([cutIn.source.words, cutOut.source.words])].join(', '),
          },
          because: [...cutIn.because, ...cutOut.because],
        }
      : null;
  const over = cutOut?.high && value > cutOut.high.si + pm;
  const notes: string[] = [];
  if (relief && value >= relief.si - pm)
    notes.push(`at or over the relief's setting of ${shownAmount(relief, unitOf(fact)).text} (sheet: supply.relief)`);
  if (protection && value < protection.si)
    notes.push(
      `below ${shownAmount(protection, unitOf(fact)).text} the protection valve gives the suspension no air (sheet: supply.protection)`,
    );
  const evidence: Finding['evidence'] = [];
  if (over && state.pump === true) evidence.push({ see: 'pump past cut-out', outcome: 'runs on' });
  const first = readings(c, 'pressure', tankSide)[0];
  if (first?.id === fact.id && isAsFound(c, fact)) {
    const { springs } = c.sheet;
    const bags = springs?.pressure;
    if (value <= Math.max(pm, 0.1 * 101_325)) evidence.push({ see: 'tank as found', outcome: 'zero' });
    else if (
      bags &&
      value <= Math.max(bags.left.high.si, bags.right.high.si) + pm &&
      value >= Math.min(bags.left.low.si, bags.right.low.si) - pm
    )
      evidence.push({ see: 'tank as found', outcome: 'at bellows pressure' });
    else if (!bags || value > Math.max(bags.left.high.si, bags.right.high.si))
      evidence.push({ see: 'tank as found', outcome: 'up' });
  }
  return againstRange(fact, band, {
    key: 'pressure@tank',
    name: 'tank pressure',
    words: (text, verdict, limits) =>
      verdict === 'high'
        ? `tank at ${text}, over cut-out (working band ${limits})${state.pump === true ? ': the pump should have stopped' : ''}`
        : verdict === 'low'
          ? `tank at ${text}, below cut-in (working band ${limits}): with the key on the pump should run`
          : verdict === 'within'
            ? `tank at ${text}, in its working band of ${limits}`
            : `tank at ${text}`,
    formula: 'reading against lowest cut-in and highest cut-out',
    notes,
    wants: {
      field: cutIn ? 'supply.cutOut' : 'supply.cutIn',
      question: `At what pressure should the pump ${cutIn ? 'stop (cut-out)' : 'start (cut-in)'} on this coach?`,
    },
    evidence: () => evidence,
  });
};

/** "cut out 115 while the dash says 138", "drained to 0, dash still 22": the dash against what else the note says. */
const besideGauge = (c: Case, fact: ReadingFact): ReadingFact | undefined => {
  if (fact.where.v !== 'gauge') return undefined;
  const note = fact.id.slice(0, fact.id.lastIndexOf('.') + 1);
  return [
    ...readings(c, 'cut-out', () => true),
    ...readings(c, 'cut-in', () => true),
    ...readings(c, 'pressure', (p) => p === 'tank'),
  ].findLast((f) => f.id.startsWith(note));
};

/** Two gauges on the same tank read within ten minutes of each other. */
const agreement = (c: Case, fact: ReadingFact): Finding[] => {
  const mine = fact.where.v === 'test port';
  const other =
    readings(c, 'pressure', (p) => tankSide(p) && (p === 'test port') !== mine)
      .filter((f) => Math.abs(f.at - fact.at) <= 600_000)
      .at(-1) ?? besideGauge(c, fact);
  if (!other) return [];
  const step = c.sheet.supply?.gaugeStep?.si ?? 0;
  const apart = middle(fact.amount.v) - middle(other.amount.v);
  const slack = Math.max(spread(fact.amount.v) + spread(other.amount.v), 1.25 * step + 0.02 * middle(other.amount.v));
  const agree = Math.abs(apart) <= slack;
  const unit = unitOf(fact);
  return [
    {
      key: 'gauges@tank',
      verdict: agree ? 'within' : 'high',
      words: agree
        ? `the two gauges agree (${shown(Math.abs(apart), unit, fact.amount.v.pm, { difference: true }).text} apart)`
        : `the two gauges differ by ${shown(Math.abs(apart), unit, fact.amount.v.pm, { difference: true }).text}: earlier tank readings cannot be trusted until the better one is known`,
      amount: shown(Math.abs(apart), unit, fact.amount.v.pm, { difference: true }),
      limit: {
        high: shown(slack, unit, fact.amount.v.pm, { difference: true }),
        source: {
          kind: 'practice',
          words: 'a division and a quarter of the gauge and 2 % of the reading: common practice, no source',
        },
      },
      because: [other.id, fact.id],
      why: {
        formula: 'difference of the two readings, against what two sound gauges may differ by',
        inputs: [
          { name: other.where.v || 'tank', text: typed(other.amount.v), from: other.id },
          { name: fact.where.v || 'tank', text: typed(fact.amount.v), from: fact.id },
        ],
        source: physics('two gauges on one tank read the same when the air stands still'),
        notes: [],
      },
      evidence: [
        {
          see: 'second gauge',
          outcome: agree ? 'agrees' : mine === apart > 0 ? 'coach gauge low' : 'coach gauge high',
        },
      ],
    },
  ];
};

export const tankPressure: Judge = {
  subject: 'tank pressure',
  judge: (c) => {
    const fresh = touched(c, 'pressure').filter((f) => tankSide(f.where.v));
    const last = fresh.at(-1);
    return last ? [now(c, last), ...agreement(c, last)] : [];
  },
};
