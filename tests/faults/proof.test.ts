/** After a repair the proof that matches the complaint is asked for, taken as it is typed, and ends in an offer to close. */
import { describe, expect, test } from 'vitest';
import { block, typingOn, words } from '../chat/session.ts';

type Case = {
  what: string;
  notes: string[];
  asks: string;
  /** Said, and not what was asked for: it stays open. */
  beside?: string;
  proof: (string | [string, number])[];
};

const cases: Case[] = [
  {
    what: 'a height valve, overnight complaint',
    notes: ['left rear sags overnight', 'bubbles at left exhaust port', 'replaced left height valve'],
    asks: 'overnight',
    beside: 'no bubbles at left exhaust port',
    proof: ['held overnight in auto'],
  },
  {
    what: 'the same, told as "level this morning"',
    notes: ['left rear sags overnight', 'bubbles at left exhaust port', 'replaced left height valve'],
    asks: 'overnight',
    proof: ['level this morning'],
  },
  {
    what: 'the same, told by the tape next morning',
    notes: ['left rear sags overnight', 'bubbles at left exhaust port', 'replaced left height valve'],
    asks: 'overnight',
    proof: [['lr 13 3/4 rr 13 3/4, tank 108', 13 * 60]],
  },
  {
    what: 'bellows with an overnight complaint: the night, then the road',
    notes: ['left rear sags overnight', 'bubbles at left bag crimp', 'left bag cracked', 'replaced left bellows'],
    asks: 'overnight',
    proof: ['held overnight in auto', 'road tested, no bounce, both rear level when driving'],
  },
  {
    what: 'shocks',
    notes: ['bounces', 'left rear shock cold after the drive, leaks oil', 'replaced both rear shocks'],
    asks: 'road test',
    beside: 'both rear level',
    proof: ['road tested, no bounce, both rear level when driving'],
  },
  {
    what: 'a drain that made the pump cycle',
    notes: ['pump short cycles', 'bubbles at the drain', 'replaced the drain valve'],
    asks: 'pump cycles',
    beside: 'no more bubbles',
    proof: ['cycles normal now'],
  },
  {
    what: 'a check valve behind a restart that stalled',
    notes: [
      'pump stalls on restart',
      'hiss at the unloader goes on after the pump stops',
      'replaced discharge check valve',
    ],
    asks: 'restart',
    beside: 'no hiss at the unloader',
    proof: ['restarts fine'],
  },
  {
    what: 'a switch behind a pump that did not run',
    notes: ['pump wont run, tank 40', 'key on: 12.5 V into the pressure switch, 0 V out of it', 'new pressure switch'],
    asks: 'pump call',
    proof: ['pump starts by itself at 88'],
  },
];

describe('proof of a repair', () => {
  test.each(cases.map((c) => [c.what, c] as const))('%s', async (_, c) => {
    const t = await typingOn();
    let last = await t.type(c.notes[0]!);
    for (const note of c.notes.slice(1)) last = await t.type(note, 5);
    expect(block(last, 'check')?.id).toBe(c.asks);
    if (c.beside) last = await t.type(c.beside, 5);
    expect(block(last, 'check')?.id).toBe(c.asks);
    for (const p of c.proof) last = typeof p === 'string' ? await t.type(p, 5) : await t.type(p[0], p[1]);
    const offer = block(last, 'check');
    expect(offer?.id).toBe('close');
    expect(offer?.words).toMatch(/Proved: .*[Bb]efore: .*[Aa]fter: /);
    expect(words(await t.ask('close the session'))).toContain('Proved:');
  });

  test('a night behind a shut panel proves nothing of an overnight complaint', async () => {
    const t = await typingOn();
    for (const note of ['left rear sags overnight', 'bubbles at left exhaust port', 'replaced left height valve'])
      await t.type(note, 5);
    const last = await t.type('held overnight in LOCK', 13 * 60);
    expect(block(last, 'check')?.id).toBe('overnight');
  });

  test('a proof that fails opens the search again', async () => {
    const t = await typingOn();
    for (const note of ['left rear sags overnight', 'bubbles at left exhaust port', 'replaced left height valve'])
      await t.type(note, 5);
    const last = await t.type('left rear down again this morning', 13 * 60);
    expect(block(last, 'check')?.id).not.toBe('close');
    expect(block(last, 'check')?.id).not.toBe('overnight');
  });
});

describe('a night is as long as a night', () => {
  const mended = [
    'sags overnight on the left, fine when driving',
    'soaped the left crimp, bubbles',
    'replaced the left bellows',
  ];
  test.each([
    ['heights taped ten minutes after it was asked for prove none', 10, 'overnight'],
    ['heights taped the next morning do', 14 * 60, 'road test'],
  ] as const)('%s', async (_, minutes, asked) => {
    const t = await typingOn();
    for (const note of mended) await t.type(note);
    const blocks = await t.type('LR 13 3/4 RR 13 3/4', minutes);
    expect(block(blocks, 'check')?.id).toBe(asked);
  });
});
