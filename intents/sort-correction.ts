/** What a correction says it is, and what it was said to be. */
import type { Unit } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import type { PlaceItem, Settled } from './settled.ts';

type Side = {
  nums: Amounting[];
  places: PlaceItem[];
  wheels: ('forward' | 'aft')[];
  measures: string[];
  units: Unit[];
};

export const side = (): Side => ({ nums: [], places: [], wheels: [], measures: [], units: [] });

/** Sorts what a correction names into what it is and what it was said to be. */
export const sortOut = (items: readonly Settled[]): { now: Side; was: Side; content: boolean; not: boolean } => {
  const now = side();
  const was = side();
  let content = false;
  let not = false;
  let into = now;
  items.forEach((item, i) => {
    const phrase = 'phrase' in item ? item.phrase : item.k === 'unknown' ? item.low : '';
    const next = items[i + 1];
    const nextPhrase = next && 'phrase' in next ? next.phrase : next?.k === 'unknown' ? next.low : '';
    if (item.k === 'neg' || (/^(?:rather|instead)$/.test(phrase) && /^(?:than|of)$/.test(nextPhrase))) {
      into = was;
      not = true;
    } else if (/^should/.test(phrase) && now.nums.length === 1 && was.nums.length === 0) {
      was.nums.push(now.nums.pop()!);
      into = now;
    } else if (/^(?:said|wrote|typed|told|entered|writing|typing|putting|saying)$/.test(phrase)) into = was;
    // "i said one fifteen, it was one oh five"
    else if (phrase === 'it' && into === was && was.nums.length > 0 && now.nums.length === 0) into = now;
    else if (/^(?:meant|mean|meaning|should|actually|but|correct|make|real|really)$/.test(phrase)) into = now;
    else if (item.k === 'sep' || item.k === 'join') {
      if (
        into === was &&
        (was.nums.length > 0 || was.places.length > 0 || was.measures.length > 0 || was.units.length > 0) &&
        now.nums.length === 0 &&
        now.places.length === 0
      )
        into = now;
    } else if (item.k === 'spec') {
      // "the 51 should be 57": what stood before it was wrong
      if (now.nums.length === 1 && was.nums.length === 0 && items.slice(i).some((it) => it.k === 'num'))
        was.nums.push(now.nums.pop()!);
      into = now;
    } else if (item.k === 'num' && item.clock === undefined) into.nums.push(item);
    else if (item.k === 'place') into.places.push(item);
    else if (item.k === 'wheel') into.wheels.push(item.v);
    else if (item.k === 'measure') into.measures.push(/^(?:read|reads|reading|says|tape)/.test(phrase) ? '' : item.v);
    else if (item.k === 'unit') into.units.push(item.v);
    else if (
      item.k === 'cond' ||
      item.k === 'work' ||
      item.k === 'change' ||
      item.k === 'hedge' ||
      item.k === 'told' ||
      (item.k === 'num' && item.clock !== undefined) ||
      item.k === 'day' ||
      item.k === 'often'
    )
      content = true;
    else if (
      item.k === 'sign' &&
      !/^(?:right|level|lower|higher|is right|off|wrong|bad|is wrong|misread|slipped|dropped|swapped over|ok|good)$/.test(
        phrase,
      )
    )
      content = true;
    else if (item.k === 'filler' && /^(?:later|ago)$/.test(phrase)) content = true;
  });
  return { now, was, content, not };
};
