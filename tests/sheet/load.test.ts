import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadSheet, SheetRefused } from '../../server/sheet/load.ts';

const demo = (name: string): string =>
  readFileSync(new URL(`../../fixtures/sheets/${name}.json`, import.meta.url), 'utf8');
const juniper = (): Record<string, unknown> => JSON.parse(demo('juniper-38')) as Record<string, unknown>;
const refusal = (text: string): SheetRefused => {
  try {
    loadSheet(text, 'mine.json');
  } catch (error) {
    if (error instanceof SheetRefused) return error;
    throw error;
  }
  throw new Error('the sheet was taken');
};

describe('loadSheet', () => {
  it.each(['juniper-38', 'larkfield-11'])('takes the demo sheet %s', (name) => {
    expect(loadSheet(demo(name), name).sheet.id).toBe(name);
  });

  it('keeps an amount as written beside its SI value', () => {
    const { sheet } = loadSheet(demo('juniper-38'), 'x');
    expect(sheet.heights?.leftRear?.nominal).toMatchObject({ text: '13 3/4 in', unit: 'in' });
    expect(sheet.heights?.leftRear?.nominal.si).toBeCloseTo(0.34925, 9);
  });

  it('reads how far a corner rises with its tyres', () => {
    const tyres = { rise: { height: '4 mm', pressure: '100 kPa' } };
    const { sheet } = loadSheet(JSON.stringify({ ...juniper(), tyres }), 'x');
    expect(sheet.tyres?.rise?.height.si).toBeCloseTo(0.004, 9);
    expect(sheet.tyres?.rise?.pressure.si).toBeCloseTo(100_000, 6);
  });

  it('gives the same hash whatever the order of keys, another one for another value', () => {
    const sheet = juniper();
    const turned = JSON.stringify(Object.fromEntries(Object.entries(sheet).toReversed()));
    expect(loadSheet(turned, 'x').hash).toBe(loadSheet(demo('juniper-38'), 'x').hash);
    expect(loadSheet(JSON.stringify({ ...sheet, altitude: '1300 ft' }), 'x').hash).not.toBe(
      loadSheet(demo('juniper-38'), 'x').hash,
    );
  });

  it.each([
    ['no unit', { altitude: '1200' }, 'altitude', 'is not a length with its unit'],
    ['another dimension', { altitude: '1200 psi' }, 'altitude', 'is not a length'],
    ['a field it does not know', { colour: 'blue' }, '', 'colour'],
    ['a zone that is none', { zone: 'Mars/Olympus' }, 'zone', 'not an IANA time zone'],
    ['an id that climbs', { id: '../x' }, 'id', 'lower-case'],
    [
      'limits the wrong way round',
      { supply: { cutIn: { low: '91 psi', high: '85 psi' } } },
      'supply.cutIn.low',
      'low is above high',
    ],
    [
      'a delivery curve that goes back',
      {
        pump: {
          delivery: [
            { at: '40 psi', flow: '1 cfm' },
            { at: '0 psi', flow: '2 cfm' },
          ],
        },
      },
      'pump.delivery',
      'must rise',
    ],
    [
      'tyres that lift by nothing',
      { tyres: { rise: { height: '0 in', pressure: '10 psi' } } },
      'tyres.rise.height',
      'above nothing',
    ],
    ['a rise without its pressure', { tyres: { rise: { height: '1/8 in' } } }, 'tyres.rise.pressure', ''],
  ])('names the field of %s', (_, change, field, words) => {
    const refused = refusal(JSON.stringify({ ...juniper(), ...change }));
    expect(refused.fields.map((f) => f.field)).toContain(field);
    expect(refused.message).toContain(words);
  });

  it('says that a file is not JSON', () => {
    expect(refusal('{"v": 1,').message).toContain('not JSON');
  });
});
