/**
 * A coach with one known fault or none, drawn by seed apart from what compiled the likelihoods: other seeds, parameters
 * scaled beyond their spread, sizes and instruments of its own. What a check shows comes from the simulated coach; what it
 * does not simulate is drawn from the stated chances, each tilted by chance for this coach. The complaint is one that the
 * fault makes: what the same coach would show sound is not what it was brought in for.
 */
import { catalogue } from '../../server/faults/catalogue.ts';
import type { Fault } from '../../server/faults/fault.ts';
import { airGivens } from '../../server/faults/givens/air.ts';
import { ailmentOf, type Model } from '../../server/faults/model.ts';
import { kindOfSee, observableOf, sideOfSee } from '../../server/faults/observables.ts';
import type { Sheet } from '../../server/sheet/schema.ts';
import { makeCoach } from '../../server/twin/coach.ts';
import { airObservables } from '../../server/twin/observables.ts';
import { observeIn } from '../../server/twin/observe.ts';
import type { CoachParams } from '../../server/twin/params.ts';
import { makeRng, type Rng, seedOf } from '../../server/twin/rng.ts';
import { makeScene } from '../../server/twin/scene.ts';
import { drawSize } from '../../server/twin/sizes.ts';

export type Case = {
  /** null: a sound coach, brought in for nothing. */
  readonly fault: Fault | null;
  readonly index: number;
  /** The simulated coach has it: its air side is not drawn from the model's own table. */
  readonly simulated: boolean;
  /** That outcome is the fault's doing. */
  readonly made: (see: string) => boolean;
  /** Outcome of an observable, '' where it decided nothing; the same each time it is asked. */
  readonly look: (see: string) => string;
};

const simulated = new Set(airObservables.map((o) => o.see));

/** Off the table's own spread: volumes, areas, loads, pump and instruments by up to `by`, each way. */
const apart = (p: CoachParams, rng: Rng, by = 0.15): CoachParams => {
  const k = (): number => rng.log(1 / (1 + by), 1 + by);
  const load = k();
  const flow = k();
  return {
    ...p,
    tank: p.tank * k(),
    lines: p.lines * k(),
    volume: p.volume * k(),
    load: [p.load[0] * load, p.load[1] * load],
    inlet: [p.inlet[0] * k(), p.inlet[1] * k()],
    exhaust: [p.exhaust[0] * k(), p.exhaust[1] * k()],
    delivery: p.delivery.map(([at, f]) => [at, f * flow] as const),
    tankWeep: p.tankWeep * k(),
    supplyWeep: p.supplyWeep * k(),
    gaugeStep: p.gaugeStep * rng.uniform(0.7, 1.6),
    gaugeBias: p.gaugeBias + rng.normal(0, 0.004),
    tapeStep: p.tapeStep * rng.uniform(0.8, 1.5),
  };
};

/** Sound coaches brought in against those with a fault (weigh.ts, noReason). */
const soundShare = 0.35;

/** Which fault, by prior, or none: of every fault that this kind of coach can have. */
const drawFault = (model: Model, rng: Rng): { fault: Fault; index: number } | null => {
  const all = model.faults.map((fault, index) => ({ fault, index }));
  let left = rng.next() * (soundShare + all.reduce((s, c) => s + c.fault.prior, 0)) - soundShare;
  if (left <= 0) return null;
  for (const c of all) {
    left -= c.fault.prior;
    if (left <= 0) return c;
  }
  return all.at(-1)!;
};

export const drawCase = (sheet: Sheet, model: Model, seed: number, n: number): Case => {
  const rng = makeRng(seedOf(seed, 'case', n, sheet.id));
  const drawn = drawFault(model, rng);
  const fault = drawn?.fault ?? null;
  const index = drawn?.index ?? -1;
  const ailment = fault ? ailmentOf(fault) : null;
  const p = apart(makeCoach(sheet, { seed: seedOf(seed, 'coach', n), panel: model.panel }), rng);
  const noise = seedOf(seed, 'instruments', n, sheet.id);
  const scene = makeScene(p, ailment ? [{ ailment, size: drawSize(ailment, rng) }] : [], makeRng(noise));
  const sound = makeScene(p, [], makeRng(noise));
  const kept = new Map<string, string>();
  const tilt = rng.normal(0, 0.35);
  const drawGiven = (see: string): string => {
    const view = model.view(see);
    if (!view) return '';
    const own = makeRng(seedOf(seed, 'given', n, see));
    const chances = index < 0 ? view.healthy : view.rows.subarray(index * view.width, (index + 1) * view.width);
    const row = Array.from(chances, (c) => c ** Math.exp(tilt));
    let left = own.next() * row.reduce((a, b) => a + b, 0);
    for (const [k, c] of row.entries()) {
      left -= c;
      if (left <= 0) return view.observable.outcomes[k] ?? '';
    }
    return '';
  };
  /** Beside the simulated coach the model states what this fault does to that observable. */
  const stated = (see: string): boolean =>
    fault !== null &&
    ailment === null &&
    (sideOfSee(see) === null || fault.side === null || sideOfSee(see) === fault.side) &&
    (airGivens[kindOfSee(see)] ?? []).some((r) => r.faults.includes(fault.kind) || r.faults.includes(fault.key));
  const look = (see: string): string => {
    const had = kept.get(see);
    if (had !== undefined) return had;
    const outcome = !observableOf(see)
      ? ''
      : simulated.has(see) && !stated(see)
        ? (observeIn(scene, see) ?? '')
        : drawGiven(see);
    kept.set(see, outcome);
    return outcome;
  };
  const view = (see: string): number => (index < 0 ? 0 : (model.view(see)?.strays[index] ?? 0));
  return {
    fault,
    index,
    simulated: ailment !== null,
    look,
    made: (see) =>
      fault === null ||
      (simulated.has(see) && ailment !== null ? look(see) !== (observeIn(sound, see) ?? '') : view(see) > 0.05),
  };
};

export type Complaint = readonly (readonly [see: string, outcome: string])[];

const odd = ({ look, made }: Case, see: string, ...fine: readonly string[]): string | null => {
  const o = look(see);
  return o === '' || fine.includes(o) || !made(see) ? null : o;
};
const both = (c: Case, see: string, ...fine: readonly string[]): [see: string, outcome: string][] =>
  (['left', 'right'] as const).flatMap((side) => {
    const o = odd(c, `${side} ${see}`, ...fine);
    return o === null ? [] : [[`${side} ${see}`, o] as [string, string]];
  });

/** What the owner would come in with; null for a coach that gives no cause to. */
export const complaintOf = (c: Case): { standing: boolean; says: Complaint } | null => {
  const one = (says: Complaint, standing = false): { standing: boolean; says: Complaint } => ({ standing, says });
  const driven = both(c, 'driving', 'level');
  if (driven.length > 0) return one(driven);
  if (odd(c, 'pump past cut-out', 'stops')) return one([['pump past cut-out', 'runs on']]);
  if (odd(c, 'pump called', 'runs')) return one([['pump quiet', 'yes']]);
  const down = both(c, 'as found', 'level');
  if (down.length > 0)
    return one(
      down.map(([see]) => [see.replace('as found', 'overnight'), 'drops|on stops'] as const),
      true,
    );
  for (const [see, ...fine] of [
    ['pump restart', 'starts'],
    ['pump duty', 'rests'],
    ['pump-up', 'within'],
    ['quits hot', 'no'],
    ['ride', 'fine'],
    ['bang', 'no'],
    ['frost trouble', 'no'],
    ['fall after pumping', 'stands'],
    ['shut-off puff', 'not remarked'],
    ['pump quiet', 'no'],
  ] as const) {
    const o = odd(c, see, ...fine);
    if (o) return one([[see, o]]);
  }
  const tank = odd(c, 'tank as found', 'up');
  if (tank) return one([['tank as found', tank]], true);
  const worn = both(c, 'tyre wear', 'even');
  if (worn.length > 0) return one(worn);
  const heard = both(c, 'valve heard', 'not remarked');
  return heard.length > 0 ? one(heard) : null;
};

export const faultCount = catalogue.length;
