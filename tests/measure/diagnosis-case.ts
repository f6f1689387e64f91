/**
 * A coach with one known fault, drawn by seed apart from what compiled the likelihoods: other seeds, parameters scaled
 * beyond their spread, sizes and instruments of its own. What a check shows comes from the simulated coach; what it does
 * not simulate is drawn from the stated chances, each tilted by chance for this coach.
 */
import { catalogue } from '../../server/faults/catalogue.ts';
import type { Fault } from '../../server/faults/fault.ts';
import { ailmentOf, type Model } from '../../server/faults/model.ts';
import { observableOf } from '../../server/faults/observables.ts';
import type { Sheet } from '../../server/sheet/schema.ts';
import { makeCoach } from '../../server/twin/coach.ts';
import { airObservables } from '../../server/twin/observables.ts';
import { observeIn } from '../../server/twin/observe.ts';
import type { CoachParams } from '../../server/twin/params.ts';
import { makeRng, type Rng, seedOf } from '../../server/twin/rng.ts';
import { makeScene } from '../../server/twin/scene.ts';
import { drawSize } from '../../server/twin/sizes.ts';

export type Case = {
  readonly fault: Fault;
  readonly index: number;
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

/** Which fault, by prior, among those that the simulated coach can have. */
const drawFault = (model: Model, rng: Rng): { fault: Fault; index: number } => {
  const can = model.faults.flatMap((fault, index) => (ailmentOf(fault) ? [{ fault, index }] : []));
  let left = rng.next() * can.reduce((s, c) => s + c.fault.prior, 0);
  for (const c of can) {
    left -= c.fault.prior;
    if (left <= 0) return c;
  }
  return can.at(-1)!;
};

export const drawCase = (sheet: Sheet, model: Model, seed: number, n: number): Case => {
  const rng = makeRng(seedOf(seed, 'case', n, sheet.id));
  const { fault, index } = drawFault(model, rng);
  const ailment = ailmentOf(fault)!;
  const p = apart(makeCoach(sheet, { seed: seedOf(seed, 'coach', n), panel: model.panel }), rng);
  const scene = makeScene(p, [{ ailment, size: drawSize(ailment, rng) }], rng);
  const kept = new Map<string, string>();
  const tilt = rng.normal(0, 0.35);
  const drawGiven = (see: string): string => {
    const view = model.view(see);
    if (!view) return '';
    const own = makeRng(seedOf(seed, 'given', n, see));
    const row = Array.from(
      view.rows.subarray(index * view.width, (index + 1) * view.width),
      (c) => c ** Math.exp(tilt),
    );
    let left = own.next() * row.reduce((a, b) => a + b, 0);
    for (const [k, c] of row.entries()) {
      left -= c;
      if (left <= 0) return view.observable.outcomes[k] ?? '';
    }
    return '';
  };
  return {
    fault,
    index,
    look: (see) => {
      const had = kept.get(see);
      if (had !== undefined) return had;
      const outcome = simulated.has(see) ? (observeIn(scene, see) ?? '') : observableOf(see) ? drawGiven(see) : '';
      kept.set(see, outcome);
      return outcome;
    },
  };
};

export type Complaint = readonly (readonly [see: string, outcome: string])[];

/** What the owner would come in with; null for a coach that gives no cause to. */
export const complaintOf = ({ look }: Case): { standing: boolean; says: Complaint } | null => {
  const down = (['left', 'right'] as const).filter((s) => !['level', ''].includes(look(`${s} as found`)));
  const driven = (['left', 'right'] as const).flatMap((s) => {
    const o = look(`${s} driving`);
    return o === 'low' || o === 'far low' || o === 'high' ? [[`${s} driving`, o] as const] : [];
  });
  if (driven.length > 0) return { standing: false, says: driven };
  if (look('pump past cut-out') === 'runs on') return { standing: false, says: [['pump past cut-out', 'runs on']] };
  const called = look('pump called');
  if (called !== 'runs' && called !== '') return { standing: false, says: [['pump quiet', 'yes']] };
  if (down.length > 0) return { standing: true, says: down.map((s) => [`${s} overnight`, 'drops|on stops'] as const) };
  const restart = look('pump restart');
  if (restart === 'stalls' || restart === 'blows fuse') return { standing: false, says: [['pump restart', restart]] };
  const duty = look('pump duty');
  if (duty === 'constant' || duty === 'cycles') return { standing: false, says: [['pump duty', duty]] };
  const tank = look('tank as found');
  if (tank === 'zero' || tank === 'at bellows pressure') return { standing: true, says: [['tank as found', tank]] };
  if (look('quits hot') === 'yes') return { standing: false, says: [['quits hot', 'yes']] };
  return null;
};

export const faultCount = catalogue.length;
