/** "Nothing wrong" beside a list of all sets written out: what explains nothing counts together, and less. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { innocence } from '../../server/faults/hypotheses.ts';
import { infer, leastLift, unknownOdds } from '../../server/faults/infer.ts';
import type { Seen } from '../../server/faults/seen.ts';
import type { Weighed } from '../../server/faults/weigh.ts';

const n = 4;
const chance = fc.double({ min: 0.02, max: 0.98, noNaN: true });
/** Yes or no, nominal: with two faults each has its say by how far it strays. */
const seenArb = fc
  .record({ healthy: chance, rows: fc.array(chance, { minLength: n, maxLength: n }) })
  .map(({ healthy, rows }): Seen => ({
    ordered: false,
    width: 2,
    from: 1,
    to: 1,
    weight: 1,
    healthy: [1 - healthy, healthy],
    rows: rows.flatMap((p) => [1 - p, p]),
    strays: rows.map((p) => Math.abs(p - healthy)),
  }));

test('the same as adding up all sets by hand, for any observations', () => {
  fc.assert(
    fc.property(fc.array(seenArb, { minLength: 1, maxLength: 4 }), chance, (seen, noReason) => {
      const odds = Float64Array.from({ length: n }, (_, i) => 0.01 * (i + 1));
      const causes = { odds, links: new Float64Array(n * n).fill(1) };
      const posterior = infer(causes, seen, { triples: false, noReason });
      const of = (set: readonly number[]): number =>
        seen.reduce(
          (p, s) => {
            if (set.length === 0) return p * s.healthy[1]!;
            const says = set.map((c) => s.strays[c]! + 1e-6);
            const sum = set.reduce((x, c, k) => x + says[k]! * s.rows[2 * c + 1]!, 0);
            return (p * sum) / says.reduce((a, b) => a + b, 0);
          },
          set.reduce((p, c) => p * odds[c]!, 1),
        );
      const all = [...Array(n).keys()];
      const idle = all.filter((c) => of([c]) < leastLift * of([]) * odds[c]!);
      const sets = [[], ...all.map((c) => [c]), ...all.flatMap((a) => all.filter((b) => b > a).map((b) => [a, b]))];
      const unknown = unknownOdds * 0.5 ** seen.length;
      let nothing = 0;
      let total = unknown;
      for (const set of sets) {
        const counts = set.every((c) => idle.includes(c));
        const mass = of(set) * (counts ? noReason : 1);
        if (counts) nothing += mass;
        total += mass;
      }
      expect(innocence({ posterior, causes } as unknown as Weighed)).toBeCloseTo(nothing / total, 9);
      expect(posterior.unknown).toBeCloseTo(unknown / total, 9);
    }),
  );
});
