/**
 * Runs one coach through a script and keeps what happened: the trace of a night, a pump-up, a shop morning. Pure; the same
 * parameters, ailments and script give the same trace.
 */
import { ImpossibleInput } from '../core/quantity.ts';
import { afflict } from './afflict.ts';
import type { Arm } from './patient.ts';
import type { PanelPosition } from './controls.ts';
import type { CoachParams } from './params.ts';
import type { Air } from './plant.ts';
import { makeSim } from './sim.ts';
import type { Change, Glimpse, SimOptions } from './sim-shapes.ts';
import type { Ail } from './sizes.ts';

export type Deed =
  | { do: 'key'; on: boolean }
  | { do: 'engine'; on: boolean }
  | { do: 'panel'; left: PanelPosition; right: PanelPosition }
  | { do: 'arms'; left: Arm; right: Arm }
  | { do: 'outlet'; closed: boolean }
  /** Gauge Pa at once: drained, or filled with shop air. */
  | { do: 'tank'; to: number }
  /** m above ride height, at once. */
  | { do: 'stand'; left: number; right: number };

export type Script = {
  /** s; rows of the trace are `every` s apart. */
  readonly until: number;
  readonly every: number;
  readonly deeds: readonly { at: number; deed: Deed }[];
  readonly weather?: Air;
};

/** Columns of equal length: s, gauge Pa, m, K. */
export type Trace = {
  readonly rows: readonly Glimpse[];
  readonly changes: readonly Change[];
  readonly steps: number;
};

/** Raises ImpossibleInput for parameters, sizes or times that cannot be; never returns a number that is not one. */
export const run = (p: CoachParams, ails: readonly Ail[], script: Script, options: SimOptions = {}): Trace => {
  if (!(script.until > 0 && Number.isFinite(script.until)))
    throw new ImpossibleInput('script until', script.until, 'above zero');
  const sim = makeSim(afflict(p, ails), options);
  if (script.weather) sim.weather(script.weather);
  const rows: Glimpse[] = [];
  const deeds = script.deeds.toSorted((a, b) => a.at - b.at);
  for (const { at, deed } of deeds) {
    if (!(at >= 0 && at <= script.until)) throw new ImpossibleInput(`time of "${deed.do}"`, at, 'within the script');
    // Rows keep to their own times whatever is done between them.
    while (rows.length * script.every < at) {
      sim.advance(rows.length * script.every);
      rows.push(sim.look());
    }
    sim.advance(at);
    switch (deed.do) {
      case 'key':
        sim.set({ key: deed.on, ...(deed.on ? {} : { engine: false }) });
        break;
      case 'engine':
        sim.set({ engine: deed.on });
        break;
      case 'panel':
        sim.set({ panel: [deed.left, deed.right] });
        break;
      case 'arms':
        sim.set({ arm: [deed.left, deed.right] });
        break;
      case 'outlet':
        sim.set({ outletClosed: deed.closed });
        break;
      case 'tank':
        sim.tankTo(deed.to);
        break;
      case 'stand':
        sim.stand(deed.left, deed.right);
        break;
      default:
        deed satisfies never;
    }
  }
  for (; rows.length * script.every <= script.until; rows.push(sim.look())) sim.advance(rows.length * script.every);
  return { rows, changes: sim.changes, steps: sim.steps.taken };
};
