/** Numbers as shop notes write them: 95, 13-1/4, l2-1/8, ½, 9:05, "ninety five", "thirteen and a quarter". */
import { type Num, digits, skip } from './number-tokens.ts';
import type { Token } from './scan.ts';
import { spokenClock } from './spoken-clock.ts';
import { spokenFraction } from './spoken-number.ts';
import { spoken } from './spoken.ts';
import { written } from './written-number.ts';

export const slip = (tokens: readonly Token[], i: number): Num | null => {
  const t = tokens[i]!;
  if (t.kind !== 'word' || (t.low !== 'l' && t.low !== 'i') || !digits(tokens[i + 1])) return null;
  // what a number can hold, so that a row of such letters costs no more than its length
  const patched = tokens.slice(i, i + 12);
  const joined = tokens[i + 1]!;
  patched[1] = { ...joined, low: `1${joined.low}` };
  const rest = written(patched, 1);
  return rest && rest.kind !== 'clock' ? { ...rest, next: rest.next + i, slip: true } : null;
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
    const clock = t.kind === 'digits' ? spokenClock(tokens, i) : null;
    if (clock) return clock;
    const whole = written(tokens, i);
    // "12 point 2"
    const point = whole ? skip(tokens, whole.next) : i;
    const below = tokens[skip(tokens, point + 1)];
    if (whole?.kind === 'whole' && tokens[point]?.low === 'point' && point > whole.next && digits(below))
      return {
        ...whole,
        value: Number(`${whole.value}.${below.low}`),
        step: 10 ** -below.low.length,
        next: skip(tokens, point + 1) + 1,
        kind: 'decimal',
      };
    // "10 and a half", "13 and a quarter": digits with a spoken fraction
    if (whole?.kind === 'whole' && /^(?:and|an|&)$/.test(tokens[skip(tokens, whole.next)]?.low ?? '')) {
      const at = skip(tokens, skip(tokens, whole.next) + 1);
      const part =
        spokenFraction(tokens, at) ?? (tokens[at]?.kind === 'digits' && whole.value <= 60 ? written(tokens, at) : null);
      if (part && part.value < 1)
        return { ...whole, value: whole.value + part.value, step: part.step, next: part.next, kind: 'fraction' };
    }
    return whole;
  }
  return spoken(tokens, i);
};
