/** Corner heights: what they say of the coach as a whole, and what to turn to correct them. Lengths in m. */
import { type Angle, ImpossibleInput, type Length, positive, si } from './quantity.ts';

export type Corner = 'leftFront' | 'rightFront' | 'leftRear' | 'rightRear';
export const corners = ['leftFront', 'rightFront', 'leftRear', 'rightRear'] as const satisfies readonly Corner[];

/**
 * Offsets of four corners against their targets as four motions, m; each offset is exactly
 * heave ± pitch ± roll ± twist. `pitch` positive: nose up; `roll` positive: right side up (leans left);
 * `twist` positive: left front and right rear up. Twist is what a soft corner or an uneven floor leaves.
 */
export type Attitude = {
  readonly heave: Length;
  readonly pitch: Length;
  readonly roll: Length;
  readonly twist: Length;
};

export const attitudeOf = (off: Readonly<Record<Corner, number>>): Attitude => {
  const { leftFront: a, rightFront: b, leftRear: c, rightRear: d } = off;
  for (const corner of corners)
    if (!Number.isFinite(off[corner])) throw new ImpossibleInput(corner, off[corner], 'it must be a finite number');
  return {
    heave: si((a + b + c + d) / 4),
    pitch: si((a + b - c - d) / 4),
    roll: si((b + d - a - c) / 4),
    twist: si((a + d - b - c) / 4),
  };
};

/** Offsets of the corners from an attitude: the inverse of attitudeOf. */
export const offsetsOf = (t: Attitude): Record<Corner, Length> => ({
  leftFront: si(t.heave + t.pitch - t.roll + t.twist),
  rightFront: si(t.heave + t.pitch + t.roll - t.twist),
  leftRear: si(t.heave - t.pitch - t.roll - t.twist),
  rightRear: si(t.heave - t.pitch + t.roll + t.twist),
});

/** Lean of a pair, rad: atan(difference / distance between the two measuring points). Positive: left lower. */
export const leanOf = (left: Length, right: Length, across: Length): Angle =>
  si(Math.atan((right - left) / positive('distance across', across)));

/** Change at the arm's end, m, for a change of height, by the sheet's ratio of height for arm travel. */
export const armChange = (height: Length, heightPerArm: number): Length =>
  si(height / positive('height per arm travel', heightPerArm));

/** Turns of a torsion bar's adjuster for a change of height; positive raises. */
export const torsionTurns = (height: Length, perTurn: Length): number => height / positive('height per turn', perTurn);
