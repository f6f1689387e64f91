/** "when is the filter due": the sheet's service items, held against what was done in this session. */
import { dateWords, type DueItem, serviceDue } from '../service-due.ts';
import { sheetSource } from '../case.ts';
import { distanceText } from '../show.ts';
import { type Question, type Workout } from './question.ts';

const every = (row: DueItem): string =>
  [row.item.every?.text, row.item.distance?.text].filter((t) => t !== undefined).join(' or ');

const line = (q: Question, row: DueItem): string => {
  const { due, last, item } = row;
  const zone = q.c.standing.zone;
  if (!due || !last) return `${item.what}: every ${every(row)}; not known when it was last done`;
  const parts = [
    ...(due.date === null ? [] : [dateWords(due.date, zone)]),
    ...(due.odometer === null
      ? []
      : [
          `${distanceText(due.odometer, q.c.sheet.units.distance)}${due.left === null ? '' : ` (${distanceText(due.left, q.c.sheet.units.distance)} to go)`}`,
        ]),
    ...(due.byPace === null ? [] : [`about ${dateWords(due.byPace, zone)} at the present pace`]),
  ];
  return `${item.what}: ${due.overdue ? 'overdue, ' : 'due '}${parts.join(' or ')}, done ${dateWords(last.at, zone)}`;
};

export const due: Workout = {
  subject: 'service',
  work: (q) => {
    if (
      !/\bdue\b|service|interval|how often|when (?:do|should|must) (?:i|we)\b|next (?:drain|filter|service)|last (?:done|changed|drained)/.test(
        q.words,
      )
    )
      return null;
    if (!q.c.sheet.service)
      return {
        words: 'this sheet has no service items',
        lines: [],
        wants: { field: 'service', question: 'What is to be serviced on this coach, and how often?' },
      };
    const now = Math.max(0, ...q.c.facts.map((f) => f.at));
    const all = serviceDue(q.c, now);
    const named = all.filter((row) =>
      row.item.what
        .toLowerCase()
        .split(/[^a-z]+/)
        .some((w) => w.length > 3 && w !== 'tank' && q.words.includes(w)),
    );
    const rows = named.length > 0 ? named : all;
    const first = rows[0]!;
    const open = rows.find((r) => !r.last);
    return {
      words: line(q, first),
      lines: rows.slice(1).map((r) => line(q, r)),
      why: {
        formula: 'last done plus the interval, by date and by distance, whichever comes first',
        inputs: rows.map((r) => ({ name: r.item.what, text: every(r), from: `sheet: ${r.field}` })),
        source: sheetSource('service'),
        notes: ['only what was done in this session is known here'],
      },
      ...(open
        ? {
            wants: {
              field: open.field,
              question: `When was "${open.item.what}" last done${open.item.distance ? ', and at what odometer reading' : ''}?`,
            },
          }
        : {}),
    };
  },
};
