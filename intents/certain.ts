/**
 * Whether a state that lets somebody work was said flatly: no wish, condition, guess, order or question, and not of another
 * day or another coach. What is not stays unread, and is asked for by the stop that waits for it. Pure.
 */
import type { Span } from './shapes.ts';
import {
  asksFirst,
  onceBefore,
  orderBefore,
  toldAsPast,
  undoneBefore,
  unsureAfter,
  unsureBefore,
} from './words/unsure.ts';

const plain = (text: string): string => text.toLowerCase().replace(/['’]/g, '');
const stop = /[.;!?\n]/;

/** `clause`: where the clause of the state begins in `text`; `span`: the words of the state. */
export const saidFlatly = (text: string, clause: number, span: Span): boolean => {
  const from = Math.max(...['.', ';', '!', '?', '\n'].map((c) => text.lastIndexOf(c, span[0] - 1))) + 1;
  const sentence = plain(text.slice(from, span[0]));
  const before = plain(text.slice(Math.max(clause, from), span[0]));
  const rest = text.slice(span[1]);
  const end = rest.search(stop);
  const after = plain(end < 0 ? rest : rest.slice(0, end + 1));
  const own = plain(text.slice(...span));
  if (orderBefore.test(sentence) || unsureBefore.test(before) || undoneBefore.test(before) || unsureAfter.test(after))
    return false;
  if (asksFirst.test(before) && /^[^,]*\?/.test(after)) return false;
  if (asksFirst.test(before) && before.trim().split(/\s+/).length <= 3 && !after.includes(',')) return false;
  if (onceBefore.test(before) && !toldAsPast.test(before + own)) return false;
  // "tank empty?": nothing but the question
  return !/^[^,]*\?/.test(after);
};
