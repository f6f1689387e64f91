/** The notes every bench starts with, judged: verdict, words, limit with source, and what they say to the diagnosis. */
import { describe, expect, it } from 'vitest';
import { bench, byKey, juniper, larkfield, sheetWith } from './bench.ts';

describe('tank leak', () => {
  it('says how long it stays level before the rate, from two readings', () => {
    const { found } = bench(juniper, [
      [0, 'condition not pump running', 'condition panel auto', 'reading pressure @ tank = 112 psi'],
      [30, 'reading pressure @ tank = 104 psi'],
    ]);
    const leak = byKey(found, 'tank fall auto@tank');
    expect(leak.verdict).toBe('high');
    expect(leak.words).toMatch(/^stays level about 3 hours .*loses 0\.27 psi\/min, limit 3 psi in 30 min$/);
    expect(leak.limit?.source.words).toBe('sheet: supply.leakLimit');
    expect(leak.evidence).toEqual([{ see: 'tank fall auto', outcome: 'fast' }]);
  });

  it('does not claim which fall it was while the panel position is unknown, and asks', () => {
    const { found } = bench(juniper, [
      [0, 'reading pressure @ tank = 112 psi'],
      [30, 'reading pressure @ tank = 104 psi'],
    ]);
    const leak = byKey(found, 'tank fall@tank');
    expect(leak.evidence).toBeUndefined();
    expect(leak.wants?.question).toMatch(/ROAD .*LOCK/);
  });

  it('takes a coach without a panel as automatic and says so', () => {
    const { found } = bench(larkfield, [
      [0, 'reading pressure @ tank = 720 kPa'],
      [120, 'reading pressure @ tank = 620 kPa'],
    ]);
    const leak = byKey(found, 'tank fall auto@tank');
    expect(leak.evidence).toEqual([{ see: 'tank fall auto', outcome: 'slow' }]);
    expect(leak.words).toContain('kPa/min');
    expect(leak.why.notes.join()).toContain('no panel on this coach');
  });

  it('cannot tell from two readings a minute apart on a 2 psi gauge, and says how long to wait', () => {
    const { found } = bench(juniper, [
      [0, 'condition panel auto', 'reading pressure @ tank = 112 psi'],
      [1, 'reading pressure @ tank = 111 psi'],
    ]);
    const leak = byKey(found, 'tank fall auto@tank');
    expect(leak.verdict).toBe('cannot tell');
    expect(leak.words).toMatch(/read again in \d+ minutes/);
    expect(leak.evidence).toBeUndefined();
  });

  it('waits out hot air just pumped', () => {
    const { found } = bench(juniper, [
      [0, 'condition pump running'],
      [2, 'condition not pump running', 'reading pressure @ tank = 117 psi'],
      [5, 'reading pressure @ tank = 113 psi'],
    ]);
    expect(byKey(found, 'settling@tank').words).toMatch(/hot air/);
    expect(found.some((f) => f.key.startsWith('tank fall'))).toBe(false);
  });

  it('takes cooling out where both temperatures are known', () => {
    const cold = bench(juniper, [
      [0, 'condition panel shut', 'reading temperature @ ambient = 70 F', 'reading pressure @ tank = 100 psi'],
      [480, 'reading temperature @ ambient = 50 F', 'reading pressure @ tank = 96 psi'],
    ]);
    const leak = byKey(cold.found, 'tank fall shut@tank');
    expect(leak.verdict).toBe('within');
    expect(leak.evidence).toEqual([{ see: 'tank fall shut', outcome: 'none' }]);
  });

  it('holds a coach without a limit on its sheet against the benchmark, named as one', () => {
    const sheet = sheetWith((s) => delete s.supply!.leakLimit);
    const { found } = bench(sheet, [[0, 'condition panel auto', 'reading pressure fall @ tank = 6 psi over 10 min']]);
    const leak = byKey(found, 'tank fall auto@tank');
    expect(leak.limit?.source.words).toMatch(/49 CFR 393\.207\(f\).*benchmark for a private coach/);
    expect(leak.amount?.text).toBe('0.6 psi/min');
  });
});

describe('heights', () => {
  it('judges each corner, each end and the coach as a whole', () => {
    const { found } = bench(juniper, [
      [
        0,
        'reading height @ left rear = 13 1/4 in',
        'reading height @ right rear = 14 in',
        'reading height @ left front = 15 3/8 in',
        'reading height @ right front = 15 1/4 in',
      ],
    ]);
    expect(byKey(found, 'height@left rear')).toMatchObject({
      verdict: 'low',
      words: '1/2 in low left rear (13 1/4 in)',
      evidence: [{ see: 'left rear height', outcome: 'low' }],
    });
    expect(byKey(found, 'side to side@rear').words).toBe('rear leans left: left side 3/4 in lower');
    expect(byKey(found, 'side to side@front').verdict).toBe('within');
    expect(byKey(found, 'attitude@coach').drawing?.is).toBe('plan');
  });

  it('lets a height given in a note stand before the sheet', () => {
    const { found } = bench(juniper, [
      [0, 'reading height @ left rear = 13 in'],
      [3, 'spec height @ rear = 13 1/4 in .. 13 3/4 in'],
    ]);
    expect(byKey(found, 'height@left rear')).toMatchObject({
      verdict: 'low',
      words: '1/2 in low left rear (13 in)',
      limit: { source: { kind: 'note' } },
    });
  });

  it('asks for a height the sheet does not have', () => {
    const sheet = sheetWith((s) => delete s.heights!.leftRear);
    const { found } = bench(sheet, [[0, 'reading height @ left rear = 13 in']]);
    expect(byKey(found, 'height@left rear')).toMatchObject({
      verdict: 'no limit',
      wants: { field: 'heights.leftRear' },
    });
  });
});

describe('switch, pump, electrics, wheels', () => {
  it('judges cut-in, cut-out and their difference', () => {
    const { found } = bench(juniper, [
      [0, 'reading cut-in @ pressure switch = 80 psi', 'reading cut-out @ pressure switch = 117 psi'],
    ]);
    expect(byKey(found, 'cut-in@pressure switch').words).toBe('cut-in at 80 psi, low: should be 85 to 91 psi');
    expect(byKey(found, 'cut-out@pressure switch').verdict).toBe('within');
    expect(byKey(found, 'difference@pressure switch').verdict).toBe('high');
  });

  it('judges a pump-up against the time on the sheet', () => {
    const { found } = bench(juniper, [[0, 'reading pump-up @ tank = 90 psi from 0 psi over 11 min']]);
    expect(byKey(found, 'pump-up@tank')).toMatchObject({
      verdict: 'high',
      evidence: [{ see: 'pump-up', outcome: 'slow' }],
    });
  });

  it('judges volts at the motor and the drop on the way', () => {
    const { found } = bench(juniper, [
      [0, 'reading voltage @ motor = 10.4 V', 'reading voltage @ battery = 12.5 V', 'reading current @ motor = 22 A'],
    ]);
    expect(byKey(found, 'voltage@motor').evidence).toEqual([{ see: 'motor volts', outcome: 'low' }]);
    expect(byKey(found, 'voltage drop@battery to motor').words).toBe(
      '2.1 V lost between battery and motor, limit 0.6 V',
    );
    expect(byKey(found, 'current@motor').verdict).toBe('within');
  });

  it('turns toe in inches into degrees of one wheel', () => {
    const { found } = bench(juniper, [
      [0, 'reading toe @ left rear forward wheel = -1/8 in', 'reading camber @ left rear forward wheel = 0.5 deg'],
    ]);
    expect(byKey(found, 'toe@left rear forward wheel').words).toBe(
      'left rear forward wheel toe 0.23 deg out: should be -0.05 to 0.10 deg',
    );
    expect(byKey(found, 'camber@left rear forward wheel').verdict).toBe('within');
  });

  it('reads the tank against its working band', () => {
    const { found } = bench(juniper, [[0, 'condition pump running', 'reading pressure @ tank = 135 psi']]);
    expect(byKey(found, 'pressure@tank')).toMatchObject({
      verdict: 'high',
      evidence: [{ see: 'pump past cut-out', outcome: 'runs on' }],
    });
  });
});
