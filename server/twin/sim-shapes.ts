/** What a simulated coach can be asked and told: the shapes of sim.ts. */
import type { Controls } from './controls.ts';
import type { Arm, Patient } from './patient.ts';
import type { Air } from './plant.ts';

/** Everything that changes, as plain data: kept, copied, put back. */
export type Saved = { t: number; state: number[]; controls: Controls; air: Air };

/** What can be seen of the coach at one moment. Pa gauge, m, K, s, kg. */
export type Glimpse = {
  t: number;
  tank: number;
  supply: number;
  bellows: [number, number];
  /** Rail over the wheels' ground, m, true. */
  rear: [number, number];
  front: [number, number];
  tankTemperature: number;
  ambient: number;
  pump: boolean;
  engine: boolean;
  exhausted: [number, number];
  pumpHeat: number;
  mass: number;
  out: number;
  pumped: number;
};

export type Change = { t: number; what: string };

export type Sim = {
  readonly q: Patient;
  readonly controls: Controls;
  readonly changes: Change[];
  readonly steps: { taken: number; tried: number };
  readonly look: () => Glimpse;
  readonly time: () => number;
  /** Runs until `until`, s; `watch` sees the coach at every multiple of `every` s. */
  readonly advance: (until: number, every?: number, watch?: (g: Glimpse) => void) => void;
  readonly set: (
    change: Partial<Pick<Controls, 'key' | 'engine' | 'panel' | 'outletClosed'>> & { arm?: [Arm, Arm] },
  ) => void;
  /** Brings the tank to a gauge pressure at once: drained, or filled with shop air at the wall's temperature. */
  readonly tankTo: (gauge: number) => void;
  /** Puts both sides at heights above ride height, bellows at the temperature around. */
  readonly stand: (yl: number, yr: number) => void;
  readonly weather: (air: Air) => void;
  readonly save: () => Saved;
  readonly restore: (saved: Saved) => void;
  /** Where the heights would go if only the air inside decided. */
  readonly setHeat: (tank: number) => void;
};

export type SimOptions = { tolerance?: number; longest?: number };
