/**
 * Practice: a coach with something hidden the matter, checked deed by deed as on a real one. Pure: the same seed, level,
 * sheet and deeds give the same answers, so a session is kept as its seed and its deeds. State is plain data (its
 * infinities do not pass through JSON: replay the deeds instead).
 */
import type { Unit } from '../core/units.ts';
import type { Sheet } from '../sheet/schema.ts';
import { afflict } from './afflict.ts';
import { tape } from './instruments.ts';
import type { Action } from './practice-actions.ts';
import { type Bench, type Said, bothOr, name, plain, readOne, soapOne } from './practice-bench.ts';
import { type Case, type Level, drawCase } from './practice-case.ts';
import { hoseOne, listenNow, lookRound, pumpUpNow, pumpWord } from './practice-deeds.ts';
import { type Risk, type Safety, endsAsFound, risksOf } from './practice-hazards.ts';
import { type Mark, type Told, stateOf, toldBy } from './practice-tells.ts';
import { makeRng, seedOf } from './rng.ts';
import { makeScene } from './scene.ts';
import { makeSim } from './sim.ts';
import type { Saved } from './sim-shapes.ts';

export type Minutes = { hands: number; elapsed: number; hazards: number };
export type Done = { action: Action; said: Said[]; told: Told[]; risks: Risk[]; minutes: number };

export type Practice = {
  readonly seed: number;
  readonly level: Level;
  readonly case: Case;
  readonly units: { pressure: Unit; length: Unit };
  readonly saved: Saved;
  readonly marks: readonly Mark[];
  readonly safe: Safety;
  readonly pumpStopped: number;
  readonly minutes: Minutes;
  readonly done: readonly Done[];
};

export type Answer = {
  state: Practice;
  said: Said[];
  risks: Risk[];
  /** Said before evidence goes, or why a deed had no effect. */
  notes: string[];
  /** Minutes of this deed. */
  minutes: Minutes;
};

/** A new case: the coach as its owner brings it, standing since the evening, nothing touched. */
export const startPractice = (seed: number, level: Level, sheet: Sheet): Practice => {
  const drawn = drawCase(seed, level, sheet);
  const scene = makeScene(drawn.p, drawn.ails, makeRng(drawn.sceneSeed));
  const saved = scene.morning().save();
  return {
    seed,
    level,
    case: drawn,
    units: { pressure: sheet.units.pressure, length: sheet.units.length },
    saved,
    marks: [],
    safe: { chocks: false, support: false, eyes: false, touched: false },
    pumpStopped: saved.t - 8 * 3600,
    minutes: { hands: 0, elapsed: 0, hazards: 0 },
    done: [],
  };
};

const hands: Readonly<Record<Action['do'], number>> = {
  wait: 0,
  key: 0.5,
  engine: 0.5,
  panel: 0.5,
  arm: 4,
  outlet: 4,
  drain: 3,
  'pump up': 1,
  drive: 2,
  look: 5,
  listen: 1,
  hose: 3,
  soap: 5,
  read: 2,
  'make safe': 5,
};
const handsOf = (action: Action): number => {
  if (action.do === 'soap' && action.zone === 'bellows') return 10;
  if (action.do === 'read' && action.with === 'bellows gauge') return 5;
  if (action.do === 'read' && (action.with === 'motor volts' || action.with === 'supply gauge')) return 6;
  if (action.do === 'read' && action.with === 'tank gauge') return 0.5;
  return hands[action.do];
};

/** Does one deed; says what instruments would, what it cost, and what it would have risked. */
export const act = (state: Practice, action: Action): Answer => {
  const { p, ails } = state.case;
  const q = afflict(p, ails);
  const sim = makeSim(q);
  sim.restore(state.saved);
  const rng = makeRng(seedOf('deed', state.seed, state.done.length));
  const notes: string[] = [];
  const bench: Bench = { sim, q, rng, units: state.units };
  const risks = risksOf(action, state.safe, sim.look().tank);
  const safe = { ...state.safe };
  if (endsAsFound(action) && !safe.touched) {
    safe.touched = true;
    const tank = state.marks.some((m) => m.what === 'tank');
    const heights = state.marks.some((m) => m.what.endsWith('rear'));
    if (!tank || !heights)
      notes.push(
        `As found is gone now: ${!tank && !heights ? 'tank and heights were' : tank ? 'heights were' : 'the tank was'} not read before this.`,
      );
  }
  const began = sim.time();
  const effort = handsOf(action);
  let said: Said[] = [];
  // Hands take time too, and the coach does not wait.
  sim.advance(began + effort * 60);
  switch (action.do) {
    case 'wait':
      if (!(action.seconds > 0 && action.seconds <= 48 * 3600)) notes.push('Waits are from a moment to two days.');
      else sim.advance(sim.time() + action.seconds);
      break;
    case 'key':
      sim.set(action.on ? { key: true } : { key: false, engine: false });
      sim.advance(sim.time() + 5);
      said = [
        plain('pump', sim.controls.pump ? 'the pump runs' : `no pump: ${action.on ? pumpWord(bench) : 'key off'}`),
      ];
      break;
    case 'engine':
      sim.set({ engine: action.on });
      break;
    case 'panel': {
      if (p.panel === null) {
        notes.push('This coach has no panel: take the link off and hold the arm at neutral instead.');
        break;
      }
      const panel: [typeof action.position, typeof action.position] = [...sim.controls.panel];
      for (const i of bothOr(action.side)) panel[i] = action.position;
      sim.set({ panel });
      break;
    }
    case 'arm': {
      const arm: [typeof action.to, typeof action.to] = [...sim.controls.arm];
      for (const i of bothOr(action.side)) arm[i] = action.to;
      const before = sim.look();
      sim.set({ arm });
      if (action.to === 'fill' || action.to === 'exhaust') {
        sim.advance(sim.time() + 60);
        const after = sim.look();
        said = bothOr(action.side).map((i) => {
          const moved = tape(q, after.rear[i], rng) - tape(q, before.rear[i], rng);
          const word = moved > 0.005 ? 'rises' : moved < -0.005 ? 'sinks' : 'does not move';
          return plain(`${name(i)} arm`, `${name(i)} side ${word} within a minute`);
        });
      }
      break;
    }
    case 'outlet':
      sim.set({ outletClosed: action.closed });
      break;
    case 'drain':
      said = [plain('drain', q.water > 0.1 ? 'a lot of water comes out, then air' : 'a spoonful of water, then air')];
      sim.tankTo(0);
      break;
    case 'pump up':
      said = pumpUpNow(bench);
      break;
    case 'drive':
      sim.set({ engine: true });
      sim.advance(sim.time() + 1200);
      sim.set({ key: false, engine: false });
      break;
    case 'look':
      said = lookRound(bench);
      break;
    case 'listen':
      said = listenNow(bench);
      break;
    case 'hose':
      said = hoseOne(bench, action.side === 'left' ? 0 : 1);
      break;
    case 'soap':
      said = soapOne(bench, action);
      break;
    case 'read':
      said = readOne(bench, action.with, action.side);
      break;
    case 'make safe':
      if (action.how === 'chocks') safe.chocks = true;
      else if (action.how === 'support') safe.support = true;
      else safe.eyes = true;
      break;
    default:
      action satisfies never;
  }
  const pumping = sim.controls.pump || sim.changes.some((c) => c.what.startsWith('pump'));
  const pumpStopped = pumping ? sim.time() : state.pumpStopped;
  const told = toldBy(bench, state, action, said);
  const fresh = said
    .filter((s) => s.si !== undefined && /^(?:tank|left rear|right rear)$/.test(s.what))
    .map((s): Mark => ({ what: s.what, value: s.si ?? 0, t: sim.time(), state: stateOf(sim.controls) }));
  // The first reading in a state is the one that later ones are held against; a changed state ends it.
  const standing = state.marks.filter((m) => m.state === stateOf(sim.controls));
  const marks = [...standing, ...fresh.filter((f) => !standing.some((m) => m.what === f.what))];
  const elapsed = (sim.time() - began) / 60;
  const hazards = risks.reduce((sum, r) => sum + r.minutes, 0);
  const done: Done = { action, said, told, risks, minutes: elapsed };
  return {
    said,
    risks,
    notes,
    minutes: { hands: effort, elapsed, hazards },
    state: {
      ...state,
      saved: sim.save(),
      marks,
      safe,
      pumpStopped,
      minutes: {
        hands: state.minutes.hands + effort,
        elapsed: state.minutes.elapsed + elapsed,
        hazards: state.minutes.hazards + hazards,
      },
      done: [...state.done, done],
    },
  };
};

/** The state after all of `actions`: how a practice is taken up again, since only its seed and its deeds are kept. */
export const replayPractice = (seed: number, level: Level, sheet: Sheet, actions: readonly Action[]): Practice => {
  let state = startPractice(seed, level, sheet);
  for (const action of actions) state = act(state, action).state;
  return state;
};
