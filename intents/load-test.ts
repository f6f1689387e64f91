/** A battery under a tester's load: its volts then are of the load test, whatever stands between them and the word. */
import type { Fact, Reading, ReadingFact } from './shapes.ts';

/** Amperes: no pump of a coach pulls so much, a load tester does. */
const testersLoad = 125;
/** Amperes that a load tester can pull. Common practice, no source. */
const most = 1500;
/** Volts: a 12 V battery loses less on any leg, so so many "dropped to" are what was left. */
const left = 5;

const named = /\b(?:load[ -]?test(?:s|ed|er|ing)?|carbon pile)\b/i;

const current = (f: Fact): f is ReadingFact =>
  f.is === 'reading' && f.what.v === 'current' && f.where.v === 'battery' && f.amount.v.si >= testersLoad;

/** "battery 9.2 volts under load test", "battery 9.4 V after 15 s at 425 amps". */
export const loadTest = (out: Reading, text: string): void => {
  if (!named.test(text) && !out.facts.some(current)) return;
  // "load tested 9.4 at 200 amps": pulled by the tester, whatever the motor does
  if (named.test(text) && out.facts.some((f) => f.is === 'reading' && f.where.v === 'battery'))
    for (const f of out.facts)
      if (f.is === 'reading' && f.what.v === 'current' && f.where.from !== 'said' && f.amount.v.si >= testersLoad)
        f.where = { v: 'battery', from: 'assumed', spans: [] };
  // "batt was 11.4, now 12.7, load test pass 10.2": only what stands behind the word, where it stands last
  const word = named.exec(text);
  const behind = (f: Fact): boolean => f.is === 'reading' && (f.amount.spans[0]?.[0] ?? 0) > (word?.index ?? 0);
  const own =
    word !== null &&
    out.facts.filter((f) => f.is === 'reading' && f.where.v === 'battery').length > 1 &&
    out.facts.some((f) => f.is === 'reading' && f.where.v === 'battery' && f.what.v !== 'current' && behind(f));
  for (const f of out.facts) {
    if (own && !behind(f)) continue;
    // "load test good", "charge and load test the battery": nothing else is tested so
    if (
      f.where.from !== 'said' &&
      ((f.is === 'sign' && (f.what.v === 'ok' || f.what.v === 'not working')) ||
        (f.is === 'work' && f.what.v === 'pumped up'))
    )
      f.where = { v: 'battery', from: 'assumed', spans: [] };
    if (f.is !== 'reading' || f.where.v !== 'battery') continue;
    if (current(f) && f.amount.v.si <= most) delete f.held;
    // "pass 10.2 @ 300": volts, then the amperes it was done at
    if (
      (f.what.v === 'voltage' || f.what.v === 'load test') &&
      f.amount.v.si >= testersLoad &&
      /@ ?$/.test(text.slice(0, f.amount.spans[0]?.[0] ?? 0))
    ) {
      f.what = { ...f.what, v: 'current', from: 'assumed' };
      f.amount = { ...f.amount, from: 'assumed', v: { ...f.amount.v, unit: 'A' } };
      delete f.held;
      continue;
    }
    if (f.what.v === 'voltage' || (f.what.v === 'voltage drop' && f.amount.v.si > left))
      f.what = { ...f.what, v: 'load test', from: 'carried' };
  }
};
