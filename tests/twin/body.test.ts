/** Static balance of the body against the air-spring law F = p A, k = n p_abs A^2 / V + p dA/dx, recomputed examples. */
import { describe, expect, test } from 'vitest';
import { afflict } from '../../server/twin/afflict.ts';
import { makeBalance } from '../../server/twin/body.ts';
import type { CoachParams } from '../../server/twin/params.ts';
import { inch, psi, tight } from './coaches.ts';

const lbf = 4.4482216152605;
const spring = (loadLbf: number, volumeIn3 = 600, slope = 0): CoachParams =>
  tight({
    atmosphere: 14.7 * psi,
    area: 62.5 * inch ** 2,
    areaSlope: slope,
    volume: volumeIn3 * inch ** 3,
    lever: 1,
    load: [loadLbf * lbf, loadLbf * lbf],
    rollStiffness: 1e-6,
    springUneven: 0,
    // The unrestrained spring of the formula: stops out of the way.
    toStops: 0.1,
    toTop: 0.2,
  });

describe('one spring of 62.5 in2 (air-spring formulas as printed by a machine-design calculator site)', () => {
  test.each([
    [5000, 80.0],
    [2500, 40.0],
  ])('%d lbf stand on %d psig', (load, gauge) => {
    const balance = makeBalance(afflict(spring(load), []));
    balance.solve(...balance.zAt(0, 0));
    expect(balance.y[0]).toBeCloseTo(0, 9);
    expect(balance.pressure[0]! / psi - 14.7).toBeCloseTo(gauge, 4);
  });
  test.each([
    [5000, 600, 616.54, 1.0981],
    [5000, 1200, 616.54 / 2, 1.0981 / Math.SQRT2],
  ])('%d lbf on %d in3, slow (n = 1): %d lbf/in and %d Hz', (load, volume, rate, hertz) => {
    const balance = makeBalance(afflict(spring(load, volume), []));
    const z = balance.zAt(0, 0);
    const heavier = makeBalance(afflict(spring(load + 1, volume), []));
    heavier.solve(...z);
    const k = 1 / (-heavier.y[0]! / inch);
    expect(k).toBeCloseTo(rate, -0.5);
    expect(Math.sqrt((k * 386.0886) / load) / (2 * Math.PI)).toBeCloseTo(hertz, 3);
  });
  test('80 psig squeezed from 600 to 500 in3 at constant temperature reads 98.94 psig', () => {
    const balance = makeBalance(afflict(spring(5000), []));
    const z = balance.zAt(0, 0);
    const load = 98.94 * 62.5;
    const squeezed = makeBalance(afflict(spring(load), []));
    squeezed.solve(...z);
    expect(squeezed.volume[0]! / inch ** 3).toBeCloseTo(500, 0);
    expect(squeezed.pressure[0]! / psi - 14.7).toBeCloseTo(98.94, 1);
  });
});

test('volume is the integral of area, so a slow lift makes no energy: dV/dy = lever A', () => {
  const p = spring(5000, 600, -0.05);
  const balance = makeBalance(afflict(p, []));
  balance.solve(...balance.zAt(0.02, 0.02));
  const up = balance.volume[0]!;
  balance.solve(...balance.zAt(0.0199, 0.0199));
  const down = balance.volume[0]!;
  expect((up - down) / 0.0001 / (p.area + p.areaSlope * 0.01995)).toBeCloseTo(1, 5);
});

test('a weak right front makes the left rear light and the right rear heavy (common practice, no source)', () => {
  const balance = makeBalance(afflict(tight(), [{ ailment: 'right front corner weak', size: 0.03 }]));
  balance.solve(...balance.zAt(0, 0));
  expect(balance.pressure[0]!).toBeLessThan(balance.pressure[1]! - 1 * psi);
});

test('a load moved to one side is carried by that side', () => {
  const balance = makeBalance(afflict(tight(), [{ ailment: 'left load heavy', size: 0.2 }]));
  balance.solve(...balance.zAt(0, 0));
  expect(balance.pressure[0]! - balance.pressure[1]!).toBeGreaterThan(5 * psi);
});
