/** What volume the tank gauge sees. */
import { type Volume, si } from '../core/quantity.ts';
import { type Case, type Input, sheetInput } from './case.ts';
import { type Episode } from './tank-episode.ts';

/** Volume that the tank gauge sees in this state, and what it is made of. */
export const joinedVolume = (c: Case, panel: Episode['state']['panel']): { v: Volume; inputs: Input[] } | null => {
  const { tank, lines } = c.sheet.supply ?? {};
  if (!tank) return null;
  const inputs = [sheetInput('tank', tank, 'supply.tank')];
  let v = tank.si;
  if (lines) {
    v += lines.si;
    inputs.push(sheetInput('lines', lines, 'supply.lines'));
  }
  const { volume, perSide } = c.sheet.springs ?? {};
  if (panel === 'fill' && volume && perSide) {
    v += 2 * perSide * volume.si;
    inputs.push(sheetInput(`${2 * perSide} bellows, panel in fill, each`, volume, 'springs.volume'));
  }
  return { v: si(v), inputs };
};
