/**
 * Stretches of a sentence that tell of no thing that is: a case that may come, an order, a hope, another coach. Nothing is
 * read from them, and they are shown as unread. Pure.
 */
import { disjoint } from './disjoint.ts';
import type { Sentence } from './sentences.ts';
import type { Span } from './shapes.ts';
import { flatten } from './smooth.ts';
import { anotherCoach, inCase, thisCoach, wished, wondered } from './words/unreal.ts';

export const unrealIn = (sentence: Sentence): Span[] => {
  const { low, at } = flatten(sentence.text);
  const span = (start: number, end: number): Span => {
    let [from, to] = [start, Math.min(end, low.length)];
    while (from < to && /[,;: ]/.test(low[from]!)) from += 1;
    while (to > from && /[,;: ]/.test(low[to - 1]!)) to -= 1;
    return [sentence.from + at[from]!, sentence.from + at[to]!];
  };
  const comma = (from: number): number => {
    const end = low.slice(from).search(/[,;](?! ?\d{3}\b)| but /);
    return end < 0 ? low.length : from + end;
  };
  const out: Span[] = [];
  const other = anotherCoach.exec(low);
  if (other) {
    const back = thisCoach.exec(low.slice(other.index));
    out.push(span(other.index, back ? other.index + back.index : low.length));
  }
  const soon = inCase.exec(low);
  if (soon) out.push(span(soon.index, low.length));
  for (const form of [wished, wondered]) {
    const m = form.exec(low);
    if (m) out.push(span(m.index, comma(m.index + m[0].length)));
  }
  return disjoint(out);
};
