/** What pressure the bellows carry their load at: measured, else the sheet's, else from weights. */
import { type Case, type Input, latest, middle } from './case.ts';
import { shown, sheetUnit, typed } from './show.ts';
import { gravity } from '../core/spring.ts';

export type Carried = { readonly p: number; readonly input: Input };

/** Gauge pressure of the bellows of `side`, Pa; null where neither a reading nor the sheet has it. */
export const bellowsPressure = (c: Case, side: 'left' | 'right'): Carried | null => {
  const read = latest(c, 'pressure', (p) => p === `${side} bellows`);
  if (read)
    return {
      p: middle(read.amount.v),
      input: { name: `${side} bellows pressure`, text: typed(read.amount.v), from: read.id },
    };
  const { springs, weights } = c.sheet;
  const unit = sheetUnit('pressure', c.sheet);
  const range = springs?.pressure?.[side];
  if (range) {
    const p = (range.low.si + range.high.si) / 2;
    return {
      p,
      input: {
        name: `${side} bellows pressure`,
        text: `${shown(p, unit, (range.high.si - range.low.si) / 2).text} (middle of ${range.low.text} to ${range.high.text})`,
        from: `sheet: springs.pressure.${side}`,
      },
    };
  }
  const weight = side === 'left' ? weights?.leftRear : weights?.rightRear;
  if (weight && springs?.area && springs.perSide) {
    // The arm trades travel for force: the bellows carries weight over lever ratio.
    const p = (weight.si * gravity) / (springs.leverRatio ?? 1) / (springs.area.si * springs.perSide);
    return {
      p,
      input: {
        name: `${side} bellows pressure`,
        text: `${shown(p, unit, p * 0.05).text}, from weight over area`,
        from: 'sheet: weights, springs.area, springs.perSide, springs.leverRatio',
      },
    };
  }
  return null;
};

/** The higher of the two sides: down to it the tank still feeds both. */
export const higherBellows = (c: Case): Carried | null => {
  const both = (['left', 'right'] as const).map((side) => bellowsPressure(c, side)).filter((b) => b !== null);
  return both.toSorted((a, b) => b.p - a.p)[0] ?? null;
};
