/**
 * The core against numbers published by others: fixtures/published/*.json, each table with its source and tolerance.
 * Rows marked "memory" were recalled or recomputed, not seen; they do not count as outside values.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { atmosphereAt, criticalRatio, freeAir, gasConstant, gaugeOf, orificeFlow } from '../../server/core/air.ts';
import { chargeBand, chargeFromGravity, gravityAt80F, loadTestLeast } from '../../server/core/battery.ts';
import { areaOfLeak, fitDecay, freeAirOfFall } from '../../server/core/decay.ts';
import { dutyOf, deliveryFromCycle, leakFromOff } from '../../server/core/duty.ts';
import { atTemperature } from '../../server/core/gas-law.ts';
import { dewPoint, humidityRatio, saturation, waterDropped } from '../../server/core/moisture.ts';
import { meanDelivery, pumpUpTime } from '../../server/core/pump-up.ts';
import { si } from '../../server/core/quantity.ts';
import { gravity, naturalFrequency, springRate, squeezed } from '../../server/core/spring.ts';
import { angleOver, offsetOver } from '../../server/core/toe.ts';
import { type Unit, fromSi, stepFromSi, stepToSi, toSi, unitNames } from '../../server/core/units.ts';
import { dropOf, smallestWireFor, wireDiameter, wireResistance } from '../../server/core/wire.ts';

const Row = z.array(z.union([z.number(), z.string()])).min(1);
const Table = z.strictObject({
  quantity: z.string(),
  columns: z.array(z.string()),
  unit: z.string(),
  tolerance: z.union([z.strictObject({ relative: z.number() }), z.strictObject({ absolute: z.number() })]),
  source: z.string().min(5),
  memory: z.boolean(),
  note: z.string().optional(),
  /** Inputs in the order of the columns, then the expected value. */
  rows: z.array(Row).min(1),
});
const Fixture = z.strictObject({ subject: z.string(), tables: z.array(Table) });

const folder = new URL('../../fixtures/published/', import.meta.url);
const fixtures = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .map((name) => Fixture.parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8'))));

const q = (value: number, unit: Unit): never => toSi(value, unit) as never;
const trade = q(14.7, 'psi');
/** The tables' standard temperature, 70 F. */
const standard = q(70, 'F');
const abs = (psig: number, pa = 14.7): never => q(psig + pa, 'psi');
const holeArea = (d: number, cd: number): never => ((cd * Math.PI * toSi(d, 'in') ** 2) / 4) as never;

const quantities: Record<string, (...inputs: number[]) => number> = {
  'free air through a hole': (d, p, cd) =>
    fromSi(freeAir(orificeFlow(holeArea(d, cd), abs(p), trade, standard), trade, standard), 'cfm'),
  'mass flow through a hole': (d, p, cd) =>
    (orificeFlow(holeArea(d, cd), abs(p), trade, standard) * 60) / toSi(1, 'lb'),
  'hot air through holes': (n, d, p, f) =>
    n * fromSi(freeAir(orificeFlow(holeArea(d, 1), abs(p), trade, q(f, 'F')), trade, q(f, 'F')), 'cfm'),
  'critical ratio': () => criticalRatio,
  'outlet pressure that still chokes': (p) => fromSi(gaugeOf((abs(p) * criticalRatio) as never, trade), 'psi'),
  'plain decay': (v, a, b, s) => fromSi(freeAirOfFall(stepToSi((a - b) / s, 'psi'), q(v, 'gal'), trade), 'cfm'),
  'bleed-down with factor': (v, a, b, minutes) => {
    const fit = fitDecay(
      [
        { t: 0, p: q(a, 'psi'), sd: 100, tSd: 0 },
        { t: minutes * 60, p: q(b, 'psi'), sd: 100, tSd: 0 },
      ],
      trade,
    );
    const hole = areaOfLeak(fit.k, q(v, 'ft3'), standard);
    return fromSi(freeAir(orificeFlow(hole, abs(a), trade, standard), trade, standard), 'cfm');
  },
  'usable capacity': (v, a, b) => freeAirOfFall(stepToSi(a - b, 'psi'), q(v, 'gal'), trade) / toSi(1, 'ft3'),
  '3 psi in 5 min as a rate': () => stepFromSi(stepToSi(3, 'psi') / 300, 'psi/min'),
  'delivery that fills a volume': (v, pa, a, b, minutes) =>
    fromSi(meanDelivery(q(v, 'gal'), q(a, 'psi'), q(b, 'psi'), q(minutes, 'min'), q(pa, 'psi')), 'cfm'),
  'pump-up minutes': (v, flow, a, b) =>
    pumpUpTime(
      [
        { at: q(0, 'psi'), flow: q(flow, 'cfm') },
        { at: q(200, 'psi'), flow: q(flow, 'cfm') },
      ],
      q(v, 'gal'),
      q(a, 'psi'),
      q(b, 'psi'),
      trade,
    ) / 60,
  'receiver volume': (minutes, flow, pa, band) =>
    // The volume whose leak over that time is the net flow: the inverse of leakFromOff at 1 m3.
    toSi(flow, 'cfm') / leakFromOff(si(1), stepToSi(band, 'psi'), q(minutes, 'min'), q(pa, 'psi')) / toSi(1, 'ft3'),
  'duty percent': (on, off) => 100 * dutyOf(q(on, 'min'), q(off, 'min')),
  'band volume': (on, off, flow, pa, band) =>
    toSi(flow, 'cfm') / deliveryFromCycle(si(1), stepToSi(band, 'psi'), si(on), si(off), q(pa, 'psi')) / toSi(1, 'gal'),
  'saturation pressure': (t) => saturation(q(t, 'C')),
  'saturation pressure over ice': (t) => saturation(q(t, 'C')),
  'saturated humidity ratio': (t) => humidityRatio(q(t, 'C'), 1, si(101_325)),
  'dew point': (t, rh) => fromSi(dewPoint(q(t, 'C'), rh / 100), 'C'),
  'humidity ratio': (t, rh, p) => humidityRatio(q(t, 'C'), rh / 100, si(p)),
  'saturated vapour': (t) => (1000 * saturation(q(t, 'C'))) / (461.52 * toSi(t, 'C')),
  'condensed from saturated air': (t, bars) => {
    const dry = (100_000 - saturation(q(t, 'C'))) / (gasConstant * toSi(t, 'C'));
    return 1000 * waterDropped(dry, q(t, 'C'), 1, si(100_000), q(bars, 'bar'), q(t, 'C'));
  },
  'water held and dropped': (t, rh, gauge, inside) => {
    const dry = (101_325 - (rh / 100) * saturation(q(t, 'C'))) / (gasConstant * toSi(t, 'C'));
    return waterDropped(dry, q(t, 'C'), rh / 100, si(101_325), si(101_325 + toSi(gauge, 'bar')), q(inside, 'C'));
  },
  'water drawn in': (f, rh, scfm, hours) => {
    const dry = (toSi(scfm, 'cfm') * hours * 3600 * toSi(14.7, 'psi')) / (gasConstant * toSi(70, 'F'));
    return (dry * humidityRatio(q(f, 'F'), rh / 100, si(101_325))) / 998 / toSi(1, 'gal');
  },
  'condensate rate': (f) => {
    const dry = (toSi(1, 'cfm') * 3600 * (101_325 - saturation(q(f, 'F')))) / (gasConstant * toSi(f, 'F'));
    return (dry * humidityRatio(q(f, 'F'), 1, si(101_325))) / 998 / toSi(1, 'gal');
  },
  'standard atmosphere': (h) => atmosphereAt(si(h)),
  'wire diameter': (n) => fromSi(wireDiameter(n), 'in'),
  'wire resistance': (n, t) => wireResistance(n, q(1000, 'ft'), q(t, 'C')),
  'voltage drop': (n, amps, feet) => dropOf(si(amps), wireResistance(n, q(2 * feet, 'ft'), q(20, 'C'))),
  'resistance ratio': (a, b) => wireResistance(12, si(1), q(b, 'C')) / wireResistance(12, si(1), q(a, 'C')),
  'smallest even wire': (amps, feet, volts) => smallestWireFor(si(amps), q(feet, 'ft'), si(volts), standard) ?? NaN,
  'hydrometer correction': (f) => gravityAt80F(1.25, q(f, 'F')) - 1.25,
  'hydrometer reading corrected': (sg, f) => gravityAt80F(sg, q(f, 'F')),
  'load test least volts': (f) => loadTestLeast(q(f, 'F')),
  'charge from gravity': (sg) => 100 * chargeFromGravity(sg),
  'gauge at another temperature': (p, a, b) => fromSi(atTemperature(q(p, 'psi'), q(a, 'F'), q(b, 'F'), trade), 'psi'),
  'toe length': (deg, d) => fromSi(offsetOver(q(deg, 'deg'), q(d, 'in')), 'in'),
  'toe angle': (x, d) => fromSi(angleOver(q(x, 'in'), q(d, 'in')), 'deg'),
  'toe minutes': (x, d) => fromSi(angleOver(q(x, 'mm'), q(d, 'in')), 'arcmin'),
  'camber from a shim': (x, lever) => fromSi(angleOver(q(x, 'in'), q(lever, 'in')), 'deg'),
  'spring rate': (load, area, volume, n) => {
    const p = (load / area) as never;
    return (springRate(q(p, 'psi'), q(area, 'in2'), q(volume, 'in3'), n, trade) / (toSi(1, 'lb') * gravity)) * 0.0254;
  },
  'natural frequency': (load, area, volume, n) =>
    naturalFrequency(springRate(q(load / area, 'psi'), q(area, 'in2'), q(volume, 'in3'), n, trade), q(load, 'lb')),
  // A kilogram on a spring that its weight presses down by so much: the stiffness is its weight over the sag.
  'frequency of a sag': (mm) => naturalFrequency(si(gravity / toSi(mm, 'mm')), si(1)),
  'squeezed pressure': (p, a, b, n) => fromSi(squeezed(q(p, 'psi'), q(a, 'in3'), q(b, 'in3'), n, trade), 'psi'),
};

const isUnit = (name: string): name is Unit => (unitNames as string[]).includes(name);

type TableT = z.infer<typeof Table>;

/** What is wrong with one row, or null. */
const miss = (table: TableT, row: readonly (number | string)[]): string | null => {
  const want = row.at(-1) as number;
  const inputs = row.slice(0, -1);
  const at = `${table.quantity}(${inputs.join(', ')})`;
  if (inputs.length !== table.columns.length) return `${at}: not as many inputs as columns`;
  if (table.quantity === 'charge band holds') {
    const band = chargeBand(si(inputs[0] as number));
    const inside = 100 * band.low <= want + 1e-9 && 100 * band.high >= want - 1e-9;
    return inside ? null : `${at}: band ${band.low} to ${band.high} does not hold ${want} %`;
  }
  let got: number;
  if (table.quantity === 'unit factor') {
    const [from, to] = inputs as string[];
    if (!isUnit(from!) || !isUnit(to!)) return `${at}: unknown unit`;
    got = stepFromSi(stepToSi(1, from), to);
  } else {
    const work = quantities[table.quantity];
    if (!work) return `${at}: no calculation of that name`;
    got = work(...(inputs as number[]));
  }
  const slack = 'relative' in table.tolerance ? table.tolerance.relative * Math.abs(want) : table.tolerance.absolute;
  return Math.abs(got - want) <= slack + 1e-12 ? null : `${at} is ${got}, published ${want}`;
};

for (const { subject, tables } of fixtures)
  describe(`published: ${subject}`, () => {
    it.each(tables.map((t) => [t.quantity, t.source, t] as const))('%s: %s', (_quantity, _source, table) => {
      expect(table.rows.map((row) => miss(table, row)).filter((m) => m !== null)).toEqual([]);
    });
  });

it('checks at least 150 values seen in sources outside this project', () => {
  const seen = fixtures.flatMap((f) => f.tables.filter((t) => !t.memory)).reduce((sum, t) => sum + t.rows.length, 0);
  expect(seen).toBeGreaterThanOrEqual(150);
});
