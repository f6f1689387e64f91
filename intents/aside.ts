/** A clause about another system. */
import { asideIn, plainAsk } from './asks.ts';
import { type Sentence } from './sentences.ts';
import type { Reading, Span } from './shapes.ts';
import { flatten } from './smooth.ts';

/** A sentence that names another system: no fact comes of the words about it; other clauses of it are still read. */
export const readAside = (sentence: Sentence, about: string, text: string, out: Reading, quiet: Span[]): void => {
  const parts = splitClauses(text, sentence);
  let said = false;
  for (const [from, to] of parts) {
    const clause = text.slice(from, to);
    const aside = asideIn({ from, to, text: clause, low: flatten(clause).low.replace(/\s+/g, ' ').trim() });
    if (aside?.ask === 'elsewhere') {
      quiet.push([from, to]);
      if (!said) out.asks.push(plainAsk('elsewhere', clause.trim(), [from, to], about));
      said = true;
    }
  }
  if (!said) {
    quiet.push([sentence.from, sentence.to]);
    out.asks.push(plainAsk('elsewhere', sentence.text, [sentence.from, sentence.to], about));
  }
};

const splitClauses = (text: string, sentence: Sentence): Span[] => {
  const out: Span[] = [];
  let from = sentence.from;
  const body = text.slice(sentence.from, sentence.to);
  for (const m of body.matchAll(/,| but | and (?=the (?:tank|left|right|air|coach|bag)|tank|left|right|lr|rr)/gi)) {
    out.push([from, sentence.from + m.index]);
    from = sentence.from + m.index + m[0].length;
  }
  out.push([from, sentence.to]);
  return out.filter(([a, b]) => b > a);
};
