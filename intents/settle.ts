/** Settles each item to one sense, merges neighbouring places, resolves relative sides and this coach's labels. */
import type { Amounting, Item } from './items.ts';
import type { Relative, Sense } from './lexicon.ts';
import { makePlace, takePlace, type PlaceParts } from './place.ts';
import type { Condition, Context, Part, Side, Span } from './shapes.ts';
import { sideable } from './sideable.ts';
import { airSide, partJoins } from './words/parts.ts';

export type PlaceItem = {
  k: 'place';
  p: PlaceParts;
  span: Span;
  spans: Span[];
  near?: boolean;
  assumed?: boolean;
  ask?: Relative;
  bare?: 'r' | 'l' | 'rh';
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

const sideOf = (rel: Relative, traffic: 'right' | 'left'): Side => {
  // traffic keeps right: the driver sits left, the kerb is on the right
  const kerb: Side = traffic === 'right' ? 'right' : 'left';
  const other: Side = kerb === 'right' ? 'left' : 'right';
  return rel === 'kerb' || rel === 'passenger' ? kerb : other;
};

const isNum = (item: Item | undefined): item is Amounting => item?.k === 'num';
const only = (item: Item | undefined, k: Sense['k']): boolean =>
  item?.k === 'senses' && item.senses.some((s) => s.k === k);

/** The next item that is no filler, from `i` on; preps count as filler when asked. */
const beyond = (items: readonly Item[], i: number, preps: boolean): Item | undefined => {
  for (let j = i; j < items.length; j += 1) {
    const it = items[j]!;
    if (it.k === 'senses' && it.senses.every((s) => s.k === 'filler' || (preps && s.k === 'prep'))) continue;
    return it;
  }
  return undefined;
};
const behind = (items: readonly Item[], i: number): Item | undefined => {
  for (let j = i; j >= 0; j -= 1) {
    const it = items[j]!;
    if (it.k === 'senses' && it.senses.every((s) => s.k === 'filler' || s.k === 'prep')) continue;
    return it;
  }
  return undefined;
};

const rank: readonly Sense['k'][] = [
  'place',
  'wheel',
  'sign',
  'cond',
  'work',
  'measure',
  'often',
  'unit',
  'neg',
  'hedge',
  'told',
  'prep',
  'filler',
];
const best = (senses: readonly Sense[]): Sense => {
  for (const k of rank) for (const sense of senses) if (sense.k === k) return sense;
  return senses[0]!;
};

const pick = (items: readonly Item[], i: number, senses: readonly Sense[]): Sense => {
  if (senses.length === 1) return senses[0]!;
  const get = <K extends Sense['k']>(k: K): Extract<Sense, { k: K }> | undefined =>
    senses.find((s): s is Extract<Sense, { k: K }> => s.k === k);
  const next = beyond(items, i + 1, true);
  const prev = behind(items, i - 1);
  const measure = get('measure');
  if (measure && isNum(next)) return measure;
  if (measure && only(next, 'measure')) return measure;
  const work = get('work');
  const sign = get('sign');
  const often = get('often');
  const cond = get('cond');
  if (often && !cond && (prev || next) && !isNum(next)) return often;
  if (often && cond && items.some((it, j) => j !== i && it.k === 'senses' && it.senses.some((s) => s.k === 'sign')))
    return often;
  if (work && sign) {
    if (only(next, 'place') && !only(prev, 'place')) return work;
    return sign;
  }
  const place = get('place');
  if (work && place) return only(next, 'place') ? work : place;
  if (place && measure) return isNum(next) || isNum(prev) ? measure : place;
  if (place && sign) return only(next, 'place') || only(prev, 'place') ? sign : place;
  return best(senses);
};

const compatible = (a: PlaceParts, b: PlaceParts): PlaceParts | null => {
  const out: PlaceParts = { ...a };
  for (const key of ['side', 'end', 'wheel'] as const) {
    const value = b[key];
    if (value === undefined) continue;
    if (out[key] !== undefined && out[key] !== value) return null;
    Object.assign(out, { [key]: value });
  }
  if (a.part && b.part && a.part !== b.part) {
    const joined = partJoins[a.part]?.[b.part] ?? partJoins[b.part]?.[a.part];
    if (!joined) return null;
    out.part = joined;
  } else if (b.part) out.part = b.part;
  if (out.part && (out.side || out.end || out.wheel) && !sideable.has(out.part)) return null;
  return out;
};

/** Drops what a place cannot carry: an end on air parts of a rear side; the coach beside a corner. */
export const tidy = (p: PlaceParts): PlaceParts => {
  const out: PlaceParts = { ...p };
  if (out.part && airSide.has(out.part)) delete out.end;
  if (out.part === 'coach' && (out.side || out.end)) delete out.part;
  return out;
};

const labelled = (phrase: string, raw: string, prev: Settled | undefined, labels: Context['labels']): string | null => {
  const name = labels[phrase];
  if (!name) return null;
  if (!name.startsWith('panel ')) return name;
  const shouted = raw.length >= 2 && raw === raw.toUpperCase() && /[A-Z]/.test(raw);
  const after = prev?.k === 'place' && (prev.p.part === 'panel' || prev.p.part === 'panel port');
  return shouted || after ? name : null;
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
    if (joins.has(item.phrase)) return void raw.push({ k: 'join', span: item.span });
    const sense = pick(items, i, item.senses);
    if (sense.k !== 'place') return void raw.push({ ...sense, ...base });
    let p = sense.p;
    const place: PlaceItem = { k: 'place', p, spans: [item.span], ...base };
    if (sense.rel) {
      if (context.traffic === null) place.ask = sense.rel;
      else p = { ...p, side: sideOf(sense.rel, context.traffic) };
      place.p = p;
    }
    if (item.phrase === 'rh' || item.phrase === 'rr' || item.phrase === 'r' || item.phrase === 'l')
      if (item.phrase === 'rh' || item.phrase === 'r' || item.phrase === 'l') place.bare = item.phrase;
    raw.push(place);
  });
  // merge neighbouring places
  const out: Settled[] = [];
  for (const item of raw) {
    if (item.k === 'wheel') {
      const at = out.findLastIndex((o) => o.k !== 'filler' && o.k !== 'prep');
      const prev = out[at];
      if (
        prev?.k === 'place' &&
        prev.p.side &&
        (prev.p.end === 'rear' ||
          (!prev.p.end && prev.p.part !== undefined && ['wheel', 'tyre'].includes(prev.p.part))) &&
        !prev.p.wheel
      ) {
        out.length = at + 1;
        out[at] = {
          ...prev,
          p: { ...prev.p, end: 'rear', wheel: item.v, part: prev.p.part ?? 'wheel' },
          spans: [...prev.spans, item.span],
          span: [prev.span[0], item.span[1]],
        };
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
        (o) => o.k !== 'filler' && !(o.k === 'prep' && ['of', 'on', 'at', 'in', 'from', 'to'].includes(o.phrase)),
      );
      const prev = out[at];
      const between = out.slice(at + 1);
      const prep = between.some((b) => b.k === 'prep');
      if (prev?.k === 'place') {
        const merged = compatible(prev.p, item.p);
        const same = merged && makePlace(merged) === makePlace(prev.p) && !prep;
        const joinsParts = Boolean(prev.p.part && item.p.part && prev.p.part !== item.p.part);
        const fits = merged && (!prep || joinsParts || !prev.p.part || !item.p.part) && !(prev.ask && item.ask);
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
          };
          delete out[at].bare;
          continue;
        }
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
  return out.map((item): Settled => (item.k === 'place' ? { ...item, p: tidy(item.p) } : item));
};

export const partOf = (place: string): Part | undefined => takePlace(place)?.part;
