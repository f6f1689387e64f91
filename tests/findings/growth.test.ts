/** What judging a height costs in a long session. A tank watched for 300 notes costs more: its knee is sought in all. */
import { expect, test } from 'vitest';
import { judge } from '../../server/findings/judge.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { readFileSync } from 'node:fs';
import { fold } from '../../server/session/fold.ts';
import { type LooseFact, SessionMaker, condition, psi, said } from '../session/entries.ts';

const { sheet } = loadSheet(
  readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8'),
  'juniper-38',
);
const height = (mm: number): LooseFact =>
  ({
    is: 'reading',
    what: said('height'),
    amount: said({ si: mm / 1000, pm: 0.001, unit: 'mm', text: `${mm} mm` }),
    where: 'left rear',
  }) as unknown as LooseFact;

/** ms of the fastest of many judgements of the last note of a session of so many. */
const costAt = (notes: number): number => {
  const s = new SessionMaker();
  for (let n = 0; n < notes; n += 1)
    s.note(
      `note ${n}`,
      n % 3 === 0 ? [condition('panel shut', true)] : n % 3 === 1 ? [psi(110 - n / 10)] : [height(340 - n / 10)],
    );
  s.note('last', [height(300)]);
  const standing = fold(s.entries);
  const fresh = standing.facts.slice(-1).map((h) => h.fact);
  let best = Infinity;
  for (let i = 0; i < 40; i += 1) {
    const from = performance.now();
    const found = judge(fresh, standing, sheet);
    best = Math.min(best, performance.now() - from);
    expect(found.length).toBeGreaterThan(0);
  }
  return best;
};

test('judging a height stays under 1.5 ms from the 10th to the 300th', () => {
  costAt(50);
  expect(costAt(10)).toBeLessThan(1.5);
  expect(costAt(300)).toBeLessThan(1.5);
});
