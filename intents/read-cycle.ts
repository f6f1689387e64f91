/** How the pump shares its time: "on 2 min every 10", "runs 2 min out of 10", "1 min every 20". */
import type { Amounting } from './amount-item.ts';
import { dimension } from './amount-item.ts';
import { push } from './push.ts';
import { amountOf, assumed, phraseOf, said, skippable, use, type Clause, type Walk } from './walk.ts';

/** The whole cycle after the run at `index`, with the words that lead to it; null where none is said. */
const wholeAfter = (c: Clause, index: number): { whole: Amounting; at: number } | null => {
  // "1 min on every 15"
  const next = phraseOf(c.items[index + 1]) === 'on' ? index + 2 : index + 1;
  const led = phraseOf(c.items[next]);
  const start =
    led === 'every' || led === 'each' || led === 'per'
      ? next + 1
      : /^(?:out|in)$/.test(led) && /^(?:of|every|each)$/.test(phraseOf(c.items[next + 1]))
        ? next + 2
        : null;
  const at = start === null ? -1 : c.items.findIndex((it, i) => i >= start && !skippable(it));
  const whole = c.items[at];
  return whole?.k === 'num' && whole.clock === undefined && whole.about === undefined ? { whole, at } : null;
};

/** Where the pump is last spoken of before the run: what stands before that is another matter ("lr 13 pump runs 3 min"). */
const pumpAt = (c: Clause, index: number): number =>
  Math.max(
    0,
    c.items
      .slice(0, index)
      .findLastIndex(
        (it) => (it.k === 'place' && it.p.part === 'pump') || (it.k === 'cond' && it.v === 'pump running'),
      ),
  );

/** Something else than the pump goes by the clock here: "puffs 2 s every 5 min". */
const ofThePump = (c: Clause, from: number, index: number): boolean =>
  c.items
    .slice(from, index)
    .every(
      (it) =>
        skippable(it) ||
        (it.k === 'place' && it.p.part === 'pump') ||
        (it.k === 'cond' && it.v === 'pump running') ||
        (it.k === 'sign' && it.v === 'short cycles') ||
        (it.k === 'measure' && /^(?:on time|run time|cut-in)$/.test(it.v)) ||
        /^(?:runs?|running|on|comes on|cycles)$/.test(phraseOf(it)),
    );

/** Reads a run and the whole cycle it is part of; the index after both, or null. A bare whole is in the run's unit. */
export const readCycle = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  const found = wholeAfter(c, index);
  const from = pumpAt(c, index);
  if (!found || !ofThePump(c, from, index)) return null;
  const { whole, at } = found;
  const unit = whole.unit ?? n.unit!;
  if (whole.unit !== null && dimension(whole) !== 'duration') return null;
  const [run, cycle] = [amountOf(n, n.unit!), amountOf(whole, unit)];
  if (!(cycle.si > run.si)) return null;
  const lead = c.items.slice(from, index).find((it) => !skippable(it));
  const runs = lead && /run/.test(phraseOf(lead));
  const what = runs ? 'run time' : 'on time';
  push(
    w,
    { is: 'reading', what: said(what, lead ?? n), amount: said(run, n), over: said(cycle, whole) },
    assumed({ part: 'pump' }),
    n,
  );
  use(w, n, whole, ...c.items.slice(from, index));
  return at + 1;
};
