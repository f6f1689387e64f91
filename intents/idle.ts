/** Words that are idle where they stand: "left" as remaining, "right" as an adverb, "down" as a direction. */
import type { Amounting } from './amount-item.ts';
import type { Item } from './items.ts';
import type { Sense } from './lexicon.ts';

const only = (item: Item | undefined, k: Sense['k']): boolean =>
  item?.k === 'senses' && item.senses.some((s) => s.k === k);

/** The next item that is no filler, from `i` on; preps count as filler when asked. */
export const beyond = (items: readonly Item[], i: number, preps: boolean): Item | undefined => {
  for (let j = i; j < items.length; j += 1) {
    const it = items[j]!;
    if (it.k === 'senses' && it.senses.every((s) => s.k === 'filler' || (preps && s.k === 'prep'))) continue;
    return it;
  }
  return undefined;
};

export const phraseAt = (items: readonly Item[], i: number): string => {
  const it = items[i];
  return it?.k === 'senses'
    ? it.phrase
    : it?.k === 'unknown'
      ? it.low
      : it?.k === 'sep'
        ? ','
        : it?.k === 'num'
          ? '#'
          : '';
};

const atPort = (it: Item): boolean =>
  it.k === 'senses' && it.senses.some((s) => s.k === 'place' && s.p.part === 'exhaust port');

/** One of the `most` items before `i` is such a word. */
const saidBefore = (items: readonly Item[], i: number, most: number, word: RegExp): boolean => {
  for (let j = i - 1; j >= 0 && i - j <= most; j -= 1) if (word.test(phraseAt(items, j))) return true;
  return false;
};

export const articles = /^(?:the|on|at|to|from|of|hand|both|and|,|my|its|is|right|far|toward|towards|in|for|by)?$/;

export const leftVerbs =
  /^(?:it|them|her|him|overnight|over|open|running|sitting|standing|parked|out|off|alone|behind|that|a|my|us|me|there|with)$/;

export const rightAdverbs =
  /^(?:away|now|by|over|after|before|off|there|behind|under|up|down|past|next|then|beside|where|when|around|through|in|on|at|about|here|as|so|along|above|below|to|into|out)$/;

/** "left" as remaining or as a verb, "right" as an adverb, "down" as a direction: no place and no sign. */
export const idle = (items: readonly Item[], i: number): boolean => {
  const it = items[i];
  if (it?.k !== 'senses') return false;
  const prev = phraseAt(items, i - 1);
  const next = phraseAt(items, i + 1);
  const after = items[i + 1];
  const placed = after?.k === 'senses' && after.senses.some((s) => s.k === 'place');
  if (it.phrase === 'even' && (/^(?:on|when|if|with|after|in|though|at)$/.test(next) || items[i - 1]?.k === 'num'))
    return true;
  if (it.phrase === 'straight' && /^(?:off|from|out|after|away|to)/.test(next)) return true;
  if (it.phrase === 'stuck' && /^(?:bigger|larger|another|some|his|my|her)$/.test(next)) return true;
  if (it.phrase === 'driving' && /^(?:me|my|us|him|her|them|everybody|everyone)$/.test(next)) return true;
  if (it.phrase === 'shot' && /^(?:across|out|off|past|over|into|up)$/.test(next)) return true;
  if (/^(?:old|the old)$/.test(it.phrase) && /^(?:as|than|the)$/.test(prev) && !placed) return true;
  if (
    i === 0 &&
    /^(?:ok|okay|alright|all right)$/.test(it.phrase) &&
    items.length > 3 &&
    after?.k !== 'sep' &&
    after?.k !== 'join'
  )
    return true;
  if (/^(?:sliding|slid|slide|slip|slipping)$/.test(it.phrase) && /^(?:under|underneath|in|beside|beneath)$/.test(next))
    return true;
  if (it.phrase === 'gone' && /^(?:from|down|to|up)$/.test(next)) return true;
  // "lr 14 flat": fourteen and nothing over
  if (it.phrase === 'flat' && items[i - 1]?.k === 'num' && (items[i - 1] as Amounting).clock === undefined) return true;
  // "tank lt on at 60": a light
  if (it.phrase === 'lt' && /^(?:on|off|came on|comes on|goes off|went out)\b/.test(next)) return true;
  // "crack at the lower fold": which of them
  if (
    /^(?:lower|upper)$/.test(it.phrase) &&
    after?.k === 'senses' &&
    after.senses.some((s) => s.k === 'place' && s.p.part !== undefined && !s.p.side) &&
    /^(?:the|at|on|in|a)$/.test(prev)
  )
    return true;
  if (it.phrase === 'bang' && next === 'on' && items[i + 2]?.k === 'num') return true;
  if (it.phrase === 'down' && prev === 'it' && phraseAt(items, i - 2) === 'set') return true;
  if (it.phrase === 'test' && prev === 'for') return true;
  // "lf and rf both 15 1/2": the two named
  if (
    it.phrase === 'both' &&
    items[i + 1]?.k === 'num' &&
    only(items[i - 1], 'place') &&
    phraseAt(items, i - 2) === 'and' &&
    only(items[i - 3], 'place')
  )
    return true;
  switch (it.phrase) {
    case 'left':
      if (
        prev === 'the' ||
        prev === 'hand' ||
        /^(?:lean|leans|leaning|leaned|lists|listing|tilts|tilting)(?: (?:to|over|over to))?$/.test(prev)
      )
        return false;
      // "12 psi left in tank", "3 hours left"
      if (
        items[i - 1]?.k === 'num' &&
        !placed &&
        after?.k !== 'num' &&
        (next === 'in' ||
          next === 'on' ||
          (items[i - 1]?.k === 'num' &&
            (items[i - 1] as Amounting).unit !== null &&
            (next === '' || next === ',') &&
            items.some((o) => only(o, 'place') && o !== it)))
      )
        return next === 'in' || next === 'on' || items.slice(0, i - 1).some((o) => only(o, 'place'));
      if (
        /^(?:was|were|been|i|he|they|someone|somebody|had|has|have|we|she|guy|got|any|nothing|none|air|much)$/.test(
          prev,
        ) &&
        !placed &&
        after?.k !== 'num'
      )
        return true;
      // "panel left in auto": what it stands in, unless each side is told
      if (
        prev === 'panel' &&
        /^in\b/.test(next) &&
        !items.slice(i + 1).some((o) => o.k === 'senses' && /^(?:right|rh|r)$/.test(o.phrase))
      )
        return true;
      // "left the old bag for the customer"
      if (next === 'the' && /^(?:old|bad|used|spare|original)$/.test(phraseAt(items, i + 2))) return true;
      if (prev === '' || prev === ',' || prev === 'and')
        return (
          leftVerbs.test(next) ||
          (next === 'the' && prev !== 'and'
            ? items
                .slice(i + 1)
                .some((o) => /^(?:in|on|off|out|open|running|across|overnight)$/.test(o.k === 'senses' ? o.phrase : ''))
            : false)
        );
      return leftVerbs.test(next) && !articles.test(prev);
    case 'right':
      if (prev === 'the' || prev === 'hand' || prev === 'on') return false;
      // "35 left 48 right in the bags"
      if (items[i - 1]?.k === 'num' && phraseAt(items, i - 2) === 'left' && items[i - 3]?.k === 'num') return false;
      // "left rear right down on the rubber"
      if (/^down (?:on|to)\b/.test(`${next} ${phraseAt(items, i + 2)}`) && only(items[i - 1], 'place')) return true;
      // "the left rear sits right down on the stops"
      if (
        /^(?:sits?|sitting|sat|goes|went|sinks?|sank|drops?|dropped|is|are|was)$/.test(prev) &&
        /^(?:down|up|on) (?:on|to|in|at|against|the|its)\b/.test(`${next} ${phraseAt(items, i + 2)}`) &&
        items.slice(0, i).some((o) => only(o, 'place'))
      )
        return true;
      if (/^(?:leaning|leans|lean|leaned|tilting|tilts|listing|lists|tipped)$/.test(prev)) return false;
      if (
        /^(?:all|ok|okay|just|thats|thats about|not|isnt|looks|seems|about|its|doesnt look|sit|sits|sitting|sat|went)$/.test(
          prev,
        ) &&
        !placed
      )
        return next === '' || next === ',' || rightAdverbs.test(next);
      return rightAdverbs.test(next) &&
        !(
          next === 'in' ||
          next === 'on' ||
          next === 'at' ||
          next === 'to' ||
          next === 'out' ||
          next === 'up' ||
          next === 'down' ||
          next === 'as' ||
          next === 'so'
        )
        ? true
        : /^(?:on|at|in|up|down|out|to)$/.test(next) && phraseAt(items, i + 2) === 'the';
    case 'down':
    case 'up': {
      if (next === 'by' && phraseAt(items, i + 2) === 'hand') return true;
      if (next === 'to')
        return !items.slice(Math.max(0, i - 3), i).some((o) => o.k === 'num') && items[i + 2]?.k !== 'num';
      if (/^(?:the road|road|home|there|here|with|tight|under|inside)$/.test(next)) return true;
      if (it.phrase === 'down' && next === 'the') return true;
      if (
        /^(?:cool|cools|cooled|slow|slows|slowed|calm|calms|settle|let|break|burn|write|wrote|note|noted|hose|hosed|wipe|wiped|shut|shuts|cut|cooling|slowing|pull|pulling|pulled|blew|hold|track|narrow|narrowed)$/.test(
          prev,
        )
      )
        return true;
      const before = items[i - 1];
      return (
        before?.k === 'senses' &&
        before.senses.some((s) => s.k === 'work') &&
        !before.senses.some((s) => s.k === 'sign')
      );
    }
    case 'back': {
      if (/^(?:the|left|right|at|both|in|its)$/.test(prev) || placed) return false;
      if (/^(?:up|on|in|to|at|off|down|again|together|out|over|home|through)$/.test(next)) return true;
      const before = items[i - 1];
      return (
        /^(?:go|went|come|came|get|got|put|goes|coming|comes|going|air|it|them)$/.test(prev) ||
        (before?.k === 'senses' &&
          before.senses.some((s) => s.k === 'sign' || s.k === 'work' || s.k === 'change' || s.k === 'cond'))
      );
    }
    case 'aired up':
    case 'pumped up':
      return saidBefore(items, i, 3, /^(?:while|whilst|with|when|its|shes)$/);
    case 'plugged in':
      return /^(?:not|isnt|wasnt|was|is|its|were|been|to)$/.test(prev) && !placed;
    case 'old':
      // "got the old bag out", "left the old bag": which, not how it looks
      if (prev === 'the' && phraseAt(items, i - 2) === 'left' && placed) return true;
      if (/^(?:the|that|my|his|its)$/.test(prev) && placed && items.some((o) => only(o, 'work'))) return true;
      return /^(?:one|ones)$/.test(next) && items.some((o) => only(o, 'work') || (only(o, 'sign') && o !== it));
    case 'cut out':
    case 'cutout':
    case 'cut-out':
    case 'cut off':
      return prev === 'past' || prev === 'beyond' || prev === 'above' || prev === 'over';
    case 'lowered':
    case 'raised':
      return placed || (/^(?:the|it|her|its|my)$/.test(next) && only(beyond(items, i + 1, false), 'place'));
    case 'water':
      if (prev === 'in' && !placed && !/^(?:tank|line|drain)$/.test(next) && items.some(atPort)) return true;
      return (
        /^(?:in|into|under|in the|of|in a)$/.test(prev) &&
        !/^(?:in|of)$/.test(next) &&
        (saidBefore(items, i, 4, /^(?:dipped|dunked|dip|dunk|held|bucket|hose|put|submerged)$/) ||
          (prev === 'under' && items.some(atPort)))
      );
    // "held the hose from the left exhaust under water": by hand
    case 'held':
      return /^(?:the|a|its|hose|exhaust|end)$/.test(next) && items.some((_, j) => phraseAt(items, j) === 'water');
    case 'touched':
    case 'touch':
    case 'touching':
    case 'moved':
      return (
        /^(?:i|we|he|she|they|you|not|never|nobody|anyone|anybody|someone|have|ive|weve|hasnt|havent|dont|didnt|before i)$/.test(
          prev,
        ) && !placed
      );
    case 'ring':
    case 'rings':
      return next === 'of';
    case 'hi':
      return (
        i === 0 &&
        (next === ',' || next === '' || /^(?:there|again|all|me|its|this|just|its me|everyone|guys|mate)$/.test(next))
      );
    case 'even':
      return /^(?:with|when|if|though|after|before|at|the|a|more|then|now|while|without)$/.test(next);
    case 'calibrated':
      return placed;
    case 'steady':
      // "bubbles steady out the exhaust port": how they come
      return /^(?:bubbles|bubbling|hiss|hissing|leak|leaking|leaks|air|blowing|exhausting)$/.test(prev);
    case 'list':
    case 'lists':
      return /^(?:the|on the|to do|your|my)$/.test(prev);
    case 'new':
      // "since the new bag": named, not fitted
      if (placed && /^(?:soaped|soap|checked|tested|torqued|sprayed|soaped the|checked the)$/.test(prev)) return true;
      return /^(?:the|this|that|my|our|of|since)$/.test(prev) && placed;
    case 'stuck':
    case 'sticks':
      // "stuck a bigger one in": put
      return (
        /^(?:a|an|the|my|in|it in|some|another|#)$/.test(next) && !(next === 'in' && /^(?:is|its|was|got)$/.test(prev))
      );
    case 'pulled':
    case 'pulls':
      return /^(?:in|into|up|over|away)$/.test(next) && !placed;
    case 'driving':
      return /^(?:it|her|this|home|to|the)$/.test(next);
    case 'blowing':
    case 'blows':
    case 'blow':
      return /^(?:up|out|off|down|it|the)$/.test(next) && next !== 'off' && next !== 'out';
    case 'hole':
      return /^(?:almost|nearly|in|for)$/.test(next) && next !== 'in'
        ? true
        : /^(?:almost|nearly|no)$/.test(prev) && prev !== 'no';
    case 'leak':
    case 'leaks':
    case 'hiss':
      // "checked for leaks, none": looked for, and not found
      if ([1, 2, 3].some((k) => /^(?:none|none found|nothing found)$/.test(phraseAt(items, i + k)))) return false;
      return (
        saidBefore(items, i, 3, /^(?:find|finding|trace|chase|chasing|locate|hunt|hunting|source)$/) ||
        (/^(?:for|the|a)$/.test(prev) &&
          /^(?:look|looking|looked|check|checked|checking|hunting|hunted|search|searched|listen|listened|inspected|soaped|for)$/.test(
            phraseAt(items, i - 2),
          ))
      );
    case 'soap':
      // "soap shows bubbles": no work is told
      return !only(beyond(items, i + 1, true), 'place');
    case 'go down':
    case 'goes down':
    case 'going down':
      return /^(?:the|there|under|below|to|in)$/.test(next) && !placed;
    case 'write':
    case 'set':
      return !placed;
    case 'ok':
    case 'okay':
    case 'good':
    case 'fine':
    case 'great':
    case 'perfect':
      if (/^(?:were|so were|all set)$/.test(prev)) return true;
      if (
        /^(?:evening|morning|afternoon|day|night|job|work|one|luck|man|question|enough|time|weekend|week|trip|afternoon|point|idea|thing)$/.test(
          next,
        )
      )
        return true;
      return (
        (i === 0 ||
          (items.length > i + 2 &&
            items.slice(0, i).every((o) => o.k === 'senses' && o.senses.every((s) => s.k === 'filler')))) &&
        items.length > 1 &&
        it.phrase.startsWith('ok') &&
        (!placed || items.slice(i + 2).some((o) => o.k === 'num')) &&
        !/^(?:on|at|in|both|all|again)$/.test(next) &&
        !(next === 'now' && items.length <= 2)
      );
    case 'working':
    case 'works':
      return /^(?:on|under|at|in|from|around|near|over)$/.test(next) && !/^(?:its|it|pump|is|now)$/.test(prev);
    default:
      return false;
  }
};
