/** A logger's file dropped on the page, as the text of a note. Fetched with the first such file. */
import { noteFromLogger } from '../server/core/logger-csv.ts';
import { LoggerError } from '../server/core/logger-error.ts';
import { takePlace } from '../intents/place.ts';

/** Read in the page at most; the reader of such files has a limit of its own below it. */
const mostBytes = 12e6;

export type FromFile = { text: string; said: readonly string[] } | { trouble: string };

/**
 * What stands in the note line says what the file leaves open: "tank, column 3, 9:05". It gives way to the note.
 * `zone`: the coach's, for files in UTC.
 */
export const wishesIn = (line: string): { place?: string; column?: number; startedAt?: number } => {
  const column = /\bcolumn (\d{1,3})\b/i.exec(line);
  const clock = /\b([01]?\d|2[0-3]):([0-5]\d)\b/.exec(line);
  const rest = line
    .replace(/\bcolumn \d{1,3}\b/i, '')
    .replace(/\b\d{1,2}:\d{2}\b/, '')
    .replace(/[\s,;]+/g, ' ')
    .trim()
    .toLowerCase();
  return {
    ...(rest !== '' && takePlace(rest) !== null ? { place: rest } : {}),
    ...(column ? { column: Number(column[1]) } : {}),
    ...(clock ? { startedAt: Number(clock[1]) * 60 + Number(clock[2]) } : {}),
  };
};

/** The coach's wall clock. */
const nowIn = (zone: string | undefined, at: number): { minutes: number; date: string } => {
  // written as 2026-11-25 09:30
  const text = new Intl.DateTimeFormat('sv-SE', { timeZone: zone ?? 'UTC', dateStyle: 'short', timeStyle: 'short' });
  const [date = '', clock = ''] = text.format(at).split(' ');
  const [hours, minutes] = clock.split(':').map(Number);
  return { minutes: (hours ?? 0) * 60 + (minutes ?? 0), date };
};

export const noteOfFile = async (
  file: File,
  line: string,
  zone: string | undefined,
  at: number = Date.now(),
): Promise<FromFile> => {
  const say = (words: string): FromFile => ({ trouble: `${file.name}: ${words}` });
  if (file.size > mostBytes) return say(`${Math.round(file.size / 1e6)} MB is too big: cut it first`);
  try {
    const { text, said } = noteFromLogger(await file.text(), { ...wishesIn(line), zone, now: nowIn(zone, at) });
    return { text, said: [`${file.name}, read.`, ...said] };
  } catch (error) {
    if (!(error instanceof LoggerError)) return say('it could not be opened');
    const hint = /which column|what was measured/.test(error.message)
      ? ' Write it in the note line (“tank, column 2”) and choose the file again.'
      : '';
    return say(`${error.message}.${hint}`);
  }
};
