/** What a learner types, through the reader, to deeds at the practice coach. */
import { expect, test } from 'vitest';
import { read } from '../../intents/read.ts';
import type { Context } from '../../intents/shapes.ts';
import { actionOf } from '../../server/twin/practice-actions.ts';
import { clausesOf, wishOf } from '../../server/twin/practice-words.ts';

const context: Context = {
  note: 'practice-1',
  at: Date.UTC(2026, 10, 25, 15),
  zone: 'America/Denver',
  traffic: 'right',
  pressureUnit: 'psi',
  lengthUnit: 'in',
  labels: { lock: 'panel shut' },
  open: null,
  recent: [],
};
/** "do" and what it is done with, in short. */
const short = (text: string): string | null => {
  const actions = actionOf(read(text, context), text);
  return (
    actions
      ?.map((a) =>
        Object.values(a)
          .map((v) => String(v))
          .join(' '),
      )
      .join('; ') ?? null
  );
};

test.each([
  ['panel shut, wait 30 min, tank and left height', 'panel shut; wait 1800; read tank gauge; read rear height left'],
  ['soap the left crimp', 'soap bellows left'],
  ['soap right bellows and left bellows', 'soap bellows right; soap bellows left'],
  ['soap tank', 'soap tank'],
  ['soap left delivery line', 'soap delivery left'],
  ['panel shut', 'panel shut'],
  ['wait half an hour', 'wait 1800'],
  ['wait 10 hours', 'wait 36000'],
  ['overnight', 'wait 36000'],
  ['tank?', 'read tank gauge'],
  ['check tank', 'read tank gauge'],
  ['whats the tank at', 'read tank gauge'],
  ['left rear height', 'read rear height left'],
  ['heights', 'read rear height'],
  ['four heights', 'read rear height; read front height'],
  ['key on', 'key true'],
  ['key off', 'key false'],
  ['pump up', 'pump up'],
  ['run the pump then key off', 'pump up; key false'],
  ['hose on left exhaust', 'hose left'],
  ['left arm to fill', 'arm fill left'],
  ['link off left', 'arm neutral left'],
  ['drain the tank', 'drain'],
  ['wheels chocked', 'make safe chocks'],
  ['on stands', 'make safe support'],
  ['over the pit', 'make safe support'],
  ['second gauge', 'read second gauge'],
  ['volts at motor', 'read motor volts'],
  ['check battery', 'read battery volts'],
  ['amps', 'read motor current'],
  ['left bellows gauge', 'read bellows gauge left'],
  ['listen at unloader', 'listen'],
  ['look at links', 'look'],
  ['drive it round the block', 'drive'],
  ['close tank outlet', 'outlet true'],
  ['read the tank', 'read tank gauge'],
  ['measure all four corners', 'read rear height; read front height'],
  ['hose from both exhausts', 'hose left; hose right'],
])('"%s"', (text, want) => {
  expect(short(text)).toBe(want);
});

test.each(['thanks', 'why the check valve', 'blarg the fnord', ''])('"%s" asks for nothing at the coach', (text) => {
  expect(short(text)).toBeNull();
});

test('clauses are cut where a person would, and cover the words', () => {
  expect(clausesOf('panel shut, wait 1.5 h and then tank; left height.').map((c) => c.words.trim())).toEqual([
    'panel shut',
    'wait 1.5 h',
    'tank',
    'left height',
  ]);
  expect(wishOf('give it 20 minutes')).toEqual([{ do: 'wait', seconds: 1200 }]);
});
