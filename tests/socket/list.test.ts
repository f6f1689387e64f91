import { afterAll, expect, it } from 'vitest';
import { pageOfSessions } from '../../server/chat/protocol.ts';
import { Page } from '../start/server.ts';
import { serveInProcess } from './in-process.ts';

const ends: (() => unknown)[] = [];
afterAll(async () => {
  for (const end of ends.splice(0).toReversed()) await end();
});

it('a list comes by pages, newest first, each session once, and says whether there are older ones', async () => {
  const count = 2 * pageOfSessions + 3;
  let clock = 1_790_000_000_000;
  const { url, stop } = await serveInProcess({ openBurst: 1e6, burst: 1e6 }, () => (clock += 1));
  ends.push(stop);
  const page = await new Page(url).opened();
  ends.push(() => page.close());
  for (let n = 0; n < count; n += 1)
    page.send({ is: 'open', session: `listed-${n}`, coach: 'juniper-38', by: n % 2 === 0 ? 'KD' : 'MM' });
  await page.until((f) => f.is === 'entries' && f.session === `listed-${count - 1}`);

  const all = async (words?: string): Promise<{ names: string[]; pages: number[] }> => {
    const [names, pages]: [string[], number[]] = [[], []];
    let after: { last: number; session: string } | undefined;
    for (let more = true; more;) {
      const from = page.frames.length;
      page.send({ is: 'list', ...(words === undefined ? {} : { words }), ...(after ? { after } : {}) });
      const frame = await page.until((f) => f.is === 'sessions', from);
      if (frame.is !== 'sessions') break;
      expect(frame.after).toEqual(after);
      names.push(...frame.list.map((s) => s.session));
      pages.push(frame.list.length);
      const end = frame.list.at(-1)!;
      after = { last: end.last, session: end.session };
      ({ more } = frame);
    }
    return { names, pages };
  };
  const newestFirst = Array.from({ length: count }, (_, n) => `listed-${count - 1 - n}`);
  expect(await all()).toEqual({ names: newestFirst, pages: [pageOfSessions, pageOfSessions, 3] });
  const mine = await all('kd');
  expect(mine.names).toEqual(newestFirst.filter((s) => Number(s.slice(7)) % 2 === 0));
  expect(mine.pages).toEqual([pageOfSessions, 2]);
});
