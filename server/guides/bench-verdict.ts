/**
 * What a height valve on the bench says, by where the air is put on, where the arm stands and where bubbles come.
 * Common practice, no source; the mechanism is the valve's own: inlet check, inlet seat, bellows port, exhaust seat.
 */
import type { Part } from '../../intents/shapes.ts';

export type AirOn = 'inlet' | 'bellows port';
export type Arm = 'neutral' | 'fill' | 'exhaust';
/** Where bubbles come; `none`: nowhere, under water, for a minute. */
export type Port = 'inlet port' | 'bellows port' | 'exhaust port' | 'cover' | 'none';
/** Where a step of the bench test has the air and the arm. */
export type BenchSet = { readonly airOn: AirOn; readonly arm: Arm };
export type BenchVerdict = {
  readonly verdict: 'leaks' | 'normal' | 'tight' | 'does not pass' | 'cannot tell';
  /** Parts it points at, most likely first. */
  readonly parts: readonly Part[];
  readonly words: string;
  /** What to do before it counts; null when nothing is left. */
  readonly again: string | null;
};

const psi = 6894.757293168361;
/** Some seats leak only with little behind them: tried near 100 psi and again near 20 psi. Gauge, Pa. */
const littleMost = 30 * psi;
const muchLeast = 70 * psi;

type Row = Omit<BenchVerdict, 'again'> & { readonly again?: string };
const leaks = (words: string, ...parts: Part[]): Row => ({ verdict: 'leaks', parts, words });
const normal = (words: string): Row => ({ verdict: 'normal', parts: [], words });
const stuck = (words: string, ...parts: Part[]): Row => ({
  verdict: 'does not pass',
  parts,
  words,
  again: 'wait out the delay, arm past the dead band, and look once more',
});
const tight = (words: string): Row => ({ verdict: 'tight', parts: [], words });
const unclear = (words: string, again: string): Row => ({ verdict: 'cannot tell', parts: [], words, again });

const ownPort = unclear(
  'bubbles where the air is put on come from the hose fitting',
  'make the hose fitting tight first',
);
const cover = leaks('cover gasket or cover', 'valve cover');

/** Air on, arm, bubbles at. */
export const benchTable: Readonly<Record<AirOn, Readonly<Record<Arm, Readonly<Record<Port, Row>>>>>> = {
  inlet: {
    neutral: {
      'inlet port': ownPort,
      'bellows port': leaks('inlet seat lets air through to the bellows', 'inlet seat'),
      'exhaust port': leaks('inlet seat lets air in, and exhaust seat lets it out', 'inlet seat', 'exhaust seat'),
      cover,
      none: tight('inlet seat is tight from the tank side'),
    },
    fill: {
      'inlet port': ownPort,
      'bellows port': normal('it fills, as it should with the arm up'),
      'exhaust port': leaks('exhaust seat lets air out while it fills', 'exhaust seat'),
      cover,
      none: stuck('it does not fill: inlet check stuck shut, or plugged inside', 'height valve', 'inlet check'),
    },
    exhaust: {
      'inlet port': ownPort,
      'bellows port': leaks('inlet seat lets air through while it should dump', 'inlet seat'),
      'exhaust port': leaks('inlet seat: with the arm down its air goes straight out', 'inlet seat'),
      cover,
      none: tight('inlet seat is tight with the arm down'),
    },
  },
  'bellows port': {
    neutral: {
      'inlet port': leaks(
        'inlet check lets air back to the tank side, and the inlet seat with it',
        'inlet check',
        'inlet seat',
      ),
      'bellows port': ownPort,
      'exhaust port': leaks('exhaust seat lets the bellows out', 'exhaust seat'),
      cover,
      none: {
        verdict: 'tight',
        parts: [],
        words: 'exhaust seat is tight; the inlet check is not proved, a tight inlet seat hides it',
        again: 'arm in fill, past the delay, air still on the bellows port: that proves the inlet check',
      },
    },
    fill: {
      'inlet port': leaks('inlet check lets the bellows back into the tank side', 'inlet check'),
      'bellows port': ownPort,
      'exhaust port': leaks('exhaust seat lets the bellows out', 'exhaust seat'),
      cover,
      none: tight('inlet check and exhaust seat are tight'),
    },
    exhaust: {
      'inlet port': leaks(
        'inlet check lets air back to the tank side, and the inlet seat with it',
        'inlet check',
        'inlet seat',
      ),
      'bellows port': ownPort,
      'exhaust port': normal('it dumps, as it should with the arm down'),
      cover,
      none: stuck('it does not dump: exhaust plugged', 'exhaust port', 'height valve'),
    },
  },
};

/**
 * Verdict for bubbles at `port` with air of `pressure` (Pa, gauge, from a regulator) on `airOn` and the arm at `arm`
 * past its delay. No bubbles counts only at both pressures; a leak counts at either. Total: zero, negative or
 * non-numeric pressure says nothing.
 */
export const benchVerdict = (port: Port, airOn: AirOn, arm: Arm, pressure: number): BenchVerdict => {
  if (!(pressure > 0))
    return {
      ...unclear('no air on it: nothing is shown', 'put regulated air on and look again'),
      again: 'put regulated air on and look again',
    };
  const row = benchTable[airOn][arm][port];
  if (row.verdict !== 'tight') return { ...row, again: row.again ?? null };
  const more =
    pressure >= muchLeast
      ? 'again at about 20 psi: some seats leak only at low pressure'
      : pressure <= littleMost
        ? 'tight at low pressure; it counts when it was tight at about 100 psi too'
        : 'at about 100 psi and at about 20 psi: this pressure is neither';
  return { ...row, again: row.again === undefined ? more : `${row.again}; ${more}` };
};
