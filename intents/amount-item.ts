/** A number with its unit, tolerance, range or time of day, from the tokens at one place. */
import { dimensionOf, type Dimension, type Unit } from '../server/core/units.ts';
import { numberAt } from './number.ts';
import { wordsFrom } from './phrase.ts';
import type { Token } from './scan.ts';
import type { Span } from './shapes.ts';
import { gluedOnly, looseAfterNumber, numberWords, unitWords } from './words/units.ts';

export type Loose = 'about' | 'just under' | 'just over' | 'at least' | 'at most';

export type Amounting = {
  k: 'num';
  value: number;
  step: number;
  whole: boolean;
  unit: Unit | null;
  /** Upper end of a range, in the same unit. */
  to?: number;
  /** Plus or minus, in the same unit. */
  tol?: number;
  about?: Loose;
  signed: boolean;
  clock?: number;
  /** Seconds since the row before, in a pasted column. */
  elapsed?: number;
  slip?: boolean;
  /** Said figure by figure: may be a time of day. */
  run?: boolean;
  span: Span;
  text: string;
};

export const unitTable = new Map<string, Unit>(
  unitWords.flatMap(([phrases, unit]) => phrases.split('|').map((p) => [p, unit] as const)),
);

export const unitAt = (tokens: readonly Token[], i: number, glued: boolean): { unit: Unit; next: number } | null => {
  for (let n = 6; n > 0; n -= 1) {
    const slice = tokens.slice(i, i + n);
    if (slice.length < n || slice.at(-1)!.kind === 'space' || slice[0]!.kind === 'digits') continue;
    const text = slice.map((t) => (t.kind === 'space' ? ' ' : t.low.toLowerCase())).join('');
    const unit = unitTable.get(text);
    if (!unit) continue;
    const after = tokens[i + n];
    if (slice.at(-1)!.kind === 'word' && after?.kind === 'word') continue;
    // "in 20 min. lr bag": the stop of a sentence, no short form's, unless the sentence goes on
    if (text.endsWith('.') && !goesOn.test(tokens[spaceAt(tokens, i + n)]?.low ?? '')) continue;
    if (!glued && gluedOnly.has(text)) {
      // "6 L of water": what is measured out follows; "6 l low" is of the left
      const litres = text === 'l' && wordsFrom(tokens, i + n, 1)[0]?.low === 'of';
      if (!litres && !looseAfterNumber.has(text)) continue;
      // "13 in the tank", "95 a bit low", "l", "m": the letter belongs to what follows
      // at the end of a line nothing follows: "13.75 in", and the next line begins with its time
      const ends = /\n/.test(after?.low ?? '');
      const follow = ends ? undefined : wordsFrom(tokens, i + n, 1)[0]?.low;
      if (
        (text === 'in' ||
          text === 'a' ||
          text === 's' ||
          text === 'f' ||
          text === 'c' ||
          text === 'm' ||
          text === 'pt') &&
        follow &&
        /^(?:the|a|an|tank|auto|shut|fill|hold|empty|my|bit|left|right|both|either|min|mins|minutes|\d+|it|lock|road|about|l|r|bags?|each|fuse|new|quarter|half|leak|little)$/.test(
          follow,
        )
      )
        continue;
      if (
        text === 'in' &&
        !ends &&
        (tokens[i + n + 1]?.kind === 'digits' ||
          (follow !== undefined && (Object.hasOwn(numberWords, follow) || /^(?:half|an)$/.test(follow))))
      )
        continue;
    }
    return { unit, next: i + n };
  }
  return null;
};

/** After the stop of a short form ("3/8 in. low"), what belongs to the amount before it. */
const goesOn =
  /^(?:[,;:]|low|lower|high|higher|off|out|of|over|at|and|from|to|in|on|per|after|with|down|up|long|wide|or|for|then|by|short|more|less|between)$/;

/** An amount that words say without a figure: "the hour", "a cupful", "from empty". */
export const wordAmount = (value: number, unit: Unit | null, span: Span, text: string): Amounting => ({
  k: 'num',
  value,
  step: 1,
  whole: true,
  unit,
  signed: false,
  span,
  text: text.slice(...span),
});

/** "every hour": one of it, its word being the figure. */
export const oneOfUnit = (unit: { v: Unit; phrase: string; span: Span }): Amounting => ({
  k: 'num',
  value: 1,
  step: 0,
  whole: true,
  signed: false,
  text: unit.phrase,
  span: unit.span,
  unit: unit.v,
});

export const spaceAt = (tokens: readonly Token[], i: number): number => (tokens[i]?.kind === 'space' ? i + 1 : i);

const clockAfter = (tokens: readonly Token[], i: number): { half: 'am' | 'pm'; next: number } | null => {
  const at = spaceAt(tokens, i);
  const low = tokens[at]?.low;
  if (low === 'am' || low === 'pm') return { half: low, next: at + 1 };
  if ((low === 'a' || low === 'p') && tokens[at + 1]?.kind === 'space' && tokens[at + 2]?.low === 'm')
    return { half: low === 'a' ? 'am' : 'pm', next: at + 3 };
  if ((low === 'a' || low === 'p') && tokens[at + 1]?.low === '.' && tokens[at + 2]?.low === 'm')
    return { half: low === 'a' ? 'am' : 'pm', next: at + (tokens[at + 3]?.low === '.' ? 4 : 3) };
  return null;
};

const tolAt = (tokens: readonly Token[], i: number): number | null => {
  const at = spaceAt(tokens, i);
  const t = tokens[at];
  if (t?.low === '±') return at + 1;
  if (t?.low === '+' && tokens[at + 1]?.low === '-') return at + 2;
  if (t?.low === '+' && tokens[at + 1]?.low === '/' && tokens[at + 2]?.low === '-') return at + 3;
  if (t?.low === '+' && tokens[spaceAt(tokens, at + 1)]?.low === '-') return spaceAt(tokens, at + 1) + 1;
  if (t?.low === 'plus' && tokens[at + 2]?.low === 'or' && tokens[at + 4]?.low === 'minus') return at + 5;
  if (t?.low === 'plus' && tokens[at + 2]?.low === 'minus') return at + 3;
  if (t?.low === 'give' && tokens[at + 2]?.low === 'or' && tokens[at + 4]?.low === 'take') return at + 5;
  return null;
};

const joinsRange = (t: Token | undefined): boolean =>
  t?.kind === 'mark' && (t.low === '-' || t.low === '–' || t.low === '—');

/** The index after the next word that is one of `words`. */
const past = (tokens: readonly Token[], from: number, words: RegExp): number => {
  let at = from;
  while (tokens[at] && !words.test(tokens[at]!.low)) at += 1;
  return at + 1;
};

/** "8.15am": hours and minutes with a stop between. */
const dotted = (n: { kind: string; value: number; step: number }): boolean =>
  n.kind === 'decimal' && n.step === 0.01 && n.value < 13 && Math.round((n.value % 1) * 100) < 60;

export const numberItem = (
  tokens: readonly Token[],
  start: number,
  text: string,
): { item: Amounting; next: number } | null => {
  const n = numberAt(tokens, start);
  if (!n) return null;
  /** What is typed behind the token before `at`. */
  const behind = (at: number): string => text.slice(tokens[at - 1]!.to);
  // "half the morning", "quarter of the shims": no number
  if (
    n.kind === 'fraction' &&
    n.value < 1 &&
    tokens[start]!.kind === 'word' &&
    /^ (?:of )?(?:the|its|his|her|my|our|their|that) /i.test(behind(n.next))
  )
    return null;
  // "two by sixes", "2 by 4": timber
  if (n.value <= 4 && /^ ?(?:by|x) ?(?:four|six|eight|4|6|8)(?:e?s)?\b/i.test(behind(n.next))) return null;
  let next = n.next;
  const item: Amounting = {
    k: 'num',
    value: n.value,
    step: n.step,
    whole: n.kind === 'whole' || n.kind === 'words',
    unit: null,
    signed: n.signed,
    span: [tokens[start]!.from, 0],
    text: '',
    ...(n.slip ? { slip: true } : {}),
    ...(n.run ? { run: true } : {}),
  };
  const finish = (end: number): { item: Amounting; next: number } => {
    const span: Span = [tokens[start]!.from, tokens[end - 1]!.to];
    return { item: { ...item, span, text: text.slice(...span) }, next: end };
  };
  const half =
    n.kind === 'clock' || (n.kind === 'whole' && n.value <= 12) || n.kind === 'words' || dotted(n)
      ? clockAfter(tokens, next)
      : null;
  if (half || n.kind === 'clock') {
    let minutes =
      n.kind === 'clock'
        ? n.value
        : n.kind === 'decimal'
          ? Math.floor(n.value) * 60 + Math.round((n.value % 1) * 100)
          : n.value > 100
            ? Math.floor(n.value / 100) * 60 + (n.value % 100)
            : n.value * 60;
    if (half?.half === 'pm' && minutes < 720) minutes += 720;
    if (half?.half === 'am' && minutes >= 720) minutes -= 720;
    item.clock = minutes;
    return finish(half?.next ?? next);
  }
  // 90ish, 90 ish, 90-ish
  const ish =
    tokens[next]?.low === 'ish'
      ? next
      : (tokens[next]?.kind === 'space' || tokens[next]?.low === '-') && tokens[next + 1]?.low === 'ish'
        ? next + 1
        : -1;
  if (ish >= 0) {
    item.about = 'about';
    next = ish + 1;
  }
  // "150k mi": thousands of miles; a bare "150k" says nothing certain
  if (n.kind === 'whole' && tokens[next]?.low === 'k') {
    const far = unitAt(tokens, spaceAt(tokens, next + 1), false);
    if (far?.unit !== 'mi' && far?.unit !== 'km') return null;
    Object.assign(item, { value: n.value * 1000, step: 1000, unit: far.unit });
    return finish(far.next);
  }
  // "13 and quarter"
  const andPart =
    n.kind === 'whole' && n.value > 3
      ? /^ and (?:a |an )?(half|quarter)\b(?! (?:hour|hr|min|inch|of|an|past|to))/i.exec(behind(next))
      : null;
  if (andPart) {
    item.value += andPart[1]!.toLowerCase() === 'half' ? 0.5 : 0.25;
    item.step = 0.25;
    item.whole = false;
    next = past(tokens, next, /^(?:half|quarter)$/);
  }
  const glued = tokens[next]?.kind !== 'space';
  const article = n.kind === 'fraction' && !glued && /^ (?:of )?an? /i.test(behind(next));
  let u = article ? null : unitAt(tokens, spaceAt(tokens, next), glued);
  // "lr 14 flat": fourteen and nothing over; a nut has six of them
  if (u?.unit === 'count' && n.value > 12 && tokens[spaceAt(tokens, next)]?.low === 'flat') u = null;
  // "l 54 r 58 t 112": the tank, and no tonnes
  if (u?.unit === 't' && !glued && tokens[u.next]?.kind === 'space' && tokens[u.next + 1]?.kind === 'digits') u = null;
  // "13 5/16 amp clamp reads 31": sixteenths are off a tape
  if (u && (u.unit === 'A' || u.unit === 'V') && n.value > 3 && n.kind === 'fraction' && n.step <= 1 / 8) u = null;
  // "builds past 60 volt of battery 12,6": it measures what follows
  if (
    u &&
    (u.unit === 'A' || u.unit === 'V') &&
    !glued &&
    /^ of (?:the )?[a-z]+ (?:is |has |have |reads )?\d/i.test(behind(u.next))
  )
    u = null;
  // "amps 22.5 volts at the motor 11.6": the unit stands before its number
  const led = tokens[start - 1]?.kind === 'space' ? unitTable.get(tokens[start - 2]?.low ?? '') : undefined;
  if (
    u &&
    led &&
    !glued &&
    dimensionOf(led) !== dimensionOf(u.unit) &&
    /^(?:amps|volts|amperes|psi)$/.test(tokens[start - 2]!.low) &&
    tokens[start - 4]?.kind !== 'digits' &&
    /^ (?:at|on|to) /.test(behind(u.next))
  )
    u = null;
  if (!u && joinsRange(tokens[next]) && tokens[next + 1]?.kind === 'word') u = unitAt(tokens, next + 1, true);
  // "half an hour", "quarter of an inch"
  if (!u && n.kind === 'fraction') {
    const of = wordsFrom(tokens, next, 3);
    const k = of[0]?.low === 'of' ? 1 : 0;
    if (of[k]?.low === 'an' || of[k]?.low === 'a' || of[k]?.low === 'the')
      u = unitAt(tokens, spaceAt(tokens, of[k].end), false);
  }
  if (!u && n.kind === 'fraction' && tokens[spaceAt(tokens, next)]?.low === 'psi')
    u = { unit: 'psi', next: spaceAt(tokens, next) + 1 };
  if (u) {
    item.unit = u.unit;
    next = u.next;
    if (tokens[next]?.low === 'ish') {
      item.about = 'about';
      next += 1;
    }
    // 5' 3", 6 min 40, 6 min 40 s, 1 hr 20, 11 minutes and 30 seconds
    const and =
      (u.unit === 'min' || u.unit === 'h') && tokens[spaceAt(tokens, next)]?.low === 'and'
        ? spaceAt(tokens, spaceAt(tokens, next) + 1)
        : -1;
    const tail = and > 0 ? numberAt(tokens, and) : null;
    const tailUnit = tail ? unitAt(tokens, spaceAt(tokens, tail.next), false)?.unit : undefined;
    const joined = tail !== null && ((u.unit === 'min' && tailUnit === 's') || (u.unit === 'h' && tailUnit === 'min'));
    const more = joined ? tail : numberAt(tokens, spaceAt(tokens, next));
    if (
      more &&
      (more.kind === 'whole' || more.kind === 'fraction' || more.kind === 'words' || joined) &&
      tokens[more.next]?.low !== '/' &&
      tokens[more.next]?.low !== ':'
    ) {
      const mu = unitAt(tokens, spaceAt(tokens, more.next), tokens[more.next]?.kind !== 'space');
      if (u.unit === 'ft' && mu?.unit === 'in' && more.value < 12) {
        item.value = item.value * 12 + more.value;
        item.unit = 'in';
        item.step = more.step;
        next = mu.next;
      } else if (
        u.unit === 'min' &&
        more.value < 60 &&
        n.kind !== 'fraction' &&
        (mu?.unit === 's' || (!mu && more.value >= 10 && more.kind !== 'fraction' && isEnd(tokens, more.next)))
      ) {
        item.value = item.value * 60 + more.value;
        item.unit = 's';
        next = mu?.next ?? more.next;
      } else if (
        u.unit === 'h' &&
        more.value < 60 &&
        (mu?.unit === 'min' || (!mu && more.value >= 10 && more.kind === 'whole' && isEnd(tokens, more.next)))
      ) {
        item.value = item.value * 60 + more.value;
        item.unit = 'min';
        next = mu?.next ?? more.next;
      }
    }
    const part = ['h', 'min', 'in', 'turn', 'cup', 'ft'].includes(u.unit)
      ? /^ and (?:an? )?(half|quarter)\b/i.exec(behind(next))
      : null;
    if (part) {
      item.value += part[1]!.toLowerCase() === 'half' ? 0.5 : 0.25;
      next = past(tokens, next, /^(?:half|quarter)$/);
    }
  }
  // "point eight of a volt"
  const of = u ? null : /^ of an? (volt|inch|bar|amp|turn|degree)\b/i.exec(behind(next));
  if (of) {
    item.unit = ({ volt: 'V', inch: 'in', bar: 'bar', amp: 'A', turn: 'turn', degree: 'deg' } as const)[
      of[1]!.toLowerCase() as 'volt'
    ];
    next = past(tokens, next, /^(?:volt|inch|bar|amp|turn|degree)$/);
  }
  // or so
  if (/^ or so\b/i.test(behind(next))) {
    item.about = 'about';
    next += 4;
  } else if (
    (u || /^ (?:more or less|give or take)\b/i.test(behind(next))) &&
    /^,? (?:maybe|approx|approximately|roughly|about|ish|more or less|give or take)\b(?! \d)/i.test(behind(next))
  ) {
    item.about ??= 'about';
    next = past(tokens, next, /^(?:maybe|approx|approximately|roughly|about|ish|less|take)$/);
  }
  const tol = tolAt(tokens, next);
  if (tol !== null) {
    const t = numberAt(tokens, spaceAt(tokens, tol));
    if (t) {
      const tu = unitAt(tokens, spaceAt(tokens, t.next), tokens[t.next]?.kind !== 'space');
      item.tol = Math.abs(t.value);
      item.unit = item.unit ?? tu?.unit ?? null;
      return finish(tu?.next ?? t.next);
    }
  }
  // 10-20 s, 10 - 20 s, 15 to 30 s: a range; what a change means is settled by the clause
  const dash = joinsRange(tokens[next])
    ? next + 1
    : tokens[next]?.kind === 'space' && joinsRange(tokens[next + 1])
      ? spaceAt(tokens, next + 2)
      : -1;
  if (dash > 0) {
    const upper = numberAt(tokens, dash);
    if (upper && upper.kind !== 'clock' && upper.value > item.value) {
      const uu = unitAt(tokens, spaceAt(tokens, upper.next), tokens[upper.next]?.kind !== 'space');
      item.to = upper.value;
      item.unit = item.unit ?? uu?.unit ?? null;
      item.step = Math.max(item.step, upper.step);
      return finish(uu?.next ?? upper.next);
    }
  }
  return finish(next);
};

const isEnd = (tokens: readonly Token[], i: number): boolean => {
  const t = tokens[spaceAt(tokens, i)];
  return (
    !t ||
    t.kind === 'line' ||
    t.low === ',' ||
    t.low === ';' ||
    (t.low === '.' && tokens[spaceAt(tokens, i) + 1]?.kind !== 'digits') ||
    (t.kind === 'word' && t.low !== 'psi')
  );
};

export const dimension = (item: Amounting): Dimension | null => (item.unit ? dimensionOf(item.unit) : null);
