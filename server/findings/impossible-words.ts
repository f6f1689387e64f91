/** A calculation refused its input: said in the coach's own units, with what it must be. */
import { type InputKind, kindOf } from '../core/input-kinds.ts';
import type { ImpossibleInput } from '../core/quantity.ts';
import { type Unit, fromSi } from '../core/units.ts';
import type { Sheet } from '../sheet/schema.ts';
import { sheetUnit } from './show.ts';

const unitFor = (input: string, kind: InputKind, sheet: Sheet): Unit => {
  const metric = sheetUnit('flow', sheet) !== 'cfm';
  if (input === 'altitude') return metric ? 'm' : 'ft';
  if (input === 'wire length') return metric ? 'm' : 'ft';
  if (input === 'barometer') return metric ? 'kPa' : 'inHg';
  if (input === 'odometer' || input === 'service distance') return sheet.units.distance;
  return sheetUnit(kind.dimension, sheet);
};

export const impossibleWords = (error: ImpossibleInput, sheet: Sheet): string =>
  error.said((value, limit) => {
    const kind = kindOf(error.input);
    if (!Number.isFinite(value)) return 'no number';
    if (!kind || kind.dimension === 'count') return `${Number(value.toPrecision(4))}`;
    const unit = unitFor(error.input, kind, sheet);
    const shown = fromSi(value, unit);
    // as typed up to six digits; a limit to three, or whole from a thousand up
    const digits = !limit ? 6 : Math.abs(shown) >= 1000 ? String(Math.round(Math.abs(shown))).length : 3;
    const text = `${Number(shown.toPrecision(digits))}`;
    return `${text} ${unit}${kind.absolute ? ' absolute' : ''}`;
  });
