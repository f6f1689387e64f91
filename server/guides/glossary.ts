/** The glossary: look a term up, find terms in a text. */
import { airTerms } from './glossary/air.ts';
import { pumpTerms } from './glossary/pump.ts';
import type { Term } from './glossary/term.ts';

export const allTerms: readonly Term[] = [...airTerms, ...pumpTerms];

const byName = new Map<string, Term>();
for (const t of allTerms) for (const name of [t.id, ...t.also]) if (!byName.has(name)) byName.set(name, t);

const plural = (name: string): string => name.replace(/(?:ies)$/, 'y').replace(/s$/, '');

/** The term for a topic: its name, another spelling, or its place without side ("left bellows"). */
export const glossaryFor = (topic: string): Term | undefined => {
  const plain = topic
    .toLowerCase()
    .trim()
    .replace(/^(?:a|an|the) /, '')
    .replace(/^(?:left|right|both) /, '')
    .replace(/^(?:front|rear) /, '');
  return byName.get(plain) ?? byName.get(plural(plain));
};

const escaped = (name: string): string => name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
/** Longest names first, so that "inlet check valve" is not read as "check valve". */
const names = [...byName.keys()].toSorted((a, b) => b.length - a.length);
const finder = new RegExp(`(?<![\\w-])(?:${names.map(escaped).join('|')})(?:s)?(?![\\w-])`, 'gi');

/** Most terms shown with one text. */
const most = 6;
/** Ids of the terms that occur in `text`, in order, each once, at most six. */
export const termsIn = (text: string): string[] => {
  const out = new Set<string>();
  for (const [found] of text.matchAll(finder)) {
    const t = byName.get(found.toLowerCase()) ?? byName.get(plural(found.toLowerCase()));
    if (t) out.add(t.id);
  }
  return [...out].slice(0, most);
};
