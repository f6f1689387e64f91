import { unit as mathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { fromSi } from '../../server/core/units.ts';
import { blankContext, read } from '../../intents/read.ts';
import type { Context, Fact, ReadingFact } from '../../intents/shapes.ts';
import { tell } from '../../intents/tell.ts';

const at = Date.UTC(2026, 9, 6, 23, 30);
const readings = (note: string, more = {}): ReadingFact[] =>
  read(note, blankContext('note-id', { at, ...more })).facts.filter((f): f is ReadingFact => f.is === 'reading');
const only = (note: string, more = {}): ReadingFact => {
  const found = readings(note, more);
  expect(found.map((f) => f.amount.v.text)).toHaveLength(1);
  return found[0]!;
};

/**
 * Factors to SI as printed in NIST Special Publication 811 (2008), Appendix B.8; temperatures by B.7's formulas. The
 * mathjs name beside each is the same factor by a general-purpose library.
 */
describe.each([
  // note, printed value of one unit in SI, mathjs unit and its SI unit
  ['tank 1 psi', 6.894757e3, 'psi', 'Pa'],
  ['tank 1 pounds per square inch', 6.894757e3, 'psi', 'Pa'],
  ['tank 1 kpa', 1e3, 'kPa', 'Pa'],
  ['tank 1 bar', 1e5, 'bar', 'Pa'],
  ['tank 1 kg/cm2', 9.80665e4, 'kgf / cm^2', 'Pa'],
  ['barometer 1 inHg', 3.38638e3, null, 'Pa'],
  ['lr height 1 inch', 2.54e-2, 'inch', 'm'],
  ['lr height 1 mm', 1e-3, 'mm', 'm'],
  ['lr height 1 cm', 1e-2, 'cm', 'm'],
  ['altitude 1 ft', 3.048e-1, 'ft', 'm'],
  ['drove 1 mile', 1.609344e3, 'mile', 'm'],
  ['drove 1 km', 1e3, 'km', 'm'],
  ['camber left front wheel 1 degree', 1.745329e-2, 'deg', 'rad'],
  ['camber left front wheel 1 arcmin', 2.908882e-4, 'arcmin', 'rad'],
  ['lr weighs 1 lb', 4.535924e-1, 'lbm', 'kg'],
  ['lr weighs 1 kg', 1, 'kg', 'kg'],
  ['drained 1 gallon of water', 3.785412e-3, 'gallon', 'm^3'],
  ['drained 1 quart of water', 9.463529e-4, 'quart', 'm^3'],
  ['drained 1 pint of water', 4.731765e-4, 'pint', 'm^3'],
  ['drained 1 cup of water', 2.365882e-4, 'cup', 'm^3'],
  ['drained 1 fl oz of water', 2.957353e-5, 'floz', 'm^3'],
  ['drained 1 litre of water', 1e-3, 'litre', 'm^3'],
  ['torqued to 1 ft lb', 1.355818, 'lbf ft', 'N m'],
  ['torqued to 1 in lb', 1.129848e-1, 'lbf inch', 'N m'],
] as const)('%s', (note, nist, name, siName) => {
  test('agrees with NIST SP 811 to its printed digits', () => {
    const { si } = only(note).amount.v;
    expect(Math.abs(si / nist - 1)).toBeLessThan(3e-6);
  });
  test.skipIf(name === null)('agrees with mathjs', () => {
    const { si } = only(note).amount.v;
    expect(Math.abs(si / mathUnit(1, name ?? '').toNumber(siName) - 1)).toBeLessThan(1e-9);
  });
});

test.each([
  // NIST SP 811, B.7: t/C = (t/F - 32) / 1.8; T/K = t/C + 273.15
  ['32 deg f outside', 273.15],
  ['ambient 212 F', 373.15],
  ['ambient 20 C', 293.15],
  ['-40 f outside', 233.15],
])('%s is a point on its scale', (note, kelvin) => {
  expect(only(note).amount.v.si).toBeCloseTo(kelvin, 6);
});

/** Kinds of cases that public test suites of number-with-unit readers cover; the wording is ours, values by hand. */
describe('how a number is written', () => {
  test.each([
    ['tank 95 psi', 95, 'psi'],
    ['tank 95psi', 95, 'psi'],
    ['tank 95 PSI', 95, 'psi'],
    ['tank 95-psi', 95, 'psi'],
    ['tank: 95 psi.', 95, 'psi'],
    ['tank=95 psi', 95, 'psi'],
    ['tank (95 psi)', 95, 'psi'],
    ['tank 95.5 psi', 95.5, 'psi'],
    ['tank .5 bar', 0.5, 'bar'],
    ['tank 0.5 bar', 0.5, 'bar'],
    ['tank six point five bar', 6.5, 'bar'],
    ['tank six bar', 6, 'bar'],
    ['tank 095 psi', 95, 'psi'],
    ['tank reads zero psi', 0, 'psi'],
    ['tank one hundred psi', 100, 'psi'],
    ['tank a hundred psi', 100, 'psi'],
    ['tank one hundred and ten psi', 110, 'psi'],
    ['tank one hundred twelve psi', 112, 'psi'],
    ['tank one oh four psi', 104, 'psi'],
    ['tank one twelve psi', 112, 'psi'],
    ['tank ninety-five psi', 95, 'psi'],
    ['tank ninety five pounds', 95, 'psi'],
    ['tank 95#', 95, 'psi'],
    ['lr 13 1/4', 13.25, 'in'],
    ['lr 13-1/4', 13.25, 'in'],
    ['lr 13 1/4"', 13.25, 'in'],
    ['lr 13-1/4 in', 13.25, 'in'],
    ['lr 13 1/4 inches', 13.25, 'in'],
    ['lr 13 and 1/4', 13.25, 'in'],
    ['lr 13 & 1/4', 13.25, 'in'],
    ['lr 13¼', 13.25, 'in'],
    ['lr 13 ¼"', 13.25, 'in'],
    ['lr 13.25"', 13.25, 'in'],
    ['lr 13 5/16', 13.3125, 'in'],
    ['lr 11/16 low', -0.6875, 'in'],
    ['lr thirteen and a quarter', 13.25, 'in'],
    ['lr thirteen and a quarter inches', 13.25, 'in'],
    ['lr thirteen and three eighths', 13.375, 'in'],
    ['lr thirteen and a half', 13.5, 'in'],
    ['lr thirteen inches', 13, 'in'],
    ['lr 1 ft 1 in', 13, 'in'],
    ['lr 1\' 1"', 13, 'in'],
    ['lr 340 mm', 340, 'mm'],
    ['lr 340mm', 340, 'mm'],
    ['lr 34 cm', 34, 'cm'],
    ['lr an eighth low', -0.125, 'in'],
    ['lr a half inch low', -0.5, 'in'],
    ['lr half an inch low', -0.5, 'in'],
    ['lr quarter of an inch high', 0.25, 'in'],
    ['rr weighs 4,200 lbs', 4200, 'lb'],
    ['rr weighs 4200 lbs', 4200, 'lb'],
    ['altitude 5,280 ft', 5280, 'ft'],
    ['-5 C outside', -5, 'C'],
    ['minus 5 C outside', -5, 'C'],
    ['batt 12.1v', 12.1, 'V'],
    ['batt 12.1 volts', 12.1, 'V'],
    ['batt twelve point one volts', 12.1, 'V'],
    ['motor 22 amps', 22, 'A'],
    ['motor 22a', 22, 'A'],
    ['motor pulls 22', 22, 'A'],
    ['ground 0.2 ohm', 0.2, 'ohm'],
    ['humidity 60 %', 60, '%'],
    ['humidity 60 percent', 60, '%'],
  ] as const)('%s', (note, value, unit) => {
    const { amount } = only(note);
    expect(fromSi(amount.v.si, unit)).toBeCloseTo(value, 6);
    expect(amount.v.unit === unit || `${amount.v.unit} for ${unit}`).toBe(true);
  });
});

test.each([
  ['pump ran 90 s', 90],
  ['pump ran 90 seconds', 90],
  ['pump ran 6 min', 360],
  ['pump ran 6 min 40', 400],
  ['pump ran 6 min 40 s', 400],
  ['pump ran six minutes', 360],
  ['pump ran half an hour', 1800],
  ['pump ran half hr', 1800],
  ['pump ran 1/2 hr', 1800],
  ['pump ran a quarter hour', 900],
  ['pump ran an hour', 3600],
  ['pump ran 1 hr 20', 4800],
  ['pump ran 1.5 hours', 5400],
  ['pump ran an hour and a half', 5400],
  ['pump ran 1 1/2 hours', 5400],
])('%s is a time of %d s', (note, seconds) => {
  expect(only(note).amount.v.si).toBeCloseTo(seconds, 6);
});

describe('how sure a number is', () => {
  test.each([
    ['tank 95', undefined],
    ['tank about 95', 'about'],
    ['tank around 95 psi', 'about'],
    ['tank roughly 95 psi', 'about'],
    ['tank approx 95 psi', 'about'],
    ['tank ~95', 'about'],
    ['tank 95ish', 'about'],
    ['tank 95 or so', 'about'],
    ['tank just under 95', 'just under'],
    ['tank just over 95', 'just over'],
    ['tank at least 95', 'at least'],
    ['tank less than 95', 'at most'],
    ['tank more than 95 psi', 'at least'],
  ])('%s', (note, about) => {
    expect(only(note).amount.v.about).toBe(about);
  });
  test('a range keeps both ends', () => {
    for (const note of ['tank 90-95 psi', 'tank 90 - 95 psi', 'tank 90 to 95 psi', 'tank between 90 and 95 psi']) {
      const { v } = only(note).amount;
      expect(
        [note, fromSi(v.si, 'psi'), fromSi(v.to ?? NaN, 'psi')].map((x) => (typeof x === 'number' ? Math.round(x) : x)),
      ).toEqual([note, 90, 95]);
    }
  });
  test('the resolution is that of the writing', () => {
    expect(fromSi(only('lr 13 1/4').amount.v.pm, 'in')).toBeCloseTo(1 / 8, 9);
    expect(fromSi(only('lr 13 3/16').amount.v.pm, 'in')).toBeCloseTo(1 / 32, 9);
    expect(fromSi(only('batt 12.1').amount.v.pm, 'V')).toBeCloseTo(0.05, 9);
    expect(fromSi(only('tank 95').amount.v.pm, 'psi')).toBeCloseTo(0.5, 9);
  });
  test('number and unit are kept as typed', () => {
    expect(only('lr l2-1/8"').amount.v.text).toBe('l2-1/8"');
    expect(only('tank 95psi').amount.v.text).toBe('95psi');
  });
});

/** A clock time in the note counts in the coach's zone; one that lies ahead is of a fast clock, or of the day before. */
describe('times of day', () => {
  const denver = { at: Date.parse('2026-10-06T16:00:00Z'), zone: 'America/Denver' }; // 10:00 there
  test.each([
    ['tank 95 at 9:05', '2026-10-06T15:05:00Z'],
    ['tank 95 at 0905', '2026-10-06T15:05:00Z'],
    ['tank 95 at 10:08', '2026-10-06T16:08:00Z'],
    ['tank 95 at 10:15', '2026-10-06T16:00:00Z'],
    ['tank 95 at 11:15', '2026-10-06T16:00:00Z'],
    ['tank 95 at 11:16', '2026-10-05T17:16:00Z'],
    ['tank 95 at 10:30 yesterday', '2026-10-05T16:30:00Z'],
    ['tank 95 at 10:30 today', '2026-10-06T16:00:00Z'],
    ['tank 95 at 22:00', '2026-10-06T04:00:00Z'],
    ['tank 95 at 11pm', '2026-10-06T05:00:00Z'],
    ['tank 95 at 9am', '2026-10-06T15:00:00Z'],
    ['tank 95 at 9:05 yesterday', '2026-10-05T15:05:00Z'],
    ['tank 95, 20 min ago', '2026-10-06T15:40:00Z'],
  ])('%s', (note, iso) => {
    expect(new Date(only(note, denver).at).toISOString()).toBe(new Date(iso).toISOString());
  });
  const at = (facts: readonly Fact[]): number[] => facts.map((f) => (f.at - denver.at) / 60_000);
  test('readings off a clock a quarter of an hour fast keep what lies between them, in this note and the next', () => {
    const first = read('tank 112 at 10:05, tank 104 at 10:15', blankContext('note-id', denver));
    expect(at(first.facts)).toEqual([-10, 0]);
    const later = { ...denver, at: denver.at + 12 * 60_000, recent: [{ id: 'first-1', facts: first.facts }] };
    expect(at(read('tank 96 at 10:25', blankContext('note-id', later)).facts)).toEqual([10]);
    expect(at(read('tank 96 at 10:10 today', blankContext('note-id', later)).facts)).toEqual([10]);
  });
  test('what was taken of a time ahead is shown as assumed, and a tap says the other', () => {
    const told = (note: string, more: Partial<Context> = {}): unknown => {
      const c = blankContext('note-id', { ...denver, ...more });
      return tell(read(note, c), c, note).map((t) => [t.words, t.from, t.mends]);
    };
    expect(told('tank 110 at 22:00')).toEqual([
      [
        "tank 110 psi at 22:00, taken as yesterday's",
        'assumed',
        [{ label: 'now', text: 'scratch that, tank 110 now' }],
      ],
    ]);
    expect(told('left rear 13 at 11:30')).toEqual([
      [
        "left rear 13 in at 11:30, taken as yesterday's",
        'assumed',
        [
          { label: '23:30 yesterday', text: 'scratch that, left rear 13 at 23:30 yesterday' },
          { label: 'now', text: 'scratch that, left rear 13 now' },
        ],
      ],
    ]);
    expect(told('left rear 13 at 10:15')).toEqual([
      [
        'left rear 13 in at 10:15, that clock taken as 15 min fast',
        'assumed',
        [{ label: 'yesterday', text: 'scratch that, left rear 13 at 10:15 yesterday' }],
      ],
    ]);
    const before = read('tank 95 at 10:15', blankContext('note-id', denver)).facts;
    expect(told('left rear 13 at 9:50', { recent: [{ id: 'before-1', facts: before }] })).toEqual([
      [
        'left rear 13 in at 9:50, that clock taken as 15 min fast',
        'assumed',
        [{ label: 'clock is right', text: 'scratch that, left rear 13 at 9:50 today' }],
      ],
    ]);
  });
  test('the night the clocks change back is an hour longer', () => {
    // London leaves summer time on 2026-10-25 at 01:00 UTC: 22:00 the evening before is 21:00 UTC
    const morning = { at: Date.parse('2026-10-25T08:00:00Z'), zone: 'Europe/London' };
    expect(new Date(only('tank 95 at 22:00', morning).at).toISOString()).toBe('2026-10-24T21:00:00.000Z');
  });
});
