/** The work of looking for a knee, counted in looks at a reading's pressure. */
import { expect, it } from 'vitest';
import { atmosphereAt } from '../../server/core/air.ts';
import type { TankReading } from '../../server/core/decay.ts';
import { kneeOf } from '../../server/core/fall-shape.ts';
import { si } from '../../server/core/quantity.ts';

const looksFor = (n: number): number => {
  let looks = 0;
  const readings = Array.from({ length: n }, (_, i): TankReading => ({
    t: i * 10,
    get p() {
      looks += 1;
      return si<never>(700_000 - (200_000 * i) / n);
    },
    sd: 2000,
    tSd: 3,
  }));
  kneeOf(readings, atmosphereAt(si(0)));
  return looks;
};

it('looks at most twice and a half as often where the readings are twice as many', () => {
  expect(looksFor(800) / looksFor(400)).toBeLessThan(2.5);
});
