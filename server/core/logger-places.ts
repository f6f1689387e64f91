/** What a logger's column is of, from its name, in words of a note; null where the name does not say. */
import type { Dimension } from './units.ts';

const sides: readonly (readonly [RegExp, string])[] = [
  [/\b(?:lr|rl|left rear|rear left)\b/i, 'left rear'],
  [/\b(?:rr|right rear|rear right)\b/i, 'right rear'],
  [/\b(?:lf|fl|left front|front left)\b/i, 'left front'],
  [/\b(?:rf|fr|right front|front right)\b/i, 'right front'],
];
const side = (name: string): string | null =>
  /\b(?:left|lh)\b/i.test(name) ? 'left' : /\b(?:right|rh)\b/i.test(name) ? 'right' : null;

export const placeNamed = (raw: string, dimension: Dimension): string | null => {
  const name = raw.replaceAll(/[_.-]+/g, ' ');
  if (dimension === 'pressure') {
    if (/\b(?:tank|reservoir|receiver|supply)\b/i.test(name)) return 'tank';
    const which = side(name);
    return which && /\b(?:bellows?|bag|air spring)\b/i.test(name) ? `${which} bellows` : null;
  }
  if (dimension === 'length') return sides.find(([words]) => words.test(name))?.[1] ?? null;
  if (dimension === 'voltage') return /\b(?:battery|batt)\b/i.test(name) ? 'battery' : null;
  if (dimension === 'temperature') return /\b(?:ambient|outside|air)\b/i.test(name) ? 'outside' : null;
  return null;
};
