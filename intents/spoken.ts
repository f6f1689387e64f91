/** What is said at one place: a time, a fraction or a number. */
import { type Num, space, wordValue, skip } from './number-tokens.ts';
import type { Token } from './scan.ts';
import { spokenClock } from './spoken-clock.ts';
import { spokenFraction, unitNext, spokenWhole, counted } from './spoken-number.ts';
import { articleUnits, voltWords } from './words/units.ts';

export const spoken = (tokens: readonly Token[], start: number): Num | null => {
  const clock = spokenClock(tokens, start);
  if (clock) return clock;
  const alone = spokenFraction(tokens, start);
  if (alone) return { ...alone, kind: 'fraction', signed: false };
  if (tokens[start]!.low === 'oh' || tokens[start]!.low === 'o') return null;
  // "point eight"
  const tenths = tokens[start]!.low === 'point' ? wordValue(tokens[skip(tokens, start + 1)]) : undefined;
  if (tenths !== undefined && tenths > 0 && tenths < 100)
    return {
      value: Number(`0.${tenths}`),
      step: 10 ** -String(tenths).length,
      next: skip(tokens, start + 1) + 1,
      kind: 'decimal',
      signed: false,
    };
  // "an hour", "a cup"
  const one = tokens[start]!.low === 'a' || tokens[start]!.low === 'an';
  if (one && space(tokens[start + 1]) && articleUnits.has(tokens[start + 2]?.low ?? ''))
    return { value: 1, step: 1, next: start + 1, kind: 'words', signed: false };
  const whole = spokenWhole(tokens, start);
  if (!whole || whole.value > 99_999_999) return null;
  const total = whole.value;
  let next = whole.next;
  const i = skip(tokens, next);
  if (tokens[i]?.low === 'point' && wordValue(tokens[skip(tokens, i + 1)]) !== undefined) {
    let decimals = '';
    let j = skip(tokens, i + 1);
    for (let w = wordValue(tokens[j]); w !== undefined && w < 100; w = wordValue(tokens[j])) {
      decimals += String(w);
      next = j + 1;
      j = skip(tokens, j + 1);
    }
    return {
      value: Number(`${total}.${decimals}`),
      step: 10 ** -decimals.length,
      next,
      kind: 'decimal',
      signed: false,
    };
  }
  // "battery twelve six": volts and tenths
  const tenth = wordValue(tokens[i]);
  const beyond = skip(tokens, i + 1);
  if (
    whole.next === start + 1 &&
    total >= 10 &&
    total < 15 &&
    tenth !== undefined &&
    tenth < 10 &&
    wordValue(tokens[beyond]) === undefined &&
    spokenFraction(tokens, i) === null &&
    (!unitNext(tokens, i + 1) || /^v/.test(tokens[beyond]?.low ?? '')) &&
    tokens.slice(Math.max(0, start - 16), beyond + 10).some((t) => t.kind === 'word' && voltWords.has(t.low))
  )
    return { value: Number(`${total}.${tenth}`), step: 0.1, next: i + 1, kind: 'decimal', signed: false };
  const and = tokens[i]?.low === 'and' ? skip(tokens, i + 1) : i;
  const part = spokenFraction(tokens, and);
  // "at ten oh five and half an hour later": another time
  const another = and > i && /^an?$/.test(tokens[skip(tokens, part?.next ?? and)]?.low ?? '');
  if (part && part.value < 1 && !another)
    return { value: total + part.value, step: part.step, next: part.next, kind: 'fraction', signed: false };
  // "one of the valves", "a bigger one", "the last two": a count of things, no amount
  const low = tokens[start]!.low;
  if (next === start + 1 && (low === 'one' || counted(tokens, start)) && !unitNext(tokens, next)) return null;
  return { value: total, step: 1, next, kind: 'words', signed: false, ...(whole.run ? { run: true } : {}) };
};
