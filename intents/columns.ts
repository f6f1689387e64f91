/** Pasted columns of elapsed time and readings: "tank psi, min" over lines of "0 112", "5 111", "10 110". */
import type { Amounting } from './amount-item.ts';
import type { Settled } from './settled.ts';
import type { Ambiguity } from './shapes.ts';

type Row = { readonly from: number; readonly value: number; readonly dotted: boolean };
export type Table = { readonly rows: readonly Row[]; readonly head: string; readonly seconds: number | null };

const row = /^[ \t]*(\d{1,5}(?:\.\d{1,3})?)(?:[ \t]*[,;][ \t]*|[ \t]+)(\d{1,4}(?:\.\d{1,3})?)[ \t]*$/;
const units: readonly (readonly [RegExp, number])[] = [
  [/\b(?:min|mins|minute|minutes)\b/i, 60],
  [/\b(?:s|sec|secs|second|seconds)\b/i, 1],
  [/\b(?:h|hr|hrs|hour|hours)\b/i, 3600],
];

/** At least three lines of two bare numbers whose first column only rises; null when the note is no such table. */
export const tableOf = (text: string): Table | null => {
  if (!text.includes('\n')) return null;
  const rows: Row[] = [];
  let head = '';
  let at = 0;
  for (const line of text.split('\n')) {
    const m = row.exec(line);
    if (m) rows.push({ from: at + line.indexOf(m[1]!), value: Number(m[1]), dotted: /\.[0-5]\d$/.test(m[1]!) });
    else if (line.trim() !== '' && rows.length === 0) head += `${line}\n`;
    else if (line.trim() !== '') return null;
    at += line.length + 1;
  }
  const rises = rows.every((r, i) => i === 0 || r.value > rows[i - 1]!.value);
  // 7.30, 7.45: times of day
  const clocks = rows.every((r) => r.dotted);
  if (rows.length < 3 || !rises || clocks || rows[0]!.value > 60) return null;
  return { rows, head, seconds: units.find(([form]) => form.test(head))?.[1] ?? null };
};

/** The time's unit was not said: asked, with the whole note to be sent again. */
export const askTime = (table: Table, text: string): Ambiguity => ({
  question: `${table.rows
    .map((r) => r.value)
    .slice(0, 3)
    .join(', ')} ...: minutes or seconds?`,
  candidates: (['min', 'sec', 'h'] as const).map((label) => ({
    label,
    text: `${table.head.trimEnd()} ${label}\n${text.slice(table.head.length)}`.trim(),
  })),
  spans: [[0, text.length]],
});

/** Makes each row's first number the time since the row before. */
export const elapse = (settled: readonly Settled[], table: Table): void => {
  const of = new Map(table.rows.map((r, i) => [r.from, i === 0 ? 0 : r.value - table.rows[i - 1]!.value]));
  for (const item of settled) {
    const step = item.k === 'num' ? of.get(item.span[0]) : undefined;
    if (step !== undefined) (item as Amounting).elapsed = step * (table.seconds ?? 60);
  }
};
