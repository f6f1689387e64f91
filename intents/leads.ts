/** What stands before a note and is none of it: "ok so", "update:", "morning boss,", "job 114:". Cut off, the rest is the note. */
import type { Span } from './shapes.ts';
import {
  greeted,
  greetings,
  jobReferences,
  leadMarked,
  leadWords,
  references,
  tailMarked,
  tailWords,
} from './words/leads.ts';

export type Lead = { readonly length: number; readonly greeting: Span | null; readonly reference: Span | null };

const turn = new RegExp(
  `(?:(?<greeting>(?:${greetings})(?: (?:${greeted}))?)(?:[,.!:-]+ |\\n| - | (?=i(?:'?m| am|'?ve)? ))` +
    `|(?<reference>(?:${references})(?: no\\.?| number)? ?#? ?\\d{1,7}(?= ?[:,-] | - |\\. |\\n)|(?:${jobReferences})(?: no\\.?| number)? ?#? ?\\d{3,7}(?= )|#\\d{3,7}(?= |:|,))(?: ?[:,-] | - |\\. |\\n| )` +
    `|(?:${leadWords})\\b(?: ?[,.:!-]+ | )` +
    `|(?:${leadMarked})(?:[,:]+ | - ))`,
  'iy',
);
const most = 4;

/** The lead of `text`, or null where there is none or nothing comes after it. */
export const leadOf = (text: string): Lead | null => {
  let length = 0;
  let greeting: Span | null = null;
  let reference: Span | null = null;
  for (let turns = 0; turns < most; turns += 1) {
    turn.lastIndex = length;
    const m = turn.exec(text);
    if (!m) break;
    const { greeting: hail, reference: number } = m.groups!;
    if (hail) greeting = [length, length + hail.length];
    if (number) reference = [length, length + number.length];
    length += m[0].length;
  }
  return length === 0 || text.slice(length).trim() === '' ? null : { length, greeting, reference };
};

const last = new RegExp(`(?:(?:[,.!]? - |[,.!]+ | |\\n)(?:${tailWords})|(?:[,.!]+ | - )(?:${tailMarked}))[.! ]*$`, 'i');

/** Where the note proper of `text` ends: what comes after is thanks or a word by the way. */
export const tailAt = (text: string): number => {
  let end = text.length;
  for (let turns = 0; turns < most; turns += 1) {
    const m = last.exec(text.slice(Math.max(0, end - 40), end));
    if (!m || end - m[0].length < 2) break;
    end -= m[0].length;
  }
  return text.slice(0, end).trim() === '' ? text.length : end;
};
