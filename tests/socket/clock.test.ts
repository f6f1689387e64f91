import { afterEach, describe, expect, it } from 'vitest';
import type { Entry } from '../../server/session/entry.ts';
import { Page } from '../start/server.ts';
import { serveInProcess } from './in-process.ts';

const ends: (() => unknown)[] = [];
afterEach(async () => {
  for (const end of ends.splice(0).toReversed()) await end();
});
const noon = Date.UTC(2026, 9, 6, 18, 0);
const day = 24 * 3_600_000;
const serve = async (now: () => number): Promise<string> => {
  const { url, stop } = await serveInProcess({}, now);
  ends.push(stop);
  return url;
};
const enter = async (url: string): Promise<Page> => {
  const page = await new Page(url).opened();
  ends.push(() => page.close());
  return page;
};
const entriesOf = (page: Page): Entry[] => page.frames.flatMap((f) => (f.is === 'entries' ? f.entries : []));

describe('a page asleep for a day', () => {
  it('catches up in order, and what it typed before it slept keeps its own time', async () => {
    let clock = noon;
    const url = await serve(() => clock);
    const session = 'asleep-a-day';
    const before = await enter(url);
    before.send({ is: 'open', session, coach: 'juniper-38', by: 'KD' });
    before.send({ is: 'follow', session, after: 0 });
    await before.until((f) => f.is === 'board');
    await before.note(session, 'before-note-1', 'tank 95 psi', 1);
    const last = Math.max(...entriesOf(before).map((e) => e.seq));
    before.close();

    // another page goes on, the day passes, a correction comes
    clock += day;
    const other = await enter(url);
    for (const [i, text] of ['tank 90 psi', 'make that 91', 'left rear 13 1/4'].entries())
      await other.note(session, `other-note-${i}`, text, 3 + 2 * i);

    const back = await enter(url);
    back.send({ is: 'follow', session, after: last });
    // typed an hour into the sleep, never sent: `seen` is what stood on the page then
    const typed = { is: 'note', session, id: 'slept-note', text: 'tank 94 psi', at: noon + 3_600_000, seen: last };
    back.send({ ...typed, by: 'KD' });
    await back.until((f) => f.is === 'entries' && f.entries.some((e) => e.is === 'reply' && e.to === 'slept-note'));
    const seen = [...entriesOf(before), ...entriesOf(back)];
    const order = [...new Map(seen.map((e) => [e.seq, e])).values()];
    expect(order.map((e) => e.seq)).toEqual(order.map((_, i) => i + 1));
    expect(order.length).toBe(11);
    const slept = order.find((e) => e.is === 'note' && e.id === 'slept-note');
    expect(slept).toMatchObject({ at: noon + 3_600_000, kept: noon + day });
    // its reading was taken before the others': it stands before them in time, not as the latest
    const board = await back.until((f) => f.is === 'board' && f.board.seq === 11);
    const tank = board.is === 'board' ? board.board.latest.find((l) => l.key === 'pressure@tank') : undefined;
    expect(tank?.text).toContain('91');
  });

  it('is asked which note is meant when it corrects what others have gone past', async () => {
    const url = await serve(() => noon + day);
    const page = await enter(url);
    page.send({ is: 'open', session: 'asleep-amend', coach: 'juniper-38', by: 'KD' });
    await page.note('asleep-amend', 'amend-note-1', 'tank 95 psi', 1);
    await page.note('asleep-amend', 'amend-note-2', 'tank 90 psi', 3);
    const frame = await page.note('asleep-amend', 'amend-note-3', 'make that 96', 3);
    expect(JSON.stringify(frame)).toContain('Another note came in');
  });
});

describe('a clock that steps back', () => {
  it('keeps order, refuses nobody for it, and goes on telling what stands', async () => {
    let clock = noon;
    const url = await serve(() => clock);
    const page = await enter(url);
    const session = 'steps-back';
    page.send({ is: 'open', session, coach: 'juniper-38', by: 'KD' });
    page.send({ is: 'follow', session, after: 0 });
    await page.until((f) => f.is === 'board');
    await page.note(session, 'back-note-1', 'pump running, tank 95 psi', 1);
    clock -= 2 * 3_600_000;
    for (let i = 2; i < 12; i += 1) {
      page.send({
        is: 'note',
        session,
        id: `back-note-${i}`,
        text: `tank ${95 - i} psi`,
        at: clock,
        seen: i,
        by: 'KD',
      });
      await page.until(
        (f) => f.is === 'entries' && f.entries.some((e) => e.is === 'reply' && e.to === `back-note-${i}`),
      );
    }
    expect(page.frames.filter((f) => f.is === 'refused')).toEqual([]);
    const order = [...new Set(entriesOf(page).map((e) => e.seq))];
    expect(order).toEqual(Array.from({ length: 23 }, (_, i) => i + 1));
    const board = await page.until((f) => f.is === 'board' && f.board.seq === 23);
    expect(JSON.stringify(board)).not.toMatch(/-\d+ min/);
  });
});
