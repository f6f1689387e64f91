/** What of the sheet's service is due, held against all sessions of the coach. Pure. */
import type { WorkFact } from '../../intents/shapes.ts';
import { type Due as DueDate, dueOf } from '../core/service.ts';
import { ImpossibleInput } from '../core/quantity.ts';
import { dateWords, serves } from '../findings/service-due.ts';
import { distanceText } from '../findings/show.ts';
import type { Folded } from '../session/fold.ts';
import type { Sheet } from '../sheet/schema.ts';
import type { Due } from './shapes.ts';
import { workWords } from './plain-parts.ts';

const day = 86_400_000;

type Done = { at: number; session: string; fact: WorkFact };
type Odometer = { at: number; metres: number };

/** YYYY-MM-DD on the coach's wall. */
export const wallDay = (at: number, zone: string): string =>
  new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short' }).format(at);

/** Odometer readings of all sessions in order of time; one that runs backwards is not counted with. */
const odometersOf = (sessions: readonly Folded[]): Odometer[] => {
  const all = sessions
    .flatMap((s) =>
      s.facts.flatMap(({ fact }) =>
        fact.is === 'reading' && fact.what.v === 'odometer' ? [{ at: fact.at, metres: fact.amount.v.si }] : [],
      ),
    )
    .toSorted((a, b) => a.at - b.at);
  return all.filter((o, i) => all.slice(0, i).every((before) => before.metres <= o.metres));
};

/** m a day between the first and the last reading, where they are a day or more apart. */
const paceOf = (all: readonly Odometer[]): number | undefined => {
  const [a, b] = [all[0], all.at(-1)];
  return a && b && b.at - a.at >= day && b.metres > a.metres
    ? ((b.metres - a.metres) / (b.at - a.at)) * day
    : undefined;
};

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
  const newest = odometers.at(-1);
  return (sheet.service ?? []).map((item, i): Due => {
    const last = done.findLast((d) => serves(item, d.fact));
    const then = last ? odometers.findLast((o) => Math.abs(o.at - last.at) <= day) : undefined;
    let due: DueDate | null = null;
    if (last)
      try {
        due = dueOf(
          { days: item.every ? item.every.si / 86_400 : undefined, distance: item.distance?.si },
          { at: last.at, odometer: then?.metres },
          { at: now, odometer: newest?.metres, pace: paceOf(odometers) },
        );
      } catch (error) {
        if (!(error instanceof ImpossibleInput)) throw error;
      }
    const at = dayOf(due);
    return {
      what: item.what,
      words: wordsOf(due, sheet.zone, sheet.units.distance, now),
      date: at === null ? null : wallDay(at, sheet.zone),
      overdue: due?.overdue ?? false,
      last: last ? { at: last.at, session: last.session, words: workWords(last.fact) } : null,
      source: `sheet: service.${i}`,
    };
  });
};
