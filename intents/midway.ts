/** Corrections in the middle of a sentence. */
import { dimension } from './amount-item.ts';
import type { Settled } from './settled.ts';
import type { Span } from './shapes.ts';
import { flatten } from './smooth.ts';
import { midCorrection } from './words/amends.ts';

/** "95 no wait 98": what went before the correction gives way to what follows it. Works on settled items. */
export const midway = (items: Settled[], text: string): { items: Settled[]; covered: Span[] } => {
  const { low, at } = flatten(text);
  const covered: Span[] = [];
  let out = items;
  for (const m of low.matchAll(midCorrection)) {
    const from = at[m.index]!;
    const to = at[Math.min(m.index + m[0].trimEnd().replace(/,$/, '').length, at.length - 1)]!;
    const before = out.filter((i) => i.span[1] <= from && i.k !== 'filler' && i.k !== 'prep');
    const stop = out.find((i) => i.k === 'sep' && i.hard && i.span[0] >= to)?.span[0] ?? text.length;
    const after = out.filter(
      (i) => i.span[0] >= to && i.span[1] <= stop && i.k !== 'filler' && i.k !== 'sep' && i.k !== 'join',
    );
    const next = after[0];
    if (!next || before.length === 0) {
      // "hums, the compressor I mean": the place comes last
      if (before.length > 0 && !next) covered.push([from, to]);
      continue;
    }
    const kin = (i: Settled): boolean =>
      next.k === 'num'
        ? i.k === 'num' &&
          (i.clock === undefined) === (next.clock === undefined) &&
          (dimension(next) === null || dimension(i) === null || dimension(i) === dimension(next))
        : i.k === next.k && (next.k === 'place' || next.k === 'sign' || next.k === 'cond' || next.k === 'work');
    const old = before.findLast(kin);
    if (!old) continue;
    // "left front is 15 and right front is, hang on, 15 1/2": the new place has none yet
    if (next.k === 'num' && before.at(-1)?.k === 'place' && before.lastIndexOf(old) < before.length - 1) continue;
    covered.push([from, to], old.span);
    const drop = new Set<Settled>(
      out.filter(
        (i) =>
          (i.span[0] >= from && i.span[1] <= to) ||
          (i.k === 'sep' && i.span[0] >= old.span[1] && i.span[1] <= next.span[0]),
      ),
    );
    drop.add(old);
    // "right rear is 3/8 low i mean left rear is 3/8 low": all of it said again
    const until = out.findIndex((i) => i.span[0] >= to && (i.k === 'sep' || i.k === 'join'));
    const again = out.slice(out.indexOf(next), until < 0 ? undefined : until);
    const since = out.findLastIndex((i) => i.span[1] <= from && (i.k === 'sep' || i.k === 'join'));
    const told = out.slice(since + 1).filter((i) => i.span[1] <= from);
    const kinds = (list: readonly Settled[]): string[] =>
      list.map((i) => i.k).filter((k) => k === 'place' || k === 'num' || k === 'sign');
    if (
      next.k === 'place' &&
      kinds(told).includes('place') &&
      new Set(kinds(told)).size >= 2 &&
      [...new Set(kinds(told))].every((k) => kinds(again).includes(k))
    ) {
      covered.push(...told.map((i) => i.span));
      const gone = new Set<Settled>(told);
      out = out.filter((i) => !gone.has(i) && !(i.span[0] >= from && i.span[1] <= to));
      continue;
    }
    // the new value moves to the old one's place, so that its subject stays; its own neighbours come along
    if (next.k === 'place' && old.k === 'place') {
      const merged: Settled = {
        ...next,
        p: { ...old.p, ...Object.fromEntries(Object.entries(next.p).filter(([, v]) => v !== undefined)) },
      };
      out = out.map((i) => (i === old ? merged : i)).filter((i) => i !== next && (!drop.has(i) || i === merged));
    } else if (next.k === 'num' && old.k === 'num') {
      const moved: Settled = { ...next, unit: next.unit ?? old.unit };
      const placeBetween = out.some((i) => i.k === 'place' && i.span[0] >= to && i.span[1] <= next.span[0]);
      out = placeBetween
        ? out.filter((i) => !drop.has(i))
        : out.map((i) => (i === old ? moved : i)).filter((i) => i !== next && (!drop.has(i) || i === moved));
    } else out = out.filter((i) => !drop.has(i));
  }
  return { items: out, covered };
};
