/** What a number is made of. */

import type { Token } from './scan.ts';
import { numberWords } from './words/units.ts';

export type Num = {
  value: number;
  /** Resolution of the writing: 1 for 95, 0.1 for 12.1, 1/8 for 13 3/8. */
  step: number;
  /** Index of the first token after it. */
  next: number;
  kind: 'whole' | 'decimal' | 'fraction' | 'clock' | 'words';
  signed: boolean;
  /** A letter was taken for a digit. */
  slip?: boolean;
  /** Said figure by figure: "nine oh five", which may be a time. */
  run?: boolean;
};

export const digits = (t: Token | undefined): t is Token => t?.kind === 'digits' && t.low.length <= 7;

export const mark = (t: Token | undefined, low: string): boolean => t?.kind === 'mark' && t.low === low;

export const space = (t: Token | undefined): boolean => t?.kind === 'space';

export const wordValue = (t: Token | undefined): number | undefined =>
  t?.kind === 'word' && Object.hasOwn(numberWords, t.low) ? numberWords[t.low] : undefined;

export const skip = (tokens: readonly Token[], i: number): number =>
  space(tokens[i]) || (mark(tokens[i], '-') && tokens[i + 1]?.kind === 'word') ? i + 1 : i;
