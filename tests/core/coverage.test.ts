/**
 * Intervals that mean what they say. The reading-error model: a true value plus a normal error of a quarter of a
 * division, rounded to the division; clock times rounded to the minute. Leaks above the detection limit (found in 95 % of
 * tries): the 95 % interval has to hold the truth in 93 to 97 % of 2,000 runs.
 */
import { describe, expect, it } from 'vitest';
import { fallRate, fitDecay, pressureAfter, type TankReading } from '../../server/core/decay.ts';
import { fitSink } from '../../server/core/bellows-leak.ts';
import { z95 } from '../../server/core/line-fit.ts';
import { si } from '../../server/core/quantity.ts';
import { handShare, readingDeviation, timeDeviation } from '../../server/core/reading-error.ts';
import { toSi } from '../../server/core/units.ts';

/** Small generator with a fixed start (mulberry32): the same runs each time. */
const random = (seed: number): (() => number) => {
  let s = seed;
  return () => {
    s = (s + 0x6d2b79f5) | 0;
    let t = Math.imul(s ^ (s >>> 15), s | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  };
};
const normal = (next: () => number): number => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
const atmosphere = si<never>(101_325);
const runs = 2000;

const readGauge = (truth: number, division: number, next: () => number): number =>
  Math.round((truth + handShare * division * normal(next)) / division) * division;

/** z of 95 % one-sided power on top of the two-sided test. */
const detection = z95 + 1.645;

const tankRun = (next: () => number): { inside: boolean; rate: number } => {
  const division = toSi([1, 2, 5][Math.floor(next() * 3)]!, 'psi');
  const n = 2 + Math.floor(next() * 7);
  const minutes = 20 + Math.floor(next() * 100);
  const start = toSi(40 + 80 * next(), 'psi');
  const sd = readingDeviation(division);
  // Even readings over the span: slope variance 12 / (n span^2) at the most, two readings give 2 / span^2.
  const times = Array.from({ length: n }, (_, i) => Math.round((minutes * i) / (n - 1)) * 60);
  const mean = times.reduce((a, b) => a + b, 0) / n;
  const slopeSd = sd / Math.sqrt(times.reduce((a, t) => a + (t - mean) ** 2, 0));
  const smallest = detection * slopeSd;
  const rate = smallest * (1.05 + 3 * next());
  const k = rate / fallRate(start as never, 1, atmosphere);
  const tSd = timeDeviation(60);
  const readings = times.map((t): TankReading => {
    const exact = t === 0 ? 0 : t + (next() - 0.5) * 60;
    const p = pressureAfter(start as never, k, Math.max(0, exact) as never, atmosphere);
    return { t, p: readGauge(p, division, next) as never, sd, tSd: t === 0 ? 0 : tSd };
  });
  const fit = fitDecay(readings, atmosphere);
  return { inside: Math.abs(fit.k - k) <= z95 * fit.kSd, rate };
};

const sinkRun = (next: () => number): boolean => {
  const division = [0.001, 0.0254 / 8, 0.0254 / 16][Math.floor(next() * 3)]!;
  const n = 2 + Math.floor(next() * 5);
  const hours = 0.5 + 8 * next();
  const sd = readingDeviation(division);
  const times = Array.from({ length: n }, (_, i) => (hours * 3600 * i) / (n - 1));
  const mean = times.reduce((a, b) => a + b, 0) / n;
  const slopeSd = sd / Math.sqrt(times.reduce((a, t) => a + (t - mean) ** 2, 0));
  const rate = detection * slopeSd * (1.05 + 3 * next());
  const start = 0.35 + 0.01 * next();
  const fit = fitSink(
    times.map((t) => {
      const exact = t + (next() - 0.5) * 60;
      return { t, h: readGauge(start - rate * exact, division, next) as never, sd, tSd: timeDeviation(60) };
    }),
  );
  return Math.abs(fit.rate - rate) <= z95 * fit.rateSd;
};

describe('95 % intervals', () => {
  it('of a tank leak hold the truth in 93 to 97 of 100 runs', () => {
    const next = random(20_261_125);
    let inside = 0;
    for (let i = 0; i < runs; i++) if (tankRun(next).inside) inside++;
    expect(inside / runs).toBeGreaterThanOrEqual(0.93);
    expect(inside / runs).toBeLessThanOrEqual(0.97);
  });

  it('of a bellows leak by the tape hold the truth in 93 to 97 of 100 runs', () => {
    const next = random(7);
    let inside = 0;
    for (let i = 0; i < runs; i++) if (sinkRun(next)) inside++;
    expect(inside / runs).toBeGreaterThanOrEqual(0.93);
    expect(inside / runs).toBeLessThanOrEqual(0.97);
  });

  it('would be too narrow if rounding were left out: the model is needed', () => {
    const next = random(3);
    let inside = 0;
    for (let i = 0; i < 500; i++) {
      const division = toSi(2, 'psi');
      const start = toSi(80 + 20 * next(), 'psi');
      const k = 5e-5;
      const sd = handShare * division;
      const readings = [0, 1800].map((t): TankReading => ({
        t,
        p: readGauge(pressureAfter(start as never, k, t as never, atmosphere), division, next) as never,
        sd,
        tSd: 0,
      }));
      const fit = fitDecay(readings, atmosphere);
      if (Math.abs(fit.k - k) <= z95 * fit.kSd) inside++;
    }
    expect(inside / 500).toBeLessThan(0.9);
  });
});
