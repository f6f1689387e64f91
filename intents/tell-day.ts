/** A clock time whose day was not said and that lies ahead: what it was taken for, in words, with the taps that mend it. */
import type { Fact } from './shapes.ts';
import type { Key } from './taken.ts';

/** Leads the note that a tap writes in the place of the one just sent. */
export const instead = 'scratch that, ';

/** What was taken for granted of its day or its clock, in words; empty where nothing was. */
export const whenTaken = ({ when }: Fact): string =>
  when?.guess ? ", taken as yesterday's" : when?.fast ? `, that clock taken as ${when.fast} min fast` : '';

/** An hour before one in the afternoon may have been one of the evening. */
const evening = (clock: number): string =>
  `${Math.floor(clock / 60) + 12}:${String(clock % 60).padStart(2, '0')} yesterday`;

/**
 * One tap says the other day, for all times of the note that were taken the same way: the note once more. A clock that
 * was fast in the notes before may be right again; one that shows a time still to come is not.
 */
export const dayMends = (fact: Fact, facts: readonly Fact[], text: string, now: number): Key[] => {
  const words = whenTaken(fact);
  if (words === '') return [];
  const alike = facts.filter((f) => whenTaken(f) === words);
  const key = (label: string, by: (said: string, clock: number) => string): Key => {
    let out = text;
    let last = text.length;
    for (const { when } of alike.toReversed()) {
      const [from, to] = when!.spans[0]!;
      // one time may be of several readings
      if (to > last) continue;
      last = from;
      out = out.slice(0, from) + by(out.slice(from, to), when!.clock!) + out.slice(to);
    }
    return { label, text: instead + out.replaceAll(' at now', ' now') };
  };
  const { guess, clock = 0 } = fact.when!;
  if (!guess)
    return alike.some((f) => f.at > now - 60_000)
      ? [key('yesterday', (said) => `${said} yesterday`)]
      : [key('clock is right', (said) => `${said} today`)];
  const lately = key('now', () => 'now');
  return clock < 720 && clock >= 60 ? [key(evening(clock), (_, c) => evening(c)), lately] : [lately];
};
