/** A logger's file becomes a note that the reader reads, or a message that names line and column. */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { blankContext, read } from '../../intents/read.ts';
import { atmosphereAt } from '../../server/core/air.ts';
import { fitDecay, leakConstant, pressureAfter } from '../../server/core/decay.ts';
import { type LoggerWishes, noteFromLogger } from '../../server/core/logger-csv.ts';
import { LoggerError } from '../../server/core/logger-error.ts';
import { scatterOf, telling } from '../../server/core/logger-thin.ts';
import { si } from '../../server/core/quantity.ts';
import { readingDeviation } from '../../server/core/reading-error.ts';
import { fromSi, toSi } from '../../server/core/units.ts';
import { makeRng } from '../../server/twin/rng.ts';

const folder = new URL('../../fixtures/logger/', import.meta.url);
const file = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const noon = Date.UTC(2026, 9, 7, 12);
/** Place, seconds from the first reading, value in the unit written. */
const readBack = (text: string): [string, number, number][] => {
  const reading = read(text, blankContext('n', { at: noon, zone: 'UTC', traffic: 'right' }));
  expect(reading.ambiguous).toEqual([]);
  expect(reading.unread).toEqual([]);
  const facts = reading.facts.flatMap((f) => (f.is === 'reading' ? [f] : []));
  return facts.map((f) => [
    f.where.v ?? '',
    (f.at - facts[0]!.at) / 1000,
    Math.round(fromSi(f.amount.v.si, f.amount.v.unit) * 1000) / 1000,
  ]);
};

const good: readonly [string, LoggerWishes, [string, number, number][], RegExp][] = [
  [
    'plain.csv',
    {},
    [
      ['tank', 0, 112],
      ['tank', 300, 111],
      ['tank', 600, 110.5],
    ],
    /^tank\n9:05 112\.0 psi\n9:10 111\.0 psi/,
  ],
  [
    'decimal-comma.csv',
    { column: 3 },
    [
      ['tank', 0, 7.72],
      ['tank', 30, 7.7],
      ['tank', 120, 7.66],
    ],
    /9:05 7\.72 bar\nafter 30 s/,
  ],
  [
    'decimal-comma.csv',
    {},
    [
      ['tank', 0, 7.72],
      ['tank', 30, 7.7],
      ['tank', 120, 7.66],
    ],
    /7\.70 bar/,
  ],
  [
    'elapsed-tab.csv',
    { place: 'tank', startedAt: 545 },
    [
      ['tank', 0, 772],
      ['tank', 30, 771],
      ['tank', 90, 769],
    ],
    /9:05 772 kPa/,
  ],
  [
    'iso-utc.csv',
    { zone: 'America/Denver' },
    [
      ['left bellows', 0, 60],
      ['left bellows', 900, 59.5],
      ['left bellows', 1800, 59.1],
    ],
    /left bellows\n9:05 60\.0 psi\n9:20/,
  ],
  [
    'no-header-midnight.csv',
    { place: 'left rear' },
    [
      ['left rear', 0, 13.75],
      ['left rear', 300, 13.7],
      ['left rear', 900, 13.6],
    ],
    /23:50 13\.75 in\n23:55 13\.70 in\n0:05 13\.60 in/,
  ],
  [
    'row-counter.csv',
    {},
    [
      ['left rear', 0, 350],
      ['left rear', 300, 349],
      ['left rear', 900, 348],
    ],
    /23:50 350 mm\n23:55 349 mm\n0:05/,
  ],
  [
    'epoch.csv',
    { zone: 'UTC' },
    [
      ['battery', 0, 12.62],
      ['battery', 60, 12.6],
      ['battery', 120, 12.59],
    ],
    /battery\n\d+:05 12\.62 V/,
  ],
  [
    'crlf-mbar.csv',
    {},
    [
      ['tank', 0, 7.72],
      ['tank', 60, 7.7],
    ],
    /tank\n21:05 7\.720 bar/,
  ],
];

const more: typeof good = [
  [
    'newest-first.csv',
    {},
    [
      ['tank', 0, 112],
      ['tank', 300, 111],
      ['tank', 600, 110.5],
    ],
    /^tank\n9:05 112\.0 psi\n9:10 111\.0 psi\n9:15 110\.5 psi$/,
  ],
  [
    'newest-first-midnight.csv',
    {},
    [
      ['tank', 0, 772],
      ['tank', 300, 771],
      ['tank', 900, 768],
    ],
    /^tank\n23:50 772 kPa\n23:55 771 kPa\n0:05 768 kPa$/,
  ],
  [
    'date-and-time.csv',
    {},
    [
      ['tank', 0, 112],
      ['tank', 300, 111.5],
      ['tank', 900, 111],
    ],
    /^tank\n23:50 112\.0 psi\n23:55 111\.5 psi\n0:05 111\.0 psi$/,
  ],
  [
    'newest-first-dated.csv',
    {},
    [
      ['tank', 0, 7.72],
      ['tank', 300, 7.71],
      ['tank', 900, 7.68],
    ],
    /^tank\n23:50 7\.72 bar\n/,
  ],
  [
    'several-places.csv',
    {},
    [
      ['tank', 0, 112],
      ['tank', 300, 111],
      ['tank', 600, 110],
      ['left bellows', 0, 58],
      ['left bellows', 300, 58],
      ['left bellows', 600, 57],
      ['right rear', 0, 13.75],
      ['right rear', 300, 13.7],
      ['right rear', 600, 13.65],
      ['ambient', 0, 61],
      ['ambient', 600, 62],
      ['battery', 0, 12.6],
      ['battery', 300, 12.6],
      ['battery', 600, 12.5],
    ],
    /^tank\n9:05 112 psi\n.*\n.*\nleft bellows\n9:05 58 psi\n/,
  ],
  [
    'several-places.csv',
    { column: 4 },
    [
      ['right rear', 0, 13.75],
      ['right rear', 300, 13.7],
      ['right rear', 600, 13.65],
    ],
    /^right rear\n9:05 13\.75 in/,
  ],
  [
    'several-places.csv',
    { place: 'tank' },
    [
      ['tank', 0, 112],
      ['tank', 300, 111],
      ['tank', 600, 110],
    ],
    /^tank\n/,
  ],
  [
    'several-elapsed.csv',
    { startedAt: 545 },
    [
      ['tank', 0, 772],
      ['tank', 30, 771],
      ['tank', 90, 769],
      ['left rear', 0, 350],
      ['left rear', 30, 349],
      ['left rear', 90, 348],
    ],
    /^tank\n9:05 772 kPa\nafter 30 s 771 kPa\nafter 60 s 769 kPa\nleft rear\n9:05 350 mm\nafter 30 s/,
  ],
];

describe('a logger file is read as timed readings', () => {
  test.each([...good, ...more])('%s %o', (name, wishes, expected, text) => {
    const note = noteFromLogger(file(`good/${name}`), wishes);
    expect(note.text).toMatch(text);
    expect(readBack(note.text)).toEqual(expected);
  });

  it('says what it did not read', () => {
    expect(noteFromLogger(file('good/decimal-comma.csv')).said).toContain('Not read: column 4 "Temperatur [°C]".');
    expect(noteFromLogger(file('good/elapsed-tab.csv')).said).toContain('No reading on line 8.');
    expect(noteFromLogger(file('good/elapsed-tab.csv')).said.join(' ')).toContain('no time of day');
    expect(noteFromLogger(file('good/newest-first.csv')).said).toContain(
      'Newest first in the file: read from its last line up.',
    );
    expect(noteFromLogger(file('good/several-places.csv')).said).toEqual([
      'Read: column 2 "Tank psi", column 3 "Left bellows psi", column 4 "RR height (in)", column 5 "Ambient F", column 6 "Battery V".',
      'Not read: column 7 "Speed mph".',
      'No reading of column 5 "Ambient F" on line 3.',
    ]);
  });

  it('has a row here for every good file', () => {
    expect(new Set([...good, ...more].map(([name]) => name))).toEqual(new Set(readdirSync(new URL('good/', folder))));
  });
});

const bad: readonly [string, LoggerWishes, string][] = [
  ['empty.csv', {}, 'the file is empty'],
  ['header-only.csv', {}, 'line 1: a header and no readings'],
  ['one-column.csv', {}, 'line 1: one column only: a time and a value are needed on each line'],
  ['word-for-value.csv', {}, 'line 3, column 2: "sensor fault" is no reading'],
  ['no-unit.csv', {}, 'line 2, column 2: column 2 "Tank" names no unit this bench knows'],
  ['two-pressures.csv', {}, 'line 2: which column is meant? column 2 "Front psi", column 3 "Rear psi"'],
  ['two-pressures.csv', { column: 9 }, 'line 2: the file has 3 columns, there is no column 9'],
  ['two-pressures.csv', { column: 1 }, 'line 2, column 1: column 1 "Time" holds no values to read'],
  ['two-tanks.csv', {}, 'line 2: which column is meant? column 2 "Tank A psi", column 3 "Tank B psi"'],
  ['to-and-fro.csv', {}, 'line 3, column 1: time runs backwards, from "9:15" to "9:10"'],
  ['word-for-date.csv', {}, 'line 3, column 1: "Wednesday" is no date'],
  ['backwards.csv', {}, 'line 3, column 1: time runs backwards, from "9:10" to "9:05"'],
  ['elapsed-no-unit.csv', {}, 'line 2, column 1: "Time" counts in seconds or minutes? Write the unit into its name'],
  ['mixed-units.csv', {}, 'line 3, column 2: "7.6 bar" where the column is in psi'],
  ['uneven.csv', {}, 'line 3: 3 columns where the others have 2'],
  [
    'comma-splits.csv',
    {},
    'line 2: 3 columns where the header has 2: "7,71" looks like a decimal comma in a file with commas between its columns; save it with semicolons between the columns, or with decimal points',
  ],
  ['day-or-month.csv', {}, 'line 3, column 1: "02/03/2026" may be day or month first: write dates as 2026-10-06'],
  ['no-times.csv', {}, 'line 2: no column of times: the columns are "Date", "Tank psi"'],
  ['which-corner.csv', {}, 'line 2, column 2: column 2 "Height mm": what was measured, and where?'],
  ['absolute.csv', {}, 'line 2, column 2: column 2 "Tank psia" names no unit this bench knows'],
  ['one-time.csv', {}, 'line 2, column 1: all readings carry the same time'],
  ['word-for-time.csv', {}, 'line 3, column 1: "later" is no time like "9:05" above it'],
];

describe('a file that cannot be decided is named by line and column', () => {
  test.each(bad)('%s %o', (name, wishes, message) => {
    const attempt = (): unknown => noteFromLogger(file(`bad/${name}`), wishes);
    expect(attempt).toThrow(LoggerError);
    expect(attempt).toThrow(message);
  });

  it('a note of many columns still fits into a note, each place whole', () => {
    const rows = Array.from({ length: 500 }, (_, i) =>
      [i * 10, 112 - i * 0.01, 60 - i * 0.01, 58, 350, 349, 12.6].map((v) => v.toFixed(2)).join(','),
    );
    const note = noteFromLogger(
      `s,Tank psi,Left bellows psi,Right bellows psi,LR mm,RR mm,Battery V\n${rows.join('\n')}`,
    );
    expect(note.text.length).toBeLessThan(4000);
    expect(note.text.match(/^[a-z].*$/gm)?.filter((l) => !l.startsWith('after'))).toEqual([
      'tank',
      'left bellows',
      'right bellows',
      'left rear',
      'right rear',
      'battery',
    ]);
  });

  it('refuses a file too long, one that is no text, and times of another zone without the zone', () => {
    expect(() => noteFromLogger('9:05,1 psi\n'.repeat(800_000))).toThrow('8.8 MB; at most 8 MB');
    expect(() => noteFromLogger('PK\u0003\u0004\u0000\u0000')).toThrow('not text');
    expect(() => noteFromLogger(file('good/iso-utc.csv'))).toThrow('the zone of the coach is needed');
  });

  it('has a row here for every bad file', () => {
    expect(new Set(bad.map(([name]) => name))).toEqual(new Set(readdirSync(new URL('bad/', folder))));
  });
});

/** A tank of 5 gal at 1600 m through a known hole, a reading a second for an hour, 0.2 psi of noise, rounded to 0.1. */
const atmosphere = atmosphereAt(si(1600));
const psi = (pa: number): number => fromSi(pa, 'psi');
const k = leakConstant(si(0.6e-8), si(toSi(5, 'gal')), si(293));
const leaking = (seed: number): { t: number; value: number }[] => {
  const rng = makeRng(seed);
  return Array.from({ length: 3600 }, (_, t) => ({
    t,
    value: Math.round((psi(pressureAfter(si(toSi(112, 'psi')), k, si(t), atmosphere)) + rng.normal(0, 0.2)) * 10) / 10,
  }));
};

describe('thousands of rows are thinned to those that tell', () => {
  it('keeps the rate within its 95 % interval in at least 93 of 100 draws, by 40 rows and the digits it writes', () => {
    let within = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const csv = `Elapsed s,Tank psi\n${leaking(seed)
        .map((s) => `${s.t},${s.value.toFixed(1)}`)
        .join('\n')}`;
      const note = noteFromLogger(csv);
      expect(note.kept).toBeLessThanOrEqual(40);
      const division = note.text.includes('.') ? 0.1 : 1;
      const rows = readBack(note.text).map(([, t, p]) => ({
        t,
        p: si<never>(toSi(p, 'psi')),
        sd: readingDeviation(toSi(division, 'psi')),
        tSd: 0.3,
      }));
      const fit = fitDecay(rows, atmosphere);
      if (Math.abs(fit.k - k) <= 1.96 * fit.kSd) within += 1;
    }
    expect(within).toBeGreaterThanOrEqual(93);
  });

  it('finds the scatter of a sloping row within a tenth', () => {
    expect(scatterOf(leaking(3))).toBeGreaterThan(0.18);
    expect(scatterOf(leaking(3))).toBeLessThan(0.22);
  });

  it('keeps both ends and a knee to within 1 % of the span', () => {
    const samples = Array.from({ length: 5000 }, (_, t) => ({ t, value: t < 3100 ? 112 - t * 0.01 : 81 }));
    const kept = telling(samples);
    expect(kept[0]).toBe(0);
    expect(kept.at(-1)).toBe(4999);
    expect(kept.some((i) => Math.abs(i - 3100) < 50)).toBe(true);
    expect(kept.length).toBeLessThanOrEqual(40);
  });

  it('leaves a short row as it is', () => {
    expect(
      telling([
        { t: 0, value: 1 },
        { t: 1, value: 2 },
      ]),
    ).toEqual([0, 1]);
  });
});
