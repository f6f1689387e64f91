/** Settles each item to one sense, merges neighbouring places, resolves relative sides and this coach's labels. */
import type { Amounting } from './amount-item.ts';
import { joinNeighbours } from './join-neighbours.ts';
import { only, pick } from './choose-sense.ts';
import { dottedTimes } from './dotted-times.ts';
import { beyond, idle, phraseAt } from './idle.ts';
import { inAndOut } from './in-and-out.ts';
import type { Item } from './items.ts';
import { tidy } from './merge-places.ts';
import type { PlaceItem, Settled } from './settled.ts';
import { joinSplitVerbs } from './split-verb.ts';
import type { Condition, Context, Span } from './shapes.ts';
import { sideOf, labelled, slashedCorner, rightHand, otherOne } from './side-words.ts';

const joins = new Set(['and', 'but', 'then', 'though', 'however']);

const offable: ReadonlySet<string> = new Set([
  'line',
  'bellows line',
  'supply line',
  'gauge line',
  'discharge line',
  'link',
  'fitting',
  'ground',
  'feed cable',
  'valve to panel line',
  'arm',
]);

/** What comes out of a part that was spoken of. */
const terminalOf: Readonly<Record<string, 'switch output' | 'relay output'>> = {
  'switch input': 'switch output',
  'pressure switch': 'switch output',
  relay: 'relay output',
  'relay coil': 'relay output',
};
const lastPart = (raw: readonly Settled[]): string | undefined =>
  raw.findLast((r): r is PlaceItem => r.k === 'place' && r.p.part !== undefined)?.p.part;

const pinned = /\b(?:pins?|bush(?:es|ings?)?|pry(?:ing| bar)?)\b/i;

/** A number in the rest of the clause. */
const readsNext = (items: readonly Item[], i: number): boolean => {
  for (let j = i + 1; j < items.length && items[j]!.k !== 'sep'; j += 1) if (items[j]!.k === 'num') return true;
  return false;
};

const electric = (items: readonly Item[], i: number): boolean =>
  phraseAt(items, i - 1) === 'at' ||
  items.some((o) => o.k === 'num' && o.unit !== null && ['V', 'mV', 'A'].includes(o.unit));

const unitNext = (item: Item | undefined): Amounting['unit'] => {
  const sense = item?.k === 'senses' ? item.senses.find((s) => s.k === 'unit') : undefined;
  return sense?.k === 'unit' ? sense.v : null;
};

/** Places that only say where another stands: "the corner of my coach", "the rod between the arm and the axle". */
const located = (items: readonly Settled[], text: string): Settled[] => {
  const idleAt = new Set<number>();
  items.forEach((item, i) => {
    // "coffee machine": not this one
    if (item.k === 'place' && item.phrase === 'machine' && items[i - 1]?.k === 'unknown') idleAt.add(i);
    const prev = items.slice(0, i).findLast((o): o is PlaceItem => o.k === 'place');
    if (item.k !== 'place' || !prev) return;
    const gap = text.slice(prev.span[1], item.span[0]).toLowerCase();
    // "weeping at the tank end": which end of it
    if (
      item.p.part &&
      !item.p.side &&
      prev.p.part &&
      / (?:at|on) the $/.test(gap) &&
      /^ end\b/i.test(text.slice(item.span[1], item.span[1] + 5))
    )
      idleAt.add(i);
    if (
      item.p.part === 'coach' &&
      (prev.p.side ?? prev.p.end ?? prev.p.part) &&
      /^(?: corner| side| end)? of (?:my|the|this|our|his|her) $/.test(gap)
    )
      idleAt.add(i);
    // "the fitting at the left bag", "the hose going to it": the line of that bag
    if (
      item.p.part === 'bellows' &&
      ((prev.p.part === 'line' &&
        /^ (?:(?:going|running|leading|that goes|that runs|feeding|coming) )?(?:to|into|from|off|of) (?:the |his |my )?$/.test(
          gap,
        )) ||
        (prev.p.part === 'fitting' && /^ (?:at|on|of|for) (?:the |his |my )?$/.test(gap))) &&
      !prev.p.side
    ) {
      idleAt.add(items.indexOf(prev));
      item.p = { ...item.p, part: 'bellows line' };
      item.phrase = prev.phrase;
    }
    // "the crimp and its line"
    if (
      item.p.part === 'line' &&
      /^(?:bellows|bellows crimp|bellows fold)$/.test(prev.p.part ?? '') &&
      /^(?: and|,) its $/.test(gap)
    )
      item.p = { ...prev.p, ...item.p, part: 'bellows line' };
    // "rear shocks both warm": both of them
    if (
      item.p.side === 'both' &&
      !item.p.part &&
      !item.p.end &&
      item.phrase === 'both' &&
      gap === ' ' &&
      prev.p.side &&
      /s$/i.test(text.slice(...prev.span))
    )
      idleAt.add(i);
    if (!/^ between (?:the |my )?$/.test(gap)) return;
    const to = items.slice(i + 1).findIndex((o) => o.k === 'place');
    const near = to < 0 || to > 3 || !items.slice(i + 1, i + 1 + to).some((o) => o.k === 'join') ? 0 : to + 1;
    if (near === 0) return;
    for (let j = i; j <= i + near; j += 1) idleAt.add(j);
    if (item.p.side && !prev.p.side) prev.p = { ...prev.p, side: item.p.side };
  });
  return items.map((item, i) => (idleAt.has(i) ? { k: 'filler', span: item.span, phrase: 'there' } : item));
};

export const settle = (given: readonly Item[], text: string, context: Context): Settled[] => {
  const items = joinSplitVerbs(given);
  const raw: Settled[] = [];
  const lastReal = (): Settled | undefined => raw.findLast((r) => r.k !== 'filler' && r.k !== 'prep');
  items.forEach((item, i) => {
    if (item.k !== 'senses') {
      if (item.k === 'unknown') {
        const stands = lastReal();
        const led =
          stands?.k === 'place' &&
          stands.p.side !== undefined &&
          stands.p.part === undefined &&
          (/ (?:is|are|still|now) (?:still |now )?(?:in|on) $/i.test(text.slice(0, item.span[0]).slice(-16)) ||
            (/ (?:in|on|at) $/i.test(text.slice(0, item.span[0]).slice(-4)) &&
              raw.some((r) => r.k === 'cond' && r.v.startsWith('panel'))));
        const label = labelled(item.low, text.slice(...item.span), stands, context.labels, led);
        if (label?.startsWith('panel '))
          return void raw.push({ k: 'cond', v: label as Condition, holds: true, span: item.span, phrase: item.low });
      }
      // "to be renewed: left link"
      if (item.k === 'sep' && item.low === ':' && lastReal()?.k === 'work')
        return void raw.push({ k: 'filler', span: item.span, phrase: ':' });
      return void raw.push(item);
    }
    const base = { span: item.span, phrase: item.phrase, ...(item.near ? { near: true } : {}) };
    const label = labelled(item.phrase, text.slice(...item.span), lastReal(), context.labels);
    if (label?.startsWith('panel ')) return void raw.push({ k: 'cond', v: label as Condition, holds: true, ...base });
    // "tank bled down to 40": how far, not that it is drained
    if (
      /^(?:the )?(?:air )?tank (?:is |was )?(?:bled|drained|down|bled off|drained down|bled down|down to)/.test(
        item.phrase,
      ) &&
      /^ (?:to )?\d/.test(text.slice(item.span[1], item.span[1] + 5))
    ) {
      const at =
        item.span[0] +
        text
          .slice(...item.span)
          .toLowerCase()
          .indexOf('tank');
      raw.push({ k: 'place', p: { part: 'tank' }, spans: [[at, at + 4]], ...base, span: [at, at + 4], phrase: 'tank' });
      return void raw.push({ k: 'change', v: 'fall', ...base, span: [at + 5, item.span[1]], phrase: 'bled down' });
    }
    // "tank at 0 psi": read off a gauge
    if (/^tank (?:is |was )?at (?:0|zero)$/.test(item.phrase) && unitNext(items[i + 1])) {
      const cut = item.span[1] - /(?:0|zero)$/i.exec(text.slice(...item.span))![0].length;
      raw.push({
        k: 'place',
        p: { part: 'tank' },
        spans: [[item.span[0], item.span[0] + 4]],
        ...base,
        span: [item.span[0], item.span[0] + 4],
        phrase: 'tank',
      });
      return void raw.push({
        k: 'num',
        value: 0,
        step: 1,
        whole: true,
        unit: unitNext(items[i + 1]),
        signed: false,
        span: [cut, item.span[1]],
        text: text.slice(cut, item.span[1]),
      });
    }
    // "put a new link on": the part that was put there, no state
    const fitted = /^(link|fuse) (?:on|in)$/.exec(item.phrase)?.[1];
    if ((fitted === 'link' || fitted === 'fuse') && /(?:^| )(?:new|another)$/.test(phraseAt(items, i - 1))) {
      const thing: Span = [item.span[0], item.span[0] + fitted.length];
      return void raw.push({ k: 'place', p: { part: fitted }, spans: [thing], ...base, span: thing, phrase: fitted });
    }
    // "blew it out": with air, and clean
    if (item.phrase === 'blew out' && /^blew (?:it|them) out/i.test(text.slice(...item.span)))
      return void raw.push({ k: 'work', v: 'cleaned', ...base });
    // "now pump start at 90": at what pressure
    if (/pump start(?: now)?$/.test(item.phrase) && phraseAt(items, i + 1) === 'at' && items[i + 2]?.k === 'num')
      return void raw.push({ k: 'measure', v: 'cut-in', ...base });
    // "it pulls to the left"
    if (
      item.phrase === 'pull' &&
      phraseAt(items, i + 1) === 'to' &&
      /^(?:the |left|right)/.test(`${phraseAt(items, i + 2)} `)
    )
      return void raw.push({ k: 'sign', v: 'pulls', ...base });
    // "declined new shocks": nothing was fitted
    if (item.phrase === 'new' && /(?:declined|thanks (?:on|to)|said no(?: to)?|refused)$/.test(phraseAt(items, i - 1)))
      return void raw.push({ k: 'filler', ...base });
    // "leak-down: tank 114 to 108": what the numbers are of
    const colon = items[i + 1];
    if (
      /^(?:leak ?down|bleed ?down)s?(?: test)?$/.test(item.phrase) &&
      colon?.k === 'sep' &&
      (colon.low === ':' || (colon.low === ',' && i === 0))
    )
      return void raw.push({ k: 'filler', ...base });
    // "from empty to ninety": from nothing
    if (item.phrase === 'empty' && phraseAt(items, i - 1) === 'from' && phraseAt(items, i + 1) === 'to')
      return void raw.push({
        k: 'num',
        value: 0,
        step: 1,
        whole: true,
        unit: null,
        signed: false,
        span: item.span,
        text: '0',
      });
    // "the other one holds": across from what was spoken of
    if (otherOne(items, i, text)) return void raw.push({ k: 'place', p: {}, spans: [item.span], other: true, ...base });
    // "panel on ROAD": a preposition and the label
    const led = /^(?:on|in|at|to) (\S+)$/.exec(item.phrase)?.[1];
    const after = led
      ? labelled(
          led,
          text.slice(item.span[1] - led.length, item.span[1]),
          lastReal(),
          context.labels,
          raw.some((r) => r.k === 'cond' && r.v.startsWith('panel')),
        )
      : null;
    if (after?.startsWith('panel ')) return void raw.push({ k: 'cond', v: after as Condition, holds: true, ...base });
    // "11.2 at motor running": the pump's motor where volts or amps are told
    if (item.phrase === 'motor running' && electric(items, i)) {
      const cut = item.span[0] + 'motor'.length;
      const motor: Span = [item.span[0], cut];
      raw.push({ k: 'place', p: { part: 'motor' }, spans: [motor], ...base, span: motor, phrase: 'motor' });
      const run: Span = [cut + 1, item.span[1]];
      return void raw.push({ k: 'cond', v: 'pump running', holds: true, ...base, span: run, phrase: 'running' });
    }
    // "no bubbles at the right crimp or the left"
    if (item.phrase === 'or' && only(beyond(items, i + 1, true), 'place'))
      return void raw.push({ k: 'join', span: item.span });
    if (joins.has(item.phrase)) return void raw.push({ k: 'join', span: item.span });
    if (idle(items, i)) return void raw.push({ k: 'filler', ...base });
    // "l/r bag 48, r/r bag 60": corners where both are written so
    const corner = slashedCorner(items, i, text.slice(...item.span).toLowerCase());
    if (corner) return void raw.push({ k: 'place', p: corner, spans: [item.span], ...base });
    if (item.phrase === 'rh') return void raw.push(rightHand(items, i, base));
    // "pump starts at 3:00": when, not at what pressure
    const hour = items[i + 1];
    if (
      hour?.k === 'num' &&
      hour.clock !== undefined &&
      /\b(?:starts?|stops?)(?: at)?$/.test(item.phrase) &&
      item.senses.some((s) => s.k === 'measure')
    )
      return void raw.push({
        k: 'sign',
        v: /start/.test(item.phrase) ? 'starts' : 'stops',
        ...base,
        phrase: 'pump starts',
      });
    // "both exhausts still bubbling": the ports
    if (
      item.phrase === 'exhausts' &&
      only(beyond(items, i + 1, true), 'sign') &&
      /^(?:both|left|right|the|n\/s|o\/s|lh|rh)$/.test(phraseAt(items, i - 1))
    )
      return void raw.push({ k: 'place', p: { part: 'exhaust port' }, spans: [item.span], ...base });
    // "settled 2 inches": sank
    const by = items[i + 1];
    if (/^settled(?: down)?$/.test(item.phrase) && by?.k === 'num' && ['in', 'mm', 'cm'].includes(by.unit ?? ''))
      return void raw.push({ k: 'change', v: 'fall', ...base });
    // "12.5 V into the pressure switch, 0 V out of it": the other terminal of what was spoken of
    const terminal = /^out of it$/.test(item.phrase) ? terminalOf[lastPart(raw) ?? ''] : undefined;
    if (item.phrase === 'out of it') {
      if (!terminal) return void raw.push({ k: 'filler', ...base });
      return void raw.push({ k: 'place', p: { part: terminal }, spans: [item.span], assumed: true, ...base });
    }
    const sense = pick(items, i, item.senses);
    if (sense.k !== 'place') return void raw.push({ ...sense, ...base });
    let p = sense.p;
    // an arm with pins and bushings is no valve's
    if (p.part === 'arm' && pinned.test(text)) p = { ...p, part: 'control arm' };
    // "new tank gauge, it agrees": the gauge, where no pressure is read off it
    if (/^tank ga?u?ge$/.test(item.phrase) && p.part === 'tank' && !readsNext(items, i)) p = { part: 'gauge' };
    const place: PlaceItem = { k: 'place', p, spans: [item.span], ...base };
    if (sense.rel) {
      if (context.traffic === null) place.ask = sense.rel;
      else p = { ...p, side: sideOf(sense.rel, context.traffic) };
      place.p = p;
    }
    if (p.side && !p.part && /^ ones?\b(?! (?:and|or) a )/i.test(text.slice(item.span[1], item.span[1] + 6)))
      place.one = true;
    if (['rh', 'r', 'l', 'l/r', 'ps'].includes(item.phrase)) place.bare = item.phrase as 'r' | 'l' | 'rh';
    raw.push(place);
  });
  dottedTimes(raw, text);
  const out = joinNeighbours(raw);
  out.forEach((item, i) => {
    // "filter off: 0 to 90 in 4 min"
    const before = out[i - 1];
    if (
      'phrase' in item &&
      item.phrase === 'off' &&
      before?.k === 'place' &&
      ['intake filter', 'valve cover', 'pump head'].includes(before.p.part ?? '') &&
      out[i + 1]?.k !== 'num'
    ) {
      out[i] = { k: 'work', v: 'removed', span: item.span, phrase: 'off' };
      return;
    }
    // "air line off at lh bag": what is off is disconnected
    const prev = out[i - 1];
    if (
      (((item.k === 'filler' || item.k === 'prep') && item.phrase === 'off') ||
        (item.k === 'measure' && item.phrase === 'off at')) &&
      prev?.k === 'place' &&
      offable.has(prev.p.part ?? '') &&
      out[i + 1]?.k !== 'num'
    )
      out[i] = { k: 'sign', v: 'disconnected', span: item.span, phrase: 'off' };
  });
  return located(inAndOut(out, context), text).map((item): Settled => {
    if (item.k !== 'place') return item;
    const p = tidy(item.p);
    // which of the two wheels, and nothing else named: the wheel itself
    return { ...item, p: p.wheel && !p.part ? { ...p, part: 'wheel' } : p };
  });
};
