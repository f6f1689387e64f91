/** Turns "9:05", "20 min ago", "30 min later", "last night" into moments. Pure: time and zone come with the context. */
import type { Context, Fact } from './shapes.ts';

const formats = new Map<string, Intl.DateTimeFormat>();
const minute = 60_000;
const day = 86_400_000;

/** Minutes since midnight on the wall clock of `zone` at `at`. */
const wallMinutes = (at: number, zone: string): number => {
  let format = formats.get(zone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-GB', { timeZone: zone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
    formats.set(zone, format);
  }
  const [h, m] = format.format(at).split(':').map(Number);
  return (h ?? 0) * 60 + (m ?? 0);
};

/**
 * The moment a clock time was meant for: today's, or yesterday's when today's is still more than 10 minutes ahead. A
 * bare hour ("at 9") that lies ahead as morning is never taken for evening.
 */
export const clockMoment = (clock: number, context: Pick<Context, 'at' | 'zone'>, dayBack?: number): number => {
  const back = wallMinutes(context.at, context.zone) - clock;
  const onDay = context.at - (context.at % minute) - back * minute;
  const days = dayBack ?? (back < -10 ? 1 : 0);
  const moment = onDay - days * day;
  // a day on which the clocks change is an hour longer or shorter: set the wall clock right again
  const off = wallMinutes(moment, context.zone) - clock;
  return moment - (off > 720 ? off - 1440 : off < -720 ? off + 1440 : off) * minute;
};

/** Sets `at` of every fact from its own words; "later" counts from the reading before it. */
export const setMoments = (facts: Fact[], context: Context): void => {
  let before: number | null = null;
  for (const fact of facts) {
    const w = fact.when;
    if (w) {
      if (w.clock !== undefined) fact.at = clockMoment(w.clock, context, w.day);
      else if (w.ago !== undefined) fact.at = context.at - w.ago * 1000;
      else if (w.after !== undefined) {
        const base: number = before ?? context.recent.at(-1)?.facts.at(-1)?.at ?? context.at - w.after * 1000;
        fact.at = base + w.after * 1000;
      } else if (w.day !== undefined) fact.at = context.at - w.day * day;
    }
    if (fact.is === 'reading') before = fact.at;
  }
};
