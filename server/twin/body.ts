/**
 * How the body stands on its springs, taken as always in balance (the body settles in a second, air moves in minutes).
 * Per side, y above ride height at the measuring point, x = lever y the bellows' travel:
 *   lever A(x) (p - p_atm) + stops(y) = load + roll (y_left - y_right - front twist),  A = A0 + a x,  V = V0 + A0 x + a x^2 / 2
 * V is the integral of A (virtual work), so that no energy is made. Newton on both sides at once.
 */
import type { Patient } from './patient.ts';
import { gasConstant } from './gas.ts';

export type Balance = {
  /** m above ride height. */
  readonly y: Float64Array;
  /** Absolute Pa, m3, and dV/dz where z = mass times temperature: left over left z, left over right z, right over left, right over right. */
  readonly pressure: Float64Array;
  readonly volume: Float64Array;
  readonly volumePerZ: Float64Array;
  /** Solves for z = mass times temperature, kg K, of the left and the right side. */
  readonly solve: (left: number, right: number) => void;
  /** z that carries the body at heights yl, yr; on the stops, that of air at rest. */
  readonly zAt: (yl: number, yr: number) => [number, number];
};

/** Raised when the balance does not converge: a fault of ours, never passed on as a number. */
export class NoBalance extends Error {
  constructor(left: number, right: number) {
    super(`no balance of the body at z ${left}, ${right} kg K`);
    this.name = 'NoBalance';
  }
}

export const makeBalance = (q: Patient): Balance => {
  const { p } = q;
  const { area, areaSlope, lever, volume: volume0, atmosphere, toStops, toTop, stopStiffness: stop } = p;
  const roll = p.rollStiffness;
  const frontTwist = p.springUneven - q.frontDrop[0] + q.frontDrop[1];
  const [loadLeft, loadRight] = q.load;
  const y = new Float64Array(2);
  const pressure = new Float64Array(2);
  const volume = new Float64Array(2);
  const volumePerZ = new Float64Array(4);
  const liftPerP = new Float64Array(2);
  // One side: force left over, and its slope over y; kept in an array to spare allocation in the innermost loop.
  const one = new Float64Array(2);
  const side = (i: 0 | 1, z: number, at: number): void => {
    const x = lever * at;
    const a = area + areaSlope * x;
    const v = volume0 + area * x + (areaSlope * x * x) / 2;
    const pr = (z * gasConstant) / v;
    const lift = lever * a * (pr - atmosphere);
    let push = 0;
    let stiff = 0;
    if (at < -toStops) {
      push = stop * (-toStops - at);
      stiff = stop;
    } else if (at > toTop) {
      push = -2 * stop * (at - toTop);
      stiff = 2 * stop;
    }
    one[0] = lift + push;
    one[1] = lever * lever * (areaSlope * (pr - atmosphere) - (a * a * pr) / v) - stiff;
    pressure[i] = pr;
    volume[i] = v;
    liftPerP[i] = lever * a;
  };
  const solve = (left: number, right: number): void => {
    let yl = y[0]!;
    let yr = y[1]!;
    for (let turn = 0; turn < 60; turn++) {
      const lean = roll * (yl - yr - frontTwist);
      side(0, left, yl);
      const gl = one[0]! - loadLeft - lean;
      const all = one[1]! - roll;
      side(1, right, yr);
      const gr = one[0]! - loadRight + lean;
      const arr = one[1]! - roll;
      const det = all * arr - roll * roll;
      let dl = -(gl * arr - gr * roll) / det;
      let dr = -(gr * all - gl * roll) / det;
      const far = Math.max(Math.abs(dl), Math.abs(dr));
      if (far > 0.03) {
        dl *= 0.03 / far;
        dr *= 0.03 / far;
      }
      yl += dl;
      yr += dr;
      // Newton squares what is left: a step of a micrometre leaves less than a picometre.
      if (far < 1e-6) {
        // dy/dz by the inverse of the Jacobian, times dV/dy = lever A.
        const liftLeft = liftPerP[0]!;
        const liftRight = liftPerP[1]!;
        const perLeft = (liftLeft * gasConstant) / volume[0]!;
        const perRight = (liftRight * gasConstant) / volume[1]!;
        volumePerZ[0] = (-liftLeft * arr * perLeft) / det;
        volumePerZ[1] = (liftLeft * roll * perRight) / det;
        volumePerZ[2] = (liftRight * roll * perLeft) / det;
        volumePerZ[3] = (-liftRight * all * perRight) / det;
        // The last move is carried into volume and pressure too.
        volume[0]! += lever * (area + areaSlope * lever * yl) * dl;
        volume[1]! += lever * (area + areaSlope * lever * yr) * dr;
        pressure[0] = (left * gasConstant) / volume[0]!;
        pressure[1] = (right * gasConstant) / volume[1]!;
        y[0] = yl;
        y[1] = yr;
        return;
      }
    }
    y.fill(0);
    throw new NoBalance(left, right);
  };
  /** z of one side at height `at` under `load`; no less than air at rest. */
  const carrying = (at: number, load: number): number => {
    side(0, 0, at);
    const a = area + areaSlope * lever * at;
    const stops = one[0]! + lever * a * atmosphere;
    const need = (load - stops) / (lever * a) + atmosphere;
    return (Math.max(need, atmosphere) * volume[0]!) / gasConstant;
  };
  const zAt = (yl: number, yr: number): [number, number] => {
    const lean = roll * (yl - yr - frontTwist);
    return [carrying(yl, loadLeft + lean), carrying(yr, loadRight - lean)];
  };
  return { y, pressure, volume, volumePerZ, solve, zAt };
};
