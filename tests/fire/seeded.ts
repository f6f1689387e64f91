/** Numbers drawn by seed, so that a failure can be run again (linear congruential generator, Numerical Recipes' constants). */
export type Draw = { below: (n: number) => number; of: <T>(list: readonly T[]) => T };
export const drawBy = (seed: number): Draw => {
  let state = seed >>> 0;
  const below = (n: number): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    // the high bits: the low ones of such a generator repeat soon
    return Math.floor((state / 2 ** 32) * n);
  };
  return { below, of: (list) => list[below(list.length)]! };
};
