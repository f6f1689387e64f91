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
