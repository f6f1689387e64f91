/** A clock time whose day was not said and that lies ahead: what it was taken for, in words, with the taps that mend it. */
import type { Fact } from './shapes.ts';
import type { Key } from './taken.ts';

/** Leads the note that a tap writes in the place of the one just sent. */
export const instead = 'scratch that, ';

/** Whether the day, or the clock, was taken for granted. */
export const dayTaken = (fact: Fact): boolean => fact.when?.guess !== undefined || fact.when?.fast !== undefined;

export const whenTaken = (fact: Fact): string =>
  fact.when?.guess
    ? ", taken as yesterday's"
    : fact.when?.fast === undefined
      ? ''
      : `, that clock taken as ${fact.when.fast} min fast`;

/** An hour before one in the afternoon may have been one of the evening. */
const evening = (clock: number): string =>
  `${Math.floor(clock / 60) + 12}:${String(clock % 60).padStart(2, '0')} yesterday`;

/** The note once more, with `by` for each of its times that were taken alike. */
const retyped = (
  fact: Fact,
  facts: readonly Fact[],
  text: string,
  by: (said: string, clock: number) => string,
): string => {
  const alike = facts.filter((f) => dayTaken(f) && f.when?.guess === fact.when?.guess);
  const times = new Map(alike.map((f) => [f.when!.spans[0]!, f.when!.clock!]));
  const late = [...times].toSorted(([a], [b]) => b[0] - a[0]);
  let out = text;
  for (const [[from, to], clock] of late) {
    const put = by(text.slice(from, to), clock);
    const before = put === 'now' ? out.slice(0, from).replace(/\bat\s*$/i, '') : out.slice(0, from);
    out = `${before}${put}${out.slice(to)}`;
  }
  return `${instead}${out}`;
};

/**
 * One tap says the other day: all times of the note that were taken the same way go with it. A clock that was fast in the
 * notes before may be right again; one that shows a time still to come is not.
 */
export const dayMends = (fact: Fact, facts: readonly Fact[], text: string, now: number): Key[] => {
  const { when } = fact;
  if (!when || !dayTaken(fact) || when.clock === undefined || when.spans.length === 0) return [];
  const key = (label: string, by: (said: string, clock: number) => string): Key => ({
    label,
    text: retyped(fact, facts, text, by),
  });
  if (when.fast !== undefined)
    return facts.some((f) => f.when?.fast !== undefined && f.at > now - 60_000)
      ? [key('yesterday', (said) => `${said} yesterday`)]
      : [key('clock is right', (said) => `${said} today`)];
  return when.clock < 720 && when.clock >= 60
    ? [key(evening(when.clock), (_, clock) => evening(clock)), key('now', () => 'now')]
    : [key('now', () => 'now')];
};
