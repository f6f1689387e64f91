/** Readings that are only held against a range: valve delay, dead band, regulated supply, torque, settling time. */
import type { Measure, ReadingFact } from '../../../intents/shapes.ts';
import type { Amount } from '../../core/amount.ts';
import { type Case, type Judge, type Range, middle, practice, rangeOf, spread, touched } from '../case.ts';
import type { Finding } from '../finding.ts';
import { againstRange } from '../limits.ts';
import { shown, spell } from '../show.ts';
import { settleSeconds } from '../tank-episode.ts';

type Row = {
  what: Measure;
  name: string;
  at?: RegExp;
  range: (c: Case, fact: ReadingFact) => Range | null;
  wants: { field: string; question: string };
  notes?: string[];
  evidence?: (fact: ReadingFact, verdict: Finding['verdict']) => Finding['evidence'];
};

const about = (
  c: Case,
  what: Measure,
  place: string,
  nominal: Amount | undefined,
  share: number,
  field: string,
): Range | null => {
  const edge = (k: number): Amount => ({
    ...nominal!,
    si: nominal!.si * k,
    text: shown(nominal!.si * k, nominal!.unit, nominal!.pm).text,
  });
  const range = rangeOf(c, what, place, nominal ? { low: edge(1 - share), high: edge(1 + share) } : undefined, field);
  return range && range.source.kind === 'sheet'
    ? {
        ...range,
        source: { ...range.source, words: `sheet: ${field}, within ${share * 100} % (an estimate, no source)` },
      }
    : range;
};

const rows: readonly Row[] = [
  {
    what: 'delay',
    name: 'delay of the height valve',
    range: (c, f) => rangeOf(c, 'delay', f.where.v, c.sheet.valves?.delay, 'valves.delay'),
    wants: { field: 'valves.delay', question: 'How long should the height valve wait before it acts, least and most?' },
    notes: [
      'too short: the coach hunts and uses air on the road; too long or never: dirt in the valve (common practice, no source)',
    ],
  },
  {
    what: 'dead band',
    name: 'dead band of the height valve',
    range: (c, f) => about(c, 'dead band', f.where.v, c.sheet.valves?.deadBand, 0.5, 'valves.deadBand'),
    wants: {
      field: 'valves.deadBand',
      question: 'How far may the arm move either side of neutral before the valve acts?',
    },
  },
  {
    what: 'pressure',
    name: 'regulated supply',
    at: /regulator$|height valve$|supply line$/,
    range: (c, f) => about(c, 'pressure', f.where.v, c.sheet.supply?.regulator, 0.1, 'supply.regulator'),
    wants: { field: 'supply.regulator', question: 'What pressure should reach the height valves?' },
    evidence: (f, verdict) =>
      middle(f.amount.v) <= Math.max(spread(f.amount.v), 7000)
        ? [{ see: 'regulated supply', outcome: 'none' }]
        : verdict === 'within' || verdict === 'low'
          ? [{ see: 'regulated supply', outcome: verdict }]
          : [],
  },
  {
    what: 'torque',
    name: 'torque',
    range: (c, f) => {
      const row = c.sheet.torques?.find(
        (t) =>
          f.where.v !== '' &&
          (t.what.toLowerCase().includes(f.where.v) ||
            f.where.v.split(' ').some((w) => w.length > 3 && t.what.toLowerCase().includes(w))),
      );
      return about(c, 'torque', f.where.v, row?.torque, 0.1, row ? `torques, ${row.what}` : 'torques');
    },
    wants: { field: 'torques', question: 'What torque does the manual give for this bolt?' },
  },
  {
    what: 'settling time',
    name: 'settling time',
    range: () => ({
      low: { si: settleSeconds, pm: 0, unit: 'min', text: '15 min' },
      source: practice(),
      because: [],
    }),
    wants: { field: '', question: '' },
  },
];

const judgeRow = (c: Case, row: Row, fact: ReadingFact): Finding =>
  againstRange(fact, row.range(c, fact), {
    key: `${row.what}@${fact.where.v || 'coach'}`,
    name: row.name,
    words: (text, verdict, limits) =>
      row.what === 'settling time'
        ? verdict === 'low'
          ? `settled only ${text}: hot air, wait ${spell(settleSeconds - middle(fact.amount.v))} more before a reading counts`
          : `settled ${text}: readings count`
        : `${fact.where.v ? `${fact.where.v} ` : ''}${row.what === 'pressure' ? 'supply' : row.what} ${text}${verdict === 'no limit' ? '' : verdict === 'within' ? `, within ${limits}` : `, ${verdict}: should be ${limits}`}`,
    formula: `${row.name} as read, against its range`,
    notes: row.notes ?? [],
    wants: row.wants,
    ...(row.evidence ? { evidence: (verdict: Finding['verdict']) => row.evidence!(fact, verdict) } : {}),
  });

export const plainRanges: Judge = {
  subject: 'ranges',
  judge: (c) =>
    rows.flatMap((row) =>
      [
        ...new Map(
          touched(c, row.what)
            .filter((f) => !row.at || row.at.test(f.where.v))
            .map((f) => [f.where.v, f]),
        ).values(),
      ].map((f) => judgeRow(c, row, f)),
    ),
};
