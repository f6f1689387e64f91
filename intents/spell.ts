/** Near-miss spelling, by `natural`'s Damerau distance; filtered by first letter and length first, since a distance costs. */
import { DamerauLevenshteinDistance } from 'natural/lib/natural/distance/levenshtein_distance.js';
import { knownWord, lexicon, nearWords, singleWords } from './lexicon.ts';
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
  let closest: string | null = null;
  let bestKept = 0;
  let keptTies = 0;
  let agree = true;
  for (const first of new Set([word[0], word[1]]))
    for (let length = word.length - most; length <= word.length + most; length += 1)
      for (const candidate of nearWords.get(`${first}${length}`) ?? []) {
        if (candidate.length < 4 || (first === word[1] && candidate[1] !== word[0])) continue;
        const distance = DamerauLevenshteinDistance(word, candidate, { restricted: true });
        if (distance < bestDistance) {
          best = candidate;
          closest = candidate;
          bestDistance = distance;
          bestKept = keptLetters(word, candidate);
          keptTies = 1;
          ties = 1;
          agree = true;
        } else if (distance === bestDistance && candidate !== best) {
          ties += 1;
          if (best === null || !sameSense(best, candidate)) agree = false;
          const kept = keptLetters(word, candidate);
          if (kept > bestKept) {
            closest = candidate;
            bestKept = kept;
            keptTies = 1;
          } else if (kept === bestKept) keptTies += 1;
        }
      }
  // of several at one slip, the one that a dropped letter makes
  const dropped =
    closest !== null &&
    bestDistance === 1 &&
    keptTies === 1 &&
    word.length >= 6 &&
    closest.length === word.length + 1 &&
    closest[0] === word[0];
  const result =
    best === null ? null : ties === 1 || agree || best.startsWith(word.slice(0, 4)) ? best : dropped ? closest : null;
  if (cache.size >= cacheSize) cache.clear();
  cache.set(word, result);
  return result;
};

/** Letters at both ends that a slip left alone; a dropped letter keeps most. */
const keptLetters = (word: string, candidate: string): number => {
  let a = 0;
  while (a < word.length && word[a] === candidate[a]) a += 1;
  let b = 0;
  while (b < word.length - a && word.at(-1 - b) === candidate.at(-1 - b)) b += 1;
  return a + b + (candidate.length > word.length ? 0.5 : 0);
};

const sameSense = (a: string, b: string): boolean => {
  const one = lexicon.get(a);
  const other = lexicon.get(b);
  return one !== undefined && other !== undefined && JSON.stringify(one) === JSON.stringify(other);
};

/** Consonants as they stand, a leading vowel kept: what is left of a word written short. */
const skeletonOf = (word: string): string => word[0]! + word.slice(1).replace(/[aeiou]/g, '');

const skeletons = new Map<string, string[]>();
for (const word of [...singleWords, ...plainEnglish]) {
  if (word.length < 4 || !/^[a-z]+$/.test(word)) continue;
  const bones = skeletonOf(word);
  if (bones.length < 3 || bones === word) continue;
  const list = skeletons.get(bones);
  if (!list) skeletons.set(bones, [word]);
  else if (!list.includes(word)) list.push(word);
}

/** "brkr", "drvr": the one word that has these consonants in this order and no others, or null. */
export const shorthand = (word: string): string | null => {
  if (!/^[a-z][b-df-hj-np-tv-z]{2,}$/.test(word) || /(.)\1\1/.test(word) || knownWord(word) || plainEnglish.has(word))
    return null;
  const list = skeletons.get(word) ?? [];
  const first = list[0];
  return first !== undefined && list.every((other) => other === first || sameSense(first, other)) ? first : null;
};

const endings: readonly (readonly [RegExp, readonly string[]])[] = [
  [/ies$/, ['y']],
  [/es$/, ['', 'e', 'ing', 'ed']],
  [/(?<!s)s$/, ['', 'ing', 'ed']],
  [/(.)\1ing$/, ['$1', '$1ed', '$1s', '$1$1ed']],
  [/ing$/, ['', 'e', 's', 'es', 'ed']],
  [/(.)\1ed$/, ['$1', '$1ing', '$1s', '$1$1ing']],
  [/ed$/, ['', 'e', 'ing', 's']],
  [/$/, ['s', 'ing', 'ed', 'd']],
];
const fullForms = endings.slice(0, -1);

/**
 * A known word that `word` is another form of ("kinks", "chafes", "fouling"), or null. A word that stands only within
 * phrases ("foams up") may be another form of one that stands alone ("foam"), but is no such form's stem.
 */
export const inflected = (word: string): string | null => {
  if (word.length < 4 || word.length > 24 || !/^[a-z]+$/.test(word) || lexicon.has(word) || plainEnglish.has(word))
    return null;
  const within = knownWord(word);
  for (const [ending, others] of within ? fullForms : endings) {
    if (!ending.test(word)) continue;
    for (const other of others) {
      const form = word.replace(ending, other);
      if (
        form.length >= 3 &&
        form !== word &&
        lexicon.get(form)?.some((s) => (within ? s.k === 'sign' : formed.has(s.k)))
      )
        return form;
    }
  }
  return null;
};
const formed: ReadonlySet<string> = new Set(['sign', 'work', 'place', 'change']);
