/** A stack of shims as it is taken from the rack: "1/32 in + 1/64 in", "1.0 mm + 0.5 mm". */
import type { Unit } from '../core/units.ts';
import { shown } from './show.ts';

/** A shim in inches by its fraction: 1/64, 1/32. */
const thin = (metres: number): string => {
  const parts = Math.round((metres / 0.0254) * 128);
  let [top, below] = [parts, 128];
  while (top % 2 === 0 && below > 1 && top > 0) [top, below] = [top / 2, below / 2];
  return below === 1 ? `${top} in` : `${top}/${below} in`;
};

export const stackText = (stack: readonly number[], unit: Unit): string =>
  stack.map((t) => (unit === 'in' ? thin(t) : shown(t, unit, 0.00005).text)).join(' + ');
