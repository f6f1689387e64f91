/** A server that is open to the shop: who gets in, what each role may do, and how one is put out. */
import { readFileSync } from 'node:fs';
import { request } from 'node:https';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { WebSocket } from 'ws';
import { mayFrame, type Role, roles } from '../../server/auth/roles.ts';
import type { FromPage, ToPage } from '../../server/chat/protocol.ts';
import { cleanUp, Page, type Running, startServer } from '../start/server.ts';

const name = 'bench.local';
let running: Running;
let shop: URL;
let ca: string;
beforeAll(async () => {
  running = await startServer(undefined, { OPEN: '1', SHOP_NAME: name });
  shop = new URL(/https:\/\/\S+/.exec(running.said())![0]);
  ca = readFileSync(join(running.data, 'tls', 'shop.crt'), 'utf8');
}, 120_000);
afterAll(async () => {
  await running?.stop();
  if (running) cleanUp(running.data);
});

type Asked = { method?: string; headers?: Record<string, string>; body?: string };
type Answer = { status: number; headers: NodeJS.Dict<string | string[]>; text: string };
/** Asks the shop's door by its name, over TLS that is verified. */
const ask = (path: string, { method = 'GET', headers = {}, body = '' }: Asked = {}): Promise<Answer> =>
  new Promise((resolve, reject) => {
    const length = Buffer.byteLength(body);
    const sent = request(
      {
        host: '127.0.0.1',
        port: shop.port,
        servername: name,
        ca,
        path,
        method,
        headers: { Host: shop.host, Accept: 'text/html', 'Content-Length': length, ...headers },
      },
      (response) => {
        let text = '';
        response.on('data', (d: Buffer) => (text += d.toString()));
        response.on('end', () => resolve({ status: response.statusCode ?? 0, headers: response.headers, text }));
      },
    );
    sent.on('error', reject);
    sent.end(body);
  });
const form = (fields: Record<string, string>, origin = shop.origin): Asked => ({
  method: 'POST',
  headers: { 'Content-Type': 'application/x-www-form-urlencoded', Origin: origin },
  body: new URLSearchParams(fields).toString(),
});
const benchForm = (path: string, fields: Record<string, string>): Promise<Response> =>
  fetch(`${running.url}${path}`, {
    method: 'POST',
    redirect: 'manual',
    headers: { Origin: running.url.slice(0, -1) },
    body: new URLSearchParams(fields),
  });
const codeFor = async (role: Role): Promise<string> => {
  await benchForm('bench/code', { role });
  return /<p class="code">([^<]+)</.exec(await (await fetch(`${running.url}bench`)).text())![1]!;
};
const pairAs = async (role: Role): Promise<{ cookie: string; flags: string }> => {
  const answer = await ask('/pair', form({ code: await codeFor(role), name: `phone that ${role}` }));
  expect(answer.status).toBe(303);
  const flags = String(answer.headers['set-cookie']);
  return { cookie: flags.split(';')[0]!, flags };
};
const doorHeaders = (cookie?: string): Record<string, string> => ({
  Host: shop.host,
  Origin: shop.origin,
  ...(cookie === undefined ? {} : { Cookie: cookie }),
});
const pageOf = (cookie: string): Page =>
  new Page(`https://127.0.0.1:${shop.port}/`, doorHeaders(cookie), { ca, servername: name });
const upgrade = (headers: Record<string, string>): Promise<number> =>
  new Promise((resolve) => {
    const tls = { ca, servername: name };
    const ws = new WebSocket(`wss://127.0.0.1:${shop.port}/socket`, { headers, ...tls });
    ws.on('open', () => (resolve(101), ws.terminate()));
    ws.on('unexpected-response', (_request, response) => (resolve(response.statusCode ?? 0), ws.terminate()));
    ws.on('error', () => undefined);
  });

describe('a device that is not paired', () => {
  it('sees the page of pairing and the certificate, and nothing else', async () => {
    expect(shop.hostname).toBe(name);
    for (const path of ['/', '/session/any-session', '/assets/none.js'])
      expect((await ask(path)).headers['location']).toBe('/pair');
    const json = { headers: { Accept: 'application/json' } };
    expect((await ask('/session/any-session.json', json)).status).toBe(401);
    expect((await ask('/photos', { method: 'PUT', body: 'x' })).status).toBe(401);
    expect((await ask('/pair')).text).toContain('Pair this device');
    expect((await ask('/shop.crt')).text).toBe(ca);
    expect(await upgrade(doorHeaders())).toBe(401);
    expect(await upgrade(doorHeaders(`soapwater=${'x'.repeat(43)}`))).toBe(401);
  });

  it('cannot reach what is the bench alone, nor ask under another name or from another site', async () => {
    for (const path of ['/bench', '/bench/code', '/bench/copy'])
      expect((await ask(path)).headers['location']).toBe('/pair');
    expect((await ask('/bench/code', form({ role: 'works' }))).status).toBe(401);
    expect((await ask('/pair', { headers: { Host: `rebound.example:${shop.port}` } })).status).toBe(403);
    expect((await ask('/pair', form({ code: 'x', name: 'x' }, 'https://elsewhere.example'))).status).toBe(403);
  });

  it('does not find the bench door on the network', async () => {
    const address = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .find((i) => !i.internal && i.family === 'IPv4')?.address;
    // on a machine without a network there is no such door to try
    if (address === undefined) return;
    const outcome = await new Promise((resolve) => {
      const socket = connect(Number(new URL(running.url).port), address, () => (resolve('open'), socket.destroy()));
      socket.on('error', (error: NodeJS.ErrnoException) => resolve(error.code));
    });
    expect(outcome).toBe('ECONNREFUSED');
  });

  it('is told that a code is wrong, and a code is good once', async () => {
    expect((await ask('/pair', form({ code: 'AAA-AAA', name: 'x' }))).status).toBe(403);
    const code = await codeFor('works');
    expect((await ask('/pair', form({ code, name: '' }))).status).toBe(400);
    expect((await ask('/pair', form({ code, name: 'one' }))).status).toBe(303);
    expect((await ask('/pair', form({ code, name: 'two' }))).status).toBe(403);
  });
});

describe('a paired device', () => {
  it('gets a cookie that no script, no other site and no plain http can use; only its hash is kept', async () => {
    const { cookie, flags } = await pairAs('works');
    expect(flags).toContain('; HttpOnly; Secure; SameSite=Strict');
    expect((await ask('/', { headers: { Cookie: cookie } })).status).toBe(200);
    const kept = readFileSync(join(running.data, 'devices.json'), 'utf8');
    expect(kept).not.toContain(cookie.slice('soapwater='.length));
  });

  it.each(roles)('that %s may do what the table says, and nothing is written by what it may not', async (role) => {
    const { cookie } = await pairAs(role);
    const page = await pageOf(cookie).opened();
    const welcome = page.frames.find((f) => f.is === 'welcome');
    expect(welcome?.is === 'welcome' && welcome.role).toBe(role);
    const bench = await new Page(running.url).opened();
    const [real, practice] = [`real-${role}`, `practice-${role}`];
    bench.send({ is: 'open', session: real, coach: 'juniper-38', by: 'KD' });
    bench.send({ is: 'open', session: practice, coach: 'juniper-38', by: 'KD', practice: 1 });
    await bench.until((f) => f.is === 'entries' && f.session === practice);

    type Is = FromPage['is'];
    const tried = async (is: Is, session: string, rest: object, answer: (f: ToPage) => boolean): Promise<string> => {
      const from = page.frames.length;
      page.send({ is, session, ...rest });
      const got = await page.until((f) => answer(f) || f.is === 'refused', from);
      return got.is === 'refused' ? got.why : 'taken';
    };
    const entries = (f: ToPage): boolean => f.is === 'entries';
    let n = 0;
    const note = () => ({ id: `note-${role}-${(n += 1)}`, text: 'tank 95 psi', at: Date.now(), seen: 0, by: 'KD' });
    const may = (is: Is, session: string): string =>
      mayFrame(role, is) === 'yes' || (mayFrame(role, is) === 'in practice' && session === practice)
        ? 'taken'
        : 'not allowed';

    for (const session of [real, practice]) {
      expect(await tried('follow', session, { after: 0 }, (f) => f.is === 'board')).toBe('taken');
      const question = { id: `ask-${session}`, text: 'summary' };
      expect(await tried('ask', session, question, (f) => f.is === 'answer')).toBe('taken');
      expect(await tried('note', session, note(), entries)).toBe(may('note', session));
      const remark = { about: 1, text: 'seen', by: 'RV' };
      expect(await tried('remark', session, remark, entries)).toBe(may('remark', session));
      expect(await tried('close', session, { signed: 'KD', words: '' }, entries)).toBe(may('close', session));
      expect(await tried('reopen', session, { words: '', by: 'KD' }, entries)).toBe(may('reopen', session));
    }
    const own = { coach: 'juniper-38', by: 'KD' };
    expect(await tried('open', `own-${role}`, own, entries)).toBe(may('open', real));
    expect(await tried('open', `ownp-${role}`, { ...own, practice: 1 }, entries)).toBe(may('open', practice));

    const kept = (await (await fetch(`${running.url}session/${real}.json`)).json()) as { entries: { is: string }[] };
    const wanted = {
      works: ['opened', 'note', 'reply', 'remark', 'closed', 'reopened'],
      reviews: ['opened', 'remark'],
      learns: ['opened'],
    };
    expect(kept.entries.map((e) => e.is)).toEqual(wanted[role]);
    const packed = await ask(`/session/${real}.pack`, { headers: { Cookie: cookie } });
    expect(packed.status).toBe(role === 'learns' ? 403 : 200);
    const picture = await ask('/photos', { method: 'PUT', body: 'no picture', headers: doorHeaders(cookie) });
    expect(picture.status).toBe(role === 'works' ? 415 : 403);
    for (const [path, wrong] of [
      ['/paper/sheet', 422],
      ['/paper/shop', 422],
    ] as const) {
      const saved = await ask(path, { method: 'PUT', body: '{"v":2}', headers: doorHeaders(cookie) });
      expect(saved.status).toBe(role === 'works' ? wrong : 403);
    }
    expect((await ask(`/paper/session/${real}/report`, { headers: { Cookie: cookie } })).status).toBe(200);
    page.close();
    bench.close();
  });

  it('is out at once when it is revoked at the bench', async () => {
    const { cookie } = await pairAs('works');
    const page = await pageOf(cookie).opened();
    const list = await (await fetch(`${running.url}bench`)).text();
    const id = [...list.matchAll(/name="id" value="([0-9a-f]+)"/g)].at(-1)![1]!;
    const closed = new Promise((resolve) => page.ws.once('close', () => resolve('closed')));
    await benchForm('bench/revoke', { id });
    expect(await closed).toBe('closed');
    expect((await ask('/', { headers: { Cookie: cookie } })).headers['location']).toBe('/pair');
    expect(await upgrade(doorHeaders(cookie))).toBe(401);
    expect((await fetch(running.url)).status).toBe(200);
  });

  it('cannot guess its way in: pairing rests after twenty wrong codes', async () => {
    let status = 0;
    for (let i = 0; i < 25 && status !== 429; i += 1)
      ({ status } = await ask('/pair', form({ code: `WRONG${i}`, name: 'guesser' })));
    expect(status).toBe(429);
    expect((await ask('/pair', form({ code: await codeFor('works'), name: 'late' }))).status).toBe(429);
  });
});
