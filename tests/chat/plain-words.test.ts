import { describe, expect, it } from 'vitest';
import { block, typingOn, words } from './session.ts';

describe('an answer in the words of the bench', () => {
  it('says a run of 330 s in minutes, and its limit too', async () => {
    const found = block(await (await typingOn()).type('pump ran 330 s'), 'findings')?.list[0];
    expect(found?.words).toContain('pump ran 5 1/2 min');
    expect(found?.amount?.text).toBe('5 1/2 min');
    expect(found?.limit?.high?.text).toBe('20 min');
  });
  it('keeps odd seconds, and short times in seconds', async () => {
    const t = await typingOn();
    expect(block(await t.type('pump ran 337 s'), 'findings')?.list[0]?.words).toContain('5 min 37 s');
    expect(block(await t.type('pump ran 90 s'), 'findings')?.list[0]?.words).toContain('90 s');
  });
  it('turns the front adjuster by quarters, not by hundredths', async () => {
    const said = words(await (await typingOn()).type('heights LF 14 1/2, RF 14 1/4, LR 13, RR 13 3/4'));
    expect(said).toContain('about 5 1/4 turns of the adjuster up');
    expect(said).not.toContain('5.33');
  });
  it('explains the newest finding when nothing is suspected yet', async () => {
    const t = await typingOn();
    await t.type('tank 118 psi at 8:00, 112 at 8:10, key off, panel empty');
    for (const question of ['why', 'what does that mean']) {
      const blocks = await t.ask(question);
      expect(block(blocks, 'teach')?.why?.formula).toBeTruthy();
      expect(words(blocks)).toContain('loses 0.6 psi/min');
    }
  });
  it('answers what is due and what a full water tank does, though no number was said', async () => {
    const t = await typingOn();
    expect(words(await t.ask('what is due'))).toContain('every 30 d');
    expect(words(await t.ask('what does a full water tank do'))).toMatch(/it weighs \d+ lb/);
  });
});

it('names two faults that stand together as two sentences joined, not one with another inside', async () => {
  const blocks = await (await typingOn()).type('heights LF 14 1/2, RF 14 1/4, LR 13, RR 13 3/4');
  const why = block(blocks, 'check')?.why ?? '';
  expect(why).toContain('It tells');
  expect(why).not.toMatch(/leaks with the/);
});
