/** The sheet's service items held against the works and odometer readings of the session. */
import type { WorkFact } from '../../intents/shapes.ts';
import { type Due, dueOf } from '../core/service.ts';
import { type Case, readings } from './case.ts';

const doing = new Set(['replaced', 'cleaned', 'drained', 'checked', 'lubricated', 'rebuilt', 'adjusted', 'set']);

export type Item = NonNullable<Case['sheet']['service']>[number];
export type DueItem = {
  readonly item: Item;
  readonly field: string;
  readonly last: WorkFact | null;
  readonly due: Due | null;
};

const words = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^a-z]+/)
    .filter((w) => w.length > 3);

/** An item is done by a work whose place (or deed) its own words name: "intake filter" by "replaced intake filter". */
export const serves = (item: Item, work: WorkFact): boolean => {
  const what = item.what.toLowerCase();
  if (work.what.v === 'drained') return /drain/.test(what);
  if (!doing.has(work.what.v) || work.where.v === '') return false;
  return (
    what.includes(work.where.v.toLowerCase()) ||
    (words(work.where.v).length > 0 && words(work.where.v).every((w) => what.includes(w)))
  );
};

/** Metres a day from the first and last odometer readings of the session, where they are a day or more apart. */
const paceOf = (c: Case): number | undefined => {
  const all = readings(c, 'odometer');
  const [a, b] = [all[0], all.at(-1)];
  if (!a || !b || b.at - a.at < 86_400_000) return undefined;
  return ((b.amount.v.si - a.amount.v.si) / (b.at - a.at)) * 86_400_000;
};

/** Every service item with its last doing in this session and when it is due next; `now` ms since the epoch. */
export const serviceDue = (c: Case, now: number): DueItem[] =>
  (c.sheet.service ?? []).map((item, i) => {
    const last = c.facts.findLast((f): f is WorkFact => f.is === 'work' && f.done && serves(item, f)) ?? null;
    const odometer = readings(c, 'odometer');
    const then = last ? odometer.findLast((f) => Math.abs(f.at - last.at) <= 86_400_000) : undefined;
    const latest = odometer.at(-1);
    const due =
      last === null || last.at > now
        ? null
        : dueOf(
            { days: item.every ? item.every.si / 86_400 : undefined, distance: item.distance?.si },
            { at: last.at, odometer: then?.amount.v.si },
            { at: now, odometer: latest?.amount.v.si, pace: paceOf(c) },
          );
    return { item, field: `service.${i}`, last, due };
  });

const dates = new Map<string, Intl.DateTimeFormat>();

/** A date as a person writes it, on the coach's wall: "6 Nov 2026". */
export const dateWords = (at: number, zone: string): string => {
  const format =
    dates.get(zone) ??
    new Intl.DateTimeFormat('en-GB', { timeZone: zone, day: 'numeric', month: 'short', year: 'numeric' });
  dates.set(zone, format);
  return format.format(at);
};
