/** Turns "9:05", "20 min ago", "30 min later", "last night" into moments. Pure: time and zone come with the context. */
import type { Context, Fact, When } from './shapes.ts';

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

/** Minutes that a clock time lies ahead of the note today, negative when it is past. */
const aheadOf = (clock: number, context: Pick<Context, 'at' | 'zone'>): number =>
  clock - wallMinutes(context.at, context.zone);

/** The moment at which the wall clock read `clock`, whole days before the note's own day. */
export const clockMoment = (clock: number, context: Pick<Context, 'at' | 'zone'>, dayBack = 0): number => {
  const onDay = context.at - (context.at % minute) + aheadOf(clock, context) * minute;
  const moment = onDay - dayBack * day;
  // a day on which the clocks change is an hour longer or shorter: set the wall clock right again
  const off = wallMinutes(moment, context.zone) - clock;
  return moment - (off > 720 ? off - 1440 : off < -720 ? off + 1440 : off) * minute;
};

/** Minutes ahead that are left as they stand: two clocks of one shop. */
const alike = 10;
/** Minutes ahead up to which the clock on the wall is taken to be fast: an hour not put back, and a quarter. A habit of ours. */
const fastMost = 75;

/** The moment of a clock time whose day was not said. `fast`: minutes that the clock it was read on is ahead. */
const undated = (w: When, clock: number, fast: number, context: Context): { at: number; when: When } => {
  const ahead = aheadOf(clock, context);
  if (ahead > Math.max(alike, fast)) return { at: clockMoment(clock, context, 1), when: { ...w, guess: 'yesterday' } };
  if (fast > 0) return { at: clockMoment(clock, context) - fast * minute, when: { ...w, fast } };
  return { at: clockMoment(clock, context), when: w };
};

/**
 * Minutes that the clock this note was read on is fast: as far as its times are ahead, up to `fastMost`, or as it was in
 * the notes before. All its times go back by that, so that what lies between them stays as read.
 */
const fastOf = (facts: readonly Fact[], context: Context): number => {
  const known = context.recent.flatMap((n) => n.facts).findLast((f) => f.when?.clock !== undefined)?.when?.fast ?? 0;
  const ahead = facts.flatMap((f) =>
    f.when?.clock === undefined || f.when.day !== undefined || f.when.today ? [] : [aheadOf(f.when.clock, context)],
  );
  return Math.max(known, ...ahead.filter((a) => a > alike && a <= fastMost));
};

/**
 * Sets `at` of every fact from its own words; "later" counts from the reading before it. A clock time that lies ahead is
 * of a clock that goes fast, or of yesterday: what was taken is noted on it, to be shown and mended.
 */
export const setMoments = (facts: Fact[], context: Context): void => {
  let before: number | null = null;
  const fast = fastOf(facts, context);
  for (const fact of facts) {
    const w = fact.when;
    if (w) {
      if (w.clock !== undefined && w.today) {
        const said = clockMoment(w.clock, context);
        // said of today and still to come: it was read by now
        fact.at = said > context.at + alike * minute ? context.at : said;
      } else if (w.clock !== undefined && w.day === undefined) Object.assign(fact, undated(w, w.clock, fast, context));
      else if (w.clock !== undefined) fact.at = clockMoment(w.clock, context, w.day);
      else if (w.ago !== undefined) fact.at = context.at - w.ago * 1000;
      else if (w.after !== undefined) {
        const base: number = before ?? context.recent.at(-1)?.facts.at(-1)?.at ?? context.at - w.after * 1000;
        fact.at = base + w.after * 1000;
      } else if (w.day !== undefined) fact.at = context.at - w.day * day;
    }
    if (fact.is === 'reading') before = fact.at;
  }
};
