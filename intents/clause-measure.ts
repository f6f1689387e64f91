/** What a clause measures before its numbers are read: a heading, a measure that waits, which way a wheel leans. */
import { dimensionOf } from '../server/core/units.ts';
import { measureDims } from './dims.ts';
import { locOf } from './loc.ts';
import type { PlaceItem } from './settled.ts';
import { skippable, use, type Clause, type Measured, type Walk } from './walk.ts';

export const takeMeasure = (w: Walk, c: Clause, before: Clause | undefined): void => {
  // "much play, 2 mm": a measure that found no number in its clause takes the one that opens the next
  const head = c.items.find((it) => !skippable(it));
  if (
    w.waiting &&
    before &&
    !before.hard &&
    head?.k === 'num' &&
    head.unit !== null &&
    (measureDims[w.waiting.v] ?? []).includes(dimensionOf(head.unit)) &&
    !c.items.some((it) => it.k === 'measure' || it.k === 'place')
  )
    c.measure = w.waiting;
  // "camber: lr fwd -0.3, lr aft 0.4": a heading holds until something else is measured
  if (w.heading && !c.items.some((it) => it.k === 'measure')) c.measure ??= w.heading;
  else w.heading = null;
  const real = c.items.filter((it) => !skippable(it));
  // "rear toe: LR fwd 0.1 in": an end may stand before it
  const lead = real[0];
  const head0 =
    real.length === 1
      ? lead
      : real.length === 2 && lead?.k === 'place' && !lead.p.side && !lead.p.part
        ? real[1]
        : undefined;
  if (
    head0?.k === 'measure' &&
    !c.hard &&
    ['camber', 'toe', 'height', 'load', 'voltage', 'voltage drop', 'current'].includes(head0.v)
  ) {
    w.heading = head0;
    use(w, head0);
  }
  const idle = c.items.findLast((it): it is Measured => it.k === 'measure');
  w.waiting = idle && !c.items.some((it) => it.k === 'num') ? idle : null;
  // "camber 0.5 degree, the top is in": which way, said after it
  const [way] = real;
  const leaned = w.facts.at(-1);
  if (
    real.length === 1 &&
    way?.k === 'dir' &&
    leaned?.is === 'reading' &&
    (leaned.what.v === 'camber' || leaned.what.v === 'toe') &&
    leaned.amount.v.si > 0 &&
    way.v === 'out'
  )
    leaned.amount = {
      ...leaned.amount,
      v: { ...leaned.amount.v, si: -leaned.amount.v.si },
      spans: [...leaned.amount.spans, way.span],
    };
  if (real.length === 1 && way?.k === 'dir') use(w, way);
  if (['free play', 'camber', 'toe'].includes(w.waiting?.v ?? '') && c.places.length === 1)
    w.subject = locOf(w, c.items[c.places[0]!] as PlaceItem);
  if (w.waiting?.v === 'delay') w.lastMeasure = 'delay';
};
