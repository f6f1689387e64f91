/**
 * One coach through time: plant, controls and stepper together, with every change of a valve or switch placed where it
 * happens. The solver's step is free; events are found by regula falsi on the step that passes them.
 */
import { ImpossibleInput } from '../core/quantity.ts';
import type { Patient } from './patient.ts';
import {
  type Controls,
  type Sight,
  copyControls,
  cross,
  crossingCount,
  crossings,
  expire,
  openingsFor,
  restControls,
  settlePump,
} from './controls.ts';
import { gasConstant } from './gas.ts';
import { ambientAt, at, makePlant, stateSize } from './plant.ts';
import type { Change, Glimpse, Sim, SimOptions } from './sim-shapes.ts';
import { NoWayOn, makeStepper } from './stepper.ts';

export const makeSim = (q: Patient, options: SimOptions = {}): Sim => {
  const { p } = q;
  const tolerance = options.tolerance ?? 2e-5;
  const longest = options.longest ?? 900;
  const plant = makePlant(q, { start: p.ambient, drop: 0, over: 0, since: 0 });
  const { openings, balance } = plant;
  const controls: Controls = restControls(q);
  const changes: Change[] = [];
  const steps = { taken: 0, tried: 0 };
  const fullTank = ((p.cutOut + p.atmosphere) * p.tank) / (gasConstant * p.ambient);
  const fullBellows = ((p.load[0] / p.area / p.lever + p.atmosphere) * p.volume) / (gasConstant * p.ambient);
  const scale = [
    fullTank,
    fullTank * p.ambient,
    fullTank * 0.05,
    fullBellows,
    fullBellows * p.ambient,
    fullBellows,
    fullBellows * p.ambient,
    300,
    3000,
  ];
  const stepper = makeStepper(plant.rates, stateSize, scale, tolerance);
  const { y } = stepper;
  let t = 0;
  let h = 0.05;
  const sight: Sight = { y: balance.y, tank: 0, pumpHeat: 0 };
  const before = new Float64Array(crossingCount);
  const after = new Float64Array(crossingCount);

  const see = (state: Float64Array): void => {
    sight.tank = plant.tankPressure(state) - p.atmosphere;
    sight.pumpHeat = state[at.pumpHeat]!;
  };
  const log = (what: string): void => {
    if (changes.length < 20_000) changes.push({ t, what });
  };

  /** Tank and supply lines join or part: masses and heat go with them. */
  const joinOrPart = (): void => {
    if (openings.merged && controls.apart) {
      const share = p.lines / (plant.tankVolume + p.lines);
      y[at.supply] = y[at.tank]! * share;
      y[at.tank]! *= 1 - share;
      y[at.tankZ]! *= 1 - share;
    } else if (!openings.merged && !controls.apart) {
      y[at.tankZ]! += y[at.supply]! * ambientAt(plant.air, t);
      y[at.tank]! += y[at.supply]!;
      y[at.supply] = 0;
    }
  };

  /** Brings openings and every overdue change up to date at this moment. */
  const settle = (): void => {
    for (let turn = 0; turn < 40; turn++) {
      joinOrPart();
      openingsFor(q, controls, openings);
      balance.solve(y[at.leftZ]!, y[at.rightZ]!);
      see(y);
      const pumpWas = controls.pump;
      const fuseWas = controls.fuseBlown;
      settlePump(q, controls, sight.tank, t);
      if (controls.pump !== pumpWas) log(controls.pump ? 'pump on' : 'pump off');
      if (controls.fuseBlown && !fuseWas) log('fuse blown');
      crossings(q, controls, sight, before);
      let due = -1;
      for (let i = 0; i < crossingCount; i++) if (before[i]! >= 0) due = i;
      if (due < 0 && controls.pump === pumpWas) break;
      if (due >= 0) note(due);
    }
    openingsFor(q, controls, openings);
    stepper.refresh(t);
    h = 0.05;
  };
  const names = ['left', 'left', 'right', 'right', 'switch', 'protection', 'thermal', ''] as const;
  const note = (index: number): void => {
    const was = index < 4 ? controls.mode[index < 2 ? 0 : 1] : 0;
    cross(q, controls, index, t);
    if (index >= 4) log(names[index]!);
    else if (was !== 0) log(`${names[index]} shuts`);
  };

  const timed = (limit: number): number => {
    let next = Math.min(limit, controls.due[0], controls.due[1]);
    if (controls.retryAt > t) next = Math.min(next, controls.retryAt);
    return next;
  };

  /** One accepted step, at most to `limit`; returns the time reached. */
  const step = (limit: number): number => {
    const end = timed(limit);
    let size = Math.min(h, longest, end - t);
    for (;;) {
      steps.tried += 1;
      const error = stepper.attempt(t, size);
      if (error > 1) {
        if (size < 1e-7) throw new NoWayOn(t);
        size *= Math.max(0.2, 0.9 * error ** (-1 / 3));
        continue;
      }
      h = size * Math.min(4, Math.max(0.3, 0.9 * Math.max(error, 1e-6) ** (-1 / 3)));
      break;
    }
    see(stepper.next);
    crossings(q, controls, sight, after);
    let worst = -1;
    for (let i = 0; i < crossingCount; i++) if (after[i]! > 0 && (worst < 0 || after[i]! > after[worst]!)) worst = i;
    if (worst >= 0) size = narrow(size);
    t = size === end - t ? end : t + size;
    stepper.accept();
    steps.taken += 1;
    see(y);
    crossings(q, controls, sight, before);
    let changed = false;
    for (let i = 0; i < crossingCount; i++)
      if (before[i]! >= 0) {
        note(i);
        changed = true;
        break;
      }
    if (controls.due[0] <= t || controls.due[1] <= t) {
      const was = [...controls.mode];
      expire(controls, t);
      for (const i of [0, 1] as const)
        if (was[i] !== controls.mode[i])
          log(`${i === 0 ? 'left' : 'right'} ${controls.mode[i] === 1 ? 'fills' : 'exhausts'}`);
      changed = true;
    }
    if (controls.retryAt === t) changed = true;
    if (changed) settle();
    return t;
  };

  /** Shrinks a step that passes a change until it ends just past the first one. Returns its size; `next` holds its end. */
  const narrow = (size: number): number => {
    let low = 0;
    let high = size;
    const lowAt = Float64Array.from(before);
    const highAt = Float64Array.from(after);
    const tryAt = (at: number): boolean => {
      stepper.attempt(t, at);
      steps.tried += 1;
      see(stepper.next);
      crossings(q, controls, sight, after);
      return after.some((value) => value > 0);
    };
    for (let turn = 0; turn < 40 && high - low > 1e-6 && highAt.some((value) => value > 1e-4); turn++) {
      let guess = high;
      for (let i = 0; i < crossingCount; i++)
        if (highAt[i]! > 0)
          guess = Math.min(
            guess,
            low + (high - low) * Math.min(1, Math.max(0, -lowAt[i]!) / (highAt[i]! - lowAt[i]!)) + (high - low) * 0.003,
          );
      // Every third turn halves, so that a curve that bends against the secant cannot hold it up.
      if (turn % 3 === 2 || guess >= high) guess = (low + high) / 2;
      if (tryAt(guess)) {
        high = guess;
        highAt.set(after);
      } else {
        low = guess;
        lowAt.set(after);
      }
    }
    tryAt(high);
    return high;
  };

  const look = (): Glimpse => {
    balance.solve(y[at.leftZ]!, y[at.rightZ]!);
    const roll = balance.y[0]! - balance.y[1]!;
    const twist = p.springUneven - q.frontDrop[0] + q.frontDrop[1];
    const frontRoll = roll + p.frontShows * (twist - roll) * 1;
    const mean = -(q.frontDrop[0] + q.frontDrop[1]) / 2;
    const tankPressure = plant.tankPressure(y);
    return {
      t,
      tank: tankPressure - p.atmosphere,
      supply: plant.supplyPressure(t, y) - p.atmosphere,
      bellows: [balance.pressure[0]! - p.atmosphere, balance.pressure[1]! - p.atmosphere],
      rear: [p.rearHeight[0] + balance.y[0]!, p.rearHeight[1] + balance.y[1]!],
      front: [p.frontHeight[0] + mean + frontRoll / 2, p.frontHeight[1] + mean - frontRoll / 2],
      tankTemperature: y[at.tankZ]! / y[at.tank]!,
      ambient: ambientAt(plant.air, t),
      pump: controls.pump,
      engine: controls.engine,
      exhausted: [y[at.exhaustLeft]!, y[at.exhaustRight]!],
      pumpHeat: y[at.pumpHeat]!,
      mass: y[at.tank]! + y[at.supply]! + y[at.left]! + y[at.right]!,
      out: y[at.out]!,
      pumped: y[at.pumped]!,
    };
  };

  const sim: Sim = {
    q,
    controls,
    changes,
    steps,
    look,
    time: () => t,
    advance: (until, every, watch) => {
      if (!(until >= t)) throw new ImpossibleInput('until', until, `not before ${t} s`);
      if (every !== undefined && !(every > 0)) throw new ImpossibleInput('every', every, 'above zero');
      const origin = t;
      const walk = (stop: number): void => {
        for (let now = t; now < stop;) now = step(stop);
      };
      if (every === undefined) {
        walk(until);
        return;
      }
      for (let count = 1; ; count++) {
        const stop = origin + count * every;
        walk(Math.min(until, stop));
        if (stop > until) return;
        watch?.(look());
      }
    },
    set: (change) => {
      if (change.key !== undefined) controls.key = change.key;
      if (change.engine !== undefined) controls.engine = change.engine;
      if (controls.engine) controls.key = true;
      if (change.panel) controls.panel = [...change.panel];
      if (change.arm)
        for (const i of [0, 1] as const)
          if (controls.arm[i] !== change.arm[i]) {
            controls.arm[i] = change.arm[i];
            controls.mode[i] = 0;
            controls.wants[i] = 0;
            controls.due[i] = Infinity;
          }
      if (change.outletClosed !== undefined) controls.outletClosed = change.outletClosed;
      controls.apart =
        controls.outletClosed ||
        q.protectionOpen !== Infinity ||
        (p.protection !== null && (controls.apart ? sight.tank <= p.protection + 2e4 : sight.tank <= p.protection));
      settle();
    },
    tankTo: (gauge) => {
      const target = gauge + p.atmosphere;
      if (!(target > 0)) throw new ImpossibleInput('tank pressure', gauge, 'above vacuum');
      const was = y[at.tank]!;
      const volume = openings.merged ? plant.tankVolume + p.lines : plant.tankVolume;
      y[at.tank] = (target * volume) / (gasConstant * y[at.wall]!);
      y[at.tankZ] = y[at.tank]! * y[at.wall]!;
      const gone = was - y[at.tank]!;
      if (gone > 0) y[at.out]! += gone;
      else y[at.pumped]! -= gone;
      settle();
    },
    stand: (yl, yr) => {
      const ambient = ambientAt(plant.air, t);
      const [left, right] = balance.zAt(yl, yr);
      balance.y[0] = yl;
      balance.y[1] = yr;
      y[at.leftZ] = left;
      y[at.left] = left / ambient;
      y[at.rightZ] = right;
      y[at.right] = right / ambient;
      settle();
    },
    weather: (air) => {
      plant.air = air;
      settle();
    },
    save: () => ({ t, state: [...y], controls: copyControls(controls), air: plant.air }),
    restore: (saved) => {
      t = saved.t;
      y.set(saved.state);
      Object.assign(controls, copyControls(saved.controls));
      plant.air = saved.air;
      openingsFor(q, controls, openings);
      balance.y.fill(0);
      changes.length = 0;
      settle();
    },
    setHeat: (tank) => {
      y[at.tankZ] = y[at.tank]! * tank;
      settle();
    },
  };

  const start = p.ambient;
  y[at.wall] = start;
  y[at.tank] = ((p.cutOut + p.atmosphere) * (plant.tankVolume + p.lines)) / (gasConstant * start);
  y[at.tankZ] = y[at.tank]! * start;
  const [left, right] = balance.zAt(0, 0);
  y[at.leftZ] = left;
  y[at.left] = left / start;
  y[at.rightZ] = right;
  y[at.right] = right / start;
  if (q.protectionOpen !== Infinity) controls.apart = true;
  settle();
  return sim;
};
