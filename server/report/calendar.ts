/**
 * What is due as a calendar file (RFC 5545): a whole day each, with an alarm a week before. Written by ical.js, which
 * escapes (3.3.11) and folds (3.1). The UID stays the same for an item of a coach, so that a later file moves the day.
 */
import { createHash } from 'node:crypto';
import ICAL from 'ical.js';
import type { Due } from './shapes.ts';

const uid = (coach: string, what: string): string =>
  `${createHash('sha256').update(`${coach}\n${what}`).digest('hex').slice(0, 32)}@soapwater`;

/** `now`: ms since the epoch, for DTSTAMP. Items without a day cannot stand in a calendar and are left out. */
export const dueCalendar = (coach: { id: string; name: string }, due: readonly Due[], now: number): string => {
  const calendar = new ICAL.Component('vcalendar');
  calendar.addPropertyWithValue('version', '2.0');
  calendar.addPropertyWithValue('prodid', '-//soapwater//service due//EN');
  calendar.addPropertyWithValue('calscale', 'GREGORIAN');
  calendar.addPropertyWithValue('method', 'PUBLISH');
  for (const item of due) {
    if (item.date === null) continue;
    const event = new ICAL.Component('vevent');
    const start = ICAL.Time.fromDateString(item.date);
    const end = start.clone();
    end.adjust(1, 0, 0, 0);
    event.addPropertyWithValue('uid', uid(coach.id, item.what));
    event.addPropertyWithValue('dtstamp', ICAL.Time.fromJSDate(new Date(Math.floor(now / 1000) * 1000), true));
    event.addPropertyWithValue('dtstart', start);
    event.addPropertyWithValue('dtend', end);
    event.addPropertyWithValue('summary', `${coach.name}: ${item.what}`);
    const last = item.last ? ` Last: ${item.last.words}.` : '';
    event.addPropertyWithValue(
      'description',
      `${item.words}.${last} Interval from ${item.source}; the maker's manual comes first.`,
    );
    event.addPropertyWithValue('transp', 'TRANSPARENT');
    const alarm = new ICAL.Component('valarm');
    alarm.addPropertyWithValue('action', 'DISPLAY');
    alarm.addPropertyWithValue('description', `${coach.name}: ${item.what}`);
    alarm.addPropertyWithValue('trigger', ICAL.Duration.fromString('-P7D'));
    event.addSubcomponent(alarm);
    calendar.addSubcomponent(event);
  }
  // the last line ends as every other does
  return `${calendar.toString()}\r\n`;
};
