/** Questions typed as a tech types them, read by the reader and worked out, on both coaches. */
import { describe, expect, it } from 'vitest';
import { read } from '../../intents/read.ts';
import type { Ask } from '../../intents/shapes.ts';
import { workOut } from '../../server/findings/workout.ts';
import type { Worked } from '../../server/findings/workouts/question.ts';
import type { Sheet } from '../../server/sheet/schema.ts';
import { bench, juniper, larkfield, sheetWith, type Bench } from './bench.ts';

const ask = (words: string, sheet: Sheet): Ask => {
  const asks = read(words, {
    note: 'note-100',
    at: Date.UTC(2026, 9, 7),
    zone: 'America/Denver',
    traffic: 'right',
    pressureUnit: sheet.units.pressure,
    lengthUnit: sheet.units.length,
    labels: {},
    open: null,
    recent: [],
  }).asks;
  if (!asks[0]) throw new Error(`no question read in "${words}"`);
  return asks[0];
};
const worked = (words: string, sheet: Sheet, b: Bench = bench(sheet, [[0, 'condition not pump running']])): Worked => {
  const answer = workOut(ask(words, sheet), b.standing, sheet);
  if (!answer) throw new Error(`"${words}" was not answered`);
  return answer;
};
const falling = bench(juniper, [
  [
    0,
    'condition not pump running',
    'condition panel auto',
    'reading pressure @ tank = 112 psi',
    'reading height @ left rear = 13 3/4 in',
  ],
  [30, 'reading pressure @ tank = 104 psi', 'reading height @ left rear = 13 1/2 in'],
]);

describe('questions on the psi and inch coach', () => {
  const cases: readonly (readonly [string, RegExp])[] = [
    ['what does 95 mean', /^tank at 95 psi, in its working band of 85 to 118 psi/],
    ['what should the tank be', /^tank 85 to 118 psi: the pump starts at 85 to 91 psi and stops at 112 to 118 psi/],
    ['whats cut out supposed to be', /^cut-out: 112 to 118 psi \(sheet: supply\.cutOut\)/],
    ['what is the limit on leak down', /^the tank may fall 3 psi in 30 min/],
    ['what should left rear be', /^left rear height: 13 1\/2 to 14 in/],
    ['how much pressure should be in the air bags', /^bellows pressure at ride height: 52 to 62 psi/],
    ['what torque on bag studs', /22 lbf ft \(sheet: torques\)/],
    // By the 20 C copper table 20 ft and back of AWG 8 loses 0.754 V at 30 A, AWG 6 0.474 V; the sheet allows 0.6 V.
    ['wire for 30 A over 20 ft', /^AWG 6 or thicker: 0\.47 V/],
    // atan(0.125/41) is 0.1747 degrees.
    ['what is 1/8 in over 41 in in degrees', /is 0\.175 degrees \(10\.5 minutes/],
    ['0.25 deg over 31 in in inches', /is 0\.135 in \(3\.4 mm\)/],
    ['how much water in a month at 80 F 70 %', /for each hour the pump runs/],
    // 95 psi at 68 F is (109.7 x 499.67/527.67) - 14.7 = 89.2 at 40 F.
    ['tyre at 40 F', /^front tyres: 89\.\d psi at 40 F/],
    ['when is the filter due', /^intake filter: every 182 d or 5000 mi/],
    ['how long should pump up take', /115 psi should take about/],
    ['convert 95 psi to kpa', /^95 psi is 655 kPa$/],
    ['how many turns for 3/8 in', /^2 turns/],
    ['shims for 1/8 toe out 0.5 camber', /^add .*front top.*rear top/],
    ['what does a full water tank do', /^full it weighs 500 lb: up to 7\.\d psi/],
    ['how much load on left rear at 60 psi', /^60 psi carries 40\d\d lb/],
    ['what is the natural frequency', /Hz/],
    ['work out the voltage drop at 22 amps', /lost in good copper/],
    ['what is 12.4 v', /between 65 and 75 % charged/],
    ['how much does 3 psi in 5 min leak', /is 0\.0\d+ cfm/],
    ['how long should the delay be', /6 to 14 s/],
    ['how long to let it settle', /15 minutes/],
    ['what is the atmosphere at 5000 ft', /^12\.23 psi absolute/],
  ];
  it.each(cases)('%s', (words, says) => {
    expect(worked(words, juniper).words).toMatch(says);
  });
  it('how long till it is down: the coach before the tank', () => {
    const answer = worked('how long till it is down', juniper, falling);
    expect(answer.words).toMatch(/^left rear sinks/);
    expect(answer.lines.join()).toMatch(/stays level about 3 hours/);
    expect(answer.drawing?.is).toBe('chart');
  });
  it('will soap show it, will I hear it, how big is the leak', () => {
    expect(worked('will soap show it', juniper, falling).words).toMatch(/^soap will show it: a 1 in/);
    expect(worked('will i hear it', juniper, falling).words).toMatch(/^too little to hear/);
    expect(worked('how big is the leak', juniper, falling).words).toMatch(/^tank: 0\.013\d? cfm/);
    expect(worked('will soap show it', juniper).words).toMatch(/^not known yet/);
  });
  it('every answer with a formula says where its inputs come from', () => {
    const bad = cases
      .map(([words]) => worked(words, juniper))
      .flatMap((w) =>
        (w.why?.inputs ?? []).filter((i) => i.from === '' || i.text === '').map((i) => `${w.words}: ${i.name}`),
      );
    expect(bad).toEqual([]);
  });
});

describe('questions on the kPa and millimetre coach', () => {
  const b = bench(larkfield, [
    [
      0,
      'work replaced @ intake filter',
      'reading odometer = 84200 km',
      'reading on time @ pump = 40 s',
      'reading off time @ pump = 30 min',
    ],
  ]);
  const cases: readonly (readonly [string, RegExp])[] = [
    ['what does 700 kpa mean', /in its working band of 600 to 830 kPa/],
    ['what should the tank be', /^tank 600 to 830 kPa/],
    ['what is the limit on leak down', /20 kPa in 20 min/],
    ['what should left rear be', /349 to 361 mm/],
    ['wire for 25 A over 7 m', /^AWG \d+ or thicker/],
    ['what is 2 mm over 812 mm in degrees', /is 0\.141 degrees/],
    ['how much water at 25 C 60 % in 14 days', /^\d+ ml in 14 days, the pump running 2 % of the time/],
    ['tyre at 5 C', /^front tyres: 65\d kPa at 5 C/],
    ['when is the filter due', /^intake filter: due 6 Apr 2027 or 93200 km \(9000 km to go\)/],
    ['how long to pump from 0 to 800', /^0 kPa to 800 kPa should take about/],
    ['convert 7 bar to psi', /^7 bar is 101\.5 psi/],
    ['how much load at 400 kpa', /kg at the wheels/],
    ['what is 12.4 v', /% charged/],
    ['what shims for 0.2 deg toe', /^add 0\.5 mm rear top, 0\.5 mm rear bottom/],
  ];
  it.each(cases)('%s', (words, says) => {
    expect(worked(words, larkfield, b).words).toMatch(says);
  });
  it('asks for what this sheet does not have', () => {
    expect(worked('how many turns for 10 mm', larkfield).wants?.field).toBe('heights.torsionPerTurn');
    expect(worked('what does a full water tank do', larkfield).wants?.field).toBe('weights.waterTank');
    expect(worked('what torque on bag studs', larkfield).wants?.field).toBe('torques');
  });
});

describe('what cannot be', () => {
  it.each([
    ['how much water at 300 F 70 %', /temperature 300 F cannot be: air of that humidity/],
    ['wire for 30 A over 0 ft', /wire length 0 ft cannot be: it must be a number above 0 ft/],
  ])('%s is said, not raised', (words, says) => {
    expect(worked(words, juniper).words).toMatch(says);
  });
  it('a question of another trade is left alone', () => {
    const other: Ask = {
      ask: 'what is',
      words: 'what is a height valve',
      about: 'height valve',
      facts: [],
      amounts: [],
      spans: [],
    };
    expect(workOut(other, bench(juniper, [[0, 'condition key on']]).standing, juniper)).toBeNull();
  });
  it('a limit the sheet lacks is asked for', () => {
    const sheet = sheetWith((s) => delete s.pump!.current);
    expect(worked('how many amps should it draw', sheet).wants?.field).toBe('pump.current');
  });
});
