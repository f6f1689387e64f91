/** What the board draws of the readings: charts for what was read more than once, strips for what has a limit. Pure. */
import type { Board } from '../server/chat/protocol.ts';
import type { Chart } from './draw/chart.ts';
import type { Strip } from './draw/strip.ts';
import { figureOf, isUnit } from './show.ts';

export type SeriesChart = { key: string; title: string; drawing: Chart };

const titleOf = (key: string): string => {
  const [what, where] = key.split('@');
  return what === 'pressure' || what === 'height'
    ? `${where ?? ''} ${what}`.trim()
    : `${what ?? ''} ${where ?? ''}`.trim();
};

/** Newest first; a straight line through two points is no fit, so none is drawn here. */
export const seriesCharts = (board: Board): SeriesChart[] =>
  board.series
    .filter((s) => s.points.length > 1)
    .toSorted((a, b) => (b.points.at(-1)?.at ?? 0) - (a.points.at(-1)?.at ?? 0))
    .flatMap((s) => {
      const unit = s.unit;
      if (!isUnit(unit)) return [];
      const first = s.points[0]?.at ?? 0;
      const latest = board.latest.find((l) => l.key === s.key);
      return [
        {
          key: s.key,
          title: titleOf(s.key),
          drawing: {
            is: 'chart' as const,
            unit,
            points: s.points.map((p) => ({ t: (p.at - first) / 1000, si: p.si, pm: p.pm })),
            fit: [],
            limits: [
              ...(latest?.low === undefined ? [] : [{ si: latest.low, label: 'low limit' }]),
              ...(latest?.high === undefined ? [] : [{ si: latest.high, label: 'high limit' }]),
            ],
          },
        },
      ];
    });

export type ReadingStrip = {
  key: string;
  title: string;
  text: string;
  verdict: Board['latest'][number]['verdict'];
  drawing: Strip | null;
};

export const readingStrips = (board: Board): ReadingStrip[] =>
  board.latest
    .toSorted((a, b) => b.seq - a.seq)
    .map((l) => {
      const f = figureOf(l.si, l.unit, l.pm);
      const unit = l.unit;
      const limited = l.low !== undefined || l.high !== undefined;
      return {
        key: l.key,
        title: titleOf(l.key),
        text: `${f.figure} ${f.unit}`.trim(),
        verdict: l.verdict,
        drawing:
          limited && isUnit(unit)
            ? {
                is: 'strip' as const,
                unit,
                ...(l.low === undefined ? {} : { low: l.low, lowText: l.lowText }),
                ...(l.high === undefined ? {} : { high: l.high, highText: l.highText }),
                pins: [{ si: l.si, pm: l.pm, label: f.figure }],
              }
            : null,
      };
    });
