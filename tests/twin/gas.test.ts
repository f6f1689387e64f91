/** Flow through openings against ISO 6358 and the handbook table of air through round holes. */
import { describe, expect, test } from 'vitest';
import {
  conductanceOfHole,
  dm3PerSecondBar,
  flowShare,
  idealCriticalRatio,
  inSeries,
  massFlow,
  referenceDensity,
} from '../../server/twin/gas.ts';
import { hole } from '../../server/twin/coach.ts';
import { inch, psi } from './coaches.ts';

const bar = 1e5;

describe('ISO 6358 examples (formula as printed in the documentation of ISO 6358 blocks of two simulation packages)', () => {
  test.each([
    [1, 0.3, 7, 1, 7.0],
    [1, 0.3, 7, 6, 4.23783],
    [2, 0.25, 7.013, 6.013, 8.22765],
    [0.5, 0.5, 8, 7, 2.64575],
  ])('C %d dm3/(s bar), b %d, %d to %d bar absolute passes %d L/s of reference air', (c, b, up, down, litres) => {
    const kg = massFlow(c * dm3PerSecondBar, b, up * bar, 293.15, down * bar);
    expect((kg / referenceDensity) * 1000).toBeCloseTo(litres, 4);
  });
  test('an ideal hole has 0.1992 dm3/(s bar) for a square millimetre', () => {
    expect(conductanceOfHole(1e-6) / dm3PerSecondBar).toBeCloseTo(0.199195, 3);
  });
  test('the critical ratio of air is 0.528282 (fluids, P_critical_flow)', () => {
    expect(idealCriticalRatio).toBeCloseTo(0.5282818, 6);
  });
  test('choked at 80 psig up to 35.3 psig downstream ("Choked flow of gases" tutorial: 94.7 x 0.528 - 14.7)', () => {
    const b = idealCriticalRatio;
    const at = (down: number): number => massFlow(1e-8, b, 94.7 * psi, 294, (down + 14.7) * psi);
    expect(at(35.2)).toBe(at(0));
    expect(at(36.5)).toBeLessThan(at(0));
  });
});

/** "Discharge of air through an orifice", handbook table, 100 % coefficient, cfm of free air at 14.7 psia and 70 F. */
const table: readonly (readonly [sixtyFourths: number, gauge: number, cfm: number])[] = [
  [1, 15, 0.105],
  [1, 60, 0.264],
  [1, 100, 0.406],
  [1, 125, 0.494],
  [2, 15, 0.42],
  [2, 60, 1.06],
  [2, 80, 1.34],
  [2, 100, 1.62],
  [4, 15, 1.68],
  [4, 60, 4.23],
  [4, 70, 4.79],
  [4, 90, 5.92],
  [4, 125, 7.9],
  [8, 15, 6.72],
  [8, 80, 21.4],
  [8, 100, 26.0],
  [16, 15, 26.9],
  [16, 60, 67.6],
  [16, 100, 104],
  [16, 125, 126],
  [24, 70, 173],
  [24, 100, 234],
  [24, 125, 284],
  // Below 13.13 psig the flow is subsonic.
  [16, 1, 7.18],
  [16, 2, 10.1],
  [16, 3, 12.4],
  [16, 5, 15.9],
  [16, 7, 18.7],
  [16, 12, 24.3],
  [2, 5, 0.248],
  [24, 5, 35.7],
];
const freeCfm = (sixtyFourths: number, gauge: number): number => {
  const t = 294.261;
  const kg = massFlow(hole((sixtyFourths / 64) * inch, 1), idealCriticalRatio, (gauge + 14.7) * psi, t, 14.7 * psi);
  return ((kg * 287.05 * t) / (14.7 * psi) / (12 * inch) ** 3) * 60;
};

describe('handbook table of air through round holes', () => {
  test.each(table.filter(([, gauge]) => gauge > 13.2))('%d/64 in at %d psig passes %d cfm, choked', (d, gauge, cfm) => {
    expect(Math.abs(freeCfm(d, gauge) / cfm - 1)).toBeLessThan(0.012);
  });
  // The ellipse of ISO 6358 stands for the nozzle law here, so it is given more room.
  test.each(table.filter(([, gauge]) => gauge < 13.2))(
    '%d/64 in at %d psig passes %d cfm, subsonic',
    (d, gauge, cfm) => {
      expect(Math.abs(freeCfm(d, gauge) / cfm - 1)).toBeLessThan(0.03);
    },
  );
});

test('flow falls without a step from choked to none, and never turns', () => {
  const shares = Array.from({ length: 2001 }, (_, i) => flowShare(i / 2000, 0.4));
  const drops = shares.slice(1).map((share, i) => shares[i]! - share);
  expect(Math.min(...drops)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...drops)).toBeLessThan(0.01);
  expect(shares.at(-1)).toBe(0);
});

test('two alike in a row pass 1/sqrt 2 of one; nothing passes what is shut', () => {
  expect(inSeries(2e-9, 2e-9)).toBeCloseTo(2e-9 / Math.SQRT2, 15);
  expect(inSeries(2e-9, 0, 1)).toBe(0);
  expect(inSeries(2e-9, Infinity)).toBeCloseTo(2e-9, 15);
});
