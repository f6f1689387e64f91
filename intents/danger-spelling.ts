/** A note's text with slips mended in the words that a danger hangs on ("releif", "openin", "jumperd"). */
import { DamerauLevenshteinDistance } from 'natural/lib/natural/distance/levenshtein_distance.js';
import { knownWord } from './lexicon.ts';
import { tokensOf } from './smooth.ts';
import { dangerWords } from './words/danger-makings.ts';
import { plainEnglish } from './words/plain.ts';

const whole = new Set(dangerWords);

/** The danger word that `word` is a slip of: one slip up to 7 letters, two from 8 on; same first letter. */
const mended = (word: string): string => {
  if (word.length < 5 || word.length > 16 || whole.has(word) || knownWord(word) || plainEnglish.has(word)) return word;
  // "loosnin": no word of the trade or of plain English ends so
  if (/[^aeu]in$/.test(word) && word.length >= 6) return `${word}g`;
  const most = word.length >= 8 ? 2 : 1;
  const near = dangerWords.filter(
    (w) =>
      w[0] === word[0] &&
      // another form of a word is no slip
      !w.startsWith(word) &&
      !word.startsWith(w) &&
      Math.abs(w.length - word.length) <= most &&
      DamerauLevenshteinDistance(word, w, { restricted: true }) <= most,
  );
  return near.length > 0 ? near[0]! : word;
};

/** Words nobody knows come again, in one note and in many; a distance costs. All let go when there are more. */
const mostKept = 500;
const kept = new Map<string, string>();
const mendedOnce = (word: string): string => {
  const had = kept.get(word);
  if (had !== undefined) return had;
  if (kept.size >= mostKept) kept.clear();
  const made = mended(word);
  kept.set(word, made);
  return made;
};

/** Lower case without apostrophes, slips mended; `at` leads each unit back to the text. */
export const respelled = (text: string): { readonly low: string; readonly at: readonly number[] } => {
  let low = '';
  const at: number[] = [];
  for (const t of tokensOf(text)) {
    const said = t.kind === 'word' ? mendedOnce(t.low) : t.low;
    const same = said.length === t.to - t.from;
    for (let k = 0; k < said.length; k += 1) at.push(same ? t.from + k : t.from);
    low += said;
  }
  at.push(text.length);
  return { low, at };
};
