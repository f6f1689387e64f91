/**
 * A logger's text as a table: separator, decimal sign, header and unit line found from the rows themselves, since no two
 * loggers write the same. General; no physics.
 */
import { CsvError, type Options, parse } from 'csv-parse/browser/esm/sync';
import { LoggerError } from './logger-error.ts';

/** `line` as an editor counts, from 1. */
export type Row = { readonly line: number; readonly cells: readonly string[] };
export type Table = {
  readonly separator: string;
  /** Name of each column, the unit line joined to it; '' where the file has no header. */
  readonly names: readonly string[];
  readonly rows: readonly Row[];
  /** Lines before the header: serial numbers, remarks. */
  readonly before: number;
};

/** 8 MB: about 200,000 rows; more would hold up the page it is read in. A limit of ours. */
const mostText = 8_000_000;
const separators = [';', '\t', ',', '|'] as const;

const parsed = (text: string, options: Options): unknown => {
  try {
    return parse(text, options);
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const lines: unknown = error['lines'];
    throw new LoggerError(
      'a quotation mark that does not close, or closes in the middle of a cell',
      typeof lines === 'number' ? lines : null,
    );
  }
};

const rowsBy = (text: string, separator: string): Row[] => {
  const records: unknown = parsed(text, {
    delimiter: separator,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
    bom: true,
    trim: true,
    info: true,
  });
  // the library's own shape for `info: true`, which its types leave out
  return (records as { record: string[]; info: { lines: number } }[])
    .map(({ record, info }) => ({ line: info.lines, cells: record }))
    .filter((row) => row.cells.some((cell) => cell !== ''));
};

/** Rows of the first lines; none where quotation marks show that the separator is another. */
const sampleBy = (sample: string, separator: string): Row[] => {
  try {
    return rowsBy(sample, separator);
  } catch (error) {
    if (error instanceof LoggerError) return [];
    throw error;
  }
};

/** The count of columns most rows have, and how many have it. Two columns are the least that make a table. */
const commonWidth = (rows: readonly Row[]): { width: number; count: number } => {
  const counts = new Map<number, number>();
  for (const row of rows) counts.set(row.cells.length, (counts.get(row.cells.length) ?? 0) + 1);
  let best = { width: 0, count: 0 };
  for (const [width, count] of counts) if (width >= 2 && count > best.count) best = { width, count };
  return best;
};

const numeric = /^[-+]?\d/;
/** Words where numbers stand later: a header or a line of units. */
const wordy = (row: Row): boolean => row.cells.every((cell) => !numeric.test(cell));

const isDecimalComma = (rows: readonly Row[]): boolean =>
  rows.length > 0 && rows.every((row) => row.cells.length === 2 && row.cells.every((c) => /^\d+$/.test(c)));

/** "7,71" of a row that was split at its decimal comma; null where no two whole numbers stand side by side. */
const splitNumber = (row: Row): string | null => {
  const at = row.cells.findIndex((c, i) => i > 0 && /^\d+$/.test(c) && /^[-+]?\d+$/.test(row.cells[i - 1]!));
  return at < 0 ? null : `${row.cells[at - 1]!},${row.cells[at]!}`;
};
const becauseComma = (row: Row): string => {
  const number = splitNumber(row);
  return number === null
    ? ''
    : `: "${number}" looks like a decimal comma in a file with commas between its columns; save it with semicolons between the columns, or with decimal points`;
};

/** Raises LoggerError for an empty text, one too long, one of a single column, or rows of unequal width. */
export const tableOf = (text: string): Table => {
  if (text.length > mostText)
    throw new LoggerError(`the file has ${(text.length / 1e6).toFixed(1)} MB; at most 8 MB are read, cut it first`);
  if (text.trim() === '') throw new LoggerError('the file is empty');
  if (text.includes('\u0000')) throw new LoggerError('this is not text: save it as CSV first');
  const sample = text.split(/\r\n|\n|\r/, 60).join('\n');
  let best: { separator: string; score: number } | null = null;
  for (const separator of separators) {
    const rows = sampleBy(sample, separator);
    const { count } = commonWidth(rows);
    // in the order above: "9:05;7,72" splits at both signs and is meant at the first
    const score = count / Math.max(1, rows.length);
    if (count > 0 && (best === null || score > best.score + 0.2)) best = { separator, score };
  }
  if (best === null) throw new LoggerError('one column only: a time and a value are needed on each line', 1);
  const all = rowsBy(text.replaceAll(/\r\n?/g, '\n'), best.separator);
  const { width } = commonWidth(all);
  const start = all.findIndex((row) => row.cells.length === width);
  // a header of fewer columns than the rows below it: their decimal commas were taken for separators
  const above = all[start - 1];
  if (best.separator === ',' && above && above.cells.length > 1 && wordy(above) && splitNumber(all[start]!))
    throw new LoggerError(
      `${width} columns where the header has ${above.cells.length}${becauseComma(all[start]!)}`,
      all[start]!.line,
    );
  const table = all.slice(start);
  let heads = 0;
  while (heads < Math.min(3, table.length) && wordy(table[heads]!)) heads += 1;
  const header = table.slice(0, heads).map((row) => row.cells);
  const names = Array.from({ length: width }, (_, i) =>
    header
      .map((cells) => cells[i] ?? '')
      .filter(Boolean)
      .join(' '),
  );
  // a last separator at the end of each line makes an empty column, which is none
  const rows = table.slice(heads);
  if (rows.length === 0) throw new LoggerError('a header and no readings', table[heads - 1]?.line ?? 1);
  for (const row of rows)
    if (row.cells.length !== width && row.cells.slice(width).some(Boolean))
      throw new LoggerError(
        `${row.cells.length} columns where the others have ${width}${best.separator === ',' ? becauseComma(row) : ''}`,
        row.line,
      );
    else if (row.cells.length < width && row !== rows.at(-1))
      throw new LoggerError(`${row.cells.length} columns where the others have ${width}`, row.line);
  if (best.separator === ',' && heads === 0 && isDecimalComma(rows))
    throw new LoggerError('a comma between two whole numbers: a decimal comma or two columns? Name the columns', 1);
  return { separator: best.separator, names, rows, before: start };
};

/** Marks loggers write where there was no reading. */
const gap = /^(?:-+|n\/?a|nan|null|none|ol|o\.?l\.?|---?)?$/i;
const plainNumber = /^([-+]?(?:\d+(?:\.\d+)?|\.\d+)(?:e[-+]?\d+)?)\s*(.*)$/i;
const commaNumber = /^([-+]?(?:\d+(?:,\d+)?|,\d+)(?:e[-+]?\d+)?)\s*(.*)$/i;

/** A cell as a number with what follows it ("112 psi"); null where there was no reading; undefined when it is neither. */
export const numberIn = (cell: string): { value: number; decimals: number; rest: string } | null | undefined => {
  if (gap.test(cell)) return null;
  const m = cell.includes(',') && !cell.includes('.') ? commaNumber.exec(cell) : plainNumber.exec(cell);
  if (!m) return undefined;
  const text = m[1]!.replace(',', '.');
  const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
  return { value: Number(text), decimals, rest: m[2]!.trim() };
};
