/** Phrases whose sense lies in what stands beside them: one case each, before and after the words that are idle. */
import { dimensionOf } from '../server/core/units.ts';
import { wordAmount, type Amounting } from './amount-item.ts';
import { only } from './choose-sense.ts';
import { beyond, phraseAt } from './idle.ts';
import type { Item } from './items.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Span } from './shapes.ts';

export type PhraseAt = {
  readonly items: readonly Item[];
  readonly i: number;
  readonly item: Extract<Item, { k: 'senses' }>;
  readonly text: string;
  /** What was settled before it. */
  readonly raw: readonly Settled[];
  readonly base: { span: Span; phrase: string; near?: boolean };
};

/** What comes out of a part that was spoken of. */
const terminalOf: Readonly<Record<string, 'switch output' | 'relay output'>> = {
  'switch input': 'switch output',
  'pressure switch': 'switch output',
  relay: 'relay output',
  'relay coil': 'relay output',
};
const lastPart = (raw: readonly Settled[]): string | undefined =>
  raw.findLast((r): r is PlaceItem => r.k === 'place' && r.p.part !== undefined)?.p.part;

/** Parts named in the rest of a clause, of a few words at most. */
const partsAhead = (items: readonly Item[], i: number): string[] => {
  const rest = items.slice(i + 1, i + 7);
  const until = rest.findIndex((o) => o.k === 'sep' || o.k === 'join');
  return (until < 0 ? rest : rest.slice(0, until)).flatMap((o) =>
    o.k === 'senses' ? o.senses.flatMap((s) => (s.k === 'place' && s.p.part ? [s.p.part] : [])) : [],
  );
};

/** Up to the next deed: "torqued the nuts aired it up to fifty". */
const untilWork = (items: readonly Item[]): readonly Item[] => {
  const at = items.findIndex((o) => only(o, 'work'));
  return at < 0 ? items : items.slice(0, at);
};

/** The place that the last `letters` of a phrase name. */
const endingIn = (
  item: Extract<Item, { k: 'senses' }>,
  letters: number,
  p: PlaceItem['p'],
  phrase: string,
): PlaceItem => {
  const span: Span = [item.span[1] - letters, item.span[1]];
  return { k: 'place', p, spans: [span], span, phrase, ...(item.near ? { near: true } : {}) };
};

/** Nothing was said before it. */
const opens = (raw: readonly Settled[]): boolean => raw.every((r) => r.k === 'sep' || r.k === 'filler');

const hourless = (it: Item | undefined): boolean => it?.k === 'num' && it.clock === undefined;

const signBefore = (raw: readonly Settled[]): string | undefined => {
  const last = raw.findLast((r) => r.k !== 'filler' && r.k !== 'prep');
  return last?.k === 'sign' ? last.v : undefined;
};

const electric = (items: readonly Item[], i: number): boolean =>
  phraseAt(items, i - 1) === 'at' ||
  items.some((o) => o.k === 'num' && o.unit !== null && ['V', 'mV', 'A'].includes(o.unit));

const unitNext = (item: Item | undefined): Amounting['unit'] => {
  const sense = item?.k === 'senses' ? item.senses.find((s) => s.k === 'unit') : undefined;
  return sense?.k === 'unit' ? sense.v : null;
};

/** What a phrase is that names a thing and its state at once, or opens what follows; null when it is its own sense. */
export const leadingCase = ({ items, i, item, text, raw, base }: PhraseAt): Settled[] | null => {
  const alone = raw.findLast((r) => r.k !== 'filler');
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
    return [
      { k: 'place', p: { part: 'tank' }, spans: [[at, at + 4]], ...base, span: [at, at + 4], phrase: 'tank' },
      // "tank drained to 20": by hand, unless over a time
      /drained/.test(item.phrase) &&
      !/\b(?:overnight|by|in|over|since|after|per|an hour)\b/i.test(text.slice(item.span[1]))
        ? { k: 'work', v: 'drained', ...base, span: [at + 5, item.span[1]], phrase: 'drained' }
        : { k: 'change', v: 'fall', ...base, span: [at + 5, item.span[1]], phrase: 'bled down' },
    ];
  }
  // "tank at 0 psi": read off a gauge
  if (/^tank (?:is |was )?at (?:0|zero)$/.test(item.phrase) && unitNext(items[i + 1])) {
    const cut = item.span[1] - /(?:0|zero)$/i.exec(text.slice(...item.span))![0].length;
    return [
      {
        k: 'place',
        p: { part: 'tank' },
        spans: [[item.span[0], item.span[0] + 4]],
        ...base,
        span: [item.span[0], item.span[0] + 4],
        phrase: 'tank',
      },
      wordAmount(0, unitNext(items[i + 1]), [cut, item.span[1]], text),
    ];
  }
  // "put a new link on": the part that was put there, no state
  const fitted = /^(link|fuse) (?:on|in)$/.exec(item.phrase)?.[1];
  if ((fitted === 'link' || fitted === 'fuse') && /(?:^| )(?:new|another)$/.test(phraseAt(items, i - 1))) {
    const thing: Span = [item.span[0], item.span[0] + fitted.length];
    return [{ k: 'place', p: { part: fitted }, spans: [thing], ...base, span: thing, phrase: fitted }];
  }
  // "warning buzzer went off at 4.5 bar": not the pump
  if (
    / (?:on|off)$|^(?:on|off) at$/.test(item.phrase) &&
    /^(?:buzzer|alarm|lamp|light|lights|lt|telltale)$/.test(phraseAt(items, i - 1))
  )
    return [{ k: 'unknown', low: item.phrase, span: item.span }];
  // "l 54 r 58 t 112": the tank
  if (
    item.phrase === 't' &&
    items[i + 1]?.k === 'num' &&
    (opens(raw) || raw.some((r) => r.k === 'place' && r.p.side !== undefined && !r.p.part))
  )
    return [{ k: 'place', p: { part: 'tank' }, spans: [item.span], ...base }];
  // "right bag dry tank 108": the bag is dry, and the tank's figure follows
  if (
    item.phrase === 'dry tank' &&
    alone?.k === 'place' &&
    /^(?:bellows|height valve|exhaust|line|fitting|supply|check valve|valve)/.test(alone.p.part ?? '')
  )
    return [
      { k: 'sign', v: 'bubbles', ...base, span: [item.span[0], item.span[0] + 3], phrase: 'dry' },
      endingIn(item, 4, { part: 'tank' }, 'tank'),
    ];
  // "not the right bag": the other one, and none that fails
  if (/^not (?:the )?right$/.test(item.phrase) && only(items[i + 1], 'place'))
    return [
      { k: 'neg', ...base, span: [item.span[0], item.span[0] + 3], phrase: 'not' },
      endingIn(item, 5, { side: 'right' }, 'right'),
    ];
  // "crack in the bag, no air coming out yet": none escapes there
  const escapes = /^no air (?:coming|comes|came|leaking|escaping)(?: out)?$/.test(item.phrase);
  if (escapes && raw.some((r) => r.k === 'place' && /^(?:bellows|line|fitting|tank|height valve)/.test(r.p.part ?? '')))
    return [
      { k: 'neg', ...base, span: [item.span[0], item.span[0] + 2], phrase: 'no' },
      { k: 'sign', v: 'leaks', ...base, span: [item.span[0] + 3, item.span[1]], phrase: 'air coming out' },
    ];
  // "gauge is off by 5": it reads wrong
  if (
    /^(?:is )?off$/.test(item.phrase) &&
    /^ by (?:about )?\d/i.test(text.slice(item.span[1], item.span[1] + 12)) &&
    raw.some((r) => r.k === 'place' && r.p.part === 'gauge')
  )
    return [{ k: 'sign', v: 'reads wrong', ...base }];
  // "put back with a new clamp": of what, nobody said; the link's is spoken of with it, or slips
  if (
    item.phrase === 'clamp' &&
    !/\b(?:links?|linkage|rods?)\b/i.test(text) &&
    !/^ (?:has |had |was |is )?(?:slipped|slipping|slips|reset|moved|turned|at its mark)\b/i.test(
      text.slice(item.span[1], item.span[1] + 24),
    )
  )
    return [{ k: 'unknown', low: 'clamp', span: item.span }];
  // "both exhausts quiet": the ports
  if (item.phrase === 'exhausts' && /^(?:both|either|the|two|neither)$/.test(phraseAt(items, i - 1)))
    return [{ k: 'place', p: { part: 'exhaust port' }, spans: [item.span], ...base }];
  // "cap the blow off": the valve
  if (/^blow off$/.test(item.phrase) && /^(?:the|a|its|that|this)$/.test(phraseAt(items, i - 1)))
    return [{ k: 'place', p: { part: 'relief' }, spans: [item.span], ...base }];
  // "purge valve stuck open", "swaybar link missing", "sensor wire broken": another thing than the bare word's
  const kind = phraseAt(items, i - 1);
  if (
    (/^(?:valve|vlv|valv|valves)$/.test(item.phrase) &&
      /^(?:purge|kneel|kneeling|quick|release|brake|foot|treadle|shuttle|door|expansion|mixing|fuel|ball|gate|needle|parking|spring)$/.test(
        kind,
      )) ||
    (/^links?$/.test(item.phrase) &&
      /^(?:swaybar|sway|stabilizer|stabiliser|bar|roll|track|steering|idler)$/.test(kind)) ||
    (/^(?:wire|wiring|wires)$/.test(item.phrase) && /^(?:sensor|speaker|abs|lamp|camera|trailer|switch)$/.test(kind))
  )
    return [{ k: 'unknown', low: item.phrase, span: item.span }];
  // "L ride 13 9/16": its height
  if (item.phrase === 'ride' && items[i + 1]?.k === 'num') return [{ k: 'measure', v: 'height', ...base }];
  // "the problem followed the valve": where it is, not that the valve is it
  if (
    /^(?:the )?(?:problem|culprit)$/.test(item.phrase) &&
    /^(?:followed|follows|moved|moves|stayed|stays|went|goes|is|remains|came|comes|persists|returned)$/.test(
      phraseAt(items, i + 1),
    )
  )
    return [{ k: 'unknown', low: item.phrase, span: item.span }];
  // "rr 14 1/4, sheet 13 3/4": what it should be
  if (/^(?:sheet|book|manual|plate)$/.test(item.phrase) && (items[i + 1]?.k === 'num' || text[item.span[1]] === ':'))
    return [{ k: 'spec', ...base }];
  // "discharge hose blew off": it came off
  if (
    /^blew off$/.test(item.phrase) &&
    /^(?:line|bellows line|discharge line|supply line|gauge line|valve to panel line|fitting)$/.test(
      lastPart(raw.slice(-2)) ?? '',
    )
  )
    return [{ k: 'sign', v: 'disconnected', ...base }];
  // "while i was standing there": somebody was
  if (
    item.phrase === 'standing' &&
    /\b(?:i|he|she|we|they|you)(?: was| were|m|s)? (?:just )?$/i.test(text.slice(0, item.span[0]).slice(-16))
  )
    return [{ k: 'filler', ...base }];
  // "with the rear isolated": not the pump's power
  if (item.phrase === 'isolated' && alone?.k === 'place' && !alone.p.part)
    return [{ k: 'unknown', low: 'isolated', span: item.span }];
  // "plugged the bag line": somebody did
  if (
    item.phrase === 'plugged' &&
    alone?.k !== 'place' &&
    /^ (?:off )?(?:the|his|that|my) /i.test(text.slice(item.span[1], item.span[1] + 12)) &&
    !/relief|safety|pop.?off/i.test(text.slice(item.span[1], item.span[1] + 24))
  )
    return [{ k: 'work', v: 'closed', ...base }];
  // "puffs every time": it does, and when
  if (
    /^\w+ every$/.test(item.phrase) &&
    item.senses.some((s) => s.k === 'sign') &&
    /^ time\b/i.test(text.slice(item.span[1], item.span[1] + 5))
  ) {
    const cut = item.span[1] - 'every'.length;
    return [
      {
        ...item.senses.find((s) => s.k === 'sign')!,
        ...base,
        span: [item.span[0], cut - 1],
        phrase: item.phrase.slice(0, -6),
      },
      { k: 'often', v: 'always', ...base, span: [cut, item.span[1]], phrase: 'every time' },
    ];
  }
  // "torqued at ride height": done, by no figure
  if (
    /^(?:re ?)?torqued$/.test(item.phrase) &&
    !untilWork(items.slice(i + 1, i + 8)).some((o) => o.k === 'num') &&
    !(items[i - 1]?.k === 'num')
  )
    return [{ k: 'work', v: 'tightened', ...base }];
  // "c/o hard ride": what is complained of
  if (
    item.phrase === 'c/o' &&
    (!alone ||
      ((alone.k === 'sep' || alone.k === 'join') && (items[i + 1]?.k === 'unknown' || only(items[i + 1], 'sign')))) &&
    !items.slice(i + 1, i + 4).some((o) => o.k === 'senses' && o.senses.some((s) => s.k === 'place' && s.p.part))
  )
    return [{ k: 'filler', ...base }];
  // "soaked both bags and the lines": with soap
  if (item.phrase === 'soaked' && (!alone || alone.k === 'sep') && only(beyond(items, i + 1, true), 'place'))
    return [{ k: 'work', v: 'soaped', ...base }];
  // "two leaks, both at the tank": of them, no side
  if (
    item.phrase === 'both' &&
    /^ (?:at|on|from|near) /i.test(text.slice(item.span[1], item.span[1] + 6)) &&
    raw.some((r) => r.k === 'sign')
  )
    return [{ k: 'filler', ...base }];
  // "in the wet tank": which, not in what weather
  if (item.phrase === 'in the wet' && /^ tank\b/i.test(text.slice(item.span[1], item.span[1] + 6)))
    return [{ k: 'prep', ...base, phrase: 'in' }];
  // "dash buzzer comes on at 60, goes off at 66": no pump
  if (
    item.senses.some((s) => s.k === 'measure' && (s.v === 'cut-in' || s.v === 'cut-out')) &&
    /\b(?:buzzer|alarm|light|lamp|telltale)\b/i.test(text.slice(0, item.span[0])) &&
    !/\b(?:pump|comp\w*|switch)\b/i.test(text.slice(0, item.span[0]))
  )
    return [{ k: 'unknown', low: item.phrase, span: item.span }];
  // "removed the bag, plate rusted through": the one it sits on
  if (
    item.phrase === 'plate' &&
    /\b(?:bags?|bellows|air ?springs?)\b/i.test(text.slice(0, item.span[0])) &&
    only(items[i + 1], 'sign')
  )
    return [{ k: 'place', p: { part: 'bead plate' }, spans: [item.span], ...base }];
  // "front leaf spring cracked": no air spring
  if (
    /^springs?$/.test(item.phrase) &&
    /^(?:leaf|coil|gas|door|return|brake|steel|torsion)$/.test(phraseAt(items, i - 1))
  )
    return [{ k: 'unknown', low: item.phrase, span: item.span }];
  // "bang on 700": how nearly
  if (/^(?:bang|spot|dead) on$/.test(item.phrase) && items[i + 1]?.k === 'num') return [{ k: 'filler', ...base }];
  // "key in the driver's pocket": not in the switch
  if (
    item.phrase === 'key in' &&
    /^ (?:(?:the|my|his|her|a|drivers?|bosss?|his) ){0,2}(?:pocket|office|box|hand|cab|bag|drawer|safe|tool|shop|glove)/i.test(
      text.slice(item.span[1], item.span[1] + 40).replace(/['’]/g, ''),
    )
  )
    return [{ k: 'unknown', low: item.phrase, span: item.span }];
  // "blew it out": with air, and clean
  if (item.phrase === 'blew out' && /^blew (?:it|them) out/i.test(text.slice(...item.span)))
    return [{ k: 'work', v: 'cleaned', ...base }];
  // "now pump start at 90": at what pressure
  if (/pump start(?: now)?$/.test(item.phrase) && phraseAt(items, i + 1) === 'at' && items[i + 2]?.k === 'num')
    return [{ k: 'measure', v: 'cut-in', ...base }];
  // "it pulls to the left", "pulling to the right": the coach does
  if (
    /^pull(?:ing|s)?$/.test(item.phrase) &&
    phraseAt(items, i + 1) === 'to' &&
    /^(?:the |left|right)/.test(`${phraseAt(items, i + 2)} `)
  )
    return [{ k: 'sign', v: 'pulls', ...base }];
  // "declined new shocks": nothing was fitted
  if (item.phrase === 'new' && /(?:declined|thanks (?:on|to)|said no(?: to)?|refused)$/.test(phraseAt(items, i - 1)))
    return [{ k: 'filler', ...base }];
  // "leak-down: tank 114 to 108": what the numbers are of
  const colon = items[i + 1];
  if (
    /^(?:leak ?down|bleed ?down)s?(?: test)?$/.test(item.phrase) &&
    colon?.k === 'sep' &&
    (colon.low === ':' || (colon.low === ',' && i === 0))
  )
    return [{ k: 'filler', ...base }];
  // "from empty to ninety": from nothing
  if (item.phrase === 'empty' && phraseAt(items, i - 1) === 'from' && phraseAt(items, i + 1) === 'to')
    return [{ ...wordAmount(0, null, item.span, text), text: '0' }];
  // "pump on 88 off 117": at what pressures
  const onAt = /^((?:air )?(?:pump|comp|compressor))(?: is| comes)? on$/.exec(item.phrase)?.[1];
  const level = items[i + 1];
  const offAt = items.findIndex((_, j) => j > i + 1 && j <= i + 5 && phraseAt(items, j) === 'off');
  if (
    onAt &&
    level?.k === 'num' &&
    (level.unit === null || dimensionOf(level.unit) === 'pressure') &&
    items[offAt + 1]?.k === 'num' &&
    offAt > 0
  ) {
    const pump: Span = [item.span[0], item.span[0] + onAt.length];
    const on: Span = [item.span[1] - 2, item.span[1]];
    return [
      { k: 'place', p: { part: 'pump' }, spans: [pump], ...base, span: pump, phrase: onAt },
      { k: 'prep', ...base, span: on, phrase: 'on' },
    ];
  }
  // "is right on at 13 1/4": no switch point
  if (/^(?:is|was|sits|its) (?:right|dead|bang|spot)$/.test(item.phrase) && phraseAt(items, i + 1) === 'on at')
    return [{ k: 'filler', ...base }];
  if (item.phrase === 'on at' && /(?:^| )(?:right|dead|bang|spot)$/.test(phraseAt(items, i - 1)))
    return [{ k: 'prep', ...base, phrase: 'at' }];
  // "is right down on the ground": it, not the pump's ground
  if (
    item.phrase === 'ground' &&
    phraseAt(items, i - 1) === 'the' &&
    phraseAt(items, i - 2) === 'on' &&
    ['low', 'flat', 'on stops'].includes(signBefore(raw) ?? '')
  )
    return [{ k: 'filler', ...base }];
  // "then is off 3 min": the pump's rest
  const rests = items[phraseAt(items, i + 1) === 'for' ? i + 2 : i + 1];
  if (item.phrase === 'is off' && rests?.k === 'num' && rests.unit !== null && dimensionOf(rests.unit) === 'duration')
    return [{ k: 'prep', ...base, phrase: 'off' }];
  // "11.2 at motor running": the pump's motor where volts or amps are told
  if (item.phrase === 'motor running' && electric(items, i)) {
    const cut = item.span[0] + 'motor'.length;
    const motor: Span = [item.span[0], cut];
    const run: Span = [cut + 1, item.span[1]];
    return [
      { k: 'place', p: { part: 'motor' }, spans: [motor], ...base, span: motor, phrase: 'motor' },
      { k: 'cond', v: 'pump running', holds: true, ...base, span: run, phrase: 'running' },
    ];
  }
  return null;
};

/** What a phrase is for what follows it, once idle words are out of the way; null when it is its own sense. */
export const followingCase = ({ items, i, item, raw, base, text }: PhraseAt): Settled[] | null => {
  // "pump starts at 3:00": when, not at what pressure
  const hour = items[i + 1];
  if (
    hour?.k === 'num' &&
    hour.clock !== undefined &&
    /\b(?:starts?|stops?)(?: at)?$/.test(item.phrase) &&
    item.senses.some((s) => s.k === 'measure')
  )
    return [
      {
        k: 'sign',
        v: /start/.test(item.phrase) ? 'starts' : 'stops',
        ...base,
        phrase: 'pump starts',
      },
    ];
  // "air out the unloader constantly", "air out of the left exhaust": where it escapes; only tank and bags are emptied
  if (/^air (?:is )?out(?: of)?$/.test(item.phrase)) {
    const from = partsAhead(items, i);
    if (from[0] !== undefined && !/^(?:tank|bellows|coach)$/.test(from[0])) return [{ k: 'sign', v: 'leaks', ...base }];
    const rest = text.slice(item.span[1], item.span[1] + 60);
    // "air out lr bag thru a pin hole": it escapes
    if (/^[^,.;]*\b(?:thru|through|hole|pinhole|crack|split|seam|tear|crimp|constantly|all the time)\b/i.test(rest))
      return [{ k: 'sign', v: 'leaks', ...base }];
    // one bag, or the tank, is not all there is
    if (from[0] === 'bellows' && from.includes('tank')) return [{ k: 'cond', v: 'air vented', holds: true, ...base }];
    if (from[0] === 'bellows')
      return /^[^,.;]*\b(?:bags|bellows|both|air ?bags|springs)\b/i.test(rest) &&
        !/^[^,.;]*\b(?:left|right|lh|rh|lr|rr|l|r|n\/s|o\/s)\b/i.test(rest)
        ? [{ k: 'cond', v: 'bellows vented', holds: true, ...base }]
        : [{ k: 'unknown', low: item.phrase, span: item.span }];
    if (from[0] === 'tank') return [{ k: 'cond', v: 'tank drained', holds: true, ...base }];
  }
  // "the tank comes up and the pump shuts off": no figure, so it is what the pump does
  const pumps = raw.findLast((r) => r.k !== 'filler');
  if (
    item.senses.every((s) => s.k === 'measure') &&
    /^(?:shuts off|shut off|cuts out|kicks off|turns off)$/.test(item.phrase) &&
    pumps?.k === 'place' &&
    pumps.p.part === 'pump' &&
    !items.slice(i + 1, i + 4).some((o) => o.k === 'num')
  )
    return [{ k: 'sign', v: 'stops', ...base }];
  // "wont build past 60": it builds, and not far enough
  if (
    item.senses.some((s) => s.k === 'sign' && s.v === 'no air') &&
    /\bbuilds?\b/.test(item.phrase) &&
    [1, 2, 3].some(
      (k) => hourless(items[i + k]) && !items.slice(i + 1, i + k).some((o) => o.k === 'sep' || o.k === 'join'),
    )
  )
    return [{ k: 'sign', v: 'slow build', ...base }];
  // "pump just cut out 118", "pump just shut off at 117": where it did
  const point = phraseAt(items, i + 1) === 'at' ? items[i + 2] : items[i + 1];
  if (item.senses.some((s) => s.k === 'cond') && hourless(point)) {
    if (/\b(?:cut (?:out|off)|shut off|kicked (?:off|out))$/.test(item.phrase))
      return [{ k: 'measure', v: 'cut-out', ...base }];
    // "comp kicked in at 84"
    if (/\b(?:kicked|came|cut|switched|turned) (?:in|on)$/.test(item.phrase))
      return [{ k: 'measure', v: 'cut-in', ...base }];
  }
  // "aired up to 110": built, by somebody
  if (item.phrase === 'aired up' && phraseAt(items, i + 1) === 'to' && hourless(items[i + 2]))
    return [{ k: 'work', v: 'pumped up', ...base }];
  // "both exhausts still bubbling": the ports
  if (
    item.phrase === 'exhausts' &&
    (only(beyond(items, i + 1, true), 'sign') ||
      // "hose in water both exhausts, right steady bubbles"
      items.slice(0, i).some((it) => 'phrase' in it && /^hoses?$/.test(it.phrase))) &&
    /^(?:both|left|right|the|n\/s|o\/s|lh|rh)$/.test(phraseAt(items, i - 1))
  )
    return [{ k: 'place', p: { part: 'exhaust port' }, spans: [item.span], ...base }];
  // "hose under water, bubbles": what is dipped is the hose of an exhaust, no line of the coach
  if (/^hoses?$/.test(item.phrase) && /\b(?:in|into|under) (?:the |a )?(?:water|bucket)\b/i.test(text))
    return [{ k: 'place', p: { part: 'exhaust port' }, spans: [item.span], ...base }];
  // "settled 2 inches": sank
  const by = items[i + 1];
  if (/^settled(?: down)?$/.test(item.phrase) && by?.k === 'num' && ['in', 'mm', 'cm'].includes(by.unit ?? ''))
    return [{ k: 'change', v: 'fall', ...base }];
  // "12.5 V into the pressure switch, 0 V out of it": the other terminal of what was spoken of
  const terminal = /^out of it$/.test(item.phrase) ? terminalOf[lastPart(raw) ?? ''] : undefined;
  if (item.phrase === 'out of it') {
    if (!terminal) return [{ k: 'filler', ...base }];
    return [{ k: 'place', p: { part: terminal }, spans: [item.span], assumed: true, ...base }];
  }
  return null;
};
