/**
 * What a coach's service items are due for, over all its visits: by date and by distance, whichever comes first, soonest
 * first. Times are ms since the epoch, distances m. What cannot be told is named, never filled in.
 */
import { ImpossibleInput } from './quantity.ts';
import { type Due, type Interval, dueOf } from './service.ts';

const day = 86_400_000;

export type ServiceItem = Interval & { readonly what: string };
/** `what` as the item is called on the sheet; `odometer` as it stood then, where it was read. */
export type DoneEntry = { readonly what: string; readonly at: number; readonly odometer?: number | undefined };
export type OdometerReading = { readonly at: number; readonly odometer: number };
export type Lack =
  /** The sheet names the item without an interval. */
  | 'interval'
  /** No visit on record did it: it may be long overdue. */
  | 'last done'
  /** Done, but the odometer was not read then: due by distance cannot be told. */
  | 'odometer then'
  /** The odometer of today. */
  | 'odometer now'
  /** Two odometer readings a day or more apart: the date on which the distance runs out cannot be told. */
  | 'pace';
export type ServiceRow = {
  readonly what: string;
  readonly state: 'overdue' | 'due' | 'cannot tell';
  readonly last: DoneEntry | null;
  readonly due: Due | null;
  /** What makes it due first; null where neither can be told. */
  readonly by: 'date' | 'distance' | null;
  /** When, ms; null where it cannot be told. For an item overdue by distance only, by the pace, it lies in the past. */
  readonly when: number | null;
  readonly lacks: readonly Lack[];
  /** An entry that cannot be, in words: done in the future, an odometer that runs backwards. */
  readonly wrong: string | null;
};
export type ServiceHistory = {
  readonly rows: readonly ServiceRow[];
  /** Done, but no item of the sheet is called so. */
  readonly unknown: readonly DoneEntry[];
  /** m a day; null without two readings a day apart. */
  readonly pace: number | null;
};

/** m a day between the first and last reading up to `now`; null where they are less than a day apart. */
export const paceOver = (readings: readonly OdometerReading[], now: number): number | null => {
  const sorted = readings.filter((r) => r.at <= now).toSorted((a, b) => a.at - b.at);
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last || last.at - first.at < day || last.odometer < first.odometer) return null;
  return ((last.odometer - first.odometer) / (last.at - first.at)) * day;
};

const rowOf = (
  item: ServiceItem,
  last: DoneEntry | null,
  now: { at: number; odometer?: number | undefined; pace: number | null },
): ServiceRow => {
  const blank = { what: item.what, last, due: null, by: null, when: null, wrong: null } as const;
  if (item.days === undefined && item.distance === undefined)
    return { ...blank, state: 'cannot tell', lacks: ['interval'] };
  if (last === null) return { ...blank, state: 'cannot tell', lacks: ['last done'] };
  const lacks: Lack[] = [];
  if (item.distance !== undefined) {
    if (last.odometer === undefined) lacks.push('odometer then');
    if (now.odometer === undefined) lacks.push('odometer now');
  }
  try {
    const due = dueOf(item, last, { at: now.at, odometer: now.odometer, pace: now.pace ?? undefined });
    if (due.left !== null && due.byPace === null) lacks.push('pace');
    const late = { date: due.date !== null && due.date < now.at, distance: due.left !== null && due.left < 0 };
    const dateFirst = due.date !== null && (due.byPace === null || due.date <= due.byPace);
    // where only one of the two is past, that one makes it overdue, whatever the pace says
    const by =
      late.date !== late.distance
        ? late.date
          ? 'date'
          : 'distance'
        : dateFirst
          ? 'date'
          : due.left === null
            ? null
            : 'distance';
    return {
      ...blank,
      due,
      by,
      when: by === 'date' ? due.date : by === 'distance' ? due.byPace : null,
      state: due.overdue ? 'overdue' : by === null ? 'cannot tell' : 'due',
      lacks,
    };
  } catch (error) {
    if (!(error instanceof ImpossibleInput)) throw error;
    return { ...blank, state: 'cannot tell', lacks, wrong: error.message };
  }
};

/** Known times first, the sooner the earlier. */
const compare = (a: number | null, b: number | null): number =>
  a === b ? 0 : a === null ? 1 : b === null ? -1 : a - b;

const order: Readonly<Record<ServiceRow['state'], number>> = { overdue: 0, due: 1, 'cannot tell': 2 };

/**
 * `done` in any order, `odometer` all readings on record (those of the done entries count as well). The newest entry of an
 * item is its last; of two at the same time the one with an odometer reading.
 */
export const serviceHistory = (
  items: readonly ServiceItem[],
  done: readonly DoneEntry[],
  odometer: readonly OdometerReading[],
  now: number,
): ServiceHistory => {
  const all = [
    ...odometer,
    ...done.flatMap((d) => (d.odometer === undefined ? [] : [{ at: d.at, odometer: d.odometer }])),
  ];
  const pace = paceOver(all, now);
  const latest = all
    .filter((r) => r.at <= now)
    .reduce<OdometerReading | null>((a, b) => (a && a.at > b.at ? a : b), null);
  const rows = items.map((item) => {
    const last = done
      .filter((d) => d.what === item.what)
      .reduce<DoneEntry | null>(
        (a, b) => (a && (a.at > b.at || (a.at === b.at && a.odometer !== undefined)) ? a : b),
        null,
      );
    return rowOf(item, last, { at: now, odometer: latest?.odometer, pace });
  });
  return {
    rows: rows
      .map((row, i) => ({ row, i }))
      .toSorted((a, b) => order[a.row.state] - order[b.row.state] || compare(a.row.when, b.row.when) || a.i - b.i)
      .map(({ row }) => row),
    unknown: done.filter((d) => !items.some((item) => item.what === d.what)),
    pace,
  };
};
