import { describe, expect, it } from 'vitest';
import { markOf } from '../../server/log/mark.ts';
import { plainPlace } from '../../server/report/plain-parts.ts';
import { benchDesk, leakStory, reportOf, tell } from './told.ts';

const said = (items: readonly { words: string }[]): string[] => items.map((i) => i.words);
const after = async (...notes: string[]) => {
  const bench = benchDesk();
  await tell(bench, 'report-1', notes);
  return reportOf(bench, 'report-1');
};

it('a thing keeps the name that it has in replies, with a word beside it at most', () => {
  for (const place of [
    'tank',
    'pump',
    'left bellows',
    'right height valve',
    'left link',
    'panel',
    'left bellows crimp',
  ]) {
    const name = place.replace(/^(?:left|right) /, '').split(' ')[0] ?? '';
    expect(plainPlace(place)).toContain(name);
    expect(plainPlace(place)).not.toMatch(/spring|compressor/);
  }
});

describe("the owner's report", () => {
  it('tells complaint, what was found, done and left, in plain words', async () => {
    const report = await after(...leakStory);
    expect(report.complaint?.words).toBe('sags overnight, fine when driving');
    expect(said(report.found)).toContain('2 1/4 in low left rear (11 1/2 in)');
    expect(said(report.found)).toContain('Left bellows (crimped ring): bubbles');
    expect(said(report.done)).toEqual(['Replaced the left bellows', 'Drained the air tank']);
    expect(report.declined).toMatchObject([{ words: 'Replace the right bellows', more: 'not done' }]);
    expect(report.cause?.words).toContain('Left bellows leaks');
  });

  it('sets the reading before the repair beside the one after it, with limit and source', async () => {
    const report = await after(...leakStory);
    expect(report.compared.find((c) => c.key === 'height@left rear')).toMatchObject({
      before: { text: '11 1/2 in', verdict: 'low' },
      after: { text: '13 3/4 in', verdict: 'within' },
      limit: '13 1/2 in to 14 in',
      source: 'sheet: heights.leftRear',
      drawing: { pins: [{ label: 'before' }, { label: 'after' }] },
    });
  });

  it('does not name what was in order among what was found, and says what work was declined', async () => {
    const report = await after(...leakStory, 'road test ok', 'declined right bag');
    expect(said(report.found).join('; ')).not.toMatch(/: ok\b/);
    expect(report.declined.at(-1)).toMatchObject({ words: 'Work on the right bellows', more: 'declined' });
  });

  it('never shows a figure that was taken back', async () => {
    const report = await after('leans left', 'LR 11 1/2', 'undo', 'LR 12');
    expect(JSON.stringify(report)).not.toContain('11 1/2');
    expect(JSON.stringify(report)).toContain('12 in');
  });

  it('leaves a coach that was measured once without an "after"', async () => {
    const report = await after('leans left', 'LR 12 1/2');
    const height = report.compared.find((c) => c.key === 'height@left rear');
    expect(height?.before?.text).toBe('12 1/2 in');
    expect(height?.after).toBeNull();
  });

  it('gives the digest over its entries, and another one for one more note', async () => {
    const bench = benchDesk();
    await tell(bench, 'report-1', ['tank 95 psi']);
    const first = await reportOf(bench, 'report-1');
    expect(first.mark).toBe(markOf(await bench.desk.read('report-1')));
    expect(first.mark).toBe(await bench.log.mark('report-1'));
    await bench.desk.note('report-1', { id: 'one-more', text: 'tank 94', at: bench.clock.at, seen: 3, by: 'MK' });
    expect((await reportOf(bench, 'report-1')).mark).not.toBe(first.mark);
  });

  it('names an unanswered gate among the cautions, an answered one not', async () => {
    expect(said((await after('going under to look')).cautions).join()).toContain('stands');
    expect(
      (await after('going under to look', 'on stands')).cautions.filter((c) => c.words.includes('stands')),
    ).toEqual([]);
  });
});

describe('not safe to move', () => {
  it.each([
    ['cord that shows', ['left bellows cords showing'], 'cord shows'],
    ['cord that shows, work on the other side', ['left bellows cords showing', 'replaced right bellows'], 'cord shows'],
    ['a pump that does not stop', ['pump wont shut off'], 'does not stop'],
    ['a bellows that is flat', ['left bellows flat'], 'it is flat'],
  ])('%s', async (_, notes, words) => {
    expect(said((await after(...notes)).notSafe).join()).toContain(words);
  });

  it.each([
    ['work on that very part', ['left bellows cords showing', 'replaced left bellows']],
    ['the word taken back', ['left bellows cords showing', 'undo']],
    ['a height in its limits later', ['left rear flat', 'LR 13 3/4']],
  ])('falls by %s', async (_, notes) => {
    const { notSafe } = await after(...notes);
    expect(notSafe.filter((n) => n.by === 'MK')).toEqual([]);
  });
});

describe('the word it begins with', () => {
  it.each([
    ['nothing mended', ['sags overnight', 'LR 12 1/2'], 'not mended'],
    ['a danger that stands', ['sags overnight', 'left bellows cords showing'], 'not safe'],
    ['a question of safety not answered', ['sags overnight', 'going under to look'], 'open'],
    ['mended and nothing shown since', leakStory, 'not proved'],
    [
      'an overnight complaint proved overnight',
      [
        ...leakStory,
        'left overnight in auto, both rear level after overnight',
        'LR 13 3/4 RR 13 3/4',
        'road tested, no bounce, LR 13 3/4 RR 13 3/4',
      ],
      'proved',
    ],
  ] as const)('%s', async (_, notes, is) => {
    expect((await after(...notes)).word.is).toBe(is);
  });

  it('says what is still to be shown, and clears nothing', async () => {
    const { word } = await after(...leakStory);
    expect(word.more).toMatch(/^Still to be shown: Leave it overnight in AUTO/);
  });
});

it('how sure it is of a cause is also said of the part as a whole', async () => {
  const { cause } = await after('sags overnight on the left', 'soaped left crimp, bubbles', 'replaced left bellows');
  expect(cause?.more).toMatch(/^how sure: .+; that it is the left bellows in one way or another: .+/);
});
