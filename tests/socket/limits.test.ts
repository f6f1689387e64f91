import { afterEach, describe, expect, it } from 'vitest';
import { WebSocket } from 'ws';
import type { SocketLimits } from '../../server/socket.ts';
import { Page } from '../start/server.ts';
import { type InProcess, serveInProcess } from './in-process.ts';

const ends: (() => unknown)[] = [];
afterEach(async () => {
  for (const end of ends.splice(0).toReversed()) await end();
});
const serve = async (limits: Partial<SocketLimits>, now?: () => number): Promise<InProcess> => {
  const made = await serveInProcess(limits, now);
  ends.push(made.stop);
  return made;
};
const enter = async (url: string): Promise<Page> => {
  const page = await new Page(url).opened();
  ends.push(() => page.close());
  return page;
};
const closed = (page: Page): Promise<void> =>
  new Promise((resolve) => (page.ws.readyState === WebSocket.CLOSED ? resolve() : page.ws.once('close', resolve)));

describe('limits of the socket', () => {
  it('drops a page that does not read, and another page loses nothing by it', async () => {
    const { url } = await serve({ behind: 256 * 1024 });
    const slow = await enter(url);
    const quick = await enter(url);
    slow.send({ is: 'open', session: 'slow-reader', coach: 'juniper-38', by: 'KD' });
    await slow.until((f) => f.is === 'entries');
    const remark = { is: 'remark', session: 'slow-reader', about: 1, text: 'x'.repeat(4000), by: 'KD' };
    for (let i = 0; i < 40; i += 1) slow.send(remark);
    slow.send({ is: 'ask', session: null, id: 'slow-ask-1', text: 'psi' });
    await slow.until((f) => f.is === 'answer');
    slow.ws.pause();
    // each asks for all of it once more: far beyond what the kernel holds for a page that does not read
    const ask = setInterval(() => slow.send({ is: 'follow', session: 'slow-reader', after: 0 }), 60);
    ends.push(() => clearInterval(ask));
    const dropped = await Promise.race([
      closed(slow).then(() => true),
      new Promise<false>((resolve) => setTimeout(() => resolve(false), 25_000)),
    ]);
    expect(dropped).toBe(true);
    expect(await quick.note('slow-reader', 'quick-note', 'tank 93 psi')).toMatchObject({ is: 'entries' });
  }, 60_000);

  it('lets go a page that answers no ping, and keeps one that does', async () => {
    const { url } = await serve({ silence: 100 });
    const awake = await enter(url);
    const host = new URL(url).host;
    const asleep = new WebSocket(`ws://${host}/socket`, { headers: { Origin: `http://${host}` }, autoPong: false });
    await new Promise((resolve) => asleep.once('open', resolve));
    await new Promise((resolve) => asleep.once('close', resolve));
    expect(awake.ws.readyState).toBe(WebSocket.OPEN);
  });

  it('lets in no more pages than it may, and the next one once one has gone', async () => {
    const { url } = await serve({ pages: 2 });
    const first = await enter(url);
    await enter(url);
    const turnedAway = new Page(url);
    const status = await new Promise((resolve) =>
      turnedAway.ws.once('unexpected-response', (_, response) => resolve(response.statusCode)),
    );
    expect(status).toBe(503);
    first.close();
    await closed(first);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect((await enter(url)).frames[0]).toMatchObject({ is: 'welcome' });
  });

  it('lets a page follow no more sessions than it may', async () => {
    const { url } = await serve({ follows: 2 });
    const page = await enter(url);
    for (const n of [1, 2, 3]) {
      page.send({ is: 'open', session: `follows-${n}`, coach: 'juniper-38', by: 'KD' });
      page.send({ is: 'follow', session: `follows-${n}`, after: 0 });
    }
    expect(await page.until((f) => f.is === 'refused')).toMatchObject({ why: 'not allowed' });
    expect(page.frames.filter((f) => f.is === 'board')).toHaveLength(2);
  });

  it('opens no more new sessions at once than it may, and more after a while', async () => {
    let clock = 1_790_000_000_000;
    const { url } = await serve({ openBurst: 2, openRate: 60 }, () => clock);
    const page = await enter(url);
    const open = (n: number): void =>
      page.send({ is: 'open', session: `many-opens-${n}`, coach: 'juniper-38', by: 'KD' });
    [1, 2, 3].forEach(open);
    expect(await page.until((f) => f.is === 'refused')).toMatchObject({ why: 'too fast' });
    clock += 1000;
    open(3);
    await page.until((f) => f.is === 'entries' && f.session === 'many-opens-3');
  });
});
