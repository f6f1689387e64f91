/** Words of explanation as a block, with the glossary's terms in them. Pure. */
import { termsIn } from '../guides/glossary.ts';
import type { Block } from './reply.ts';

type Teach = Extract<Block, { is: 'teach' }>;

export const teach = (words: string, lines: readonly string[] = [], why?: Teach['why']): Teach => ({
  is: 'teach',
  words,
  lines: [...lines],
  terms: termsIn([words, ...lines].join(' ')),
  ...(why ? { why } : {}),
});
