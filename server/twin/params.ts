/** Everything the twin needs of one coach, in SI. `makeCoach` draws it; `checkParams` refuses what cannot be. */
import { ImpossibleInput, finite, positive } from '../core/quantity.ts';

export const sides = ['left', 'right'] as const;
export type Side = (typeof sides)[number];
export type Pair = readonly [left: number, right: number];

export type CoachParams = {
  /** Local atmosphere, absolute Pa; air around in the evening, K; how much colder by morning, K. */
  readonly atmosphere: number;
  readonly ambient: number;
  readonly nightDrop: number;
  readonly parked: number;
  /** b of every opening. */
  readonly criticalRatio: number;
  /** 'real' has heat losses; the other two are the limits of theory. */
  readonly thermal: 'real' | 'isothermal' | 'adiabatic';

  readonly tank: number;
  readonly lines: number;
  /** J/K of the wall; W/K gas to wall when full, and wall to the air around. */
  readonly wall: number;
  readonly tankToWall: number;
  readonly wallToAir: number;
  /** Gauge Pa; null where the coach has none. */
  readonly protection: number | null;
  readonly regulator: number | null;
  readonly relief: number;
  readonly solenoid: boolean;
  /** Conductances of a sound coach's seepage. */
  readonly tankWeep: number;
  readonly supplyWeep: number;
  readonly bellowsWeep: Pair;

  readonly inlet: Pair;
  readonly exhaust: Pair;
  /** m at the end of the arm, s, share of the dead band, m at the measuring point. */
  readonly deadBand: Pair;
  readonly delay: Pair;
  readonly closeAt: Pair;
  readonly setError: Pair;
  readonly startAt: Pair;
  readonly heightPerArm: number;
  readonly panel: { readonly ownCheck: boolean; readonly fill: number; readonly empty: number } | null;

  /** Of a side: all its bellows together. Areas in m2, volumes in m3, at ride height. */
  readonly area: number;
  readonly volume: number;
  /** d(area)/d(bellows travel), m. */
  readonly areaSlope: number;
  readonly lever: number;
  readonly bellowsToAir: number;
  /** N carried by each side at ride height, at the measuring point. */
  readonly load: Pair;
  /** N/m: front springs and frame twist together, per unit of roll; share of a front twist that shows as front roll. */
  readonly rollStiffness: number;
  readonly frontShows: number;
  /** m: left front spring set against the right. */
  readonly springUneven: number;
  readonly rearHeight: Pair;
  readonly frontHeight: Pair;
  readonly toStops: number;
  readonly toTop: number;
  readonly stopStiffness: number;
  readonly floor: Pair;

  /** Free air at gauge pressures that rise, m3/s. */
  readonly delivery: readonly (readonly [gauge: number, flow: number])[];
  readonly dischargeRise: number;
  readonly pumpRise: number;
  readonly pumpTime: number;
  readonly thermalTrip: number;
  readonly cutIn: number;
  readonly cutOut: number;
  readonly unloader: boolean;
  readonly relay: boolean;
  readonly currentLow: number;
  readonly currentHigh: number;
  readonly fuse: number;
  readonly minVolts: number;
  readonly emf: number;
  readonly emfEngine: number;
  readonly batteryResistance: number;
  readonly feedResistance: number;
  readonly groundResistance: number;

  readonly gaugeStep: number;
  readonly gaugeBias: number;
  readonly tapeStep: number;
  /** What the shop holds readings against: from the sheet, or from the draw where the sheet is silent. Gauge Pa, m, s. */
  readonly limits: {
    readonly cutIn: Pair;
    readonly cutOut: Pair;
    readonly tolerance: number;
    readonly leakFall: number;
    readonly leakOver: number;
    readonly pumpUp: { readonly from: number; readonly to: number; readonly time: number };
    readonly bellows: Pair;
    readonly drop: number;
  };
};

const positives = [
  'atmosphere',
  'ambient',
  'tank',
  'lines',
  'wall',
  'relief',
  'heightPerArm',
  'area',
  'volume',
  'lever',
  'toStops',
  'toTop',
  'stopStiffness',
  'rollStiffness',
  'cutIn',
  'cutOut',
  'currentLow',
  'currentHigh',
  'fuse',
  'emf',
  'emfEngine',
  'pumpTime',
  'gaugeStep',
  'tapeStep',
] as const;
const positivePairs = ['inlet', 'exhaust', 'deadBand', 'load', 'rearHeight', 'frontHeight'] as const;
const finitePairs = ['setError', 'floor', 'bellowsWeep', 'delay', 'closeAt', 'startAt'] as const;

/** Returns `p` when such a coach can be; raises ImpossibleInput naming the parameter. */
export const checkParams = (p: CoachParams): CoachParams => {
  for (const name of positives) positive(name, p[name]);
  for (const name of positivePairs) for (const i of [0, 1] as const) positive(`${sides[i]} ${name}`, p[name][i]);
  for (const name of finitePairs) for (const i of [0, 1] as const) finite(`${sides[i]} ${name}`, p[name][i]);
  for (const [i, [at, flow]] of p.delivery.entries()) {
    finite(`pump.delivery[${i}].at`, at);
    if (!(flow >= 0)) throw new ImpossibleInput(`pump.delivery[${i}].flow`, flow, 'it must not be below zero');
    if (i > 0 && at <= p.delivery[i - 1]![0])
      throw new ImpossibleInput(`pump.delivery[${i}].at`, at, 'pressures must rise from row to row');
  }
  if (p.delivery.length < 2) throw new ImpossibleInput('pump.delivery', p.delivery.length, 'two rows or more');
  if (p.cutIn >= p.cutOut) throw new ImpossibleInput('cutIn', p.cutIn, 'it must be below cut-out');
  if (p.relief <= p.cutOut) throw new ImpossibleInput('relief', p.relief, 'it must be above cut-out');
  if (!(p.criticalRatio > 0 && p.criticalRatio < 0.9))
    throw new ImpossibleInput('criticalRatio', p.criticalRatio, 'between 0 and 0.9');
  if (p.nightDrop >= p.ambient) throw new ImpossibleInput('nightDrop', p.nightDrop, 'above absolute zero by morning');
  const down = p.lever * (p.toStops + 0.03);
  if (p.volume - p.area * down - Math.abs(p.areaSlope) * down * down <= 0)
    throw new ImpossibleInput('springs.volume', p.volume, 'it must last down to the stops');
  return p;
};
