/** What of a note nothing took: words that nobody knows, and parts or numbers in a clause that gave nothing. */
import { disjoint } from './disjoint.ts';
import { makePlace } from './place.ts';
import type { Settled } from './settled.ts';
import type { Fact, Reading, Span } from './shapes.ts';

/** Spans as disjoint stretches in order, so that a look-up costs the same in a long note as in a short one. */
const stretches = (spans: readonly Span[]): ((from: number, to: number) => Span | undefined) => {
  const merged = disjoint(spans);
  return (from, to) => {
    let [low, high] = [0, merged.length];
    while (low < high) {
      const mid = (low + high) >> 1;
      if (merged[mid]![1] > from) high = mid;
      else low = mid + 1;
    }
    const hit = merged[low];
    return hit && hit[0] < to ? hit : undefined;
  };
};

const spansOf = (f: Fact): Span[] => [
  ...f.where.spans,
  ...('what' in f ? f.what.spans : []),
  ...(f.is === 'reading' ? [...f.amount.spans, ...(f.over?.spans ?? []), ...(f.from?.spans ?? [])] : []),
  ...(f.when?.spans ?? []),
];

export type LeftOver = {
  readonly text: string;
  readonly items: readonly Settled[];
  readonly used: ReadonlySet<Settled>;
  readonly out: Reading;
  /** Clauses in which a danger stands. */
  readonly dangerous: readonly Span[];
  /** What was read before the clauses were: corrections in the middle, a table's head. */
  readonly covered: readonly Span[];
  readonly head: number;
};

/**
 * A part or a number in a clause that gave nothing was not understood, however it helped to read on. Not of a heading, nor
 * where the place itself was said elsewhere.
 */
const droppedIn = ({ text, items, out, dangerous }: LeftOver): ReadonlySet<Settled> => {
  const told = stretches([...out.facts.flatMap(spansOf), ...dangerous]);
  const places = new Set(out.facts.map((f) => f.where.v));
  const dropped = new Set<Settled>();
  let clause: Settled[] = [];
  let from = 0;
  const close = (to: number): void => {
    if (text[to] !== ':' && !told(from, to)) for (const i of clause) dropped.add(i);
    clause = [];
  };
  for (const i of items) {
    if (i.k === 'sep') {
      close(i.span[0]);
      from = i.span[1];
    } else if (i.k === 'num') clause.push(i);
    else if (i.k === 'place' && i.p.part !== undefined && i.p.part !== 'coach' && !places.has(makePlace(i.p)))
      clause.push(i);
  }
  close(text.length);
  return dropped;
};

const idle: ReadonlySet<Settled['k']> = new Set(['filler', 'prep', 'sep', 'join', 'neg', 'wheel']);

export const leftOver = (l: LeftOver): Settled[] => {
  const { items, used, out, covered, head } = l;
  const dropped = droppedIn(l);
  const tested = out.facts.some((f) => f.is === 'reading' && f.what.v === 'load test');
  const inside = (spans: readonly Span[]): ((s: Span) => boolean) => {
    const at = stretches(spans);
    return ([from, to]) => {
      const hit = at(from, to);
      return hit !== undefined && from >= hit[0] && to <= hit[1];
    };
  };
  const inDanger = inside(out.hazards.flatMap((h) => h.spans));
  const isCovered = inside(covered);
  const isAsked = inside(out.ambiguous.flatMap((a) => a.spans));
  return items.filter(
    (i) =>
      !idle.has(i.k) &&
      (!used.has(i) || dropped.has(i)) &&
      !(i.k === 'measure' && i.v === 'load test' && tested) &&
      !(i.k === 'unit' && i.span[0] < head) &&
      !inDanger(i.span) &&
      !isCovered(i.span) &&
      !isAsked(i.span),
  );
};
