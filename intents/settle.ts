/** Settles each item to one sense, merges neighbouring places, resolves relative sides and this coach's labels. */
import type { Amounting } from './amount-item.ts';
import { only, pick } from './choose-sense.ts';
import { dottedTimes } from './dotted-times.ts';
import { beyond, idle, phraseAt } from './idle.ts';
import type { Item } from './items.ts';
import type { Relative, Sense } from './lexicon.ts';
import { compatible, tidy, glue, wheeled } from './merge-places.ts';
import { makePlace, takePlace, type PlaceParts } from './place.ts';
import type { Condition, Context, Part, Span } from './shapes.ts';
import { sideOf, labelled, slashedCorner, rightHand, otherOne, partFollows } from './side-words.ts';

export type PlaceItem = {
  k: 'place';
  p: PlaceParts;
  span: Span;
  spans: Span[];
  near?: boolean;
  assumed?: boolean;
  ask?: Relative;
  bare?: 'r' | 'l' | 'rh' | 'l/r' | 'ps';
  /** "the right one": the part spoken of before, on that side. */
  one?: boolean;
  /** "the other one": of the side across. */
  other?: boolean;
  phrase: string;
};

export type Settled =
  | Amounting
  | PlaceItem
  | ({ span: Span; near?: boolean; phrase: string } & Exclude<Sense, { k: 'place' } | { k: 'wheel' }>)
  | { k: 'wheel'; v: 'forward' | 'aft'; span: Span; phrase: string; near?: boolean }
  | { k: 'sep'; hard: boolean; low: string; span: Span }
  | { k: 'join'; span: Span }
  | { k: 'unknown'; low: string; span: Span };

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

const electric = (items: readonly Item[], i: number): boolean =>
  phraseAt(items, i - 1) === 'at' ||
  items.some((o) => o.k === 'num' && o.unit !== null && ['V', 'mV', 'A'].includes(o.unit));

const unitNext = (item: Item | undefined): Amounting['unit'] => {
  const sense = item?.k === 'senses' ? item.senses.find((s) => s.k === 'unit') : undefined;
  return sense?.k === 'unit' ? sense.v : null;
};

export const settle = (items: readonly Item[], text: string, context: Context): Settled[] => {
  const raw: Settled[] = [];
  const lastReal = (): Settled | undefined => raw.findLast((r) => r.k !== 'filler' && r.k !== 'prep');
  items.forEach((item, i) => {
    if (item.k !== 'senses') {
      if (item.k === 'unknown') {
        const label = labelled(item.low, text.slice(...item.span), lastReal(), context.labels);
        if (label?.startsWith('panel '))
          return void raw.push({ k: 'cond', v: label as Condition, holds: true, span: item.span, phrase: item.low });
      }
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
    // "the other one holds": across from what was spoken of
    if (otherOne(items, i, text)) return void raw.push({ k: 'place', p: {}, spans: [item.span], other: true, ...base });
    // "panel on ROAD": a preposition and the label
    const led = /^(?:on|in|at|to) (\S+)$/.exec(item.phrase)?.[1];
    const after = led
      ? labelled(led, text.slice(item.span[1] - led.length, item.span[1]), lastReal(), context.labels)
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
    // "settled 2 inches": sank
    const by = items[i + 1];
    if (/^settled(?: down)?$/.test(item.phrase) && by?.k === 'num' && ['in', 'mm', 'cm'].includes(by.unit ?? ''))
      return void raw.push({ k: 'change', v: 'fall', ...base });
    const sense = pick(items, i, item.senses);
    if (sense.k !== 'place') return void raw.push({ ...sense, ...base });
    let p = sense.p;
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
  // merge neighbouring places
  const out: Settled[] = [];
  for (const item of raw) {
    if (item.k === 'wheel') {
      const at = out.findLastIndex((o) => o.k !== 'filler' && o.k !== 'prep');
      const prev = out[at];
      if (
        prev?.k === 'place' &&
        prev.p.side &&
        prev.p.end !== 'front' &&
        (prev.p.part === undefined || wheeled.has(prev.p.part)) &&
        !prev.p.wheel
      ) {
        out.length = at + 1;
        // "drivers rear wheel": the corner's, when no end was said
        if (/^(?:rear|front|back) wheel/.test(item.phrase) && !prev.p.end && !prev.p.part) {
          out.length = at + 1;
          out[at] = {
            ...prev,
            p: { ...prev.p, end: item.v === 'aft' ? 'rear' : 'front', part: 'wheel' },
            spans: [...prev.spans, item.span],
            span: [prev.span[0], item.span[1]],
          };
          continue;
        }
        const named = /wheel/.test(item.phrase) ? ('wheel' as const) : prev.p.part;
        out[at] = {
          ...prev,
          p: { ...prev.p, end: 'rear', wheel: item.v, ...(named ? { part: named } : {}) },
          spans: [...prev.spans, item.span],
          span: [prev.span[0], item.span[1]],
        };
        continue;
      }
      // "rear aft plus 1": the other wheel, its end said again
      const before = out.findLast((o): o is PlaceItem => o.k === 'place' && o.p.wheel !== undefined);
      if (
        prev?.k === 'place' &&
        before &&
        prev.p.end === 'rear' &&
        !prev.p.side &&
        !prev.p.part &&
        before.p.wheel !== item.v
      ) {
        out[at] = {
          ...prev,
          p: { ...before.p, wheel: item.v },
          spans: [...prev.spans, item.span],
          span: [prev.span[0], item.span[1]],
          assumed: true,
        };
        out.length = at + 1;
        continue;
      }
      // "aft ok": the other wheel of the place spoken of before
      const twin = out.findLast((o): o is PlaceItem => o.k === 'place' && o.p.wheel !== undefined);
      if (twin && prev?.k !== 'place') {
        out.push({
          k: 'place',
          p: { ...twin.p, wheel: item.v },
          span: item.span,
          spans: [item.span],
          phrase: item.phrase,
          assumed: true,
        });
        continue;
      }
      if (/wheel/.test(item.phrase)) {
        out.push({
          k: 'place',
          p: { end: item.v === 'forward' ? 'front' : 'rear', part: 'wheel' },
          span: item.span,
          spans: [item.span],
          phrase: item.phrase,
        });
        continue;
      }
      out.push({ ...item });
      continue;
    }
    if (item.k === 'place') {
      const at = out.findLastIndex(
        (o) =>
          !(o.k === 'filler' && glue.test(o.phrase)) &&
          !(o.k === 'prep' && ['of', 'on', 'at', 'in', 'from', 'to', 'near', 'by', 'around'].includes(o.phrase)),
      );
      const prev = out[at];
      const between = out.slice(at + 1);
      const prep = between.some((b) => b.k === 'prep');
      if (prev?.k === 'place' && !(prev.p.part === 'shim' && !item.p.part)) {
        const merged = compatible(prev.p, item.p);
        const same = merged && makePlace(merged) === makePlace(prev.p) && !prep;
        const joinsParts = Boolean(prev.p.part && item.p.part && prev.p.part !== item.p.part);
        // "left bag leaks at the crimp right bag is fine": a new thing on the other side
        const anew =
          Boolean(item.p.side && prev.p.part && !prev.p.side && !prep) &&
          (item.p.part !== undefined || partFollows(raw, item)) &&
          out.slice(0, at).some((o) => o.k === 'place' && o.p.side !== undefined && o.p.side !== item.p.side);
        const fits =
          merged && !anew && (!prep || joinsParts || !prev.p.part || !item.p.part) && !(prev.ask && item.ask);
        if (merged && fits && !(same && !item.near && prev.phrase === item.phrase)) {
          const ask = prev.ask ?? item.ask;
          out.length = at + 1;
          out[at] = {
            ...prev,
            p: merged,
            spans: [...prev.spans, item.span],
            span: [prev.span[0], item.span[1]],
            ...(ask ? { ask } : {}),
            ...(prev.near || item.near ? { near: true } : {}),
            ...(item.one ? { one: true } : {}),
            ...(prev.other ? { other: true } : {}),
          };
          delete out[at].bare;
          continue;
        }
      }
      // "the fuse for the pump": the first is the thing
      const forAt = out.findLastIndex((o) => o.k === 'filler' && o.phrase === 'for');
      const head = out.slice(0, forAt).findLast((o) => o.k !== 'filler');
      if (
        forAt > 0 &&
        out.slice(forAt + 1).every((o) => o.k === 'filler') &&
        head?.k === 'place' &&
        head.p.part !== undefined &&
        item.p.part !== undefined
      ) {
        head.spans.push(item.span);
        continue;
      }
      // "forward lr wheel": a wheel word left standing before its place
      if (prev?.k === 'wheel' && item.p.side) {
        out.length = at;
        out.push({
          ...item,
          p: { ...item.p, end: 'rear', wheel: prev.v, part: item.p.part ?? 'wheel' },
          spans: [prev.span, item.span],
        });
        continue;
      }
    }
    out.push(item);
  }
  out.forEach((item, i) => {
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
  const toes = out.some((o) => o.k === 'measure' && (o.v === 'toe' || o.v === 'camber'));
  return out.map((item): Settled => {
    if (item.k !== 'place') return item;
    const p = tidy(item.p);
    // which of the two wheels, and nothing else named: the wheel itself
    return { ...item, p: p.wheel && !p.part ? { ...p, part: 'wheel' } : toes && p.wheel ? { ...p, part: p.part } : p };
  });
};

export const partOf = (place: string): Part | undefined => takePlace(place)?.part;
