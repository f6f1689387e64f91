import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GaugePressure, ImpossibleInput, si } from '../../server/core/quantity.ts';
import { toSi } from '../../server/core/units.ts';
import { tyreRise } from '../../server/core/tyre-height.ts';

const psi = (v: number): GaugePressure => si(toSi(v, 'psi'));
const eighthFor10 = { height: si<never>(toSi(1 / 8, 'in')), pressure: si<never>(toSi(10, 'psi')) };

describe('a corner on tyres that are off', () => {
  it('stands lower by the share of the pressure that is missing', () => {
    // By hand: 20 psi short at 1/8 in for 10 psi is 1/4 in; the next term is 20/100 of it.
    const { rise, pm } = tyreRise(eighthFor10, psi(100), psi(80));
    expect(rise / toSi(1, 'in')).toBeCloseTo(-0.25, 9);
    expect(pm / toSi(1, 'in')).toBeCloseTo(0.05, 9);
  });

  it('holds the deflection of a tyre that goes inversely as pressure within its half width, or nearly', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.249, max: 0.249, noNaN: true }), (share) => {
        const sag = 0.03;
        const p = psi(100);
        const truth = sag - sag / (1 + share);
        const { rise, pm } = tyreRise({ height: si(sag), pressure: si(p) }, p, si(p * (1 + share)));
        // What the next term leaves: at most a third of it at a quarter of the pressure.
        expect(Math.abs(truth - rise)).toBeLessThanOrEqual(pm * 1.34 + 1e-9);
      }),
    );
  });

  it.each([
    ['more than a quarter short', 100, 70],
    ['more than a quarter over', 100, 130],
    ['nothing wanted', 0, 70],
  ])('refuses %s', (_, wanted, now) => {
    expect(() => tyreRise(eighthFor10, psi(wanted), psi(now))).toThrow(ImpossibleInput);
  });
});
