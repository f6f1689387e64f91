/** Numbers as shop notes write them: 95, 13-1/4, l2-1/8, ½, 9:05, "ninety five", "thirteen and a quarter". */
import type { Token } from './scan.ts';
import { articleUnits, clockLeads, fractionWords, homophones, numberWords, spokenUnits } from './words/units.ts';

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
  /** Said figure by figure: "nine oh five", which may be a time. */
  run?: boolean;
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
  // 12,4 and 13,25: a comma between figures that nothing else explains
  const small = tokens[i + 2];
  if (
    mark(tokens[i + 1], ',') &&
    digits(small) &&
    small.low.length <= 2 &&
    !(mark(tokens[i + 3], ',') && digits(tokens[i + 4])) &&
    !(mark(tokens[i - 1], ',') && digits(tokens[i - 2])) &&
    !mark(tokens[i + 3], '/') &&
    (small.low.length === 1 || Number(t.low) < 30)
  )
    return {
      value: Number(`${t.low}.${small.low}`),
      step: 10 ** -small.low.length,
      next: i + 3,
      kind: 'decimal',
      signed: false,
    };
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

const isTeen = (n: number): boolean => n >= 10 && n < 20;
const isTens = (n: number): boolean => n >= 20 && n < 100 && n % 10 === 0;
const unitNext = (tokens: readonly Token[], i: number): boolean => {
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
const belowHundred = (tokens: readonly Token[], i: number): { value: number; next: number } | null => {
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
const spokenWhole = (tokens: readonly Token[], i: number): { value: number; next: number; run?: boolean } | null => {
  const article = tokens[i]?.low === 'a' && wordValue(tokens[skip(tokens, i + 1)]) === 100;
  const first = article ? { value: 1, next: i + 1 } : belowHundred(tokens, i);
  if (!first) {
    const w = wordValue(tokens[i]);
    return w === 100 || w === 1000 ? { value: w, next: i + 1 } : null;
  }
  let { value, next } = first;
  let at = skip(tokens, next);
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

/** "half past nine", "quarter to ten", "half seven", "ten past nine", "nine o'clock": minutes since midnight. */
const spokenClock = (tokens: readonly Token[], start: number): Num | null => {
  const t = tokens[start];
  if (!t || (t.kind !== 'word' && t.kind !== 'digits')) return null;
  const hourAt = (i: number): { value: number; next: number } | null => {
    const d = tokens[i];
    const value = digits(d) ? Number(d.low) : wordValue(d);
    if (value === undefined || value < 1 || value > 12) return null;
    const after = tokens[i + 1];
    return mark(after, '.') || mark(after, '/') || mark(after, ':') || unitNext(tokens, i + 1)
      ? null
      : { value, next: i + 1 };
  };
  const clock = (minutes: number, next: number): Num => ({
    value: (minutes + 720 * 2) % 720,
    step: 1,
    next,
    kind: 'clock',
    signed: false,
  });
  const lead =
    t.low === 'half'
      ? 30
      : t.low === 'quarter'
        ? 15
        : t.kind === 'digits'
          ? Number(t.low)
          : belowHundred(tokens, start)?.value;
  if (lead === undefined || lead > 59) return null;
  const after = skip(
    tokens,
    t.kind === 'digits' || t.low === 'half' || t.low === 'quarter'
      ? start + 1
      : (belowHundred(tokens, start)?.next ?? start + 1),
  );
  const low = tokens[after]?.low;
  if (low === 'oclock' && lead >= 1 && lead <= 12) return clock(lead * 60, after + 1);
  if (
    low === 'past' ||
    (low === 'to' &&
      (t.low === 'quarter' ||
        (lead % 5 === 0 && t.kind === 'word' && lead < 30 && (leads(tokens, start) || startsNote(tokens, start)))))
  ) {
    const hour = hourAt(skip(tokens, after + 1));
    if (hour) return clock(hour.value * 60 + (low === 'past' ? lead : -lead), hour.next);
  }
  if (t.low === 'half' && after === start + 2) {
    const hour = hourAt(after);
    if (hour && (leads(tokens, start) || (startsNote(tokens, start) && tokens[hour.next]?.kind === 'space')))
      return clock(hour.value * 60 + 30, hour.next);
  }
  return null;
};

/** At the head of a note or after a comma: "half 7 tank 8.1", ", ten to 8 7.6 bar". */
const startsNote = (tokens: readonly Token[], i: number): boolean => {
  const before = tokens[i - 1]?.kind === 'space' ? tokens[i - 2] : tokens[i - 1];
  return (
    before === undefined || before.kind === 'line' || before.low === ',' || before.low === ';' || before.low === '.'
  );
};

const leads = (tokens: readonly Token[], i: number): boolean => {
  const before = tokens[i - 2];
  return before?.kind === 'word' && clockLeads.has(before.low);
};

const spoken = (tokens: readonly Token[], start: number): Num | null => {
  const clock = spokenClock(tokens, start);
  if (clock) return clock;
  const alone = spokenFraction(tokens, start);
  if (alone) return { ...alone, kind: 'fraction', signed: false };
  if (tokens[start]!.low === 'oh' || tokens[start]!.low === 'o') return null;
  // "an hour", "a cup"
  const one = tokens[start]!.low === 'a' || tokens[start]!.low === 'an';
  if (one && space(tokens[start + 1]) && articleUnits.has(tokens[start + 2]?.low ?? ''))
    return { value: 1, step: 1, next: start + 1, kind: 'words', signed: false };
  const whole = spokenWhole(tokens, start);
  if (!whole || whole.value > 99_999_999) return null;
  const total = whole.value;
  let next = whole.next;
  const i = skip(tokens, next);
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
  if (part && part.value < 1)
    return { value: total + part.value, step: part.step, next: part.next, kind: 'fraction', signed: false };
  // "one of the valves", "a bigger one", "the last two": a count of things, no amount
  const low = tokens[start]!.low;
  if (next === start + 1 && (low === 'one' || counted(tokens, start)) && !unitNext(tokens, next)) return null;
  return { value: total, step: 1, next, kind: 'words', signed: false, ...(whole.run ? { run: true } : {}) };
};
const counted = (tokens: readonly Token[], i: number): boolean => {
  const before = tokens[i - 2];
  return (
    before?.kind === 'word' &&
    ['the', 'these', 'those', 'last', 'other', 'all'].includes(before.low) &&
    (wordValue(tokens[i]) ?? 9) < 5
  );
};

const slip = (tokens: readonly Token[], i: number): Num | null => {
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
    if (whole?.kind === 'whole' && tokens[skip(tokens, whole.next)]?.low === 'and') {
      const part = spokenFraction(tokens, skip(tokens, skip(tokens, whole.next) + 1));
      if (part && part.value < 1)
        return { ...whole, value: whole.value + part.value, step: part.step, next: part.next, kind: 'fraction' };
    }
    return whole;
  }
  return spoken(tokens, i);
};
