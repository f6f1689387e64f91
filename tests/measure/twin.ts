/** How long the simulated coach takes: a 12-hour night, every check at one coach, a practice deed and its end. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { loadSheet } from '../../server/sheet/load.ts';
import { makeCoach } from '../../server/twin/coach.ts';
import { observeAll } from '../../server/twin/observe.ts';
import { act, startPractice } from '../../server/twin/practice.ts';
import { reveal } from '../../server/twin/reveal.ts';
import { makeRng } from '../../server/twin/rng.ts';
import { run } from '../../server/twin/run.ts';
import type { Ail } from '../../server/twin/sizes.ts';
import { line, ms, percentile, timed } from './clock.ts';

const nights: readonly (readonly [string, readonly Ail[]])[] = [
  ['sound', []],
  ['tank leak', [{ ailment: 'tank leak', size: 0.01 }]],
  ['bellows leak', [{ ailment: 'left bellows leak', size: 0.01 }]],
  ['exhaust seat leak', [{ ailment: 'left exhaust seat leak', size: 0.01 }]],
  ['inlet seat leak', [{ ailment: 'left inlet seat leak', size: 0.01 }]],
];

export const measureTwin = async (): Promise<void> => {
  const root = process.env['SOAPWATER_ROOT'] ?? '.';
  const { sheet } = loadSheet(readFileSync(join(root, 'fixtures/sheets/juniper-38.json'), 'utf8'), 'juniper-38');
  const p = makeCoach(sheet, { seed: 1, typical: true });
  const script = { until: 12 * 3600, every: 600, weather: { start: 295, drop: 8, over: 36_000, since: 0 }, deeds: [] };
  for (const [, ails] of nights) await timed(6, () => run(p, ails, script));
  for (const [name, ails] of nights) {
    const times = await timed(30, () => run(p, ails, script));
    line(
      `12-hour night, ${name}`,
      `p50 ${ms(percentile(times, 50))}, p99 ${ms(percentile(times, 99))}`,
      '',
      '20 ms at most',
    );
  }
  const all = await timed(40, (i) =>
    observeAll(makeCoach(sheet, { seed: i }), [{ ailment: 'left bellows leak', size: 0.01 }], makeRng(i)),
  );
  line('every check at one coach', `p50 ${ms(percentile(all, 50))}`, '', 'guidance only');
  const start = startPractice(3, 4, sheet);
  const deeds = await timed(40, () => act(start, { do: 'wait', seconds: 1800 }));
  line('practice: wait 30 min', `p50 ${ms(percentile(deeds, 50))}`, '', 'guidance only');
  const ends = await timed(8, () => reveal(start));
  line('practice: the end', `p50 ${ms(percentile(ends, 50))}`, '', 'guidance only');
};
