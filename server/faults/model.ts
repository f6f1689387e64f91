/** Faults that a coach can have, and how likely each outcome of each observable is under each of them. Built once a kind of coach. */
import type { Sheet } from '../sheet/schema.ts';
import { ailments, type Ailment } from '../twin/ailments.ts';
import { likelihood } from '../twin/evidence.ts';
import { catalogue } from './catalogue.ts';
import type { Fault, Feature } from './fault.ts';
import { airGivens } from './givens/air.ts';
import { kindOfSee, type Observable, observableOf } from './observables.ts';

/** Chances by outcome, the last being a check that decided nothing: `rows[fault * width + outcome]`. */
export type View = {
  readonly observable: Observable;
  readonly width: number;
  readonly healthy: Float64Array;
  readonly rows: Float64Array;
  /** How far each fault's distribution lies from the healthy one (total variation): its say where faults mix. */
  readonly strays: Float64Array;
};

export type Model = {
  readonly panel: boolean;
  readonly faults: readonly Fault[];
  readonly index: ReadonlyMap<string, number>;
  readonly odds: Float64Array;
  /** How many times likelier two faults are together than by chance: `links[i * n + j]`; 0 where they exclude each other. */
  readonly links: Float64Array;
  readonly view: (see: string) => View | null;
};

const isAilment = (name: string): name is Ailment => (ailments as readonly string[]).includes(name);
/** The twin's name for a fault; null where the twin does not simulate it. */
export const ailmentOf = (fault: Fault): Ailment | null => {
  if (!fault.ailment) return null;
  const name = fault.side ? `${fault.side} ${fault.ailment}` : fault.ailment;
  return isAilment(name) ? name : null;
};

/** Nothing is impossible: a slip of the eye or the pen. */
const least = 0.002;
const normal = (chances: readonly number[]): number[] => {
  const lifted = chances.map((c) => Math.max(c, least));
  const sum = lifted.reduce((a, b) => a + b, 0);
  return lifted.map((c) => c / sum);
};

const twinRow = (o: Observable, cause: Ailment | 'none', panel: boolean): number[] => {
  const decided = o.outcomes.map((outcome) => likelihood(o.see, outcome, cause, panel));
  return normal([...decided, Math.max(0, 1 - decided.reduce((a, b) => a + b, 0))]);
};

const healthyRow = (o: Observable, panel: boolean): number[] => {
  switch (o.from) {
    case 'twin':
      return twinRow(o, 'none', panel);
    case 'given':
      return normal([...o.given.healthy, 0]);
    case 'mean':
    case 'any':
      return deriveRow(o, (see) => healthyRow(see, panel));
  }
};

const names = (faults: readonly string[], fault: Fault): boolean =>
  faults.includes(fault.kind) || faults.includes(fault.key);

const faultRow = (o: Observable, fault: Fault, panel: boolean): number[] => {
  switch (o.from) {
    case 'twin': {
      const mine = o.side === null || fault.side === null || fault.side === o.side;
      const given = mine ? airGivens[kindOfSee(o.see)]?.find((r) => names(r.faults, fault)) : undefined;
      if (given) return normal([...given.chance, 0]);
      return twinRow(o, ailmentOf(fault) ?? 'none', panel);
    }
    case 'given': {
      const mine = o.side === null || fault.side === null || fault.side === o.side;
      const given = mine ? o.given.rows.find((r) => names(r.faults, fault)) : undefined;
      return normal([...(given?.chance ?? o.given.healthy), 0]);
    }
    case 'mean':
    case 'any':
      return deriveRow(o, (see) => faultRow(see, fault, panel));
  }
};

const part = (see: string): Observable => {
  const o = observableOf(see);
  if (!o) throw new RangeError(`no observable "${see}"`);
  return o;
};

const deriveRow = (o: Observable & { from: 'mean' | 'any' }, rowOf: (of: Observable) => number[]): number[] => {
  if (o.from === 'any') {
    let holds = 1;
    for (const see of o.of) holds *= rowOf(part(see))[0] ?? 1;
    return normal([holds, 1 - holds, 0]);
  }
  const out: number[] = Array.from({ length: o.outcomes.length + 1 }, () => 0);
  for (const { see, maps } of o.of) {
    const from = part(see);
    const row = rowOf(from);
    for (const [i, chance] of row.entries()) {
      const outcome = from.outcomes[i];
      const to = outcome === undefined ? o.outcomes.length : o.outcomes.indexOf(maps[outcome] ?? '');
      if (to >= 0) out[to] = (out[to] ?? 0) + chance / o.of.length;
    }
  }
  return normal(out);
};

const buildView = (o: Observable, faults: readonly Fault[], panel: boolean): View => {
  const healthy = Float64Array.from(healthyRow(o, panel));
  const width = healthy.length;
  const rows = new Float64Array(faults.length * width);
  const strays = new Float64Array(faults.length);
  for (const [i, fault] of faults.entries()) {
    const row = faultRow(o, fault, panel);
    rows.set(row, i * width);
    strays[i] = row.reduce((sum, p, k) => sum + Math.abs(p - healthy[k]!), 0) / 2;
  }
  return { observable: o, width, healthy, rows, strays };
};

/** Faults of one thing that cannot both be: set low and high, stuck and high. */
const excludes: readonly (readonly string[])[] = [
  ['link slipped low', 'link slipped high', 'link off'],
  ['gauge stuck', 'gauge high', 'gauge low'],
  ['switch low', 'switch high', 'switch burnt', 'switch welded'],
  ['relay dead', 'relay welded'],
  ['panel left shut', 'panel left empty'],
  ['pump seized', 'motor open'],
];
const exclusive = (a: Fault, b: Fault): boolean =>
  (a.side === b.side && excludes.some((set) => set.includes(a.kind) && set.includes(b.kind))) ||
  (a.side === b.side && a.ailment === 'bellows leak' && b.ailment === 'bellows leak');

const linkOf = (a: Fault, b: Fault): number => {
  if (exclusive(a, b)) return 0;
  // A left shock does not tear the right bellows; age and dirt do go over to the other side.
  const reaches = (from: Fault, to: Fault): number =>
    from.damages.find(
      (d) => d.fault === to.kind && (from.kind === to.kind || !from.side || !to.side || from.side === to.side),
    )?.times ?? 1;
  return Math.max(reaches(a, b), reaches(b, a));
};

const build = (features: ReadonlySet<Feature>): Model => {
  const faults = catalogue.filter((f) => !f.needs || features.has(f.needs));
  const n = faults.length;
  const panel = features.has('panel');
  const odds = Float64Array.from(faults, (f) => f.prior / (1 - f.prior));
  const links = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) links[i * n + j] = i === j ? 0 : linkOf(faults[i]!, faults[j]!);
  const views = new Map<string, View | null>();
  return {
    panel,
    faults,
    index: new Map(faults.map((f, i) => [f.key, i])),
    odds,
    links,
    view: (see) => {
      const had = views.get(see);
      if (had !== undefined) return had;
      const o = observableOf(see);
      const made = o ? buildView(o, faults, panel) : null;
      views.set(see, made);
      return made;
    },
  };
};

const features = ['panel', 'dryer', 'protection', 'regulator', 'unloader', 'relay'] as const;
const models = new Map<string, Model>();

/** What the sheet says the coach has; what it does not speak of may be there, a panel excepted. */
export const featuresOf = (sheet: Sheet): ReadonlySet<Feature> => {
  const has: Record<Feature, boolean> = {
    panel: sheet.panel !== undefined && sheet.panel !== null,
    dryer: sheet.supply?.dryer ?? true,
    protection: sheet.supply?.protection !== undefined,
    regulator: sheet.supply?.regulator !== undefined,
    unloader: sheet.supply?.unloader ?? true,
    relay: sheet.supply?.relay ?? true,
  };
  return new Set(features.filter((f) => has[f]));
};

export const modelOf = (sheet: Sheet): Model => {
  const has = featuresOf(sheet);
  const key = features.map((f) => (has.has(f) ? '1' : '0')).join('');
  const made = models.get(key) ?? build(has);
  models.set(key, made);
  return made;
};
