import { describe, expect, it } from 'vitest';
import { fuzzFrames, fuzzNotes, fuzzSheets } from './fuzz.ts';

// times are for the campaign (npm run measure -- fuzz); here only a bound that a hang would break
const hang = 2000;

describe('what nobody would type', () => {
  it('is read without a crash or a hang, into what the log can keep', async () => {
    const done = await fuzzNotes({ count: 1500, seed: 20_261_125 });
    expect(done.faults).toEqual([]);
    expect(done.worst).toBeLessThan(hang);
  });

  it('is refused as a sheet by the name of the field, or can be judged by', async () => {
    const done = await fuzzSheets({ count: 400, seed: 20_261_125 });
    expect(done.faults).toEqual([]);
    expect(done.worst).toBeLessThan(hang);
  });

  it('is answered by the socket as a frame, and the server lives', async () => {
    const done = await fuzzFrames({ count: 1500, seed: 20_261_125 });
    expect(done.faults).toEqual([]);
    expect(done.kept).toBeGreaterThan(100);
    expect(done.worst).toBeLessThan(hang);
  });
});
