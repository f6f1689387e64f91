/** A height from the floor counts with the tyres right: corrected where the sheet says by how much, else said. */
import { describe, expect, it } from 'vitest';
import { bench, byKey, juniper, larkfield, sheetWith } from './bench.ts';

const known = sheetWith((s) => {
  s.tyres!.rise = { height: '1/8 in', pressure: '10 psi' };
});
const knownMetric = sheetWith((s) => {
  s.tyres!.rise = { height: '4 mm', pressure: '100 kPa' };
}, 'larkfield-11');

describe('heights on tyres that are off', () => {
  it('psi and inches: corrected, both figures shown, the verdict by the corrected one', () => {
    const b = bench(known, [
      [
        0,
        'reading temperature @ ambient = 68 F',
        'reading pressure @ left rear tyre = 70 psi',
        'reading height @ left rear = 13 3/8 in',
      ],
    ]);
    const f = byKey(b.found, 'height@left rear');
    // By hand: 20 psi short is 1/4 in; 3/8 in low by the tape, 1/8 in low with the tyres right, tolerance 1/4 in.
    expect(f.words).toBe('3/8 in low left rear (13 3/8 in); with the tyres right 1/8 in low, within tolerance');
    expect(f.verdict).toBe('within');
    expect(f.evidence).toEqual([{ see: 'left rear height', outcome: 'within' }]);
    expect(f.why.inputs.map((i) => i.from)).toContain('sheet: tyres.rise.height');
    expect(f.why.notes.join()).toMatch(/first set left rear tyre to 90 psi/);
    expect(f.drawing).toMatchObject({ is: 'strip', pins: [{}, { label: 'with the tyres right' }] });
  });

  it('kPa and millimetres: the two wheels of a side count by their middle', () => {
    const b = bench(knownMetric, [
      [
        0,
        'reading temperature @ ambient = 18 C',
        'reading pressure @ left rear forward tyre = 540 kPa',
        'reading pressure @ left rear aft tyre = 640 kPa',
        'reading height @ left rear = 347 mm',
      ],
    ]);
    // By hand: 100 kPa short on one of two is 2 mm; 8 mm low is out of 6 mm, 6 mm low is not.
    expect(byKey(b.found, 'height@left rear')).toMatchObject({
      verdict: 'within',
      words: '8 mm low left rear (347 mm); with the tyres right 6 mm low, within tolerance',
    });
  });

  it('without the field says that it is not known, what to set first, and tells the diagnosis nothing', () => {
    const b = bench(larkfield, [
      [0, 'reading pressure @ left rear tyre = 540 kPa', 'reading height @ left rear = 340 mm'],
    ]);
    const f = byKey(b.found, 'height@left rear');
    expect(f.words).toMatch(
      /^15 mm low left rear \(340 mm\); not with the tyres right: set left rear tyre to 640 kPa first$/,
    );
    expect(f.why.notes.join()).toMatch(/how far the tyres move this height is not known \(sheet: tyres\.rise\)/);
    expect(f.wants?.field).toBe('tyres.rise');
    expect(f.evidence).toBeUndefined();
    // Nothing is to be turned before the tyres are right.
    expect(f.why.notes.join()).not.toMatch(/to correct/);
  });

  it('a cold morning is not a soft tyre', () => {
    const cold = ['reading temperature @ ambient = 40 F', 'reading height @ right front = 14 3/4 in'];
    const right = bench(known, [[0, ...cold, 'reading pressure @ right front tyre = 89 psi']]);
    expect(byKey(right.found, 'height@right front').words).not.toMatch(/tyre/);
    const high = bench(known, [[0, ...cold, 'reading pressure @ right front tyre = 95 psi']]);
    expect(byKey(high.found, 'height@right front').words).toMatch(/with the tyres right/);
  });

  it('a tyre read after the heights puts them in another light, one filled since does not', () => {
    const height = [0, 'reading height @ left rear = 13 3/8 in'] as const;
    const after = bench(juniper, [height, [10, 'reading pressure @ left rear tyre = 70 psi']]);
    expect(byKey(after.found, 'height@left rear').words).toMatch(/set left rear tyre to 90 psi first/);
    const filled = bench(juniper, [
      [0, 'reading pressure @ left rear tyre = 70 psi'],
      [10, 'work inflated @ left rear tyre'],
      [10, 'reading height @ left rear = 13 3/8 in'],
    ]);
    expect(byKey(filled.found, 'height@left rear').words).not.toMatch(/tyre/);
  });

  it('a quarter off is too far, and a height not from the floor is left as it is', () => {
    const far = bench(known, [
      [0, 'reading pressure @ left rear tyre = 60 psi', 'reading height @ left rear = 13 3/8 in'],
    ]);
    expect(byKey(far.found, 'height@left rear').why.notes.join()).toMatch(/too far for a correction/);
    const axle = sheetWith((s) => {
      s.heights!.measured = 'axle to frame';
      s.tyres!.rise = { height: '1/8 in', pressure: '10 psi' };
    });
    const f = byKey(
      bench(axle, [[0, 'reading pressure @ left rear tyre = 80 psi', 'reading height @ left rear = 13 3/8 in']]).found,
      'height@left rear',
    );
    expect(f.why.notes.join()).toMatch(/does not measure from the floor \(axle to frame\)/);
    expect(f.wants).toBeUndefined();
  });

  it('the other side and the other end say nothing', () => {
    const b = bench(known, [
      [
        0,
        'reading pressure @ right rear tyre = 70 psi',
        'reading pressure @ left front tyre = 70 psi',
        'reading height @ left rear = 13 3/8 in',
      ],
    ]);
    expect(byKey(b.found, 'height@left rear').words).not.toMatch(/tyre/);
  });

  it('left against right is told as taped, with the tyre to set first', () => {
    const notes = (pressure: number): string =>
      byKey(
        bench(known, [
          [
            0,
            `reading pressure @ left rear tyre = ${pressure} psi`,
            'reading height @ left rear = 13 3/8 in',
            'reading height @ right rear = 13 3/4 in',
          ],
        ]).found,
        'side to side@rear',
      ).why.notes.join();
    expect(notes(70)).toMatch(/not corrected for the tyres: first set left rear tyre to 90 psi/);
    expect(notes(90)).not.toMatch(/tyres/);
  });
});
