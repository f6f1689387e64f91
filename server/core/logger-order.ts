/** Files that begin with the newest reading: their times run backwards from line to line, all of them. */
import { LoggerError } from './logger-error.ts';
import type { Row, Table } from './logger-table.ts';
import { type Times, timesOf } from './logger-time.ts';

/** Two rows the wrong way round are an error of the file as likely as an order. A limit of ours. */
const fewest = 3;

/**
 * `rows` in order of time with their times. Newest first is taken where three rows or more run back without one that runs
 * forward; otherwise the error of the order in which they stand is raised.
 */
export const inOrderOfTime = (
  table: Table,
  rows: readonly Row[],
  column: number,
  dateColumn: number | null,
  zone: string | undefined,
): { rows: readonly Row[]; times: Times; newestFirst: boolean } => {
  try {
    return { rows, times: timesOf(table, rows, column, dateColumn, zone), newestFirst: false };
  } catch (error) {
    if (!(error instanceof LoggerError) || rows.length < fewest) throw error;
    const turned = rows.toReversed();
    try {
      return { rows: turned, times: timesOf(table, turned, column, dateColumn, zone), newestFirst: true };
    } catch {
      throw error;
    }
  }
};
