/** The glossary: look a term up, find terms in a text. */
import { airTerms } from './glossary/air.ts';
import { chassisTerms } from './glossary/chassis.ts';
import { controlTerms } from './glossary/control.ts';
import { electricTerms } from './glossary/electrics.ts';
import { findingTerms } from './glossary/finding.ts';
import { pumpTerms } from './glossary/pump.ts';
import { springTerms } from './glossary/springs.ts';
import type { Term } from './glossary/term.ts';

export type { Term } from './glossary/term.ts';

export const allTerms: readonly Term[] = [
  ...airTerms,
  ...pumpTerms,
  ...electricTerms,
  ...controlTerms,
  ...springTerms,
  ...chassisTerms,
  ...findingTerms,
];

const byName = new Map<string, Term>();
for (const t of allTerms) for (const name of [t.id, ...t.also]) if (!byName.has(name)) byName.set(name, t);

/** Name without the ending of a plural: "valves" is "valve", "bushes" is "bush", "batteries" is "battery". */
const singulars = (name: string): string[] => [
  name,
  name.replace(/s$/, ''),
  name.replace(/es$/, ''),
  name.replace(/ies$/, 'y'),
];
const find = (name: string): Term | undefined => {
  for (const one of singulars(name)) {
    const found = byName.get(one);
    if (found) return found;
  }
  return undefined;
};

/** The term for a topic: its name, another spelling, or its place without side ("left bellows"); "what is a ..." too. */
export const glossaryFor = (topic: string): Term | undefined => {
  const plain = topic
    .toLowerCase()
    .replace(/[?.!]/g, '')
    .trim()
    .replace(/^(?:what(?:s|'s| is| are)|define|explain) /, '')
    .replace(/^(?:an?|the) /, '');
  return find(plain) ?? find(plain.replace(/^(?:(?:left|right|both|front|rear|forward|aft) )+/, ''));
};

const escaped = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
/** Names that are plain words too: known when asked for, not pointed out in a text. */
const plainWords = new Set([
  'stand',
  'stands',
  'stops',
  'cap',
  'swap',
  'height',
  'key',
  'lever',
  'outlet',
  'points',
  'leg',
  'legs',
  'side',
  'curb',
  'kerb',
]);
/** Longest names first, so that "inlet check valve" is not read as "check valve". */
const names = [...byName.keys()].filter((name) => !plainWords.has(name)).toSorted((a, b) => b.length - a.length);
const finder = new RegExp(`(?<![\\w-])(?:${names.map(escaped).join('|')})(?:e?s)?(?![\\w-])`, 'gi');

const asked = new RegExp(
  `(?<![\\w-])(?:${[...byName.keys()]
    .toSorted((a, b) => b.length - a.length)
    .map(escaped)
    .join('|')})(?:e?s)?(?![\\w-])`,
  'i',
);

/** The term for a topic, or the first one that a question names anywhere: "what does SHUT mean", "which side is curb". */
export const glossaryIn = (question: string): Term | undefined => {
  const whole = glossaryFor(question);
  const [found] = asked.exec(question) ?? [];
  return whole ?? (found === undefined ? undefined : find(found.toLowerCase()));
};

/** Most terms shown with one text. */
const most = 6;

/**
 * Ids of the terms that occur in `text`, in order, each once, at most six. A term in capitals (AUTO) is found only in
 * capitals: "shut the drain" is not SHUT.
 */
export const termsIn = (text: string): string[] => {
  const out = new Set<string>();
  for (const [found] of text.matchAll(finder)) {
    const t = find(found.toLowerCase());
    if (t && (t.term === t.id || found === found.toUpperCase() || found.includes(' '))) out.add(t.id);
    if (out.size === most) break;
  }
  return [...out];
};
