/** What findings of wheels, tyres and wires say to the diagnosis: they carry verdicts, not outcomes of checks. Data and one look-up. */
import type { Finding } from '../findings/finding.ts';
import { farLow, nightTakes } from '../twin/observables.ts';

type Row = {
  readonly key: RegExp;
  /** `S` is the side in the key. */
  readonly see: string;
  readonly says: Partial<Record<Finding['verdict'], string>>;
  /** The outcome where the number is far beyond its limit. */
  readonly far?: (f: Finding) => string | null;
};

/** A tyre run a fifth under its pressure counts as flat: common practice, no source. */
const flat = 0.8;
const flatTyre = ({ amount, limit }: Finding): string | null =>
  amount && limit?.low && amount.si < flat * limit.low.si ? 'far low' : null;

const out = { low: 'out', high: 'out', within: 'within' } as const;
const rows: readonly Row[] = [
  { key: /^(?:toe|camber)@(left|right) rear/, see: 'S toe camber', says: out },
  { key: /^thrust@/, see: 'string check', says: { low: 'not parallel', high: 'not parallel', within: 'square' } },
  {
    key: /^pressure@(left|right)(?: rear)?(?: forward| aft)? tyre$/,
    see: 'S tyre pressure',
    says: { low: 'low', within: 'within' },
    far: flatTyre,
  },
];

/**
 * A rear height that is low, by its number: the finding's amount is how far it is off, where the sheet has the height. Out
 * of tolerance by no more than a night takes is no sign of a fault.
 */
export const furtherLow = ({ amount }: Finding, see: string, outcome: string): string => {
  if (outcome !== 'low' || !amount || !/^(?:left|right) (?:rear height|as found)$/.test(see)) return outcome;
  if (amount.si < -farLow) return 'far low';
  return see.endsWith('as found') && amount.si > -nightTakes ? 'level' : outcome;
};

const legs: readonly (readonly [RegExp, string])[] = [
  [/ground/, 'ground'],
  [/relay/, 'relay'],
  [/pressure switch|switch (?:in|out)put/, 'switch'],
  [/feed|fuse|breaker|battery to|cable/, 'feed'],
  [/motor/, 'motor'],
];

/** Outcomes that a finding gives besides those it carries itself. */
export const verdictEvidence = (f: Finding): { see: string; outcome: string }[] => {
  if (f.key === 'legs@circuit' && (f.evidence ?? []).every((e) => e.see !== 'motor legs')) {
    const leg = /^(.*?) loses /.exec(f.words)?.[1];
    const hit = leg === undefined ? undefined : legs.find(([words]) => words.test(leg));
    return f.verdict === 'high' && hit ? [{ see: 'motor legs', outcome: hit[1] }] : [];
  }
  for (const row of rows) {
    const m = row.key.exec(f.key);
    const outcome = row.says[f.verdict];
    if (m && outcome) return [{ see: row.see.replace(/^S /, `${m[1] ?? ''} `), outcome: row.far?.(f) ?? outcome }];
  }
  return [];
};

/**
 * The tank was watched and nobody said where the panel stood: most likely where it belongs for the road. The finding asks;
 * until it is answered the fall counts as one in automatic, and less than one that was said to be.
 */
export const assumedAuto = (f: Finding): { see: string; outcome: string }[] => {
  if (f.key !== 'tank fall@tank' || f.wants?.field !== 'panel position') return [];
  const outcome = f.verdict === 'within' ? 'none' : f.verdict === 'high' ? 'slow|fast' : null;
  return outcome ? [{ see: 'tank fall auto', outcome }] : [];
};
