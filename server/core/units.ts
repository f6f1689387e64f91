/**
 * Units at the edges: every unit a note or a sheet may use, its dimension and its factor to SI.
 * si = value * per + (zero ?? 0). Factors: exact by definition (inch 25.4 mm, pound 0.45359237 kg, gallon 231 in3) as
 * tabulated in NIST SP 811 Appendix B; derived ones are written as the exact product.
 */
export type Dimension =
  | 'pressure'
  | 'length'
  | 'angle'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'temperature'
  | 'area'
  | 'volume'
  | 'mass'
  | 'torque'
  | 'duration'
  | 'flow'
  | 'ratio'
  | 'turns'
  | 'count'
  | 'frequency'
  | 'speed'
  | 'rate'
  | 'density';

type UnitRow = { readonly dimension: Dimension; readonly per: number; readonly zero?: number };

const inch = 0.0254;
const pound = 0.45359237;
const gravity = 9.80665;
const psi = (pound * gravity) / inch ** 2;

export const units = {
  psi: { dimension: 'pressure', per: psi },
  kPa: { dimension: 'pressure', per: 1000 },
  bar: { dimension: 'pressure', per: 100_000 },
  mbar: { dimension: 'pressure', per: 100 },
  'kg/cm2': { dimension: 'pressure', per: gravity * 10_000 },
  inHg: { dimension: 'pressure', per: 3386.389 },
  Pa: { dimension: 'pressure', per: 1 },
  in: { dimension: 'length', per: inch },
  ft: { dimension: 'length', per: 12 * inch },
  mm: { dimension: 'length', per: 0.001 },
  cm: { dimension: 'length', per: 0.01 },
  m: { dimension: 'length', per: 1 },
  mi: { dimension: 'length', per: 1609.344 },
  km: { dimension: 'length', per: 1000 },
  deg: { dimension: 'angle', per: Math.PI / 180 },
  arcmin: { dimension: 'angle', per: Math.PI / 10_800 },
  rad: { dimension: 'angle', per: 1 },
  V: { dimension: 'voltage', per: 1 },
  mV: { dimension: 'voltage', per: 0.001 },
  A: { dimension: 'current', per: 1 },
  ohm: { dimension: 'resistance', per: 1 },
  mohm: { dimension: 'resistance', per: 0.001 },
  F: { dimension: 'temperature', per: 5 / 9, zero: 273.15 - 160 / 9 },
  C: { dimension: 'temperature', per: 1, zero: 273.15 },
  K: { dimension: 'temperature', per: 1 },
  in2: { dimension: 'area', per: inch ** 2 },
  cm2: { dimension: 'area', per: 1e-4 },
  mm2: { dimension: 'area', per: 1e-6 },
  in3: { dimension: 'volume', per: inch ** 3 },
  ft3: { dimension: 'volume', per: (12 * inch) ** 3 },
  gal: { dimension: 'volume', per: 231 * inch ** 3 },
  qt: { dimension: 'volume', per: (231 * inch ** 3) / 4 },
  pint: { dimension: 'volume', per: (231 * inch ** 3) / 8 },
  cup: { dimension: 'volume', per: (231 * inch ** 3) / 16 },
  'fl oz': { dimension: 'volume', per: (231 * inch ** 3) / 128 },
  L: { dimension: 'volume', per: 0.001 },
  ml: { dimension: 'volume', per: 1e-6 },
  lb: { dimension: 'mass', per: pound },
  kg: { dimension: 'mass', per: 1 },
  t: { dimension: 'mass', per: 1000 },
  'lbf ft': { dimension: 'torque', per: pound * gravity * 12 * inch },
  'lbf in': { dimension: 'torque', per: pound * gravity * inch },
  'N m': { dimension: 'torque', per: 1 },
  s: { dimension: 'duration', per: 1 },
  min: { dimension: 'duration', per: 60 },
  h: { dimension: 'duration', per: 3600 },
  d: { dimension: 'duration', per: 86_400 },
  week: { dimension: 'duration', per: 604_800 },
  month: { dimension: 'duration', per: 30.436875 * 86_400 },
  year: { dimension: 'duration', per: 365.2425 * 86_400 },
  cfm: { dimension: 'flow', per: (12 * inch) ** 3 / 60 },
  'L/min': { dimension: 'flow', per: 0.001 / 60 },
  '%': { dimension: 'ratio', per: 0.01 },
  turn: { dimension: 'turns', per: 1 },
  count: { dimension: 'count', per: 1 },
  Hz: { dimension: 'frequency', per: 1 },
  'psi/min': { dimension: 'rate', per: psi / 60 },
  'kPa/min': { dimension: 'rate', per: 1000 / 60 },
  SG: { dimension: 'density', per: 1 },
} as const satisfies Record<string, UnitRow>;

export type Unit = keyof typeof units;
export const unitNames = Object.keys(units) as [Unit, ...Unit[]];

const row = (unit: Unit): UnitRow => units[unit];
export const dimensionOf = (unit: Unit): Dimension => row(unit).dimension;
/** `value` in `unit` to SI; a temperature is a point on the scale, not a difference. */
export const toSi = (value: number, unit: Unit): number => value * row(unit).per + (row(unit).zero ?? 0);
/** SI to `unit`; inverse of toSi. */
export const fromSi = (value: number, unit: Unit): number => (value - (row(unit).zero ?? 0)) / row(unit).per;
/** A difference (or a resolution) in `unit` to SI: no zero point. */
export const stepToSi = (value: number, unit: Unit): number => value * row(unit).per;
/** SI difference to `unit`: no zero point. */
export const stepFromSi = (value: number, unit: Unit): number => value / row(unit).per;
