/** Where a reading is: the part a pressure is of, and where it is when no place was said. */
import type { Dimension } from '../server/core/units.ts';
import { coachSides, pressureParts, voltParts } from './dims.ts';
import { tidy } from './merge-places.ts';
import { tankOrCarried } from './changes.ts';
import type { PlaceItem } from './settled.ts';
import type { Measure } from './shapes.ts';
import { assumed, carried, phraseOf, use, type Clause, type Loc, type Walk } from './walk.ts';
import { locOf } from './loc.ts';

const gaugesInNote = (w: Walk): boolean =>
  w.all.some((i) => i.k === 'place' && i.p.part === 'test port') ||
  // "tank drained to 0: dash gauge still says 22": the gauge against the tank
  (w.all.some((i) => i.k === 'place' && i.p.part === 'gauge') &&
    w.facts.some(
      (f) => f.is === 'reading' && f.what.v === 'pressure' && f.where.v === 'tank' && f.where.from === 'said',
    )) ||
  w.all.some((i) => /^(?:second gauge|other gauge|test gauge|gauge itself)/.test(phraseOf(i))) ||
  // "dash says 80, my gauge at the tank 110"
  /(?<!\bno )\b(?:my|shop|second|other|test|master|known good|good) g(?:au|ua|a)ge\b/i.test(w.text);

const trusted = /\b(?:my|shop|test|master|known good|good|calibrated)(?: test| shop)? g(?:au|ua|a)ge$/i;
const otherGauge = (w: Walk, item: PlaceItem): boolean =>
  w.all.some((i) => i.k === 'place' && i !== item && i.p.part === 'gauge' && /\bdash\b/i.test(w.text.slice(...i.span)));

/** Which place a pressure is of, from the place said. */
export const pressurePlace = (w: Walk, loc: Loc): Loc => {
  const p = loc.p;
  // no air spring stands in front: a pressure there, or under such a heading, is a tyre's
  if (
    coachSides(p) &&
    (p.end
      ? w.subject?.p.part === 'tyre' ||
        p.end === 'front' ||
        w.all.some((i) => i.k === 'place' && i.p.part === 'tyre' && !i.p.side && /pressures?$/.test(i.phrase))
      : // "tyres l 98 r 97"
        w.subject?.p.part === 'tyre' && / tyre$/.test(w.lastReading?.where.v ?? ''))
  )
    return { ...loc, p: { ...p, part: 'tyre' } };
  if (!p.part && (p.side ?? p.end))
    return { ...loc, p: tidy({ side: p.side, part: 'bellows', ...(p.end === 'front' ? { end: 'front' } : {}) }) };
  if (p.part === 'wheel') return { ...loc, p: { ...p, part: 'tyre' } };
  // "dash says 110 my gauge says 102": what a trusted gauge reads is the tank's
  if (p.part === 'gauge' && loc.item && trusted.test(w.text.slice(0, loc.item.span[1])) && otherGauge(w, loc.item))
    return { ...loc, p: { part: 'tank' } };
  if (p.part === 'gauge') return gaugesInNote(w) ? loc : { ...loc, p: { part: 'tank' } };
  if (p.part === 'coach' || p.part === 'pump' || p.part === 'pressure switch') return { ...loc, p: { part: 'tank' } };
  if (p.part === 'bellows crimp') return { ...loc, p: { ...p, part: 'bellows' } };
  return loc;
};

export const laterPlace = (w: Walk, c: Clause, index: number): Loc | null => {
  const item = c.items.find((it, j): it is PlaceItem => j > index && it.k === 'place');
  return item ? locOf(w, item) : null;
};

export const bracketOf = (w: Walk, c: Clause): Loc | null => {
  const held = (it: PlaceItem | { k: string }): it is PlaceItem =>
    it.k === 'place' && ['bracket', 'control arm'].includes((it as PlaceItem).p.part ?? '');
  const item = c.items.find(held) ?? w.all.find(held);
  if (!item) return null;
  use(w, item);
  return { p: item.p, from: 'said', spans: item.spans, item };
};

/** Where a reading is when no place stands by it. */
export const placeless = (w: Walk, dim: Dimension, measure: Measure, inside: boolean): Loc | null => {
  const part = w.subject?.p.part ?? '';
  switch (dim) {
    case 'pressure':
      // "still 50 psi inside": in the bellows of the side spoken of
      if (inside && part === 'tyre') return carried(w.subject);
      if (inside && (w.subject?.p.side === 'left' || w.subject?.p.side === 'right'))
        return { p: { side: w.subject.p.side, part: 'bellows' }, from: 'carried', spans: [] };
      if (part === 'height valve' && /\bbench/i.test(w.text)) return carried(w.subject);
      if (w.lastWork === 'soaped' && w.lastReading === null) return assumed({ part: 'tank' });
      return part === 'bellows' || part === 'tyre' || (w.lastMeasure === 'pressure' && pressureParts.has(part))
        ? tankOrCarried(w.subject)
        : assumed({ part: 'tank' });
    case 'current':
      return assumed({ part: 'motor' });
    case 'voltage':
      return voltParts.has(part) || part === 'pressure switch'
        ? carried(w.subject)
        : part === 'pump'
          ? assumed({ part: 'motor' })
          : null;
    case 'temperature':
      return ['pump', 'motor', 'tyre', 'pump head'].includes(part) ? carried(w.subject) : assumed({ part: 'ambient' });
    case 'mass':
      return part === '' || part === 'load' || part === 'axle' || part === 'wheel' ? carried(w.subject) : null;
    case 'volume':
      return assumed({ part: 'tank' });
    default:
      return measure === 'dead band' && part !== 'height valve'
        ? assumed({ part: 'height valve' })
        : carried(w.subject);
  }
};
