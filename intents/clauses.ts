/** Cuts settled items into clauses. */
import { dimensionOf } from '../server/core/units.ts';
import { beginsAnew } from './run-on.ts';
import type { Settled } from './settled.ts';
import { skippable, type Clause } from './walk.ts';

/** Longer than anyone says in one breath: a clause is cut here, so that time grows with length and no faster. */
const longestClause = 60;

/** "cold", "hot" with nothing else said is what was felt, not when. */
const asSigns = (items: Settled[]): Settled[] => {
  if (
    items.some(
      (i) =>
        ['sign', 'work', 'cond', 'change'].includes(i.k) ||
        (i.k === 'num' && i.unit !== null && dimensionOf(i.unit) === 'pressure'),
    )
  )
    return items;
  return items.map((i): Settled => {
    const m = i.k === 'often' ? /^(?:stone |dead )?(cold|hot|warm)$/.exec(i.phrase) : null;
    return m
      ? { k: 'sign', v: m[1] as 'cold' | 'hot' | 'warm', span: i.span, phrase: (i as { phrase: string }).phrase }
      : i;
  });
};

/** How regularly a clause's things are so; "8:30 this morning" is a time and no habit. */
const oftenOf = (items: readonly Settled[]): Extract<Settled, { k: 'often' }> | null => {
  const all = items.filter((i): i is Extract<Settled, { k: 'often' }> => i.k === 'often');
  // "drops overnight": said in the word itself
  const within = items.find(
    (i): i is Extract<Settled, { k: 'sign' | 'change' }> =>
      (i.k === 'change' || (i.k === 'sign' && (i.v === 'drops' || i.v === 'sags'))) && / overnight$/.test(i.phrase),
  );
  if (within && all.length === 0) return { k: 'often', v: 'standing', span: within.span, phrase: 'overnight' };
  // "every time on restart": the circumstance says more than how often
  const often = all.find((i) => i.v !== 'always' && i.v !== 'sometimes') ?? all[0] ?? null;
  const timed = items.some(
    (i) => i.k === 'num' && (i.clock !== undefined || (i.unit === null && /^[01]\d{3}$/.test(i.text))),
  );
  // "runs 40 s each time": so each run is
  const each = often?.v === 'always' && /^(?:each|every) time$/.test(often.phrase) && items.some((i) => i.k === 'num');
  return each || (often?.phrase === 'this morning' && timed) ? null : often;
};

const placesOf = (items: readonly Settled[]): number[] => items.flatMap((item, i) => (item.k === 'place' ? [i] : []));

/** Between separators and joins. */
export const clausesOf = (all: readonly Settled[]): Clause[] => {
  const out: Clause[] = [];
  let items: Settled[] = [];
  const close = (hard: boolean, joined: boolean): void => {
    items = asSigns(items);
    if (items.length > 0)
      out.push({
        items,
        hard,
        joined,
        places: placesOf(items),
        taken: new Set(),
        often: oftenOf(items),
        measure: null,
      });
    else if (hard && out.length > 0) out[out.length - 1] = { ...out.at(-1)!, hard: true };
    items = [];
  };
  all.forEach((item, at) => {
    if (item.k === 'sep') close(item.hard, false);
    else if (item.k === 'join') {
      // "book says 95 and 120": a limit's two figures
      const limits = items.at(-2)?.k === 'spec' && items.at(-1)?.k === 'num' && all[at + 1]?.k === 'num';
      if (!limits || all[at + 2]?.k === 'unit') close(false, true);
    } else {
      if (items.length >= longestClause || beginsAnew(items, all, at)) close(false, false);
      items.push(item);
    }
  });
  close(true, false);
  return out;
};

/** "soaped the bag and the valve no bubbles": the place is the work's, the rest a clause of its own. */
export const soapedToo = (c: Clause, before: Clause | undefined): Clause[] => {
  const cut = (items: readonly Settled[], joined: boolean, hard: boolean): Clause => ({
    ...c,
    items,
    joined,
    hard,
    places: placesOf(items),
    taken: new Set(),
    often: oftenOf(items),
  });
  const at = c.items.findIndex((it) => !skippable(it));
  const neg = c.items[at + 1];
  const second = c.items.slice(at + 1).findIndex((it) => !skippable(it));
  const owned = c.items[at + 1 + second];
  const more = c.items.slice(at + 2 + second).find((it) => !skippable(it));
  // "replaced the check valve and the discharge line tank's at 115": the tank begins anew
  const anew =
    owned?.k === 'place' &&
    (more?.k === 'num' || more?.k === 'sign') &&
    before?.items.some((it) => it.k === 'work') === true;
  if (
    !before?.joined ||
    c.items[at]?.k !== 'place' ||
    !(anew || (neg?.k === 'neg' && before.items.some((it) => it.k === 'work' && it.v === 'soaped')))
  )
    return [c];
  return [cut(c.items.slice(0, at + 1), false, false), cut(c.items.slice(at + 1), c.joined, c.hard)];
};
