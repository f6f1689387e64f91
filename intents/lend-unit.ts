/** "left 340 right 352 mm", "cut in 6.1 cut out 8.0 bar": a unit said once, after the last of two figures alike. Pure. */
import type { Amounting } from './amount-item.ts';
import type { Settled } from './settled.ts';

const between = new Set(['place', 'measure', 'filler', 'prep', 'sep', 'join']);

/** How unlike two figures of one measure may be: beyond it each has a unit of its own. */
const alike = (a: number, b: number): boolean => a > 0 && b > 0 && Math.max(a, b) / Math.min(a, b) < 1.6;

/** What a figure is of: the measure named with it, else the kind of part, else a corner or a side. */
const kindOf = (items: readonly Settled[]): string | null => {
  const measure = items.find((it) => it.k === 'measure');
  if (measure?.k === 'measure') return /^cut-(?:in|out)$/.test(measure.v) ? 'switch' : measure.v;
  const place = items.find((it) => it.k === 'place');
  return place?.k === 'place' ? (place.p.part ?? (place.p.side || place.p.end ? 'corner' : null)) : null;
};

type Figure = { n: Amounting; kind: string | null };

/** Gives such figures the unit they share. */
export const lendUnit = (all: readonly Settled[]): void => {
  let before = null as Figure | null;
  let since: Settled[] = [];
  for (const it of all) {
    if (it.k === 'num') {
      const kind = kindOf(since);
      const first = before;
      if (
        first &&
        it.unit !== null &&
        first.n.unit === null &&
        first.n.clock === undefined &&
        it.clock === undefined &&
        alike(first.n.value, it.value) &&
        kind !== null &&
        (first.kind === kind ||
          (kind === 'corner' && first.kind === 'height') ||
          (first.kind !== null && kind === 'corner'))
      )
        first.n.unit = it.unit;
      before = { n: it, kind };
      since = [];
    } else if (!between.has(it.k) || (it.k === 'sep' && it.hard)) {
      before = null;
      since = [];
    } else since.push(it);
  }
};
