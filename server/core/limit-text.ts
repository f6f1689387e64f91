/** How a limit is written where its own writing is not at hand, or is in another unit: the one rule for words and drawings. */
import { showAmount, tapeInches } from './amount.ts';
import { type Unit, fromSi } from './units.ts';

/** Half of a sensible last digit in a unit, SI: what a converted limit is shown to. */
const halfDigits: Partial<Record<Unit, number>> = {
  psi: 6894.757 / 2,
  kPa: 500,
  bar: 5000,
  mm: 0.0005,
  in: 0.0254 / 32,
  cm: 0.0005,
};

/** `si` converted to `unit`: to a sixteenth of an inch, a whole psi, kPa or mm, or to `pm` (half a digit, SI) where coarser. */
export const convertedText = (si: number, unit: Unit, pm = 0): string =>
  showAmount(si, unit, Math.max(pm, halfDigits[unit] ?? 0));

export const convertedHalf = (unit: Unit, pm = 0): number => Math.max(pm, halfDigits[unit] ?? 0);

/** A limit of which only the value was kept: as it was written where it stands on a mark, else as one converted. */
export const limitText = (si: number, unit: Unit): string => {
  const value = fromSi(si, unit);
  if (unit === 'in')
    return Math.abs(value * 32 - Math.round(value * 32)) < 1e-6
      ? `${tapeInches(value, 32)} in`
      : convertedText(si, unit);
  return Math.abs(value * 100 - Math.round(value * 100)) < 1e-4 ? showAmount(si, unit, 0) : convertedText(si, unit);
};
