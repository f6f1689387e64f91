/**
 * Which column of a logger's file is what. Which values are read, by this rule: the column that was chosen by its number;
 * else the one whose name says the place that was wished; else every column whose name says unit and place; where no name
 * says a place, the only column of values, or the only pressure among them. Two columns of one place, or several pressures
 * without one, are asked about.
 */
import { LoggerError } from './logger-error.ts';
import { placeNamed } from './logger-places.ts';
import { type Table, numberIn } from './logger-table.ts';
import { looksDate, looksTime } from './logger-time.ts';
import { type ColumnUnit, unitOf } from './logger-units.ts';

/** More than these in one note would not be read by a person. A limit of ours. */
const mostColumns = 12;

const share = (cells: readonly string[], test: (cell: string) => boolean): number =>
  cells.filter(test).length / Math.max(1, cells.length);

const namesTime =
  /\b(?:time|elapsed|zeit|timestamp|epoch|unix|runtime|laufzeit)\b|^(?:t|secs?|seconds?|min|minutes?|s|ms)$|^t\s*[[(]/i;

export type Columns = { time: number; date: number | null; values: number[]; other: number[] };
/** Which column is what, from the names and the first hundred rows. */
export const columnsOf = (table: Table): Columns => {
  const found: Columns = { time: -1, date: null, values: [], other: [] };
  const named: number[] = [];
  for (const [i, name] of table.names.entries()) {
    const cells = table.rows.slice(0, 100).map((row) => row.cells[i] ?? '');
    if (cells.every((cell) => cell === '')) continue;
    if (found.time < 0 && share(cells, looksTime) >= 0.5) found.time = i;
    else if (share(cells, looksTime) >= 0.5) found.other.push(i);
    else if (share(cells, looksDate) >= 0.5) found.date = i;
    else if (share(cells, (cell) => Boolean(numberIn(cell))) < 0.5) found.other.push(i);
    else if (namesTime.test(name.replaceAll('_', ' '))) named.push(i);
    else found.values.push(i);
  }
  if (found.time < 0) found.time = named.shift() ?? -1;
  found.other.push(...named);
  if (found.time < 0) {
    // a column that only counts rows tells no time
    const first = table.rows[0]!;
    throw new LoggerError(
      `no column of times: ${table.names.some(Boolean) ? `the columns are ${table.names.map((n) => `"${n}"`).join(', ')}` : `the first line is "${first.cells.join(' ')}"`}`,
      first.line,
    );
  }
  return found;
};

export const calls = (table: Table, i: number): string =>
  `column ${i + 1}${table.names[i] ? ` "${table.names[i]}"` : ''}`;
/** A file's row counter: whole numbers that rise (or, newest first, fall) by one. */
export const counts = (table: Table, i: number): boolean => {
  const values = table.rows.slice(0, 100).map((row) => Number(row.cells[i]));
  const step = values[1]! - values[0]!;
  return (
    /^(?:no|nr|num|number|#|index|record|row|sample|scan)?\.?$/i.test(table.names[i] ?? '') &&
    values.length > 1 &&
    Math.abs(step) === 1 &&
    values.every((v, j) => j === 0 || v === values[j - 1]! + step)
  );
};

/** One column to read: its unit, and the place in words of a note, null where nothing says it. */
export type Chosen = { readonly column: number; readonly unit: ColumnUnit; readonly place: string | null };

const unitIn = (table: Table, i: number): ColumnUnit | null =>
  unitOf(table.names[i] ?? '', table.rows.find((row) => numberIn(row.cells[i] ?? ''))?.cells[i] ?? '');
const placeIn = (table: Table, i: number): string | null => {
  const unit = unitIn(table, i);
  return unit && placeNamed(table.names[i] ?? '', unit.dimension);
};

/** Column numbers to read by the rule above, from 0. */
const columnsMeant = (
  table: Table,
  columns: Columns,
  wished: number | undefined,
  place: string | undefined,
): readonly number[] => {
  const line = table.rows[0]!.line;
  if (wished !== undefined) {
    if (!Number.isInteger(wished) || wished < 1 || wished > table.names.length)
      throw new LoggerError(`the file has ${table.names.length} columns, there is no column ${wished}`, line);
    if (!columns.values.includes(wished - 1))
      throw new LoggerError(`${calls(table, wished - 1)} holds no values to read`, line, wished);
    return [wished - 1];
  }
  const values = columns.values.filter((i) => !counts(table, i));
  if (values.length === 0) throw new LoggerError('no column of values beside the times', line);
  const whichIs = (of: readonly number[]): never => {
    throw new LoggerError(`which column is meant? ${of.map((i) => calls(table, i)).join(', ')}`, line);
  };
  const placed = values.filter((i) => placeIn(table, i) !== null);
  const wanted = placed.filter((i) => place === undefined || placeIn(table, i) === place);
  if (wanted.length > 0) {
    for (const i of wanted) {
      const same = wanted.filter((j) => placeIn(table, j) === placeIn(table, i));
      if (same.length > 1) whichIs(same);
    }
    return wanted.length > mostColumns ? whichIs(wanted) : wanted;
  }
  const pressures = values.filter((i) => unitIn(table, i)?.dimension === 'pressure');
  const pick = values.length === 1 ? values : pressures;
  return pick.length === 1 ? pick : whichIs(values);
};

export const chosenColumns = (
  table: Table,
  columns: Columns,
  wished: number | undefined,
  place: string | undefined,
): readonly Chosen[] => {
  const line = table.rows[0]!.line;
  return columnsMeant(table, columns, wished, place).map((column) => {
    const unit = unitIn(table, column);
    if (unit === null)
      throw new LoggerError(`${calls(table, column)} names no unit this bench knows`, line, column + 1);
    const where = place ?? placeIn(table, column);
    if (where === null && unit.dimension !== 'pressure')
      throw new LoggerError(`${calls(table, column)}: what was measured, and where?`, line, column + 1);
    return { column, unit, place: where };
  });
};
