/** The pump's newest cycle: how long it runs and rests, from both times or from a run in every so many minutes. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { dutyOf } from '../core/duty.ts';
import { si } from '../core/quantity.ts';
import { type Case, type Input, inputOf, latest, middle } from './case.ts';
import { typed } from './show.ts';

export type PumpCycle = {
  /** s */ readonly on: number;
  readonly off: number;
  readonly said: string;
  readonly inputs: readonly Input[];
  readonly facts: readonly ReadingFact[];
};

/** The reader takes no cycle that is shorter than its run. */
const ofWhole = (fact: ReadingFact): PumpCycle => {
  const over = fact.over!.v;
  const [on, all] = [middle(fact.amount.v), middle(over)];
  return {
    on,
    off: all - on,
    said: `${typed(fact.amount.v)} in every ${typed(over)}`,
    inputs: [inputOf('on', fact), inputOf('whole cycle', fact, over)],
    facts: [fact],
  };
};

export const pumpCycle = (c: Case): PumpCycle | null => {
  const ran = latest(c, 'run time');
  const on = latest(c, 'on time');
  const off = latest(c, 'off time') ?? latest(c, 'restart time');
  const apart = on && !on.over && off ? Math.max(on.at, off.at) : -Infinity;
  const whole = [on, ran].filter((f): f is ReadingFact => f?.over !== undefined).toSorted((a, b) => b.at - a.at)[0];
  if (whole && whole.at >= apart) return ofWhole(whole);
  if (!on || !off || on.over) return null;
  return {
    on: middle(on.amount.v),
    off: middle(off.amount.v),
    said: `${typed(on.amount.v)} on, ${typed(off.amount.v)} off`,
    inputs: [inputOf('on', on), inputOf('off', off)],
    facts: [on, off],
  };
};

/** Share of the time that it runs, 0 to 1; null where no cycle was timed. */
export const dutyIn = (c: Case): { share: number; cycle: PumpCycle } | null => {
  const cycle = pumpCycle(c);
  return cycle && { share: dutyOf(si(cycle.on), si(cycle.off)), cycle };
};
