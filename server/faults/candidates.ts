/** The checks that can be made from where the coach is and are not answered, best first. Pure. */
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Check } from './check.ts';
import { checks } from './checks.ts';
import type { Evidence } from './evidence.ts';
import type { Feature } from './fault.ts';
import { type Forecast, forecastsOf, jointBits, tableOf } from './forecast.ts';
import type { Hypothesis } from './hypotheses.ts';
import { jointTable, type Table } from './information.ts';
import { burden, type Minutes, minutesOf } from './minutes.ts';
import { featuresOf } from './model.ts';
import { kindOfSee, observables, sideOfSee } from './observables.ts';
import { mendsOf } from './situation.ts';
import type { Weighed } from './weigh.ts';

export type Candidate = {
  check: Check;
  sees: string[];
  bits: number;
  minutes: Minutes;
  rate: number;
  /** P(outcome | h), worked out when it is asked for. */
  readonly table: Table;
};

/** Less than this is not worth a check; largest joint table that is worked through exactly. */
const leastBits = 0.01;

const largestJoint = 80;

/** How many of the most promising are worked through exactly. */
const closest = 10;

/** Firmer checks that make a vaguer one needless. */
export const covers: Readonly<Record<string, readonly string[]>> = {
  'soap tank': ['tank bubbles at'],
  driving: ['S rear height'],
  overnight: ['S as found'],
  'as found': ['S overnight'],
  'pump cycles auto': ['tank fall auto'],
  'tank below cut-in': ['pump called'],
};

/** Observables whose answer stands, in the present situation: work on that side or on the supply reopens them. */
export const answeredSees = (standing: Standing, evidence: readonly Evidence[]): ReadonlySet<string> => {
  const mends = mendsOf(standing).filter((m) => m.words !== 'panel set to AUTO');
  return new Set(
    evidence
      .filter((e) => e.note !== 'contradicts' && e.note !== 'gauge in doubt' && e.weight > 0.5)
      .filter((e) => {
        const side = sideOfSee(e.see);
        return !mends.some((m) => m.clock > e.clock && (m.side === null || side === null || m.side === side));
      })
      .map((e) => e.see),
  );
};

/** Observable -> itself and those that cover it, side and all. */
const answers: ReadonlyMap<string, readonly string[]> = new Map(
  observables.map(({ see, side }) => [
    see,
    [see, ...(covers[kindOfSee(see)] ?? []).map((c) => (side ? c.replace(/^S /, `${side} `) : c))],
  ]),
);

const isAnswered = (see: string, answered: ReadonlySet<string>): boolean =>
  (answers.get(see) ?? [see]).some((by) => answered.has(by));

const possible = (check: Check, standing: Standing, has: ReadonlySet<Feature>): boolean => {
  if (check.needs && !has.has(check.needs)) return false;
  if (check.without && has.has(check.without)) return false;
  if (check.lacks && standing.gates.get(check.lacks) === true) return false;
  return true;
};

/** The most telling observations of a check together, as long as the joint table stays small. */
const together = (tolds: readonly Forecast[], prior: readonly number[]): { table: () => Table; bits: number } => {
  const used: Forecast[] = [];
  let size = 1;
  for (const f of tolds.toSorted((a, b) => b.bits - a.bits)) {
    if (size * f.width > largestJoint || f.bits < leastBits / 4) continue;
    size *= f.width;
    used.push(f);
  }
  const [only] = used;
  if (only && used.length === 1) return { table: () => tableOf(only), bits: only.bits };
  const table = (): Table => jointTable(used.map(tableOf), prior.length);
  return { table, bits: jointBits(prior, used, size) };
};

/** Said so, and nothing was mended since: nobody listens for the end of a run at a pump that does not run, or not stop. */
const stands = (
  standing: Standing,
  evidence: readonly Evidence[],
  sees: readonly string[],
  says: (outcome: string) => boolean,
): boolean => {
  const told = evidence.filter((e) => sees.includes(e.see) && e.weight > 0.15);
  const last = told.toSorted((a, b) => a.clock - b.clock).at(-1);
  return last !== undefined && says(last.outcome) && !mendsOf(standing).some((m) => m.clock > last.clock);
};

/** All checks that can be made and are not answered, best first. */
export const candidates = (standing: Standing, sheet: Sheet, w: Weighed, hs: readonly Hypothesis[]): Candidate[] => {
  const answered = answeredSees(standing, w.evidence);
  const has = featuresOf(sheet);
  const prior = hs.map((h) => h.p);
  const asked = new Map<string, number>();
  for (const c of standing.checks) asked.set(c.id, (asked.get(c.id) ?? 0) + 1);
  const forecast = forecastsOf(w, hs);
  const told = new Map<string, Forecast | null>();
  const tell = (see: string): Forecast | null => {
    const had = told.get(see);
    if (had !== undefined) return had;
    const made = forecast(see);
    told.set(see, made);
    return made;
  };
  const rough: { check: Check; sees: string[]; minutes: Minutes; tolds: Forecast[]; rate: number; patience: number }[] =
    [];
  const still = stands(standing, w.evidence, ['pump quiet', 'pump called'], (o) => !o.split('|').includes('runs'));
  const endless = stands(standing, w.evidence, ['pump past cut-out'], (o) => o === 'runs on');
  for (const check of checks) {
    if (standing.skipped.has(check.key) || !possible(check, standing, has)) continue;
    if (check.onlyAfter && !w.evidence.some((e) => e.see === check.onlyAfter)) continue;
    if (check.setting === 'pump running' && (still || (endless && check.id === 'hiss after stop'))) continue;
    const sees = check.settles.filter((s) => !isAnswered(s, answered));
    if (sees.length === 0) continue;
    const minutes = minutesOf(check, standing);
    if (!minutes) continue;
    const tolds = sees.map(tell).filter((t) => t !== null);
    // No more than the sum of what each tells: an upper bound good enough to leave the hopeless out.
    const most = tolds.reduce((sum, t) => sum + t.bits, 0);
    if (most < leastBits) continue;
    // Asked again and again without an answer: perhaps it cannot be done here.
    const times = asked.get(check.key) ?? 0;
    const patience = check.setting === 'as found' ? 0.3 ** times : 0.6 ** Math.max(0, times - 1);
    rough.push({ check, sees, minutes, tolds, rate: (most * patience) / burden(minutes, check), patience });
  }
  return rough
    .toSorted((a, b) => b.rate - a.rate)
    .slice(0, closest)
    .map(({ check, sees, minutes, tolds, patience }): Candidate => {
      const { table, bits } = together(tolds, prior);
      let made: Table | null = null;
      return {
        check,
        sees,
        bits,
        minutes,
        rate: (bits * patience) / burden(minutes, check),
        get table() {
          return (made ??= table());
        },
      };
    })
    .toSorted((a, b) => b.rate - a.rate || a.check.key.localeCompare(b.check.key));
};
