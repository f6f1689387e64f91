/** What the page shows beside a limit is of the limit's own kind. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { boardOf } from '../../server/chat/board.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { typingOn } from './session.ts';

const sheet = loadSheet(
  readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8'),
  'juniper-38',
).sheet;
const latestOf = async (notes: readonly string[], key: string) => {
  const bench = await typingOn();
  for (const note of notes) await bench.type(note);
  const board = boardOf(await bench.standing(), sheet, 0);
  return { one: board.latest.find((l) => l.key === key), line: board.series.find((s) => s.key === key) };
};

describe('the latest reading beside its limit', () => {
  test('a pump-up stands in minutes against minutes', async () => {
    const { one } = await latestOf(['0 to 90 took 2 min'], 'pump-up@tank');
    expect(one).toMatchObject({ text: '2 min', si: 120, lowText: '3.0 min', highText: '5.0 min', verdict: 'low' });
  });
  test('a toe in inches stands in degrees against degrees, as typed in words', async () => {
    const { one, line } = await latestOf(
      ['toe lr front wheel 1/8 out', 'toe lr front wheel 1/16 out'],
      'toe@left rear forward wheel',
    );
    expect(one).toMatchObject({ text: '-1/16 in', unit: 'deg', highText: '0.10 deg' });
    expect((one!.si * 180) / Math.PI).toBeCloseTo(-0.1155, 3);
    expect(line).toBeUndefined();
  });
  test('a pressure stays what was read', async () => {
    const { one, line } = await latestOf(['tank 95', 'tank 90'], 'pressure@tank');
    expect(one).toMatchObject({ text: '90 psi', unit: 'psi', lowText: '85 psi' });
    expect(line?.points).toHaveLength(2);
  });
});
