/** Numbers in figures: 95, 13-1/4, 9:05, 12,4. */
import { type Num, digits, mark, space } from './number-tokens.ts';
import type { Token } from './scan.ts';

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

/** "3/8" at `i`; null when it is not a fraction of a tape. */
export const fraction = (tokens: readonly Token[], i: number): { value: number; step: number; next: number } | null => {
  const top = tokens[i];
  const slash = tokens[i + 1];
  const below = tokens[i + 2];
  if (!digits(top) || !digits(below) || !(mark(slash, '/') || mark(slash, '⁄'))) return null;
  if (!tapeBelow.has(below.low) || mark(tokens[i + 3], '/')) return null;
  const value = Number(top.low) / Number(below.low);
  return value < 1 || top.low.length === 1 ? { value, step: 1 / Number(below.low), next: i + 3 } : null;
};

const glyph = (t: Token | undefined): number | undefined => (t?.kind === 'mark' ? glyphs[t.low] : undefined);

export const written = (tokens: readonly Token[], i: number): Num | null => {
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
    // "cut out 118 1/4 turn in": two figures
    const turned = part && t.low.length > 2 && /^turns?$/.test(tokens[part.next + 1]?.low ?? '');
    // "cut out 117 and 1/8 play": nothing is that long
    const apart = part && gap === 3 && between[1]?.low !== '-' && Number(t.low) > 60;
    if (part && part.value < 1 && !turned && !apart)
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
      // seconds, as loggers write them, are less than a reading's own time can carry
      next:
        mark(tokens[i + 3], ':') &&
        digits(tokens[i + 4]) &&
        tokens[i + 4]!.low.length === 2 &&
        Number(tokens[i + 4]!.low) < 60
          ? i + 5
          : i + 3,
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
