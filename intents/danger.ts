/** Finds dangers by their make-up: deed, thing, and what makes it dangerous, wherever they stand in a sentence. */
import type { HazardName } from './shapes.ts';
import { dangers, type Danger } from './words/dangers.ts';

export type Found = { hazard: HazardName; from: number; to: number };
type Word = { low: string; from: number; to: number };

/** How far a deed is looked for: notes are short, and time must stay linear. */
const longest = 4000;

const foundIn = (d: Danger, words: readonly Word[], low: string, from: number, to: number): Found | null => {
  const sentence = low.slice(from, to);
  if ((d.also && !d.also.test(sentence)) || d.unless?.test(sentence)) return null;
  for (const [i, deed] of words.entries()) {
    if (!d.deed.test(deed.low)) continue;
    for (let j = i + 1; j < Math.min(words.length, i + 1 + d.near); j += 1) {
      const thing = words[j]!;
      // another clause's thing is not this deed's
      if (/[,:]/.test(low.slice(words[j - 1]!.to, thing.from))) break;
      if (!d.thing.test(thing.low)) continue;
      const rest = low.slice(thing.from, Math.min(to, thing.from + 120));
      if ((d.then && !d.then.test(rest)) || d.never?.test(rest)) continue;
      return { hazard: d.hazard, from: deed.from, to: thing.to };
    }
  }
  return null;
};

/** Every danger of `low` (lower case, no apostrophes), the first of each kind. */
export const dangersIn = (low: string): Found[] => {
  const out: Found[] = [];
  const text = low.slice(0, longest);
  for (const s of text.matchAll(/[^.;!?\n]+(?:\.\d[^.;!?\n]*)*/g)) {
    const from = s.index;
    const to = from + s[0].length;
    const words = [...s[0].matchAll(/[a-z0-9]+/g)].map((m) => ({
      low: m[0],
      from: from + m.index,
      to: from + m.index + m[0].length,
    }));
    for (const d of dangers) {
      if (out.some((f) => f.hazard === d.hazard)) continue;
      const found = foundIn(d, words, text, from, to);
      if (found) out.push(found);
    }
  }
  return out;
};
