/**
 * What switches: key, panel, arms, height valves with dead band and delay, pressure switch, thermal cut-out, protection
 * valve. `openingsFor` turns it into conductances; `crossings` says how far each next change is; `cross` makes it.
 */
import type { Arm, Patient } from './patient.ts';
import { blowsFuse, headPressure, running, stalled, starts, turnsAbove } from './electrics.ts';
import { inSeries } from './gas.ts';
import type { Openings } from './plant.ts';

export type PanelPosition = 'auto' | 'fill' | 'empty' | 'shut';
type Two<T> = [left: T, right: T];

export type Controls = {
  key: boolean;
  engine: boolean;
  panel: Two<PanelPosition>;
  arm: Two<Arm>;
  outletClosed: boolean;
  /** 0 neutral, 1 filling, 2 exhausting; `due` is when the delay ends, Infinity when none runs. */
  mode: Two<0 | 1 | 2>;
  due: Two<number>;
  wants: Two<0 | 1 | 2>;
  calls: boolean;
  pump: boolean;
  stoppedAt: number;
  retryAt: number;
  tooHot: boolean;
  fuseBlown: boolean;
  apart: boolean;
};

export const restControls = (q: Patient): Controls => ({
  key: false,
  engine: false,
  panel: [q.panelLeft, q.panelLeft],
  arm: ['linked', 'linked'],
  outletClosed: false,
  mode: [0, 0],
  due: [Infinity, Infinity],
  wants: [0, 0],
  calls: false,
  pump: false,
  stoppedAt: -1e9,
  retryAt: -Infinity,
  tooHot: false,
  fuseBlown: q.fuseBlown,
  apart: false,
});

export const copyControls = (c: Controls): Controls => ({
  ...c,
  panel: [...c.panel],
  arm: [...c.arm],
  mode: [...c.mode],
  due: [...c.due],
  wants: [...c.wants],
});

/** Sets every conductance for the controls as they stand. */
export const openingsFor = (q: Patient, c: Controls, o: Openings): void => {
  const { p } = q;
  o.merged = !c.apart;
  o.between = c.apart && !c.outletClosed && q.protectionOpen !== Infinity ? q.protectionOpen : 0;
  o.pump = c.pump;
  o.engine = c.engine;
  o.tankLeak = p.tankWeep + q.tankLeak + q.reliefLeak + (c.pump ? 0 : q.checkLeak);
  o.supplyLeak = p.supplyWeep + q.supplyLeak;
  const cut = p.solenoid && !c.key;
  for (const i of [0, 1] as const) {
    const seat = q.inletLeak[i] + (c.mode[i] === 1 ? p.inlet[i] : 0);
    const path = cut ? 0 : inSeries(q.supplyOpen, q.feedOpen[i], seat);
    const port = q.exhaustLeak[i] + (c.mode[i] === 2 ? p.exhaust[i] : 0);
    const valveLeak = q.panelLineLeak[i] + q.coverLeak[i];
    const line = q.deliveryOpen[i];
    const panel = p.panel === null ? 'auto' : c.panel[i];
    o.leak[i] = p.bellowsWeep[i] + q.deliveryLeak[i] + q.bellowsLeak[i] + q.panelThrough;
    o.feed[i] = 0;
    o.back[i] = 0;
    o.exhaust[i] = 0;
    o.dump[i] = 0;
    o.throughExhaust[i] = 0;
    o.throughLeak[i] = 0;
    if (panel === 'auto') {
      o.feed[i] = inSeries(path, line);
      o.back[i] = q.checkBack[i] > 0 && seat > 0 ? inSeries(path, q.checkBack[i], line) : 0;
      o.exhaust[i] = port > 0 ? inSeries(port, line) : 0;
      if (valveLeak > 0) o.leak[i] += inSeries(valveLeak, line);
      continue;
    }
    // Cut off from its bellows the valve's body is a dead end; what comes through the inlet leaves by port and leaks.
    const ways = port + valveLeak;
    if (ways > 0 && path > 0) {
      const through = inSeries(path, ways);
      o.throughExhaust[i] = (through * port) / ways;
      o.throughLeak[i] = (through * valveLeak) / ways;
    }
    if (panel === 'fill') {
      o.feed[i] = inSeries(q.supplyOpen, p.panel!.fill, line);
      o.back[i] = p.panel!.ownCheck ? 0 : o.feed[i];
    } else if (panel === 'empty') o.dump[i] = inSeries(p.panel!.empty, line);
    else if (q.panelThrough > 0 && ways === 0 && path > 0) o.feed[i] = inSeries(path, q.panelThrough, line);
  }
};

/** Travel at the end of an arm, m, above neutral; what the valve feels. `y` above ride height at the measuring point. */
const travel = (q: Patient, c: Controls, i: 0 | 1, y: number): number => {
  const { p } = q;
  const held = c.arm[i] !== 'linked' ? c.arm[i] : q.linkOff[i];
  const felt =
    held === 'neutral'
      ? 0
      : held === 'fill'
        ? -2 * p.deadBand[i]
        : held === 'exhaust'
          ? 2 * p.deadBand[i]
          : (y - q.slip[i] - p.setError[i]) / p.heightPerArm;
  return q.reversed[i] ? -felt : felt;
};

/** What the changes depend on, read at one moment. Gauge Pa. */
export type Sight = { y: Float64Array; tank: number; pumpHeat: number };

export const crossingCount = 8;
/**
 * How far past its threshold each possible change is, in shares of what counts (positive: due now). 0, 1: left valve up
 * and down; 2, 3: right; 4: switch; 5: protection; 6: thermal; 7: none.
 */
export const crossings = (q: Patient, c: Controls, s: Sight, into: Float64Array): void => {
  const { p } = q;
  for (const i of [0, 1] as const) {
    const band = p.deadBand[i];
    const u = travel(q, c, i, s.y[i]!) / band;
    const k = 2 * i;
    if (q.stuck[i]) {
      into[k] = -1;
      into[k + 1] = -1;
      continue;
    }
    if (c.mode[i] === 1) {
      into[k] = u + p.closeAt[i];
      into[k + 1] = -1;
    } else if (c.mode[i] === 2) {
      into[k] = -1;
      into[k + 1] = p.closeAt[i] - u;
    } else if (c.wants[i] === 1) {
      into[k] = u + 1 - 1e-6;
      into[k + 1] = -1;
    } else if (c.wants[i] === 2) {
      into[k] = -1;
      into[k + 1] = 1 - 1e-6 - u;
    } else {
      into[k] = u - 1;
      into[k + 1] = -u - 1;
    }
  }
  into[4] = (c.calls ? s.tank - q.cutOut : q.cutIn - s.tank) / 1e5;
  into[5] =
    p.protection === null || q.protectionOpen !== Infinity || c.outletClosed
      ? -1
      : (c.apart ? s.tank - p.protection - 2e4 : p.protection - s.tank) / 1e5;
  into[6] = c.tooHot ? (q.thermalTrip * 0.5 - s.pumpHeat) / 100 : (s.pumpHeat - q.thermalTrip) / 100;
  into[7] = -1;
};

/** Makes the change `index` of `crossings` at time `t`. */
export const cross = (q: Patient, c: Controls, index: number, t: number): void => {
  const { p } = q;
  if (index < 4) {
    const i = index < 2 ? 0 : 1;
    if (c.mode[i] !== 0) c.mode[i] = 0;
    else if (c.wants[i] !== 0) {
      c.wants[i] = 0;
      c.due[i] = Infinity;
    } else {
      c.wants[i] = index % 2 === 0 ? 2 : 1;
      c.due[i] = t + p.delay[i];
    }
    return;
  }
  if (index === 4) c.calls = !c.calls;
  else if (index === 5) c.apart = !c.apart;
  else if (index === 6) c.tooHot = !c.tooHot;
};

/** A delay that has run out opens its valve. */
export const expire = (c: Controls, t: number): void => {
  for (const i of [0, 1] as const)
    if (c.due[i] <= t) {
      c.mode[i] = c.wants[i];
      c.wants[i] = 0;
      c.due[i] = Infinity;
    }
};

/** Whether power is asked through to the motor. */
export const called = (q: Patient, c: Controls): boolean => {
  if (c.fuseBlown) return false;
  if (q.relay === 'welded') return true;
  if (!c.key || q.relay !== 'good') return false;
  return q.contacts === 'welded' || (q.contacts === 'good' && c.calls);
};

/** Starts or stops the pump as the circuit says; a motor that cannot get away hums and takes the fuse, or waits. */
export const settlePump = (q: Patient, c: Controls, tank: number, t: number): void => {
  const power = called(q, c) && !q.motorOpen && !c.tooHot;
  if (c.pump) {
    if (!power || running(q, c.engine, tank).motor < turnsAbove) {
      c.pump = false;
      c.stoppedAt = t;
    }
    return;
  }
  if (!power || t < c.retryAt) return;
  if (starts(q, c.engine, headPressure(q, tank, t - c.stoppedAt))) c.pump = true;
  else if (blowsFuse(q, stalled(q, c.engine))) c.fuseBlown = true;
  else c.retryAt = t + 300;
};
