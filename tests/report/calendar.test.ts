import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { dueCalendar } from '../../server/report/calendar.ts';
import { dueOfCoach } from '../../server/report/due.ts';
import { coachHistory } from '../../server/report/history.ts';
import type { Due } from '../../server/report/shapes.ts';
import { benchDesk, day, juniper, leakStory, noon, tell, visit } from './told.ts';

const item = (what: string, date: string | null, words = 'due'): Due => ({
  what,
  words,
  date,
  overdue: false,
  last: null,
  source: 'sheet: service.0',
});
const hard = 'filter, seals; "O-rings"\\dryer\nnext line — Prüfstück für die Luftfederung und noch viel längerer Text';

describe('the calendar file (RFC 5545)', () => {
  const text = dueCalendar(
    { id: 'juniper-38', name: 'Juniper, 38' },
    [item(hard, '2027-02-28'), item('b', null)],
    noon,
  );

  it('ends every line by CRLF and keeps each to 75 octets (3.1)', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(Math.max(...text.split('\r\n').map((l) => Buffer.byteLength(l)))).toBeLessThanOrEqual(75);
  });

  it('reads back as one whole-day event with its alarm; escaped text comes back whole (3.3.11)', () => {
    const events = new ICAL.Component(ICAL.parse(text) as unknown[]).getAllSubcomponents('vevent');
    expect(events).toHaveLength(1);
    const event = events[0]!;
    expect(event.getFirstPropertyValue('summary')).toBe(`Juniper, 38: ${hard}`);
    expect(text).toContain('DTSTART;VALUE=DATE:20270228\r\nDTEND;VALUE=DATE:20270301\r\n');
    expect(text).toContain('DTSTAMP:20261006T180000Z\r\n');
    expect(text).toMatch(/\r\nUID:[a-f0-9]{32}@soapwater\r\n/);
    expect(text).toMatch(/BEGIN:VALARM\r\n(?:.+\r\n)*TRIGGER:-P7D\r\n/);
    expect(text.match(/^(?:VERSION|PRODID):/gm)).toHaveLength(2);
  });

  it('keeps the UID of an item when its day moves, and gives another coach another', () => {
    const uidOf = (id: string, date: string): string =>
      /UID:(\S+)/.exec(dueCalendar({ id, name: 'x' }, [item('drain', date)], noon))![1]!;
    expect(uidOf('a', '2027-01-01')).toBe(uidOf('a', '2027-06-01'));
    expect(uidOf('a', '2027-01-01')).not.toBe(uidOf('b', '2027-01-01'));
  });
});

describe("a coach's history", () => {
  const told = async () => {
    const bench = benchDesk();
    await tell(
      bench,
      'spring',
      ['look over', 'odometer 41200 mi', 'LR 13 5/8', 'replaced intake filter'],
      noon - 200 * day,
    );
    await tell(bench, 'autumn', ['odometer 44200 mi', ...leakStory], noon);
    return coachHistory([await visit(bench, 'spring'), await visit(bench, 'autumn')], juniper, noon + day);
  };

  it("holds each place's readings over the visits in order, with limits and their source", async () => {
    const rear = (await told()).series.find((s) => s.key === 'height@left rear')!;
    expect(rear.points.map((p) => [p.session, p.verdict])).toEqual([
      ['spring', 'within'],
      ['autumn', 'low'],
      ['autumn', 'within'],
    ]);
    expect(rear.low).toBeCloseTo(13.5 * 0.0254, 9);
    expect(rear.source).toBe('sheet: heights.leftRear');
  });

  it('says what was replaced when, newest first', async () => {
    expect((await told()).work.map((w) => w.words).filter((w) => w.startsWith('Replaced'))).toEqual([
      'Replaced the left bellows',
      "Replaced the pump's intake filter",
    ]);
  });

  it('counts what is due over all visits: by day, by distance, and what nobody knows', async () => {
    const { due } = await told();
    expect(due.find((d) => d.what === 'drain the tank')).toMatchObject({ date: '2026-11-05', overdue: false });
    // 182 days after a day 200 days ago
    expect(due.find((d) => d.what === 'intake filter')).toMatchObject({ overdue: true, last: { session: 'spring' } });
    expect(due.find((d) => d.what.startsWith('rear heights'))).toMatchObject({ date: null, last: null });
  });

  it('counts no work that is dated after now', async () => {
    const bench = benchDesk();
    await tell(bench, 'later-on', ['drained tank'], noon + 40 * day);
    const { standing } = await visit(bench, 'later-on');
    expect(dueOfCoach([standing], juniper.sheet, noon)[0]?.last).toBeNull();
  });
});
