/** Two general-purpose libraries on the same inputs: psychrolib for moist air, mathjs for units. */
import { createRequire } from 'node:module';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { double, property } from 'fast-check';
import { atmosphereAt } from '../../server/core/air.ts';
import { parseAmount, showAmount } from '../../server/core/amount.ts';
import {
  dewPoint,
  dewPointUnderPressure,
  dryAir,
  humidityRatio,
  ratioOfVapour,
  saturation,
  waterDropped,
} from '../../server/core/moisture.ts';
import { ImpossibleInput, si } from '../../server/core/quantity.ts';
import { type Unit, fromSi, stepFromSi, stepToSi, toSi, unitNames } from '../../server/core/units.ts';
import { counterexample } from './counterexample.ts';

type Psychrolib = {
  SI: number;
  SetUnitSystem: (system: number) => void;
  GetSatVapPres: (t: number) => number;
  GetHumRatioFromRelHum: (t: number, rh: number, p: number) => number;
  GetTDewPointFromRelHum: (t: number, rh: number) => number;
  GetStandardAtmPressure: (h: number) => number;
};
const psychrolib = createRequire(import.meta.url)('psychrolib') as Psychrolib;
psychrolib.SetUnitSystem(psychrolib.SI);

const between = (min: number, max: number) => double({ min, max, noNaN: true });
const K = 273.15;

describe('against psychrolib 1.1.1', () => {
  it('saturation from -40 to 60 C within 1e-4', () => {
    for (let t = -40; t <= 60; t += 2.5)
      expect(Math.abs(saturation(si(t + K)) / psychrolib.GetSatVapPres(t) - 1), `${t} C`).toBeLessThan(1e-4);
  });
  it('humidity ratio, dew point and atmosphere', () => {
    for (const [t, rh] of [
      [-5, 0.8],
      [10, 0.3],
      [20, 0.5],
      [30, 0.7],
      [40, 0.9],
    ] as const) {
      expect(humidityRatio(si(t + K), rh, si(101_325))).toBeCloseTo(
        psychrolib.GetHumRatioFromRelHum(t, rh, 101_325),
        6,
      );
      expect(dewPoint(si(t + K), rh) - K).toBeCloseTo(psychrolib.GetTDewPointFromRelHum(t, rh), 2);
    }
    for (const h of [-200, 0, 1500, 4000])
      expect(Math.abs(atmosphereAt(si(h)) - psychrolib.GetStandardAtmPressure(h))).toBeLessThan(1);
  });
});

describe('water in the tank', () => {
  it('none drops where the tank holds it, more with humidity, and the air of 8 to 1 from 12.5 % on', () => {
    const dropped = (rh: number): number => waterDropped(1, si(293.15), rh, si(1e5), si(8e5), si(293.15));
    expect(dropped(0.1)).toBe(0);
    expect(dropped(0.14)).toBeGreaterThan(0);
    expect(
      counterexample(property(between(0, 0.9), between(0, 0.1), (rh, more) => dropped(rh + more) >= dropped(rh))),
    ).toBeNull();
  });
  it('the dew point under pressure is the tank itself once saturated, and higher than outside before', () => {
    expect(dewPointUnderPressure(si(293.15), 0.5, si(1e5), si(8e5), si(285))).toBe(285);
    const dry = dewPointUnderPressure(si(293.15), 0.05, si(1e5), si(8e5), si(293.15));
    expect(dry).toBeGreaterThan(dewPoint(si(293.15), 0.05));
    expect(dry).toBeLessThan(293.15);
  });
  const refusals: readonly (readonly [string, () => unknown, RegExp])[] = [
    ['humidity in percent', () => humidityRatio(si(293), 70, si(1e5)), /humidity 70/],
    ['air hotter than its vapour allows', () => dryAir(si(1), si(1e5), si(420), 0.7), /temperature 420/],
    ['ice at -200 C', () => saturation(si(70)), /temperature 70/],
    ['vapour above the total', () => ratioOfVapour(si(2e5), si(1e5)), /vapour pressure/],
    ['bone-dry air', () => dewPoint(si(293), 0), /vapour pressure/],
    [
      'a tank below the atmosphere',
      () => dewPointUnderPressure(si(293), 0.5, si(1e5), si(5e4), si(293)),
      /tank pressure/,
    ],
    ['air of negative mass', () => waterDropped(-1, si(293), 0.5, si(1e5), si(8e5), si(293)), /mass of air/],
  ];
  it.each(refusals)('refuses %s', (_name, work, words) => {
    expect(work).toThrow(ImpossibleInput);
    expect(work).toThrow(words);
  });
});

/** The same unit in mathjs' spelling; left out are those it does not have. */
const spelled: Partial<Record<Unit, string>> = {
  psi: 'psi',
  kPa: 'kPa',
  bar: 'bar',
  mbar: 'mbar',
  Pa: 'Pa',
  in: 'inch',
  ft: 'foot',
  mm: 'mm',
  cm: 'cm',
  m: 'm',
  mi: 'mile',
  km: 'km',
  deg: 'deg',
  arcmin: 'arcmin',
  rad: 'rad',
  V: 'V',
  mV: 'mV',
  A: 'A',
  ohm: 'ohm',
  mohm: 'mohm',
  in2: 'sqin',
  cm2: 'cm^2',
  mm2: 'mm^2',
  in3: 'cuin',
  ft3: 'cuft',
  gal: 'gallon',
  qt: 'quart',
  pint: 'pint',
  cup: 'cup',
  'fl oz': 'floz',
  L: 'litre',
  ml: 'ml',
  lb: 'lbm',
  kg: 'kg',
  t: 'tonne',
  'lbf ft': 'lbf foot',
  'lbf in': 'lbf inch',
  'N m': 'N m',
  s: 's',
  min: 'min',
  h: 'hour',
  d: 'day',
  week: 'week',
  cfm: 'cuft / min',
  'L/min': 'litre / min',
  Hz: 'Hz',
  'psi/min': 'psi / min',
  'kPa/min': 'kPa / min',
};
const base: Partial<Record<Unit, string>> = {
  psi: 'Pa',
  deg: 'rad',
  arcmin: 'rad',
  ohm: 'ohm',
  mohm: 'ohm',
  'lbf ft': 'N m',
  'lbf in': 'N m',
  Hz: 'Hz',
};
const dimension: Record<string, string> = {
  psi: 'Pa',
  kPa: 'Pa',
  bar: 'Pa',
  mbar: 'Pa',
  Pa: 'Pa',
  in: 'm',
  ft: 'm',
  mm: 'm',
  cm: 'm',
  m: 'm',
  mi: 'm',
  km: 'm',
  deg: 'rad',
  arcmin: 'rad',
  rad: 'rad',
  V: 'V',
  mV: 'V',
  A: 'A',
  ohm: 'ohm',
  mohm: 'ohm',
  in2: 'm^2',
  cm2: 'm^2',
  mm2: 'm^2',
  in3: 'm^3',
  ft3: 'm^3',
  gal: 'm^3',
  qt: 'm^3',
  pint: 'm^3',
  cup: 'm^3',
  'fl oz': 'm^3',
  L: 'm^3',
  ml: 'm^3',
  lb: 'kg',
  kg: 'kg',
  t: 'kg',
  'lbf ft': 'N m',
  'lbf in': 'N m',
  'N m': 'N m',
  s: 's',
  min: 's',
  h: 's',
  d: 's',
  week: 's',
  cfm: 'm^3/s',
  'L/min': 'm^3/s',
  Hz: 'Hz',
  'psi/min': 'Pa/s',
  'kPa/min': 'Pa/s',
};

describe('against mathjs 15', () => {
  it.each(Object.entries(spelled))('%s', (ours, theirs) => {
    const si1 = mathUnit(1, theirs).toNumber(dimension[ours] ?? base[ours as Unit] ?? theirs);
    // mathjs keeps some cups and quarts to six figures.
    expect(Math.abs(stepToSi(1, ours as Unit) / si1 - 1)).toBeLessThan(2e-6);
  });
  it('temperatures as points on their scales', () => {
    for (const [v, u, name] of [
      [70, 'F', 'degF'],
      [-40, 'F', 'degF'],
      [21, 'C', 'degC'],
    ] as const)
      expect(toSi(v, u)).toBeCloseTo(mathUnit(v, name).toNumber('K'), 6);
  });
});

describe('units at the edges', () => {
  it('there and back is the same number', () => {
    expect(
      counterexample(
        property(between(-1e4, 1e4), (v) =>
          unitNames.every(
            (u) => Math.abs(fromSi(toSi(v, u), u) - v) < 1e-6 && Math.abs(stepFromSi(stepToSi(v, u), u) - v) < 1e-6,
          ),
        ),
      ),
    ).toBeNull();
  });
  it('a value shown at its resolution is read back to within it', () => {
    expect(
      counterexample(
        property(between(1, 2000), (v) => {
          const shown = showAmount(toSi(v, 'kPa'), 'kPa', 500);
          const back = parseAmount(shown, 'pressure');
          return back !== null && Math.abs(back.si - toSi(v, 'kPa')) <= 501;
        }),
      ),
    ).toBeNull();
  });
});
