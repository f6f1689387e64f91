/** Draws one coach: the sheet's values with a small error, and a stated spread for what the sheet lacks. Pure by seed. */
import { atmosphereAt, roomTemperature } from '../core/air.ts';
import { pumpUpTime } from '../core/pump-up.ts';
import { ImpossibleInput, si } from '../core/quantity.ts';
import { wireResistance } from '../core/wire.ts';
import type { Sheet } from '../sheet/schema.ts';
import { conductanceOfHole, gamma, gasConstant, heatAtVolume } from './gas.ts';
import { type CoachParams, type Pair, checkParams } from './params.ts';
import { type Rng, makeRng } from './rng.ts';
import { type Spread, spread } from './spread.ts';

/** `seed`: which coach of this sheet; `typical`: every spread at its middle, for demonstrations and tests. */
export type CoachDraw = { seed: number; typical?: boolean; panel?: boolean; protection?: boolean };

type Amounts = { si: number };
type Draws = {
  of: (name: Spread) => number;
  pair: (name: Spread) => Pair;
  /** The sheet's value with the error of a real coach, or a draw. */
  near: (given: Amounts | undefined, name: Spread) => number;
  exact: (given: Amounts | undefined, name: Spread) => number;
  within: (given: { low: Amounts; high: Amounts } | undefined) => number | undefined;
};

const draws = (rng: Rng, typical: boolean): Draws => {
  const of = (name: Spread): number => {
    const { low, high, law } = spread[name];
    if (typical) return law === 'log' ? Math.sqrt(low * high) : (low + high) / 2;
    return law === 'log' ? rng.log(low, high) : rng.uniform(low, high);
  };
  return {
    of,
    pair: (name) => [of(name), of(name)],
    near: (given, name) => (given === undefined ? of(name) : given.si * of('sheetError')),
    exact: (given, name) => {
      const drawn = of(name);
      return given === undefined ? drawn : given.si;
    },
    within: (given) => {
      const share = typical ? 0.5 : rng.next();
      return given === undefined ? undefined : given.low.si + share * (given.high.si - given.low.si);
    },
  };
};

const wireAt20 = (wire: { awg: number; length: Amounts }): number =>
  wireResistance(wire.awg, si(wire.length.si), roomTemperature);

const bar = 1e5;

export const makeCoach = (sheet: Sheet, draw: CoachDraw): CoachParams => {
  if (!Number.isInteger(draw.seed)) throw new ImpossibleInput('seed', draw.seed, 'a whole number');
  const rng = makeRng(draw.seed);
  const d = draws(rng, draw.typical ?? false);
  const { supply, pump, valves, springs, heights, electrics } = sheet;

  const atmosphere: number = atmosphereAt(si(d.exact(sheet.altitude, 'altitude')));
  const tank = d.near(supply?.tank, 'tank');
  const cutIn = d.within(supply?.cutIn) ?? d.of('cutIn');
  const cutOut = d.within(supply?.cutOut) ?? cutIn + d.of('band');
  const hasProtection = draw.protection ?? supply?.protection !== undefined;
  const panel = draw.panel ?? (sheet.panel !== null && sheet.panel !== undefined);

  const count = springs?.perSide ?? 2;
  const area = count * d.near(springs?.area, 'area');
  const lever = springs?.leverRatio ?? d.of('lever');
  const carried = (given: { low: Amounts; high: Amounts } | undefined): number =>
    (d.within(given) ?? d.of('bellowsPressure')) * area * lever;
  const load: Pair = [carried(springs?.pressure?.left), carried(springs?.pressure?.right)];
  const rideLength = springs?.rideLength?.si ?? 0.26;
  const toStops =
    heights?.toStops?.si ??
    (springs?.rideLength && springs.stopLength
      ? (springs.rideLength.si - springs.stopLength.si) / lever
      : d.of('toStops'));
  const volume = count * d.near(springs?.volume, 'bellowsVolume');

  const flow0 = d.of('delivery');
  const error = d.of('sheetError');
  const rows = pump?.delivery?.map((r) => [r.at.si, r.flow.si] as const);
  const nominal: CoachParams['delivery'] = rows ?? [
    [0, flow0],
    [3 * bar, flow0 * 0.75],
    [6 * bar, flow0 * 0.56],
    [9 * bar, flow0 * 0.42],
  ];
  const from = pump?.pumpUp?.from.si ?? 0;
  const to = pump?.pumpUp?.to.si ?? cutIn;
  const lines = d.exact(supply?.lines, 'lines');
  const fullMass = (9 * bar * tank) / (gasConstant * 293);
  const wall = d.of('wall');
  const bellowsMass = (5 * bar * volume) / (gasConstant * 293);
  const corner = d.of('cornerStiffness');
  const twist = d.of('frameTwist');
  const contacts = d.of('contactResistance');
  const feedDrawn = d.of('feedResistance');
  const groundDrawn = d.of('groundResistance');
  const currentLow = d.exact(pump?.current?.low, 'currentLow');
  const span = d.of('currentSpan');
  const tolerance = heights?.leftRear?.tolerance.si ?? d.of('tolerance');

  return checkParams({
    atmosphere,
    ambient: d.of('ambient'),
    nightDrop: d.of('nightDrop'),
    parked: d.of('parked'),
    criticalRatio: d.of('criticalRatio'),
    thermal: 'real',
    tank,
    lines,
    wall,
    tankToWall: (fullMass * heatAtVolume) / d.of('tankGasTime'),
    wallToAir: wall / d.of('tankWallTime'),
    protection: hasProtection ? (supply?.protection?.si ?? d.of('protection')) : null,
    regulator: supply?.regulator?.si ?? null,
    relief: Math.max(d.exact(supply?.relief, 'relief'), cutOut + 0.5 * bar),
    solenoid: valves?.solenoid ?? false,
    tankWeep: d.of('tankWeep'),
    supplyWeep: d.of('supplyWeep'),
    bellowsWeep: d.pair('bellowsWeep'),
    inlet: d.pair('inlet'),
    exhaust: d.pair('exhaust'),
    deadBand: [d.near(valves?.deadBand, 'deadBand'), d.near(valves?.deadBand, 'deadBand')],
    delay: [d.within(valves?.delay) ?? d.of('delay'), d.within(valves?.delay) ?? d.of('delay')],
    closeAt: d.pair('closeAt'),
    setError: d.pair('setError'),
    startAt: d.pair('startBand'),
    heightPerArm: valves?.heightPerArm ?? d.of('heightPerArm'),
    panel: panel
      ? { ownCheck: sheet.panel?.ownCheck ?? false, fill: d.of('panelFill'), empty: d.of('panelEmpty') }
      : null,
    area,
    volume,
    areaSlope: (d.of('areaSlope') * area) / rideLength,
    lever,
    bellowsToAir: (bellowsMass * heatAtVolume * gamma) / d.of('bellowsTime'),
    load,
    rollStiffness: (corner * twist) / (1 + twist) / 2,
    frontShows: 1 / (1 + twist),
    springUneven: d.of('springUneven'),
    rearHeight: [
      d.exact(heights?.leftRear?.nominal, 'rideHeight'),
      d.exact(heights?.rightRear?.nominal ?? heights?.leftRear?.nominal, 'rideHeight'),
    ],
    frontHeight: [
      d.exact(heights?.leftFront?.nominal, 'frontHeight'),
      d.exact(heights?.rightFront?.nominal ?? heights?.leftFront?.nominal, 'frontHeight'),
    ],
    toStops,
    toTop: d.of('toTop'),
    stopStiffness: d.of('stopStiffness'),
    floor: d.pair('floor'),
    delivery: nominal.map(([at, flow]) => [at, flow * error] as const),
    dischargeRise: d.of('dischargeRise'),
    pumpRise: d.of('pumpRise'),
    pumpTime: d.of('pumpTime'),
    thermalTrip: d.of('thermalTrip'),
    cutIn,
    cutOut,
    unloader: supply?.unloader ?? rng.chance(0.6),
    relay: supply?.relay ?? rng.chance(0.7),
    currentLow,
    currentHigh: pump?.current?.high.si ?? currentLow + span,
    fuse: d.exact(pump?.fuse, 'fuse'),
    minVolts: d.exact(pump?.minVolts, 'minVolts'),
    emf: d.of('emf'),
    emfEngine: d.of('emfEngine'),
    batteryResistance: d.of('batteryResistance'),
    feedResistance: contacts + (electrics?.feed ? wireAt20(electrics.feed) : feedDrawn),
    groundResistance: electrics?.ground ? wireAt20(electrics.ground) + 0.002 : groundDrawn,
    gaugeStep: d.exact(supply?.gaugeStep, 'gaugeStep'),
    gaugeBias: d.of('gaugeBias'),
    tapeStep: d.exact(heights?.tapeStep, 'tapeStep'),
    limits: {
      cutIn: [supply?.cutIn?.low.si ?? cutIn - 0.2 * bar, supply?.cutIn?.high.si ?? cutIn + 0.2 * bar],
      cutOut: [supply?.cutOut?.low.si ?? cutOut - 0.2 * bar, supply?.cutOut?.high.si ?? cutOut + 0.2 * bar],
      tolerance,
      // 49 CFR 393.207(f): 3 psi in 5 minutes, where the sheet has no limit of its own.
      leakFall: supply?.leakLimit?.fall.si ?? 20_684,
      leakOver: supply?.leakLimit?.over.si ?? 300,
      pumpUp: {
        from,
        to,
        time:
          pump?.pumpUp?.time.si ??
          pumpUpTime(
            nominal.map(([at, flow]) => ({ at: si(at), flow: si(flow) })),
            si(tank + lines),
            si(from),
            si(to),
            si(atmosphere),
          ),
      },
      bellows: [load[0] / area / lever, load[1] / area / lever],
      drop: electrics?.drop?.si ?? 0.8,
    },
  });
};

/**
 * Free air at a gauge pressure, m3/s: straight between the rows, carried on past the last, never below zero. As
 * core/pump-up.ts, without its checks: it stands in the innermost loop and the rows were checked with the parameters.
 */
export const deliveryAt = (rows: CoachParams['delivery'], gauge: number): number => {
  let i = 1;
  while (i < rows.length - 1 && gauge > rows[i]![0]) i++;
  const [p0, q0] = rows[i - 1]!;
  const [p1, q1] = rows[i]!;
  return Math.max(0, q0 + ((q1 - q0) * (Math.max(gauge, rows[0]![0]) - p0)) / (p1 - p0));
};

/** Conductance, m3/(s Pa), of a round hole of `diameter` m with the coefficient of a sharp edge. */
export const hole = (diameter: number, coefficient = 0.65): number =>
  conductanceOfHole((coefficient * Math.PI * diameter * diameter) / 4);
