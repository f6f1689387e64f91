/** The longest phrase of the word tables that begins at a token. */
import { lexicon, longestFrom, longestPhrase, type Sense } from './lexicon.ts';
import type { Token } from './scan.ts';
import { inflected, nearest } from './spell.ts';

export const wordsFrom = (tokens: readonly Token[], i: number, most: number): { low: string; end: number }[] => {
  const out: { low: string; end: number }[] = [];
  for (let j = i; j < tokens.length && out.length < most; j += 1) {
    const t = tokens[j]!;
    if (t.kind === 'word') out.push({ low: t.low, end: j + 1 });
    else if (t.kind === 'digits' && out.length > 0) out.push({ low: t.low, end: j + 1 });
    else if (t.kind === 'space' || (t.kind === 'mark' && (t.low === '-' || t.low === '/') && out.length > 0)) continue;
    else break;
  }
  return out;
};

export type Phrase = { senses: readonly Sense[]; phrase: string; next: number; near?: boolean; not?: number };

/** Words that may stand inside a phrase without changing it: "pump is still running", "floor not level". */
export const inner = new Set(
  'is are was were be been being still the now just its it a has have had back also really must already right straight all completely totally fully pretty quite too very'.split(
    ' ',
  ),
);

export const denials = new Set(['not', 'isnt', 'wasnt', 'arent', 'werent']);

export const states = (senses: readonly Sense[]): readonly Sense[] =>
  senses.filter((s) => s.k === 'cond' || s.k === 'sign');

/** A longer thing that begins with the last word of a state ("pump | runs all the time") takes that word. */
export const overtaken = (words: readonly { low: string; end: number }[], n: number): boolean => {
  for (let m = words.length - n + 1; m > 1; m -= 1) {
    const phrase = words
      .slice(n - 1, n - 1 + m)
      .map((w) => w.low)
      .join(' ');
    const senses = lexicon.get(phrase);
    if (senses?.some((s) => s.k === 'sign' || s.k === 'measure')) return true;
  }
  return false;
};

export const stateFollows = (words: readonly { low: string }[], n: number): boolean => {
  const next = words[n];
  // "drop link on the n/s snapped": where it is
  const where = words[n + 1]?.low === 'the' ? words[n + 2] : words[n + 1];
  if (next?.low === 'on' && lexicon.get(where?.low ?? '')?.some((s) => s.k === 'place' && s.p.part === undefined))
    return false;
  return next !== undefined && (lexicon.get(`${words[n - 1]!.low} ${next.low}`)?.some((s) => s.k === 'cond') ?? false);
};

const sided = /^(?:right|left)$/;

/** "0.4", "0,4", "0-20", "zero point four": what stands before token `at` is the begin of a longer figure. */
const figureGoesOn = (tokens: readonly Token[], at: number): boolean => {
  const [next, after] = tokens.slice(at, at + 2);
  if (next?.kind === 'mark' && /^[.,/-]$/.test(next.low)) return after?.kind === 'digits';
  return next?.kind === 'space' && after?.kind === 'word' && after.low === 'point';
};

/** Longest phrase of the tables at `i`. */
export const phraseAt = (tokens: readonly Token[], i: number): Phrase | null => {
  if (tokens[i]!.kind !== 'word') return null;
  const reach = longestFrom(tokens[i]!.low);
  // words that change nothing may stand inside: "pump is still running"
  const words = wordsFrom(tokens, i, Math.max(5, Math.min(longestPhrase, reach + 3)));
  const before = tokens[i - 1]?.kind === 'space' ? (tokens[i - 2]?.low ?? '') : '';
  for (let n = reach === 0 ? 0 : Math.min(words.length, reach + 3); n > 0; n -= 1) {
    const part = words.slice(0, n).map((w) => w.low);
    // "tank at 0.4 bar": it is not at nothing
    if (/^(?:0|zero)$/.test(part[n - 1]!) && figureGoesOn(tokens, words[n - 1]!.end)) continue;
    const phrase = part.join(' ');
    const senses = n > reach ? undefined : lexicon.get(phrase);
    if (senses) {
      if (
        n > 1 &&
        (part[0] === 'no' ||
          (senses.every((s) => s.k === 'cond') &&
            (lexicon.has(part.slice(0, -1).join(' ')) || lexicon.has(part[0]!)))) &&
        overtaken(words, n)
      )
        continue;
      // "link on right side is broken": where it is, not that it is on
      if (
        n > 1 &&
        part[n - 1] === 'on' &&
        senses.every((s) => s.k === 'cond') &&
        lexicon
          .get(words[n]?.low === 'the' ? (words[n + 1]?.low ?? '') : (words[n]?.low ?? ''))
          ?.some((s) => s.k === 'place' && s.p.part === undefined)
      )
        continue;
      // "sags on the left overnight": the side, not that it was left
      if (
        n > 1 &&
        part[0] === 'left' &&
        /^(?:the|on the|leans?|leaning|lists?|sags?|low)$/.test(before) &&
        senses.every((s) => s.k === 'work')
      )
        continue;
      // "is right rear": a side and its end, not that it is right
      if (
        n > 1 &&
        sided.test(part[n - 1]!) &&
        lexicon.get(`${part[n - 1]!} ${words[n]?.low ?? ''}`)?.some((s) => s.k === 'place')
      )
        continue;
      // "height valve arm up": the arm belongs to what is said of it
      if (
        n > 1 &&
        senses.every((s) => s.k === 'place') &&
        stateFollows(words, n) &&
        lexicon.has(part.slice(0, -1).join(' '))
      )
        continue;
      return { senses, phrase, next: words[n - 1]!.end };
    }
    if (n < 3) continue;
    const kept = part.filter((w, k) => k === 0 || k === n - 1 || !(inner.has(w) || denials.has(w)));
    if (kept.length === n) continue;
    const loose = states(lexicon.get(kept.join(' ')) ?? []);
    if (loose.length === 0 || (loose.every((s) => s.k === 'cond') && overtaken(words, n))) continue;
    const not = part.findIndex((w, k) => k > 0 && k < n - 1 && denials.has(w));
    return {
      senses: loose,
      phrase: kept.join(' '),
      next: words[n - 1]!.end,
      ...(not > 0 ? { not: words[not]!.end - 1 } : {}),
    };
  }
  const first = words[0]!;
  const form = inflected(first.low);
  if (form) return { senses: lexicon.get(form)!, phrase: form, next: first.end };
  let fixed = false;
  const mended = words.slice(0, 5).map((w) => {
    const better = nearest(w.low);
    if (better) fixed = true;
    return better ?? w.low;
  });
  if (!fixed) return null;
  for (let n = mended.length; n > 0; n -= 1) {
    const phrase = mended.slice(0, n).join(' ');
    const senses = lexicon.get(phrase);
    const touched = mended.slice(0, n).some((w, k) => w !== words[k]!.low);
    if (
      senses &&
      senses.every((s) => s.k === 'cond') &&
      overtaken(
        mended.map((low, k) => ({ low, end: words[k]!.end })),
        n,
      )
    )
      continue;
    if (senses && touched) return { senses, phrase, next: words[n - 1]!.end, near: true };
  }
  return null;
};
