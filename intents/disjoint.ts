/** Stretches of a note, none in another. Pure. */
import type { Span } from './shapes.ts';

/** In order, those that overlap as one. */
export const disjoint = (spans: readonly Span[]): Span[] => {
  const out: Span[] = [];
  for (const [from, to] of spans.toSorted((a, b) => a[0] - b[0])) {
    const last = out.at(-1);
    if (last && from < last[1]) last[1] = Math.max(last[1], to);
    else out.push([from, to]);
  }
  return out;
};
