import { describe, expect, it } from 'vitest';
import type { EstimateLine } from '../../server/session/estimate.ts';
import { estimateOf, rateOf } from '../../server/report/estimate.ts';
import { proposedLines } from '../../server/report/proposed.ts';
import { Refused } from '../../server/desk.ts';
import { benchDesk, leakStory, reportOf, tell, visit } from './told.ts';

const bellows: EstimateLine = {
  id: 'bellows',
  words: 'left: replace the bellows',
  parts: [{ name: 'left bellows', price: 189.5 }],
  hands: 75,
  wait: 15,
};
const link: EstimateLine = { id: 'link', words: 'new link', parts: [{ name: 'link' }], hands: 20, wait: 0 };
const started = async () => {
  const bench = benchDesk();
  await tell(bench, 'cost-1', ['LR 12']);
  return bench;
};
const stands = async (bench: Awaited<ReturnType<typeof started>>) =>
  estimateOf((await visit(bench, 'cost-1')).entries)!;
const why = (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => 'taken',
    (e: unknown) => (e instanceof Refused ? e.why : String(e)),
  );

describe('an estimate', () => {
  it('adds hands-on time at the rate and parts, and charges no waiting', async () => {
    const bench = await started();
    await bench.desk.estimate('cost-1', 'MK', { lines: [bellows], rate: 118, currency: 'USD' });
    // 75 min at 118 an hour is 147.50
    expect((await stands(bench)).lines[0]).toMatchObject({ labour: 147.5, material: 189.5, total: 337 });
    expect(await stands(bench)).toMatchObject({ total: 337, approved: 0, missing: [] });
  });

  it('asks for a missing rate and price and gives no sum instead of a wrong one', async () => {
    const bench = await started();
    await bench.desk.estimate('cost-1', 'MK', { lines: [bellows, link] });
    expect(await stands(bench)).toMatchObject({
      total: null,
      missing: ["the shop's labour rate", 'price of link (new link)'],
    });
  });

  it('takes a word on each line, the last one counts, and the declined stand in the report', async () => {
    const bench = await started();
    await bench.desk.estimate('cost-1', 'MK', { lines: [bellows, link], rate: 100 });
    const about = (await stands(bench)).seq;
    const word = (line: string, yes: boolean) =>
      bench.desk.decide('cost-1', 'MK', { about, line, yes, name: 'A. Rowe', words: yes ? '' : 'next time' });
    await word('bellows', false);
    await word('bellows', true);
    await word('link', false);
    expect((await stands(bench)).lines.map((l) => l.decided?.yes)).toEqual([true, false]);
    expect((await stands(bench)).approved).toBe(314.5);
    expect((await reportOf(bench, 'cost-1')).declined).toMatchObject([
      { words: 'New link', more: 'declined by A. Rowe: next time' },
    ]);
  });

  it('keeps the word on a line that did not change, and lets it fall with a price that did', async () => {
    const bench = await started();
    await bench.desk.estimate('cost-1', 'MK', { lines: [bellows, link], rate: 100 });
    const about = (await stands(bench)).seq;
    for (const line of ['bellows', 'link'])
      await bench.desk.decide('cost-1', 'MK', { about, line, yes: true, name: 'A. Rowe', words: '' });
    const dearer = { ...bellows, parts: [{ name: 'left bellows', price: 250 }] };
    await bench.desk.estimate('cost-1', 'MK', { lines: [dearer, link], rate: 100 });
    expect((await stands(bench)).lines.map((l) => l.decided?.yes ?? null)).toEqual([null, true]);
  });

  it('refuses a word about an estimate that is not the newest, or a line that is not on it', async () => {
    const bench = await started();
    await bench.desk.estimate('cost-1', 'MK', { lines: [bellows] });
    const about = (await stands(bench)).seq;
    const word = { line: 'bellows', yes: true, name: 'A. Rowe', words: '' };
    expect(await why(bench.desk.decide('cost-1', 'MK', { ...word, about, line: 'other' }))).toBe('estimate changed');
    await bench.desk.estimate('cost-1', 'MK', { lines: [link] });
    expect(await why(bench.desk.decide('cost-1', 'MK', { ...word, about }))).toBe('estimate changed');
  });

  it('is written once when it is sent twice, and not into a closed session', async () => {
    const bench = await started();
    await bench.desk.estimate('cost-1', 'MK', { lines: [link] });
    await bench.desk.estimate('cost-1', 'MK', { lines: [link] });
    expect((await visit(bench, 'cost-1')).entries.filter((e) => e.is === 'estimate')).toHaveLength(1);
    await bench.desk.close('cost-1', 'Martha Keller of the night shift', '');
    expect(await why(bench.desk.estimate('cost-1', 'MK', { lines: [bellows] }))).toBe('session closed');
    const closed = (await visit(bench, 'cost-1')).entries.at(-1);
    expect(closed).toMatchObject({ is: 'closed', signed: 'Martha Keller of the night shift' });
  });

  it('is proposed from the suspects, without prices', async () => {
    const bench = benchDesk();
    await tell(bench, 'cost-2', leakStory.slice(0, 5));
    const [first] = proposedLines((await visit(bench, 'cost-2')).standing);
    expect(first).toMatchObject({ words: expect.stringContaining('left: replace the bellows') as string, hands: 75 });
    expect(first?.parts).toEqual([{ name: 'left bellows' }]);
  });

  it("takes the shop's own rate before the sheet's, and has none where neither says", () => {
    expect(rateOf({ v: 1, labour: 95, currency: 'EUR' }, { labour: 118, currency: 'USD' })).toMatchObject({
      rate: 95,
      currency: 'EUR',
    });
    expect(rateOf({ v: 1 }, { labour: 118, currency: 'USD' })).toMatchObject({ rate: 118, from: 'the coach sheet' });
    expect(rateOf({ v: 1 }, undefined).rate).toBeNull();
  });
});

it('proposes one line for two faults that one repair mends, for the reason of both', async () => {
  const bench = benchDesk();
  await tell(bench, 'cost-2', ['sags overnight on the left', 'soaped left crimp, bubbles']);
  const lines = proposedLines((await visit(bench, 'cost-2')).standing);
  expect(lines.length).toBeGreaterThan(0);
  expect(new Set(lines.map((l) => l.words)).size).toBe(lines.length);
  const bellows = lines.find((l) => l.words.includes('bellows'));
  expect(bellows?.why).toMatch(/left bellows leaks.*; left bellows is perished/);
});
