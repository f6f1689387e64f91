/**
 * Whether the chances that are shown are right as often as they say, on coaches drawn by seed (diagnosis-case.ts). Each
 * coach is followed for a fixed number of checks, whatever is found: to stop where the truth is reached would leave the
 * wrong verdicts to speak on and count too often. Each verdict after each check counts.
 */
import { hypothesesOf } from '../../server/faults/hypotheses.ts';
import { modelOf } from '../../server/faults/model.ts';
import { candidates } from '../../server/faults/candidates.ts';
import { rankFloor, rankOf } from '../../server/faults/rank.ts';
import { suspectsFrom } from '../../server/faults/suspects.ts';
import { weighEvidence } from '../../server/faults/weigh.ts';
import type { Sheet } from '../../server/sheet/schema.ts';
import { complaintOf, drawCase } from './diagnosis-case.ts';
import { alike, bench, evidenceOfSee } from './diagnosis-course.ts';
import { sheetsOf } from './diagnosis-sheets.ts';

/** Checks that each coach is followed for. */
const horizon = 8;

/** `p`: the chance of the leading suspect with those that the simulated coach cannot tell from it. */
export type Said = {
  readonly coach: number;
  readonly p: number;
  readonly lead: string;
  readonly right: boolean;
  readonly fault: string;
};

export const saidOf = (sheet: Sheet, seed: number, n: number, coach: number): Said[] => {
  const model = modelOf(sheet);
  const c = drawCase(sheet, model, seed, n);
  const complaint = complaintOf(c);
  if (!complaint) return [];
  const evidence = complaint.says.map(([see, outcome], i) => evidenceOfSee(see, outcome, i));
  const done = new Set<string>();
  const out: Said[] = [];
  let touched = !complaint.standing;
  for (let k = 0; k < horizon; k++) {
    const w = weighEvidence(model, evidence, [], true);
    const top = suspectsFrom(w)[0];
    if (top && k > 0) {
      const cause = model.index.get(top.fault);
      const like = cause === undefined ? null : alike(model, cause);
      const right = like ? like.has(c.index) : c.fault === null || c.fault.innocent === true;
      const p = like
        ? Math.min(
            1,
            [...like].reduce((sum, i) => sum + w.posterior.marginals[i]!, 0),
          )
        : top.p;
      out.push({ coach, p, lead: top.fault, right, fault: c.fault?.key ?? 'nothing wrong' });
    }
    const standing = bench(complaint.standing, touched);
    const next = candidates(standing, sheet, w, hypothesesOf(w)).find((x) => !done.has(x.check.key));
    if (!next) break;
    const { check } = next;
    done.add(check.key);
    if (check.setting !== 'as found' && check.setting !== 'standing') touched = true;
    for (const see of check.settles)
      if (!evidence.some((e) => e.see === see)) evidence.push(evidenceOfSee(see, c.look(see), evidence.length));
  }
  return out;
};

export const drawSaid = (root: string, seed: number, count: number, say: (line: string) => void): Said[] => {
  const out: Said[] = [];
  for (const [s, sheet] of sheetsOf(root).entries())
    for (let n = 0; n < count / 2; n++) {
      out.push(...saidOf(sheet, seed, n, s * count + n));
      if ((n + 1) % 100 === 0) say(`  ${sheet.id}: ${n + 1} coaches ...`);
    }
  return out;
};

export type Spoken = {
  readonly rank: string;
  readonly count: number;
  readonly coaches: number;
  readonly p: number;
  readonly right: number;
};

const grouped = (said: readonly Said[]): ReadonlyMap<string, readonly Said[]> => {
  const out = new Map<string, Said[]>();
  for (const s of said) out.set(rankOf(s.p), [...(out.get(rankOf(s.p)) ?? []), s]);
  return out;
};
const mean = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0) / Math.max(1, xs.length);

/** What each word stood for and how often it was right, surest first. */
export const byRank = (said: readonly Said[]): Spoken[] =>
  [...grouped(said)]
    .map(([rank, list]) => ({
      rank,
      count: list.length,
      coaches: new Set(list.map((s) => s.coach)).size,
      p: mean(list.map((s) => s.p)),
      right: mean(list.map((s) => (s.right ? 1 : 0))),
    }))
    .toSorted((a, b) => (rankFloor(b.rank) ?? 0) - (rankFloor(a.rank) ?? 0));

/**
 * Temperature by which all log odds would have to be divided for the least mean log loss (Guo, Pleiss, Sun and Weinberger
 * 2017, on calibration of modern neural networks). Near 1 the chances are what they say.
 */
export const bestTemperature = (said: readonly Said[]): number => {
  const loss = (t: number): number =>
    mean(
      said.map(({ p, right }) => {
        const held = Math.min(1 - 1e-6, Math.max(1e-6, p));
        const odds = (held / (1 - held)) ** (1 / t);
        return -Math.log(right ? odds / (1 + odds) : 1 / (1 + odds));
      }),
    );
  let best = 1;
  for (let t = 0.5; t <= 2.5; t += 0.05) if (loss(t) < loss(best)) best = t;
  return best;
};
