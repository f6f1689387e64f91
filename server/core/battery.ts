/**
 * A rested 12 V lead-acid battery. Published tables of rested volts disagree by up to 0.15 V at a quarter and 0.3 V
 * empty, so the charge is a band, never one figure. Share 0 to 1, volts, K.
 */
import { ImpossibleInput, type Temperature, type Voltage, si } from './quantity.ts';

type Row = readonly [share: number, volts: number];
/** A battery maker's FAQ after the BCI pattern; a magazine's answer page; a mailing list's. Flooded, rested, 80 F. */
export const restedTables: readonly { readonly name: string; readonly rows: readonly Row[] }[] = [
  {
    name: 'battery maker, BCI pattern',
    rows: [
      [0, 11.89],
      [0.25, 12.06],
      [0.5, 12.24],
      [0.75, 12.45],
      [1, 12.65],
    ],
  },
  {
    name: 'magazine',
    rows: [
      [0.25, 12.15],
      [0.5, 12.3],
      [0.75, 12.45],
      [1, 12.66],
    ],
  },
  {
    name: 'mailing list',
    rows: [
      [0, 11.6],
      [0.25, 12.0],
      [0.5, 12.2],
      [0.75, 12.4],
      [1, 12.6],
    ],
  },
];

/** Straight between rows, first and last slope going on past the ends, held to 0 and 1. */
export const shareFrom = (rows: readonly Row[], volts: number): number => {
  let i = 1;
  while (i < rows.length - 1 && volts > rows[i]![1]) i++;
  const [s0, v0] = rows[i - 1]!;
  const [s1, v1] = rows[i]!;
  return Math.min(1, Math.max(0, s0 + ((s1 - s0) * (volts - v0)) / (v1 - v0)));
};

/** How much higher than flooded ones absorbed-mat and gel batteries rest, V: from memory, no source kept. */
const above = { flooded: [0, 0], AGM: [0.1, 0.2], gel: [0.1, 0.2] } as const;

/**
 * Band of charge, share 0 to 1, from rested `volts` read to ± `pm`, over all tables. Raises ImpossibleInput outside 6 to
 * 16 V: not a rested 12 V battery. Above 12.9 V it is on charge or has just been: says nothing.
 */
export const chargeBand = (
  volts: Voltage,
  kind: 'flooded' | 'AGM' | 'gel' = 'flooded',
  pm = 0.005,
): { readonly low: number; readonly high: number } => {
  if (!(volts >= 6 && volts <= 16)) throw new ImpossibleInput('battery volts', volts, 'a 12 V battery reads 6 to 16 V');
  const [least, most] = above[kind];
  const shares = restedTables.flatMap((t) => [
    shareFrom(t.rows, volts - pm - most),
    shareFrom(t.rows, volts + pm - least),
  ]);
  return { low: Math.min(...shares), high: Math.max(...shares) };
};

const gravityRows: readonly Row[] = [
  [0, 1.12],
  [0.25, 1.155],
  [0.5, 1.19],
  [0.75, 1.225],
  [1, 1.265],
];

/** Hydrometer reading brought to 80 F: 0.004 for each 10 F (battery maker's table). */
export const gravityAt80F = (reading: number, at: Temperature): number => {
  if (!(reading > 1 && reading < 1.4))
    throw new ImpossibleInput('specific gravity', reading, 'a battery reads 1.05 to 1.35');
  const fahrenheit = (at - 273.15) * 1.8 + 32;
  return reading + 0.0004 * (fahrenheit - 80);
};

/** Charge, share, from a specific gravity at 80 F (BCI pattern). */
export const chargeFromGravity = (at80F: number): number => shareFrom(gravityRows, at80F);

/**
 * Least volts after 15 s at half the cold-cranking current, by temperature: a pattern common to several makers' workshop
 * manuals (9.6 V at 70 F down to 8.5 V at 0 F). Straight between its rows, flat outside.
 */
export const loadTestLeast = (at: Temperature): Voltage => {
  const rows: readonly (readonly [number, number])[] = [
    [0, 8.5],
    [10, 8.7],
    [20, 8.9],
    [30, 9.1],
    [40, 9.3],
    [50, 9.4],
    [60, 9.5],
    [70, 9.6],
  ];
  const f = Math.min(70, Math.max(0, (at - 273.15) * 1.8 + 32));
  const i = Math.min(rows.length - 2, Math.floor(f / 10));
  return si(rows[i]![1] + ((rows[i + 1]![1] - rows[i]![1]) * (f - rows[i]![0])) / 10);
};
