/** The same figure before the work and after it, with the limit it is held to. Pure. */
import { takePlace } from '../../intents/place.ts';
import { rangeText, withItsUnit } from '../core/range-text.ts';
import type { Finding, Shown } from '../findings/finding.ts';
import type { Entry } from '../session/entry.ts';
import type { Folded } from '../session/fold.ts';
import { stillRests } from '../session/rests.ts';
import { plainPlace } from './plain-parts.ts';
import type { Compared } from './shapes.ts';

/** Every finding with a figure that still rests on facts in force, in the order it was found; `at`: of its note. */
export const standingFindings = (
  entries: readonly Entry[],
  standing: Folded,
): { finding: Finding; seq: number; at: number }[] => {
  const rests = stillRests(standing);
  const notes = new Map(entries.flatMap((e) => (e.is === 'note' ? [[e.id, e] as const] : [])));
  return entries.flatMap((e) => {
    const note = e.is === 'reply' ? notes.get(e.to) : undefined;
    if (e.is !== 'reply' || !note || standing.voided.has(e.to)) return [];
    return e.blocks.flatMap((b) =>
      b.is === 'findings' ? b.list.filter(rests).map((finding) => ({ finding, seq: note.seq, at: note.at })) : [],
    );
  });
};

/** What is derived from the same figures again, or tells of the night only: no row of its own beside them. */
const notCompared = new Set(['stood', 'attitude']);
const titles: Readonly<Record<string, string>> = {
  'tank fall shut': 'fall of the air tank, panel shut',
  'tank fall': 'fall of the air tank',
};

/** "left rear height", "air tank pressure": what and where of a finding's key. */
export const keyTitle = (key: string): string => {
  const [what = '', where = ''] = key.split('@');
  if (titles[what] !== undefined) return titles[what];
  const place = takePlace(where)?.part === undefined ? where : plainPlace(where);
  return what === 'side to side' ? `${place}, side to side` : `${place} ${what}`.trim();
};

export const limitWords = (limit: Finding['limit']): string =>
  rangeText(limit?.low ? withItsUnit(limit.low) : null, limit?.high ? withItsUnit(limit.high) : null);

type Figured = { finding: Finding & { amount: Shown }; seq: number; at: number };
/** The reading itself stands on the strip, where the finding's own figure is how far it is off. */
const figure = ({ finding }: Figured): { text: string; si: number; pm: number } => {
  const pin = finding.drawing?.is === 'strip' ? finding.drawing.pins : [];
  if (pin.length === 1 && pin[0])
    return { text: withItsUnit({ text: pin[0].label, unit: finding.amount.unit }), si: pin[0].si, pm: pin[0].pm };
  return { text: withItsUnit(finding.amount), si: finding.amount.si, pm: finding.amount.pm };
};
const point = (f: Figured): NonNullable<Compared['before']> => ({ ...figure(f), at: f.at, verdict: f.finding.verdict });

/** `first`, `last`: seq of the first and the last note with a repair; Infinity where none was done. */
export const comparedOf = (
  found: readonly { finding: Finding; seq: number; at: number }[],
  first: number,
  last: number,
): Compared[] => {
  const byKey = new Map<string, Figured[]>();
  for (const f of found)
    if (f.finding.amount) byKey.set(f.finding.key, [...(byKey.get(f.finding.key) ?? []), f as Figured]);
  return [...byKey].flatMap(([key, list]): Compared[] => {
    const before = list.findLast((f) => f.seq < first);
    const after = list.findLast((f) => f.seq >= last && f.seq > first);
    const newest = after ?? before;
    if (!newest || (!after && first !== Infinity) || (!before && !after)) return [];
    const { limit, amount } = newest.finding;
    if (!limit || notCompared.has(key.split('@')[0] ?? '')) return [];
    const pins = [
      ...(before ? [{ ...figure(before), label: 'before' }] : []),
      ...(after ? [{ ...figure(after), label: 'after' }] : []),
    ].map(({ si, pm, label }) => ({ si, pm, label }));
    const strip = newest.finding.drawing?.is === 'strip' ? newest.finding.drawing : null;
    return [
      {
        key,
        title: keyTitle(key),
        unit: amount.unit,
        before: before ? point(before) : null,
        after: after ? point(after) : null,
        limit: limitWords(limit),
        source: limit.source.words,
        drawing: strip ? { ...strip, pins: first === Infinity ? [{ ...pins[0]!, label: 'found' }] : pins } : null,
      },
    ];
  });
};

/** Off before or after comes first; then what was read twice. */
export const worthShowing = (rows: readonly Compared[], most: number): Compared[] => {
  const off = (c: Compared): boolean => [c.before, c.after].some((p) => p?.verdict === 'low' || p?.verdict === 'high');
  const rank = (c: Compared): number => (off(c) ? 0 : 2) + (c.before && c.after ? 0 : 1);
  return rows
    .map((c, i) => ({ c, i }))
    .toSorted((a, b) => rank(a.c) - rank(b.c) || a.i - b.i)
    .slice(0, most)
    .map(({ c }) => c);
};
