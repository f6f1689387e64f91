/** An amount as it stands on a sheet or in a note: number and unit as written, beside the SI value. */
import { type Dimension, type Unit, dimensionOf, stepFromSi, stepToSi, toSi, fromSi, unitNames } from './units.ts';

/**
 * `si` in SI (gauge for pressures, K for temperatures); `pm` half the resolution of the writing, SI (0: exact);
 * `unit` and `text` as written; `to` the upper end where a range was written, SI; `about` how loosely it was said.
 */
export type Amount = {
  si: number;
  pm: number;
  unit: Unit;
  text: string;
  to?: number | undefined;
  about?: 'about' | 'just under' | 'just over' | 'at least' | 'at most' | undefined;
};

const number = /^([+-]?)(?:(\d+)[ -](\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:\.\d+)?|\.\d+))\s*(.*)$/;

/** Reads "13 3/4 in", "-0.5 deg", "120 psi"; null when it is not a number followed by a unit of `dimension`. */
export const parseAmount = (text: string, dimension: Dimension): Amount | null => {
  const m = number.exec(text.trim());
  if (!m) return null;
  const [, sign, whole, top, bottom, ftop, fbottom, decimal, unitText] = m;
  const unit = unitNames.find((name) => name === unitText);
  if (!unit || dimensionOf(unit) !== dimension) return null;
  let value: number;
  let step: number;
  if (decimal !== undefined) {
    value = Number(decimal);
    step = 10 ** -(decimal.split('.')[1]?.length ?? 0);
  } else {
    const below = Number(bottom ?? fbottom);
    value = Number(whole ?? 0) + Number(top ?? ftop) / below;
    step = 1 / below;
  }
  if (!Number.isFinite(value)) return null;
  return { si: toSi(sign === '-' ? -value : value, unit), pm: stepToSi(step, unit) / 2, unit, text: text.trim() };
};

/** Denominators of a tape measure, coarse to fine. */
const tapeMarks = [1, 2, 4, 8, 16, 32, 64] as const;

/** Inches as a tape shows them: "13 3/4", "-1/8", "0"; to the nearest 1/`finest`. */
export const tapeInches = (inches: number, finest = 16): string => {
  const marks = Math.round(Math.abs(inches) * finest);
  const sign = inches < 0 && marks > 0 ? '-' : '';
  const whole = Math.floor(marks / finest);
  const rest = marks % finest;
  if (rest === 0) return `${sign}${whole}`;
  const below = tapeMarks.find((d) => (rest * d) % finest === 0) ?? finest;
  const fraction = `${(rest * below) / finest}/${below}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
};

const decimals = (step: number): number => Math.min(6, Math.max(0, Math.ceil(-Math.log10(step * 1.0001))));

/**
 * Writes an SI value in `unit`, stopping at the digits that `pm` (half the resolution, SI) can carry.
 * Inches are written as fractions of the tape. `difference` is for changes, which have no zero point.
 */
export const showAmount = (value: number, unit: Unit, pm: number, difference = false): string => {
  const shown = difference ? stepFromSi(value, unit) : fromSi(value, unit);
  const step = stepFromSi(Math.abs(pm) * 2, unit);
  const exact = !(step > 0);
  if (unit === 'in' && (exact || step >= 0.0078)) {
    const marks = exact ? 16 : (tapeMarks.find((d) => 1 / d <= step * 1.01) ?? 64);
    return `${tapeInches(shown, Math.max(8, marks))} in`;
  }
  const digits = exact ? 2 : decimals(step);
  const text = shown.toFixed(digits);
  const trimmed = exact && text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return `${/^-0(?:\.0*)?$/.test(trimmed) ? trimmed.slice(1) : trimmed}${unit === '%' ? ' %' : unit === 'count' ? '' : ` ${unit}`}`;
};
