/** Limits given in a note: "spec rear 13 1/2 +- 1/4", "book says rear height 314 to 326 mm". */
import { dimensionOf } from '../server/core/units.ts';
import {
  byDimension,
  coachSides,
  heightLike,
  heightUnit,
  measureUnit,
  pressureParts,
  pressureUnit,
  voltParts,
} from './dims.ts';
import { askUnit, beyondPressure, unitsFor } from './ask-about.ts';
import { durationAfter } from './changes.ts';
import type { Amounting } from './amount-item.ts';
import { placeOfNumber } from './near.ts';
import { makePlace, takePlace } from './place.ts';
import type { Measure } from './shapes.ts';
import { amountOf, assumed, phraseOf, said, use, type Clause, type Loc, type Walk } from './walk.ts';
import { push } from './push.ts';
import { locOf } from './loc.ts';
import { share } from './share.ts';
import type { PlaceItem } from './settled.ts';

/** Both of an end or of the bags, where the two before were told one after the other and no place is said with the limit. */
const ofBoth = (w: Walk): Loc | null => {
  const [a, b] = w.facts.filter((f) => f.is === 'reading').slice(-2);
  if (!a || !b || a.what.v !== b.what.v || w.facts.at(-1) !== b) return null;
  const p = takePlace(a.where.v);
  const q = takePlace(b.where.v);
  if (!p || !q || p.side === q.side || !p.side || !q.side) return null;
  const { side: _p, ...rest } = p;
  const { side: _q, ...other } = q;
  return makePlace(rest) === makePlace(other) ? { p: { ...rest, side: 'both' }, from: 'carried', spans: [] } : null;
};

/** True when a limit was read from the clause. */
export const readSpec = (w: Walk, c: Clause): boolean => {
  const at = c.items.findIndex((it) => it.k === 'spec');
  if (at < 0 && !w.spec) return false;
  // "should be 115 to 125 and is 112": what is, is no limit
  const lead = c.items
    .slice(0, 5)
    .map((it) => (it.k === 'unknown' ? it.low : phraseOf(it)))
    .join(' ');
  if (
    at < 0 &&
    /^(?:is|was|have|has|reads|read|got|found|actual|actually|measured|mine|ours|this one|i have|i got|i get|we have|we got|we get|what (?:we|i) (?:got|have|get)|it is|its|as found)\b/.test(
      lead,
    )
  ) {
    w.spec = false;
    c.measure ??= w.limited;
    return false;
  }
  // "spec 13 1/2, lr went down 2 in", "sheet 13 to 13 1/2, pump cuts in at 88": what it does
  if (
    at < 0 &&
    c.items.some(
      (it) =>
        (it.k === 'change' && /^(?:went|fell|came|dropped|lost|gained|rose)\b/.test(it.phrase)) ||
        (it.k === 'sign' && /^(?:went|fell|came|dropped)\b/.test(it.phrase)) ||
        (it.k === 'measure' && /^(?:cuts|kicks|comes|starts|stops|quits|shuts|goes) /.test(it.phrase)),
    )
  ) {
    w.spec = false;
    return false;
  }
  const n = c.items.findIndex((it, j) => it.k === 'num' && it.clock === undefined && j > at);
  const num = c.items[n] as Amounting | undefined;
  if (at >= 0) use(w, c.items[at]);
  if (!num) {
    w.spec = at >= 0;
    const place = c.places[0];
    if (place !== undefined) w.subject = locOf(w, c.items[place] as PlaceItem);
    return at >= 0;
  }
  const m = c.items.find((it) => it.k === 'measure');
  const hit =
    placeOfNumber(w, c, n) ?? (c.places[0] === undefined ? null : { item: c.items[c.places[0]] as PlaceItem });
  const loc: Loc | null = hit ? locOf(w, hit.item) : (ofBoth(w) ?? w.subject);
  const p = loc?.p ?? {};
  const last = w.facts.at(-1);
  // "cuts in 85 spec 95": of the point spoken of
  const point =
    last?.is === 'reading' && !hit && (num.unit === null || dimensionOf(num.unit) === dimensionOf(last.amount.v.unit))
      ? last.what.v
      : null;
  let measure: Measure | null = m?.k === 'measure' ? m.v : point;
  const other = c.items
    .slice(n + 1, n + 5)
    .find((it): it is Amounting => it.k === 'num' && (it.unit === null || it.unit === num.unit || num.unit === null));
  const wanted =
    num.unit ??
    other?.unit ??
    measureUnit(measure, w.context, num, w.lastUnit) ??
    (p.part && voltParts.has(p.part)
      ? ('V' as const)
      : p.part && pressureParts.has(p.part)
        ? pressureUnit(w.context, num, w.lastUnit)
        : coachSides(p) && (heightLike(num, w.context) || beyondPressure(num, w.context))
          ? heightUnit(num, w.context)
          : null);
  if (!wanted) return false;
  const before = w.facts.at(-2);
  // "cut in 85 and cut out 110, supposed to be 95 120": one limit for each, in their order
  if (point && other && before?.is === 'reading' && before.what.v !== point && /^cut-(?:in|out)$/.test(before.what.v)) {
    for (const [n1, v] of [
      [num, before.what.v],
      [other, point],
    ] as const) {
      const limit = amountOf(n1, wanted);
      const what = { ...said(v, n1), from: 'carried' as const };
      push(w, { is: 'spec', word: 'own', what, low: limit, high: limit }, assumed({ part: 'pressure switch' }), n1);
    }
    use(w, num, other);
    return true;
  }
  // "spec is 3 psi in 10 min": how far it may fall in that time
  const over = ['pressure', 'length'].includes(dimensionOf(wanted)) ? durationAfter(c, n) : null;
  if (over && (measure === null || measure === 'pressure' || measure === 'pressure fall' || measure === 'height fall'))
    measure = dimensionOf(wanted) === 'pressure' ? 'pressure fall' : 'height fall';
  measure ??= byDimension[dimensionOf(wanted)] ?? null;
  if (!measure) return false;
  const low = over ? 0 : num.tol === undefined ? num.value : num.value - num.tol;
  const high = num.tol === undefined ? (num.to ?? other?.value ?? num.value) : num.value + num.tol;
  const units = num.unit === null && !other?.unit ? unitsFor(measure, high, wanted) : [wanted];
  if (units.length > 1) {
    use(w, num, m);
    askUnit(w, other ?? num, units);
    return true;
  }
  const [unit] = units;
  if (!unit) return false;
  const own =
    measure === 'cut-in' || measure === 'cut-out'
      ? assumed({ part: 'pressure switch' })
      : (measure === 'pressure' || measure === 'pressure fall') &&
          (!loc || (measure === 'pressure fall' && !hit && !/^(?:tank|bellows|tyre)$/.test(p.part ?? '')))
        ? assumed({ part: 'tank' })
        : loc;
  const fact = push(
    w,
    {
      is: 'spec',
      word: 'own',
      what: {
        ...said(measure, m?.k === 'measure' ? m : num),
        ...(unit === wanted ? {} : { from: 'assumed' as const }),
      },
      low: {
        ...amountOf(
          { ...num, value: Math.min(low, high), text: over ? '0' : num.tol === undefined ? num.text : String(low) },
          unit,
        ),
        to: undefined,
      },
      high: {
        ...amountOf(
          {
            ...num,
            value: Math.max(low, high),
            text: num.tol === undefined ? (other?.text ?? num.text) : String(high),
          },
          unit,
        ),
        to: undefined,
      },
      ...(over ? { over: amountOf(over, over.unit!) } : {}),
    },
    own,
    num,
  );
  share(w, fact);
  use(w, m, other, over);
  // "rr 14, sheet 13 3/4": of that one reading, and what follows is read again
  w.spec = !(point !== null && at >= 0 && !m);
  w.limited = m?.k === 'measure' ? m : null;
  w.lastUnit = unit;
  if (loc) w.subject = loc;
  return true;
};
