/**
 * Toe and camber of one wheel. A length measured over a diameter is an angle: atan(x / D), D the diameter the two points
 * of the measurement span. Per wheel: a total toe of an axle is shared by its two wheels. Angles in rad, lengths in m.
 */
import { type Angle, ImpossibleInput, type Length, positive, si } from './quantity.ts';

const bounded = (name: string, ratio: number): number => {
  if (!(Math.abs(ratio) < 1))
    throw new ImpossibleInput(name, ratio, 'it must be smaller than the diameter it is measured over');
  return ratio;
};

/** Toe (in positive) or camber (top out positive) of `offset` over `diameter`: atan(offset / diameter). */
export const angleOver = (offset: Length, diameter: Length): Angle =>
  si(Math.atan(bounded('offset over diameter', offset / positive('diameter', diameter))));

/** Offset that an angle makes over a diameter: D tan(angle); inverse of angleOver. */
export const offsetOver = (angle: Angle, diameter: Length): Length => {
  if (!(Math.abs(angle) < Math.PI / 4)) throw new ImpossibleInput('angle', angle, 'it must be within 45 degrees');
  return si(positive('diameter', diameter) * Math.tan(angle));
};

/** Total toe of a pair: left and right added. */
export const totalToe = (left: Angle, right: Angle): Angle => si(left + right);

/**
 * Thrust of a pair, rad: half of right toe minus left toe; positive points the pair to the left
 * (a right wheel toed in steers left). Source: geometry.
 */
export const thrustOf = (left: Angle, right: Angle): Angle => si((right - left) / 2);

/** Sideways scrub, m, of a wheel that runs `angle` off its path over `distance` m: distance times sin(angle). */
export const scrub = (angle: Angle, distance: Length): Length => si(Math.abs(Math.sin(angle)) * distance);
