/** A word of the trade, said to an apprentice. */
export type Term = {
  /** Lower case. */
  readonly id: string;
  readonly term: string;
  /** Other spellings by which it is known; lower case. */
  readonly also: readonly string[];
  readonly plain: string;
  /** Why it matters at the coach. */
  readonly why: string;
  /** Ids of other terms. */
  readonly see: readonly string[];
};

/** A term whose id is its name. */
export const term = (
  id: string,
  also: readonly string[],
  plain: string,
  why: string,
  see: readonly string[] = [],
): Term => ({ id, term: id, also, plain, why, see });

/** A term written in capitals, which is not the same as the plain word: AUTO, SHUT, LIVE. */
export const capital = (...parts: Parameters<typeof term>): Term => ({
  ...term(...parts),
  term: parts[0].toUpperCase(),
});
