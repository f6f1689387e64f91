/** Air and decay: the properties that physics asks for, and every refusal. */
import { double, integer, property } from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  absolute,
  atmosphereAt,
  atmosphereFrom,
  chokedShare,
  criticalRatio,
  effectiveArea,
  freeAir,
  gaugeOf,
  holeDiameter,
  massOfFreeAir,
  orificeFlow,
  ratedValveFlow,
} from '../../server/core/air.ts';
import {
  areaOfLeak,
  fallRate,
  fitDecay,
  freeAirOfFall,
  leakAge,
  leakConstant,
  pressureAfter,
  ratioAtAge,
  timeToPressure,
} from '../../server/core/decay.ts';
import { counterexample } from './counterexample.ts';
import { ImpossibleInput, si } from '../../server/core/quantity.ts';

const pa = si<never>(101_325);
const room = si<never>(293.15);
const between = (min: number, max: number) => double({ min, max, noNaN: true });

describe('orifice flow', () => {
  it('meets at the critical ratio without a step', () => {
    const below = orificeFlow(si(1e-6), si(8e5), si(8e5 * (criticalRatio - 1e-9)), room);
    const above = orificeFlow(si(1e-6), si(8e5), si(8e5 * (criticalRatio + 1e-9)), room);
    expect(Math.abs(above / below - 1)).toBeLessThan(1e-9);
  });

  it('never falls as the outlet opens up, nor as the inlet rises', () => {
    expect(
      counterexample(
        property(between(1.1e5, 1.5e6), between(0, 1), between(0, 1), (up, a, b) => {
          const [low, high] = [Math.min(a, b), Math.max(a, b)];
          const open = orificeFlow(si(1e-6), si(up), si(up * low), room);
          const shut = orificeFlow(si(1e-6), si(up), si(up * high), room);
          const more = orificeFlow(si(1e-6), si(up * 1.1), si(up * high), room);
          return open >= shut && more >= shut;
        }),
      ),
    ).toBeNull();
  });

  it('is exactly zero between equal pressures and into higher ones', () => {
    expect(orificeFlow(si(1e-6), si(5e5), si(5e5), room)).toBe(0);
    expect(orificeFlow(si(1e-6), si(5e5), si(6e5), room)).toBe(0);
    expect(chokedShare(1)).toBe(0);
    expect(chokedShare(0)).toBe(1);
  });

  it('turns into area and free air and back', () => {
    expect(
      counterexample(
        property(between(1e-9, 1e-4), between(1.2e5, 1.5e6), (area, up) => {
          const flow = orificeFlow(si(area), si(up), pa, room);
          const back = effectiveArea(massOfFreeAir(freeAir(flow, pa, room), pa, room), si(up), pa, room);
          return Math.abs(back / area - 1) < 1e-9;
        }),
      ),
    ).toBeNull();
    expect(holeDiameter(si((0.61 * Math.PI) / 4), 0.61)).toBeCloseTo(1, 12);
  });

  it('follows the ISO 6358 ellipse, whose formula MapleSim and Simscape document', () => {
    // C 1 dm3/(s bar), b 0.3, 7 bar absolute at 20 C: 7 L/s choked; into 6 bar q = 7 sqrt(1 - ((6/7 - 0.3)/0.7)^2).
    expect(ratedValveFlow(1e-8, 0.3, si(7e5), si(1e5), room)).toBeCloseTo(7e-3, 9);
    expect(ratedValveFlow(1e-8, 0.3, si(7e5), si(6e5), room)).toBeCloseTo(
      7e-3 * Math.sqrt(1 - ((6 / 7 - 0.3) / 0.7) ** 2),
      12,
    );
    expect(ratedValveFlow(1e-8, 0.3, si(7e5), si(7e5), room)).toBe(0);
  });
});

describe('a leaking tank', () => {
  it('ages by the integral of dx / (x share(1/x)), closed form against summing it up', () => {
    for (const to of [1.2, 1.8, 2.5, 9]) {
      let sum = 0;
      const n = 400_000;
      for (let i = 0; i < n; i++) {
        // Square spacing: the integrand is steep at the atmosphere.
        const s = (i + 0.5) / n;
        const x = 1 + (to - 1) * s * s;
        sum += ((to - 1) * 2 * s) / n / (x * chokedShare(1 / x));
      }
      expect(Math.abs(leakAge(to) / sum - 1)).toBeLessThan(1e-5);
    }
  });

  it('falls as the flow equation says, step by step', () => {
    const volume = si<never>(0.02);
    const hole = si<never>(0.2e-6);
    const k = leakConstant(hole, volume, room);
    let p = 9e5;
    const dt = 0.5;
    for (let t = 0; t < 900; t += dt) {
      const flow = (x: number): number => orificeFlow(hole, si(x), pa, room);
      const half = p - (flow(p) * 287.05 * 293.15 * dt) / 0.02 / 2;
      p -= (flow(half) * 287.05 * 293.15 * dt) / 0.02;
    }
    expect(Math.abs(pressureAfter(gaugeOf(si(9e5), pa), k, si(900), pa) / (p - 101_325) - 1)).toBeLessThan(1e-4);
  });

  it('age and ratio are inverse, and the age rises', () => {
    expect(
      counterexample(
        property(between(1, 15), between(1, 15), (a, b) => {
          const [low, high] = [Math.min(a, b), Math.max(a, b)];
          return Math.abs(ratioAtAge(leakAge(a)) - a) < 1e-6 && leakAge(low) <= leakAge(high);
        }),
      ),
    ).toBeNull();
    expect(leakAge(1)).toBe(0);
    expect(ratioAtAge(-1)).toBe(1);
  });

  it('falls faster with a bigger hole, later is lower, and time to a pressure is when it is there', () => {
    expect(
      counterexample(
        property(between(1e4, 1e6), between(1e-6, 1e-3), between(10, 20_000), (start, k, t) => {
          const p = pressureAfter(si(start), k, si(t), pa);
          const bigger = pressureAfter(si(start), k * 1.5, si(t), pa);
          const later = pressureAfter(si(start), k, si(t * 1.5), pa);
          const when = p > 100 ? timeToPressure(si(start), p, k, pa) : t;
          return bigger <= p && later <= p && Math.abs(when / t - 1) < 1e-3;
        }),
      ),
    ).toBeNull();
    expect(timeToPressure(si(5e5), si(6e5), 1e-4, pa)).toBe(0);
    expect(timeToPressure(si(5e5), si(1e5), 0, pa)).toBe(Infinity);
    expect(pressureAfter(si(5e5), 1e-2, si(1e6), pa)).toBe(0);
  });

  it('is fitted exactly where the readings are exact', () => {
    expect(
      counterexample(
        property(between(2e5, 9e5), between(1e-6, 2e-4), integer({ min: 2, max: 9 }), (start, k, n) => {
          const readings = Array.from({ length: n }, (_, i) => ({
            t: i * 600,
            p: pressureAfter(si(start), k, si(i * 600), pa),
            sd: 3000,
            tSd: 0,
          }));
          const fit = fitDecay(readings, pa);
          return Math.abs(fit.k / k - 1) < 1e-3 && fit.chi2 < 1e-6;
        }),
      ),
    ).toBeNull();
  });

  it('turns leak constant into area and back, and a fall into free air', () => {
    expect(areaOfLeak(leakConstant(si(3e-7), si(0.02), room), si(0.02), room)).toBeCloseTo(3e-7, 15);
    // 3 psi in 5 min out of 10 US gal is 0.0546 cfm of free air at 14.7 psia: V dP / (pa t).
    const cfm = freeAirOfFall((3 * 6894.757) / 300, si(0.0378541), si(14.7 * 6894.757)) / (0.0283168 / 60);
    expect(cfm).toBeCloseTo(0.0546, 4);
  });

  it('has no rate at the atmosphere', () => {
    expect(fallRate(si(0), 1e-3, pa)).toBe(0);
  });
});

describe('gauge and absolute', () => {
  it('turn into each other', () => {
    expect(
      counterexample(property(between(-101_000, 2e6), (p) => Math.abs(gaugeOf(absolute(si(p), pa), pa) - p) < 1e-6)),
    ).toBeNull();
  });
  it('a barometer at sea level is the standard fall with height', () => {
    expect(atmosphereFrom(pa, si(1500))).toBeCloseTo(atmosphereAt(si(1500)), 6);
  });
});

describe('refuses', () => {
  const cases: readonly (readonly [string, () => unknown, RegExp])[] = [
    ['a pressure below vacuum', () => absolute(si(-2e5), pa), /gauge pressure .*below vacuum/],
    ['a negative absolute pressure', () => gaugeOf(si(-1), pa), /absolute pressure .*below vacuum/],
    ['no atmosphere', () => absolute(si(1), si(0)), /atmosphere 0/],
    ['an altitude in space', () => atmosphereAt(si(40_000)), /altitude/],
    ['a barometer in bar', () => atmosphereFrom(si(1.013), si(0)), /barometer/],
    ['a hole of negative size', () => orificeFlow(si(-1), si(1e5), si(0), room), /effective area/],
    ['air at 0 K', () => orificeFlow(si(1), si(1e5), si(0), si(0)), /temperature 0/],
    [
      'a hole worked out between equal pressures',
      () => effectiveArea(si(1), si(1e5), si(1e5), room),
      /upstream pressure/,
    ],
    ['b of 1', () => ratedValveFlow(1, 1, si(2e5), si(1e5), room), /critical ratio b/],
    ['zero volume', () => leakConstant(si(1e-6), si(0), room), /volume 0/],
    ['time running backwards', () => pressureAfter(si(1e5), 1, si(-5), pa), /time -5/],
    [
      'readings out of order',
      () =>
        fitDecay(
          [
            { t: 10, p: si(5e5), sd: 1, tSd: 0 },
            { t: 0, p: si(4e5), sd: 1, tSd: 0 },
          ],
          pa,
        ),
      /readings must be in order of time/,
    ],
    ['one reading', () => fitDecay([{ t: 0, p: si(5e5), sd: 1, tSd: 0 }], pa), /a line needs two/],
    ['a tank below the atmosphere leaking out', () => leakAge(0.9), /pressure over atmosphere/],
  ];
  it.each(cases)('%s', (_name, work, words) => {
    expect(work).toThrow(ImpossibleInput);
    expect(work).toThrow(words);
  });
});
