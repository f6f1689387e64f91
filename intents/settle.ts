/** Settles each item to one sense, merges neighbouring places, resolves relative sides and this coach's labels. */
import { pressureParts } from './dims.ts';
import { dutyRead } from './duty.ts';
import { joinNeighbours } from './join-neighbours.ts';
import { only, pick } from './choose-sense.ts';
import { dottedTimes } from './dotted-times.ts';
import { minutesSeconds } from './minutes-seconds.ts';
import { beyond, idle } from './idle.ts';
import { inAndOut } from './in-and-out.ts';
import { namedBefore } from './named-before.ts';
import { betweenParts, bracketsOf, located } from './located.ts';
import { followingCase, leadingCase, type PhraseAt } from './phrase-cases.ts';
import { takenOff } from './taken-off.ts';
import type { Item } from './items.ts';
import { tidy } from './merge-places.ts';
import type { PlaceItem, Settled } from './settled.ts';
import { joinSplitVerbs } from './split-verb.ts';
import type { Condition, Context } from './shapes.ts';
import { sideOf, labelled, slashedCorner, rightHand, otherOne } from './side-words.ts';

const joins = new Set(['and', 'but', 'then', 'though', 'however']);

const pinned = /\b(?:pins?|bush(?:es|ings?)?|pry(?:ing| bar)?)\b/i;

/** A number in the rest of the clause. */
const readsNext = (items: readonly Item[], i: number): boolean => {
  for (let j = i + 1; j < items.length && items[j]!.k !== 'sep'; j += 1) if (items[j]!.k === 'num') return true;
  return false;
};

/** Each item of a sentence in one sense. */
const senses = (given: readonly Item[], text: string, asTyped: string, context: Context): Settled[] => {
  const items = joinSplitVerbs(given);
  const raw: Settled[] = [];
  const lastReal = (): Settled | undefined => raw.findLast((r) => r.k !== 'filler' && r.k !== 'prep');
  items.forEach((item, i) => {
    if (item.k !== 'senses') {
      if (item.k === 'unknown') {
        const stands = lastReal();
        // "holds in lock": a word that is only a label's
        const inIt = /(?:^|\s)(?:in|into|to) $/i.test(text.slice(Math.max(0, item.span[0] - 6), item.span[0]));
        const led =
          inIt ||
          (stands?.k === 'place' &&
            stands.p.side !== undefined &&
            stands.p.part === undefined &&
            (/ (?:is|are|still|now) (?:still |now )?(?:in|on) $/i.test(text.slice(0, item.span[0]).slice(-16)) ||
              (/ (?:in|on|at) $/i.test(text.slice(0, item.span[0]).slice(-4)) &&
                raw.some((r) => r.k === 'cond' && r.v.startsWith('panel')))));
        const label = labelled(item.low, asTyped.slice(...item.span), stands, context.labels, led);
        if (label?.startsWith('panel '))
          return void raw.push({ k: 'cond', v: label as Condition, holds: true, span: item.span, phrase: item.low });
      }
      // "sheet: rear height 13 to 13 1/2": what stands in it
      if (item.k === 'unknown' && /^(?:sheet|spec|manual|book|limit|plate)$/.test(item.low)) {
        const colon = items[i + 1];
        if (colon?.k === 'sep' && colon.low === ':')
          return void raw.push({ k: 'spec', span: item.span, phrase: item.low });
      }
      // "to be renewed: left link"
      const headed = lastReal();
      if (
        item.k === 'sep' &&
        item.low === ':' &&
        (headed?.k === 'work' ||
          (headed?.k === 'place' &&
            (headed.p.part === undefined || pressureParts.has(headed.p.part)) &&
            items[i + 1]?.k === 'num' &&
            !raw.some((r) => r.k === 'num')) ||
          (headed?.k === 'measure' && headed.v === 'pump-up'))
      )
        return void raw.push({ k: 'filler', span: item.span, phrase: ':' });
      return void raw.push(item);
    }
    const base = { span: item.span, phrase: item.phrase, ...(item.near ? { near: true } : {}) };
    const label = labelled(item.phrase, asTyped.slice(...item.span), lastReal(), context.labels);
    if (label?.startsWith('panel ')) return void raw.push({ k: 'cond', v: label as Condition, holds: true, ...base });
    const at: PhraseAt = { items, i, item, text, raw, base };
    const leading = leadingCase(at);
    if (leading) return void raw.push(...leading);
    // "the other one holds": across from what was spoken of
    if (otherOne(items, i, text)) return void raw.push({ k: 'place', p: {}, spans: [item.span], other: true, ...base });
    // "panel on ROAD": a preposition and the label
    const led = /^(?:on|in|at|to) (\S+)$/.exec(item.phrase)?.[1];
    const after = led
      ? labelled(
          led,
          asTyped.slice(item.span[1] - led.length, item.span[1]),
          lastReal(),
          context.labels,
          raw.some((r) => r.k === 'cond' && r.v.startsWith('panel')),
        )
      : null;
    if (after?.startsWith('panel ')) return void raw.push({ k: 'cond', v: after as Condition, holds: true, ...base });
    // "no bubbles at the right crimp or the left"
    if (item.phrase === 'or' && only(beyond(items, i + 1, true), 'place'))
      return void raw.push({ k: 'join', span: item.span });
    if (joins.has(item.phrase)) return void raw.push({ k: 'join', span: item.span });
    if (idle(items, i)) return void raw.push({ k: 'filler', ...base });
    // "l/r bag 48, r/r bag 60": corners where both are written so
    const corner = slashedCorner(items, i, text.slice(...item.span).toLowerCase());
    if (corner) return void raw.push({ k: 'place', p: corner, spans: [item.span], ...base });
    if (item.phrase === 'rh') return void raw.push(rightHand(items, i, base));
    const following = followingCase(at);
    if (following) return void raw.push(...following);
    const sense = pick(items, i, item.senses);
    if (sense.k !== 'place') return void raw.push({ ...sense, ...base });
    let p = sense.p;
    // an arm with pins and bushings is no valve's, unless called so
    if (p.part === 'arm' && pinned.test(text) && !/valve|height|level|lever|sensing/.test(item.phrase))
      p = { ...p, part: 'control arm' };
    // "new tank gauge, it agrees": the gauge, where no pressure is read off it
    if (/^tank ga?u?ge$/.test(item.phrase) && p.part === 'tank' && (!readsNext(items, i) || only(items[i + 1], 'sign')))
      p = { part: 'gauge' };
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
  return raw;
};

/** What neighbours of one sentence make together. */
const together = (raw: Settled[], text: string, context: Context): Settled[] => {
  const out = joinNeighbours(dutyRead(raw));
  takenOff(out);
  return namedBefore(located(betweenParts(bracketsOf(inAndOut(out, context))), text)).map((item): Settled => {
    if (item.k !== 'place') return item;
    const p = tidy(item.p);
    // which of the two wheels, and nothing else named: the wheel itself
    return { ...item, p: p.wheel && !p.part ? { ...p, part: 'wheel' } : p };
  });
};

/** Cut after each hard separator. */
const bySentence = <T extends Item | Settled>(items: readonly T[]): T[][] => {
  const out: T[][] = [[]];
  for (const item of items) {
    out.at(-1)!.push(item);
    if (item.k === 'sep' && item.hard) out.push([]);
  }
  return out.filter((sentence) => sentence.length > 0);
};

/** Sentence by sentence: a word that begins one stands at a beginning, whatever came before. */
export const settle = (items: readonly Item[], text: string, context: Context): Settled[] => {
  // where all is written in capitals, they mark no label
  const asTyped = /\p{Ll}/u.test(text) || !/\p{Lu}.*\s.*\p{Lu}/su.test(text) ? text : text.toLowerCase();
  const raw = bySentence(items).flatMap((sentence) => senses(sentence, text, asTyped, context));
  minutesSeconds(raw);
  dottedTimes(raw, text);
  return bySentence(raw).flatMap((sentence) => together(sentence, text, context));
};
