import { expect, test } from 'vitest';
import { ledTo } from '../../web/led-to.ts';
import { tablesOf } from '../../web/transcript.ts';
import { benchDesk, tell, visit } from '../report/told.ts';

const told = async (...notes: string[]) => {
  const bench = benchDesk();
  await tell(bench, 'led-to-1', notes);
  return (await visit(bench, 'led-to-1')).entries;
};

test('a finding leads on to the note in which it was found again, and a suspicion to the work on it', async () => {
  const entries = await told('LR 12 1/2', 'bubbles at left bag crimp', 'replaced left bellows', 'LR 13 3/4');
  const on = ledTo(entries);
  expect(on.get(2)).toContainEqual({
    seq: 8,
    words: expect.stringContaining('again: ') as string,
    key: 'height@left rear',
  });
  expect(on.get(4)).toContainEqual({ seq: 6, words: 'replaced left bellows' });
});

test('a note that was taken back leads nowhere', async () => {
  const entries = await told('LR 12 1/2', 'undo', 'LR 13 3/4');
  expect(ledTo(entries).get(2)).toBeUndefined();
});

test('a finding on a figure that was corrected is struck, and the figure put in its place stands as a reading', async () => {
  const t = tablesOf(await told('tank 54 psi', 'no, 56'));
  const pressure = t.findings.filter((f) => f.it.key === 'pressure@tank');
  expect(pressure.map((f) => f.gone)).toEqual([true, false]);
  expect(t.readings.map((r) => [r.it.fact.amount.v.text.slice(0, 2), r.gone])).toEqual([
    ['54', true],
    ['56', false],
  ]);
});
