/** An estimate as it stands: what each line comes to, what was said to it, what must be asked first. Pure. */
import type { Entry, EstimateEntry } from '../session/entry.ts';
import type { EstimateLine } from '../session/estimate.ts';
import type { CostedLine, Estimate, Shop } from './shapes.ts';

/** To the hundredth, half away from zero: what a till does. */
const cents = (amount: number): number => Math.round(amount * 100 + 1e-7) / 100;

/** `rate`: an hour, null where the shop has set none. Waiting is not charged. */
const costed = (line: EstimateLine, rate: number | null): Pick<CostedLine, 'labour' | 'material' | 'total'> => {
  const labour = line.hands === 0 ? 0 : rate === null ? null : cents((line.hands / 60) * rate);
  const material = line.parts.some((p) => p.price === undefined)
    ? null
    : cents(line.parts.reduce((sum, p) => sum + (p.price ?? 0), 0));
  return { labour, material, total: labour === null || material === null ? null : cents(labour + material) };
};

/** A word given on an earlier estimate holds for a line that has not changed since, at the same rate. */
const sameLine = (a: EstimateEntry, b: EstimateEntry, id: string): boolean => {
  const of = (e: EstimateEntry): string => JSON.stringify([e.lines.find((l) => l.id === id), e.rate, e.currency]);
  return of(a) === of(b);
};

const sum = (lines: readonly CostedLine[]): number | null =>
  lines.some((l) => l.total === null) ? null : cents(lines.reduce((s, l) => s + (l.total ?? 0), 0));

/** null: no estimate was written in this session. */
export const estimateOf = (entries: readonly Entry[]): Estimate | null => {
  const all = new Map(entries.flatMap((e) => (e.is === 'estimate' ? [[e.seq, e] as const] : [])));
  const newest = [...all.values()].at(-1);
  if (!newest) return null;
  const decided = entries.filter((e) => e.is === 'decided');
  const rate = newest.rate ?? null;
  const lines = newest.lines.map((line): CostedLine => {
    const word = decided.findLast((d) => {
      const on = all.get(d.about);
      return d.line === line.id && on !== undefined && sameLine(on, newest, line.id);
    });
    return {
      ...line,
      ...costed(line, rate),
      decided: word ? { yes: word.yes, name: word.name, words: word.words, at: word.kept } : null,
    };
  });
  const missing = [
    ...(rate === null && lines.some((l) => l.hands > 0) ? ["the shop's labour rate"] : []),
    ...lines.flatMap((l) => l.parts.filter((p) => p.price === undefined).map((p) => `price of ${p.name} (${l.words})`)),
  ];
  return {
    seq: newest.seq,
    at: newest.kept,
    by: newest.by,
    rate,
    currency: newest.currency ?? '',
    lines,
    approved: sum(lines.filter((l) => l.decided?.yes === true)),
    total: sum(lines),
    missing,
  };
};

/** The rate in force: the shop's own setting before the one on the coach sheet; null: ask. */
export const rateOf = (
  shop: Shop,
  sheet: { labour?: number | undefined; currency?: string | undefined } | undefined,
): { rate: number | null; currency: string; from: string } =>
  shop.labour !== undefined
    ? { rate: shop.labour, currency: shop.currency ?? sheet?.currency ?? '', from: "the shop's settings" }
    : sheet?.labour !== undefined
      ? { rate: sheet.labour, currency: sheet.currency ?? shop.currency ?? '', from: 'the coach sheet' }
      : { rate: null, currency: shop.currency ?? sheet?.currency ?? '', from: '' };
