/**
 * The next check: most expected information about what is wrong for its minutes, from where the coach is now; or the
 * repair, once repairing costs less than checking on. Pure.
 */
import type { Key } from '../chat/reply.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { provedWords, whyProof } from './after.ts';
import type { Check } from './check.ts';
import { checks } from './checks.ts';
import type { Evidence } from './evidence.ts';
import type { Fault, Feature } from './fault.ts';
import { bitsOf, type Forecast, forecastsOf } from './forecast.ts';
import { type Hypothesis, hypothesesOf } from './hypotheses.ts';
import { jointTable, type Table } from './information.ts';
import { burden, type Minutes, minutesOf, untouched } from './minutes.ts';
import { featuresOf } from './model.ts';
import { kindOfSee, observables, sideOfSee } from './observables.ts';
import { openProof, provedOf } from './proof.ts';
import { rankOf } from './rank.ts';
import { mendsOf } from './situation.ts';
import { type Weighed, weigh } from './weigh.ts';

export type Next =
  | { is: 'check'; check: Check; why: string; bits: number; hands: number; wait: number; keys: Key[] }
  | { is: 'close'; words: string; keys: Key[] }
  | { is: 'repair'; fault: Fault; why: string; hands: number; wait: number; keys: Key[] };

export type Candidate = {
  check: Check;
  sees: string[];
  bits: number;
  minutes: Minutes;
  rate: number;
  table: Table;
};

/** Less than this is not worth a check; largest joint table that is worked through exactly. */
const leastBits = 0.01;
const largestJoint = 80;
/** How many of the most promising are worked through exactly. */
const closest = 10;
/** Proof after a repair. Minutes, an estimate. */
const proofMinutes = 10;

/** Firmer checks that make a vaguer one needless. */
const covers: Readonly<Record<string, readonly string[]>> = {
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
const together = (tolds: readonly Forecast[], prior: readonly number[]): { table: Table; bits: number } => {
  const used: Forecast[] = [];
  let size = 1;
  for (const f of tolds.toSorted((a, b) => b.bits - a.bits)) {
    if (size * f.width > largestJoint || f.bits < leastBits / 4) continue;
    size *= f.width;
    used.push(f);
  }
  const [only] = used;
  if (only && used.length === 1) return { table: only.table(), bits: only.bits };
  const table = jointTable(
    used.map((f) => f.table()),
    prior.length,
  );
  const noise = new Float64Array(prior.length);
  for (const f of used) {
    const one = f.noise();
    for (let h = 0; h < noise.length; h++) noise[h] = noise[h]! + one[h]!;
  }
  return { table, bits: bitsOf(prior, table, noise) };
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
    if (!possible(check, standing, has)) continue;
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
      return { check, sees, bits, minutes, rate: (bits * patience) / burden(minutes, check), table };
    })
    .toSorted((a, b) => b.rate - a.rate || a.check.key.localeCompare(b.check.key));
};

const repairMinutes = (f: Fault): number => f.hands + 0.7 * f.wait + proofMinutes;

/**
 * Expected minutes until what was complained of is mended, trying repairs in falling p / cost, each proved before the
 * next: the sum over sets of faults of the costs up to the last member of the set. For one fault at a time this is the
 * expected cost of repair of repair-cost.ts.
 */
export const costOf = (
  w: Weighed,
  hs: readonly Hypothesis[],
  ps: ArrayLike<number>,
): { cost: number; first: number | null } => costing(w, hs)(ps);

type Costing = (ps: ArrayLike<number>) => { cost: number; first: number | null };

/** costOf for one list of sets and many chances: which repairs there are and what each costs is looked up once. */
const costing = (w: Weighed, hs: readonly Hypothesis[]): Costing => {
  const m = w.model.faults.length;
  const at = new Map<number, number>();
  for (const h of hs) for (const c of h.of) if (c < m && !at.has(c)) at.set(c, at.size);
  const causes = [...at.keys()];
  const minutes = Float64Array.from(causes, (c) => repairMinutes(w.model.faults[c]!));
  const n = causes.length;
  // members of set i: sets[k] for ends[i - 1] <= k < ends[i]
  const members = hs.map((h) => h.of.flatMap((c) => at.get(c) ?? []));
  const sets = Int32Array.from(members.flat());
  let end = 0;
  const ends = Int32Array.from(members, (set) => (end += set.length));
  const worth = new Float64Array(n);
  const upTo = new Float64Array(n);
  const order = Int32Array.from({ length: n }, (_, k) => k);
  return (ps) => {
    worth.fill(0);
    for (let i = 0, k = 0; i < ends.length; i++)
      for (const p = ps[i]!; k < ends[i]!; k++) worth[sets[k]!] = worth[sets[k]!]! + p;
    // Falling p / cost (repair-cost.ts, bestOrder), ties as they come; from the order before, which is near it.
    for (let k = 0; k < n; k++) worth[k] = worth[k]! / minutes[k]!;
    for (let k = 1; k < n; k++) {
      const one = order[k]!;
      const w = worth[one]!;
      let to = k;
      for (; to > 0; to--) {
        const other = order[to - 1]!;
        if (worth[other]! > w || (worth[other] === w && other < one)) break;
        order[to] = other;
      }
      order[to] = one;
    }
    let sum = 0;
    for (let k = 0; k < n; k++) {
      const one = order[k]!;
      sum += minutes[one]!;
      upTo[one] = sum;
    }
    let cost = 0;
    for (let i = 0, k = 0; i < ends.length; i++) {
      let last = 0;
      for (; k < ends[i]!; k++) if (upTo[sets[k]!]! > last) last = upTo[sets[k]!]!;
      cost += ps[i]! * last;
    }
    return { cost, first: causes[order[0] ?? -1] ?? null };
  };
};

const leastOutcome = 0.004;
/** Expected minutes of repair once the check has been made, its own minutes not counted. */
export const costAfter = (cost: Costing, hs: readonly Hypothesis[], c: Candidate): number => {
  const { width, cells } = c.table;
  const ps = new Float64Array(hs.length);
  let sum = 0;
  let seen = 0;
  for (let y = 0; y < width; y++) {
    let py = 0;
    for (let i = 0; i < hs.length; i++) py += hs[i]!.p * cells[i * width + y]!;
    if (py < leastOutcome) continue;
    for (let i = 0; i < hs.length; i++) ps[i] = (hs[i]!.p * cells[i * width + y]!) / py;
    sum += py * cost(ps).cost;
    seen += py;
  }
  return seen > 0 ? sum / seen : 0;
};

const told = (bits: number): string =>
  bits >= 0.8 ? 'it tells most' : bits >= 0.3 ? 'it tells much' : 'it tells something';

/** The two likeliest faults that the check would tell apart. */
const splits = (w: Weighed, hs: readonly Hypothesis[], c: Candidate): string => {
  const { width, cells } = c.table;
  const apart = (a: number, b: number): number => {
    let sum = 0;
    for (let y = 0; y < width; y++) sum += Math.abs(cells[a * width + y]! - cells[b * width + y]!);
    return sum / 2;
  };
  const name = (h: Hypothesis): string =>
    h.of.length === 0
      ? 'nothing wrong'
      : h.of
          .map((x) =>
            x < w.model.faults.length
              ? w.model.faults[x]!.title
              : `${w.model.faults[w.faultOfCause[x]!]!.where} mended`,
          )
          .join(', and ');
  let best: { a: number; b: number; worth: number } | null = null;
  for (let a = 0; a < Math.min(6, hs.length); a++)
    for (let b = a + 1; b < Math.min(10, hs.length); b++) {
      const worth = apart(a, b) * Math.min(hs[a]!.p, hs[b]!.p);
      if (!best || worth > best.worth) best = { a, b, worth };
    }
  if (!best || best.worth < 0.005) return 'It narrows the list';
  return `It tells "${name(hs[best.a]!)}" from "${name(hs[best.b]!)}"`;
};

const whyCheck = (w: Weighed, hs: readonly Hypothesis[], c: Candidate, first: boolean): string => {
  const split = splits(w, hs, c);
  if (first) return `${split}, and three minutes of pumping would wipe it out.`;
  const wait =
    c.minutes.wait > 0
      ? `${c.minutes.wait} min waiting${c.check.meanwhile ? ` (meanwhile: ${c.check.meanwhile})` : ''}`
      : 'no waiting';
  return `${split}; ${told(c.bits)} for ${Math.round(c.minutes.hands)} min at hand, ${wait}.`;
};

const asCheck = (w: Weighed, hs: readonly Hypothesis[], c: Candidate, first = false): Next => ({
  is: 'check',
  check: c.check,
  why: whyCheck(w, hs, c, first),
  bits: c.bits,
  hands: Math.round(c.minutes.hands),
  wait: Math.round(c.minutes.wait),
  keys: c.check.keys.map(({ label, text }) => ({ label, text })),
});

/** Seats and covers are worked on as the whole valve. */
const workOn = (fault: Fault): string =>
  /^(?:inlet seat|exhaust seat|inlet check|valve cover)$/.test(fault.part) && fault.side
    ? `${fault.side} height valve`
    : fault.where;

const repairKeys = (fault: Fault): Key[] =>
  fault.innocent
    ? []
    : [
        { label: 'replaced', text: `replaced ${workOn(fault)}` },
        { label: 'repaired', text: `repaired ${workOn(fault)}` },
      ];

export const nextStep = (standing: Standing, sheet: Sheet): Next | null => {
  const w = weigh(standing, sheet);
  if (w.seen.length === 0 && standing.facts.length === 0) return null;
  return nextFrom(w, standing, sheet);
};

/** The choice itself, from what has been weighed. */
export const nextFrom = (w: Weighed, standing: Standing, sheet: Sheet): Next | null => {
  const proof = openProof(w, standing);
  if (proof) {
    const m = minutesOf(proof.check, standing) ?? proof.check;
    return {
      is: 'check',
      check: proof.check,
      why: whyProof(proof, w),
      bits: 0,
      hands: Math.round(m.hands),
      wait: Math.round(m.wait),
      keys: proof.check.keys.map(({ label, text }) => ({ label, text })),
    };
  }
  const proved = provedOf(w, standing);
  if (proved)
    return {
      is: 'close',
      words: provedWords(proved, standing.complaint),
      keys: [{ label: 'close', text: 'close the session' }],
    };
  const hs = hypothesesOf(w);
  if (hs.length === 0) return null;
  const list = candidates(standing, sheet, w, hs);
  const standingComplaint = standing.complaint?.standing === true || standing.complaint === null;
  // Asked once: whoever goes on without it has his reasons.
  const askedBefore = standing.checks.some((c) => c.id === 'as found');
  if (untouched(standing) && standingComplaint && !askedBefore) {
    const asFound = list.filter((c) => c.check.setting === 'as found' && c.check.id !== 'rises first');
    const best = asFound.find((c) => c.check.id === 'as found') ?? asFound[0];
    if (best) return asCheck(w, hs, best, best.check.id === 'as found');
  }
  const best = list[0];
  const cost = costing(w, hs);
  const now = cost(hs.map((h) => h.p));
  const fault = now.first === null ? undefined : w.model.faults[now.first];
  const pFault = now.first === null ? 0 : w.posterior.marginals[now.first]!;
  const bestCheck = list
    .slice(0, 4)
    .map((c) => ({ c, cost: burden(c.minutes, c.check) + costAfter(cost, hs, c) }))
    .toSorted((a, b) => a.cost - b.cost)[0];
  if (fault && pFault > 0.5 && (!bestCheck || bestCheck.cost >= now.cost))
    return {
      is: 'repair',
      fault,
      why: `${fault.title}: ${rankOf(pFault)}; mending it costs less than another check would save.`,
      hands: fault.hands,
      wait: fault.wait,
      keys: repairKeys(fault),
    };
  return best ? asCheck(w, hs, best) : null;
};
