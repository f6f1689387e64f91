/**
 * Air as the twin knows it, and flow through any opening by ISO 6358: choked up to the critical ratio b, an ellipse
 * above it. All pressures absolute, Pa; temperatures K; conductance C in m3/(s Pa) at the reference atmosphere.
 */
import { criticalRatio as idealCriticalRatio, gamma, gasConstant } from '../core/air.ts';

export { gamma, gasConstant, idealCriticalRatio };
/** J/(kg K), at constant volume and at constant pressure. */
export const heatAtVolume = gasConstant / (gamma - 1);
export const heatAtPressure = heatAtVolume * gamma;
/** ISO 6358 / ISO 8778 reference atmosphere: 100 kPa, 20 C, 65 % humidity, 1.185 kg/m3. */
export const referenceDensity = 1.185;
export const referenceTemperature = 293.15;
/** 1 dm3/(s bar), the unit that valve makers print, in m3/(s Pa). */
export const dm3PerSecondBar = 1e-8;
/** Above this ratio the ellipse's endless slope is replaced by a straight line to zero: laminar in truth, and solvable. */
export const laminarRatio = 0.98;
/** The same for flow between tank and bellows, which rest against each other for hours: a straight end is quicker to solve. */
export const restingRatio = 0.9;

/** Conductance of a sharp or rounded hole, m3/(s Pa), from its effective area `coefficient * area`, m2. */
export const conductanceOfHole = (effectiveArea: number): number => {
  const choked = Math.sqrt(gamma / gasConstant) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)));
  return (effectiveArea * choked) / (referenceDensity * Math.sqrt(referenceTemperature));
};

/** Share of choked flow left at a ratio `r` of pressures, downstream over upstream; 1 below `b`, 0 at 1, straight from `laminar` on. */
export const flowShare = (r: number, b: number, laminar: number = laminarRatio): number => {
  if (r <= b) return 1;
  if (r >= 1) return 0;
  const x = ((r < laminar ? r : laminar) - b) / (1 - b);
  const share = Math.sqrt(1 - x * x);
  return r < laminar ? share : (share * (1 - r)) / (1 - laminar);
};

/** Mass flow, kg/s, from `up` to `down`; 0 when `down` is not below `up`. ISO 6358-1. */
export const massFlow = (
  conductance: number,
  b: number,
  up: number,
  upTemperature: number,
  down: number,
  laminar: number = laminarRatio,
): number =>
  conductance <= 0 || down >= up
    ? 0
    : conductance *
      up *
      referenceDensity *
      Math.sqrt(referenceTemperature / upTemperature) *
      flowShare(down / up, b, laminar);

/** One conductance that stands for several in a row, by 1/C^2 = sum 1/Ci^2; exact when subsonic and b alike, else an estimate. */
export const inSeries = (...conductances: readonly number[]): number => {
  let sum = 0;
  for (const c of conductances) {
    if (c <= 0) return 0;
    if (c !== Infinity) sum += 1 / (c * c);
  }
  return sum === 0 ? Infinity : 1 / Math.sqrt(sum);
};
