/** Words that have to be asked about, each with candidates that say it plainly. */
import { dimensionOf, toSi, type Unit } from '../server/core/units.ts';
import type { Amounting } from './amount-item.ts';
import { canBe } from './limits.ts';
import type { PlaceItem, Settled } from './settled.ts';
import type { Context, Measure } from './shapes.ts';
import { type Walk, use } from './walk.ts';

/** `l` and `r` are sides where both stand in the note; `rh` where `lh` does, or a part or an end is named with it. */
export const settledBare = (w: Walk, item: PlaceItem): boolean => {
  const has = (b: string): boolean => w.all.some((i) => i.k === 'place' && i.bare === b);
  if (item.p.part !== undefined || item.p.end !== undefined) return true;
  // "leans to RH": a side
  if (item.bare !== 'ps' && /\bto (?:the )?$/i.test(w.text.slice(Math.max(0, item.span[0] - 8), item.span[0])))
    return true;
  // "R panel DOWN": its control
  const next = w.all[w.all.indexOf(item) + 1];
  if (next?.k === 'cond' && next.phrase.startsWith('panel')) return true;
  const across = item.bare === 'l' ? 'right' : 'left';
  // "bags l 48 r 51": the number across is the left's
  const read = (i: number): boolean => w.all[i + 1]?.k === 'num';
  if (
    (item.bare === 'r' || item.bare === 'l') &&
    read(w.all.indexOf(item)) &&
    w.all.some((i, j) => i.k === 'place' && i.p.side === across && read(j))
  )
    return true;
  if (item.bare === 'r' || item.bare === 'l')
    return (
      (has('l') && has('r')) ||
      w.all.some(
        (i) =>
          i.k === 'place' &&
          i.p.side === across &&
          (/^[lr]\b|^(?:bags?|tyres?|tires?|valves?|links?) [lr]$/.test(i.phrase) ||
            i.spans.some((s) => /^[lr]$/i.test(w.text.slice(...s)))),
      )
    );
  // "rh link up two turns, rh now 13 1/4": written so of a part, it is the side
  if (item.bare === 'rh')
    return w.all.some(
      (i) =>
        i.k === 'place' &&
        (/^(?:lh|lhs|l\/h|left)/.test(i.phrase) || (i.p.part !== undefined && /^rh\b/.test(i.phrase))),
    );
  if (item.bare === 'ps') return w.all.some((i) => i.k === 'place' && /^(?:ds|driver)/.test(i.phrase));
  return false;
};

const bareMeanings: Readonly<Record<string, readonly string[]>> = {
  l: ['left', 'left rear'],
  r: ['right', 'rear', 'right rear'],
  rh: ['right', 'right rear'],
  'l/r': ['left rear', 'both'],
  ps: ['passenger side', 'pressure switch'],
};

export const askBare = (w: Walk, item: PlaceItem, what: Settled): void => {
  w.ambiguous.push({
    question: `${w.text.slice(...item.span)}: which?`,
    candidates: (bareMeanings[item.bare ?? ''] ?? ['left', 'right']).map((label) => ({
      label,
      text: `${label} ${w.text.slice(...what.span)}`,
    })),
    spans: [item.span],
  });
  use(w, item, what);
};

/** A bare number beyond any pressure is a height off the tape, if it is anything. */
export const beyondPressure = (n: Amounting, context: Context): boolean =>
  n.unit === null && !canBe('pressure', toSi(n.value, context.pressureUnit)) && canBe('height', toSi(n.value, 'mm'));

/** Nobody answers more questions about one note; what is beyond them is shown as unread. */
const mostAsked = 12;

/** A number that nothing settles: asks, with notes that say it plainly. */
export const unreadable = (w: Walk, n: Amounting, also?: PlaceItem): void => {
  if (w.ambiguous.length >= mostAsked) return;
  const t = n.text;
  const tape = beyondPressure(n, w.context);
  const own = n.unit ? '' : tape ? ' mm' : ` ${w.context.pressureUnit}`;
  const d = n.unit ? dimensionOf(n.unit) : tape ? 'length' : null;
  const corners = ['left rear', 'right rear', 'left front', 'right front'];
  const places =
    d === 'voltage'
      ? ['battery', 'motor', 'relay']
      : d === 'length'
        ? corners
        : ['tank', 'left bellows', 'right bellows', 'tyre'];
  w.ambiguous.push({
    question: d === 'length' ? `${t}: which corner?` : d === 'voltage' ? `${t}: where?` : `${t}: of what?`,
    candidates: places.map((label) => ({ label, text: `${label} ${t}${own}` })),
    spans: also ? [also.span, n.span] : [n.span],
  });
  use(w, n, also);
};

const unitsBeside: readonly (readonly Unit[])[] = [
  ['mm', 'cm', 'in'],
  ['psi', 'bar', 'kPa'],
];

/** The units in which a bare `value` can be what was measured: `unit` itself where it can, else those of its kind. */
export const unitsFor = (measure: Measure, value: number, unit: Unit): readonly Unit[] => {
  const can = (other: Unit): boolean => canBe(measure, toSi(value, other));
  return can(unit) ? [unit] : (unitsBeside.find((list) => list.includes(unit)) ?? []).filter(can);
};

/** A limit that can be in several units: asks, with the note said again. `last`: its last number. */
export const askUnit = (w: Walk, last: Amounting, units: readonly Unit[]): void => {
  const [before, after] = [w.text.slice(0, last.span[1]), w.text.slice(last.span[1])];
  w.ambiguous.push({
    question: `${last.text}: in which unit?`,
    candidates: units.map((unit) => ({ label: unit, text: `${before} ${unit}${after}` })),
    spans: [last.span],
  });
  use(w, last);
};
