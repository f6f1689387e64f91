/** How a limit is spoken of and where the sheet keeps it; which corner is meant. */
import type { Case, Range } from '../case.ts';
import type { Corner } from '../../core/heights.ts';

export type Row = {
  /** In the words, or as the reader's topic. */
  asks: RegExp;
  name: string;
  range: (c: Case, words: string) => Range | null;
  field: string;
  question: string;
  lines?: (c: Case) => string[];
};

export const cornerIn = (words: string): Corner | null => {
  const left = /\b(?:left|lr|lf|lh|nearside|driver)/.test(words);
  const right = /\b(?:right|rr|rf|rh|offside|kerb|curb)/.test(words);
  const front = /\b(?:front|lf|rf|fronts)\b/.test(words);
  if (left === right) return null;
  return `${left ? 'left' : 'right'}${front ? 'Front' : 'Rear'}`;
};
