/** The teaching answers, asked in the middle of a session: they answer what was asked, of the part that was meant. */
import { describe, expect, test } from 'vitest';
import { typingOn, words, type Typing } from './session.ts';

const session = async (...notes: string[]): Promise<Typing> => {
  const t = await typingOn();
  for (const note of notes) await t.type(note, 10);
  return t;
};
const leaking = (): Promise<Typing> =>
  session(
    'left rear sags overnight, comes up when driven',
    'settled, LOCK, key off: tank 112, lr 13 3/4 rr 13 3/4',
    'panel shut, left rear drops, tank holds',
  );

describe('teaching answers', () => {
  test('"why not" says of one that stands beside the leading one that it is not ruled out', async () => {
    const t = await leaking();
    expect(words(await t.ask('why not the left bellows'))).toMatch(/not ruled out|suspect first/);
  });
  test('"why not" of a part that both sides have speaks of the side that is suspected', async () => {
    const t = await leaking();
    expect(words(await t.ask('why not the link'))).toContain('left link');
  });
  test('"why not the check valve" tells of both that have the name', async () => {
    const answer = words(await (await leaking()).ask('why not the check valve'));
    expect(answer).toContain('check valve after the pump');
    expect(answer).toContain('inlet check');
  });
  test('"why not" names what tells it from the leading one', async () => {
    const t = await session('pump wont run, tank 40', 'fuse good', 'relay coil 12.2 V, relay output 0 V');
    const answer = words(await t.ask('why not the switch'));
    expect(answer).toMatch(/12.2 V at relay coil, 0 V at relay output: speaks (very )?(strongly|clearly) against it/);
  });
  test('"what if" puts the supposition in the place of what was seen', async () => {
    const t = await leaking();
    const now = (await t.standing()).suspects;
    const answer = words(await t.ask('what if the left had held in LOCK'));
    expect(answer).toContain('Supposed only');
    expect(answer).toMatch(/height valve|valve and panel/);
    expect((await t.standing()).suspects).toEqual(now);
  });
  test('"what would change your mind" names answers after which another would lead', async () => {
    const t = await leaking();
    const answer = words(await t.ask('what would change your mind'));
    expect(answer).toMatch(/Another would lead after/);
    expect(answer).toMatch(/then left (line|bellows|height valve)/);
    expect(answer).not.toEqual(words(await t.ask('how sure')));
  });
  test('"how sure" names who stands next to it; after a repair, what is mended and what is not proved', async () => {
    const t = await leaking();
    expect(words(await t.ask('how sure'))).toContain('Next to it: ');
    await t.type('bubbles at left bag crimp');
    await t.type('replaced left bellows');
    const answer = words(await t.ask('how sure are you'));
    expect(answer).toMatch(/it is mended: left bellows/);
    expect(answer).toContain('Not proved yet');
  });
  test('"what killed it" names what usually brings it on, before and after the repair', async () => {
    const t = await session('pump wont run, tank 40', 'fuse good', 'relay coil 12.2 V, relay output 0 V');
    expect(words(await t.ask('what killed it'))).toContain('usually');
    await t.type('replaced the relay');
    expect(words(await t.ask('what killed it'))).toMatch(/What brought it on\?/);
  });
});
