/** A word of the trade, said to an apprentice. */
export type Term = {
  readonly id: string;
  /** Other spellings by which it is known; lower case. */
  readonly also: readonly string[];
  readonly is: string;
  readonly why: string;
  readonly see: readonly string[];
};
export const term = (
  id: string,
  also: readonly string[],
  is: string,
  why: string,
  see: readonly string[] = [],
): Term => ({
  id,
  also,
  is,
  why,
  see,
});
