/**
 * How big each ailment can be: the unit of its size, the spread it is drawn from, and the most that can be. Estimates of
 * ours, no published source. Areas are effective (coefficient times area): 0.001 mm2 passes about 60 ml of free air a
 * minute at 5 bar absolute.
 */
import { ImpossibleInput } from '../core/quantity.ts';
import { type Ailment, ailments } from './ailments.ts';
import type { Rng } from './rng.ts';

type SizeRow = {
  readonly unit: 'mm2' | 'm' | 'share' | 'Pa' | 'V' | 'ohm' | 'K' | 's' | 'kind';
  readonly low: number;
  readonly high: number;
  readonly most: number;
  readonly law: 'even' | 'log';
  readonly of: string;
};
const leak = (low = 0.0008, high = 0.4, of = 'effective area of the hole'): SizeRow => ({
  unit: 'mm2',
  low,
  high,
  most: 200,
  law: 'log',
  of,
});
const left = (low: number, high: number, of: string): SizeRow => ({ unit: 'mm2', low, high, most: 50, law: 'log', of });
const share = (low: number, high: number, of: string): SizeRow => ({
  unit: 'share',
  low,
  high,
  most: 1,
  law: 'even',
  of,
});
const by = (unit: SizeRow['unit'], low: number, high: number, most: number, of: string): SizeRow => ({
  unit,
  low,
  high,
  most,
  law: 'even',
  of,
});
/** Nothing to measure: it is so or not; the number picks between its kinds. */
const kind = (of = 'it is so'): SizeRow => by('kind', 0, 1, 1, of);

type Base<A> = A extends `left ${infer B}` | `right ${infer B}` ? B : A;
export type Kind = Base<Ailment>;

export const sizes: Record<Kind, SizeRow> = {
  'tank leak': leak(),
  'discharge check leak': leak(),
  'supply line leak': leak(),
  'supply line clogged': left(0.0003, 0.1, 'area left open'),
  'protection valve stuck': left(0.00001, 0.003, 'area left open'),
  'panel leaks through': leak(0.0008, 0.1),
  'panel left shut': kind(),
  'panel left empty': kind(),
  'pump worn': share(0.2, 0.65, 'delivery left'),
  'intake clogged': share(0.1, 0.65, 'delivery left'),
  'unloader stuck': kind(),
  'unloader leak': share(0.1, 0.5, 'delivery lost'),
  'pump seized': kind(),
  'motor open': kind(),
  'fuse blown': kind(),
  'relay dead': kind('below 0.6 it clicks'),
  'relay welded': kind(),
  'switch burnt': kind(),
  'switch welded': kind(),
  'switch low': by('Pa', 4e4, 1.6e5, 1e6, 'both points lower'),
  'switch high': by('Pa', 3e4, 1.2e5, 1e6, 'both points higher'),
  'switch narrow': share(0.1, 0.4, 'of the difference left'),
  'volts low': by('V', 0.8, 2.2, 12, 'battery below rest'),
  'feed resistance': by('ohm', 0.03, 0.16, 100, 'more than the wire'),
  'ground resistance': by('ohm', 0.03, 0.16, 100, 'more than the wire'),
  'tank water': share(0.15, 0.6, 'of the tank'),
  'relief weak': share(0.55, 0.98, 'of its setting at which it opens'),
  'thermal cut-out': by('K', 30, 65, 300, 'above the air around at which it opens'),
  'gauge stuck': share(0.1, 1, 'of cut-out at which it stands'),
  'gauge high': by('Pa', 4e4, 1.6e5, 1e6, 'too high'),
  'gauge low': by('Pa', 4e4, 1.6e5, 1e6, 'too low'),
  'floor not level': by('m', 0.01, 0.035, 0.5, 'one corner low'),
  'cold night': by('K', 12, 24, 80, 'colder by morning'),
  'just pumped': by('s', 0, 180, 900, 'since the pump stopped'),
  'inlet seat leak': leak(),
  'exhaust seat leak': leak(),
  'valve to panel leak': leak(),
  'valve cover leak': leak(),
  'delivery line leak': leak(),
  'bellows leak': leak(),
  'inlet check bad': leak(0.01, 0.5, 'passes backwards'),
  'valve stuck': kind(),
  'valve feed plugged': left(0.0001, 0.05, 'area left open'),
  'valve reversed': kind(),
  'link slipped low': by('m', 0.013, 0.045, 0.3, 'height off'),
  'link slipped high': by('m', 0.013, 0.045, 0.3, 'height off'),
  'link off': kind('below 0.4 the arm hangs in exhaust, above 0.75 in fill'),
  'delivery line clogged': left(0.0003, 0.1, 'area left open'),
  'front corner weak': by('m', 0.012, 0.04, 0.3, 'spring set lower'),
  'load heavy': share(0.12, 0.35, 'more on that side'),
  'shock dead': kind(),
};

/** One ailment with its size, in the unit of `sizes`. */
export type Ail = { readonly ailment: Ailment; readonly size: number };

/** Ailment without its side, and the side. */
export const kindOf = (ailment: Ailment): { kind: Kind; side: 0 | 1 | null } =>
  ailment.startsWith('left ')
    ? { kind: ailment.slice(5) as Kind, side: 0 }
    : ailment.startsWith('right ')
      ? { kind: ailment.slice(6) as Kind, side: 1 }
      : { kind: ailment as Kind, side: null };

export const drawSize = (ailment: Ailment, rng: Rng): number => {
  const { low, high, law } = sizes[kindOf(ailment).kind];
  return law === 'log' ? rng.log(low, high) : rng.uniform(low, high);
};

/** Raises ImpossibleInput naming the ailment when its size cannot be. */
export const checkAil = (ail: Ail): Ail => {
  if (!ailments.includes(ail.ailment)) throw new ImpossibleInput(ail.ailment, ail.size, 'there is no such ailment');
  const { most, unit } = sizes[kindOf(ail.ailment).kind];
  if (!Number.isFinite(ail.size) || ail.size < 0 || ail.size > most)
    throw new ImpossibleInput(`${ail.ailment} size`, ail.size, `0 to ${most} ${unit}`);
  return ail;
};
