/** Words of the trade inside a text. Pure. */

/** Splits `text` at the first occurrence of each term, longest terms first. */
export const linkTerms = (text: string, terms: readonly string[]): { text: string; term: string | null }[] => {
  let parts: { text: string; term: string | null }[] = [{ text, term: null }];
  for (const term of terms.toSorted((a, b) => b.length - a.length)) {
    const words = term.replaceAll('-', ' ').toLowerCase();
    for (const [i, part] of parts.entries()) {
      if (part.term !== null) continue;
      const at = part.text.toLowerCase().indexOf(words);
      if (words === '' || at < 0) continue;
      parts = [
        ...parts.slice(0, i),
        { text: part.text.slice(0, at), term: null },
        { text: part.text.slice(at, at + words.length), term },
        { text: part.text.slice(at + words.length), term: null },
        ...parts.slice(i + 1),
      ];
      break;
    }
  }
  return parts.filter((p) => p.text !== '');
};
