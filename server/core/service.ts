/** When a service item is due: by date, by distance, whichever comes first. Times are ms since the epoch, distances m. */
import { ImpossibleInput } from './quantity.ts';

const day = 86_400_000;

export type Interval = { readonly days?: number | undefined; readonly distance?: number | undefined };
export type Done = { readonly at: number; readonly odometer?: number | undefined };
export type Due = {
  /** By the calendar; null where the item has no interval in days. */
  readonly date: number | null;
  /** At this odometer reading; null without a distance, or without the reading at which it was last done. */
  readonly odometer: number | null;
  /** Distance left, below zero when overdue; null where it cannot be told. */
  readonly left: number | null;
  /** When the distance runs out at the `pace` given, ms since the epoch; null where it cannot be told. */
  readonly byPace: number | null;
  readonly overdue: boolean;
};

/**
 * `pace`: m a day, from two odometer readings. Raises ImpossibleInput where an interval is not above zero, the odometer
 * runs backwards, or it was last done in the future.
 */
export const dueOf = (
  interval: Interval,
  last: Done,
  now: { readonly at: number; readonly odometer?: number | undefined; readonly pace?: number | undefined },
): Due => {
  if (interval.days !== undefined && !(interval.days > 0))
    throw new ImpossibleInput('service interval', interval.days, 'it must be above zero days');
  if (interval.distance !== undefined && !(interval.distance > 0))
    throw new ImpossibleInput('service distance', interval.distance, 'it must be above zero');
  if (last.at > now.at) throw new ImpossibleInput('date last done', last.at, 'it cannot lie in the future');
  if (last.odometer !== undefined && now.odometer !== undefined && now.odometer < last.odometer)
    throw new ImpossibleInput('odometer', now.odometer, 'it cannot run backwards');
  const date = interval.days === undefined ? null : last.at + interval.days * day;
  const odometer =
    interval.distance === undefined || last.odometer === undefined ? null : last.odometer + interval.distance;
  const left = odometer === null || now.odometer === undefined ? null : odometer - now.odometer;
  const byPace = left === null || !(now.pace !== undefined && now.pace > 0) ? null : now.at + (left / now.pace) * day;
  return { date, odometer, left, byPace, overdue: (date !== null && date < now.at) || (left !== null && left < 0) };
};
