/** Scales for drawings: a span of values onto a span of pixels, and marks at round values. Pure. */
export type Scale = { from: number; to: number; at: (v: number) => number };

export const scale = (from: number, to: number, x0: number, x1: number): Scale => {
  const width = to - from || 1;
  return { from, to, at: (v) => x0 + ((v - from) / width) * (x1 - x0) };
};

/** Steps of a tape in inches: a half, a quarter and so on; else 1, 2, 5 times a power of ten. */
export const stepFor = (span: number, most: number, inches: boolean): number => {
  const least = span / most;
  if (inches) for (const step of [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 8, 12]) if (step >= least) return step;
  const power = 10 ** Math.floor(Math.log10(least));
  for (const times of [1, 2, 5, 10]) if (times * power >= least * 0.999) return times * power;
  return 10 * power;
};

/** Multiples of `step` within [from, to], free of the dust of adding up. */
export const marks = (from: number, to: number, step: number): number[] => {
  const out: number[] = [];
  for (let n = Math.ceil(from / step - 1e-9); n * step <= to + step * 1e-9; n += 1)
    out.push(Number((n * step).toPrecision(12)));
  return out;
};
