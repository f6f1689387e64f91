/** The words by which a session is found again: pure, the same for every log. */
import type { Entry } from '../session/entry.ts';

const longest = 40;

/** `text` as search words: lower case, without accents, letters and digits only. */
export const splitWords = (text: string): string[] => [
  ...new Set(
    text
      .normalize('NFKD')
      .replaceAll(/\p{M}/gu, '')
      .toLowerCase()
      .split(/[^\p{L}\p{N}]+/u)
      .filter(Boolean)
      .map((word) => word.slice(0, longest)),
  ),
];

/** What an entry adds to the words of its session. */
export const wordsOf = (entry: Entry): string[] => {
  switch (entry.is) {
    case 'opened':
      return splitWords(`${entry.coach} ${entry.by}`);
    case 'note':
    case 'remark':
      return splitWords(`${entry.text} ${entry.by}`);
    case 'reply':
      return splitWords(entry.blocks.flatMap((b) => (b.is === 'findings' ? [b.words] : [])).join(' '));
    case 'closed':
      return splitWords(`${entry.words} ${entry.signed}`);
    case 'reopened':
      return splitWords(entry.words);
    case 'estimate':
      return splitWords(entry.lines.flatMap((l) => [l.words, ...l.parts.map((p) => p.name)]).join(' '));
    case 'decided':
      return splitWords(`${entry.name} ${entry.words}`);
    case 'sheet':
      return [];
  }
};

/** How many words of a search count. */
export const mostWords = 12;
