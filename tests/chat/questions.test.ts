/** Questions a tech asks in his own words, answered from what stands. */
import { expect, test } from 'vitest';
import { typingOn, words } from './session.ts';

test('"what killed it" after a repair names what usually brings that fault on', async () => {
  const typing = await typingOn();
  for (const note of [
    'sags overnight, left rear low in the morning',
    'panel shut, left rear drops, right rear holds',
    'bubbles at left bag crimp',
    'replaced left bellows',
  ])
    await typing.type(note);
  const answer = words(await typing.type('what killed it'));
  expect(answer).toContain('What brought it on?');
  expect(answer).toContain('What else may it have done?');
});

test('"what killed it" before a repair speaks of the leading suspect; with no suspect it is no work and no fact', async () => {
  const typing = await typingOn();
  await typing.type('what killed it');
  expect((await typing.standing()).facts).toEqual([]);
  await typing.type('bubbles at left bag crimp');
  expect(words(await typing.type('what killed it'))).toContain('If it is left bellows');
});

test('"what would change your mind" is a question, not a replaced part', async () => {
  const typing = await typingOn();
  await typing.type('left rear low every morning');
  const answer = words(await typing.type('what would change your mind'));
  expect(answer).toContain('Another would lead after');
  expect((await typing.standing()).facts.every((f) => f.fact.is !== 'work')).toBe(true);
});

test('"bench test the valve" opens the guide of the bench', async () => {
  const typing = await typingOn();
  const blocks = await typing.type('bench test the valve');
  expect(blocks.find((b) => b.is === 'step')).toMatchObject({ title: expect.stringMatching(/bench/i) as string });
});

test('a part that stands on both sides is asked which; the side alone answers, and speaks', async () => {
  const typing = await typingOn();
  await typing.type('left side low');
  const asked = await typing.type('bubbles at the bottom bead of the bag');
  expect(asked.find((b) => b.is === 'question')).toMatchObject({
    id: 'which side',
    words: 'The bellows crimp: left or right?',
    keys: [
      { label: 'left', text: 'left bellows crimp bubbles' },
      { label: 'right', text: 'right bellows crimp bubbles' },
    ],
  });
  const told = await typing.type('left');
  expect(told.some((b) => b.is === 'question' && b.id === 'which side')).toBe(false);
  expect(words(told)).toMatch(/left bellows leaks[^;]*: (?:1 in 2|2 in 3|3 in 4|9 in 10)/);
});

test('a side that was said is not asked for, nor one of what was only thought or is in order', async () => {
  const typing = await typingOn();
  for (const note of ['bubbles at left bag crimp', 'think its the bag', 'bag looks ok', 'no bubbles at the bag crimp'])
    expect((await typing.type(note)).some((b) => b.is === 'question' && b.id === 'which side')).toBe(false);
});

test('what brought it on is asked once', async () => {
  const typing = await typingOn();
  for (const note of ['left rear sags overnight', 'panel shut, left drops, right holds', 'bubbles at left bag crimp'])
    await typing.type(note);
  const root = (blocks: Awaited<ReturnType<typeof typing.type>>): boolean =>
    blocks.some((b) => b.is === 'question' && b.id.startsWith('root '));
  expect(root(await typing.type('replaced left bellows'))).toBe(true);
  expect(root(await typing.type('soaped the left bag, no bubbles'))).toBe(false);
});

test('"pump never stops" asks for its power at once; a tank that is read below cut-out lets that go, and says a leak', async () => {
  const typing = await typingOn();
  const first = await typing.type('pump never stops running');
  expect(first[0]).toMatchObject({ is: 'caution', id: 'over-pressure' });
  const read = await typing.type('tank sits at 105');
  expect(read.some((b) => b.is === 'caution')).toBe(false);
  expect((await typing.standing()).pending).toEqual([]);
  expect(words(read)).toMatch(/leaks/);
});

test('above its cut-out it is not let go', async () => {
  const typing = await typingOn();
  await typing.type('pump never stops running');
  expect((await typing.type('tank 124')).some((b) => b.is === 'caution' && b.gate)).toBe(true);
  expect((await typing.standing()).pending).toMatchObject([{ what: 'pump power cut' }]);
});

test('a stop that keeps people out from under is not let go by a reading', async () => {
  const typing = await typingOn();
  await typing.type('gonna get under it, on the jack only');
  expect((await typing.type('tank 105')).some((b) => b.is === 'caution' && b.gate)).toBe(true);
});
