/**
 * How good the diagnosis is on coaches drawn by seed (diagnosis-case.ts): how often the true fault is first after 3, 5 and
 * 8 checks, whether "1 in 2" is right half the time (diagnosis-calibration.ts), and the minutes to the fault beside a fixed checklist in its best
 * order that weighs by the very same numbers.
 */
import type { Check } from '../../server/faults/check.ts';
import { checks } from '../../server/faults/checks.ts';
import type { Evidence } from '../../server/faults/evidence.ts';
import { hypothesesOf } from '../../server/faults/hypotheses.ts';
import { burden, minutesOf } from '../../server/faults/minutes.ts';
import { featuresOf, modelOf, type Model } from '../../server/faults/model.ts';
import { nextFrom } from '../../server/faults/next.ts';
import { candidates } from '../../server/faults/candidates.ts';
import { weighEvidence } from '../../server/faults/weigh.ts';
import type { Sheet } from '../../server/sheet/schema.ts';
import { bestTemperature, byRank, drawSaid } from './diagnosis-calibration.ts';
import { type Case, complaintOf, drawCase } from './diagnosis-case.ts';
import { alike, bench, enough, evidenceOfSee, follow, mostChecks, verdict } from './diagnosis-course.ts';
import { excess } from './diagnosis-exhaustive.ts';
import { sheetsOf } from './diagnosis-sheets.ts';

/** Fresh seeds keep a study honest: whoever mends by one seed measures by another. */
const seed = Number(process.env['DIAGNOSIS_SEED'] ?? 90_217);

const possible = (sheet: Sheet): Check[] =>
  checks.filter(
    (c) => (!c.needs || featuresOf(sheet).has(c.needs)) && (!c.without || !featuresOf(sheet).has(c.without)),
  );

/** A fixed order over all cases of a sheet: the next in it is the one that found most for its minutes on other coaches. */
export const bestFixedOrder = (sheet: Sheet, model: Model, cases: readonly Case[]): Check[] => {
  const left = new Set(possible(sheet));
  const order: Check[] = [];
  const state = cases.flatMap((c) => {
    const complaint = complaintOf(c);
    if (!complaint) return [];
    const evidence = complaint.says.map(([see, outcome], i) => evidenceOfSee(see, outcome, i));
    return [{ c, evidence, same: alike(model, c.index), p: 0, standing: complaint.standing }];
  });
  const pOf = (evidence: readonly Evidence[], same: ReadonlySet<number>): number =>
    Math.min(1, verdict(weighEvidence(model, evidence, [], false), same).p);
  for (const s of state) s.p = pOf(s.evidence, s.same);
  while (left.size > 0 && order.length < mostChecks) {
    let best: { check: Check; rate: number; with: Evidence[][]; ps: number[] } | null = null;
    for (const check of left) {
      const standing = bench(false, order.length > 0);
      const m = minutesOf(
        check,
        bench(
          true,
          order.some((o) => o.setting !== 'as found' && o.setting !== 'standing'),
        ),
      );
      if (!m) continue;
      const withIt = state.map((s) =>
        s.p >= enough
          ? s.evidence
          : [
              ...s.evidence,
              ...check.settles
                .filter((see) => !s.evidence.some((e) => e.see === see))
                .map((see, i) => evidenceOfSee(see, s.c.look(see), s.evidence.length + i)),
            ],
      );
      const ps = state.map((s, i) => (s.p >= enough ? s.p : pOf(withIt[i]!, s.same)));
      const gain = state.reduce((sum, s, i) => sum + Math.max(0, Math.min(enough, ps[i]!) - Math.min(enough, s.p)), 0);
      const rate = gain / burden(m, check);
      void standing;
      if (!best || rate > best.rate) best = { check, rate, with: withIt, ps };
    }
    if (!best || best.rate <= 0) break;
    order.push(best.check);
    left.delete(best.check);
    for (const [i, s] of state.entries()) {
      s.evidence = best.with[i]!;
      s.p = best.ps[i]!;
    }
  }
  return order;
};

const percent = (x: number): string => `${(100 * x).toFixed(0)} %`;
const mean = (xs: readonly number[]): number => (xs.length > 0 ? xs.reduce((a, b) => a + b, 0) / xs.length : 0);

export type Summary = {
  cases: number;
  first: Record<3 | 5 | 8, number>;
  simulated: { cases: number; first: Record<3 | 5 | 8, number> };
  found: number;
  minutes: number;
  fixedMinutes: number;
  fixedFound: number;
  wrong: Map<string, number>;
  wrongRepairs: number;
  both: { ours: number; fixed: number; count: number };
};

export const runDiagnosis = (
  root: string,
  count: number,
  train: number,
  say: (line: string) => void = () => {},
): Summary => {
  const first = { 3: 0, 5: 0, 8: 0 };
  const simulated = { cases: 0, first: { 3: 0, 5: 0, 8: 0 } };
  const ours: number[] = [];
  const fixed: number[] = [];
  const both: { ours: number; fixed: number }[] = [];
  let found = 0;
  let wrongRepairs = 0;
  let fixedFound = 0;
  let cases = 0;
  const wrong = new Map<string, number>();
  for (const sheet of sheetsOf(root)) {
    const model = modelOf(sheet);
    const order = bestFixedOrder(
      sheet,
      model,
      Array.from({ length: train }, (_, n) => drawCase(sheet, model, seed + 1, n)),
    );
    say(
      `  ${sheet.id}: fixed order ${order
        .slice(0, 8)
        .map((c) => c.key)
        .join(', ')} ...`,
    );
    for (let n = 0; n < count / 2; n++) {
      const c = drawCase(sheet, model, seed, n);
      const complaint = complaintOf(c);
      if (!complaint) continue;
      cases++;
      const mine = follow(c, model, complaint, (w, standing, done) => {
        const next = nextFrom(w, standing, sheet);
        if (next?.is === 'repair' && !done.has(`repair ${next.fault.key}`)) return { repair: next.fault };
        if (next?.is === 'check' && !done.has(next.check.key)) return { check: next.check };
        const other = candidates(standing, sheet, w, hypothesesOf(w)).find((x) => !done.has(x.check.key));
        return other ? { check: other.check } : null;
      });
      const theirs = follow(c, model, complaint, (_, __, done) => {
        const check = order.find((k) => !done.has(k.key));
        return check ? { check } : null;
      });
      if (c.simulated) simulated.cases++;
      for (const k of [3, 5, 8] as const) {
        const v = mine.after[Math.min(k, mine.after.length) - 1];
        if (v?.first) first[k]++;
        if (v?.first && c.simulated) simulated.first[k]++;
      }
      if (mine.found) found++;
      else wrong.set(c.fault?.kind ?? 'nothing wrong', (wrong.get(c.fault?.kind ?? 'nothing wrong') ?? 0) + 1);
      if (theirs.found) fixedFound++;
      ours.push(mine.minutes);
      fixed.push(theirs.minutes);
      if (mine.found && theirs.found) both.push({ ours: mine.minutes, fixed: theirs.minutes });
      wrongRepairs += mine.wrongRepairs ?? 0;
      if (cases % 50 === 0) say(`  ${cases} coaches ...`);
    }
  }
  return {
    cases,
    first: { 3: first[3] / cases, 5: first[5] / cases, 8: first[8] / cases },
    simulated,
    found: found / cases,
    minutes: mean(ours),
    fixedMinutes: mean(fixed),
    fixedFound: fixedFound / cases,
    wrong,
    wrongRepairs,
    both: { ours: mean(both.map((b) => b.ours)), fixed: mean(both.map((b) => b.fixed)), count: both.length },
  };
};

/** `npm run measure -- diagnosis` draws 1,000 coaches (some minutes), among all figures 120; DIAGNOSIS_COACHES sets it. */
export const measureDiagnosis = (): void => {
  const root = process.env['SOAPWATER_ROOT'] ?? process.cwd();
  const count = Number(process.env['DIAGNOSIS_COACHES'] ?? (process.argv.includes('diagnosis') ? 1000 : 120));
  console.log(`diagnosis: ${count} coaches drawn by seed ${seed}, apart from those behind the table`);
  const s = runDiagnosis(root, count, Math.min(120, Math.max(20, Math.round(count / 8))), (line) => console.log(line));
  console.log(`  coaches with a complaint: ${s.cases}`);
  console.log(
    `  true fault first after 3, 5, 8 checks: ${percent(s.first[3])}, ${percent(s.first[5])}, ${percent(s.first[8])}`,
  );
  const air = s.simulated;
  console.log(
    `  of these, faults of the simulated coach (${air.cases}): ${([3, 5, 8] as const).map((k) => percent(air.first[k] / air.cases)).join(', ')}`,
  );
  console.log(
    `  found (first, at ${percent(enough)} or more): ${percent(s.found)}; by the fixed checklist ${percent(s.fixedFound)}`,
  );
  console.log(
    `  minutes to the fault: ${s.minutes.toFixed(0)}; fixed checklist in its best order ${s.fixedMinutes.toFixed(0)}: ${percent(1 - s.minutes / s.fixedMinutes)} fewer (goal 35 %)`,
  );
  console.log(
    `  where both found it (${s.both.count}): ${s.both.ours.toFixed(0)} against ${s.both.fixed.toFixed(0)} min; wrong repairs advised ${s.wrongRepairs}`,
  );
  const [small] = sheetsOf(root);
  const e = excess(small!, bench(false, true), 'rate');
  console.log(
    `  beside the best order by exhaustive search, ${e.cases} small cases: mean ${percent(e.mean)} more minutes, worst ${percent(e.worst)}`,
  );
  const said = drawSaid(root, seed + 2, count, (line) => console.log(line));
  for (const r of byRank(said))
    console.log(
      `  said "${r.rank}" ${r.count} times (${r.coaches} coaches), mean chance ${percent(r.p)}, right ${percent(r.right)}`,
    );
  console.log(
    `  temperature that would make the chances fit best: ${bestTemperature(said).toFixed(2)} (1: as they are)`,
  );
  console.log(
    `  not found most often: ${[...s.wrong]
      .toSorted((a, b) => b[1] - a[1])
      .slice(0, 8)
      .map(([k, n]) => `${k} ${n}`)
      .join(', ')}`,
  );
};
