/**
 * Counts, over coaches and sizes drawn by seed, how often each check shows each outcome under each ailment. Left and right
 * are drawn alike, so every draw also counts for its mirror image. Pure: the script writes, evidence.ts reads.
 */
import type { Sheet } from '../sheet/schema.ts';
import { type Ailment, ailments } from './ailments.ts';
import { makeCoach } from './coach.ts';
import { airObservables } from './observables.ts';
import { observeAll } from './observe.ts';
import { makeRng, seedOf } from './rng.ts';
import { type Ail, drawSize, kindOf } from './sizes.ts';

export type Cause = Ailment | 'none';
/** Per check the count of each of its outcomes, in their order, then of checks that decided nothing. */
export type Counts = Record<string, number[]>;

const needsPanel: readonly string[] = ['panel leaks through', 'panel left shut', 'panel left empty'];

/** Ailments whose rows are simulated; right-hand ones are mirrored from the left. */
export const causesFor = (hasPanel: boolean): readonly Cause[] => [
  'none',
  ...ailments.filter((a) => !a.startsWith('right ') && (hasPanel || !needsPanel.includes(a))),
];

const other = (words: string): string =>
  words.startsWith('left') ? `right${words.slice(4)}` : words.startsWith('right') ? `left${words.slice(5)}` : words;
/** Outcomes that name a side change over with it ("left light", "right"). */
export const mirror = (see: string, outcome: string): [see: string, outcome: string] => [other(see), other(outcome)];

export type Counted = { own: Counts; mirrored: Counts; sample: string };

export const emptyCounts = (): Counts =>
  Object.fromEntries(airObservables.map((o) => [o.see, o.outcomes.map(() => 0).concat(0)]));

const add = (counts: Counts, see: string, outcome: string | null): void => {
  const row = airObservables.find((o) => o.see === see);
  const into = counts[see];
  if (!row || !into) return;
  const index = outcome === null ? row.outcomes.length : row.outcomes.indexOf(outcome);
  into[index] = (into[index] ?? 0) + 1;
};

/** One coach of `sheets` with `cause`; the same seed, cause and number give the same coach. */
export const drawOne = (
  sheets: readonly Sheet[],
  hasPanel: boolean,
  cause: Cause,
  seed: number,
  n: number,
): { seen: ReadonlyMap<string, string | null>; ails: readonly Ail[] } => {
  const rng = makeRng(seedOf(seed, hasPanel ? 'panel' : 'none', cause, n));
  const sheet = sheets[n % sheets.length]!;
  const protection = cause === 'protection valve stuck' || rng.chance(sheet.supply?.protection ? 0.7 : 0.25);
  const p = makeCoach(sheet, { seed: seedOf(seed, cause, n, hasPanel ? 'p' : 'q'), panel: hasPanel, protection });
  const ails: Ail[] = cause === 'none' ? [] : [{ ailment: cause, size: drawSize(cause, rng) }];
  return { seen: observeAll(p, ails, rng), ails };
};

/** Counts for one cause from draws `from` to `to`. For a sided cause the mirror is kept by the caller's key. */
export const countCause = (
  sheets: readonly Sheet[],
  hasPanel: boolean,
  cause: Cause,
  seed: number,
  draws: number,
): Counted => {
  const own = emptyCounts();
  const mirrored = emptyCounts();
  let sample = '';
  for (let n = 0; n < draws; n++) {
    const { seen } = drawOne(sheets, hasPanel, cause, seed, n);
    if (n === 0) sample = sampleOf(seen);
    for (const [see, outcome] of seen) {
      add(own, see, outcome);
      const [otherSee, otherOutcome] = mirror(see, outcome ?? '');
      add(mirrored, otherSee, outcome === null ? null : otherOutcome);
    }
  }
  return { own, mirrored, sample };
};

/** What the first coach of a cause showed, a digit a check in their order: kept so that a test can make it again. */
export const sampleOf = (seen: ReadonlyMap<string, string | null>): string =>
  airObservables.map((o) => (seen.get(o.see) === null ? '-' : o.outcomes.indexOf(seen.get(o.see) ?? ''))).join('');

/** Puts what one cause gave under its name, and under its mirror's; single causes hold both. */
export const spreadCounts = (
  into: Record<string, Counts>,
  cause: Cause,
  { own, mirrored }: Pick<Counted, 'own' | 'mirrored'>,
): void => {
  if (cause === 'none' || kindOf(cause).side === null) {
    into[cause] = Object.fromEntries(
      Object.entries(own).map(([see, row]) => [see, row.map((c, i) => c + (mirrored[see]?.[i] ?? 0))]),
    );
    return;
  }
  into[cause] = own;
  into[other(cause)] = mirrored;
};
