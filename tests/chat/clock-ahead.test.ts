/** Clock times that lie ahead of the note, typed on a coach whose wall clock stands at 9:46. */
import { describe, expect, test } from 'vitest';
import { block, typingOn, words } from './session.ts';

describe('a shop clock a quarter of an hour fast', () => {
  test('leaves the leak what it is: two notes off it are ten minutes apart, not a day', async () => {
    const bench = await typingOn();
    await bench.type('ROAD, key off, tank 112 at 10:01');
    const told = words(await bench.type('tank 104 at 10:11', 12));
    expect(told).toMatch(/tank loses 0\.8 psi\/min/);
    expect(told).not.toMatch(/holds/);
  });
  test('is shown as taken, and a tap makes the reading yesterday’s', async () => {
    const bench = await typingOn();
    const took = block(await bench.type('tank 112 at 10:01'), 'took')!.list[0]!;
    expect(took).toMatchObject({ words: 'tank 112 psi at 10:01, that clock taken as 15 min fast', from: 'assumed' });
    await bench.type(took.mends[0]!.text);
    const facts = (await bench.standing()).facts.map((h) => h.fact);
    expect(facts.map((f) => new Date(f.at).toISOString())).toEqual(['2026-10-05T16:01:00.000Z']);
  });
});

test('a night’s reading typed in the morning is last night’s, and says so', async () => {
  const bench = await typingOn('larkfield-11');
  const blocks = await bench.type('key off, tank 780 at 21:46, 700 at 9:46');
  expect(words(blocks)).toMatch(/tank 780 kPa at 21:46, taken as yesterday's/);
  expect(words(blocks)).toMatch(/tank loses 0\.11 kPa\/min/);
});
