/** Model, evidence and posterior of what stands, computed once for the same facts and findings. */
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { type Evidence, evidenceOf } from './evidence.ts';
import { type Causes, infer, type Posterior, type Seen } from './infer.ts';
import { type Model, modelOf } from './model.ts';
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

const makeCauses = (model: Model, mends: readonly Mend[]): Pick<Weighed, 'causes' | 'faultOfCause' | 'mendedAt'> => {
  const m = model.faults.length;
  const mended = model.faults.flatMap((f, i) => {
    const mend = mendOf(f, mends);
    return mend ? [{ i, mend }] : [];
  });
  const n = m + mended.length;
  const faultOfCause = [...model.faults.keys(), ...mended.map((x) => x.i)];
  if (mended.length === 0)
    return { causes: { odds: model.odds, links: model.links }, faultOfCause, mendedAt: faultOfCause.map(() => null) };
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
  };
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

/** Coaches brought in with nothing that explains the complaint, against those with: about 1 in 4. An estimate. */
const noReason = 0.35;

export const weighEvidence = (
  model: Model,
  evidence: readonly Evidence[],
  mends: readonly Mend[],
  triples = true,
): Weighed => {
  const made = makeCauses(model, mends);
  const both = evidence.flatMap((e) => {
    const seen = seenOf(model, e, made);
    return seen ? [{ e, seen }] : [];
  });
  const seen = both.map((x) => x.seen);
  return {
    model,
    evidence: both.map((x) => x.e),
    seen,
    ...made,
    posterior: infer(made.causes, seen, { triples, noReason }),
  };
};

const kept = new WeakMap<Standing['facts'], { findings: Standing['findings']; sheet: Sheet; weighed: Weighed }>();

export const weigh = (standing: Standing, sheet: Sheet): Weighed => {
  const had = kept.get(standing.facts);
  if (had && had.findings === standing.findings && had.sheet === sheet) return had.weighed;
  const weighed = weighEvidence(modelOf(sheet), evidenceOf(standing, sheet), mendsOf(standing));
  kept.set(standing.facts, { findings: standing.findings, sheet, weighed });
  return weighed;
};
