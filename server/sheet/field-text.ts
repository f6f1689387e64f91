/** What is typed into a field of a sheet: a bare number gets the sheet's unit, the rest is checked as it is typed. Pure. */
import { parseAmount } from '../core/amount.ts';
import type { Dimension, Unit } from '../core/units.ts';
import { unitNames } from '../core/units.ts';
import type { Cell } from './fields.ts';

/** The units of a sheet as typed so far; any of them may be missing. */
export type SheetUnits = Readonly<Record<string, string | undefined>>;

const isUnit = (name: string | undefined): name is Unit =>
  (unitNames as readonly (string | undefined)[]).includes(name);

/** The unit a bare number is taken in; null where the sheet has not said. */
export const unitFor = (cell: Extract<Cell, { is: 'amount' }>, units: SheetUnits): Unit | null => {
  const named = (name: string): Unit | null => {
    const unit = units[name];
    return isUnit(unit) ? unit : null;
  };
  if (cell.unit === 'distance') return named('distance');
  // feet are for a coach that is measured in inches
  if (cell.unit === 'ft' && units['length'] !== undefined && units['length'] !== 'in') return 'm';
  if (cell.unit !== undefined) return cell.unit;
  const metric = units['length'] !== undefined && units['length'] !== 'in';
  const fixed: Partial<Record<Dimension, Unit>> = {
    angle: 'deg',
    voltage: 'V',
    current: 'A',
    ratio: '%',
    duration: 'min',
    flow: metric ? 'L/min' : 'cfm',
    area: metric ? 'cm2' : 'in2',
  };
  return fixed[cell.dimension] ?? named(cell.dimension);
};

const bare = /^[+-]?(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)?|[.,]\d+)$/;
const signs: readonly (readonly [RegExp, string])[] = [
  [/\s*(?:"|″|inches|inch)$/i, ' in'],
  [/\s*(?:'|′|feet|foot)$/i, ' ft'],
  [/\s*°\s*([FC])$/, ' $1'],
  [/\s*(?:°|degrees?)$/i, ' deg'],
  [/\s*psig$/i, ' psi'],
  [/(\d)\s*([a-z%]+(?:[/ ]?[a-z0-9]+)*)$/i, '$1 $2'],
];

/** As it is kept: "13 3/4" becomes "13 3/4 in" on a sheet in inches; what already has a unit stays as written. */
export const withUnit = (text: string, cell: Cell, units: SheetUnits): string => {
  const typed = text.trim();
  if (cell.is !== 'amount' || typed === '') return typed;
  if (bare.test(typed)) {
    const unit = unitFor(cell, units);
    const number = typed.replace(',', '.');
    return unit === null ? number : `${number} ${unit}`;
  }
  let out = typed.replace(/^([+-]?\d+),(\d)/, '$1.$2');
  for (const [from, to] of signs) out = out.replace(from, to);
  return parseAmount(out, cell.dimension) ? out : typed;
};

/** What is wrong with what stands in a cell, in words; null: nothing, or it is empty. */
export const cellWrong = (text: string, cell: Cell): string | null => {
  if (text === '') return null;
  switch (cell.is) {
    case 'amount':
      return parseAmount(text, cell.dimension)
        ? null
        : `“${text}” is not a ${cell.dimension} with its unit, such as “${cell.example}”`;
    case 'number':
      if (!/^-?\d+(?:\.\d+)?$/.test(text)) return `“${text}” is not a number`;
      return cell.whole && !Number.isInteger(Number(text)) ? `“${text}” must be a whole number` : null;
    case 'words':
      return text.length > 200 ? 'at most 200 characters' : null;
    case 'yes':
    case 'choice':
      return null;
  }
};
