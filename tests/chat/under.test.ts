/** What the page says about going under: never more than was typed. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { boardOf } from '../../server/chat/board.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { typingOn } from './session.ts';

const sheet = loadSheet(
  readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8'),
  'juniper-38',
).sheet;
const underAfter = async (...notes: string[]) => {
  const bench = await typingOn();
  for (const note of notes) await bench.type(note);
  const { under } = boardOf(await bench.standing(), sheet, 0);
  return { ...under, is: Object.fromEntries(under.list.map((l) => [l.what, l.is])) };
};

describe('under the coach', () => {
  test('nothing said holds nobody up', async () => {
    const { held, words, list } = await underAfter('sags overnight');
    expect(held).toBe(false);
    expect(words).toBe('Nobody under: what holds the frame was not said.');
    expect(list.map((l) => l.is)).toEqual(['unknown', 'unknown', 'unknown', 'unknown', 'unknown', 'unknown']);
  });
  test.each(['on jacks', 'not on stands'])('%s: nobody under', async (note) => {
    expect(await underAfter(note)).toMatchObject({ held: false, short: 'nobody under' });
  });
  test('stands hold the frame, and the air in it stays said', async () => {
    const { held, short, is } = await underAfter('on stands, wheels chocked');
    expect({ held, short }).toEqual({ held: true, short: 'on stands, air in' });
    expect(is).toMatchObject({ 'on stands': 'yes', 'wheels chocked': 'yes', 'tank drained': 'unknown' });
  });
  test('a pit is for looking', async () => {
    expect(await underAfter('over pit')).toMatchObject({ held: true, short: 'look only' });
  });
  test('stands, power cut and all air out, and who said it', async () => {
    const { short, list } = await underAfter('on stands', 'pump power cut', 'tank drained', 'bellows vented');
    expect(short).toBe('on stands, air out');
    expect(list.find((l) => l.what === 'bellows vented')).toMatchObject({ is: 'yes', by: 'KD' });
  });
  test('a gauge that shows air again takes it back', async () => {
    const { short, is } = await underAfter(
      'on stands',
      'pump power cut',
      'tank drained',
      'bellows vented',
      'tank 60 psi',
    );
    expect(short).toBe('on stands, air in');
    expect(is['tank drained']).toBe('unknown');
  });
});
