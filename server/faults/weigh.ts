/** Model, evidence and posterior of what stands, computed once for the same facts and findings. */
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
import { type Causes, infer, type Posterior } from './infer.ts';
import { type Model, modelOf } from './model.ts';
import type { Seen } from './seen.ts';
import { type Mend, mendOf, mendsOf } from './situation.ts';

export type Weighed = {
  readonly model: Model;
  readonly evidence: readonly Evidence[];
  readonly seen: readonly Seen[];
  readonly causes: Causes;
  /** Cause -> fault index; a cause past the faults is one that was there and is mended. */
  readonly faultOfCause: readonly number[];
  readonly mendedAt: readonly (Mend | null)[];
  readonly posterior: Posterior;
};

/** What is weighed over: the causes there can be after the work that was done, and the evidence met under them so far. */
type Situation = Pick<Weighed, 'causes' | 'faultOfCause' | 'mendedAt'> & { readonly seens: Map<string, Seen | null> };

const makeSituation = (model: Model, mends: readonly Mend[]): Situation => {
  const m = model.faults.length;
  const mended = model.faults.flatMap((f, i) => {
    const mend = mendOf(f, mends);
    return mend ? [{ i, mend }] : [];
  });
  const n = m + mended.length;
  const faultOfCause = [...model.faults.keys(), ...mended.map((x) => x.i)];
  if (mended.length === 0)
    return { causes: model, faultOfCause, mendedAt: faultOfCause.map(() => null), seens: new Map() };
  const odds = new Float64Array(n);
  odds.set(model.odds);
  for (const [k, { i, mend }] of mended.entries()) {
    odds[i] = model.odds[i]! * (1 - mend.chance);
    odds[m + k] = model.odds[i]! * mend.chance;
  }
  const links = new Float64Array(n * n);
  for (let a = 0; a < n; a++)
    for (let b = 0; b < n; b++) links[a * n + b] = a === b ? 0 : model.links[faultOfCause[a]! * m + faultOfCause[b]!]!;
  return {
    causes: { odds, links },
    faultOfCause,
    mendedAt: faultOfCause.map((_, c) => (c < m ? null : mended[c - m]!.mend)),
    seens: new Map(),
  };
};

/** Situations kept a model: each session has its own once something was mended. */
const mostSituations = 16;
const situations = new WeakMap<Model, Map<string, Situation>>();
const situationOf = (model: Model, mends: readonly Mend[]): Situation => {
  const all = situations.get(model) ?? new Map<string, Situation>();
  situations.set(model, all);
  const key = JSON.stringify(mends);
  const made = all.get(key) ?? makeSituation(model, mends);
  all.delete(key);
  all.set(key, made);
  for (const oldest of all.keys()) {
    if (all.size <= mostSituations) break;
    all.delete(oldest);
  }
  return made;
};

/** Evidence as numbers over the causes: mended ones show a sound part to what came after the work. */
export const seenOf = (
  model: Model,
  e: Pick<Evidence, 'see' | 'outcome' | 'weight' | 'clock'>,
  of: Pick<Weighed, 'faultOfCause' | 'mendedAt'>,
): Seen | null => {
  const view = model.view(e.see);
  if (!view) return null;
  const at = e.outcome.split('|').map((o) => (o === '' ? view.width - 1 : view.observable.outcomes.indexOf(o)));
  if (at.some((k) => k < 0)) return null;
  const { width, healthy } = view;
  const m = model.faults.length;
  const n = of.faultOfCause.length;
  let { rows, strays } = view;
  if (n > m) {
    rows = new Float64Array(n * width);
    rows.set(view.rows);
    strays = new Float64Array(n);
    strays.set(view.strays);
    for (let c = m; c < n; c++) {
      const f = of.faultOfCause[c]!;
      const sound = of.mendedAt[c]!.clock < e.clock;
      rows.set(sound ? healthy : view.rows.subarray(f * width, (f + 1) * width), c * width);
      strays[c] = sound ? 0 : view.strays[f]!;
    }
  }
  return {
    ordered: view.observable.ordered,
    width,
    from: Math.min(...at),
    to: Math.max(...at),
    weight: e.weight,
    healthy,
    rows,
    strays,
  };
};

const mostSeens = 400;
/** The same evidence is the same numbers again: what was made ready of it is found by that. */
const seenAgain = (model: Model, e: Evidence, of: Situation): Seen | null => {
  const key = `${e.see} ${e.outcome} ${e.weight} ${of.causes === model ? '' : e.clock}`;
  const had = of.seens.get(key);
  if (had !== undefined) return had;
  if (of.seens.size >= mostSeens) of.seens.clear();
  const made = seenOf(model, e, of);
  of.seens.set(key, made);
  return made;
};

/** Coaches brought in with nothing that explains the complaint, against those with: about 1 in 4. An estimate. */
const noReason = 0.35;

export const weighEvidence = (
  model: Model,
  evidence: readonly Evidence[],
  mends: readonly Mend[],
  triples = true,
): Weighed => {
  const situation = situationOf(model, mends);
  const { causes, faultOfCause, mendedAt } = situation;
  const both = evidence.flatMap((e) => {
    const seen = seenAgain(model, e, situation);
    return seen ? [{ e, seen }] : [];
  });
  const seen = both.map((x) => x.seen);
  return {
    model,
    evidence: both.map((x) => x.e),
    seen,
    causes,
    faultOfCause,
    mendedAt,
    posterior: infer(causes, seen, { triples, noReason }),
  };
};

/** A few of the last, since each holds a chance for every pair of causes. The one used longest ago goes first. */
const mostKept = 24;
const kept = new Map<Standing['facts'], { findings: Standing['findings']; sheet: Sheet; weighed: Weighed }>();

export const weigh = (standing: Standing, sheet: Sheet): Weighed => {
  const { facts, findings } = standing;
  const had = kept.get(facts);
  kept.delete(facts);
  const weighed =
    had && had.findings === findings && had.sheet === sheet
      ? had.weighed
      : weighEvidence(modelOf(sheet), evidenceOf(standing, sheet), mendsOf(standing));
  kept.set(facts, { findings, sheet, weighed });
  for (const oldest of kept.keys()) {
    if (kept.size <= mostKept) break;
    kept.delete(oldest);
  }
  return weighed;
};
