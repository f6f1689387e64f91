/** One drawn coach followed check by check by some way of choosing until its true fault is found. */
import type { Check } from '../../server/faults/check.ts';
import type { Evidence } from '../../server/faults/evidence.ts';
import type { Fault } from '../../server/faults/fault.ts';
import { burden, minutesOf } from '../../server/faults/minutes.ts';
import { ailmentOf, type Model } from '../../server/faults/model.ts';
import { suspectsFrom } from '../../server/faults/suspects.ts';
import { weighEvidence, type Weighed } from '../../server/faults/weigh.ts';
import { fold } from '../../server/session/fold.ts';
import type { Standing } from '../../server/session/standing.ts';
import type { Case, complaintOf } from './diagnosis-case.ts';

export const enough = 0.75;
export const mostChecks = 24;

export const bench = (standing: boolean, touched: boolean): Standing => {
  const blank = fold([]);
  return {
    ...blank,
    complaint: { seq: 1, words: 'complaint', standing },
    state: touched ? { ...blank.state, key: true } : blank.state,
  };
};

export const evidenceOfSee = (see: string, outcome: string, seq: number): Evidence => ({
  see,
  outcome,
  weight: 0.97,
  because: [],
  seq,
  words: `${see}: ${outcome}`,
  clock: seq,
});

/** Faults that the simulated coach cannot tell apart count as one. */
export const alike = (model: Model, index: number): ReadonlySet<number> => {
  if (index < 0) return new Set();
  const name = ailmentOf(model.faults[index]!);
  return new Set(model.faults.flatMap((f, i) => (i === index || (name !== null && ailmentOf(f) === name) ? [i] : [])));
};

type Verdict = { first: boolean; p: number };
/** Of a sound coach "nothing wrong" is right, and so is what is normal. */
export const verdict = (w: Weighed, same: ReadonlySet<number>): Verdict => {
  const top = suspectsFrom(w)[0];
  const cause = top ? w.model.index.get(top.fault) : undefined;
  if (same.size === 0) {
    const first = top !== undefined && (cause === undefined || w.model.faults[cause]!.innocent === true);
    return { first, p: first ? top.p : 0 };
  }
  let mine = 0;
  for (const i of same) mine += w.posterior.marginals[i]!;
  return { first: cause !== undefined && same.has(cause), p: mine };
};

export type Course = {
  after: Verdict[];
  minutes: number;
  found: boolean;
  path: string[];
  wrongRepairs?: number;
};

type Choice = { check: Check; repair?: undefined } | { repair: Fault; check?: undefined };

/** Follows `choose` until the true fault stands at `enough`, or nothing is left to do. */
export const follow = (
  c: Case,
  model: Model,

  complaint: NonNullable<ReturnType<typeof complaintOf>>,
  choose: (w: Weighed, standing: Standing, done: ReadonlySet<string>) => Choice | null,
): Course => {
  const same = alike(model, c.index);
  const evidence: Evidence[] = complaint.says.map(([see, outcome], i) => evidenceOfSee(see, outcome, i));
  const done = new Set<string>();
  const after: Verdict[] = [];
  let minutes = 0;
  let wrongRepairs = 0;
  let touched = !complaint.standing;
  let w = weighEvidence(model, evidence, [], true);
  let v = verdict(w, same);
  for (let k = 0; k < mostChecks; k++) {
    if (v.first && v.p >= enough) break;
    const standing = bench(complaint.standing, touched);
    const choice = choose(w, standing, done);
    if (!choice) break;
    if (choice.repair) {
      const right = same.has(model.index.get(choice.repair.key) ?? -1);
      if (right) return { after, minutes, found: true, path: [...done, `repair ${choice.repair.key}`] };
      // A wrong repair costs its minutes and a proof that fails.
      minutes += choice.repair.hands + 0.7 * choice.repair.wait + 10;
      done.add(`repair ${choice.repair.key}`);
      wrongRepairs++;
      continue;
    }
    const { check } = choice;
    const m = minutesOf(check, standing);
    if (m) minutes += burden(m, check);
    done.add(check.key);
    if (check.setting !== 'as found' && check.setting !== 'standing') touched = true;
    for (const see of check.settles)
      if (!evidence.some((e) => e.see === see)) evidence.push(evidenceOfSee(see, c.look(see), evidence.length));
    w = weighEvidence(model, evidence, [], true);
    v = verdict(w, same);
    after.push(v);
  }
  return { after, minutes, found: v.first && v.p >= enough, path: [...done], wrongRepairs };
};
