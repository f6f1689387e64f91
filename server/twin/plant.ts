/**
 * What flows where: the state of the air and its rate of change for given openings. Between events (events.ts) the
 * openings stand still and the rates are smooth. State is mass and z = mass times temperature of each volume: pressure is
 * z R / V without a division by mass, and mass is kept exactly by any linear stepper.
 */
import type { Patient } from './patient.ts';
import { type Balance, makeBalance } from './body.ts';
import { deliveryAt } from './coach.ts';
import { running, speedShare } from './electrics.ts';
import {
  gamma,
  gasConstant,
  heatAtVolume,
  massFlow,
  referenceDensity,
  referenceTemperature,
  restingRatio,
} from './gas.ts';

/** Places in the state vector. `supply` is used only while shut off from the tank; masses kg, z kg K, K, and ledgers kg. */
export const at = {
  tank: 0,
  tankZ: 1,
  supply: 2,
  left: 3,
  leftZ: 4,
  right: 5,
  rightZ: 6,
  wall: 7,
  pumpHeat: 8,
  /** Gone to the air around, and taken from it by the pump. */
  out: 9,
  pumped: 10,
  /** Through each height valve's exhaust port. */
  exhaustLeft: 11,
  exhaustRight: 12,
} as const;
export const stateSize = 13;
/** Only these are watched for error; the ledgers follow. */
export const watched = 9;

/** Conductances as they stand between two events. Index 0 left, 1 right. */
export type Openings = {
  readonly feed: Float64Array;
  readonly back: Float64Array;
  /** Bellows to the exhaust port of the height valve, to the panel's own port, and through leaks. */
  readonly exhaust: Float64Array;
  readonly dump: Float64Array;
  readonly leak: Float64Array;
  /** Supply to air through a valve cut off from its bellows: by the exhaust port, and by leaks. */
  readonly throughExhaust: Float64Array;
  readonly throughLeak: Float64Array;
  tankLeak: number;
  supplyLeak: number;
  /** Tank to supply while they are apart. */
  between: number;
  merged: boolean;
  pump: boolean;
  engine: boolean;
};

export const shutOpenings = (): Openings => ({
  feed: new Float64Array(2),
  back: new Float64Array(2),
  exhaust: new Float64Array(2),
  dump: new Float64Array(2),
  leak: new Float64Array(2),
  throughExhaust: new Float64Array(2),
  throughLeak: new Float64Array(2),
  tankLeak: 0,
  supplyLeak: 0,
  between: 0,
  merged: true,
  pump: false,
  engine: false,
});

/** A relief full open, m3/(s Pa), and the Pa over its setting at which it is. Estimates. */
export const reliefConductance = 3e-9;
export const reliefRamp = 4e4;

export type Air = { readonly start: number; readonly drop: number; readonly over: number; readonly since: number };
/** Air around at time t, K: down from evening to dawn along half a cosine, then as it is. */
export const ambientAt = (air: Air, t: number): number => {
  const share = air.over <= 0 ? 1 : Math.min(1, Math.max(0, (t - air.since) / air.over));
  return air.start - (air.drop * (1 - Math.cos(Math.PI * share))) / 2;
};

export type Plant = {
  readonly q: Patient;
  readonly balance: Balance;
  readonly openings: Openings;
  air: Air;
  readonly tankVolume: number;
  readonly linesVolume: number;
  readonly rates: (t: number, state: Float64Array, into: Float64Array) => void;
  /** Absolute Pa. */
  readonly tankPressure: (state: Float64Array) => number;
  readonly supplyPressure: (t: number, state: Float64Array) => number;
};

export const makePlant = (q: Patient, air: Air): Plant => {
  const { p } = q;
  const balance = makeBalance(q);
  const openings = shutOpenings();
  const b = p.criticalRatio;
  const patm = p.atmosphere;
  const dry = p.tank * (1 - q.water);
  const lines = p.lines;
  const real = p.thermal === 'real';
  const isothermal = p.thermal === 'isothermal';
  const regulated = p.regulator === null ? Infinity : p.regulator + patm;
  const rootT = Math.sqrt(referenceTemperature);
  /** Choked flow to the air around per unit of conductance: most flows of a night are these. */
  const toAir = (up: number, temperature: number): number => {
    if (up <= patm) return 0;
    const r = patm / up;
    const full = (up * referenceDensity * rootT) / Math.sqrt(temperature);
    return r <= b ? full : massFlow(1, b, up, temperature, patm);
  };
  const wornHeat = p.pumpRise * (1 + 0.5 * (1 - q.deliveryShare));
  const gained = new Float64Array(2);
  const reliefOpens = q.relief + patm;
  const plant: Plant = {
    q,
    balance,
    openings,
    air,
    tankVolume: dry,
    linesVolume: lines,
    tankPressure: (s) => (s[at.tankZ]! * gasConstant) / (openings.merged ? dry + lines : dry),
    supplyPressure: (t, s) =>
      openings.merged ? plant.tankPressure(s) : (s[at.supply]! * gasConstant * ambientAt(plant.air, t)) / lines,
    rates: (t, s, d) => {
      const o = openings;
      const ambient = ambientAt(plant.air, t);
      const tankMass = s[at.tank]!;
      const tankT = s[at.tankZ]! / tankMass;
      const pTank = (s[at.tankZ]! * gasConstant) / (o.merged ? dry + lines : dry);
      const supplyT = o.merged ? tankT : ambient;
      const pSupply = o.merged ? pTank : (s[at.supply]! * gasConstant * ambient) / lines;
      const pFeed = pSupply < regulated ? pSupply : regulated;
      balance.solve(s[at.leftZ]!, s[at.rightZ]!);

      let tankLoss = o.tankLeak * toAir(pTank, tankT);
      if (pTank > reliefOpens)
        tankLoss += reliefConductance * Math.min(1, (pTank - reliefOpens) / reliefRamp) * toAir(pTank, tankT);
      let supplyLoss = o.supplyLeak * toAir(pSupply, supplyT);
      let intoSupply = 0;
      let intoSupplyHeat = 0;
      let out = tankLoss + supplyLoss;

      for (let i = 0; i < 2; i++) {
        const mass = s[i === 0 ? at.left : at.right]!;
        const z = s[i === 0 ? at.leftZ : at.rightZ]!;
        const temperature = z / mass;
        const pr = balance.pressure[i]!;
        let fed = 0;
        let back = 0;
        if (pFeed > pr) fed = o.feed[i]! > 0 ? massFlow(o.feed[i]!, b, pFeed, supplyT, pr, restingRatio) : 0;
        else if (o.back[i]! > 0) back = massFlow(o.back[i]!, b, pr, temperature, pSupply, restingRatio);
        const perC = toAir(pr, temperature);
        const exhausted = o.exhaust[i]! * perC;
        const lost = (o.dump[i]! + o.leak[i]!) * perC;
        const perS = o.throughExhaust[i]! + o.throughLeak[i]! > 0 ? toAir(pFeed, supplyT) : 0;
        const throughExhaust = o.throughExhaust[i]! * perS;
        const through = throughExhaust + o.throughLeak[i]! * perS;
        supplyLoss += fed + through;
        intoSupply += back;
        intoSupplyHeat += back * temperature;
        const gone = exhausted + lost + back;
        out += exhausted + lost + through;
        d[i === 0 ? at.exhaustLeft : at.exhaustRight] = exhausted + throughExhaust;
        d[i === 0 ? at.left : at.right] = fed - gone;
        if (isothermal) d[i === 0 ? at.leftZ : at.rightZ] = (fed - gone) * ambient;
        else {
          const loss = real ? (p.bellowsToAir * (temperature - ambient)) / heatAtVolume : 0;
          gained[i] = gamma * (fed * supplyT - gone * temperature) - loss;
        }
      }
      if (!isothermal) {
        // First law of both sides at once, since the body joins their volumes: z' = gained - p V' / cv, V' = V_z z'.
        const pl = balance.pressure[0]! / heatAtVolume;
        const pr = balance.pressure[1]! / heatAtVolume;
        const a = 1 + pl * balance.volumePerZ[0]!;
        const b1 = pl * balance.volumePerZ[1]!;
        const c = pr * balance.volumePerZ[2]!;
        const e = 1 + pr * balance.volumePerZ[3]!;
        const det = a * e - b1 * c;
        d[at.leftZ] = (e * gained[0]! - b1 * gained[1]!) / det;
        d[at.rightZ] = (a * gained[1]! - c * gained[0]!) / det;
      }

      let pumpIn = 0;
      let pumpT = ambient;
      if (o.pump) {
        const circuit = running(q, o.engine, pTank - patm);
        const free =
          deliveryAt(p.delivery, pTank - patm) *
          speedShare(circuit.motor) *
          q.deliveryShare *
          (1 - q.unloaderLeak) *
          (1 - 0.001 * s[at.pumpHeat]!);
        pumpIn = (Math.max(0, free) * patm) / (gasConstant * ambient);
        pumpT = ambient + p.dischargeRise + 0.35 * s[at.pumpHeat]!;
      }
      d[at.pumpHeat] = ((o.pump ? wornHeat : 0) - s[at.pumpHeat]!) / p.pumpTime;

      let tankIn = pumpIn - tankLoss;
      let tankHeat = pumpIn * pumpT - tankLoss * tankT;
      if (o.merged) {
        tankIn += intoSupply - supplyLoss;
        tankHeat += intoSupplyHeat - supplyLoss * tankT;
        d[at.supply] = 0;
      } else {
        const crossing = o.between > 0 ? massFlow(o.between, b, pTank, tankT, pSupply) : 0;
        tankIn -= crossing;
        tankHeat -= crossing * tankT;
        d[at.supply] = intoSupply + crossing - supplyLoss;
      }
      d[at.tank] = tankIn;
      const wall = s[at.wall]!;
      if (isothermal) {
        d[at.tankZ] = tankIn * ambient;
        d[at.wall] = 0;
      } else {
        // Free convection follows density; a thin gas gives little heat to its wall.
        const exchange = real ? p.tankToWall * Math.min(1, pTank / 9e5) ** 0.5 * (tankT - wall) : 0;
        d[at.tankZ] = gamma * tankHeat - exchange / heatAtVolume;
        d[at.wall] = real ? (exchange - p.wallToAir * (wall - ambient)) / p.wall : 0;
      }
      d[at.out] = out;
      d[at.pumped] = pumpIn;
    },
  };
  return plant;
};
