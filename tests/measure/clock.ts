/** Times, as percentiles in milliseconds. */
export const percentile = (times: readonly number[], p: number): number => {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor((p / 100) * sorted.length))] ?? Number.NaN;
};
export const ms = (value: number): string => `${value < 10 ? value.toFixed(2) : value.toFixed(1)} ms`;
export const timed = async (runs: number, work: (i: number) => unknown): Promise<number[]> => {
  const out: number[] = [];
  for (let i = 0; i < runs; i += 1) {
    const from = performance.now();
    await work(i);
    out.push(performance.now() - from);
  }
  return out;
};
export const line = (what: string, measured: string, beside: string, goal: string): void =>
  console.log(`${what.padEnd(34)} ${measured.padEnd(34)} ${beside.padEnd(40)} goal: ${goal}`);
