/** The rest of the core: what physics and the trade ask of each calculation, and every refusal. */
import { double, integer, property, tuple } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chargeBand, gravityAt80F, shareFrom } from '../../server/core/battery.ts';
import { feedingFall, fitSink, sideLeak, timeToHeight } from '../../server/core/bellows-leak.ts';
import { guiltyLeg } from '../../server/core/circuit-legs.ts';
import { cycleOf, deliveryFromCycle, dutyOf, leakFromOff } from '../../server/core/duty.ts';
import { pressureAfter } from '../../server/core/decay.ts';
import { kneeOf } from '../../server/core/fall-shape.ts';
import { atTemperature, coolingThatImitates, sinkByCooling } from '../../server/core/gas-law.ts';
import { armChange, attitudeOf, leanOf, offsetsOf, torsionTurns } from '../../server/core/heights.ts';
import { fitLine } from '../../server/core/line-fit.ts';
import { airVolume, deliveryAt, meanDelivery, pumpUpTime, speedShare } from '../../server/core/pump-up.ts';
import { ImpossibleInput, si } from '../../server/core/quantity.ts';
import { readingDeviation } from '../../server/core/reading-error.ts';
import { dueOf } from '../../server/core/service.ts';
import { fitShims } from '../../server/core/shims.ts';
import {
  massCarried,
  naturalFrequency,
  pressureFor,
  springForce,
  springRate,
  squeezed,
} from '../../server/core/spring.ts';
import { adviseSwitch, bandOf } from '../../server/core/switch-band.ts';
import { angleOver, offsetOver, scrub, thrustOf, totalToe } from '../../server/core/toe.ts';
import { toSi } from '../../server/core/units.ts';
import {
  dropOf,
  gaugeName,
  resistanceOf,
  smallestWireFor,
  wireArea,
  wireDiameter,
  wireResistance,
} from '../../server/core/wire.ts';
import { counterexample } from './counterexample.ts';

const pa = si<never>(101_325);
const room = si<never>(293.15);
const between = (min: number, max: number) => double({ min, max, noNaN: true });
const deg = Math.PI / 180;

describe('bellows by the tape', () => {
  it('is A dh/dt p_abs/p_atm: 84 in2, 5/8 in in 30 min, lever 0.8 at 57 psi is 0.1159 L/min free air, worked by hand', () => {
    const q = sideLeak(toSi(5 / 8, 'in') / 1800, 0.8, si(toSi(84, 'in2')), si(toSi(57, 'psi')), pa);
    // 84 in2 x 0.8 x 0.625 in / 30 min = 1.4 in3/min = 0.022942 L/min, times 71.696/14.696.
    expect(q / toSi(1, 'L/min')).toBeCloseTo(1.4 * 0.016387064 * (71.69595 / 14.69595), 5);
  });
  it('a tank that feeds it falls by the same mass', () => {
    expect(feedingFall(si(1e-5), 0.02, pa)).toBeCloseTo((1e-5 * 101_325) / 0.02, 9);
  });
  it('exact readings give the exact rate, and time to a height fits it', () => {
    const readings = [0, 600, 1200].map((t) => ({ t, h: si<never>(0.35 - 1e-6 * t), sd: 1e-3, tSd: 0 }));
    expect(fitSink(readings).rate).toBeCloseTo(1e-6, 12);
    expect(timeToHeight(si(0.35), si(0.34), 1e-6)).toBeCloseTo(10_000, 6);
    expect(timeToHeight(si(0.35), si(0.36), 1e-6)).toBe(0);
    expect(timeToHeight(si(0.35), si(0.34), 0)).toBe(Infinity);
  });
});

describe('where a fall stops', () => {
  const fall = (plateau: number | null) =>
    [0, 30, 60, 90, 120, 150, 180].map((minutes) => {
      const p = pressureAfter(si(7e5), 1e-4, si(minutes * 60), pa);
      return { t: minutes * 60, p: si<never>(plateau === null ? p : Math.max(plateau, p)), sd: 3000, tSd: 0 };
    });
  it('is found within the gauge', () => {
    const knee = kneeOf(fall(4e5), pa);
    expect(knee).not.toBeNull();
    expect(Math.abs(knee!.at - 4e5)).toBeLessThan(6000);
  });
  it('is not seen in one steady decay, nor in three readings', () => {
    expect(kneeOf(fall(null), pa)).toBeNull();
    expect(kneeOf(fall(4e5).slice(0, 3), pa)).toBeNull();
  });
});

describe('temperature', () => {
  it('there and back is the same gauge pressure, and hotter is higher', () => {
    expect(
      counterexample(
        property(between(1e5, 1e6), between(250, 320), between(250, 320), (p, a, b) => {
          const there = atTemperature(si(p), si(a), si(b), pa);
          const back = atTemperature(there, si(b), si(a), pa);
          return Math.abs(back - p) < 1e-4 && (b > a ? there >= p : there <= p);
        }),
      ),
    ).toBeNull();
  });
  it('imitating a leak is the inverse: cooled by that much, it has fallen by that much', () => {
    const k = coolingThatImitates(si(7e5), 2e4, si(294), pa);
    expect(atTemperature(si(7e5), si(294), si(294 - k), pa)).toBeCloseTo(6.8e5, 5);
  });
  it('a bellows at constant load shortens with absolute temperature', () => {
    expect(sinkByCooling(si(0.254), 0.8, si(293.15), si(273.15))).toBeCloseTo((0.254 * 20) / 293.15 / 0.8, 9);
    expect(sinkByCooling(si(0.254), 1, room, room)).toBe(0);
  });
});

describe('pump', () => {
  const curve = [
    { at: si<never>(0), flow: si<never>(7e-4) },
    { at: si<never>(3e5), flow: si<never>(5e-4) },
    { at: si<never>(8e5), flow: si<never>(3e-4) },
  ];
  it('fills in the time of the logarithm where delivery falls in a straight line', () => {
    const two = [curve[0]!, { at: si<never>(7e5), flow: si<never>(1e-4) }];
    const slope = (1e-4 - 7e-4) / 7e5;
    const exact = (0.02 / (101_325 * slope)) * Math.log((7e-4 + slope * 6e5) / 7e-4);
    expect(pumpUpTime(two, si(0.02), si(0), si(6e5), pa)).toBeCloseTo(exact, 2);
  });
  it('parts add up, more volume takes longer, a leak takes longer, and past the pump it never ends', () => {
    expect(
      counterexample(
        property(between(0.005, 0.1), between(0, 3e5), between(1e4, 3e5), (v, from, rise) => {
          const [a, b] = [from, from + rise];
          const whole = pumpUpTime(curve, si(v), si(a), si(b), pa);
          const middle = a + rise / 3;
          const parts =
            pumpUpTime(curve, si(v), si(a), si(middle), pa) + pumpUpTime(curve, si(v), si(middle), si(b), pa);
          const leaking = pumpUpTime(curve, si(v), si(a), si(b), pa, 1, si(1e-5));
          return (
            Math.abs(parts / whole - 1) < 1e-4 &&
            leaking > whole &&
            pumpUpTime(curve, si(v * 2), si(a), si(b), pa) > whole
          );
        }),
      ),
    ).toBeNull();
    expect(pumpUpTime(curve, si(0.02), si(0), si(8e5), pa, 1, si(4e-4))).toBe(Infinity);
  });
  it('delivery goes through its rows', () => {
    for (const row of curve) expect(deliveryAt(curve, row.at)).toBeCloseTo(row.flow, 12);
    expect(deliveryAt(curve, si(2e6))).toBe(0);
  });
  it('mean delivery is the pump itself where the curve is flat, water takes room, low volts slow it', () => {
    const flat = [
      { at: si<never>(0), flow: si<never>(5e-4) },
      { at: si<never>(9e5), flow: si<never>(5e-4) },
    ];
    const t = pumpUpTime(flat, si(0.02), si(1e5), si(7e5), pa);
    expect(meanDelivery(si(0.02), si(1e5), si(7e5), t, pa)).toBeCloseTo(5e-4, 9);
    expect(airVolume(si(0.02), si(0.005))).toBeCloseTo(0.015, 12);
    expect(speedShare(si(12), si(12))).toBe(1);
    expect(speedShare(si(10), si(12), si(2))).toBeCloseTo(0.8, 12);
    expect(speedShare(si(1), si(12), si(2))).toBe(0);
  });
  it('a cycle gives its leak and delivery back', () => {
    expect(
      counterexample(
        property(
          between(0.005, 0.1),
          between(5e4, 4e5),
          between(1e-4, 1e-3),
          between(0.01, 0.8),
          (v, band, c, share) => {
            const q = c * share;
            const { on, off } = cycleOf(si(v), band, si(c), si(q), pa);
            return (
              Math.abs(leakFromOff(si(v), band, off, pa) / q - 1) < 1e-9 &&
              Math.abs(deliveryFromCycle(si(v), band, on, off, pa) / c - 1) < 1e-9 &&
              Math.abs(dutyOf(on, off) - share) < 1e-9
            );
          },
        ),
      ),
    ).toBeNull();
    expect(cycleOf(si(0.02), 1e5, si(1e-4), si(0), pa).off).toBe(Infinity);
    expect(cycleOf(si(0.02), 1e5, si(1e-4), si(2e-4), pa).on).toBe(Infinity);
  });
});

describe('switch', () => {
  const ranges = [
    { low: 85, high: 91 },
    { low: 112, high: 118 },
  ] as const;
  const advise = (cutIn: number, cutOut: number) =>
    adviseSwitch({ cutIn: si(cutIn), cutOut: si(cutOut) }, ranges[0], ranges[1]);
  it('is left alone, turned where one shift brings both in, renewed where none does', () => {
    expect(advise(88, 115)).toEqual({ do: 'leave' });
    expect(advise(78, 105)).toEqual({ do: 'turn', by: 10 });
    expect(advise(98, 125)).toMatchObject({ do: 'turn', by: -10 });
    expect(advise(88, 100)).toEqual({ do: 'renew', why: 'too close' });
    expect(advise(80, 125)).toEqual({ do: 'renew', why: 'too far apart' });
  });
});

describe('heights', () => {
  it('split into heave, pitch, roll and twist and put together again are the same', () => {
    expect(
      counterexample(
        property(
          tuple(between(-0.1, 0.1), between(-0.1, 0.1), between(-0.1, 0.1), between(-0.1, 0.1)),
          ([a, b, c, d]) => {
            const off = { leftFront: a, rightFront: b, leftRear: c, rightRear: d };
            const back = offsetsOf(attitudeOf(off));
            return (['leftFront', 'rightFront', 'leftRear', 'rightRear'] as const).every(
              (k) => Math.abs(back[k] - off[k]) < 1e-12,
            );
          },
        ),
      ),
    ).toBeNull();
  });
  it('each motion alone shows alone', () => {
    expect(attitudeOf({ leftFront: 1, rightFront: 1, leftRear: -1, rightRear: -1 })).toEqual({
      heave: 0,
      pitch: 1,
      roll: 0,
      twist: 0,
    });
    expect(attitudeOf({ leftFront: -1, rightFront: 1, leftRear: -1, rightRear: 1 })).toEqual({
      heave: 0,
      pitch: 0,
      roll: 1,
      twist: 0,
    });
    expect(attitudeOf({ leftFront: 1, rightFront: -1, leftRear: -1, rightRear: 1 })).toEqual({
      heave: 0,
      pitch: 0,
      roll: 0,
      twist: 1,
    });
  });
  it('lean, arm and turns are geometry', () => {
    expect(leanOf(si(0), si(1), si(1))).toBeCloseTo(Math.PI / 4, 12);
    expect(armChange(si(0.016), 1.6)).toBeCloseTo(0.01, 12);
    expect(torsionTurns(si(0.01), si(0.005))).toBe(2);
  });
});

describe('wheels', () => {
  it('offset and angle are inverse', () => {
    expect(
      counterexample(
        property(
          between(-0.4, 0.4),
          between(0.3, 1.2),
          (a, d) => Math.abs(angleOver(offsetOver(si(a), si(d)), si(d)) - a) < 1e-12,
        ),
      ),
    ).toBeNull();
  });
  it('total adds, thrust is half the difference, scrub is the sideways way', () => {
    expect(totalToe(si(0.1), si(0.2))).toBeCloseTo(0.3, 12);
    expect(thrustOf(si(0.1), si(0.1))).toBe(0);
    expect(thrustOf(si(0), si(0.2))).toBeCloseTo(0.1, 12);
    expect(scrub(si(-0.001), si(1000))).toBeCloseTo(1, 5);
  });
});

describe('shims', () => {
  const bracket = {
    toeBolts: si<never>(0.18),
    camberBolts: si<never>(0.13),
    shims: [0.5e-3, 1e-3, 2e-3].map((t) => si<never>(t)),
    most: si<never>(6e-3),
  };
  const tolerance = { toe: si<never>(0.05 * deg), camber: si<never>(0.3 * deg) };
  it('keep the four bolts in one plane, stay within the stack, and account for what remains', () => {
    expect(
      counterexample(
        property(between(-0.8, 0.8), between(-1, 1), (toe, camber) => {
          const fit = fitShims(si(toe * deg), si(camber * deg), bracket, tolerance);
          const t = (bolt: keyof typeof fit.stacks): number => fit.stacks[bolt].reduce((a, b) => a + b, 0);
          const plane = Math.abs(t('front top') + t('rear bottom') - t('front bottom') - t('rear top')) < 1e-9;
          const most = Object.keys(fit.stacks).every((b) => t(b as 'front top') <= 6e-3 + 1e-9);
          // Read back off the plane that the bolts make.
          const toeMade = Math.atan((t('rear top') - t('front top')) / 0.18);
          const camberMade = Math.atan((t('front top') - t('front bottom')) / 0.13);
          return (
            plane &&
            most &&
            Math.abs(toeMade - fit.toe) < 1e-6 &&
            Math.abs(camberMade - fit.camber) < 1e-6 &&
            Math.abs(fit.toe + fit.toeLeft - toe * deg) < 1e-12
          );
        }),
      ),
    ).toBeNull();
  });
  it('come within half of the thinnest shim where the stack allows', () => {
    expect(
      counterexample(
        property(between(-0.6, 0.6), (toe) => {
          const fit = fitShims(si(toe * deg), si(0), bracket, tolerance);
          return Math.abs(fit.toeLeft) <= Math.atan(0.25e-3 / 0.18) + 0.011 * deg;
        }),
      ),
    ).toBeNull();
  });
  it('nothing wanted, nothing added', () => {
    const fit = fitShims(si(0), si(0), bracket, tolerance);
    expect(Object.values(fit.stacks).flat()).toEqual([]);
  });
});

describe('electrics', () => {
  it('area falls and resistance rises with the number; three sizes halve the area', () => {
    expect(
      counterexample(
        property(
          integer({ min: -3, max: 37 }),
          (n) => wireArea(n + 3) / wireArea(n) > 0.49 && wireArea(n + 3) / wireArea(n) < 0.51,
        ),
      ),
    ).toBeNull();
    expect(wireDiameter(36)).toBeCloseTo(0.000127, 12);
    expect(wireResistance(10, si(0), room)).toBe(0);
  });
  it('the smallest wire serves and the next smaller does not', () => {
    expect(
      counterexample(
        property(between(1, 60), between(1, 30), between(0.2, 1.5), (a, l, v) => {
          const n = smallestWireFor(si(a), si(l), si(v), room);
          if (n === null) return a * wireResistance(-3, si(l), room) > v;
          const smaller = n >= 24 ? null : n + (n >= 0 ? 2 : 1);
          return (
            a * wireResistance(n, si(l), room) <= v &&
            (smaller === null || a * wireResistance(smaller, si(l), room) > v)
          );
        }),
      ),
    ).toBeNull();
  });
  it('drop and resistance are Ohm, names are as written', () => {
    expect(resistanceOf(dropOf(si(20), si(0.05)), si(20))).toBeCloseTo(0.05, 12);
    expect([8, 0, -1, -3].map(gaugeName)).toEqual(['8', '1/0', '2/0', '4/0']);
  });
  it('finds the leg with the largest excess, and none where all are in order', () => {
    const legs = [
      { name: 'feed', drop: si<never>(0.4), due: si<never>(0.35) },
      { name: 'relay', drop: si<never>(1.3), due: si<never>(0.1) },
      { name: 'ground', drop: si<never>(0.5), due: si<never>(0.1) },
    ];
    expect(guiltyLeg(legs, si(20), 0.1)).toMatchObject({ leg: { name: 'relay' }, excess: 1.2 });
    expect(guiltyLeg(legs.slice(0, 1), si(20), 0.1)).toBeNull();
  });
  it('the charge band rises with the volts and holds each table', () => {
    expect(
      counterexample(
        property(between(11.5, 12.8), between(0, 0.3), (v, more) => {
          const [a, b] = [chargeBand(si(v)), chargeBand(si(v + more))];
          return a.low <= a.high && b.low >= a.low - 1e-9 && b.high >= a.high - 1e-9;
        }),
      ),
    ).toBeNull();
    expect(
      shareFrom(
        [
          [0, 11],
          [1, 13],
        ],
        12,
      ),
    ).toBe(0.5);
  });
});

describe('air spring', () => {
  it('force and pressure are inverse; mass goes with the lever', () => {
    expect(pressureFor(springForce(si(4e5), si(0.04)), si(0.04))).toBeCloseTo(4e5, 6);
    expect(massCarried(si(4e5), si(0.05), 0.8)).toBeCloseTo((4e5 * 0.05 * 0.8) / 9.80665, 6);
  });
  it('without an atmosphere its frequency does not depend on the load', () => {
    const f = (p: number): number =>
      naturalFrequency(springRate(si(p), si(0.04), si(0.02), 1.38, si(1e-9)), massCarried(si(p), si(0.04)));
    expect(f(2e5)).toBeCloseTo(f(6e5), 9);
  });
  it('squeezing and letting go is no change', () => {
    expect(squeezed(squeezed(si(4e5), si(0.01), si(0.008), 1.38, pa), si(0.008), si(0.01), 1.38, pa)).toBeCloseTo(
      4e5,
      4,
    );
  });
});

describe('service', () => {
  const day = 86_400_000;
  it('is due by date or distance, and knows the pace', () => {
    const due = dueOf(
      { days: 182, distance: 8e6 },
      { at: 0, odometer: 1e7 },
      { at: 100 * day, odometer: 1.5e7, pace: 5e4 },
    );
    expect(due).toEqual({ date: 182 * day, odometer: 1.8e7, left: 3e6, byPace: 160 * day, overdue: false });
    expect(dueOf({ days: 30 }, { at: 0 }, { at: 31 * day }).overdue).toBe(true);
    expect(dueOf({ distance: 10 }, { at: 0 }, { at: day }).odometer).toBeNull();
  });
});

describe('the line', () => {
  it('goes through two points exactly, weights pull it, and its deviation is the textbook one', () => {
    const line = fitLine([
      { x: 0, y: 1, sd: 1 },
      { x: 2, y: 5, sd: 1 },
    ]);
    expect(line).toMatchObject({ slope: 2, at0: 1, chi2: 0 });
    expect(line.slopeSd).toBeCloseTo(Math.SQRT1_2, 12);
    const weighted = fitLine([
      { x: 0, y: 0, sd: 1 },
      { x: 1, y: 0, sd: 1 },
      { x: 2, y: 1, sd: 1e6 },
    ]);
    expect(weighted.slope).toBeCloseTo(0, 6);
  });
});

describe('refuses', () => {
  const shims = {
    toeBolts: si<never>(0.1),
    camberBolts: si<never>(0.1),
    shims: [si<never>(1e-3)],
    most: si<never>(2e-3),
  };
  const ok = { toe: si<never>(1), camber: si<never>(1) };
  const cases: readonly (readonly [string, () => unknown, RegExp])[] = [
    ['a bellows of no area', () => sideLeak(1e-6, 1, si(0), si(4e5), pa), /area 0/],
    [
      'tape readings out of order',
      () =>
        fitSink([
          { t: 5, h: si(1), sd: 1, tSd: 0 },
          { t: 0, h: si(1), sd: 1, tSd: 0 },
        ]),
      /order of time/,
    ],
    ['a scale without divisions', () => readingDeviation(0), /scale division/],
    ['points without scatter', () => fitLine([{ x: 0, y: 0, sd: 0 }]), /standard deviation/],
    ['temperature at 0 K', () => atTemperature(si(1e5), si(0), room, pa), /temperature 0/],
    ['a fall below vacuum', () => coolingThatImitates(si(1e5), 9e5, room, pa), /fall/],
    [
      'a pump-up that ends below its start',
      () =>
        pumpUpTime(
          [
            { at: si(0), flow: si(1) },
            { at: si(1), flow: si(1) },
          ],
          si(1),
          si(5),
          si(1),
          pa,
        ),
      /end pressure/,
    ],
    [
      'a delivery curve of one row',
      () => deliveryAt([{ at: si(0), flow: si(1) }], si(0)),
      /rows of the delivery curve/,
    ],
    [
      'delivery pressures that fall',
      () =>
        deliveryAt(
          [
            { at: si(5), flow: si(1) },
            { at: si(1), flow: si(1) },
          ],
          si(0),
        ),
      /must rise/,
    ],
    ['a pump-up in no time', () => meanDelivery(si(1), si(0), si(1), si(0), pa), /time 0/],
    ['a tank full of water', () => airVolume(si(0.02), si(0.02)), /volume left for air/],
    ['a negative on time', () => dutyOf(si(-1), si(1)), /on time/],
    ['no on and no off', () => dutyOf(si(0), si(0)), /on and off time together/],
    ['cut-out below cut-in', () => bandOf({ cutIn: si(5), cutOut: si(4) }), /cut-out/],
    [
      'a corner that is no number',
      () => attitudeOf({ leftFront: NaN, rightFront: 0, leftRear: 0, rightRear: 0 }),
      /leftFront/,
    ],
    ['toe larger than the tyre', () => angleOver(si(2), si(1)), /smaller than the diameter/],
    ['an angle past 45 degrees', () => offsetOver(si(1), si(1)), /within 45 degrees/],
    ['a box of no shims', () => fitShims(si(0), si(0), { ...shims, shims: [] }, ok), /number of shim sizes/],
    ['a shim of no thickness', () => fitShims(si(0), si(0), { ...shims, shims: [si(0)] }, ok), /shim thickness/],
    ['half a wire size', () => wireDiameter(8.5), /wire gauge/],
    ['a wire of negative length', () => wireResistance(8, si(-1), room), /wire length/],
    ['a drop without current', () => resistanceOf(si(1), si(0)), /current 0/],
    [
      'volts that rise along the circuit',
      () => guiltyLeg([{ name: 'feed', drop: si(-2), due: si(0) }], si(20), 0.1),
      /drop over feed/,
    ],
    ['a 24 V battery', () => chargeBand(si(24)), /battery volts/],
    ['a hydrometer in points', () => gravityAt80F(1265, room), /specific gravity/],
    ['a spring that pulls', () => pressureFor(si(-1), si(1)), /only pushes/],
    ['an exponent of 2', () => springRate(si(4e5), si(0.04), si(0.02), 2, pa), /exponent/],
    ['a service done tomorrow', () => dueOf({ days: 1 }, { at: 5 }, { at: 1 }), /future/],
    [
      'an odometer running backwards',
      () => dueOf({ distance: 1 }, { at: 0, odometer: 9 }, { at: 1, odometer: 5 }),
      /odometer/,
    ],
    ['an interval of no days', () => dueOf({ days: 0 }, { at: 0 }, { at: 1 }), /service interval/],
  ];
  it.each(cases)('%s', (_name, work, words) => {
    expect(work).toThrow(ImpossibleInput);
    expect(work).toThrow(words);
  });
});
