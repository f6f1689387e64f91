/**
 * Readings from any logger's CSV as a note that a person could have typed: "tank / 9:05 112 psi / after 30 s 111 psi".
 * Decides the columns of time and value, or raises LoggerError that names the line and column it could not decide.
 * What it left out, it says in `said`; nothing is guessed and nothing goes silently.
 */
import { LoggerError } from './logger-error.ts';
import { type Table, numberIn, tableOf } from './logger-table.ts';
import { scatterOf, telling } from './logger-thin.ts';
import { looksDate, looksTime, timesOf } from './logger-time.ts';
import { unitOf } from './logger-units.ts';
import { placeNamed } from './logger-places.ts';

export type LoggerWishes = {
  /** Column of values, from 1, where the file has several. */
  readonly column?: number | undefined;
  /** What the readings are of, in words of a note ("tank", "left rear"); taken before the column's name. */
  readonly place?: string | undefined;
  /** IANA zone of the coach, for files in UTC. */
  readonly zone?: string | undefined;
  /** Minutes after midnight at which a file of elapsed time began. */
  readonly startedAt?: number | undefined;
  /** The moment the file is put in, on the coach's wall clock: minutes after midnight, and the date as 2026-11-25. */
  readonly now?: { readonly minutes: number; readonly date: string } | undefined;
};
export type LoggerNote = {
  readonly text: string;
  /** Whole sentences for the person: what was taken, left out, rounded. */
  readonly said: readonly string[];
  readonly rows: number;
  readonly kept: number;
};

const share = (cells: readonly string[], test: (cell: string) => boolean): number =>
  cells.filter(test).length / Math.max(1, cells.length);

const namesTime =
  /\b(?:time|elapsed|zeit|timestamp|epoch|unix|runtime|laufzeit)\b|^(?:t|secs?|seconds?|min|minutes?|s|ms)$|^t\s*[[(]/i;

type Columns = { time: number; date: number | null; values: number[]; other: number[] };
/** Which column is what, from the names and the first hundred rows. */
const columnsOf = (table: Table): Columns => {
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

const calls = (table: Table, i: number): string => `column ${i + 1}${table.names[i] ? ` "${table.names[i]}"` : ''}`;
/** A file's row counter: whole numbers that rise by one. */
const counts = (table: Table, i: number): boolean => {
  const values = table.rows.slice(0, 100).map((row) => Number(row.cells[i]));
  return (
    /^(?:no|nr|num|number|#|index|record|row|sample|scan)?\.?$/i.test(table.names[i] ?? '') &&
    values.length > 1 &&
    values.every((v, j) => j === 0 || v === values[j - 1]! + 1)
  );
};

const valueColumn = (table: Table, columns: Columns, wished: number | undefined): number => {
  const line = table.rows[0]!.line;
  if (wished !== undefined) {
    if (!Number.isInteger(wished) || wished < 1 || wished > table.names.length)
      throw new LoggerError(`the file has ${table.names.length} columns, there is no column ${wished}`, line);
    if (!columns.values.includes(wished - 1))
      throw new LoggerError(`${calls(table, wished - 1)} holds no values to read`, line, wished);
    return wished - 1;
  }
  const values = columns.values.filter((i) => !counts(table, i));
  if (values.length === 0) throw new LoggerError('no column of values beside the times', line);
  const pressures = values.filter(
    (i) => unitOf(table.names[i] ?? '', table.rows[0]!.cells[i] ?? '')?.dimension === 'pressure',
  );
  const pick = values.length === 1 ? values : pressures;
  if (pick.length !== 1)
    throw new LoggerError(`which column is meant? ${values.map((i) => calls(table, i)).join(', ')}`, line);
  return pick[0]!;
};

const twoDigits = (n: number): string => String(n).padStart(2, '0');
const clockText = (minutes: number): string => `${Math.floor(minutes / 60) % 24}:${twoDigits(minutes % 60)}`;

/** Raises LoggerError; never returns a note with a value it is not sure of. */
export const noteFromLogger = (text: string, wishes: LoggerWishes = {}): LoggerNote => {
  const table = tableOf(text);
  const columns = columnsOf(table);
  const column = valueColumn(table, columns, wishes.column);
  const said: string[] = [];
  const others = [...columns.values, ...columns.other].filter((i) => i !== column && !counts(table, i));
  if (others.length > 0) said.push(`Not read: ${others.map((i) => calls(table, i)).join(', ')}.`);
  const unit = unitOf(
    table.names[column] ?? '',
    table.rows.find((row) => numberIn(row.cells[column] ?? ''))?.cells[column] ?? '',
  );
  if (unit === null)
    throw new LoggerError(`${calls(table, column)} names no unit this bench knows`, table.rows[0]!.line, column + 1);
  const place = wishes.place ?? placeNamed(table.names[column] ?? '', unit.dimension);
  if (place === null && unit.dimension !== 'pressure')
    throw new LoggerError(`${calls(table, column)}: what was measured, and where?`, table.rows[0]!.line, column + 1);

  const gaps: number[] = [];
  const read: { row: Table['rows'][number]; value: number; decimals: number }[] = [];
  for (const row of table.rows) {
    const cell = row.cells[column] ?? '';
    const number = numberIn(cell);
    if (number === undefined) throw new LoggerError(`"${cell}" is no reading`, row.line, column + 1);
    if (number === null) gaps.push(row.line);
    else if (number.rest !== '' && unitOf('', cell)?.word !== unit.word)
      throw new LoggerError(`"${cell}" where the column is in ${unit.word}`, row.line, column + 1);
    else read.push({ row, value: number.value * unit.times, decimals: number.decimals });
  }
  if (gaps.length > 0)
    said.push(
      `No reading on ${gaps.length === 1 ? 'line' : 'lines'} ${gaps.slice(0, 5).join(', ')}${gaps.length > 5 ? ` and ${gaps.length - 5} more` : ''}.`,
    );
  if (read.length < 2)
    throw new LoggerError(`${read.length} readings: a rate needs two or more`, table.rows[0]!.line, column + 1);
  const times = timesOf(
    table,
    read.map((r) => r.row),
    columns.time,
    columns.date,
    wishes.zone,
  );
  const samples = read.map((r, i) => ({ t: times.seconds[i]!, value: r.value }));
  if (samples.at(-1)!.t === 0)
    throw new LoggerError('all readings carry the same time', read[0]!.row.line, columns.time + 1);

  // digits a reading can carry: none finer than its own scatter, nor than 1/20,000 of the largest
  const written = Math.max(
    0,
    read.reduce((most, r) => Math.max(most, r.decimals), 0) - Math.round(Math.log10(unit.times)),
  );
  const finest = Math.max(
    1.5 * scatterOf(samples),
    5e-5 * samples.reduce((most, s) => Math.max(most, Math.abs(s.value)), 0),
  );
  const decimals = Math.max(0, Math.min(written, Math.floor(-Math.log10(finest) + 1e-9)));
  if (decimals < written)
    said.push(`Written to ${(10 ** -decimals).toFixed(decimals)} ${unit.word}: the readings carry no more.`);
  const kept = telling(samples);
  if (kept.length < samples.length)
    said.push(`${kept.length} of ${samples.length} readings kept: the ends, the knees and even steps between.`);

  // a note's times are of its own day and the night before: an older recording would be taken for today's
  if (wishes.now && times.date !== null && /^\d{4}-/.test(times.date)) {
    const days = (Date.parse(wishes.now.date) - Date.parse(times.date)) / 86_400_000;
    if (days > 1 || days < 0)
      throw new LoggerError(
        `the recording is of ${times.date}, and a note holds only readings of its own day (${wishes.now.date}) or the night before`,
        2,
      );
  }
  // elapsed times end at the moment the file is put in: none of them lies ahead
  const ended =
    times.clock === null && wishes.startedAt === undefined && wishes.now
      ? (((wishes.now.minutes - Math.ceil(samples.at(-1)!.t / 60)) % 1440) + 1440) % 1440
      : null;
  const clock = times.clock ?? wishes.startedAt ?? ended;
  if (ended !== null)
    said.push(
      `The file tells no time of day: its last reading is taken as of now, so that it began at ${clockText(ended)}. If it did not, write when it began in the note line and choose the file again.`,
    );
  else if (clock === null)
    said.push('The file tells no time of day: its first reading is put at the time of the note.');
  else if (times.date !== null) said.push(`Dated ${times.date} in the file; a note's times are of its own day.`);
  const whole = clock !== null && samples.at(-1)!.t < 43_200 && kept.every((i) => samples[i]!.t % 60 === 0);
  let before = 0;
  const lines = kept.map((i, n) => {
    const at = Math.round(samples[i]!.t);
    const value = `${samples[i]!.value.toFixed(decimals)} ${unit.word}`;
    const since = at - before;
    before = at;
    if (n === 0 && clock === null) return value;
    return n === 0 || whole ? `${clockText(clock! + Math.floor(at / 60))} ${value}` : `after ${since} s ${value}`;
  });
  return { text: [...(place ? [place] : []), ...lines].join('\n'), said, rows: samples.length, kept: kept.length };
};
