/** The sheet's service items held against the works and odometer readings of the session. */
import type { WorkFact } from '../../intents/shapes.ts';
import { type Due, dueOf } from '../core/service.ts';
import { paceOver } from '../core/service-history.ts';
import { doneMeaning } from '../session/works.ts';
import { type Case, readings } from './case.ts';

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
  if (!doneMeaning(work, 'service') || work.where.v === '') return false;
  return (
    what.includes(work.where.v.toLowerCase()) ||
    (words(work.where.v).length > 0 && words(work.where.v).every((w) => what.includes(w)))
  );
};

/** Every service item with its last doing in this session and when it is due next; `now` ms since the epoch. */
export const serviceDue = (c: Case, now: number): DueItem[] => {
  const odometer = readings(c, 'odometer');
  const latest = odometer.at(-1);
  const pace =
    paceOver(
      odometer.map((f) => ({ at: f.at, odometer: f.amount.v.si })),
      Infinity,
    ) ?? undefined;
  return (c.sheet.service ?? []).map((item, i) => {
    const last = c.facts.findLast((f): f is WorkFact => f.is === 'work' && f.done && serves(item, f)) ?? null;
    const then = last ? odometer.findLast((f) => Math.abs(f.at - last.at) <= 86_400_000) : undefined;
    const due =
      last === null || last.at > now
        ? null
        : dueOf(
            { days: item.every ? item.every.si / 86_400 : undefined, distance: item.distance?.si },
            { at: last.at, odometer: then?.amount.v.si },
            { at: now, odometer: latest?.amount.v.si, pace },
          );
    return { item, field: `service.${i}`, last, due };
  });
};

const dates = new Map<string, Intl.DateTimeFormat>();

/** A date as a person writes it, on the coach's wall: "6 Nov 2026". */
export const dateWords = (at: number, zone: string): string => {
  const format =
    dates.get(zone) ??
    new Intl.DateTimeFormat('en-GB', { timeZone: zone, day: 'numeric', month: 'short', year: 'numeric' });
  dates.set(zone, format);
  return format.format(at);
};
