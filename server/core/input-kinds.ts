/** What kind of quantity each named input of a calculation is, so that a refusal can be said with its unit. */
import type { Dimension } from './units.ts';

export type InputKind = { readonly dimension: Dimension; readonly absolute?: true };

const named: Readonly<Partial<Record<Dimension, readonly string[]>>> = {
  pressure: [
    'gauge pressure',
    'end pressure',
    'tyre pressure',
    'tyre pressure wanted',
    'pressure of a delivery row',
    'pressure of the tyre rise',
    'cut-out',
    'fall',
    'switch band',
  ],
  length: [
    'altitude',
    'diameter',
    'wire length',
    'bolt distance',
    'shim thickness',
    'thickest stack',
    'tyre rise',
    'bellows length',
    'distance across',
    'height per turn',
    'odometer',
    'service distance',
    'scale division',
  ],
  temperature: ['temperature'],
  volume: ['volume', 'tank volume', 'water', 'volume left for air', 'volume before', 'volume after'],
  area: ['area', 'effective area'],
  voltage: ['battery volts', 'drop', 'allowed drop', 'volts', 'full volts less winding drop'],
  current: ['current'],
  resistance: ['resistance'],
  duration: ['time', 'time of a reading', 'on time', 'off time', 'on and off time together'],
  angle: ['angle', 'toe tolerance', 'camber tolerance'],
  ratio: ['humidity'],
  mass: ['mass', 'mass of air'],
  flow: ['flow', 'leak'],
  density: ['specific gravity'],
  count: ['wire gauge', 'number of shim sizes', 'number of distinct readings', 'rows of the delivery curve'],
};

const absolutes = [
  'absolute pressure',
  'barometer',
  'pressure',
  'atmosphere',
  'upstream pressure',
  'downstream pressure',
  'tank pressure',
  'vapour pressure',
];

const kinds = new Map<string, InputKind>([
  ...Object.entries(named).flatMap(([dimension, names]) =>
    (names ?? []).map((name): [string, InputKind] => [name, { dimension: dimension as Dimension }]),
  ),
  ...absolutes.map((name): [string, InputKind] => [name, { dimension: 'pressure', absolute: true }]),
]);

/** Null where the input has no unit: a ratio, an exponent, a date. */
export const kindOf = (input: string): InputKind | null =>
  kinds.get(input) ?? (input.startsWith('drop over ') ? { dimension: 'voltage' } : null);
