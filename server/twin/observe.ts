/**
 * Performs any check of observables.ts on a simulated coach and says what the instruments would: one of that check's
 * outcomes, or null where the check cannot be made or does not decide (a fall still on its way).
 */
import { ImpossibleInput } from '../core/quantity.ts';
import { airObservables } from './observables.ts';
import type { CoachParams } from './params.ts';
import type { Rng } from './rng.ts';
import { type Scene, makeScene } from './scene.ts';
import * as heights from './see-heights.ts';
import * as pump from './see-pump.ts';
import * as standing from './see-standing.ts';
import * as valves from './see-valves.ts';
import type { Ail } from './sizes.ts';

type I = 0 | 1;
type Sided = (scene: Scene, i: I) => string | null;
type Single = (scene: Scene) => string | null;

const shutFalls = new WeakMap<Scene, ReturnType<typeof standing.shutFall>>();
const shutFall = (scene: Scene): ReturnType<typeof standing.shutFall> => {
  const had = shutFalls.get(scene) ?? standing.shutFall(scene);
  shutFalls.set(scene, had);
  return had;
};

const sided: Readonly<Record<string, Sided>> = {
  'height auto': (s, i) => standing.moveOutcome(s, s.night().start, s.night().half, i),
  'height shut': (s, i) => {
    const { from, to } = shutFall(s);
    return standing.moveOutcome(s, from, to, i);
  },
  overnight: (s, i) => standing.overnight(s, s.night(), i),
  driving: heights.driving,
  exhaust: valves.exhaust,
  'exhaust tank zero': valves.exhaustTankZero,
  'inlet check': valves.inletCheck,
  'valve fills': (s, i) => valves.valveMoves(s, i, 1),
  'valve dumps': (s, i) => valves.valveMoves(s, i, -1),
  'soap valve': (s, i) => valves.soapSide(s, i, 'valve'),
  'soap valve to panel': (s, i) => valves.soapSide(s, i, 'valve to panel'),
  'soap delivery': (s, i) => valves.soapSide(s, i, 'delivery'),
  'soap bellows': (s, i) => valves.soapSide(s, i, 'bellows'),
  'as found': standing.asFound,
  'rear height': (s, i) => heights.heightOutcome(s, 'rear', i),
  'front height': (s, i) => heights.heightOutcome(s, 'front', i),
};

const single: Readonly<Record<string, Single>> = {
  'tank fall auto': (s) => {
    const { start, half } = s.night();
    return standing.fallOutcome(s, start.tank, half.tank, 1800);
  },
  'tank fall shut': (s) => {
    const { from, to } = shutFall(s);
    return standing.fallOutcome(s, from.tank, to.tank, 1800);
  },
  'tank fall outlet closed': standing.outletFall,
  'fall stops': (s) => standing.fallStops(s, s.night()),
  'pump cycles auto': (s) => pump.pumpCycles(s, 'auto'),
  'pump cycles shut': (s) => pump.pumpCycles(s, 'shut'),
  'soap tank': valves.soapTank,
  'soap supply': valves.soapSupply,
  'soap panel': valves.soapPanel,
  'hiss after stop': pump.hissAfterStop,
  'tank as found': standing.tankAsFound,
  'rises first': standing.risesFirst,
  'pump-up': (s) => pump.pumpUp(s, false),
  'pump-up shut': (s) => pump.pumpUp(s, true),
  'cut-in': pump.cutIn,
  'cut-out': pump.cutOut,
  'pump called': pump.pumpCalled,
  'pump restart': pump.pumpRestart,
  'pump past cut-out': pump.pastCutOut,
  'pump duty': pump.pumpDuty,
  'quits hot': pump.quitsHot,
  'motor volts': pump.motorVolts,
  'battery volts': pump.batteryVolts,
  'motor current': pump.motorCurrent,
  'second gauge': heights.secondGauge,
  'bellows pressures': heights.bellowsPressures,
  'tank water': heights.tankWater,
  'regulated supply': valves.regulatedSupply,
};

/** One check at a coach whose states are already being kept. */
export const observeIn = (scene: Scene, see: string): string | null => {
  const row = airObservables.find((o) => o.see === see);
  if (!row) throw new ImpossibleInput(`check "${see}"`, Number.NaN, 'there is no such check');
  const base = row.side ? see.slice(row.side.length + 1) : see;
  const how = row.side ? sided[base] : single[base];
  if (!how) throw new ImpossibleInput(`check "${see}"`, Number.NaN, 'the twin does not know how to make it');
  const outcome = how(scene, row.side === 'right' ? 1 : 0);
  if (outcome !== null && !row.outcomes.includes(outcome))
    throw new ImpossibleInput(`outcome "${outcome}" of "${see}"`, Number.NaN, 'not one of its outcomes');
  return outcome;
};

/** Performs `see` on the coach `p` with `ails`; draws what instruments and hands leave to chance from `rng`. */
export const observe = (see: string, p: CoachParams, ails: readonly Ail[], rng: Rng): string | null =>
  observeIn(makeScene(p, ails, rng), see);

/** Every check at one coach, each from its own state. */
export const observeAll = (p: CoachParams, ails: readonly Ail[], rng: Rng): ReadonlyMap<string, string | null> => {
  const scene = makeScene(p, ails, rng);
  return new Map(airObservables.map((o) => [o.see, observeIn(scene, o.see)]));
};
