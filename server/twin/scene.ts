/**
 * One coach in the states that checks are made in, each reached once and kept: driven, settled, after the night. The
 * stages follow the order of a shop: as found comes from a night that began after a drive.
 */
import { afflict } from './afflict.ts';
import type { Patient } from './patient.ts';
import type { CoachParams } from './params.ts';
import type { Rng } from './rng.ts';
import { makeSim } from './sim.ts';
import type { Glimpse, Saved, Sim } from './sim-shapes.ts';
import type { Ail } from './sizes.ts';

export type Moment = Pick<Glimpse, 't' | 'tank' | 'bellows' | 'rear' | 'exhausted' | 'pump' | 'ambient'>;
export type Night = { start: Glimpse; half: Glimpse; end: Glimpse; every: Moment[]; puffs: [number, number] };

export type Scene = {
  readonly q: Patient;
  readonly rng: Rng;
  /** A simulator put in the state asked for; each call starts from there afresh. */
  readonly driven: () => Sim;
  readonly settled: () => Sim;
  readonly morning: () => Sim;
  /** The night that led to the morning, panel as it was left. */
  readonly asLeft: () => Night;
  /** The night in AUTO, settled before; the first 30 minutes are the check in AUTO. */
  readonly night: () => Night;
  /** Sides hold still: panel SHUT, or both arms pinned neutral where there is no panel. */
  readonly shut: (sim: Sim) => void;
  readonly auto: (sim: Sim) => void;
};

const neverFills = (q: Patient): boolean =>
  q.motorOpen || q.seized || q.fuseBlown || q.relay === 'clicks' || q.relay === 'silent' || q.contacts === 'burnt';

const auto = (s: Sim): void => s.set({ panel: ['auto', 'auto'], arm: ['linked', 'linked'], outletClosed: false });

export const makeScene = (p: CoachParams, ails: readonly Ail[], rng: Rng): Scene => {
  const q = afflict(p, ails);
  const sim = makeSim(q);
  const spareTank = rng.uniform(0, 1);
  const drops = [0, 1].map((i) => ({ hit: rng.chance(0.75), far: rng.uniform(0.1, 1.1), i }));
  const engineOnTest = rng.chance(0.5);
  const kept = new Map<string, Saved>();
  const stage = (name: string, reach: () => void): Sim => {
    const saved = kept.get(name);
    if (saved) sim.restore(saved);
    else {
      reach();
      kept.set(name, sim.save());
      sim.restore(kept.get(name)!);
    }
    return sim;
  };
  const shut = (s: Sim): void =>
    p.panel === null ? s.set({ arm: ['neutral', 'neutral'] }) : s.set({ panel: ['shut', 'shut'] });

  const driven = (): Sim =>
    stage('driven', () => {
      const start = ([0, 1] as const).map((i) => {
        const drop = drops[i]!;
        // A reversed valve runs away from the first bump on.
        if (q.reversed[i]) return (drop.far > 0.6 ? 1.2 : -1.2) * p.deadBand[i] * p.heightPerArm;
        if (q.panelLeft === 'empty') return -p.toStops - 0.004;
        if (q.cannotFill[i] && drop.hit) return -drop.far * p.toStops;
        return p.startAt[i] * p.deadBand[i] * p.heightPerArm;
      });
      sim.tankTo(neverFills(q) ? spareTank * p.cutOut : p.cutIn + spareTank * (p.cutOut - p.cutIn));
      sim.stand(start[0]!, start[1]!);
      sim.set({ key: true, engine: true });
      sim.advance(20 * 60);
    });

  /** Pumps up once more, or borrows shop air, then key off; waits 15 minutes unless nobody waited. */
  const settled = (): Sim =>
    stage('settled', () => {
      driven();
      auto(sim);
      sim.set({ key: true, engine: engineOnTest });
      if (sim.look().tank > p.cutIn) sim.tankTo(Math.min(q.cutIn, p.cutOut) * 0.985);
      for (let turn = 0; turn < 40; turn++) {
        sim.advance(sim.time() + 30);
        if (!sim.controls.pump) break;
      }
      if (sim.look().tank < p.cutIn) sim.tankTo(p.cutOut);
      sim.set({ key: false, engine: false });
      sim.advance(sim.time() + (q.justPumped ?? 900));
    });

  const nights = new Map<string, Night>();
  const sleep = (name: string): Night => {
    const start = sim.look();
    sim.weather({ start: p.ambient, drop: q.nightDrop, over: p.parked, since: sim.time() });
    const every: Moment[] = [];
    const keep = (g: Glimpse): void => {
      every.push({ ...g });
    };
    sim.advance(start.t + 1800, 60, keep);
    const half = sim.look();
    const puffs: [number, number] = [0, 0];
    for (const change of sim.changes) {
      if (change.what === 'left exhausts') puffs[0] += 1;
      if (change.what === 'right exhausts') puffs[1] += 1;
    }
    sim.advance(start.t + p.parked, 300, keep);
    const night = { start, half, end: sim.look(), every, puffs };
    nights.set(name, night);
    kept.set(name, sim.save());
    return night;
  };
  const night = (): Night => {
    const had = nights.get('night');
    if (had) return had;
    settled();
    return sleep('night');
  };
  const asLeft = (): Night => {
    if (q.panelLeft === 'auto') return night();
    const had = nights.get('left');
    if (had) return had;
    driven();
    sim.set({ key: false, engine: false });
    return sleep('left');
  };
  return {
    q,
    rng,
    driven,
    settled,
    asLeft,
    night,
    shut,
    auto,
    morning: () => {
      asLeft();
      sim.restore(kept.get(q.panelLeft === 'auto' ? 'night' : 'left')!);
      return sim;
    },
  };
};
