/** All word tables as one phrase table: phrase -> senses. Built once; pure data from intents/words. */
import type { Unit } from '../server/core/units.ts';
import type { PlaceParts } from './place.ts';
import type { Condition, Measure, Part, Sign, Work } from './shapes.ts';
import {
  dayWords,
  directions,
  fillers,
  hedges,
  negations,
  prepositions,
  regularity,
  specWords,
  tellers,
  tellingPeople,
  tellingVerbs,
} from './words/cues.ts';
import { changeWords } from './words/changes.ts';
import { measureWords } from './words/measures.ts';
import { partWords } from './words/parts.ts';
import { placeWords, relativeCorners, relativeSides, wheelWords } from './words/places.ts';
import { signWords } from './words/signs.ts';
import { conditionWords, workWords } from './words/states.ts';
import { gluedOnly, unitWords } from './words/units.ts';
import { verbForms } from './words/verbs.ts';

export type Relative = 'driver' | 'kerb' | 'street' | 'passenger';
export type Often = (typeof regularity)[number][1];
export type Sense =
  | { k: 'place'; p: PlaceParts; rel?: Relative }
  | { k: 'wheel'; v: 'forward' | 'aft' }
  | { k: 'measure'; v: Measure }
  | { k: 'sign'; v: Sign }
  | { k: 'cond'; v: Condition; holds: boolean }
  | { k: 'work'; v: Work }
  | { k: 'unit'; v: Unit }
  | { k: 'neg' }
  | { k: 'hedge' }
  | { k: 'told' }
  | { k: 'often'; v: Often }
  | { k: 'prep' }
  | { k: 'change'; v: 'fall' | 'rise' }
  | { k: 'spec' }
  | { k: 'dir'; v: 'in' | 'out' }
  | { k: 'day'; v: number }
  | { k: 'filler' };

/** Words of a phrase as the scanner sees them: lower case, apostrophes out, split at spaces and hyphens. */
export const normal = (phrase: string): string =>
  phrase.toLowerCase().replace(/['’`]/g, '').replace(/-/g, ' ').replace(/\s+/g, ' ').trim();

const table = new Map<string, Sense[]>();
let longest = 1;
const add = (phrases: string, sense: Sense): void => {
  for (const raw of phrases.split('|')) {
    const phrase = normal(raw);
    if (phrase === '') continue;
    const senses = table.get(phrase);
    if (senses) senses.push(sense);
    else table.set(phrase, [sense]);
    longest = Math.max(longest, phrase.split(' ').length);
  }
};

for (const [phrases, p] of placeWords) add(phrases, { k: 'place', p });
for (const [phrases, rel] of relativeSides) add(phrases, { k: 'place', p: {}, rel });
for (const [phrases, rel, end] of relativeCorners) add(phrases, { k: 'place', p: { end }, rel });
for (const [phrases, v] of wheelWords) add(phrases, { k: 'wheel', v });
for (const [name, phrases] of Object.entries(partWords)) add(phrases, { k: 'place', p: { part: name as Part } });
const pumps = ['pump', 'comp', 'compressor', 'compresor', 'air pump', 'air compressor', 'cmp'];
/** A state said of one name of the pump can be said of all. */
const allPumps = (phrases: string): string => {
  const out = new Set<string>();
  for (const phrase of phrases.split('|')) {
    out.add(phrase);
    const m = /^(pump|comp|compressor) (.+)$/.exec(phrase);
    if (m) for (const pump of pumps) out.add(`${pump} ${m[2]}`);
  }
  return [...out].join('|');
};
for (const [phrases, v, holds] of conditionWords) add(allPumps(phrases), { k: 'cond', v, holds });
const signs = Object.entries(signWords);
for (const [name, phrases] of signs) add(phrases, { k: 'sign', v: name as Sign });
for (const [name, phrases] of Object.entries(workWords)) add(phrases, { k: 'work', v: name as Work });
for (const [name, phrases] of Object.entries(measureWords)) add(phrases, { k: 'measure', v: name as Measure });
// "bead plates": several of them
for (const [name, phrases] of Object.entries(partWords))
  for (const phrase of phrases.split('|'))
    if (!phrase.endsWith('exhaust') && /[a-rt-z]$/.test(phrase) && !table.has(normal(`${phrase}s`)))
      add(`${phrase}s`, { k: 'place', p: { part: name as Part } });
for (const [phrases, v] of unitWords)
  for (const phrase of phrases.split('|')) if (!gluedOnly.has(phrase)) add(phrase, { k: 'unit', v });
for (const [phrases, v] of regularity) add(phrases, { k: 'often', v });
for (const [phrases, v] of dayWords) add(phrases, { k: 'day', v });
for (const [phrases, v] of directions) add(phrases, { k: 'dir', v });
add(specWords, { k: 'spec' });
for (const word of hedges) add(word, { k: 'hedge' });
for (const word of tellers) add(word, { k: 'told' });
for (const who of tellingPeople)
  for (const verb of tellingVerbs) {
    const phrase = `${who} ${verb}`;
    if (!table.has(phrase)) add(phrase, { k: 'told' });
  }
for (const word of negations) add(word, { k: 'neg' });
for (const [v, phrases] of Object.entries(changeWords))
  for (const phrase of phrases.split('|'))
    if (!table.has(normal(phrase))) add(phrase, { k: 'change', v: v as 'fall' | 'rise' });
for (const word of prepositions) if (!table.has(word)) add(word, { k: 'prep' });
for (const word of fillers) if (!table.has(word)) add(word, { k: 'filler' });

// "blows the fuse": also blow, blowing and blew the fuse, where nothing else has that form
for (const [name, phrases] of signs)
  for (const raw of phrases.split('|')) {
    const [first = '', ...rest] = normal(raw).split(' ');
    if (rest.length === 0) continue;
    for (const form of verbForms.get(first) ?? []) {
      const phrase = [form, ...rest].join(' ');
      if (!table.has(phrase)) add(phrase, { k: 'sign', v: name as Sign });
    }
  }

export const lexicon: ReadonlyMap<string, readonly Sense[]> = table;
export const longestPhrase = longest;
/** How many words the longest phrase that begins with a word has: most words begin few. */
const fromFirst = new Map<string, number>();
for (const phrase of table.keys()) {
  const words = phrase.split(' ');
  fromFirst.set(words[0]!, Math.max(fromFirst.get(words[0]!) ?? 0, words.length));
}
export const longestFrom = (first: string): number => fromFirst.get(first) ?? 0;

/** Single words long enough to be matched by a near miss, by first letter and length. */
const near = new Map<string, string[]>();
for (const phrase of table.keys())
  for (const word of phrase.split(' ')) {
    if (word.length < 4 || !/^[a-z]+$/.test(word)) continue;
    const key = `${word[0]}${word.length}`;
    const list = near.get(key);
    if (!list) near.set(key, [word]);
    else if (!list.includes(word)) list.push(word);
  }
export const nearWords: ReadonlyMap<string, readonly string[]> = near;
const single = new Set([...table.keys()].flatMap((phrase) => phrase.split(' ')));
export const singleWords: ReadonlySet<string> = single;
export const knownWord = (word: string): boolean => single.has(word);
