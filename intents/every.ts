/** Figures of one measure listed under what is said once: "tank every 10 min: 118 115 112", "psi 9:00 112, 9:10 110". */
import { dimension, oneOfUnit, type Amounting } from './amount-item.ts';
import { toSi } from '../server/core/units.ts';
import type { Settled } from './settled.ts';

const isBare = (it: Settled): it is Amounting =>
  it.k === 'num' && it.clock === undefined && it.elapsed === undefined && it.unit === null;
const isFigure = (it: Settled): it is Amounting =>
  it.k === 'num' &&
  it.clock === undefined &&
  it.elapsed === undefined &&
  (it.unit === null || dimension(it) === 'pressure');

/** "every 10 min" before or behind three figures or more with nothing between: each so much after the one before it. */
export const everyStep = (items: readonly Settled[]): Settled[] => {
  const at = items.findIndex((it) => it.k === 'filler' && /^(?:every|each)$/.test(it.phrase));
  const said = items[at + 1];
  // "every hour": one of it
  const step: Settled | undefined = said?.k === 'unit' ? oneOfUnit(said) : said;
  if (step?.k !== 'num' || dimension(step) !== 'duration') return [...items];
  const idle = (it: Settled | undefined): boolean => it?.k === 'sep' && !it.hard;
  const run = (from: number, by: 1 | -1): number[] => {
    const found: number[] = [];
    for (let i = from; i >= 0 && i < items.length; i += by) {
      const it = items[i]!;
      if (isFigure(it)) found.push(i);
      else if (!idle(it)) break;
    }
    return found;
  };
  const after = run(at + 2, 1);
  const rows = after.length >= 3 ? after : run(at - 1, -1).toReversed();
  if (rows.length < 3) return [...items];
  const [first = 0, ...later] = rows;
  const elapsed = toSi(step.value, step.unit!);
  return items.flatMap((it, i): Settled[] => {
    // the colon after it ends no clause
    if (i === at || i === at + 1 || (i > at && i < first && idle(it))) return [];
    return later.includes(i) ? [{ ...step, elapsed }, it] : [it];
  });
};

/** A unit that heads a list of bare figures is the unit of each. */
export const headUnit = (items: readonly Settled[]): Settled[] => {
  const at = items.findIndex((it) => it.k === 'unit');
  const head = items[at];
  const led = items.slice(0, Math.max(at, 0));
  if (head?.k !== 'unit' || !led.every((it) => it.k === 'sep' || (it.k === 'filler' && it.phrase === 'time')))
    return [...items];
  const rest = items.slice(at + 1);
  if (rest.filter(isBare).length < 2 || !rest.every((it) => it.k === 'num' || it.k === 'sep')) return [...items];
  return rest.map((it) => (isBare(it) ? { ...it, unit: head.v } : it));
};
