/** A coach with its ailments: every opening, restriction and broken part that the solver and the instruments need. */
import type { CoachParams } from './params.ts';
import type { Ail } from './sizes.ts';

type Two = [left: number, right: number];
export type Arm = 'linked' | 'neutral' | 'fill' | 'exhaust';

/** Conductances m3/(s Pa); Infinity: nothing in the way. */
export type Patient = {
  readonly p: CoachParams;
  readonly ails: readonly Ail[];
  tankLeak: number;
  reliefLeak: number;
  checkLeak: number;
  supplyLeak: number;
  supplyOpen: number;
  protectionOpen: number;
  panelThrough: number;
  readonly inletLeak: Two;
  readonly exhaustLeak: Two;
  readonly panelLineLeak: Two;
  readonly coverLeak: Two;
  readonly deliveryLeak: Two;
  readonly bellowsLeak: Two;
  readonly checkBack: Two;
  readonly feedOpen: Two;
  readonly deliveryOpen: Two;
  readonly stuck: [boolean, boolean];
  readonly reversed: [boolean, boolean];
  readonly slip: Two;
  readonly linkOff: [Arm, Arm];
  panelLeft: 'auto' | 'shut' | 'empty';
  deliveryShare: number;
  currentShare: number;
  unloaderStuck: boolean;
  unloaderLeak: number;
  seized: boolean;
  motorOpen: boolean;
  fuseBlown: boolean;
  relay: 'good' | 'clicks' | 'silent' | 'welded';
  contacts: 'good' | 'burnt' | 'welded';
  cutIn: number;
  cutOut: number;
  emf: number;
  batteryResistance: number;
  feedExtra: number;
  groundExtra: number;
  water: number;
  relief: number;
  thermalTrip: number;
  gauge: { stuckAt: number | null; shift: number };
  /** m: left front against right front set lower by spring or floor. */
  readonly frontDrop: Two;
  readonly floor: Two;
  readonly load: Two;
  nightDrop: number;
  /** s since the pump stopped where nobody waited; null: settled. */
  justPumped: number | null;
  /** Sides whose valve cannot put them right stand lower than they should; m. Drawn by the scene, not by physics. */
  cannotFill: [boolean, boolean];
};

/** The coach with nothing the matter; `ails` are kept for the record, afflict.ts puts them on. */
export const soundPatient = (p: CoachParams, ails: readonly Ail[]): Patient => ({
  p,
  ails,
  tankLeak: 0,
  reliefLeak: 0,
  checkLeak: 0,
  supplyLeak: 0,
  supplyOpen: Infinity,
  protectionOpen: Infinity,
  panelThrough: 0,
  inletLeak: [0, 0],
  exhaustLeak: [0, 0],
  panelLineLeak: [0, 0],
  coverLeak: [0, 0],
  deliveryLeak: [0, 0],
  bellowsLeak: [0, 0],
  checkBack: [0, 0],
  feedOpen: [Infinity, Infinity],
  deliveryOpen: [Infinity, Infinity],
  stuck: [false, false],
  reversed: [false, false],
  slip: [0, 0],
  linkOff: ['linked', 'linked'],
  panelLeft: 'auto',
  deliveryShare: 1,
  currentShare: 1,
  unloaderStuck: false,
  unloaderLeak: 0,
  seized: false,
  motorOpen: false,
  fuseBlown: false,
  relay: 'good',
  contacts: 'good',
  cutIn: p.cutIn,
  cutOut: p.cutOut,
  emf: p.emf,
  batteryResistance: p.batteryResistance,
  feedExtra: 0,
  groundExtra: 0,
  water: 0,
  relief: p.relief,
  thermalTrip: p.thermalTrip,
  gauge: { stuckAt: null, shift: 0 },
  frontDrop: [0, 0],
  floor: [p.floor[0], p.floor[1]],
  load: [p.load[0], p.load[1]],
  nightDrop: p.nightDrop,
  justPumped: null,
  cannotFill: [false, false],
});
