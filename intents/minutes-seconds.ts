/** How long something took, written as a stopwatch shows it. */
import type { Settled } from './settled.ts';
import { phraseOf } from './walk.ts';

/** "Took 3:40", "from 85 to 115 in 3:40": minutes and seconds, where a clock time makes no sense. */
export const minutesSeconds = (raw: Settled[]): void => {
  raw.forEach((it, i) => {
    if (it.k !== 'num' || it.clock === undefined) return;
    const lead = phraseOf(
      raw.slice(0, i).findLast((o) => o.k !== 'filler' || /^(?:in|took|takes|take)$/.test(o.phrase)),
    );
    const risen =
      lead === 'in' &&
      raw.slice(Math.max(0, i - 8), i).filter((o) => o.k === 'num' && o.clock === undefined).length >= 2;
    if (!/^(?:took|takes|take)$/.test(lead) && !risen) return;
    // minutes of the day and seconds of a stopwatch count alike
    it.value = it.clock;
    it.step = 1;
    it.unit = 's';
    delete it.clock;
  });
};
