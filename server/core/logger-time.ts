/**
 * The times of a logger as seconds from its first row. A clock on the wall, a date with a clock, an ISO time, a count of
 * seconds since 1970 or time elapsed; what cannot be told is asked, naming line and column.
 */
import { LoggerError } from './logger-error.ts';
import { type Row, type Table, numberIn } from './logger-table.ts';

export type Times = {
  /** Seconds from the first row, one a row. */
  readonly seconds: readonly number[];
  /** Minutes after midnight of the first row on the wall; null where the file counts elapsed time only. */
  readonly clock: number | null;
  /** The date of the first row as it stands there; null where none does. */
  readonly date: string | null;
};

const day = 86_400;
const clockForm = /^(\d{1,3}):(\d{2})(?::(\d{2}(?:[.,]\d+)?))?\s*([ap]\.?m\.?)?$/i;
const isoForm = /^(\d{4}-\d{2}-\d{2})[T ](\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?)\s*(Z|[-+]\d{2}:?\d{2})?$/i;
const dateForm = /^(\d{4}-\d{1,2}-\d{1,2}|\d{1,2}[./-]\d{1,2}[./-]\d{2,4})$/;
const bothForm = /^(\d{1,2}[./-]\d{1,2}[./-]\d{2,4}|\d{4}\/\d{1,2}\/\d{1,2})[,\s]+(\S.*)$/;

export const looksTime = (cell: string): boolean => clockForm.test(cell) || isoForm.test(cell) || bothForm.test(cell);
export const looksDate = (cell: string): boolean => dateForm.test(cell);

/** "9:05:30 pm" as seconds after midnight; null when it is no clock. */
const clockSeconds = (text: string): number | null => {
  const m = clockForm.exec(text);
  if (!m) return null;
  const half = m[4]?.[0]?.toLowerCase();
  const hours = half ? (Number(m[1]) % 12) + (half === 'p' ? 12 : 0) : Number(m[1]);
  const seconds = Number((m[3] ?? '0').replace(',', '.'));
  return Number(m[2]) > 59 || seconds >= 60 ? null : hours * 3600 + Number(m[2]) * 60 + seconds;
};

/** Days since 1970 in one order of day and month; null where a date is none in it. */
const daysIn = (parts: readonly (readonly number[])[], order: readonly [number, number, number]): number[] | null => {
  const days = parts.map((p) => {
    const [y, m, d] = order.map((i) => p[i]!) as [number, number, number];
    return m < 1 || m > 12 || d < 1 || d > 31 ? Number.NaN : Date.UTC(y < 100 ? 2000 + y : y, m - 1, d) / 1000 / day;
  });
  return days.some(Number.isNaN) ? null : days;
};
const runsOn = (days: readonly number[]): boolean =>
  days.every((d, i) => i === 0 || (d - days[i - 1]! >= 0 && d - days[i - 1]! <= 1));

/**
 * Day or month first: by dots (day first), by what is a date at all, by which order runs on from day to day; asked where
 * both could be. Within one day it makes no difference.
 */
const dayNumbers = (dates: readonly string[], lines: readonly number[], column: number): number[] => {
  const parts = dates.map((date) => date.split(/[./-]/).map(Number));
  const none = (i: number): never => {
    throw new LoggerError(`"${dates[i] ?? ''}" is no date`, lines[i] ?? null, column);
  };
  if (dates[0]!.search(/\D/) === 4) return daysIn(parts, [0, 1, 2]) ?? none(parts.findIndex((p) => p[1]! > 12));
  const dayFirst = daysIn(parts, [2, 1, 0]);
  const monthFirst = dates[0]!.includes('.') ? null : daysIn(parts, [2, 0, 1]);
  if (!dayFirst || !monthFirst)
    return (
      dayFirst ?? monthFirst ?? none(parts.findIndex((p) => Math.min(p[0]!, p[1]!) > 12 || Math.max(p[0]!, p[1]!) > 31))
    );
  const other = dates.findIndex((date) => date !== dates[0]);
  if (other < 0 || (runsOn(monthFirst) && !runsOn(dayFirst))) return monthFirst;
  if (runsOn(dayFirst) && !runsOn(monthFirst)) return dayFirst;
  throw new LoggerError(
    `"${dates[other]!}" may be day or month first: write dates as 2026-10-06`,
    lines[other] ?? null,
    column,
  );
};

const onTheWall = (ms: number, zone: string): number => {
  const parts = new Intl.DateTimeFormat('en-GB', {
    timeZone: zone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).formatToParts(new Date(ms));
  const of = (type: string): number => Number(parts.find((p) => p.type === type)?.value);
  return of('hour') * 60 + of('minute');
};

const elapsedUnits: readonly (readonly [RegExp, number])[] = [
  [/\b(?:ms|msec|milliseconds?)\b/i, 0.001],
  [/\b(?:s|secs?|seconds?|sek|sekunden)\b/i, 1],
  [/\b(?:min|mins|minutes?|minuten)\b/i, 60],
  [/\b(?:h|hrs?|hours?|std|stunden)\b/i, 3600],
];

/** Times of `rows` in `column` (from 0), with dates in `dateColumn` where they stand apart. `zone` for times in UTC. */
export const timesOf = (
  { names }: Table,
  rows: readonly Row[],
  column: number,
  dateColumn: number | null,
  zone: string | undefined,
): Times => {
  const cells = rows.map((row) => row.cells[column] ?? '');
  const lines = rows.map((row) => row.line);
  const name = names[column] ?? '';
  const first = cells[0]!;
  const wrong = (i: number): never => {
    throw new LoggerError(`"${cells[i]!}" is no time like "${first}" above it`, lines[i], column + 1);
  };
  const inOrder = (at: readonly number[], clock: number | null, date: string | null): Times => {
    for (let i = 1; i < at.length; i++)
      if (at[i]! < at[i - 1]!)
        throw new LoggerError(`time runs backwards, from "${cells[i - 1]!}" to "${cells[i]!}"`, lines[i], column + 1);
    return { seconds: at.map((t) => t - at[0]!), clock, date };
  };
  const zoned = (ms: number): number => {
    if (zone === undefined)
      throw new LoggerError(
        'these times are not of the wall clock: the zone of the coach is needed',
        lines[0],
        column + 1,
      );
    return onTheWall(ms, zone);
  };
  if (isoForm.test(first)) {
    const parsed = cells.map((cell, i) => isoForm.exec(cell) ?? wrong(i));
    const offset = parsed[0]![3];
    const at = parsed.map((m, i) => {
      if ((m[3] === undefined) !== (offset === undefined)) wrong(i);
      const clock = m[2]!.replace(',', '.').padStart(m[2]!.indexOf(':') === 1 ? m[2]!.length + 1 : 0, '0');
      const ms = Date.parse(`${m[1]!}T${clock}${m[3] ?? 'Z'}`);
      return Number.isNaN(ms) ? wrong(i) : ms / 1000;
    });
    const clock = offset === undefined ? Math.floor((at[0]! % day) / 60) : zoned(at[0]! * 1000);
    return inOrder(at, clock, parsed[0]![1]!);
  }
  const elapsed = /elapsed|relative|runtime|run time|since|laufzeit/i.test(name);
  const apart = cells.map(
    (cell, i) => bothForm.exec(cell) ?? (dateColumn === null ? null : ['', rows[i]!.cells[dateColumn] ?? '', cell]),
  );
  if (clockForm.test(apart[0]?.[2] ?? first)) {
    const clocks = cells.map((cell, i) => clockSeconds(apart[i]?.[2] ?? cell) ?? wrong(i));
    const dates = apart.map((m) => m?.[1] ?? '');
    if (dates[0] !== '' && !elapsed) {
      const odd = dates.findIndex((date) => !/\d\D\d+\D\d/.test(date));
      if (odd >= 0) throw new LoggerError(`"${dates[odd]!}" is no date`, lines[odd], (dateColumn ?? column) + 1);
      const days = dayNumbers(dates, lines, (dateColumn ?? column) + 1);
      return inOrder(
        clocks.map((t, i) => t + days[i]! * day),
        Math.floor(clocks[0]! / 60),
        dates[0]!,
      );
    }
    if (elapsed) return inOrder(clocks, null, null);
    const late = clocks.findIndex((t) => t >= day);
    if (late >= 0)
      throw new LoggerError(`"${cells[late]!}" is no time of day: is it time elapsed?`, lines[late], column + 1);
    let days = 0;
    // past midnight the clock starts anew; a step back of less than half a day is an error of the file
    const at = clocks.map((t, i) => {
      if (i > 0 && clocks[i - 1]! - t > day / 2) days += 1;
      return t + days * day;
    });
    return inOrder(at, Math.floor(clocks[0]! / 60), null);
  }
  const numbers = cells.map((cell, i) => numberIn(cell) ?? wrong(i));
  const bare = numbers[0]!.value;
  // since 1970, in s or ms: the years 2001 to 2128
  const epoch = bare > 1e9 && bare < 5e9 ? 1 : bare > 1e12 && bare < 5e12 ? 0.001 : null;
  if (epoch !== null)
    return inOrder(
      numbers.map((n) => n.value * epoch),
      zoned(bare * epoch * 1000),
      null,
    );
  const unit = numbers[0]!.rest || name;
  const factor = elapsedUnits.find(([words]) => words.test(unit.replaceAll('_', ' ')))?.[1];
  if (factor === undefined)
    throw new LoggerError(
      `"${name || first}" counts in seconds or minutes? Write the unit into its name`,
      lines[0],
      column + 1,
    );
  const mixed = numbers.findIndex((n) => n.rest !== numbers[0]!.rest);
  if (mixed >= 0) wrong(mixed);
  return inOrder(
    numbers.map((n) => n.value * factor),
    null,
    null,
  );
};
