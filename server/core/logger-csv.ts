/**
 * Readings from any logger's CSV as a note that a person could have typed: "tank / 9:05 112 psi / after 30 s 111 psi",
 * place by place where several columns are read. Raises LoggerError that names the line and column it could not decide.
 * What it left out, it says in `said`; nothing is guessed and nothing goes silently.
 */
import { type Chosen, calls, chosenColumns, columnsOf, counts } from './logger-columns.ts';
import { LoggerError } from './logger-error.ts';
import { inOrderOfTime } from './logger-order.ts';
import { type Row, type Table, numberIn, tableOf } from './logger-table.ts';
import { scatterOf, telling } from './logger-thin.ts';
import type { Times } from './logger-time.ts';
import { unitOf } from './logger-units.ts';

export type LoggerWishes = {
  /** Column of values, from 1, where only that one is to be read. */
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

const twoDigits = (n: number): string => String(n).padStart(2, '0');
const clockText = (minutes: number): string => `${Math.floor(minutes / 60) % 24}:${twoDigits(minutes % 60)}`;

type Value = { readonly value: number; readonly decimals: number };
/** The values of one column by row; null where the logger wrote that there was none. */
const valuesOf = (table: Table, { column, unit }: Chosen, said: string[], several: boolean): Map<Row, Value> => {
  const gaps: number[] = [];
  const out = new Map<Row, Value>();
  for (const row of table.rows) {
    const cell = row.cells[column] ?? '';
    const number = numberIn(cell);
    if (number === undefined) throw new LoggerError(`"${cell}" is no reading`, row.line, column + 1);
    if (number === null) gaps.push(row.line);
    else if (number.rest !== '' && unitOf('', cell)?.word !== unit.word)
      throw new LoggerError(`"${cell}" where the column is in ${unit.word}`, row.line, column + 1);
    else out.set(row, { value: number.value * unit.times, decimals: number.decimals });
  }
  if (gaps.length > 0)
    said.push(
      `No reading${several ? ` of ${calls(table, column)}` : ''} on ${gaps.length === 1 ? 'line' : 'lines'} ${gaps.slice(0, 5).join(', ')}${gaps.length > 5 ? ` and ${gaps.length - 5} more` : ''}.`,
    );
  if (out.size < 2)
    throw new LoggerError(`${out.size} readings: a rate needs two or more`, table.rows[0]!.line, column + 1);
  return out;
};

/** When the first row was, minutes after midnight; null where nothing tells. Says what it took for granted. */
const startOf = (times: Times, wishes: LoggerWishes, said: string[]): number | null => {
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
      ? (((wishes.now.minutes - Math.ceil(times.seconds.at(-1)! / 60)) % 1440) + 1440) % 1440
      : null;
  const clock = times.clock ?? wishes.startedAt ?? ended;
  if (ended !== null)
    said.push(
      `The file tells no time of day: its last reading is taken as of now, so that it began at ${clockText(ended)}. If it did not, write when it began in the note line and choose the file again.`,
    );
  else if (clock === null)
    said.push('The file tells no time of day: its first reading is put at the time of the note.');
  else if (times.date !== null) said.push(`Dated ${times.date} in the file; a note's times are of its own day.`);
  return clock;
};

/** Lines of a note kept for all columns together, and at least for each; a note holds 4,000 signs. */
const mostLines = 160;
const fewestLines = 12;

/** Raises LoggerError; never returns a note with a value it is not sure of. */
export const noteFromLogger = (text: string, wishes: LoggerWishes = {}): LoggerNote => {
  const table = tableOf(text);
  const columns = columnsOf(table);
  const chosen = chosenColumns(table, columns, wishes.column, wishes.place);
  const several = chosen.length > 1;
  const said: string[] = [];
  const others = [...columns.values, ...columns.other].filter(
    (i) => !chosen.some((c) => c.column === i) && !counts(table, i),
  );
  if (several) said.push(`Read: ${chosen.map((c) => calls(table, c.column)).join(', ')}.`);
  if (others.length > 0) said.push(`Not read: ${others.map((i) => calls(table, i)).join(', ')}.`);

  const values = chosen.map((c) => valuesOf(table, c, said, several));
  const { rows, times, newestFirst } = inOrderOfTime(
    table,
    table.rows.filter((row) => values.some((v) => v.has(row))),
    columns.time,
    columns.date,
    wishes.zone,
  );
  if (times.seconds.at(-1) === 0)
    throw new LoggerError('all readings carry the same time', table.rows[0]!.line, columns.time + 1);
  if (newestFirst) said.push('Newest first in the file: read from its last line up.');
  const clock = startOf(times, wishes, said);

  const most = Math.max(fewestLines, Math.min(40, Math.floor(mostLines / chosen.length)));
  let kept = 0;
  const notes = chosen.map(({ column, unit, place }, n) => {
    const own = values[n]!;
    const samples = rows.flatMap((row, i) => {
      const v = own.get(row);
      return v ? [{ t: times.seconds[i]!, value: v.value }] : [];
    });
    // digits a reading can carry: none finer than its own scatter, nor than 1/20,000 of the largest
    const written = Math.max(
      0,
      [...own.values()].reduce((m, v) => Math.max(m, v.decimals), 0) - Math.round(Math.log10(unit.times)),
    );
    const finest = Math.max(
      1.5 * scatterOf(samples),
      5e-5 * samples.reduce((m, s) => Math.max(m, Math.abs(s.value)), 0),
    );
    const decimals = Math.max(0, Math.min(written, Math.floor(-Math.log10(finest) + 1e-9)));
    const whose = several ? `${calls(table, column)}: ` : '';
    if (decimals < written)
      said.push(`${whose}Written to ${(10 ** -decimals).toFixed(decimals)} ${unit.word}: the readings carry no more.`);
    const keep = telling(samples, most);
    kept += keep.length;
    if (keep.length < samples.length)
      said.push(
        `${whose}${keep.length} of ${samples.length} readings kept: the ends, the knees and even steps between.`,
      );
    const whole = clock !== null && samples.at(-1)!.t < 43_200 && keep.every((i) => samples[i]!.t % 60 === 0);
    let before = 0;
    const lines = keep.map((i, k) => {
      const at = Math.round(samples[i]!.t);
      const value = `${samples[i]!.value.toFixed(decimals)} ${unit.word}`;
      const since = at - before;
      before = at;
      if (k === 0 && clock === null) return value;
      return k === 0 || whole ? `${clockText(clock! + Math.floor(at / 60))} ${value}` : `after ${since} s ${value}`;
    });
    return [...(place ? [place] : []), ...lines].join('\n');
  });
  return { text: notes.join('\n'), said, rows: rows.length, kept };
};
