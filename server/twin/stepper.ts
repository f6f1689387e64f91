/**
 * Bogacki-Shampine 3(2): explicit, four rates a step of which the last is the next step's first, error from the embedded
 * second order. Explicit serves because what would be stiff (valve bodies, merged volumes, the body) is taken as settled.
 * P. Bogacki and L. F. Shampine, A 3(2) pair of Runge-Kutta formulas, Appl. Math. Lett. 2 (1989) 321-325.
 */
export type Rates = (t: number, y: Float64Array, into: Float64Array) => void;

/** No step, however small, leads on; the run stops here instead of carrying a wrong number. */
export class NoWayOn extends Error {
  constructor(t: number) {
    super(`the twin cannot step on from ${t} s`);
    this.name = 'NoWayOn';
  }
}

export type Stepper = {
  readonly y: Float64Array;
  /** Rates at y must be made new after a change of openings or of y from outside. */
  readonly refresh: (t: number) => void;
  /** Tries a step of `h` from y; leaves the result in `next` and returns the error over the tolerance; Infinity where it leaves what can be. */
  readonly attempt: (t: number, h: number) => number;
  readonly next: Float64Array;
  readonly accept: () => void;
};

/** `scale[i]`: what counts as much of component i; only those are watched for error. */
export const makeStepper = (rates: Rates, size: number, scale: readonly number[], tolerance: number): Stepper => {
  const y = new Float64Array(size);
  const next = new Float64Array(size);
  const trial = new Float64Array(size);
  const k1 = new Float64Array(size);
  const k2 = new Float64Array(size);
  const k3 = new Float64Array(size);
  const k4 = new Float64Array(size);
  const watched = scale.length;
  /** Every watched component but the last (heat of the pump) is a mass, a mass times temperature or a temperature. */
  const possible = (state: Float64Array): boolean => {
    for (let i = 0; i < watched - 1; i++) if (!(state[i]! >= 0)) return false;
    return true;
  };
  return {
    y,
    next,
    refresh: (t) => rates(t, y, k1),
    attempt: (t, h) => {
      for (let i = 0; i < size; i++) trial[i] = y[i]! + 0.5 * h * k1[i]!;
      if (!possible(trial)) return Infinity;
      rates(t + 0.5 * h, trial, k2);
      for (let i = 0; i < size; i++) trial[i] = y[i]! + 0.75 * h * k2[i]!;
      if (!possible(trial)) return Infinity;
      rates(t + 0.75 * h, trial, k3);
      for (let i = 0; i < size; i++) next[i] = y[i]! + (h / 9) * (2 * k1[i]! + 3 * k2[i]! + 4 * k3[i]!);
      if (!possible(next)) return Infinity;
      rates(t + h, next, k4);
      let worst = 0;
      for (let i = 0; i < watched; i++) {
        const error = Math.abs(h * ((-5 / 72) * k1[i]! + k2[i]! / 12 + k3[i]! / 9 - k4[i]! / 8));
        const ratio = error / (tolerance * scale[i]!);
        // A ratio that is not a number must not pass for a small one.
        if (!(ratio <= worst)) worst = ratio;
      }
      return Number.isNaN(worst) ? Infinity : worst;
    },
    accept: () => {
      y.set(next);
      k1.set(k4);
    },
  };
};
