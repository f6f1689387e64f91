/** Two short notes written as one read as both: over a stop, a comma, an "and", and where nobody set them apart. */
import { describe, expect, test } from 'vitest';
import { differences, fixtureFiles, fixturesOf, readFixture, right, type Fixture } from './fixture.ts';

/** What hangs on nothing before it and colours nothing after it. */
const plain = (f: Fixture): boolean =>
  !(f.before ?? f.open ?? f.units ?? f.traffic ?? f.asks ?? f.amends ?? f.hazards ?? f.ambiguous) &&
  (f.unread ?? []).length === 0 &&
  [1, 2].includes(f.facts?.length ?? 0) &&
  f.note.length < 60 &&
  !/\n|[.?!;]$/.test(f.note) &&
  !/ when |standing|told|hunch|driving/.test(f.facts!.join(' '));

const notes = fixtureFiles()
  .filter((f) => f !== 'known-failures.jsonl' && f !== 'breath.jsonl')
  .flatMap(fixturesOf)
  .filter(plain);

/** Each note with three others, spread over the list: the same pairs in every run. */
const pairs = notes.flatMap((a, i) =>
  [101, 211].map((step): readonly [Fixture, Fixture] => [a, notes[(i * 7 + step) % notes.length]!]),
);

const share = (between: string): number => {
  const both = pairs.filter(([a, b]) => a !== b);
  const same = both.filter(([a, b]) => {
    const f = { note: a.note + between + b.note, facts: [...a.facts!, ...b.facts!] };
    return right(differences(f, readFixture(f)));
  });
  return same.length / both.length;
};

describe('two notes read as both', () => {
  // not all can: "rr 13 1/4, link bent" says whose link, and some pairs mean another thing together
  test.each([
    ['over a stop', '. ', 0.96],
    ['over a comma', ', ', 0.95],
    ['joined by "and"', ' and ', 0.94],
    ['with nothing between', ' ', 0.82],
  ])('%s', (_name, between, least) => {
    expect(pairs.length).toBeGreaterThan(1500);
    expect(share(between)).toBeGreaterThan(least);
  });
});
