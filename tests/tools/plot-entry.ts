/** A night of the typical demo coach under five faults, for the plot. */
import { loadSheet } from '../../server/sheet/load.ts';
import { makeCoach } from '../../server/twin/coach.ts';
import type { CoachParams } from '../../server/twin/params.ts';
import { run } from '../../server/twin/run.ts';
import type { Ail } from '../../server/twin/sizes.ts';

export const hours = 12;
const faults: readonly { name: string; ails: readonly Ail[] }[] = [
  { name: 'tank leak', ails: [{ ailment: 'tank leak', size: 0.006 }] },
  { name: 'left bellows leak', ails: [{ ailment: 'left bellows leak', size: 0.008 }] },
  { name: 'left exhaust seat leak, SHUT', ails: [{ ailment: 'left exhaust seat leak', size: 0.008 }] },
  { name: 'left inlet seat leak', ails: [{ ailment: 'left inlet seat leak', size: 0.006 }] },
  {
    name: 'tank leak and bad left inlet check',
    ails: [
      { ailment: 'tank leak', size: 0.006 },
      { ailment: 'left inlet check bad', size: 0.05 },
    ],
  },
];

export type Line = { name: string; points: { t: number; tank: number; bellows: number; height: number }[] };

/** Tank and left bellows in gauge Pa, left rear height in m, every `every` s from key off at a full tank. */
export const nights = (read: (path: string) => string, every = 60): { lines: Line[]; p: CoachParams } => {
  const { sheet } = loadSheet(read('fixtures/sheets/juniper-38.json'), 'juniper-38');
  const p = makeCoach(sheet, { seed: 1, typical: true });
  const lines = faults.map(({ name, ails }): Line => {
    const { rows } = run(p, ails, {
      until: hours * 3600,
      every,
      weather: { start: p.ambient, drop: 10, over: 10 * 3600, since: 0 },
      deeds: name.endsWith('SHUT')
        ? [{ at: 0, deed: { do: 'panel', left: 'shut', right: 'shut' } }]
        : name.includes('check')
          ? // Come to rest low in its dead band, so that the cold makes the valve call.
            [{ at: 0, deed: { do: 'stand', left: -0.85 * p.deadBand[0] * p.heightPerArm, right: 0 } }]
          : [],
    });
    return { name, points: rows.map((g) => ({ t: g.t, tank: g.tank, bellows: g.bellows[0], height: g.rear[0] })) };
  });
  return { lines, p };
};
