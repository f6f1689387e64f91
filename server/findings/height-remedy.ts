/** What to turn for a corner that is off. */
import { type Corner, armChange, torsionTurns } from '../core/heights.ts';
import { si } from '../core/quantity.ts';
import type { Unit } from '../core/units.ts';
import type { Case } from './case.ts';
import { quarterTurns, shown } from './show.ts';

export const size = (value: number, unit: Unit, half: number): string =>
  shown(Math.abs(value), unit, half, { difference: true }).text;

/** What to turn for a corner that is off, where the sheet gives the ratio. */
export const remedy = (c: Case, corner: Corner, off: number, unit: Unit, half: number): string[] => {
  const rear = corner.endsWith('Rear');
  const per = c.sheet.valves?.heightPerArm;
  const turn = c.sheet.heights?.torsionPerTurn;
  if (rear && per)
    return [
      `to correct: set the link so that the arm's end stands ${size(armChange(si(off), per), unit, half / per)} further towards ${off < 0 ? 'fill' : 'exhaust'} (sheet: valves.heightPerArm, ${per} of height for 1 of arm travel); check again after the valve's delay`,
    ];
  if (!rear && turn)
    return [
      `to correct: ${quarterTurns(torsionTurns(si(off), si(turn.si)))} of the adjuster ${off < 0 ? 'up' : 'down'} (sheet: heights.torsionPerTurn ${turn.text} a turn), load off it by the maker's method; then check the front alignment`,
    ];
  return [];
};
