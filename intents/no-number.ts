/**
 * Numbers that say how much of nothing that is measured here: which bay, how many bags, how far apart two gauges are,
 * the first 3 psi of a fall. Each stays unread. One row a case under such a note; the first that fits counts.
 */
import { dimension, type Amounting } from './amount-item.ts';
import { nextReal } from './near.ts';
import type { Settled } from './settled.ts';
import { phraseOf, type Clause, type Walk } from './walk.ts';

type NumberAt = {
  readonly w: Walk;
  readonly c: Clause;
  readonly n: Amounting;
  readonly index: number;
  /** A whole number with no unit. */
  readonly bare: boolean;
  /** The text right before it, and right behind it. */
  readonly led: string;
  readonly then: string;
};

const before = (s: NumberAt): Settled | undefined => s.c.items[s.index - 1];
const after = (s: NumberAt): Settled | undefined => s.c.items[s.index + 1];
const isPressure = (n: Amounting): boolean => dimension(n) === 'pressure';
const taped = (n: Amounting): boolean => n.unit === 'in' || n.unit === 'mm' || n.unit === 'cm';
const besideGauge = (w: Walk): boolean => w.all.some((it) => it.k === 'place' && it.p.part === 'gauge');

/** What leads to the number in its clause. */
const ledIn = (s: NumberAt): string =>
  s.w.text
    .slice(Math.max(s.c.items[0]!.span[0], s.n.span[0] - 48), s.n.span[0])
    .toLowerCase()
    .replace(/['’]/g, '');

/** Before a figure that nobody read off anything. */
const wanted =
  /\b(?:want|wants|wanted|need|needed|looking for|look for|aim(?:ing)? (?:for|at)|shoot(?:ing)? for|going for|(?<!\b(?:i|we) )wait(?:ing)? (?:for|until|till)|bring|raise|take(?= (?:the )?(?:lr|rr|lf|rf|left|right|it|her|both|tank|rear|front)\b)|should come (?:on|off|up|in|out))\b(?! (?:me|up (?:the )?test))[^,.;:0-9]*$/;

const neverThere = /\b(?:never (?:got|gets|reached|reaches|made it|hit|saw)|didnt (?:get|reach|make it))\b[^,.;:0-9]*$/;

const noNumber: readonly ((s: NumberAt) => boolean)[] = [
  // "bay 3", "job 4410", "unit 214": which
  (s) => {
    const thing = before(s);
    return (
      s.bare &&
      thing?.k === 'unknown' &&
      /^(?:photo|photos|pic|picture|fig|figure|page|item|step|bay|lift|stall|job|ticket|ro|order|invoice|unit|fleet|tech|mechanic|crew|shift|bus|route|fitter)$/.test(
        thing.low,
      )
    );
  },
  (s) => /\bunit $/i.test(s.led) && s.n.whole && (s.bare || s.n.value >= 100),
  // "coach 14212 odo 188,340", "coach 4 in bay 2"
  (s) =>
    s.n.whole &&
    /^(?:coach|bus|the coach|the bus)$/.test(phraseOf(before(s))) &&
    (s.bare
      ? s.n.value >= 100
      : s.n.unit === 'in' && / ?in$/.test(s.n.text) && /^ (?:bay|the|lane|stall|line|shop|yard)\b/i.test(s.then)),
  // "part 88-1140", "pn 4471", "sn 0042": what it is called by
  (s) => s.n.unit === null && /\b(?:parts?|p\/?n|s\/?n|serial|stock|batch|lot)(?: no\.?| number)?[ :#]*$/i.test(s.led),
  // "the two gauges differ by 8 psi": how far apart
  (s) =>
    (s.n.unit === null || isPressure(s.n)) &&
    /\b(?:differ|differs|disagree|off|out|apart|different|difference) (?:by|of) (?:about |only )?$/i.test(s.led) &&
    (besideGauge(s.w) || s.w.all.some((it) => it.k === 'sign' && it.v === 'gauges disagree')),
  // "matches within 1": how nearly
  (s) => /\bwithin (?:about |a )?$/i.test(s.led) && besideGauge(s.w),
  // "drops 0.2 bar in 10 min, was 1.4": what it fell by before
  (s) =>
    s.n.unit === null &&
    s.index <= 1 &&
    /^(?:pressure|height) fall$/.test(s.w.lastReading?.what.v ?? '') &&
    /\b(?:was|from|used to be|before it was) (?:about )?$/i.test(s.led),
  // "first 3 psi quick": a part of the way
  (s) => isPressure(s.n) && /\b(?:first|last|final|next|top) (?:few |couple )?$/i.test(s.led),
  // "5 psi above cut-in": against something else
  (s) =>
    /^ (?:above|below|over|under|past|shy of|short of|off) (?:the )?(?:cut|limit|spec|max|min|bottom|top of|normal|what)/i.test(
      s.then,
    ),
  // "needs two turns on the right link": what is still to be done
  (s) => s.n.unit === 'turn' && /\b(?:needs?|wants?|takes?|give it|another) (?:about |another )?$/i.test(s.led),
  // "amps 22 now, was 38": before the repair
  (s) =>
    s.n.unit === null &&
    s.index <= 1 &&
    /, (?:it )?(?:was|were) (?:about )?$/i.test(s.led) &&
    /\bnow\b[^,;.]{0,4},[^,;.]*$/i.test(s.led),
  // "341/339 -> 335/338": of two things, before and after
  (s) =>
    s.n.unit === null &&
    /\d ?\/ ?\d{2,3} ?(?:->|=>|>|to) ?\d+ ?\/ ?\d{2,3}/.test(
      s.w.text.slice(Math.max(0, s.n.span[0] - 14), s.n.span[1] + 14),
    ),
  // "fuse 2 in panel": which of them
  (s) => {
    const thing = before(s);
    return (
      (s.bare || s.n.unit === 'in') &&
      s.n.value <= 40 &&
      thing?.k === 'place' &&
      /^(?:fuse|relay|breaker)$/.test(thing.p.part ?? '')
    );
  },
  // "replaced 30 amp": a fuse's size
  (s) =>
    s.n.unit === 'A' &&
    /\b(?:replaced|renewed|fitted|swapped|new|put in|put in a|with a|for a|with new) (?:a )?$/i.test(s.led) &&
    s.w.all.some((it) => it.k === 'place' && it.p.part === 'fuse'),
  // "1 union at n/s bag": how many
  (s) =>
    s.bare &&
    s.n.value <= 12 &&
    s.index === 0 &&
    /^ (?:unions?|fittings?|joints?|connections?|lines?|pipes?|hoses?|bolts?|nuts?|clips?|leaks?)\b/i.test(s.then) &&
    !/^ (?:\w+ ){1,3}\d/.test(s.then),
  // "with 40 pax", "next svc 209,000"
  (s) => s.n.whole && /^ (?:pax|passengers|adults|kids|seats|seater|heads)\b/i.test(s.then),
  (s) => s.n.whole && /\bnext (?:svc|service|pm|inspection|due)(?: due)?(?: at)? $/i.test(s.led),
  // "blocked at 4 points", "2 fingers lower": how many of what nobody measures by
  (s) => s.bare && /^ (?:points|places|spots|fingers|people|guys|men|others)\b/i.test(s.then),
  // "theres two bags per side", "parts: 1 height valve, 2 fittings": how many of them
  (s) => {
    const thing = after(s);
    if (!s.bare || thing?.k !== 'place' || thing.p.part === undefined) return false;
    const listed =
      s.n.value < 10 && s.index === 0 && !thing.p.side && !/^(?:tank|bellows|gauge|tyre)$/.test(thing.p.part);
    const counted =
      s.n.value <= 12 &&
      /s$/.test(thing.phrase) &&
      !s.c.places.some((i) => i < s.index) &&
      s.c.items[nextReal(s.c, s.index + 1)]?.k !== 'num';
    return listed || counted;
  },
  // "leans right about 3/4 in": how far over, which no tape of one side says
  (s) =>
    dimension(s.n) !== 'pressure' &&
    s.w.lastSign === 'leans' &&
    s.c.items.slice(0, s.index).some((it) => it.k === 'sign' && it.v === 'leans') &&
    s.n.value < 8 &&
    s.c.items.slice(0, s.index).every((it) => it.k !== 'num') &&
    s.c.items.findLastIndex((it) => it.k === 'place') < s.index &&
    s.c.places.length <= 2,
  // "1 bubbling at the tank tee": how many
  (s) => s.bare && s.n.value <= 6 && s.index === 0 && after(s)?.k === 'sign',
  // "3 inches shorter than the other": how it compares
  (s) =>
    dimension(s.n) === 'length' &&
    !s.w.all.some((it) => it.k === 'place' && it.p.part === 'shock') &&
    /^ (?:too )?(?:shorter|longer|taller|wider|thicker|narrower)\b/i.test(s.then),
  // "want lr at 13 1/2", "need 110 first", "never got to 100": not what is
  (s) =>
    s.c.measure?.v !== 'cut-out' && (wanted.test(ledIn(s)) || (s.n.about !== 'at most' && neverThere.test(ledIn(s)))),
  // "need 2 bags 1 valve": how many
  (s) =>
    s.bare &&
    s.n.value <= 12 &&
    /^ (?:new |more |height |air |check |levell?ing )?(?:valves?|bags?|links?|shocks?|dampers?|lines?|fittings?|bolts?|relays?|switch(?:es)?|dryers?|pumps?|brackets?|bush(?:es|ings?)?)\b(?! (?:at |is |reads )?\d{2})/i.test(
      s.then,
    ) &&
    /\b(?:need|needs|order|ordered|bring|get|quote|quoted|parts?|fitted|replaced|put on|used)\b/i.test(
      s.w.text.slice(0, s.n.span[0]),
    ),
  // "20 ft of 3/8 line": how long, how wide
  (s) =>
    dimension(s.n) === 'length' &&
    /^ of (?:\d\/\d+ )?(?:\w+ )?(?:lines?|hose|tub(?:e|ing)|pipe|wire|cable)\b/i.test(s.then),
  (s) =>
    s.n.unit === null &&
    s.n.value < 1 &&
    /^ (?:inch |in |nylon |air )?(?:lines?|hose|tub(?:e|ing)|pipe|fittings?|nuts?|bolts?|npt|push)\b/i.test(s.then),
  // "stops an inch short": of where it should be
  (s) => dimension(s.n) === 'length' && /^ (?:short|shy)\b(?! of)/i.test(s.then),
  // "welding 8 in from the bag": how far off
  (s) =>
    dimension(s.n) === 'length' &&
    /^ ?(?:away )?from (?:the |an? |his |my )?(?:\w+ )?(?:bags?|bellows|lines?|tank|hose|panel|valve|fitting|end|frame|clamp|wheel|drain)\b/i.test(
      s.then,
    ),
  // "shiny patch 2 inches long", "a crack 10 mm across": the size of what was found
  (s) =>
    taped(s.n) &&
    /^ (?:long|wide|across|deep|in diameter|dia|round|square)\b/i.test(s.then) &&
    (s.c.places.length === 0 || s.c.items.slice(0, s.index).some((it) => it.k === 'sign' || it.k === 'unknown')),
  // "3 in tear at the bottom": how long it is
  (s) => {
    const found = after(s);
    return taped(s.n) && s.n.value < 12 && found?.k === 'sign' && /^(?:torn|cracked|chafed|swollen)$/.test(found.v);
  },
];

/** Whether the number at `index` is none of those that are readings. */
export const isNoNumber = (w: Walk, c: Clause, n: Amounting, index: number): boolean => {
  const [from, to] = n.span;
  const led = w.text.slice(Math.max(0, from - 28), from);
  const then = w.text.slice(to, to + 34);
  const at: NumberAt = { w, c, n, index, bare: n.unit === null && n.whole, led, then };
  return noNumber.some((fits) => fits(at));
};
