/** Times of day written with a stop. */
import { dimension, type Amounting } from './amount-item.ts';
import type { Settled } from './settled.ts';

/** "At 8.15: 292", and columns of "7.30  8.0": hours and minutes with a stop between. */
export const dottedTimes = (raw: Settled[], text: string): void => {
  const like = (it: Settled | undefined): it is Amounting =>
    it?.k === 'num' &&
    it.unit === null &&
    it.clock === undefined &&
    /^\d{1,2}\.[0-5]\d$/.test(it.text) &&
    it.value < 24;
  const take = (n: Amounting): void => {
    n.clock = Math.floor(n.value) * 60 + Math.round((n.value % 1) * 100);
  };
  const leads = raw.filter((it, i): it is Amounting => {
    if (!like(it)) return false;
    const before = raw[i - 1];
    return (before === undefined || (before.k === 'sep' && before.hard)) && raw[i + 1]?.k === 'num';
  });
  if (leads.length >= 2) leads.forEach(take);
  raw.forEach((it, i) => {
    if (!like(it)) return;
    // "pumped up 7.9 at 16.30, 7.1 at 7.15": right behind a reading, and no other place follows
    const led = raw[i - 1];
    const read = raw[i - 2];
    const next = raw[i + 1];
    if (
      led?.k === 'prep' &&
      led.phrase === 'at' &&
      read?.k === 'num' &&
      read.clock === undefined &&
      (read.unit === null || dimension(read) === 'pressure') &&
      (next === undefined || next.k === 'sep' || next.k === 'join')
    ) {
      take(it);
      return;
    }
    const followed = raw.slice(i + 1, i + 8).some((o) => o.k === 'num' || o.k === 'place');
    if (followed && text[it.span[1]] === ':' && raw[i + 1]?.k === 'sep') take(it);
  });
};
