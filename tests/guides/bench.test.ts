import { describe, expect, it } from 'vitest';
import { benchBlock } from '../../server/guides/bench-block.ts';
import { benchOf } from '../../server/guides/bench-note.ts';
import { type AirOn, type Arm, benchTable, benchVerdict, type Port } from '../../server/guides/bench-verdict.ts';
import { guideById, stepBlock } from '../../server/guides/steps.ts';
import { bareSheet } from './sheets.ts';

/** By the exact definition of the pound and the inch: 1 psi = 6894.757293168361 Pa (NIST SP 811, appendix B.8). */
const psi = 6894.757293168361;

/**
 * A valve as a small net of passages, apart from the table: where does air come out under water? Inlet port and chamber
 * are joined by a one-way check and the inlet seat in a row; chamber and bellows port are one; the exhaust seat leads
 * from the chamber to the exhaust.
 */
type Bad = { inletSeat?: true; check?: true; exhaustSeat?: true; cover?: true };
const bubblesOf = (bad: Bad, airOn: AirOn, arm: Arm): Port[] => {
  const inletOpen = arm === 'fill' || bad.inletSeat === true;
  const exhaustOpen = arm === 'exhaust' || bad.exhaustSeat === true;
  const chamber = airOn === 'bellows port' || inletOpen;
  return [
    ...(airOn === 'inlet' && chamber ? (['bellows port'] as const) : []),
    ...(airOn === 'bellows port' && inletOpen && bad.check ? (['inlet port'] as const) : []),
    ...(chamber && exhaustOpen ? (['exhaust port'] as const) : []),
    ...(chamber && bad.cover ? (['cover'] as const) : []),
  ];
};
const partOf = {
  inletSeat: 'inlet seat',
  check: 'inlet check',
  exhaustSeat: 'exhaust seat',
  cover: 'valve cover',
} as const;
const feeds: AirOn[] = ['inlet', 'bellows port'];
const arms: Arm[] = ['neutral', 'fill', 'exhaust'];

describe('benchVerdict', () => {
  // the rules of the trade, common practice, no source
  it.each([
    ['bellows port', 'inlet', 'neutral', 'inlet seat'],
    ['inlet port', 'bellows port', 'neutral', 'inlet check'],
    ['inlet port', 'bellows port', 'fill', 'inlet check'],
    ['exhaust port', 'bellows port', 'neutral', 'exhaust seat'],
    ['cover', 'inlet', 'neutral', 'valve cover'],
    ['cover', 'bellows port', 'neutral', 'valve cover'],
  ] as const)('bubbles at the %s, air on the %s, arm at %s: %s', (port, airOn, arm, part) => {
    for (const pressure of [20 * psi, 100 * psi]) {
      const v = benchVerdict(port, airOn, arm, pressure);
      expect([v.verdict, v.parts[0], v.again]).toEqual(['leaks', part, null]);
    }
  });

  it('says that a tight inlet seat can hide a bad check', () => {
    const v = benchVerdict('none', 'bellows port', 'neutral', 100 * psi);
    expect(v.verdict).toBe('tight');
    expect(v.again).toMatch(/arm in fill/);
    expect(v.again).toMatch(/20 psi/);
  });

  it('counts no bubbles only at both pressures', () => {
    expect(benchVerdict('none', 'inlet', 'neutral', 100 * psi).again).toMatch(/about 20 psi/);
    expect(benchVerdict('none', 'inlet', 'neutral', 20 * psi).again).toMatch(/about 100 psi/);
    expect(benchVerdict('none', 'inlet', 'neutral', 50 * psi).again).toMatch(/100 psi and at about 20 psi/);
  });

  it.each([0, -1, Number.NaN])('shows nothing with %s Pa on it', (pressure) => {
    expect(benchVerdict('none', 'inlet', 'neutral', pressure).verdict).toBe('cannot tell');
  });

  it('a valve that fills and dumps is at its work', () => {
    expect(benchVerdict('bellows port', 'inlet', 'fill', 100 * psi).verdict).toBe('normal');
    expect(benchVerdict('exhaust port', 'bellows port', 'exhaust', 100 * psi).verdict).toBe('normal');
    expect(benchVerdict('none', 'inlet', 'fill', 100 * psi).verdict).toBe('does not pass');
    expect(benchVerdict('none', 'bellows port', 'exhaust', 100 * psi).verdict).toBe('does not pass');
  });

  it('agrees with a net of passages: whatever one bad part shows, that part is named', () => {
    let shown = 0;
    for (const bad of Object.keys(partOf) as (keyof typeof partOf)[])
      for (const airOn of feeds)
        for (const arm of arms) {
          const healthy = new Set(bubblesOf({}, airOn, arm));
          for (const port of bubblesOf({ [bad]: true }, airOn, arm)) {
            if (healthy.has(port)) continue;
            shown += 1;
            expect([bad, airOn, arm, port, benchTable[airOn][arm][port].parts]).toEqual([
              bad,
              airOn,
              arm,
              port,
              expect.arrayContaining([partOf[bad]]),
            ]);
          }
        }
    expect(shown).toBeGreaterThan(8);
  });

  it('agrees with it on the healthy valve: what it shows is called normal, what it does not is not called tight', () => {
    for (const airOn of feeds)
      for (const arm of arms) {
        const healthy = bubblesOf({}, airOn, arm);
        for (const port of healthy) expect(benchTable[airOn][arm][port].verdict).toBe('normal');
        expect(benchTable[airOn][arm].none.verdict).toBe(healthy.length > 0 ? 'does not pass' : 'tight');
      }
  });
});

describe('benchOf', () => {
  it.each([
    ['bubbles at the bellows port, air on the inlet', 'bellows port', 'inlet', 'neutral', 'inlet seat'],
    ['air on the bag port, bubbles from the inlet', 'inlet port', 'bellows port', 'neutral', 'inlet check'],
    ['Arm in fill, air on delivery: bubbles at supply port', 'inlet port', 'bellows port', 'fill', 'inlet check'],
    [
      'bubbles at exhaust, air on bellows port, arm neutral, 100 psi',
      'exhaust port',
      'bellows port',
      'neutral',
      'exhaust seat',
    ],
    ['bubbles out of the cover, air on inlet at 690 kPa', 'cover', 'inlet', 'neutral', 'valve cover'],
  ] as const)('"%s"', (note, port, airOn, arm, part) => {
    expect(benchOf(note)).toMatchObject({ port, airOn, arm, verdict: 'leaks', parts: expect.arrayContaining([part]) });
  });

  it('says what it took from the step and not from the note', () => {
    expect(benchOf('bubbles at the inlet port', { airOn: 'bellows port', arm: 'fill' })?.assumed).toEqual([
      'air on the bellows port',
      'arm at fill',
      'pressure not said',
    ]);
    expect(benchOf('air on the inlet, arm neutral, 100 psi: no bubbles')?.assumed).toEqual([]);
  });

  it('says nothing where the note does not', () => {
    expect(benchOf('bubbles at the bellows port')).toBeNull();
    expect(benchOf('air on the inlet')).toBeNull();
    expect(benchOf('tank 104')).toBeNull();
    expect(benchOf('')).toBeNull();
  });
});

describe('benchBlock', () => {
  it('words the verdict with what it was taken to mean', () => {
    const block = benchBlock('bubbles at the inlet port', { id: 'height valve on the bench', step: 3 });
    expect(block).toMatchObject({ is: 'teach' });
    expect(block?.is === 'teach' && block.words).toBe(
      'Bench: air on the bellows port, arm at fill, bubbles at the inlet port: inlet check lets the bellows back into the tank side.',
    );
  });

  it('is silent on the coach: bubbles there are no bench test', () => {
    expect(benchBlock('bubbles at left bellows', { id: 'soap check', step: 3 })).toBeNull();
    expect(benchBlock('bubbles at left bellows', null)).toBeNull();
  });
});

it('each step on the bench draws the valve as it stands there: air, arm, ports to watch', () => {
  const guide = guideById('height valve on the bench')!;
  const drawn = guide.steps.flatMap((step, at) => {
    const picture = stepBlock(guide, at, bareSheet()).find((b) => b.is === 'picture');
    expect(picture === undefined).toBe(step.bench === undefined);
    return picture ? [picture.drawing] : [];
  });
  expect(drawn[0]).toEqual({
    is: 'valve',
    airOn: 'inlet',
    arm: 'neutral',
    watch: ['bellows port', 'exhaust port', 'cover'],
  });
  expect(drawn.length).toBeGreaterThanOrEqual(3);
});
