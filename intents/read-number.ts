/** What a number in a clause is: a time, a switch point, two ends of a change, a difference, or plainly a reading. */
import { months } from './words/cues.ts';
import { voltParts } from './dims.ts';
import { dimension, type Amounting } from './amount-item.ts';
import { nextReal } from './near.ts';
import { readFellTo, readFromEmpty, readFromTo } from './read-from-to.ts';
import { readOff } from './read-off.ts';
import { readPlain } from './read-plain.ts';
import { readSwitch } from './read-switch.ts';
import { clockOf, hourAfter, leadsAsClock, setClock } from './read-clock.ts';
import { readCycle } from './read-cycle.ts';
import { readDuration } from './read-time.ts';
import { phraseOf, use, type Clause, type Walk } from './walk.ts';
import { unreadable } from './ask-about.ts';

const monthBefore = new RegExp(`\\b(?:${months.join('|')})[a-z]* $`, 'i');
const resting = /^(?:rests?|rested|resting|idle|idles|quiet|sits|stops|stopped|waits)$/;

/** Reads the number at `index`; the index after what it took. */
export const readNumber = (w: Walk, c: Clause, n: Amounting, index: number): number => {
  if (w.used.has(n)) return index + 1;
  // "drained august 2": a day of a month, no figure of the coach
  if (
    n.unit === null &&
    n.whole &&
    n.value <= 31 &&
    monthBefore.test(w.text.slice(Math.max(0, n.span[0] - 12), n.span[0]))
  ) {
    use(w, n);
    return index + 1;
  }
  // "half full of water": how full, no figure of a gauge
  if (
    n.unit === null &&
    /^(?:half|quarter|third|three quarters?)$/.test(n.text) &&
    /^full\b/.test(phraseOf(c.items[index + 1]))
  )
    return index + 1;
  if (n.elapsed !== undefined) {
    use(w, n);
    if (n.elapsed > 0) w.pendingWhen = { text: n.text, after: n.elapsed, spans: [n.span] };
    return index + 1;
  }
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
  if (dimension(n) === 'duration')
    return readCycle(w, c, n, index) ?? readFromEmptyLater(w, c, index) ?? readDuration(w, c, n, index);
  const before = phraseOf(c.items[index - 1]);
  // "no 12 at the motor": volts
  const wire = c.items[nextReal(c, index)];
  if (
    before === 'no' &&
    n.unit === null &&
    (n.value === 12 || n.value === 24) &&
    wire?.k === 'place' &&
    voltParts.has(wire.p.part ?? '')
  )
    n.unit = 'V';
  // ordinals: "No 2", "pos 3"
  if (
    before === 'no' &&
    (n.whole || n.value < 1) &&
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
  // "shut since 6": an hour, which one nobody said
  if (before === 'since' && n.unit === null && n.whole && n.value <= 12) return index + 1;
  // "tank 104 then 101 after 20": twenty of what was not said
  if (
    before === 'after' &&
    n.unit === null &&
    n.whole &&
    n.to === undefined &&
    c.items.slice(0, index).some((it) => it.k === 'num' && w.used.has(it))
  ) {
    unreadable(w, n);
    return index + 1;
  }
  // "90 at 905, 86 at 935": hours and minutes after a reading
  const read = c.items[index - 2];
  if (
    before === 'at' &&
    n.unit === null &&
    /^[1-9][0-5]\d$/.test(n.text) &&
    read?.k === 'num' &&
    read.clock === undefined &&
    read.value < n.value
  ) {
    setClock(w, c, n, Math.floor(n.value / 100) * 60 + (n.value % 100));
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
  // "RR tag tyre 95, rest 110": of all the others, which no fact holds
  if (n.unit === null && /^(?:rest|others)$/.test(lead?.k === 'unknown' ? lead.low : before)) {
    unreadable(w, n);
    return index + 1;
  }
  // "left bag 49 flurb 12": of something nobody knows, not of the bag a second time
  if (
    n.unit === null &&
    n.about === undefined &&
    lead?.k === 'unknown' &&
    /^(?!(?:starts?|stops?|rests?)$)[a-z]{4,}$/.test(lead.low) &&
    c.items.slice(0, index).some((it) => it.k === 'num' && it.clock === undefined && w.used.has(it))
  ) {
    unreadable(w, n);
    return index + 1;
  }
  if ((before === 'within' || (lead?.k === 'unknown' && lead.low === 'within')) && n.value < 1) return index + 1;
  // "tank volume 30 l": no measure that is kept
  if (
    /\b(?:volume|capacity|size|serial|part no|number)(?: is| of)? $/i.test(
      w.text.slice(Math.max(0, n.span[0] - 14), n.span[0]),
    )
  )
    return index + 1;
  // "took 12 min, used to be 3 or 4": of another time, shown and not taken
  if (
    /\bused to (?:be|take|run|sit at|cut (?:in|out) at|need|have|read)(?: about| around| only)?(?: \S+ (?:or|to))? $/i.test(
      w.text.slice(Math.max(0, n.span[0] - 40), n.span[0]),
    )
  )
    return index + 1;
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
