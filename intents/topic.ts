/** What a question is about, in canonical words. */
import { dimensionOf } from '../server/core/units.ts';
import { byDimension } from './dims.ts';
import { makePlace } from './place.ts';
import type { SignItem } from './no-sign.ts';
import type { Settled } from './settled.ts';
import type { Ask } from './shapes.ts';

const specific: Readonly<Record<string, string>> = { gauge: 'gauge' };

/** The first part, else measure, sign, condition or work named; undefined when none is. */
export const topicOf = (items: readonly Settled[], ask: Ask['ask']): string | undefined => {
  const measure = items.find((i) => i.k === 'measure');
  const place = items.find((i) => i.k === 'place' && i.p.part !== undefined);
  // "a good leak rate": asked of the rate, good or not
  const sign =
    items.find((i): i is SignItem => i.k === 'sign' && i.v !== 'ok') ??
    items.find((i): i is SignItem => i.k === 'sign');
  const work = items.find((i) => i.k === 'work');
  const cond = items.find((i) => i.k === 'cond');
  const num = items.find((i) => i.k === 'num');
  if (
    measure?.k === 'measure' &&
    ['cut-in', 'cut-out', 'toe', 'camber', 'thrust', 'voltage drop', 'dead band', 'torque', 'height', 'delay'].includes(
      measure.v,
    )
  )
    return measure.v;
  const unit = items.find((i) => i.k === 'unit');
  // "5 psi in 10 min": how fast it falls
  if (
    (ask === 'limit' || ask === 'meaning') &&
    items.some((i) => i.k === 'num' && i.unit !== null && dimensionOf(i.unit) === 'duration') &&
    (items.some((i) => i.k === 'num' && i.unit !== null && dimensionOf(i.unit) === 'pressure') ||
      (unit?.k === 'unit' && dimensionOf(unit.v) === 'pressure'))
  )
    return 'pressure fall';
  const travels = unit?.k === 'unit' && (unit.v === 'mi' || unit.v === 'km');
  if (ask === 'limit' && unit?.k === 'unit' && measure === undefined && !travels) {
    const of = byDimension[dimensionOf(unit.v)];
    if (of) return of;
  }
  if (ask === 'limit' && !place && items.some((i) => i.k === 'change' && i.v === 'fall')) return 'pressure fall';
  if (ask === 'limit' && (sign?.v === 'sags' || sign?.v === 'drops' || sign?.v === 'leaks') && !place)
    return 'pressure fall';
  if (ask === 'limit' && measure?.k === 'measure') return measure.v;
  if ((ask === 'why' || ask === 'how' || ask === 'meaning') && cond?.k === 'cond' && cond.v.startsWith('panel'))
    return cond.v;
  if (ask === 'meaning' && num && !place) return measure?.k === 'measure' ? measure.v : 'pressure';
  if (
    ask === 'why' &&
    sign?.k === 'sign' &&
    (place?.k !== 'place' || ['pump', 'tank', 'coach'].includes(place.p.part ?? '')) &&
    !['ok', 'works', 'not working'].includes(sign.v)
  )
    return sign.v;
  if (place?.k === 'place') return specific[place.p.part!] ?? place.p.part;
  if (measure?.k === 'measure') return measure.v;
  if (sign?.k === 'sign') return sign.v;
  if (cond?.k === 'cond') return cond.v;
  if (work?.k === 'work') return work.v;
  const side = items.find((i) => i.k === 'place');
  if (side?.k === 'place') return makePlace(side.p);
  return num?.k === 'num' && (num.unit === null || dimensionOf(num.unit) === 'pressure') ? 'pressure' : undefined;
};
