import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { WebSocket } from 'ws';
import { refusals } from '../../server/chat/protocol.ts';
import { cleanUp, Page, startServer, type Running } from '../start/server.ts';

let running: Running;
beforeAll(async () => {
  running = await startServer();
}, 60_000);
afterAll(async () => {
  await running.stop();
  cleanUp(running.data);
});
const rows = readFileSync(new URL('../../fixtures/frames/refused.jsonl', import.meta.url), 'utf8')
  .split('\n')
  .filter(Boolean)
  .map((l) => JSON.parse(l) as { name: string; frame: unknown; why: keyof typeof refusals; hello?: false });

const status = (headers: Record<string, string>, path = '/socket'): Promise<number | 'open'> =>
  new Promise((resolve) => {
    const ws = new WebSocket(`ws://${new URL(running.url).host}${path}`, { headers });
    ws.on('open', () => {
      ws.terminate();
      resolve('open');
    });
    ws.on('unexpected-response', (_request, response) => {
      resolve(response.statusCode ?? 0);
      ws.terminate();
    });
    ws.on('error', () => undefined);
  });

describe('a long session', () => {
  it('gives the newest first when asked so, says what was left out, and the rest on asking', async () => {
    const page = await new Page(running.url).opened();
    page.send({ is: 'open', session: 'long-one', coach: 'juniper-38', by: 'KD' });
    await page.until((f) => f.is === 'entries');
    for (let i = 0; i < 5; i += 1) {
      page.send({
        is: 'note',
        session: 'long-one',
        id: `long-note-${i}`,
        text: `tank ${90 + i} psi`,
        at: Date.now(),
        seen: 0,
        by: 'KD',
      });
      await page.until(
        (f) => f.is === 'entries' && f.entries.some((e) => e.is === 'note' && e.id === `long-note-${i}`),
      );
    }
    const other = await new Page(running.url).opened();
    other.send({ is: 'follow', session: 'long-one', after: 0, last: 4 });
    const tail = await other.until((f) => f.is === 'entries');
    expect(tail).toMatchObject({ skipped: true, more: false });
    expect(tail.is === 'entries' && tail.entries.map((e) => e.seq)).toEqual([8, 9, 10, 11]);
    other.send({ is: 'earlier', session: 'long-one', before: 8, most: 5 });
    const before = await other.until((f) => f.is === 'earlier');
    expect(before.is === 'earlier' && before.entries.map((e) => e.seq)).toEqual([3, 4, 5, 6, 7]);
    other.send({ is: 'earlier', session: 'long-one', before: 3, most: 500 });
    const from = other.frames.length;
    const first = await other.until((f) => f.is === 'earlier', from);
    expect(first.is === 'earlier' && first.entries.map((e) => e.seq)).toEqual([1, 2]);
    // one that has nearly all of it is not sent past the gap
    const near = await new Page(running.url).opened();
    near.send({ is: 'follow', session: 'long-one', after: 9, last: 4 });
    const rest = await near.until((f) => f.is === 'entries');
    expect(rest.is === 'entries' && [rest.skipped, rest.entries.map((e) => e.seq)]).toEqual([undefined, [10, 11]]);
    for (const p of [page, other, near]) p.close();
  });
});

describe('frames the socket refuses', () => {
  it.each(rows)('$name: $why', async ({ frame, why, hello }) => {
    const page = new Page(running.url);
    if (hello === false) await new Promise((resolve) => page.ws.once('open', resolve));
    else await page.opened();
    const from = page.frames.length;
    page.send(frame);
    const refused = await page.until((f) => f.is === 'refused', from);
    expect(refused).toMatchObject({ is: 'refused', why, code: refusals[why] });
    expect(refused.is === 'refused' && refused.words.length).toBeGreaterThan(8);
    page.close();
  });

  it('drops a page that sends more than a frame may hold, and lives on', async () => {
    const page = await new Page(running.url).opened();
    const closed = new Promise<number>((resolve) => page.ws.once('close', resolve));
    page.send('x'.repeat(80 * 1024));
    expect(await closed).toBe(1009);
    expect((await fetch(running.url)).status).toBe(200);
  });

  it('refuses a flood by code and goes on serving others', async () => {
    const flood = await new Page(running.url).opened();
    for (let i = 0; i < 200; i += 1) flood.send({ is: 'list' });
    expect(await flood.until((f) => f.is === 'refused')).toMatchObject({ why: 'too fast', code: refusals['too fast'] });
    const other = await new Page(running.url).opened();
    other.send({ is: 'open', session: 'flood-other', coach: 'juniper-38', by: 'KD' });
    expect(await other.note('flood-other', 'flood-note', '95 psi')).toMatchObject({ is: 'entries' });
    flood.close();
    other.close();
  });

  it('lets nobody in from another site or under another name', async () => {
    const { host } = new URL(running.url);
    expect(await status({ Origin: 'http://elsewhere.example' })).toBe(403);
    expect(await status({ Origin: `http://${host}`, Host: 'rebound.example' })).toBe(403);
    expect(await status({ Origin: `http://${host}` }, '/other')).toBe(404);
    expect(await status({ Origin: `http://${host}` })).toBe('open');
    expect((await fetch(running.url, { headers: { Origin: 'http://elsewhere.example' } })).status).toBe(403);
  });
});

describe('two pages on one session', () => {
  it('see the same entries in the same order', async () => {
    const a = await new Page(running.url).opened();
    const b = await new Page(running.url).opened();
    a.send({ is: 'open', session: 'two-pages', coach: 'juniper-38', by: 'KD' });
    await a.until((f) => f.is === 'entries');
    for (const page of [a, b]) page.send({ is: 'follow', session: 'two-pages', after: 0 });
    await a.until((f) => f.is === 'board');
    await b.until((f) => f.is === 'board');
    await Promise.all([
      a.note('two-pages', 'page-a-1', 'tank 95 psi'),
      b.note('two-pages', 'page-b-1', 'left rear 13 1/4'),
      a.note('two-pages', 'page-a-2', 'comp off'),
    ]);
    const seen = (page: Page): number[] => [
      ...new Set(page.frames.flatMap((f) => (f.is === 'entries' ? f.entries.map((e) => e.seq) : []))),
    ];
    await a.until((f) => f.is === 'entries' && f.entries.some((e) => e.seq === 7));
    await b.until((f) => f.is === 'entries' && f.entries.some((e) => e.seq === 7));
    expect(seen(a)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(seen(b)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    a.close();
    b.close();
  });
});

describe('downloads', () => {
  it('give the session as JSON and CSV, with a cell that a spreadsheet would run made harmless', async () => {
    const page = await new Page(running.url).opened();
    page.send({ is: 'open', session: 'downloads', coach: 'juniper-38', by: 'KD' });
    await page.until((f) => f.is === 'entries');
    await page.note('downloads', 'down-note-1', '=HYPERLINK("http://x") tank 95 psi');
    const csv = await (await fetch(`${running.url}session/downloads.csv`)).text();
    expect(csv).toContain(`"'=HYPERLINK(""http://x"") tank 95 psi"`);
    expect(csv).toContain('tank,95,psi');
    const json = (await (await fetch(`${running.url}session/downloads.json`)).json()) as { entries: { is: string }[] };
    expect(json.entries.map((e) => e.is)).toEqual(['opened', 'note', 'reply']);
    expect((await fetch(`${running.url}session/nobody-here.csv`)).status).toBe(404);
    page.close();
  });

  it('keeps pictures by their content and refuses what is none', async () => {
    const png = Buffer.from(
      'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
      'base64',
    );
    const put = await fetch(`${running.url}photos`, { method: 'PUT', body: png });
    expect(put.status).toBe(201);
    const { id } = (await put.json()) as { id: string };
    expect(Buffer.from(await (await fetch(`${running.url}photos/${id}`)).arrayBuffer()).equals(png)).toBe(true);
    expect((await fetch(`${running.url}photos`, { method: 'PUT', body: '<svg onload=alert(1)>' })).status).toBe(415);
    expect((await fetch(`${running.url}photos`, { method: 'PUT', body: Buffer.alloc(7 * 1024 * 1024) })).status).toBe(
      413,
    );
    expect((await fetch(`${running.url}photos/..%2f..%2fpackage.json`)).status).toBe(404);
  });
});
