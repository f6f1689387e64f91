/** What volume the tank gauge sees, and what of it water takes. */
import type { ReadingFact } from '../../intents/shapes.ts';
import { airVolume } from '../core/pump-up.ts';
import { type Volume, si } from '../core/quantity.ts';
import { type Case, type Input, middle, readings, sheetInput } from './case.ts';
import { typed } from './show.ts';
import type { Episode } from './tank-episode.ts';

/** Water that stands in the tank, and who said so. */
export type Held = { readonly si: number; readonly input: Input };

/** Water drained at that moment or after it, before any other draining: it stood in the tank until then. */
export const waterIn = (c: Case, at: number): Held | null => {
  const drained = readings(c, 'water drained', (p) => p === 'tank' || p === 'drain' || p === '').find(
    (f: ReadingFact) => f.at >= at && !f.held,
  );
  return drained
    ? {
        si: middle(drained.amount.v),
        input: { name: 'water in it', text: `${typed(drained.amount.v)}, drained after`, from: drained.id },
      }
    : null;
};

/**
 * Volume that the tank gauge sees in this state, and what it is made of; `water` takes the room of air. Raises
 * ImpossibleInput for water below zero or for more than the tank holds.
 */
export const joinedVolume = (
  c: Case,
  panel: Episode['state']['panel'],
  water: Held | null = null,
): { v: Volume; inputs: Input[] } | null => {
  const { tank, lines } = c.sheet.supply ?? {};
  if (!tank) return null;
  const inputs = [sheetInput('tank', tank, 'supply.tank')];
  let v: number = tank.si;
  if (water) {
    v = airVolume(si(tank.si), si(water.si));
    inputs.push(water.input);
  }
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
