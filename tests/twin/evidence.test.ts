/** The compiled table: made by this code, whole, and made again in part. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ailments } from '../../server/twin/ailments.ts';
import { codeHash, evidenceSources } from '../../server/twin/code-hash.ts';
import { causesFor, countCause, drawOne, mirror, sampleOf } from '../../server/twin/compile.ts';
import { EvidenceTable, evidenceTable, likelihood } from '../../server/twin/evidence.ts';
import { airObservables } from '../../server/twin/observables.ts';
import { sheetOf } from './coaches.ts';

const root = new URL('../../', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8');
const sheets = [sheetOf('juniper-38'), sheetOf('larkfield-11')];

const changed = (from: string, to: string): string =>
  codeHash((path) => (path.endsWith('spread.ts') ? read(path).replace(from, to) : read(path)));

test('the table is not stale: its code hash is that of the sources (else: npm run evidence)', () => {
  expect(codeHash(read)).toBe(evidenceTable.code);
});
test('the hash sees a changed number, not a changed comment', () => {
  expect(changed('criticalRatio: row(0.3', 'criticalRatio: row(0.31')).not.toBe(evidenceTable.code);
  expect(changed('// In place of', '//   in  place of')).toBe(evidenceTable.code);
  expect(evidenceSources.length).toBeGreaterThan(20);
});

describe.each([
  [true, 'panel'],
  [false, 'noPanel'],
] as const)('panel %s', (hasPanel, which) => {
  test('the first coach of every third cause shows again what it showed', () => {
    let same = 0;
    let all = 0;
    for (const cause of causesFor(hasPanel).filter((_, i) => i % 3 === 0)) {
      const again = sampleOf(drawOne(sheets, hasPanel, cause, evidenceTable.seed, 0).seen);
      const kept = evidenceTable.samples[which][cause] ?? '';
      expect(kept.length).toBe(airObservables.length);
      for (let i = 0; i < kept.length; i++) if (kept[i] === again[i]) same += 1;
      all += kept.length;
    }
    // Another machine's sine may tip a reading that lies on the edge; more than that is another model.
    expect(same / all).toBeGreaterThan(0.995);
  });
  test('every cause has every check, every row every draw', () => {
    const causes = hasPanel ? evidenceTable.panel : evidenceTable.noPanel;
    for (const cause of ['none', ...ailments] as const) {
      const rows = causes[cause];
      // Only a panel's own faults may be missing, and only where there is no panel.
      if (!rows && !hasPanel && cause.startsWith('panel')) continue;
      for (const o of airObservables) {
        const sum = rows![o.see]!.reduce((a, b) => a + b, 0);
        const one = cause.startsWith('left ') || cause.startsWith('right ');
        expect({ cause, see: o.see, sum }).toEqual({ cause, see: o.see, sum: evidenceTable.draws * (one ? 1 : 2) });
      }
    }
  });
  test('likelihoods are above 0, sum to at most 1, and left is the mirror of right', () => {
    for (const cause of ['none', ...ailments] as const)
      for (const o of airObservables) {
        const sum = o.outcomes.reduce((a, outcome) => a + likelihood(o.see, outcome, cause, hasPanel), 0);
        expect(sum).toBeLessThanOrEqual(1 + 1e-9);
        for (const outcome of o.outcomes) {
          const p = likelihood(o.see, outcome, cause, hasPanel);
          expect(p).toBeGreaterThan(0);
          if (!cause.startsWith('left ')) continue;
          const twin = `right ${cause.slice(5)}` as (typeof ailments)[number];
          const [see, other] = mirror(o.see, outcome);
          expect(likelihood(see, other, twin, hasPanel)).toBe(p);
        }
      }
  });
});

test('one cause counted again over its first coaches agrees with the table as a part of it', () => {
  const draws = Math.min(evidenceTable.draws, 10);
  const { own } = countCause(sheets, true, 'left exhaust seat leak', evidenceTable.seed, draws);
  const kept = evidenceTable.panel['left exhaust seat leak']!;
  for (const [see, row] of Object.entries(own))
    for (const [i, count] of row.entries()) expect(count).toBeLessThanOrEqual(kept[see]![i]! + 1);
});

const over = (
  see: string,
  outcome: string,
  a: Parameters<typeof likelihood>[2],
  b: Parameters<typeof likelihood>[2],
): number => likelihood(see, outcome, a, true) / likelihood(see, outcome, b, true);

describe('what the table must say, as the trade says it (common practice, no source)', () => {
  test.each([
    ['left height shut', 'drops', 'left bellows leak', 'left exhaust seat leak'],
    ['left exhaust', 'steady', 'left exhaust seat leak', 'left inlet seat leak'],
    ['left exhaust', 'puffs', 'left inlet seat leak', 'left exhaust seat leak'],
    ['tank fall shut', 'fast', 'tank leak', 'left bellows leak'],
    ['tank fall outlet closed', 'none', 'supply line leak', 'tank leak'],
    ['left soap bellows', 'bubbles', 'left bellows leak', 'left delivery line leak'],
    ['hiss after stop', 'goes on', 'discharge check leak', 'tank leak'],
    ['fall stops', 'bellows pressure, side up', 'left inlet seat leak', 'left bellows leak'],
    ['fall stops', 'zero', 'tank leak', 'left inlet seat leak'],
    ['second gauge', 'coach gauge high', 'gauge high', 'gauge low'],
    ['left rear height', 'far low', 'left link off', 'none'],
    ['pump restart', 'blows fuse', 'unloader stuck', 'none'],
    ['left valve fills', 'wrong way', 'left valve reversed', 'left valve stuck'],
    ['regulated supply', 'low', 'supply line clogged', 'none'],
  ] as const)('%s: %s speaks for %s over %s', (see, outcome, a, b) => {
    expect(over(see, outcome, a, b)).toBeGreaterThan(4);
  });
  test('no bubbles is weak evidence: it takes the bellows leak down by less than thirty times', () => {
    const ratio = over('left soap bellows', 'none', 'none', 'left bellows leak');
    expect(ratio).toBeGreaterThan(2);
    expect(ratio).toBeLessThan(30);
  });
});

test('a table of another shape is refused with its path', () => {
  const read = EvidenceTable.safeParse({ ...evidenceTable, panel: { none: { driving: ['many'] } } });
  expect(read.success).toBe(false);
  expect(JSON.stringify(read.error?.issues[0]?.path)).toContain('panel');
});
test('a check it does not know says nothing', () => {
  expect(likelihood('left vibes', 'good', 'tank leak', true)).toBe(1);
  expect(likelihood('soap tank', 'gold', 'tank leak', true)).toBe(1);
});
