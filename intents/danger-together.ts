/** Finds dangers by what stands together in one sentence, in any order. */
import type { Found } from './danger.ts';
import { makings, type Making } from './words/danger-makings.ts';

/** How far a note is looked at: notes are short, and time must stay linear. */
const longest = 4000;

/** From the first to the last of the makings; null where one is missing, they stand too far apart, or a word speaks against. */
const foundIn = (m: Making, sentence: string): { from: number; to: number } | null => {
  let from = sentence.length;
  let to = 0;
  for (const one of m.all) {
    const hit = one.exec(sentence);
    if (!hit) return null;
    from = Math.min(from, hit.index);
    to = Math.max(to, hit.index + hit[0].length);
  }
  return to - from > m.within || m.unless?.test(sentence) ? null : { from, to };
};

/** Every danger of `low` (lower case, no apostrophes) by its makings, the first of each kind. */
export const togetherIn = (low: string): Found[] => {
  const out: Found[] = [];
  for (const s of low.slice(0, longest).matchAll(/[^.;!?\n]+(?:\.\d[^.;!?\n]*)*/g))
    for (const m of makings) {
      if (out.some((f) => f.hazard === m.hazard)) continue;
      const found = foundIn(m, s[0]);
      if (found) out.push({ hazard: m.hazard, from: s.index + found.from, to: s.index + found.to });
    }
  return out;
};
