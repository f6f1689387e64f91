/** Times of day in words. */
import { type Num, digits, mark, wordValue, skip } from './number-tokens.ts';
import type { Token } from './scan.ts';
import { unitNext, belowHundred } from './spoken-number.ts';
import { clockLeads } from './words/units.ts';

/** "half past nine", "quarter to ten", "half seven", "ten past nine", "nine o'clock": minutes since midnight. */
export const spokenClock = (tokens: readonly Token[], start: number): Num | null => {
  const t = tokens[start];
  if (!t || (t.kind !== 'word' && t.kind !== 'digits')) return null;
  const hourAt = (i: number): { value: number; next: number } | null => {
    const d = tokens[i];
    const value = digits(d) ? Number(d.low) : wordValue(d);
    if (value === undefined || value < 1 || value > 12) return null;
    const after = tokens[i + 1];
    return mark(after, '.') || mark(after, '/') || mark(after, ':') || unitNext(tokens, i + 1)
      ? null
      : { value, next: i + 1 };
  };
  const clock = (minutes: number, next: number): Num => ({
    value: (minutes + 720 * 2) % 720,
    step: 1,
    next,
    kind: 'clock',
    signed: false,
  });
  const hour = hourAt(start);
  if (hour && partOfDay(tokens, start, hour.next)) return clock(hour.value * 60, hour.next);
  const lead =
    t.low === 'half'
      ? 30
      : t.low === 'quarter'
        ? 15
        : t.kind === 'digits'
          ? Number(t.low)
          : belowHundred(tokens, start)?.value;
  if (lead === undefined || lead > 59) return null;
  const after = skip(
    tokens,
    t.kind === 'digits' || t.low === 'half' || t.low === 'quarter'
      ? start + 1
      : (belowHundred(tokens, start)?.next ?? start + 1),
  );
  const low = tokens[after]?.low;
  if (low === 'oclock' && lead >= 1 && lead <= 12) return clock(lead * 60, after + 1);
  if (
    low === 'past' ||
    (low === 'to' &&
      (t.low === 'quarter' ||
        (lead % 5 === 0 && t.kind === 'word' && lead < 30 && (leads(tokens, start) || startsNote(tokens, start)))))
  ) {
    const hour = hourAt(skip(tokens, after + 1));
    if (hour) return clock(hour.value * 60 + (low === 'past' ? lead : -lead), hour.next);
  }
  if (t.low === 'half' && after === start + 2) {
    const hour = hourAt(after);
    if (hour && (leads(tokens, start) || (startsNote(tokens, start) && tokens[hour.next]?.kind === 'space')))
      return clock(hour.value * 60 + 30, hour.next);
  }
  return null;
};

const wordsAround = (tokens: readonly Token[], from: number, step: 1 | -1): string[] => {
  const out: string[] = [];
  for (let i = from; i >= 0 && i < tokens.length && out.length < 3; i += step) {
    const t = tokens[i]!;
    if (t.kind === 'word') out.push(t.low);
    else if (t.kind !== 'space') break;
  }
  return out;
};

/** "last night at ten", "at seven this morning": an hour, where the part of the day is said with it. */
const partOfDay = (tokens: readonly Token[], at: number, next: number): boolean => {
  const [lead, ...before] = wordsAround(tokens, at - 1, -1);
  if (lead !== 'at' && lead !== 'around' && lead !== 'about') return false;
  return (
    /^(?:night last|morning this|evening (?:this|last)|yesterday|morning yesterday|evening yesterday|tonight)\b/.test(
      before.join(' '),
    ) ||
    /^(?:this (?:morning|evening|afternoon)|last (?:night|evening)|tonight|yesterday|in the (?:morning|evening|afternoon)|at night)\b/.test(
      wordsAround(tokens, next, 1).join(' '),
    )
  );
};

/** At the head of a note or after a comma: "half 7 tank 8.1", ", ten to 8 7.6 bar". */
const startsNote = (tokens: readonly Token[], i: number): boolean => {
  const before = tokens[i - 1]?.kind === 'space' ? tokens[i - 2] : tokens[i - 1];
  return (
    before === undefined || before.kind === 'line' || before.low === ',' || before.low === ';' || before.low === '.'
  );
};

const leads = (tokens: readonly Token[], i: number): boolean => {
  const before = tokens[i - 2];
  return before?.kind === 'word' && clockLeads.has(before.low);
};
