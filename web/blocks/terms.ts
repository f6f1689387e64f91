/** Words of the trade inside a text. Pure. */

/** The term as a whole word, in the plural too: "arm" stands in "both arms" and not in "harm". */
const finder = (words: string): RegExp =>
  new RegExp(`(?<![\\w-])${words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?:e?s)?(?![\\w-])`, 'i');

/** Splits `text` at the first occurrence of each term, longest terms first. */
export const linkTerms = (text: string, terms: readonly string[]): { text: string; term: string | null }[] => {
  let parts: { text: string; term: string | null }[] = [{ text, term: null }];
  for (const term of terms.toSorted((a, b) => b.length - a.length)) {
    const spaced = finder(term.replaceAll('-', ' '));
    const hyphened = finder(term);
    for (const [i, part] of parts.entries()) {
      if (part.term !== null) continue;
      const hit = spaced.exec(part.text) ?? hyphened.exec(part.text);
      if (hit === null || term === '') continue;
      const at = hit.index;
      const end = at + hit[0].length;
      parts = [
        ...parts.slice(0, i),
        { text: part.text.slice(0, at), term: null },
        { text: part.text.slice(at, end), term },
        { text: part.text.slice(end), term: null },
        ...parts.slice(i + 1),
      ];
      break;
    }
  }
  return parts.filter((p) => p.text !== '');
};
