/**
 * Thins a long row of readings to a few that tell: both ends, the knees, and the middle reading of each even stretch
 * between. Each kept row is a reading that was taken, none is an average; the middle one by value carries less noise
 * than the rest, so that a rate fitted to what is kept stays within its interval.
 */
export type Sample = { readonly t: number; readonly value: number };

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
};

/** Standard deviation of one reading from its neighbours, by second differences (a slope drops out); 0 below 5 rows. */
export const scatterOf = (samples: readonly Sample[]): number => {
  if (samples.length < 5) return 0;
  const off = samples.slice(1, -1).map((s, i) => {
    const [a, b] = [samples[i]!, samples[i + 2]!];
    const along = b.t > a.t ? (s.t - a.t) / (b.t - a.t) : 0.5;
    return (s.value - a.value - (b.value - a.value) * along) ** 2;
  });
  // variance of x - (a + b)/2 is 1.5 times that of one; the lower 90 % leave out knees and jumps (their share: 0.59)
  const calm = off.toSorted((a, b) => a - b).slice(0, Math.ceil(off.length * 0.9));
  return Math.sqrt(calm.reduce((sum, d) => sum + d, 0) / calm.length / 1.5 / 0.59);
};

/** Corners of the line through `samples` further off than `allow`, the furthest first; at most `most` (Ramer 1972). */
const cornersOf = (samples: readonly Sample[], allow: number, most: number): number[] => {
  const furthest = (from: number, to: number): { at: number; off: number; from: number; to: number } => {
    const [a, b] = [samples[from]!, samples[to]!];
    let found = { at: -1, off: 0, from, to };
    for (let i = from + 1; i < to; i++) {
      const s = samples[i]!;
      const along = b.t > a.t ? (s.t - a.t) / (b.t - a.t) : 0.5;
      const off = Math.abs(s.value - a.value - (b.value - a.value) * along);
      if (off > found.off) found = { at: i, off, from, to };
    }
    return found;
  };
  const corners: number[] = [];
  const open = [furthest(0, samples.length - 1)];
  while (corners.length < most) {
    const best = open.reduce((a, b) => (b.off > a.off ? b : a));
    if (!(best.off > allow)) break;
    corners.push(best.at);
    open.splice(open.indexOf(best), 1, furthest(best.from, best.at), furthest(best.at, best.to));
  }
  return corners;
};

/** Indices of the rows to keep, in order, `most` at the most (10 or more). */
export const telling = (samples: readonly Sample[], most = 40): number[] => {
  if (samples.length <= most) return samples.map((_, i) => i);
  // stretches of equal count: their middle readings are the quiet curve in which knees are looked for
  const stretches = Math.floor((most - 2) * 0.6);
  const middles = Array.from({ length: stretches }, (_, i) => {
    const from = 1 + Math.floor(((samples.length - 2) * i) / stretches);
    const to = 1 + Math.floor(((samples.length - 2) * (i + 1)) / stretches);
    const part = samples.slice(from, to);
    // measured off the stretch's own line, so that the middle one is not merely the one in mid fall
    const a = median(part.slice(0, Math.ceil(part.length / 3)).map((s) => s.value));
    const b = median(part.slice(-Math.ceil(part.length / 3)).map((s) => s.value));
    const off = part.map((s, j) => s.value - a - ((b - a) * j) / Math.max(1, part.length - 1));
    const middle = median(off);
    const mid = (part.length - 1) / 2;
    let best = 0;
    for (let j = 1; j < part.length; j++) {
      const nearer = Math.abs(off[j]! - middle) - Math.abs(off[best]! - middle);
      if (nearer < 0 || (nearer === 0 && Math.abs(j - mid) < Math.abs(best - mid))) best = j;
    }
    return from + best;
  });
  const kept = new Set([0, samples.length - 1, ...middles]);
  const corners = cornersOf(samples, 6 * scatterOf(samples), most - kept.size);
  for (const corner of corners) kept.add(corner);
  return [...kept].toSorted((a, b) => a - b);
};
