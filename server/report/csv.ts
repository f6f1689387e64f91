/** The session as CSV (RFC 4180), one row a fact or finding. A cell that a spreadsheet would run is made harmless. */
import { fromSi, stepFromSi } from '../core/units.ts';
import type { Entry } from '../session/entry.ts';
import { voidNotes } from '../session/taken-back.ts';

/**
 * Quoted where needed; a leading = + - @ (their wide forms and spaces before them too), tab or line end gets an
 * apostrophe, unless the cell is a plain number.
 */
export const csvCell = (value: string | number): string => {
  const text = String(value);
  const safe = /^(?:\s*[=+\-@＝＋－＠]|[\t\r\n])/u.test(text) && !/^[+-]?\d+(?:\.\d+)?$/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
};
const row = (cells: readonly (string | number)[]): string => `${cells.map(csvCell).join(',')}\r\n`;

const head = [
  'seq',
  'time',
  'by',
  'kind',
  'what',
  'where',
  'value',
  'unit',
  'verdict',
  'words',
  'source',
  'note',
  'in force',
];

export const sessionCsv = (entries: readonly Entry[], zone: string): string => {
  const time = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'medium' });
  const notes = entries.filter((e) => e.is === 'note');
  const gone = voidNotes(notes);
  const dropped = new Set(notes.filter((n) => !gone.has(n.id)).flatMap((n) => n.read.amends.flatMap((a) => a.drops)));
  let out = row(head);
  for (const entry of entries) {
    if (entry.is === 'note') {
      const facts = [...entry.read.facts, ...entry.read.amends.flatMap((a) => a.puts)];
      if (facts.length === 0)
        out += row([
          entry.seq,
          time.format(entry.at),
          entry.by,
          'note',
          '',
          '',
          '',
          '',
          '',
          '',
          '',
          entry.text,
          gone.has(entry.id) ? 'no' : 'yes',
        ]);
      for (const f of facts) {
        const force = gone.has(entry.id) || dropped.has(f.id) ? 'no' : f.held ? 'held back' : 'yes';
        const difference = f.is === 'reading' && /fall|rise|off/.test(f.what.v);
        const value =
          f.is === 'reading'
            ? Number(
                (difference
                  ? stepFromSi(f.amount.v.si, f.amount.v.unit)
                  : fromSi(f.amount.v.si, f.amount.v.unit)
                ).toPrecision(8),
              )
            : '';
        out += row([
          entry.seq,
          time.format(f.at),
          entry.by,
          f.is,
          f.what.v,
          f.where.v,
          value,
          f.is === 'reading' ? f.amount.v.unit : '',
          f.is === 'sign' ? (f.there ? 'yes' : 'no') : f.is === 'condition' ? (f.holds ? 'yes' : 'no') : '',
          '',
          f.word,
          entry.text,
          force,
        ]);
      }
    } else if (entry.is === 'reply')
      for (const block of entry.blocks)
        if (block.is === 'findings')
          for (const f of block.list)
            out += row([
              entry.seq,
              time.format(entry.kept),
              entry.by,
              'finding',
              ...splitKey(f.key),
              f.amount?.text ?? '',
              f.amount?.unit ?? '',
              f.verdict,
              f.words,
              f.limit?.source.words ?? f.why.source.words,
              '',
              gone.has(entry.to) ? 'no' : 'yes',
            ]);
  }
  return out;
};
const splitKey = (key: string): [string, string] => {
  const at = key.indexOf('@');
  return at < 0 ? [key, ''] : [key.slice(0, at), key.slice(at + 1)];
};
