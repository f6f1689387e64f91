/** What of the sheet's service is due, held against all sessions of the coach. Pure. */
import type { WorkFact } from '../../intents/shapes.ts';
import type { Due as DueDate } from '../core/service.ts';
import { type OdometerReading, serviceHistory } from '../core/service-history.ts';
import { dateWords, serves } from '../findings/service-due.ts';
import { distanceText } from '../findings/show.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Due } from './shapes.ts';
import { workWords } from './plain-parts.ts';

const day = 86_400_000;

type Done = { at: number; session: string; fact: WorkFact };

/** YYYY-MM-DD on the coach's wall. */
export const wallDay = (at: number, zone: string): string =>
  new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short' }).format(at);

/** Odometer readings of all sessions. */
const odometersOf = (sessions: readonly Folded[]): OdometerReading[] =>
  sessions.flatMap((s) =>
    s.facts.flatMap(({ fact }) =>
      fact.is === 'reading' && fact.what.v === 'odometer' ? [{ at: fact.at, odometer: fact.amount.v.si }] : [],
    ),
  );

const wordsOf = (due: DueDate | null, zone: string, unit: Sheet['units']['distance'], now: number): string => {
  if (due === null) return 'not known when it was last done: say so once, as a note with its date';
  const late = [
    ...(due.date !== null && due.date < now ? [`since ${dateWords(due.date, zone)}`] : []),
    ...(due.left !== null && due.left < 0 ? [`by ${distanceText(-due.left, unit)}`] : []),
  ];
  if (late.length > 0) return `overdue ${late.join(', ')}`;
  const parts = [
    ...(due.date === null ? [] : [dateWords(due.date, zone)]),
    ...(due.odometer === null ? [] : [`at ${distanceText(due.odometer, unit)}`]),
  ];
  if (parts.length === 0) return 'due by distance: the odometer at the last service is not known';
  const both = parts.length > 1 ? ', whichever comes first' : '';
  const left = due.left === null ? '' : `; ${distanceText(due.left, unit)} left`;
  const pace = due.byPace === null ? '' : `, about ${dateWords(due.byPace, zone)} at the way it is driven`;
  return `due ${parts.join(' or ')}${both}${left}${pace}`;
};

/** The earlier of the day by calendar and the day by pace. */
const dayOf = (due: DueDate | null): number | null => {
  const days = [due?.date ?? null, due?.byPace ?? null].filter((d) => d !== null);
  return days.length === 0 ? null : Math.min(...days);
};

/** `sessions`: all of the coach, practice left out; `now` ms since the epoch. */
export const dueOfCoach = (sessions: readonly Folded[], sheet: Sheet, now: number): Due[] => {
  const done: Done[] = sessions
    .flatMap((s) =>
      s.facts.flatMap(({ fact }) =>
        fact.is === 'work' && fact.done && fact.at <= now ? [{ at: fact.at, session: s.session, fact }] : [],
      ),
    )
    .toSorted((a, b) => a.at - b.at);
  const odometers = odometersOf(sessions);
  const items = sheet.service ?? [];
  const served = items.flatMap((item) =>
    done
      .filter((d) => serves(item, d.fact))
      .map((d) => ({
        what: item.what,
        at: d.at,
        odometer: odometers.findLast((o) => Math.abs(o.at - d.at) <= day)?.odometer,
      })),
  );
  const { rows } = serviceHistory(
    items.map((item) => ({
      what: item.what,
      days: item.every ? item.every.si / 86_400 : undefined,
      distance: item.distance?.si,
    })),
    served,
    odometers,
    now,
  );
  return rows.map((row): Due => {
    const n = items.findIndex((item) => item.what === row.what);
    const last = row.last ? done.findLast((d) => d.at === row.last!.at && serves(items[n]!, d.fact)) : undefined;
    const at = dayOf(row.due);
    return {
      what: row.what,
      words: row.wrong ?? wordsOf(row.due, sheet.zone, sheet.units.distance, now),
      date: at === null ? null : wallDay(at, sheet.zone),
      overdue: row.state === 'overdue',
      last: last ? { at: last.at, session: last.session, words: workWords(last.fact) } : null,
      source: `sheet: service.${n}`,
    };
  });
};
