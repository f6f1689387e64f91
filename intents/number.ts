/** Numbers as shop notes write them: 95, 13-1/4, l2-1/8, ½, 9:05, "ninety five", "thirteen and a quarter". */
import type { Token } from './scan.ts';
import { fractionWords, numberWords } from './words/units.ts';

export type Num = {
  value: number;
  /** Resolution of the writing: 1 for 95, 0.1 for 12.1, 1/8 for 13 3/8. */
  step: number;
  /** Index of the first token after it. */
  next: number;
  kind: 'whole' | 'decimal' | 'fraction' | 'clock' | 'words';
  signed: boolean;
  /** A letter was taken for a digit. */
  slip?: boolean;
};

const glyphs: Readonly<Record<string, number>> = {
  '½': 0.5,
  '¼': 0.25,
  '¾': 0.75,
  '⅛': 0.125,
  '⅜': 0.375,
  '⅝': 0.625,
  '⅞': 0.875,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
};
const tapeBelow = new Set(['2', '3', '4', '8', '16', '32', '64']);

const digits = (t: Token | undefined): t is Token => t?.kind === 'digits' && t.low.length <= 7;
const mark = (t: Token | undefined, low: string): boolean => t?.kind === 'mark' && t.low === low;
const space = (t: Token | undefined): boolean => t?.kind === 'space';

/** "3/8" at `i`; null when it is not a fraction of a tape. */
const fraction = (tokens: readonly Token[], i: number): { value: number; step: number; next: number } | null => {
  const top = tokens[i];
  const slash = tokens[i + 1];
  const below = tokens[i + 2];
  if (!digits(top) || !digits(below) || !(mark(slash, '/') || mark(slash, '⁄'))) return null;
  if (!tapeBelow.has(below.low) || mark(tokens[i + 3], '/')) return null;
  const value = Number(top.low) / Number(below.low);
  return value < 1 || top.low.length === 1 ? { value, step: 1 / Number(below.low), next: i + 3 } : null;
};

const glyph = (t: Token | undefined): number | undefined => (t?.kind === 'mark' ? glyphs[t.low] : undefined);

const written = (tokens: readonly Token[], i: number): Num | null => {
  const t = tokens[i]!;
  const alone = glyph(t);
  if (alone !== undefined) return { value: alone, step: 1 / 8, next: i + 1, kind: 'fraction', signed: false };
  if (mark(t, '.') && digits(tokens[i + 1]) && !digits(tokens[i - 1])) {
    const low = tokens[i + 1]!.low;
    return { value: Number(`.${low}`), step: 10 ** -low.length, next: i + 2, kind: 'decimal', signed: false };
  }
  if (!digits(t)) return null;
  const bare = fraction(tokens, i);
  if (bare) return { ...bare, kind: 'fraction', signed: false };
  // whole and fraction: "13 1/4", "13-1/4", "13 - 1/4", "13 and 1/4", "13½", "13 ½"
  for (const gap of [1, 2, 3] as const) {
    const between = tokens.slice(i + 1, i + 1 + gap);
    const joins =
      gap === 1
        ? space(between[0]) || mark(between[0], '-') || mark(between[0], '.')
        : gap === 3 &&
          space(between[0]) &&
          (mark(between[1], '-') || between[1]?.low === 'and' || between[1]?.low === '&') &&
          space(between[2]);
    const part = joins ? fraction(tokens, i + 1 + gap) : null;
    if (part && part.value < 1)
      return { value: Number(t.low) + part.value, step: part.step, next: part.next, kind: 'fraction', signed: false };
  }
  const after =
    glyph(tokens[i + 1]) !== undefined
      ? i + 1
      : space(tokens[i + 1]) && glyph(tokens[i + 2]) !== undefined
        ? i + 2
        : -1;
  if (after >= 0)
    return {
      value: Number(t.low) + glyph(tokens[after])!,
      step: 1 / 8,
      next: after + 1,
      kind: 'fraction',
      signed: false,
    };
  // clock: 9:05
  if (
    mark(tokens[i + 1], ':') &&
    digits(tokens[i + 2]) &&
    tokens[i + 2]!.low.length === 2 &&
    Number(t.low) < 24 &&
    Number(tokens[i + 2]!.low) < 60 &&
    t.low.length <= 2
  )
    return {
      value: Number(t.low) * 60 + Number(tokens[i + 2]!.low),
      step: 1,
      next: i + 3,
      kind: 'clock',
      signed: false,
    };
  // decimal: 12.1, and 1,200
  if (mark(tokens[i + 1], '.') && digits(tokens[i + 2]) && !(mark(tokens[i + 3], '.') && digits(tokens[i + 4]))) {
    const low = tokens[i + 2]!.low;
    return { value: Number(`${t.low}.${low}`), step: 10 ** -low.length, next: i + 3, kind: 'decimal', signed: false };
  }
  if (t.low.length <= 3 && mark(tokens[i + 1], ',') && digits(tokens[i + 2]) && tokens[i + 2]!.low.length === 3)
    return { value: Number(t.low + tokens[i + 2]!.low), step: 1, next: i + 3, kind: 'whole', signed: false };
  return { value: Number(t.low), step: 1, next: i + 1, kind: 'whole', signed: false };
};

const wordValue = (t: Token | undefined): number | undefined =>
  t?.kind === 'word' && Object.hasOwn(numberWords, t.low) ? numberWords[t.low] : undefined;
const skip = (tokens: readonly Token[], i: number): number =>
  space(tokens[i]) || (mark(tokens[i], '-') && tokens[i + 1]?.kind === 'word') ? i + 1 : i;

/** "half", "a quarter", "three eighths" at `i`. */
const spokenFraction = (
  tokens: readonly Token[],
  start: number,
): { value: number; step: number; next: number } | null => {
  let i = start;
  let count = 1;
  const first = tokens[i];
  if (first?.low === 'a' || first?.low === 'an' || first?.low === 'one') i = skip(tokens, i + 1);
  else {
    const n = wordValue(first);
    if (n !== undefined && n >= 1 && n <= 63) {
      count = n;
      i = skip(tokens, i + 1);
    } else if (digits(first) && Number(first.low) < 64) {
      count = Number(first.low);
      i = skip(tokens, i + 1);
    }
  }
  const two = tokens[i]?.kind === 'word' ? `${tokens[i]!.low} ${tokens[skip(tokens, i + 1)]?.low ?? ''}` : '';
  if (Object.hasOwn(fractionWords, two) && (count > 1 || i > start))
    return { value: count * fractionWords[two]!, step: fractionWords[two]!, next: skip(tokens, i + 1) + 1 };
  const low = tokens[i]?.low ?? '';
  if (tokens[i]?.kind !== 'word' || !Object.hasOwn(fractionWords, low)) return null;
  const unit = fractionWords[low]!;
  // "second" and "third" are ordinals when nothing counts them
  if (i === start && low !== 'half' && low !== 'quarter') return null;
  if (count * unit >= 1) return null;
  return { value: count * unit, step: unit, next: i + 1 };
};

const spoken = (tokens: readonly Token[], start: number): Num | null => {
  const alone = spokenFraction(tokens, start);
  if (alone) return { ...alone, kind: 'fraction', signed: false };
  if (wordValue(tokens[start]) === undefined || tokens[start]!.low === 'oh') return null;
  let total = 0;
  let group: number | null = null;
  let i = start;
  let next = start;
  const run: number[] = [];
  for (let w = wordValue(tokens[i]); w !== undefined; w = wordValue(tokens[i])) {
    run.push(w);
    next = i + 1;
    i = skip(tokens, i + 1);
    if (tokens[i]?.low === 'and' && run.at(-1)! >= 100 && wordValue(tokens[skip(tokens, i + 1)]) !== undefined)
      i = skip(tokens, i + 1);
  }
  // "one oh four", "one twelve", "nine thirty": digits and tens said in a row
  if (!run.some((n) => n >= 100)) {
    const text = run.reduce((acc, n, k) => {
      const before = run[k - 1];
      if (k > 0 && before !== undefined && before >= 20 && before % 10 === 0 && n > 0 && n < 10)
        return acc.slice(0, -1) + String(n);
      return acc + String(n);
    }, '');
    total = Number(text);
  } else {
    for (const n of run) {
      if (n === 100) group = (group ?? 1) * 100;
      else if (n === 1000) {
        total += (group ?? 1) * 1000;
        group = null;
      } else group = group !== null && group >= 100 ? group + n : (group ?? 0) + n;
    }
    total += group ?? 0;
  }
  if (!Number.isFinite(total) || total > 99_999_999) return null;
  if (tokens[i]?.low === 'point' && wordValue(tokens[skip(tokens, i + 1)]) !== undefined) {
    let decimals = '';
    let j = skip(tokens, i + 1);
    for (let w = wordValue(tokens[j]); w !== undefined && w < 100; w = wordValue(tokens[j])) {
      decimals += String(w);
      next = j + 1;
      j = skip(tokens, j + 1);
    }
    return {
      value: Number(`${total}.${decimals}`),
      step: 10 ** -decimals.length,
      next,
      kind: 'decimal',
      signed: false,
    };
  }
  const and = tokens[i]?.low === 'and' ? skip(tokens, i + 1) : i;
  const part = spokenFraction(tokens, and);
  if (part && part.value < 1 && (and !== i || run.length > 0))
    return { value: total + part.value, step: part.step, next: part.next, kind: 'fraction', signed: false };
  return { value: total, step: 1, next, kind: 'words', signed: false };
};

const slip = (tokens: readonly Token[], i: number): Num | null => {
  const t = tokens[i]!;
  if (t.kind !== 'word' || (t.low !== 'l' && t.low !== 'i') || !digits(tokens[i + 1])) return null;
  const patched = [...tokens];
  const joined = tokens[i + 1]!;
  patched[i + 1] = { ...joined, low: `1${joined.low}` };
  const rest = written(patched, i + 1);
  return rest && rest.kind !== 'clock' ? { ...rest, slip: true } : null;
};

/** The number that begins at token `i`, sign included; null when none does. */
export const numberAt = (tokens: readonly Token[], i: number): Num | null => {
  const t = tokens[i];
  if (!t) return null;
  if ((t.low === '-' || t.low === '+' || t.low === '−') && t.kind === 'mark' && !digits(tokens[i - 1])) {
    const rest = written(tokens, i + 1 < tokens.length ? i + 1 : i);
    if (rest && rest.next > i + 1 && rest.kind !== 'clock')
      return { ...rest, value: t.low === '+' ? rest.value : -rest.value, signed: true };
    return null;
  }
  if (t.kind === 'word' && (t.low === 'minus' || t.low === 'plus')) {
    const at = skip(tokens, i + 1);
    const rest = tokens[at] ? (written(tokens, at) ?? spoken(tokens, at)) : null;
    if (rest) return { ...rest, value: t.low === 'minus' ? -rest.value : rest.value, signed: true };
    return null;
  }
  if (t.kind === 'word' && (t.low === 'l' || t.low === 'i')) return slip(tokens, i);
  if (t.kind === 'mark' || t.kind === 'digits') {
    const whole = written(tokens, i);
    // "10 and a half", "13 and a quarter": digits with a spoken fraction
    if (whole?.kind === 'whole' && tokens[skip(tokens, whole.next)]?.low === 'and') {
      const part = spokenFraction(tokens, skip(tokens, skip(tokens, whole.next) + 1));
      if (part && part.value < 1)
        return { ...whole, value: whole.value + part.value, step: part.step, next: part.next, kind: 'fraction' };
    }
    return whole;
  }
  return t.kind === 'word' ? spoken(tokens, i) : null;
};
