/** Where the pressure switch cuts in and out. */
import { dimension, type Amounting } from './amount-item.ts';
import { pressureUnit } from './dims.ts';
import { placesNear } from './near.ts';
import type { Measure } from './shapes.ts';
import { amountOf, assumed, phraseOf, said, use, whereOf, type Clause, type Walk } from './walk.ts';
import { push } from './push.ts';

const switchPoint = (w: Walk, c: Clause, n: Amounting, index: number, what: Measure, by: number): number => {
  const unit = n.unit === 'lb' || n.unit === null ? pressureUnit(w.context, n, w.lastUnit) : n.unit;
  push(
    w,
    {
      is: 'reading',
      where: whereOf(assumed({ part: 'pressure switch' })),
      what: said(what, c.items[by]!),
      amount: said(amountOf(n, unit), n),
    },
    null,
    n,
  );
  use(w, c.items[by]);
  for (const it of c.items.slice(0, index))
    if (it.k === 'place' && ['pump', 'pressure switch', 'tank', 'gauge'].includes(it.p.part ?? '')) use(w, it);
  return index + 1;
};

const whenPump =
  /^ ?(?:psi|lbs?|kpa|bar|#)?,? (?:when|as|once) (?:the )?(?:pump|comp|compressor|it|she) (?:(?:comes?|came|kicks?|kicked|cuts?|goes|went|turns?|turned|shuts?|switche[sd]|drops?|dropped|clicks?|clicked) (on|in|out|off|back in)|(starts?|started|stops?|stopped|quits?))\b/i;
const numbersFirst = (c: Clause): boolean => {
  const word = c.items.findIndex((it) => /^(?:on|off)$/.test(phraseOf(it)));
  const number = c.items.findIndex((it) => it.k === 'num' && it.clock === undefined);
  return number >= 0 && number < word;
};
const bothSaid = (w: Walk): boolean =>
  [/\bstart/, /\bstop/].every((word) => w.all.some((it) => word.test(it.k === 'unknown' ? it.low : phraseOf(it))));

/** "on 88 off 117", "starts at 95 and stops at 117", "back in at 6.9": the switch's points; null when it is none. */
export const readSwitch = (w: Walk, c: Clause, n: Amounting, index: number): number | null => {
  const d = dimension(n);
  if ((d !== null && d !== 'pressure' && n.unit !== 'lb') || c.measure?.v === 'current') return null;
  const wordAt = (j: number): string => {
    const it = c.items[j];
    return it?.k === 'unknown' ? it.low : phraseOf(it);
  };
  // "adj to 95/120", "cuts 95/118": in, then out
  const slash = /^ ?\/ ?\d/.test(w.text.slice(n.span[1], n.span[1] + 4));
  const slashed = /\d ?\/ ?$/.test(w.text.slice(Math.max(0, n.span[0] - 6), n.span[0]));
  const ofSwitch =
    /^cut-/.test(w.lastMeasure ?? '') || w.subject?.p.part === 'pressure switch' || /\bcuts? \d/i.test(w.text);
  if ((slash || slashed) && n.unit === null && n.whole && n.value > 3 && ofSwitch) {
    const led = w.text.slice(Math.max(0, n.span[0] - 24), n.span[0]);
    if (slash && /\b(?:cuts?|cycles?|to|at|now) $/i.test(led)) return switchPoint(w, c, n, index, 'cut-in', index);
    if (slashed && w.lastReading?.what.v === 'cut-in' && w.facts.at(-1) === w.lastReading)
      return switchPoint(w, c, n, index, 'cut-out', index);
  }
  const back = (k: number): string => wordAt(index - k);
  const at = back(1) === 'at' || back(1) === 'around' || back(1) === 'about' ? 1 : 0;
  const phrase = wordAt(index - 1 - at);
  const place = placesNear(w, c, index);
  const switchy = place === null ? true : ['pump', 'pressure switch', 'tank', 'gauge'].includes(place.part ?? '');
  if (!switchy || (n.value < 1 && n.unit === null)) return null;
  const after = phraseOf(c.items[index + 1]);
  // "88 when the pump comes on, 118 when it went off"
  const moment = whenPump.exec(w.text.slice(n.span[1], n.span[1] + 48));
  if (c.items.some((it) => it.k === 'unknown' && /^(?:buzzer|alarm|lamp|warning|light|lt|lite)s?$/.test(it.low)))
    return null;
  if (moment && c.items[index + 1] && phraseOf(c.items[index - 1]) !== 'to') {
    const end = n.span[1] + moment[0].length;
    const what = /^(?:on|in|back in|starts?|started)$/i.test(moment[1] ?? moment[2]!) ? 'cut-in' : 'cut-out';
    for (const it of c.items) if (it.span[0] >= n.span[1] && it.span[1] <= end) use(w, it);
    switchPoint(w, c, n, index, what, index + 1);
    const next = c.items.findIndex((it) => it.span[0] >= end);
    return next < 0 ? c.items.length : next;
  }
  // "95 on 120 off"
  if (
    (after === 'on' || after === 'off') &&
    numbersFirst(c) &&
    ['on', 'off'].every((word) => w.all.some((it) => phraseOf(it) === word))
  )
    return switchPoint(w, c, n, index, after === 'on' ? 'cut-in' : 'cut-out', index + 1) + 1;
  // "cuts in 5.6 bar, out 7.1 bar"
  if (
    at === 0 &&
    (index <= 2 || w.all.filter((it) => it.k === 'num').length === 2) &&
    ((phrase === 'out' && w.lastMeasure === 'cut-in') || (phrase === 'in' && w.lastMeasure === 'cut-out'))
  )
    return switchPoint(w, c, n, index, phrase === 'out' ? 'cut-out' : 'cut-in', index - 1);
  if (at === 0 && (phrase === 'on' || phrase === 'off')) {
    const both = ['on', 'off'].every((word) => w.all.some((it) => phraseOf(it) === word));
    const follows = w.lastMeasure === 'cut-in' || w.lastMeasure === 'cut-out';
    if (both || follows) return switchPoint(w, c, n, index, phrase === 'on' ? 'cut-in' : 'cut-out', index - 1);
    return null;
  }
  // "12v in 0v out at 5 bar": of the switch's two ends
  const volts = c.items[index - 3];
  if (at === 1 && volts?.k === 'num' && volts.unit === 'V') return null;
  if (at === 1 && /^(?:on|in|off|out)$/.test(phrase)) {
    const pumpish =
      place?.part === 'pump' ||
      place?.part === 'pressure switch' ||
      w.lastMeasure === 'cut-out' ||
      w.lastMeasure === 'cut-in' ||
      w.subject?.p.part === 'pressure switch' ||
      w.subject?.p.part === 'pump';
    const what = phrase === 'on' || phrase === 'in' ? 'cut-in' : 'cut-out';
    return pumpish ? switchPoint(w, c, n, index, what, index - 2) : null;
  }
  const start = /^(?:(?:pump|comp|compressor) )?(?:start|starts|started|starts up|comes on|fires up|kicks on)$/.test(
    phrase,
  );
  const stop = /^(?:stop|stops|stopped|quits|quit|shuts down|shut down|dies|rests)$/.test(phrase);
  const pumped = place?.part !== 'tank' || w.lastMeasure === 'cut-in' || w.lastMeasure === 'cut-out';
  if ((start || stop) && pumped && (at === 1 || (place?.part !== 'tank' && bothSaid(w))))
    return switchPoint(w, c, n, index, start ? 'cut-in' : 'cut-out', index - 1 - at);
  if (at === 0) return null;
  const started = c.items
    .slice(0, index)
    .findLastIndex((it) => /^(?:(?:pump|comp|compressor) )?(?:start|starts|started)$/.test(phraseOf(it)));
  if (
    started >= 0 &&
    (/^(?:pump|comp)/.test(phraseOf(c.items[started])) ||
      c.items.slice(started, index).some((it) => it.k === 'place' && it.p.part === 'pump'))
  )
    return switchPoint(w, c, n, index, 'cut-in', started);
  return null;
};
