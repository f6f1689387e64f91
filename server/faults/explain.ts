/** Why this one, why not that one, how sure, what would change it: in words, from the numbers that stand. Pure. */
import type { Finding, Why } from '../findings/finding.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Check } from './check.ts';
import { checkOf } from './checks.ts';
import { hypothesesOf } from './hypotheses.ts';
import { faultsMeant } from './match.ts';
import { candidates } from './next.ts';
import { observableOf } from './observables.ts';
import { rankOf } from './rank.ts';
import { sensitivityOf } from './sensitivity.ts';
import { bitsFor, somethingElse, suspectsFrom } from './suspects.ts';
import { mendsOf } from './situation.ts';
import { weigh, weighEvidence, type Weighed } from './weigh.ts';

export type Explained = { words: string; lines: string[]; why?: Why };

/** Bits in words: 1 bit doubles the odds. */
export const strength = (bits: number): string => {
  const b = Math.abs(bits);
  const how = b >= 4 ? 'very strongly' : b >= 2 ? 'strongly' : b >= 0.8 ? 'clearly' : b >= 0.3 ? 'a little' : 'hardly';
  return `speaks ${how} ${bits >= 0 ? 'for' : 'against'} it`;
};
/** Five steps, for against: "+++", "--". */
export const bar = (bits: number): string =>
  (bits >= 0 ? '+' : '-').repeat(Math.min(5, Math.max(1, Math.round(Math.abs(bits)))));

const speaking = (w: Weighed, cause: number): { words: string; bits: number; note: string | undefined }[] =>
  w.evidence
    .map((e, k) => ({ words: e.words, bits: bitsFor(w, k, cause), note: e.note }))
    .filter((x) => Math.abs(x.bits) >= 0.1)
    .toSorted((a, b) => Math.abs(b.bits) - Math.abs(a.bits));

const noteWords: Readonly<Record<string, string>> = {
  'measured again': ' (measured again: firmer)',
  contradicts: ' (two reports disagree: neither counts much)',
  echo: ' (says little that is not known already)',
  'gauge in doubt': ' (read off a gauge that is in doubt)',
};

const lineOf = (x: { words: string; bits: number; note: string | undefined }): string =>
  `${bar(x.bits)} ${x.words}: ${strength(x.bits)}${x.note ? (noteWords[x.note] ?? '') : ''}`;

const whyNumbers = (w: Weighed, cause: number): Why => {
  const fault = w.model.faults[cause]!;
  return {
    formula:
      'chance = prior x product of P(what was seen | fault), over all sets of no, one and two faults; bits = log2 of P(seen | this) / P(seen | others)',
    inputs: [
      { name: 'prior', text: String(fault.prior), from: `estimate: ${fault.priorWhy}` },
      ...speaking(w, cause).map((x) => ({
        name: x.words,
        text: `${x.bits >= 0 ? '+' : ''}${x.bits.toFixed(1)} bit`,
        from: 'simulated coach or stated chances',
      })),
      { name: 'chance', text: w.posterior.marginals[cause]!.toFixed(2), from: 'computed' },
    ],
    source: {
      kind: 'practice',
      words: 'priors are estimates, common practice, no source; air-side chances from the simulated coach',
    },
    notes: [],
  };
};

const explainFault = (w: Weighed, cause: number): Explained => {
  const fault = w.model.faults[cause]!;
  const p = w.posterior.marginals[cause]!;
  const said = speaking(w, cause);
  return {
    words: `${fault.title}: ${rankOf(p)}.`,
    lines: [
      ...(said.length > 0 ? said.map(lineOf) : ['nothing noted so far speaks for or against it']),
      `To start with: ${fault.priorWhy} (an estimate).`,
      `What usually brings it on: ${fault.usually}.`,
    ],
    why: whyNumbers(w, cause),
  };
};

const findingsAbout = (about: string, standing: Standing): Finding[] =>
  [...standing.findings.values()].filter(
    (f) =>
      f.key === about ||
      f.key.startsWith(`${about}@`) ||
      f.key.endsWith(`@${about}`) ||
      (about !== '' && f.key.includes(about)),
  );

const explainNext = (standing: Standing): Explained[] => {
  const { next } = standing;
  if (next?.is !== 'check') return [];
  return [
    {
      words: `Next: ${next.words}`,
      lines: [
        next.why,
        ...(next.destroys ? [next.destroys] : []),
        `About ${next.hands} min at hand, ${next.wait} min waiting (estimates).`,
      ],
    },
  ];
};

/** "why ..." about a finding, a fault or part, the next check; with nothing named, the check and the leading suspect. */
export const explainWhy = (about: string | undefined, words: string, standing: Standing, sheet: Sheet): Explained[] => {
  const w = weigh(standing, sheet);
  const next = standing.next?.is === 'check' ? standing.next : null;
  if (about !== undefined && about !== '') {
    const meant = faultsMeant(about, words, w);
    const likely = meant.find((c) => w.posterior.marginals[c]! >= 0.02);
    const found = findingsAbout(about, standing);
    if (next && (checkOf(about)?.key === next.id || next.id.endsWith(about))) return explainNext(standing);
    if (likely !== undefined) return [explainFault(w, likely)];
    if (found.length > 0)
      return found.slice(-2).map((f) => ({ words: `${f.words}.`, lines: [...f.why.notes], why: f.why }));
    if (meant[0] !== undefined && w.seen.length > 0) return [explainFault(w, meant[0])];
  }
  const lead = w.seen.length > 0 ? suspectsFrom(w)[0] : undefined;
  const cause = lead ? w.model.index.get(lead.fault) : undefined;
  const out = [...explainNext(standing), ...(cause === undefined ? [] : [explainFault(w, cause)])];
  if (out.length > 0) return out;
  const found = [...standing.findings.values()];
  const newest = found.findLast((f) => f.verdict !== 'within') ?? found.at(-1);
  if (newest) return [{ words: `${newest.words}.`, lines: [...newest.why.notes], why: newest.why }];
  return [
    {
      words: 'There is nothing to explain yet.',
      lines: ['Tell me what you see: how it stands, tank pressure, what the pump does.'],
    },
  ];
};

/** An outcome as a tech would type it: the key of the check that gives it; without one, its name. */
const asTyped = (check: Check, see: string, outcome: string): string =>
  check.keys.find((k) => k.gives.some(([s, o]) => s === see && o.split('|').includes(outcome)))?.text ??
  `${see}: ${outcome}`;

/** Outcome of an open check that would lift `cause` most, and to where. */
const wouldLift = (w: Weighed, cause: number, standing: Standing, sheet: Sheet): string | null => {
  const mends = mendsOf(standing);
  let best: { words: string; p: number } | null = null;
  for (const c of candidates(standing, sheet, w, hypothesesOf(w)).slice(0, 8))
    for (const see of c.sees)
      for (const outcome of observableOf(see)?.outcomes ?? []) {
        const view = w.model.view(see);
        const fault = w.faultOfCause[cause]!;
        const k = view?.observable.outcomes.indexOf(outcome) ?? -1;
        // Only what is likely under it and not under a sound coach is worth the sum.
        if (!view || view.rows[fault * view.width + k]! < 2 * view.healthy[k]!) continue;
        const then = weighEvidence(
          w.model,
          [
            ...w.evidence,
            { see, outcome, weight: 0.97, because: [], seq: standing.seq + 1, words: '', clock: standing.facts.length },
          ],
          mends,
          false,
        );
        const p = then.posterior.marginals[cause]!;
        if (!best || p > best.p) best = { words: asTyped(c.check, see, outcome), p };
      }
  return best && best.p > w.posterior.marginals[cause]! * 1.3
    ? `"${best.words}" would make it ${rankOf(best.p)}.`
    : null;
};

/** "why not ...": what speaks against it, and what would change that. */
export const explainWhyNot = (about: string | undefined, standing: Standing, sheet: Sheet): Explained[] => {
  const w = weigh(standing, sheet);
  const cause = faultsMeant(about, '', w)[0];
  if (cause === undefined)
    return [
      {
        words: `I have no fault by that name${about ? ` ("${about}")` : ''}.`,
        lines: ['Name a part, such as "why not the left bellows".'],
      },
    ];
  const fault = w.model.faults[cause]!;
  if (w.seen.length === 0) return [{ words: `${fault.title}: nothing noted yet speaks for or against it.`, lines: [] }];
  const p = w.posterior.marginals[cause]!;
  const against = speaking(w, cause).filter((x) => x.bits < 0);
  const lead = suspectsFrom(w)[0];
  const lift = wouldLift(w, cause, standing, sheet);
  const lines = against.map(lineOf);
  if (against.length === 0)
    lines.push('Nothing noted speaks against it; others explain what you saw as well, and are more common.');
  if (lead && lead.fault !== fault.key) lines.push(`${lead.name} explains it better: ${lead.rank}.`);
  if (lift) lines.push(`What would change that: ${lift}`);
  return [{ words: `${fault.title}: ${rankOf(p)}.`, lines, why: whyNumbers(w, cause) }];
};

/** "how sure": the leading suspect, what it hangs on, and what would change it. */
export const howSure = (standing: Standing, sheet: Sheet): Explained[] => {
  const w = weigh(standing, sheet);
  const lead = suspectsFrom(w)[0];
  if (!lead) return [{ words: 'Nothing to be sure of yet.', lines: ['Tell me what you see first.'] }];
  const cause = w.model.index.get(lead.fault);
  if (cause === undefined)
    return [
      {
        words: `${lead.name}: ${lead.rank}.`,
        lines:
          lead.fault === somethingElse
            ? ['What you noted does not fit anything on my list. Check the oddest reading once more.']
            : ['Nothing noted needs a fault to explain it.'],
      },
    ];
  const s = sensitivityOf(w, cause);
  const hang = s.without.toSorted((a, b) => a.p - b.p)[0];
  const lines: string[] = [];
  if (hang && hang.p < s.p * 0.7)
    lines.push(
      `It hangs most on "${hang.what}": without it ${rankOf(hang.p)}${hang.leads ? '' : ', and another would lead'}.`,
    );
  lines.push(
    s.low.leads
      ? `It leads even if it were three times rarer than I take it to be (${rankOf(s.low.p)}).`
      : `If it were three times rarer than I take it to be, another would lead (${rankOf(s.low.p)}).`,
  );
  lines.push(...contradictionsOf(w));
  const [first] = candidates(standing, sheet, w, hypothesesOf(w));
  if (first) lines.push(`What would change it most for its minutes: ${first.check.words}`);
  return [{ words: `${lead.name}: ${lead.rank}.`, lines, why: whyNumbers(w, cause) }];
};

/** Reports that disagree, or that the leading explanation does not expect. */
export const contradictionsOf = (w: Pick<Weighed, 'evidence'>): string[] => {
  const disagree = w.evidence.filter((e) => e.note === 'contradicts');
  const sees = [...new Set(disagree.map((e) => e.see))];
  return sees.map((see) => {
    const both = disagree.filter((e) => e.see === see);
    return `Two reports disagree on ${see}: ${both.map((e) => `"${e.words}"`).join(' and ')}. Look at it once more; until then neither counts much.`;
  });
};

/** "what if ...": where each outcome of the next check would lead. */
export const whatIf = (_words: string, standing: Standing, sheet: Sheet): Explained[] => {
  const w = weigh(standing, sheet);
  const check =
    (standing.next?.is === 'check' ? checkOf(standing.next.id) : undefined) ??
    candidates(standing, sheet, w, hypothesesOf(w))[0]?.check;
  if (!check) return [{ words: 'There is no open check to suppose an outcome of.', lines: [] }];
  const mends = mendsOf(standing);
  const lines = check.keys.flatMap(({ label, gives }) => {
    const then = weighEvidence(
      w.model,
      [
        ...w.evidence,
        ...gives.map(([see, outcome]) => ({
          see,
          outcome,
          weight: 0.97,
          because: [],
          seq: standing.seq + 1,
          words: label,
          clock: standing.facts.length,
        })),
      ],
      mends,
      false,
    );
    const lead = suspectsFrom(then)[0];
    return lead ? [`If ${label}: ${lead.name}, ${lead.rank}.`] : [];
  });
  return [{ words: `Supposed only, nothing of this is kept: ${check.words}`, lines }];
};
