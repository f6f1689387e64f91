/**
 * Every typed error of the core: the note that provokes it, the words read, and that the session goes on with the next
 * note. One that no note reaches stands here with the reason, held by calling the calculation itself.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as air from '../../server/core/air.ts';
import { sideLeak, feedingFall, fitSink } from '../../server/core/bellows-leak.ts';
import { guiltyLeg } from '../../server/core/circuit-legs.ts';
import * as decay from '../../server/core/decay.ts';
import * as duty from '../../server/core/duty.ts';
import { coolingThatImitates, sinkByCooling } from '../../server/core/gas-law.ts';
import { armChange, attitudeOf, leanOf, torsionTurns } from '../../server/core/heights.ts';
import { kindOf } from '../../server/core/input-kinds.ts';
import { fitLine } from '../../server/core/line-fit.ts';
import * as moisture from '../../server/core/moisture.ts';
import * as pump from '../../server/core/pump-up.ts';
import { ImpossibleInput, si } from '../../server/core/quantity.ts';
import { readingDeviation } from '../../server/core/reading-error.ts';
import { dueOf } from '../../server/core/service.ts';
import { fitShims, shimFor } from '../../server/core/shims.ts';
import * as spring from '../../server/core/spring.ts';
import { bandOf } from '../../server/core/switch-band.ts';
import { tyreRise } from '../../server/core/tyre-height.ts';
import * as wire from '../../server/core/wire.ts';
import { typingOn, words } from './session.ts';

type Coach = 'juniper-38' | 'larkfield-11';
/** File and input of the error, the coach, the notes before it, the note, and what is read. */
type Typed = readonly [error: string, coach: Coach, before: readonly string[], note: string, says: RegExp];
const j = 'juniper-38';
const l = 'larkfield-11';

const typed: readonly Typed[] = [
  [
    'air.ts altitude',
    j,
    [],
    'what is the atmosphere at 50000 ft',
    /altitude 50000 ft cannot be: it must be between -1640 ft and 36089 ft/,
  ],
  [
    'air.ts altitude',
    l,
    [],
    'what is the atmosphere at 15000 m',
    /altitude 15000 m cannot be: it must be between -500 m and 11000 m/,
  ],
  [
    'air.ts gauge pressure',
    j,
    [],
    'what is -20 psi absolute',
    /gauge pressure -20 psi cannot be: that is below vacuum/,
  ],
  ['air.ts gauge pressure', l, [], 'what is -200 kPa absolute', /gauge pressure -200 kPa cannot be/],
  [
    'battery.ts battery volts',
    j,
    [],
    'battery 20 v',
    /battery not worked out: battery volts 20 V cannot be: a 12 V battery reads 6 to 16 V/,
  ],
  [
    'battery.ts specific gravity',
    j,
    [],
    'battery sg 1.5',
    /specific gravity 1\.5 SG cannot be: a battery reads 1\.05 to 1\.35/,
  ],
  [
    'circuit-legs.ts drop over',
    j,
    [],
    '12.5 at battery, 12.9 at relay, 10.4 at motor, 22 amps, pump running',
    /drop over battery to relay -0\.4 V cannot be: volts rise along no leg: read both ends at the same moment/,
  ],
  [
    'duty.ts on and off time together',
    j,
    [],
    'pump on 0 s, off 0 s',
    /duty not worked out: on and off time together 0 min cannot be/,
  ],
  ['gas-law.ts temperature', j, [], 'tyre at -500 F', /temperature -500 F cannot be: it must be a number above -460 F/],
  ['gas-law.ts temperature', l, [], 'tyre at -300 C', /temperature -300 C cannot be: it must be a number above -273 C/],
  [
    'moisture.ts temperature',
    j,
    [],
    'how much water at 500 F 50 %',
    /temperature 500 F cannot be: it must be from -148 F to 392 F/,
  ],
  [
    'moisture.ts temperature',
    l,
    [],
    'how much water at 150 C 90 %',
    /temperature 150 C cannot be: air of that humidity cannot be so hot/,
  ],
  [
    'moisture.ts humidity',
    j,
    [],
    'how much water at 80 F 170 %',
    /humidity 170 % cannot be: it must be from 0 to 100 %/,
  ],
  [
    'moisture.ts vapour pressure',
    j,
    [],
    'how much water at -140 F 1 %',
    /vapour pressure .* psi absolute cannot be: its dew point must be between/,
  ],
  [
    'pump-up.ts end pressure',
    j,
    [],
    'how long to pump from 110 to 20',
    /end pressure 20 psi cannot be: it cannot be below the start of a pump-up/,
  ],
  ['pump-up.ts end pressure', l, [], 'how long to pump from 800 to 100', /end pressure 100 kPa cannot be/],
  [
    'pump-up.ts water',
    j,
    [],
    'how much air room with -1 gal of water in the tank',
    /water -1 gal cannot be: it cannot be below zero/,
  ],
  [
    'pump-up.ts volume left for air',
    j,
    ['0 to 90 took 4 min'],
    'drained 6 gal of water',
    /pump-up not worked out: volume left for air -1 gal cannot be: it must be a number above 0 gal/,
  ],
  [
    'pump-up.ts volume left for air',
    l,
    [],
    'how long should 0 to 800 take with 30 L of water in the tank',
    /volume left for air -6 L cannot be/,
  ],
  [
    'service.ts odometer',
    j,
    ['odometer 84200, changed the intake filter', '+3000 odometer 80000'],
    'what is due',
    /odometer 80000 mi cannot be: it cannot run backwards/,
  ],
  [
    'service.ts odometer',
    l,
    ['odometer 84200 km'],
    'odometer 80000 km',
    /service not worked out: odometer 80000 km cannot be: it was 84200 km before and cannot run backwards/,
  ],
  [
    'spring.ts gauge pressure',
    j,
    [],
    'how much load at -60 psi',
    /gauge pressure -60 psi cannot be: a spring of air only pushes/,
  ],
  [
    'tank-leak.ts fall',
    j,
    [],
    'drops 200 psi in 10 min',
    /tank leak not worked out: fall 200 psi cannot be: it cannot be more than the 118 psi of cut-out/,
  ],
  [
    'tank-leak.ts fall',
    l,
    [],
    'drops 1200 kPa in 10 min',
    /fall 1200 kPa cannot be: it cannot be more than the 830 kPa of cut-out/,
  ],
  ['toe.ts angle', j, [], '60 deg over 31 in in inches', /angle 60 deg cannot be: it must be within 45 degrees/],
  ['toe.ts diameter', j, [], 'what is 1 in over 0 in in degrees', /diameter 0 in cannot be/],
  [
    'toe.ts offset over diameter',
    j,
    [],
    'what is 2 in over 1 in in degrees',
    /offset over diameter 2 cannot be: it must be smaller than the diameter/,
  ],
  ['toe.ts offset over diameter', l, [], 'what is 20 mm over 10 mm in degrees', /offset over diameter 2 cannot be/],
  [
    'wire.ts wire gauge',
    j,
    [],
    'how much does 50 awg over 10 ft lose at 20 amps',
    /wire gauge 50 cannot be: it must be a whole AWG number from 40 to 4\/0/,
  ],
  [
    'wires.ts wire length',
    j,
    [],
    'wire for 20 amps over 0 ft',
    /wire length 0 ft cannot be: it must be a number above 0 ft/,
  ],
  ['wires.ts wire length', l, [], 'wire for 20 amps over 0 m', /wire length 0 m cannot be/],
  ['wire.ts current', j, [], 'wire for 0 amps over 10 ft', /current 0 A cannot be/],
  ['wire.ts allowed drop', j, [], 'wire for 20 amps over 10 ft with 0 v drop', /allowed drop 0 V cannot be/],
];

describe('an impossible input is named in words, and the session goes on', () => {
  test.each(typed)('%s on %s after %o: %s', async (_error, coach, before, note, says) => {
    const bench = await typingOn(coach);
    for (const text of before) {
      const [, minutes, note] = /^(?:\+(\d+) )?(.*)$/.exec(text)!;
      await bench.type(note!, Number(minutes ?? 1));
    }
    expect(words(await bench.type(note)).replaceAll('\\"', '"')).toMatch(says);
    const after = await bench.type(coach === j ? 'tank 95 psi' : 'tank 700 kPa');
    expect(words(after)).toMatch(/tank at (?:95 psi|700 kPa), in its working band/);
  });
});

const pa = air.standardAtmosphere;
const room = air.roomTemperature;
const bracket = {
  toeBolts: si<never>(0.2),
  camberBolts: si<never>(0.2),
  shims: [si<never>(0.001)],
  most: si<never>(0.01),
};
const tolerance = { toe: si<never>(0.01), camber: si<never>(0.01) };
const curve = [
  { at: si<never>(0), flow: si<never>(1e-3) },
  { at: si<never>(1e5), flow: si<never>(5e-4) },
];
/** Why no note reaches it. */
const sheet = 'from the sheet only: a note cannot say it';
const ordered = 'readings are put in order of time, and two of one time are not fitted, before it';
const held = 'the reader holds such a reading back and asks, or takes no such number';
const guarded = 'the judge asks for it, or says in words of its own that it cannot be, before it is worked out';
const inside = 'worked out by the calculations themselves, never said';
const twin = 'the simulated coach or a paper only';
const unreached: readonly (readonly [error: string, why: string, call: () => unknown])[] = [
  ['air.ts absolute pressure', guarded, () => air.gaugeOf(si(-1), pa)],
  ['air.ts barometer', held, () => air.atmosphereFrom(si(120_000), si(0))],
  ['air.ts atmosphere', inside, () => air.absolute(si(0), si(0))],
  ['air.ts pressure ratio', inside, () => air.chokedShare(-1)],
  ['air.ts effective area', inside, () => air.orificeFlow(si(-1), si(2e5), pa, room)],
  ['air.ts upstream pressure', inside, () => air.effectiveArea(si(1), pa, pa, room)],
  ['air.ts downstream pressure', inside, () => air.orificeFlow(si(1), si(2e5), si(-1), room)],
  ['air.ts temperature', held, () => air.orificeFlow(si(1), si(2e5), pa, si(0))],
  ['air.ts mass flow', inside, () => air.freeAir(si(Number.NaN), pa, room)],
  ['air.ts pressure', inside, () => air.freeAir(si(1), si(0), room)],
  ['air.ts flow', inside, () => air.massOfFreeAir(si(Infinity), pa, room)],
  ['air.ts coefficient', inside, () => air.holeDiameter(si(1), 0)],
  ['air.ts critical ratio b', twin, () => air.ratedValveFlow(1e-8, 1, si(2e5), pa, room)],
  ['air.ts conductance', twin, () => air.ratedValveFlow(-1, 0.3, si(2e5), pa, room)],
  [
    'bellows-leak.ts time of a reading',
    ordered,
    () =>
      fitSink([
        { t: 9, h: si(1), sd: 1, tSd: 0 },
        { t: 0, h: si(1), sd: 1, tSd: 0 },
      ]),
  ],
  ['bellows-leak.ts area', sheet, () => sideLeak(1e-6, 1, si(0), si(4e5), pa)],
  ['bellows-leak.ts lever ratio', sheet, () => sideLeak(1e-6, 0, si(1), si(4e5), pa)],
  ['bellows-leak.ts tank volume', sheet, () => feedingFall(si(1e-6), 0, pa)],
  ['circuit-legs.ts current', guarded, () => guiltyLeg([], si(0), 0)],
  ['decay.ts pressure over atmosphere', inside, () => decay.leakAge(0.5)],
  ['decay.ts time', inside, () => decay.pressureAfter(si(1e5), 1, si(-5), pa)],
  [
    'decay.ts time of a reading',
    ordered,
    () =>
      decay.fitDecay(
        [
          { t: 9, p: si(1e5), sd: 1, tSd: 0 },
          { t: 0, p: si(1e5), sd: 1, tSd: 0 },
        ],
        pa,
      ),
  ],
  ['decay.ts atmosphere', inside, () => decay.freeAirOfFall(1, si(1), si(0))],
  ['decay.ts effective area', inside, () => decay.leakConstant(si(0), si(1), room)],
  ['decay.ts temperature', held, () => decay.leakConstant(si(1), si(1), si(0))],
  ['decay.ts volume', sheet, () => decay.leakConstant(si(1), si(0), room)],
  ['duty.ts on time', held, () => duty.dutyOf(si(-1), si(1))],
  ['duty.ts off time', held, () => duty.dutyOf(si(1), si(-1))],
  ['duty.ts leak', twin, () => duty.cycleOf(si(1), 1e5, si(1), si(-1), pa)],
  ['duty.ts volume', sheet, () => duty.leakFromOff(si(0), 1e5, si(60), pa)],
  ['duty.ts switch band', guarded, () => duty.leakFromOff(si(1), 0, si(60), pa)],
  ['duty.ts atmosphere', inside, () => duty.leakFromOff(si(1), 1e5, si(60), si(0))],
  ['gas-law.ts fall', guarded, () => coolingThatImitates(si(1e5), -1, room, pa)],
  ['gas-law.ts bellows length', sheet, () => sinkByCooling(si(0), 1, room, room)],
  ['gas-law.ts lever ratio', sheet, () => sinkByCooling(si(1), 0, room, room)],
  ['heights.ts leftFront', held, () => attitudeOf({ leftFront: Number.NaN, rightFront: 0, leftRear: 0, rightRear: 0 })],
  ['heights.ts distance across', sheet, () => leanOf(si(0), si(1), si(0))],
  ['heights.ts height per arm travel', sheet, () => armChange(si(1), 0)],
  ['heights.ts height per turn', sheet, () => torsionTurns(si(1), si(0))],
  [
    'line-fit.ts standard deviation',
    inside,
    () =>
      fitLine([
        { x: 0, y: 0, sd: 0 },
        { x: 1, y: 0, sd: 1 },
      ]),
  ],
  [
    'line-fit.ts number of distinct readings',
    ordered,
    () =>
      fitLine([
        { x: 1, y: 0, sd: 1 },
        { x: 1, y: 0, sd: 1 },
      ]),
  ],
  ['moisture.ts mass of air', inside, () => moisture.waterDropped(-1, room, 0.5, pa, pa, room)],
  ['moisture.ts tank pressure', twin, () => moisture.dewPointUnderPressure(room, 0.5, pa, si(1e4), room)],
  ['pump-up.ts rows of the delivery curve', sheet, () => pump.deliveryAt([], si(0))],
  ['pump-up.ts pressure of a delivery row', sheet, () => pump.deliveryAt([curve[1]!, curve[0]!], si(0))],
  ['pump-up.ts volume', sheet, () => pump.pumpUpTime(curve, si(0), si(0), si(1e5), pa)],
  ['pump-up.ts atmosphere', inside, () => pump.pumpUpTime(curve, si(1), si(0), si(1e5), si(0))],
  ['pump-up.ts share of delivery', twin, () => pump.pumpUpTime(curve, si(1), si(0), si(1e5), pa, 0)],
  ['pump-up.ts time', guarded, () => pump.meanDelivery(si(1), si(0), si(1), si(0), pa)],
  ['pump-up.ts tank volume', sheet, () => pump.airVolume(si(0), si(0))],
  ['pump-up.ts volts', guarded, () => pump.speedShare(si(0), si(12))],
  ['pump-up.ts full volts less winding drop', inside, () => pump.speedShare(si(10), si(1), si(1))],
  ['reading-error.ts scale division', inside, () => readingDeviation(0)],
  ['service.ts service interval', sheet, () => dueOf({ days: 0 }, { at: 0 }, { at: 1 })],
  ['service.ts service distance', sheet, () => dueOf({ distance: 0 }, { at: 0 }, { at: 1 })],
  ['service.ts date last done', guarded, () => dueOf({ days: 1 }, { at: 2 }, { at: 1 })],
  ['shims.ts number of shim sizes', sheet, () => fitShims(si(0.01), si(0), { ...bracket, shims: [] }, tolerance)],
  ['shims.ts shim thickness', sheet, () => fitShims(si(0.01), si(0), { ...bracket, shims: [si(0)] }, tolerance)],
  ['shims.ts thickest stack', sheet, () => fitShims(si(0.01), si(0), { ...bracket, most: si(0) }, tolerance)],
  ['shims.ts bolt distance', sheet, () => shimFor(si(0.01), si(0))],
  ['shims.ts toe tolerance', inside, () => fitShims(si(0.01), si(0), bracket, { ...tolerance, toe: si(0) })],
  ['shims.ts camber tolerance', inside, () => fitShims(si(0.01), si(0), bracket, { ...tolerance, camber: si(0) })],
  ['spring.ts force', twin, () => spring.pressureFor(si(-1), si(1))],
  ['spring.ts exponent', inside, () => spring.springRate(si(1e5), si(1), si(1), 2, pa)],
  ['spring.ts area', sheet, () => spring.springForce(si(1), si(0))],
  ['spring.ts lever ratio', sheet, () => spring.massCarried(si(1), si(1), 0)],
  ['spring.ts volume', sheet, () => spring.springRate(si(1e5), si(1), si(0), 1, pa)],
  ['spring.ts stiffness', inside, () => spring.naturalFrequency(si(0), si(1))],
  ['spring.ts mass', inside, () => spring.naturalFrequency(si(1), si(0))],
  ['spring.ts volume before', twin, () => spring.squeezed(si(1e5), si(0), si(1), 1, pa)],
  ['spring.ts volume after', twin, () => spring.squeezed(si(1e5), si(1), si(0), 1, pa)],
  ['switch-band.ts cut-out', guarded, () => bandOf({ cutIn: si(2), cutOut: si(1) })],
  ['tyre-height.ts tyre pressure', guarded, () => tyreRise({ height: si(1), pressure: si(1) }, si(100), si(10))],
  ['tyre-height.ts tyre pressure wanted', sheet, () => tyreRise({ height: si(1), pressure: si(1) }, si(0), si(10))],
  ['tyre-height.ts tyre rise', sheet, () => tyreRise({ height: si(0), pressure: si(1) }, si(100), si(100))],
  [
    'tyre-height.ts pressure of the tyre rise',
    sheet,
    () => tyreRise({ height: si(1), pressure: si(0) }, si(100), si(100)),
  ],
  ['wire.ts wire length', guarded, () => wire.wireResistance(8, si(-1), room)],
  ['wire.ts temperature', inside, () => wire.wireResistance(8, si(1), si(0))],
  ['wire.ts drop', inside, () => wire.resistanceOf(si(Number.NaN), si(1))],
  ['wire.ts resistance', inside, () => wire.dropOf(si(1), si(Number.NaN))],
];

describe('an impossible input that no note reaches is named all the same', () => {
  test.each(unreached)('%s: %s', (error, _why, call) => {
    expect(call).toThrow(ImpossibleInput);
    expect(call).toThrow(new RegExp(`^${error.replace(/^\S+ /, '')} `));
  });
});

test('every error of the core stands in one of the two tables', () => {
  const folders = ['core/', 'findings/', 'findings/judges/', 'findings/workouts/'];
  const raised = folders.flatMap((folder) => {
    const at = new URL(`../../server/${folder}`, import.meta.url);
    return readdirSync(at)
      .filter((name) => name.endsWith('.ts') && name !== 'quantity.ts')
      .flatMap((name) => {
        const text = readFileSync(new URL(name, at), 'utf8').replaceAll(/\/\*\*[^]*?\*\/|\/\/.*/g, '');
        const named = [
          ...text.matchAll(/(?:ImpossibleInput|positive|finite|bounded)\(\s*['`]([^'`$]+?) ?(?:['`]|\$)/g),
        ];
        return named.map((m) => `${name} ${m[1]}`);
      });
  });
  // named by the corner that is no number
  raised.push('heights.ts leftFront');
  const told = [...typed, ...unreached].map(([error]) => error);
  expect([...new Set(raised)].toSorted()).toEqual([...new Set(told)].toSorted());
});

test('every named input is said with its unit, but for those that have none', () => {
  const without = ['pressure ratio', 'critical ratio b', 'conductance', 'coefficient', 'lever ratio', 'exponent'];
  const none = [...typed, ...unreached]
    .map(([error]) => error.replace(/^\S+ /, ''))
    .map((input) => (input === 'drop over' ? 'drop over relay' : input))
    .filter((input) => kindOf(input) === null);
  expect([...new Set(none)].filter((input) => !without.includes(input)).toSorted()).toEqual([
    'date last done',
    'force',
    'height per arm travel',
    'leftFront',
    'mass flow',
    'offset over diameter',
    'pressure over atmosphere',
    'service interval',
    'share of delivery',
    'standard deviation',
    'stiffness',
  ]);
});
