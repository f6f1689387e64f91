/** What a number in a clause is: a time, a switch point, two ends of a change, a difference, or plainly a reading. */
import { dimension, type Amounting } from './items.ts';
import { nextReal, placesNear } from './near.ts';
import { readFellTo, readFromEmpty, readFromTo, readOff } from './read-change.ts';
import { readPlain } from './read-plain.ts';
import { clockOf, hourAfter, leadsAsClock, readDuration, setClock } from './read-time.ts';
import { pressureUnit } from './dims.ts';
import type { Measure } from './shapes.ts';
import {
  amountOf,
  assumed,
  phraseOf,
  push,
  said,
  unreadable,
  use,
  whereOf,
  wordOf,
  type Clause,
  type Draft,
  type Walk,
} from './walk.ts';

const resting = /^(?:rests?|rested|resting|idle|idles|quiet|sits|stops|stopped|waits)$/;

const switchPoint = (w: Walk, c: Clause, n: Amounting, index: number, what: Measure, by: number): number => {
  const unit = n.unit === 'lb' || n.unit === null ? pressureUnit(w.context, n, w.lastUnit) : n.unit;
  push(
    w,
    {
      is: 'reading',
      where: whereOf(assumed({ part: 'pressure switch' })),
      word: wordOf(w),
      what: said(what, c.items[by]!),
      amount: said(amountOf(n, unit), n),
    } as Draft,
    null,
    n,
  );
  use(w, c.items[by]);
  for (const it of c.items.slice(0, index))
    if (it.k === 'place' && ['pump', 'pressure switch', 'tank', 'gauge'].includes(it.p.part ?? '')) use(w, it);
  return index + 1;
};

/** "on 88 off 117", "starts at 95 and stops at 117", "back in at 6.9": the switch's points; null when it is none. */
const readSwitch = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  const d = dimension(n);
  if ((d !== null && d !== 'pressure' && n.unit !== 'lb') || c.measure?.v === 'current') return null;
  const wordAt = (j: number): string => {
    const it = c.items[j];
    return it?.k === 'unknown' ? it.low : phraseOf(it);
  };
  const back = (k: number): string => wordAt(index - k);
  const at = back(1) === 'at' || back(1) === 'around' || back(1) === 'about' ? 1 : 0;
  const phrase = wordAt(index - 1 - at);
  const place = placesNear(w, c, index);
  const switchy = place === null ? true : ['pump', 'pressure switch', 'tank', 'gauge'].includes(place.part ?? '');
  if (!switchy || (n.value < 1 && n.unit === null)) return null;
  const firstWord = c.items.findIndex((it) => /^(?:on|off)$/.test(phraseOf(it)));
  const firstNumber = c.items.findIndex((it) => it.k === 'num' && it.clock === undefined);
  const after = phraseOf(c.items[index + 1]);
  // "95 on 120 off"
  if (
    firstNumber >= 0 &&
    firstNumber < firstWord &&
    (after === 'on' || after === 'off') &&
    ['on', 'off'].every((word) => w.all.some((it) => phraseOf(it) === word))
  )
    return switchPoint(w, c, n, index, after === 'on' ? 'cut-in' : 'cut-out', index + 1) + 1;
  // "cuts in 5.6 bar, out 7.1 bar"
  if (
    at === 0 &&
    index <= 2 &&
    ((phrase === 'out' && w.lastMeasure === 'cut-in') || (phrase === 'in' && w.lastMeasure === 'cut-out'))
  )
    return switchPoint(w, c, n, index, phrase === 'out' ? 'cut-out' : 'cut-in', index - 1);
  if (at === 0 && (phrase === 'on' || phrase === 'off')) {
    const both = ['on', 'off'].every((word) => w.all.some((it) => phraseOf(it) === word));
    const follows = w.lastMeasure === 'cut-in' || w.lastMeasure === 'cut-out';
    if (both || follows) return switchPoint(w, c, n, index, phrase === 'on' ? 'cut-in' : 'cut-out', index - 1);
    return null;
  }
  if (at === 1 && (phrase === 'on' || phrase === 'in')) {
    const pumpish =
      place?.part === 'pump' ||
      place?.part === 'pressure switch' ||
      w.lastMeasure === 'cut-out' ||
      w.lastMeasure === 'cut-in' ||
      w.subject?.p.part === 'pump';
    return pumpish ? switchPoint(w, c, n, index, 'cut-in', index - 2) : null;
  }
  if (at === 1 && (phrase === 'off' || phrase === 'out')) {
    const pumpish =
      place?.part === 'pump' ||
      place?.part === 'pressure switch' ||
      w.lastMeasure === 'cut-in' ||
      w.lastMeasure === 'cut-out' ||
      w.subject?.p.part === 'pump';
    return pumpish ? switchPoint(w, c, n, index, 'cut-out', index - 2) : null;
  }
  const start = /^(?:start|starts|started|starts up|comes on|fires up|kicks on)$/.test(phrase);
  const stop = /^(?:stop|stops|stopped|quits|quit|shuts down|shut down|dies|rests)$/.test(phrase);
  const pumped = place?.part !== 'tank' || w.lastMeasure === 'cut-in' || w.lastMeasure === 'cut-out';
  if (at === 1 && pumped && (start || stop))
    return switchPoint(w, c, n, index, start ? 'cut-in' : 'cut-out', index - 2);
  const started = c.items.slice(0, index).findLastIndex((it) => /^(?:start|starts|started)$/.test(phraseOf(it)));
  if (at === 1 && started >= 0 && c.items.slice(started, index).some((it) => it.k === 'place' && it.p.part === 'pump'))
    return switchPoint(w, c, n, index, 'cut-in', started);
  return null;
};

/** Reads the number at `index`; the index after what it took. */
export const readNumber = (w: Walk, c: Clause, n: Amounting, index: number): number => {
  if (w.used.has(n)) return index + 1;
  // "the 6 am run": which, not when
  if (
    n.clock !== undefined &&
    /^ (?:run|shift|service|departure|trip|slot)\b/i.test(w.text.slice(n.span[1], n.span[1] + 12))
  ) {
    use(w, n);
    return index + 1;
  }
  if (n.clock !== undefined) {
    setClock(w, c, n, n.clock);
    return index + 1;
  }
  // "runs 6 min then off 10": the same unit of time
  const rest = phraseOf(c.items[index - 1]);
  if (
    n.unit === null &&
    (rest === 'off' || rest === 'on' || resting.test(rest)) &&
    w.lastUnit &&
    ['run time', 'on time', 'off time'].includes(w.lastMeasure ?? '')
  )
    n.unit = w.lastUnit;
  if (dimension(n) === 'duration') return readFromEmptyLater(w, c, index) ?? readDuration(w, c, n, index);
  const before = phraseOf(c.items[index - 1]);
  // ordinals: "No 2", "pos 3"
  if (
    before === 'no' &&
    n.whole &&
    n.value < 20 &&
    n.unit === null &&
    /\bno\.?\s*\d/i.test(w.text.slice(c.items[index - 1]!.span[0], n.span[1]))
  ) {
    use(w, n, c.items[index - 1]);
    unreadable(w, n);
    return index + 1;
  }
  if (before === 'at' && n.unit === null && /^[012]\d{3}$/.test(n.text) && clockOf(n) !== null && n.value < 2400) {
    setClock(w, c, n, clockOf(n)!);
    return index + 1;
  }
  const lead = c.items[index - 1];
  // "2000 coach level. 2300 leaning right": the watchman's hours
  const heads = c.items.slice(0, index).every((it) => it.k === 'filler');
  const said = c.items[nextReal(c, index)];
  if (
    heads &&
    n.unit === null &&
    /^[012]\d{3}$/.test(n.text) &&
    clockOf(n) !== null &&
    (said?.k === 'place' || said?.k === 'sign' || said?.k === 'cond') &&
    !c.items.some((it) => it.k === 'num' && it !== n)
  ) {
    setClock(w, c, n, clockOf(n)!);
    return index + 1;
  }
  if ((before === 'within' || (lead?.k === 'unknown' && lead.low === 'within')) && n.value < 1) return index + 1;
  if (hourAfter(w, c, n, index)) return index + 1;
  if (n.unit === null && /^0\d{3}$/.test(n.text) && n.value < 2400 && n.value % 100 < 60) {
    setClock(w, c, n, Math.floor(n.value / 100) * 60 + (n.value % 100));
    return index + 1;
  }
  if (leadsAsClock(c, n, index)) {
    setClock(w, c, n, clockOf(n) ?? 0);
    return index + 1;
  }
  return (
    readSwitch(w, c, n, index) ??
    readFromEmpty(w, c, n, index) ??
    readFellTo(w, c, n, index) ??
    readFromTo(w, c, n, index) ??
    readOff(w, c, n, index) ??
    readPlain(w, c, n, index)
  );
};

/** "twelve minutes from empty to a hundred": the duration waits for its pressure. */
const readFromEmptyLater = (w: Walk, c: Clause, index: number): number | null => {
  const at = c.items.findIndex(
    (it, j) => j > index && it.k === 'num' && dimension(it) !== 'duration' && it.clock === undefined,
  );
  const n = c.items[at];
  if (n?.k !== 'num' || at - index > 9) return null;
  const between = c.items.slice(index + 1, at);
  const zero = between.find((it) => it.k === 'num');
  if (zero) return null;
  return readFromEmpty(w, c, n, at) === null ? null : Math.max(index + 1, nextReal(c, index));
};
