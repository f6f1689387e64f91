/** Why this one, and where each answer to the next check would lead: in words, from the numbers that stand. Pure. */
import type { Finding, Why } from '../findings/finding.ts';
import type { Standing } from '../session/standing.ts';
import type { Sheet } from '../sheet/schema.ts';
import { checkOf } from './checks.ts';
import { hypothesesOf } from './hypotheses.ts';
import { faultsMeant } from './match.ts';
import { candidates } from './candidates.ts';
import { rankOf } from './rank.ts';
import { bitsFor, suspectsFrom } from './suspects.ts';
import { supposing } from './supposing.ts';
import { weigh, type Weighed } from './weigh.ts';

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

/** What speaks for and against, one line a report: what it says of several observables is added up. */
export const speaking = (w: Weighed, cause: number): { words: string; bits: number; note: string | undefined }[] => {
  const lines = new Map<string, { words: string; bits: number; note: string | undefined }>();
  for (const [k, e] of w.evidence.entries()) {
    const bits = bitsFor(w, k, cause);
    const had = lines.get(e.words);
    if (had) had.bits += bits;
    else lines.set(e.words, { words: e.words, bits, note: e.note });
  }
  return [...lines.values()]
    .filter((x) => Math.abs(x.bits) >= 0.1)
    .toSorted((a, b) => Math.abs(b.bits) - Math.abs(a.bits));
};

const noteWords: Readonly<Record<string, string>> = {
  'measured again': ' (measured again: firmer)',
  contradicts: ' (two reports disagree: neither counts much)',
  echo: ' (says little that is not known already)',
  'gauge in doubt': ' (read off a gauge that is in doubt)',
};

export const lineOf = (x: { words: string; bits: number; note: string | undefined }): string =>
  `${bar(x.bits)} ${x.words}: ${strength(x.bits)}${x.note ? (noteWords[x.note] ?? '') : ''}`;

export const whyNumbers = (w: Weighed, cause: number): Why => {
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

/** "what if ...": where each outcome of the next check would lead. */
export const whatIf = (_words: string, standing: Standing, sheet: Sheet): Explained[] => {
  const w = weigh(standing, sheet);
  const check =
    (standing.next?.is === 'check' ? checkOf(standing.next.id) : undefined) ??
    candidates(standing, sheet, w, hypothesesOf(w))[0]?.check;
  if (!check) return [{ words: 'There is no open check to suppose an outcome of.', lines: [] }];
  const lines = check.keys.flatMap(({ label, gives }) => {
    const then = supposing(w, standing, gives, label);
    const lead = suspectsFrom(then)[0];
    return lead ? [`If ${label}: ${lead.name}, ${lead.rank}.`] : [];
  });
  return [{ words: `Supposed only, nothing of this is kept: ${check.words}`, lines }];
};
