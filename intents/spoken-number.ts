/** Numbers in words. */
import { digits, wordValue, skip } from './number-tokens.ts';
import type { Token } from './scan.ts';
import { fractionWords, homophones, spokenUnits } from './words/units.ts';

/** "half", "a quarter", "three eighths" at `i`. */
export const spokenFraction = (
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
  const bare =
    /^(?:eighth|sixteenth)$/.test(low) &&
    /^(?:in|out|low|high|inch|off|shim)$/.test(tokens[skip(tokens, i + 1)]?.low ?? '');
  if (i === start && low !== 'half' && low !== 'quarter' && !bare) return null;
  if (count * unit >= 1) return null;
  return { value: count * unit, step: unit, next: i + 1 };
};

const isTeen = (n: number): boolean => n >= 10 && n < 20;

const isTens = (n: number): boolean => n >= 20 && n < 100 && n % 10 === 0;

export const unitNext = (tokens: readonly Token[], i: number): boolean => {
  const t = tokens[skip(tokens, i)];
  return t?.kind === 'word' && spokenUnits.has(t.low);
};

/** What a digit word may be heard as: "ninety ate", "twenty to amps", "dropped for psi". */
const homophone = (tokens: readonly Token[], i: number, afterTens: boolean): number | undefined => {
  const t = tokens[i];
  if (t?.kind !== 'word' || !Object.hasOwn(homophones, t.low)) return undefined;
  const sure = t.low === 'ate' && afterTens;
  if (!sure && !unitNext(tokens, i + 1)) return undefined;
  // "to turn it over", "for hours": only a plain plural makes a number of them
  const unit = tokens[skip(tokens, i + 1)]?.low ?? '';
  if (
    !sure &&
    (/^turns?$/.test(unit) ||
      !(unit.endsWith('s') || /^(?:psi|bar|kpa|mm|min|percent)$/.test(unit)) ||
      (t.low === 'for' && /^(?:hours|days|weeks|months|years|hrs)$/.test(unit)))
  )
    return undefined;
  if (!afterTens && (t.low === 'to' || t.low === 'for') && isNumberWord(tokens[i - 2])) return undefined;
  return homophones[t.low];
};

const isNumberWord = (t: Token | undefined): boolean => digits(t) || wordValue(t) !== undefined;

/** "ninety", "ninety five", "twelve", "seven" at `i`. */
export const belowHundred = (tokens: readonly Token[], i: number): { value: number; next: number } | null => {
  const first = wordValue(tokens[i]);
  if (first === undefined) {
    const heard = homophone(tokens, i, false);
    return heard === undefined ? null : { value: heard, next: i + 1 };
  }
  if (first >= 100) return null;
  if (isTens(first)) {
    const at = skip(tokens, i + 1);
    const unit = wordValue(tokens[at]);
    const after = wordValue(tokens[skip(tokens, at + 1)]);
    if (unit !== undefined && unit > 0 && unit < 10 && after !== 100 && spokenFraction(tokens, at) === null)
      return { value: first + unit, next: at + 1 };
    const heard = homophone(tokens, at, true);
    if (heard !== undefined) return { value: first + heard, next: at + 1 };
  }
  return { value: first, next: i + 1 };
};

/** A whole number in words: "one hundred and ten", "one oh four", "one twelve", "nine thirty five", "one one eight". */
export const spokenWhole = (
  tokens: readonly Token[],
  i: number,
): { value: number; next: number; run?: boolean } | null => {
  const article = tokens[i]?.low === 'a' && wordValue(tokens[skip(tokens, i + 1)]) === 100;
  const first = article ? { value: 1, next: i + 1 } : belowHundred(tokens, i);
  if (!first) {
    const w = wordValue(tokens[i]);
    return w === 100 || w === 1000 ? { value: w, next: i + 1 } : null;
  }
  let { value, next } = first;
  let at = skip(tokens, next);
  // "seventy two hundred"
  const units = wordValue(tokens[at]);
  const hundred = skip(tokens, at + 1);
  if (isTens(value) && units !== undefined && units > 0 && units < 10 && wordValue(tokens[hundred]) === 100)
    return { value: (value + units) * 100, next: hundred + 1 };
  if (wordValue(tokens[at]) === 100) {
    value *= 100;
    next = at + 1;
    at = skip(tokens, next);
    const and = tokens[at]?.low === 'and' ? skip(tokens, at + 1) : at;
    const rest = spokenFraction(tokens, and) ? null : belowHundred(tokens, and);
    if (rest && wordValue(tokens[skip(tokens, rest.next)]) !== 100 && tokens[and]?.kind === 'word') {
      value += rest.value;
      next = rest.next;
    }
  } else if (value >= 1 && value <= 12 && first.next === i + 1 && !article) {
    const low = tokens[at]?.low;
    const second = wordValue(tokens[at]);
    const third = wordValue(tokens[skip(tokens, at + 1)]);
    if ((low === 'oh' || low === 'o' || low === 'zero') && third !== undefined && third > 0 && third < 10)
      return { value: value * 100 + third, next: skip(tokens, at + 1) + 1, run: true };
    if (second !== undefined && (isTeen(second) || isTens(second)) && third !== 100) {
      const rest = spokenFraction(tokens, at) ? null : belowHundred(tokens, at);
      if (rest) return { value: value * 100 + rest.value, next: rest.next, run: true };
    }
    if (value < 10 && second !== undefined && second < 10 && third !== 100 && !spokenFraction(tokens, at)) {
      let text = String(value);
      let j = at;
      for (let w = second as number | undefined; w !== undefined && w < 10; w = wordValue(tokens[j])) {
        if (spokenFraction(tokens, j)) break;
        text += String(w);
        next = j + 1;
        j = skip(tokens, next);
      }
      return { value: Number(text.slice(0, 8)), next, run: true };
    }
  }
  at = skip(tokens, next);
  if (wordValue(tokens[at]) === 1000) {
    value *= 1000;
    next = at + 1;
    const rest = spokenWhole(tokens, skip(tokens, next));
    if (rest && rest.value < 1000 && !rest.run) {
      value += rest.value;
      next = rest.next;
    }
  }
  return { value, next };
};

export const counted = (tokens: readonly Token[], i: number): boolean => {
  const before = tokens[i - 2];
  return (
    before?.kind === 'word' &&
    ['the', 'these', 'those', 'last', 'other', 'all'].includes(before.low) &&
    (wordValue(tokens[i]) ?? 9) < 5
  );
};
