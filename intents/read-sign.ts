/** Signs: what was seen, heard or felt, where, and whether it was denied. */
import { denied, find, isContent, nextReal } from './near.ts';
import { makePlace, type PlaceParts } from './place.ts';
import { changeOf, readFall, readLowBy } from './read-change.ts';
import { dayWhen } from './read-state.ts';
import { tidy } from './settle.ts';
import type { PlaceItem, Settled } from './settle.ts';
import type { Sign } from './shapes.ts';
import { sideable } from './sideable.ts';
import {
  assumed,
  carried,
  locOf,
  phraseOf,
  push,
  said,
  share,
  skippable,
  use,
  whereOf,
  wordOf,
  type Clause,
  type Draft,
  type Loc,
  type Walk,
} from './walk.ts';
import { opposites, placeAfter, pumpSigns, signHomes } from './words/signs.ts';

type SignItem = Extract<Settled, { k: 'sign' }>;
const pumpParts = [
  'pump',
  'motor',
  'relay',
  'pressure switch',
  'gauge',
  'unloader',
  'dryer',
  'solenoid',
  'battery',
  'panel',
];
const blowers = ['relief', 'unloader', 'exhaust port', 'protection valve'];
/** Signs that can be gone again. */
const fleeting: readonly Sign[] = [
  'bubbles',
  'hiss',
  'leaks',
  'water',
  'noisy',
  'bangs',
  'puffs',
  'exhausts',
  'hums',
  'clicks',
];
/** Words that only colour the sign beside them: "holds fine", "loud bang", "stuck tight". */
const adverbs: readonly Sign[] = [
  'ok',
  'works',
  'noisy',
  'binding',
  'dirty',
  'holds',
  'aged',
  'stuck',
  'plugged',
  'not working',
];

/** The sign a word means at this part: a damper that weeps leaks oil, a link that came off is disconnected. */
const atPart = (name: Sign, part: string | undefined, phrase: string): Sign => {
  if (part === 'shock') {
    if (['leaks', 'oily', 'wet', 'leaks oil'].includes(name)) return 'leaks oil';
    if (name === 'hot') return 'warm';
  } else if (['cold', 'warm'].includes(name) && part === 'pump') return name === 'warm' ? 'hot' : name;
  if (/^(?:broke|is broke)$/.test(phrase) && part !== undefined && !pumpParts.includes(part)) return 'broken';
  if (name === 'reads right' && part !== undefined && !['gauge', 'test port', 'tank', 'pressure switch'].includes(part))
    return 'ok';
  if (name === 'no air' && (part === 'bellows' || part === 'tyre') && phrase === 'no air') return 'flat';
  if (part === 'brushes' && name === 'not working') return 'worn';
  if (
    blowers.includes(part ?? '') &&
    /^(?:blow|blowing|blows|blown|popping|pops|popped|popped off|lifting|lifts|venting)$/.test(phrase)
  )
    return 'exhausts';
  if (
    ['link', 'line', 'bellows line', 'arm', 'supply line', 'fitting', 'ground', 'feed cable'].includes(part ?? '') &&
    /^(?:come off|came off|fallen off|fell off|is off|off|popped off|dropped off)$/.test(phrase)
  )
    return 'disconnected';
  if (/^(?:down|is down|gone|went down)$/.test(phrase) && pumpParts.includes(part ?? '')) return 'not working';
  if (part === 'pump' && name === 'does not move') return 'wont run';
  if ((part === 'gauge' || part === 'tank') && phrase === 'stuck') return part === 'gauge' ? 'does not move' : name;
  if ((part === 'bellows' || part === undefined) && name === 'fills' && phrase === 'comes up') return name;
  if (part === 'tyre' && name === 'flat') return name;
  if (part === 'pump' && name === 'slow build') return name;
  return name;
};

/** Signs that a corner has as such: a side named with one of them is the coach's, not a part's. */
const ofCorner: ReadonlySet<Sign> = new Set([
  'low',
  'high',
  'leans',
  'level',
  'sags',
  'rises',
  'on stops',
  'holds',
  'drops',
  'comes up driving',
  'bounces',
  'bottoms',
  'fills',
  'empties',
  'does not fill',
  'does not empty',
  'pulls',
  'wanders',
  'bangs',
  'noisy',
  'slow build',
] as Sign[]);
/** "lr shock stone cold, rr warm": the same part on the side named now. */
const ofTheOther = (w: Walk, own: Loc, name: Sign): Loc => {
  const s = w.subject?.p;
  if (own.p.part || !own.p.side || own.p.side === 'both' || !s?.part || !s.side || !sideable.has(s.part)) return own;
  if (s.side === 'both' || ofCorner.has(name)) return own;
  return {
    ...own,
    p: tidy({ ...own.p, part: s.part, ...(own.p.end === undefined && s.end ? { end: s.end } : {}) }),
    from: own.from === 'said' ? 'carried' : own.from,
  };
};

const noun = (it: Settled | undefined): boolean =>
  it?.k === 'unknown' && /^[a-z]{4,}$/.test(it.low) && !/(?:ly|ing|ed|where|thing|times?)$/.test(it.low);
/** "lr shackle broken", "shackle on the left is cracked": a thing nobody knows has it, not the corner. */
const unknownThing = (c: Clause, index: number): boolean => {
  const place = c.places.filter((i) => i < index).at(-1);
  if (place === undefined) return false;
  let led = place - 1;
  while (led >= 0 && skippable(c.items[led])) led -= 1;
  return c.items.slice(place + 1, index).some(noun) || (led < place - 1 && noun(c.items[led]));
};
/** "the shackle is broken": what is not known is not the thing spoken of before. */
const unknownLead = (c: Clause, index: number): boolean => {
  let at = index - 1;
  while (
    at >= 0 &&
    c.items[at]!.k === 'filler' &&
    /^(?:is|are|was|were|looks|look|isnt|has|have)$/.test(phraseOf(c.items[at]))
  )
    at -= 1;
  return at >= 1 && at === index - 2 && noun(c.items[at]) && /^(?:the|a|an|that|my)$/.test(phraseOf(c.items[at - 1]));
};

const placeOfSign = (w: Walk, c: Clause, index: number, name: Sign): Loc | null => {
  // "bag chafed on the shock bolt": what it rubs on is not what is chafed
  if (name === 'chafed') {
    const before = c.places.filter((i) => i < index && !c.taken.has(i)).at(-1);
    const after = c.places.find((i) => i > index);
    if (before !== undefined && (c.items[before] as PlaceItem).p.part !== undefined) {
      if (after !== undefined) {
        use(w, c.items[after]);
        c.taken.add(after);
      }
      return locOf(w, c.items[before] as PlaceItem);
    }
  }
  if (/(?:^|^now |^air )(?:pump|comp|compressor) /.test(phraseOf(c.items[index]))) return assumed({ part: 'pump' });
  const own = find(w, c, index, placeAfter.has(name));
  if (own) return ofTheOther(w, own, name);
  if (c.measure?.v === 'pressure' && ['sags', 'drops', 'holds', 'low', 'high', 'rises', 'leaks', 'ok'].includes(name)) {
    use(w, c.measure);
    return assumed({ part: 'tank' });
  }
  const home = signHomes[name];
  // "that side's creeping up"
  if (
    w.subject?.p.side &&
    /\b(?:that|this|the same|same) side/i.test(w.text.slice(c.items[0]!.span[0], c.items[index]!.span[0]))
  )
    return { p: { side: w.subject.p.side }, from: 'carried', spans: [] };
  if (pumpSigns.has(name)) return assumed({ part: 'pump' });
  const s = carried(w.subject);
  const attitude = [
    'sags',
    'leans',
    'level',
    'rises',
    'bounces',
    'bottoms',
    'wanders',
    'on stops',
    'comes up driving',
  ].includes(name);
  const whole =
    home === 'coach' &&
    s?.p.part !== undefined &&
    !(
      attitude ? ['bellows', 'coach'] : ['bellows', 'coach', 'tank', 'height valve', 'gauge', 'tyre', 'shock']
    ).includes(s.p.part);
  if (s && !(whole && name !== 'ok')) return s;
  return home ? assumed(tidy({ part: home as PlaceParts['part'] })) : null;
};

const loc0 = (c: Clause, index: number): string | undefined => {
  const at = c.places.filter((i) => i < index).at(-1);
  return at === undefined ? undefined : ((c.items[at] as PlaceItem).p.part ?? '');
};

/** "blew the 30A fuse twice": the fuse's size is no reading. */
export const readFuse = (w: Walk, c: Clause): void => {
  const at = c.items.findIndex((it) =>
    /^(?:blew|blow|blows|blowing|blown|popped|pops|popping|took out|burns|burned|burnt)$/.test(
      it.k === 'unknown' ? it.low : phraseOf(it),
    ),
  );
  const fuse = c.places.find((i) => i > at && (c.items[i] as PlaceItem).p.part === 'fuse');
  if (at < 0 || fuse === undefined || fuse - at > 4 || c.items.slice(0, at).some((it) => it.k === 'neg')) return;
  const by = c.items[at]!;
  use(w, c.items[fuse]);
  for (const it of c.items.slice(at, fuse)) use(w, it);
  push(
    w,
    {
      is: 'sign',
      where: whereOf(assumed({ part: 'pump' })),
      word: wordOf(w),
      what: said('blows fuse', by),
      there: true,
      ...(c.often ? { often: c.often.v } : {}),
    } as Draft,
    null,
    by,
  );
};

/** Reads the sign at `index`; the index after what it took. */
export const readSign = (w: Walk, c: Clause, index: number): number => {
  const item = c.items[index] as SignItem;
  if (w.used.has(item)) return index + 1;
  if (item.v === 'pulls' && /^pulls?$/.test(item.phrase) && c.items[nextReal(c, index)]?.k === 'num') return index + 1;
  const changed = readFall(w, c, index) ?? readLowBy(w, c, index);
  if (changed !== null) return changed;
  const items = c.items;
  const prev = items[index - 1];
  const ahead = items[nextReal(c, index)];
  let neg = denied(c, index);
  const prevSign = items.slice(0, index).findLast((it) => !skippable(it));
  if (!neg && adverbs.includes(item.v)) {
    const colours =
      (prevSign?.k === 'sign' &&
        prevSign !== item &&
        w.used.has(prevSign) &&
        (item.v === 'ok' || item.v === 'binding')) ||
      (prevSign?.k === 'cond' && item.v === 'ok');
    const after = item.phrase === 'black' && prevSign?.k === 'sign' && prevSign !== item && w.used.has(prevSign);
    const before =
      after ||
      (ahead?.k === 'sign' &&
        nextReal(c, index) === index + 1 &&
        ['noisy', 'dirty', 'aged', 'stuck'].includes(item.v) &&
        ahead.v !== item.v &&
        /^(?:loud|big|bad|stuck|old|dirty|black)$/.test(item.phrase));
    const named = item.phrase === 'bad' && ahead?.k === 'place' && items.some((it) => it.k === 'sign' && it !== item);
    if (colours || before || named) {
      use(w, item);
      return index + 1;
    }
  }
  if (item.v === 'not working' && ahead?.k === 'sign' && nextReal(c, index) === index + 1 && item.phrase === 'bad') {
    use(w, item);
    return index + 1;
  }
  if (item.v === 'low' && ahead?.k === 'sign' && ahead.v === 'on stops') {
    use(w, item);
    return index + 1;
  }
  // "to see if it leaks": not known yet
  if (
    /\b(?:see|check|test|look|know|tell|find out|listen|wonder|wondering|feel|watch)(?:ing)? (?:if|whether|for|weather) (?:\S+ ){0,4}$/i.test(
      w.text.slice(Math.max(0, item.span[0] - 40), item.span[0]),
    )
  ) {
    use(w, item);
    return index + 1;
  }
  const near = loc0(c, index);
  if (item.phrase === 'slow' && (ahead?.k === 'sign' || (near !== undefined && near !== 'pump' && near !== 'tank'))) {
    use(w, item);
    return index + 1;
  }
  // "dropped from 120 to 85": the numbers say it
  const toAt = items.findIndex((it, j) => j > index && phraseOf(it) === 'to' && items[nextReal(c, j)]?.k === 'num');
  const toNumber = toAt > 0 && (toAt <= index + 2 || items.slice(index, toAt).some((it) => it.k === 'num'));
  const volts = items[nextReal(c, index)];
  if (item.v === 'drops' && volts?.k === 'num' && (volts.unit === 'V' || volts.unit === 'mV')) return index + 1;
  if (
    changeOf(item) &&
    (toNumber || (items.slice(index, index + 3).some((it) => phraseOf(it) === 'from') && ahead?.k === 'num'))
  ) {
    use(w, item);
    return index + 1;
  }
  // a volume of it was measured: "half a cup of water"
  if (
    ['water', 'wet', 'corroded'].includes(item.v) &&
    w.facts.at(-1)?.is === 'reading' &&
    w.lastMeasure === 'water drained' &&
    prev &&
    !/^(?:was|is|looked|looks|came out)$/.test(phraseOf(prev)) &&
    !neg
  ) {
    use(w, item);
    return index + 1;
  }
  // "lr shock cold, others warm": the others are not named
  if (
    /\b(?:others|the rest|remaining|other (?:one|three|two)s?)\b/i.test(
      w.text.slice(items[0]!.span[0], item.span[0]),
    ) &&
    !c.places.some((i) => i < index)
  )
    return index + 1;
  // "hear air leaking": one sign
  const second = items[index + 1];
  if (item.v === 'hiss' && second?.k === 'sign' && ['leaks', 'exhausts'].includes(second.v)) {
    use(w, item);
    return index + 1;
  }
  // "bubbles gone", "leak stopped": looked for and not found any more
  const ended = items[index + 1] ?? null;
  const endWord = ended?.k === 'unknown' ? ended.low : phraseOf(ended ?? undefined);
  if (
    !neg &&
    ended &&
    fleeting.includes(item.v) &&
    /^(?:gone|all gone|stopped|stops|went away|cleared|cured|disappeared)$/.test(endWord)
  ) {
    use(w, ended);
    neg = ended;
  }
  let name: Sign = prev?.k === 'sign' && prev.v === 'hiss' && item.v === 'leaks' && w.used.has(prev) ? 'hiss' : item.v;
  // "raise does nothing": of the pump only where the pump is spoken of
  const pumpTold =
    w.subject?.p.part === 'pump' || c.places.some((i) => pumpParts.includes((items[i] as PlaceItem).p.part ?? ''));
  if (
    /^(?:does nothing|doesnt do anything|no response|no sound|no noise|no life|no go)$/.test(item.phrase) &&
    !pumpTold
  )
    return index + 1;
  let loc = placeOfSign(w, c, index, name);
  if (
    (['hot', 'cold', 'warm'].includes(name) && (loc === null || loc.p.part === 'coach' || loc.p.part === undefined)) ||
    (name === 'reads wrong' && /^(?:lying|lies|is lying)$/.test(item.phrase) && loc?.item?.p.part !== 'gauge')
  ) {
    use(w, item);
    return index + 1;
  }
  if (name === 'leans' || (name === 'sags' && loc?.p.part === 'coach')) {
    const to = c.places.find(
      (i) =>
        i > index &&
        (c.items[i] as PlaceItem).p.side !== undefined &&
        (/ to$/.test(item.phrase) ||
          (i === index + 1 && (c.items[i] as PlaceItem).p.part === undefined) ||
          /^(?:to|toward|towards|on)$/.test(phraseOf(c.items.slice(index + 1, i).findLast((it) => it.k === 'prep')))),
    );
    if (to !== undefined) loc = locOf(w, c.items[to] as PlaceItem);
  }
  if (loc && !loc.p.part && !ofCorner.has(name) && !pumpSigns.has(name) && unknownThing(c, index)) return index + 1;
  if (loc && loc.from !== 'said' && !pumpSigns.has(name) && unknownLead(c, index)) return index + 1;
  const prior = w.facts.at(-1);
  if (
    name === 'worn' &&
    prior?.is === 'sign' &&
    (prior.what.v === 'worn inside' || prior.what.v === 'worn outside') &&
    prior.there &&
    items.slice(0, index).some((it) => w.used.has(it) && it.k === 'sign')
  ) {
    use(w, item);
    if (prior.where.v === '' || prior.where.from !== 'said') prior.where = loc ? whereOf(loc) : prior.where;
    return index + 1;
  }
  if (
    wordOf(w) === 'told' &&
    !c.often &&
    loc?.from !== 'said' &&
    (name === 'ok' || name === 'not working') &&
    /^(?:good|ok|fine|bad|no good)$/.test(item.phrase)
  )
    return index + 1;
  name = atPart(name, loc?.p.part ?? (loc?.p.side || loc?.p.end ? 'coach' : undefined), item.phrase);
  if (
    loc?.p.part === 'fuse' &&
    ['burnt', 'blown', 'tripped'].includes(name) &&
    (c.often?.v === 'restart' || /^(?:pops|pop|popping|burns|burn)$/.test(item.phrase)) &&
    !neg
  )
    name = 'blows fuse';
  if (name === 'blows fuse') {
    loc = assumed({ part: 'pump' });
    for (const it of items) if (it.k === 'place' && ['fuse', 'pump', 'breaker'].includes(it.p.part ?? '')) use(w, it);
  }
  if (name === 'worn' && loc?.p.part === 'tyre') {
    const edge = items.find((it) => /^(?:inside|inner|inner edge|inside edge)$/.test(phraseOf(it)));
    const outer = items.find((it) => /^(?:outside|outer|outer edge|outside edge)$/.test(phraseOf(it)));
    if (edge) name = 'worn inside';
    else if (outer) name = 'worn outside';
  }
  if (name === 'level' && loc?.p.part === 'floor') {
    push(
      w,
      { is: 'condition', where: whereOf(null), word: 'own', what: said('floor level', item), holds: !neg } as Draft,
      null,
      item,
    );
    use(w, neg);
    return index + 1;
  }
  if (name === 'leans' && loc && !loc.p.side && !loc.p.end && loc.p.part !== 'coach') loc = assumed({ part: 'coach' });
  if (
    name === 'level' &&
    loc?.from !== 'said' &&
    ['link', 'arm', 'height valve', 'bellows line'].includes(loc?.p.part ?? '')
  )
    loc = assumed({ part: 'coach' });
  if (['level', 'sags', 'bounces'].includes(name) && loc && !loc.p.part && !loc.p.side && !loc.p.end)
    loc = assumed({ part: 'coach' });
  if (name === 'drops' && c.often?.v === 'standing' && loc && (loc.p.part === 'coach' || !loc.p.part)) name = 'sags';
  if (name === 'sags' && loc?.p.part === 'tank') name = 'drops';
  if (name === 'fills' && c.often?.v === 'driving' && loc && (loc.p.part === 'coach' || loc.p.part === undefined))
    name = 'comes up driving';
  if (neg && opposites[name]) {
    if (name === 'ok' && loc?.p.part === undefined) {
      use(w, item, neg);
      return index + 1;
    }
    name = opposites[name]!;
    use(w, neg);
    neg = null;
  }
  if (!c.often && /overnight|over night/.test(item.phrase) && ['sags', 'drops', 'low'].includes(name) && w.told)
    c.often = { k: 'often', v: 'standing', span: item.span, phrase: item.phrase };
  const often =
    c.often && name !== 'comes up driving' && !(name === 'runs constantly' && c.often.v === 'always')
      ? c.often.v
      : null;
  const draft = {
    is: 'sign',
    where: whereOf(loc),
    word: wordOf(w),
    what: said(name, item),
    there: !neg,
    ...(often ? { often } : {}),
    ...dayWhen(w, c, index),
  } as Draft;
  const alone =
    loc !== null &&
    loc.from !== 'said' &&
    loc.spans.length === 0 &&
    w.group.length > 1 &&
    w.subject !== null &&
    !c.places.some((i) => i < index);
  if (alone) for (const g of w.group) push(w, { ...draft, where: whereOf(carried(g)) }, null, item);
  else share(w, push(w, draft, loc, item));
  if (neg) use(w, neg);
  if (loc && !pumpSigns.has(name) && loc.from === 'said') w.subject = loc;
  else if (loc && pumpSigns.has(name)) w.subject ??= loc;
  else if (loc && !w.subject) w.subject = loc;
  w.lastSign = name;
  if (items[index + 1]?.k === 'sign' && (items[index + 1] as SignItem).v === name) use(w, items[index + 1]);
  return items[index + 1]?.k === 'sign' && w.used.has(items[index + 1]!) ? index + 2 : index + 1;
};

/** "none on the left", "nothing at the valve": the last sign, denied there. */
export const readNone = (w: Walk, c: Clause, index: number): void => {
  const item = c.items[index]!;
  const phrase = phraseOf(item);
  const next = nextReal(c, index);
  const dead = c.items[next];
  // "no volts at the switch": nothing on the meter
  if (
    /^(?:no|zero|without)$/.test(phrase) &&
    dead &&
    (dead.k === 'measure'
      ? dead.v === 'voltage'
      : dead.k === 'unit'
        ? dead.v === 'V'
        : /^(?:power|juice|feed)$/.test(dead.k === 'unknown' ? dead.low : '')) &&
    !c.items.some((it) => it.k === 'num')
  ) {
    const at = c.places.find((i) => i > next) ?? c.places.find((i) => i < index);
    if (at === undefined) return;
    const loc0v = locOf(w, c.items[at] as PlaceItem);
    push(
      w,
      {
        is: 'reading',
        where: whereOf(loc0v),
        word: wordOf(w),
        what: said('voltage', dead),
        amount: { v: { si: 0, pm: 0.5, unit: 'V', text: '0' }, from: 'assumed', spans: [item.span] },
      } as Draft,
      loc0v,
      item,
    );
    use(w, dead);
    return;
  }
  // "the right one not": what was seen on the other side, denied here
  const led = c.items.slice(0, index).findLast((it): it is PlaceItem => it.k === 'place');
  if (
    led &&
    /^(?:not|none|nothing|no|isnt|doesnt|wasnt)$/.test(phrase) &&
    c.items[next] === undefined &&
    !c.items.some(isContent)
  ) {
    const seen = w.context.recent.at(-1)?.facts.findLast((f) => f.is === 'sign');
    const sign = w.lastSign ?? (seen?.is === 'sign' ? seen.what.v : null);
    if (sign) {
      const loc = ofTheOther(w, locOf(w, led), sign);
      push(
        w,
        {
          is: 'sign',
          where: whereOf(loc),
          word: wordOf(w),
          what: { v: sign, from: 'carried', spans: [item.span] },
          there: false,
        } as Draft,
        loc,
        item,
      );
      w.subject = loc;
      return;
    }
  }
  const rest = c.items.slice(index + 1);
  // "soaped the crimp, nada": looked for and not found where it was looked for
  const worked = w.facts.at(-1);
  if (
    w.lastWork === 'soaped' &&
    w.lastSign === null &&
    worked?.is === 'work' &&
    worked.done &&
    /^(?:none|nothing|nil|nope|nada|nowt|zip)$/.test(phrase) &&
    c.items.every((it) => it === item || skippable(it))
  ) {
    for (const f of w.facts.filter((x) => x.is === 'work' && x.what.v === 'soaped'))
      push(
        w,
        {
          is: 'sign',
          where: f.where,
          word: wordOf(w),
          what: { v: 'bubbles', from: 'assumed', spans: [item.span] },
          there: false,
        } as Draft,
        null,
        item,
      );
    return;
  }
  if (
    !/^(?:none|nothing|not|no|nil|nope|nada|nowt|zip)$/.test(phrase) ||
    rest.some(isContent) ||
    c.items[next]?.k !== 'place'
  )
    return;
  const soap = w.lastWork === 'soaped' || w.lastSign === 'bubbles';
  const said0: Sign | null =
    w.lastSign ?? (soap ? 'bubbles' : /^(?:nothing|none|nil|nowt|nada)$/.test(phrase) ? 'leaks' : null);
  const place = c.items[next];
  if (!said0 || (phrase === 'not' && !w.lastSign)) return;
  const p: PlaceParts = { ...place.p };
  if (!p.part && w.subject?.p.part && sideable.has(w.subject.p.part)) p.part = w.subject.p.part;
  const kin = locOf(w, place);
  if (kin.p.side && !p.side) p.side = kin.p.side;
  const loc: Loc = { ...locOf(w, place), p: tidy(p) };
  c.taken.add(next);
  push(
    w,
    {
      is: 'sign',
      where: { ...whereOf(loc), v: makePlace(loc.p) },
      word: wordOf(w),
      what: { v: said0, from: w.lastSign ? 'carried' : 'assumed', spans: [item.span] },
      there: false,
    } as Draft,
    loc,
    item,
  );
  w.subject = loc;
};

/** "think its the left valve": a part that is doubted and nothing more is said of. */
export const readDoubt = (w: Walk, c: Clause): void => {
  const hedge = c.items.find((it) => it.k === 'hedge');
  if (!hedge || c.items.some((it) => isContent(it) || it.k === 'neg' || it.k === 'spec')) return;
  const at = c.places.find((i) => (c.items[i] as PlaceItem).p.part !== undefined);
  if (at === undefined) return;
  const loc = locOf(w, c.items[at] as PlaceItem);
  if (['coach', 'floor', 'ambient', 'load'].includes(loc.p.part ?? '')) return;
  const fact = push(
    w,
    {
      is: 'sign',
      where: whereOf(loc),
      word: 'hunch',
      what: { v: 'not working', from: 'assumed', spans: [hedge.span] },
      there: true,
    } as Draft,
    loc,
    hedge,
  );
  share(w, fact);
};
