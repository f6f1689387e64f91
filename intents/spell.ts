/** Near-miss spelling, by `natural`'s Damerau distance; filtered by first letter and length first, since a distance costs. */
import { DamerauLevenshteinDistance } from 'natural/lib/natural/distance/index.js';
import { knownWord, nearWords } from './lexicon.ts';
import { plainEnglish } from './words/plain.ts';

const cache = new Map<string, string | null>();
const cacheSize = 2000;

/**
 * The one known word that `word` is a slip of, or null: at most one slip up to 7 letters, two from 8 on; same first
 * letter, or the first two changed over. Never for words under 5 letters: there the neighbour means something else
 * (low and slow, on and no).
 */
export const nearest = (word: string): string | null => {
  if (word.length < 5 || word.length > 24 || !/^[a-z]+$/.test(word) || knownWord(word) || plainEnglish.has(word))
    return null;
  const cached = cache.get(word);
  if (cached !== undefined) return cached;
  const most = word.length >= 8 ? 2 : 1;
  let best: string | null = null;
  let bestDistance = most + 1;
  let ties = 0;
  for (const first of new Set([word[0], word[1]]))
    for (let length = word.length - most; length <= word.length + most; length += 1)
      for (const candidate of nearWords.get(`${first}${length}`) ?? []) {
        if (candidate.length < 4 || (first === word[1] && candidate[1] !== word[0])) continue;
        const distance = DamerauLevenshteinDistance(word, candidate, { restricted: true });
        if (distance < bestDistance) {
          best = candidate;
          bestDistance = distance;
          ties = 1;
        } else if (distance === bestDistance && candidate !== best) ties += 1;
      }
  const result = best !== null && (ties === 1 || best.startsWith(word.slice(0, 4))) ? best : null;
  if (cache.size >= cacheSize) cache.clear();
  cache.set(word, result);
  return result;
};
