/**
 * Evens out what the thumb and the clipboard leave in a note and no word hangs on: runs of spaces, tabs, line ends of
 * two characters, semicolons for commas. Read is the even text; spans are led back to the text as typed.
 */
import type { Span } from './shapes.ts';

/** `at[i]`: where unit i of `text` stands in the text as typed; one more for its end. */
export type Even = { readonly text: string; readonly at: readonly number[] };

/** "comp: off": what it is. */
const switched =
  /(?<=\b(?:key|ignition|engine|comp|cmp|compressor|pump|motor|power|breaker|fan)):(?=[^\S\n]+(?:on|off)\b)/gi;
/** "1) lh bag chafed. 2) rh link bent": numbers of a list, no readings. */
const listed = /(?<=^|[\n.,;:][^\S\n]{0,3})(?<![(\d])\b\d{1,2}\)(?=[^\S\n]*[a-z])/gi;

const uneven = /[^\S\n]{2,}|[^\S\n ]|;(?=\s|$)|^ | $/m;

/** The even text of `typed`, or null where it is even already: then nothing is led back. */
export const evened = (given: string): Even | null => {
  const blank = (found: string): string => ' '.repeat(found.length);
  const typed = given.replace(switched, blank).replace(listed, blank);
  if (typed === given && !uneven.test(typed)) return null;
  let text = '';
  const at: number[] = [];
  const keep = (unit: string, from: number): void => {
    text += unit;
    at.push(from);
  };
  for (let i = 0; i < typed.length; i += 1) {
    const unit = typed[i]!;
    if (unit === '\n' || (unit === '\r' && typed[i + 1] !== '\n')) {
      if (text.endsWith(' ')) {
        text = text.slice(0, -1);
        at.pop();
      }
      keep('\n', i);
    } else if (/\s/.test(unit)) {
      if (text !== '' && !/[\s]$/.test(text)) keep(' ', i);
    } else keep(unit === ';' && /\s/.test(typed[i + 1] ?? ' ') ? ',' : unit, i);
  }
  if (text.endsWith(' ')) {
    text = text.slice(0, -1);
    at.pop();
  }
  at.push(typed.length);
  return { text, at };
};

/** `value` with every span of the even text led back to where it was typed. */
export const ledBack = <T>(value: T, at: readonly number[]): T => {
  const span = ([a, b]: Span): Span => [at[a] ?? at.at(-1)!, b === 0 ? 0 : (at[b - 1] ?? at.at(-1)! - 1) + 1];
  const walk = (v: unknown): unknown => {
    if (Array.isArray(v)) return v.map(walk);
    if (v === null || typeof v !== 'object') return v;
    return Object.fromEntries(
      Object.entries(v).map(([key, x]) =>
        key === 'spans' || key === 'unread' ? [key, (x as Span[]).map(span)] : [key, walk(x)],
      ),
    );
  };
  return walk(value) as T;
};
