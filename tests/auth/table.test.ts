/** Who may do what, as one table: every frame and every route, by each role and by a device that is not paired. */
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request, type Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Express } from 'express';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { WebSocket } from 'ws';
import { makeCodes } from '../../server/auth/codes.ts';
import { openDevices } from '../../server/auth/devices.ts';
import { bench, type Role, roles, type Who } from '../../server/auth/roles.ts';
import { makeBoards } from '../../server/boards.ts';
import { FromPage, type ToPage } from '../../server/chat/protocol.ts';
import { makeDesk, type Desk } from '../../server/desk.ts';
import type { Door } from '../../server/house.ts';
import { makeHttp } from '../../server/http.ts';
import { memoryLog } from '../../server/log/memory.ts';
import { csvCell } from '../../server/report/csv.ts';
import { makeShelf } from '../../server/shelf.ts';
import { makeShop } from '../../server/shop.ts';
import { attachSocket, type Sockets, type SocketLimits, usualLimits } from '../../server/socket.ts';
import { Page, root } from '../start/server.ts';

const png = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);
const hashOf = (bytes: Buffer): string => createHash('sha256').update(bytes).digest('hex');

type House = {
  host: string;
  desk: Desk;
  app: Express;
  sockets: Sockets;
  clock: { now: number };
  /** Devices that the door lets in, by the value of their cookie. */
  in: Map<string, Who>;
  stop: () => void;
};
/** A house with one door; `own`: the bench's, else the shop's, where a cookie says who comes. */
const build = async (own: boolean, limits: Partial<SocketLimits> = {}, pictures = 1000): Promise<House> => {
  const data = mkdtempSync(join(tmpdir(), 'soapwater-table-'));
  const clock = { now: Date.now() };
  const now = (): number => clock.now;
  const shelf = makeShelf([join(root, 'fixtures', 'sheets'), join(data, 'sheets')], now);
  const desk = makeDesk({ log: memoryLog(), sheets: shelf.sheets, engine: 'test', now });
  const boards = makeBoards(desk, now);
  const inside = new Map(roles.map((role): [string, Who] => [role, { role, device: `phone-${role}`, name: role }]));
  let host = '';
  const door: Door = {
    hosts: () => [host],
    who: (r) => (own ? bench : (inside.get(/who=([\w-]+)/.exec(r.headers.cookie ?? '')?.[1] ?? '') ?? null)),
  };
  writeFileSync(join(data, 'index.html'), '<!doctype html><title>page</title>');
  const app = makeHttp({
    desk,
    shelf,
    shop: makeShop(join(data, 'shop.json'), () => undefined),
    page: data,
    photos: join(data, 'photos'),
    photoLimits: { all: pictures, free: 0 },
    door,
    pairing: {
      codes: makeCodes(now, (below) => Math.floor(below / 2)),
      devices: openDevices(join(data, 'devices.json'), now),
      address: () => 'https://bench.local/',
      authority: 'certificate',
      fingerprint: 'AA',
      drop: () => undefined,
    },
    ...(own ? { bench: { secret: 'secret-of-the-bench', copy: async () => undefined } } : {}),
  });
  const server: Server = createServer(app);
  const sockets = attachSocket(server, { desk, boards, now, door, limits: { ...usualLimits, ...limits } });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const at = server.address();
  host = `127.0.0.1:${typeof at === 'object' && at ? at.port : 0}`;
  return {
    host,
    desk,
    app,
    sockets,
    clock,
    in: inside,
    stop: () => {
      sockets.end();
      server.close();
      server.closeAllConnections();
      rmSync(data, { recursive: true, force: true });
    },
  };
};

type Asked = { body?: string | Buffer; headers?: Record<string, string> };
type Answer = { status: number; text: string; headers: NodeJS.Dict<string | string[]> };
/** By hand, so that a path goes out as it is written. */
const ask = ({ host }: House, how: string, who: string | null, { body = '', headers = {} }: Asked = {}) =>
  new Promise<Answer>((resolve, reject) => {
    const [method, path] = how.split(' ');
    const sent = request(
      {
        host: '127.0.0.1',
        port: host.split(':')[1],
        method,
        path,
        headers: {
          Host: host,
          Accept: 'application/json',
          'Content-Length': Buffer.byteLength(body),
          ...(who === null ? {} : { Cookie: `who=${who}` }),
          ...headers,
        },
      },
      (response) => {
        let text = '';
        response.on('data', (d: Buffer) => (text += d.toString()));
        response.on('end', () => resolve({ status: response.statusCode ?? 0, text, headers: response.headers }));
      },
    );
    sent.on('error', reject);
    sent.end(body);
  });
const form = { 'Content-Type': 'application/x-www-form-urlencoded' };
const enter = (house: House, who: string): Page => new Page(`http://${house.host}/`, { Cookie: `who=${who}` });
const knock = (house: House, who: string): Promise<number> =>
  new Promise((resolve) => {
    const ws = new WebSocket(`ws://${house.host}/socket`, {
      headers: { Origin: `http://${house.host}`, Cookie: `who=${who}` },
    });
    ws.on('open', () => resolve(101));
    ws.on('unexpected-response', (_request, response) => (resolve(response.statusCode ?? 0), ws.terminate()));
    ws.on('error', () => undefined);
  });
/** Every route an app answers, as "METHOD /path". */
const routesOf = (app: Express): string[] =>
  (app.router.stack as unknown as { route?: { path: string; methods: Record<string, boolean> } }[]).flatMap(
    ({ route }) => (route ? Object.keys(route.methods).map((m) => `${m.toUpperCase()} ${route.path}`) : []),
  );

let shop: House;
beforeAll(async () => {
  shop = await build(false);
});
afterAll(() => shop.stop());
const real = 'table-real';
const practice = 'table-practice';

const all = [200, 200, 200] as const;
/** Status for works, reviews, learns; `open`: for one that is not paired, else 401. */
type Row = { at?: string; asked?: Asked; of: readonly [number, number, number]; open?: number };
const routes: Readonly<Record<string, Row>> = {
  'GET /session/:id.json': { at: `/session/${real}.json`, of: all },
  'GET /session/:id.csv': { at: `/session/${real}.csv`, of: all },
  'GET /session/:id.pack': { at: `/session/${real}.pack`, of: [200, 200, 403] },
  'GET /paper/session/:session/report': { at: `/paper/session/${real}/report`, of: all },
  'GET /paper/session/:session/estimate': { at: `/paper/session/${real}/estimate`, of: all },
  'GET /paper/session/:session/specs': { at: `/paper/session/${real}/specs`, of: all },
  'GET /paper/coach/:coach/history': { at: '/paper/coach/juniper-38/history', of: all },
  'GET /coach/:coach.ics': { at: '/coach/juniper-38.ics', of: all },
  'GET /paper/coach/:coach/sheet': { at: '/paper/coach/juniper-38/sheet', of: all },
  'GET /paper/sheet/:hash': { at: `/paper/sheet/${'0'.repeat(64)}`, of: [404, 404, 404] },
  'POST /paper/sheet/check': { asked: { body: '{}' }, of: all },
  'PUT /paper/sheet': { asked: { body: '{"sheet":{}}' }, of: [422, 403, 403] },
  'GET /paper/shop': { of: all },
  'PUT /paper/shop': { asked: { body: '{"v":1}' }, of: [200, 403, 403] },
  'GET /schema/:name.json': { at: '/schema/session-1.json', of: all },
  'PUT /photos': { asked: { body: png }, of: [201, 403, 403] },
  'GET /photos/:photo': { at: `/photos/${hashOf(png)}`, of: all },
  'GET /pair.css': { of: all, open: 200 },
  'GET /pair': { of: all, open: 200 },
  'POST /pair': { asked: { body: 'code=AAAAAA&name=x', headers: form }, of: [403, 403, 403], open: 403 },
  'GET /shop.crt': { of: all, open: 200 },
};
/** On the bench's own door besides those, all of them out of the shop's reach. */
const benchOnly: Readonly<Record<string, Asked>> = {
  'GET /bench': {},
  'POST /bench/code': { body: 'role=works', headers: form },
  'POST /bench/revoke': { body: 'id=x', headers: form },
  'POST /bench/copy': { body: '/tmp/x' },
  'POST /bench/unpack': { body: '{}' },
};

type Is = FromPage['is'];
type Taken = 'taken' | 'not allowed';
/** For works, reviews, learns; on a coach's session and on one of practice. */
const frames: Readonly<Record<Is, Readonly<Record<Role, readonly [Taken, Taken]>>>> = (() => {
  const [yes, no] = [['taken', 'taken'] as const, ['not allowed', 'not allowed'] as const];
  const onlyPractice = ['not allowed', 'taken'] as const;
  const reads = { works: yes, reviews: yes, learns: yes };
  const writes = { works: yes, reviews: no, learns: onlyPractice };
  return {
    hello: reads,
    follow: reads,
    earlier: reads,
    list: reads,
    ask: reads,
    open: writes,
    note: writes,
    remark: { works: yes, reviews: yes, learns: onlyPractice },
    close: writes,
    reopen: writes,
    estimate: writes,
    decide: writes,
    resheet: { works: yes, reviews: no, learns: no },
  };
})();

describe('every route', () => {
  it('stands in the table', async () => {
    const own = await build(true);
    expect(routesOf(shop.app).toSorted()).toEqual(Object.keys(routes).toSorted());
    const pairing = ['GET /pair', 'POST /pair', 'GET /shop.crt'];
    const wanted = Object.keys(routes).filter((r) => !pairing.includes(r));
    expect(routesOf(own.app).toSorted()).toEqual([...wanted, ...Object.keys(benchOnly)].toSorted());
    own.stop();
  });

  it.each(Object.entries(routes))('%s answers each role as the table says', async (route, { at, asked, of, open }) => {
    if (!(await shop.desk.sessions({})).some((s) => s.session === real))
      await shop.desk.open({ session: real, coach: 'juniper-38', by: 'KD' });
    const how = at === undefined ? route : `${route.split(' ')[0]} ${at}`;
    if (route === 'GET /photos/:photo') await ask(shop, 'PUT /photos', 'works', { body: png });
    const statuses: number[] = [];
    for (const role of roles) statuses.push((await ask(shop, how, role, asked)).status);
    expect(statuses).toEqual(of);
    for (const stranger of [null, 'nobody', 'x'.repeat(500)])
      expect((await ask(shop, how, stranger, asked)).status).toBe(open ?? 401);
  });

  it.each(Object.entries(benchOnly))('%s is out of the reach of the shop', async (how, asked) => {
    expect((await ask(shop, how, null, asked)).status).toBe(401);
    for (const role of roles) expect((await ask(shop, how, role, asked)).status).toBe(404);
  });

  it('answers no other name and no other site, and every answer carries the safe headers', async () => {
    for (const how of ['GET /', 'GET /pair', 'GET /paper/shop', 'PUT /paper/shop', 'PUT /photos']) {
      for (const headers of [
        { Host: 'rebound.example' },
        { Host: `rebound.example:${shop.host.split(':')[1]}` },
        { Origin: 'https://elsewhere.example' },
        { Origin: 'null' },
        { Origin: `http://${shop.host}.elsewhere.example` },
        { 'Sec-Fetch-Site': 'cross-site', 'Sec-Fetch-Mode': 'no-cors' },
        { 'Sec-Fetch-Site': 'same-site', 'Sec-Fetch-Mode': 'cors' },
      ] as Record<string, string>[])
        expect([how, headers, (await ask(shop, how, 'works', { headers })).status]).toEqual([how, headers, 403]);
      const { headers } = await ask(shop, how, 'works');
      const policy = String(headers['content-security-policy']);
      expect(policy).toMatch(/default-src 'none'.*frame-ancestors 'none'/);
      expect(policy).not.toMatch(/unsafe|\*|https?:/);
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['referrer-policy']).toBe('no-referrer');
      expect(headers['cross-origin-resource-policy']).toBe('same-origin');
      expect(headers['x-powered-by']).toBeUndefined();
      expect(headers['access-control-allow-origin']).toBeUndefined();
    }
  });

  it('gives nothing from outside its folder, however the way out is written', async () => {
    for (const path of [
      '/../package.json',
      '/..%2fpackage.json',
      '/%2e%2e/package.json',
      '/assets/..%2f..%2f..%2fetc/passwd',
      '/assets/%2e%2e%5c%2e%2e%5cpackage.json',
      '/photos/..%2f..%2f..%2fetc%2fpasswd',
      '/photos/%2e%2e',
      '/session/..%2f..%2fdevices.json',
      '/session/%2e%2e%2fdevices.json',
      '/paper/coach/..%2f..%2fx/sheet',
      '/coach/..%2f..%2fx.ics',
      '/paper/session/../../x/report',
      '/%00',
      '/devices.json%00.html',
      '/.part',
      '//etc/passwd',
    ]) {
      const { status, text } = await ask(shop, `GET ${path}`, 'works');
      expect([path, status < 500 && status >= 300]).toEqual([path, true]);
      expect(text).not.toMatch(/root:|"version"|"devices"/);
    }
  });
});

describe('pictures', () => {
  it('are limited all together, the same one again is not counted twice, and room made by hand is seen', async () => {
    const other = Buffer.concat([png, Buffer.alloc(40)]);
    const house = await build(false, {}, png.length + 20);
    for (let i = 0; i < 2; i += 1) expect((await ask(house, 'PUT /photos', 'works', { body: png })).status).toBe(201);
    const full = await ask(house, 'PUT /photos', 'works', { body: other });
    expect(full.status).toBe(413);
    expect(full.text).toMatch(/^All pictures together may take .* Notes are kept as ever/);
    const folder = /out of (\S+),/.exec(full.text)![1]!;
    rmSync(join(folder, hashOf(png)));
    expect((await ask(house, 'PUT /photos', 'works', { body: other })).status).toBe(413);
    expect((await ask(house, 'PUT /photos', 'works', { body: png })).status).toBe(201);
    house.stop();
  });
});

describe('every frame', () => {
  it('stands in the table', () => {
    const kinds = FromPage.def.options.map((o) => String([...o.def.shape.is.def.values][0]));
    expect(Object.keys(frames).toSorted((a, b) => a.localeCompare(b))).toEqual(
      kinds.toSorted((a, b) => a.localeCompare(b)),
    );
  });

  it.each(roles)(
    'is taken from a device that %s as the table says; what is not leaves the log as it was',
    async (role) => {
      const house = await build(false);
      for (const [session, level] of [
        [real, undefined],
        [practice, 1],
      ] as const)
        await house.desk.open({ session, coach: 'juniper-38', by: 'KD', practice: level });
      const lines = [{ id: 'line-1', words: 'new bellows', parts: [], hands: 60, wait: 0 }];
      const about = new Map<string, number>();
      for (const session of [real, practice])
        about.set(session, (await house.desk.estimate(session, 'KD', { lines })).at(-1)!.seq);
      const sheet = house.desk.sheet('juniper-38')!.hash;
      const page = await enter(house, role).opened();
      const got: Record<string, [string, string]> = {};
      const written: string[] = [];
      let n = 0;
      for (const is of Object.keys(frames) as Is[])
        for (const [i, session] of [real, practice].entries()) {
          n += 1;
          const id = `note-${role}-${n}`;
          // frames of one page are taken in order: the answer to a question after it shows that it is done
          const rest: Record<Is, object> = {
            hello: { v: 1, session: undefined },
            follow: { after: 0 },
            earlier: { before: 2, most: 1 },
            list: { session: undefined },
            ask: { id, text: 'summary' },
            open: { session: `new-${role}-${n}`, coach: 'juniper-38', by: 'KD', ...(i === 1 ? { practice: 1 } : {}) },
            note: { id, text: 'tank 95 psi', at: house.clock.now, seen: 0, by: 'KD' },
            remark: { about: 1, text: 'seen', by: 'KD' },
            close: { signed: 'KD', words: '' },
            reopen: { words: '', by: 'KD' },
            estimate: { by: 'KD', lines },
            decide: { by: 'KD', about: about.get(session), line: 'line-1', yes: true, name: 'owner', words: '' },
            resheet: { by: 'KD', sheet },
          };
          const before = JSON.stringify([await house.desk.read(session), (await house.desk.sessions({})).length]);
          const from = page.frames.length;
          page.send({ is, session, ...rest[is] });
          page.send({ is: 'ask', session: null, id: `sync-${role}-${n}`, text: 'psi' });
          await page.until((f) => f.is === 'answer' && f.id === `sync-${role}-${n}`, from);
          const refused = page.frames
            .slice(from)
            .find((f): f is Extract<ToPage, { is: 'refused' }> => f.is === 'refused');
          (got[is] ??= ['', ''])[i] = refused?.why ?? 'taken';
          const after = JSON.stringify([await house.desk.read(session), (await house.desk.sessions({})).length]);
          if (refused && after !== before) written.push(`${is} of ${session}`);
          house.clock.now += 10_000;
        }
      expect(got).toEqual(Object.fromEntries(Object.entries(frames).map(([is, of]) => [is, [...of[role]]])));
      expect(written).toEqual([]);
      page.close();
      house.stop();
    },
  );

  it('is taken from nobody who is not paired', async () => {
    for (const stranger of ['nobody', '', 'works2']) expect(await knock(shop, stranger)).toBe(401);
  });
});

describe('a device with many pages', () => {
  it('has no more of them than it may, and others come in', async () => {
    const house = await build(false, { pagesOfDevice: 2 });
    expect([await knock(house, 'learns'), await knock(house, 'learns'), await knock(house, 'learns')]).toEqual([
      101, 101, 429,
    ]);
    expect(await knock(house, 'works')).toBe(101);
    house.stop();
  });

  it('opens no more sessions by connecting again, and sends no more by many pages', async () => {
    const house = await build(false, { openBurst: 1, burst: 10 });
    const open = async (n: number): Promise<Page> => {
      const page = await enter(house, 'works').opened();
      page.send({ is: 'open', session: `again-${n}x`, coach: 'juniper-38', by: 'KD' });
      await page.until((f) => f.is === 'entries' || f.is === 'refused');
      return page;
    };
    const first = await open(1);
    expect(first.frames.at(-1)).toMatchObject({ is: 'entries' });
    first.close();
    const second = await open(2);
    expect(second.frames.at(-1)).toMatchObject({ is: 'refused', why: 'too fast' });
    for (let i = 0; i < 8; i += 1) second.send({ is: 'list' });
    expect(await second.until((f) => f.is === 'refused' && f.words.startsWith('Too many frames'))).toBeTruthy();
    // another device has its own
    const other = await enter(house, 'reviews').opened();
    other.send({ is: 'list' });
    await other.until((f) => f.is === 'sessions');
    for (const page of [second, other]) page.close();
    house.stop();
  });
});

describe('a device whose token ended while it was connected', () => {
  const closed = (page: Page): Promise<void> => new Promise((resolve) => page.ws.once('close', () => resolve()));

  it('is put out at its next frame, and the frame is not taken', async () => {
    const house = await build(false);
    const page = await enter(house, 'works').opened();
    page.send({ is: 'open', session: real, coach: 'juniper-38', by: 'KD' });
    await page.until((f) => f.is === 'entries');
    house.in.delete('works');
    const gone = closed(page);
    page.send({ is: 'remark', session: real, about: 1, text: 'too late', by: 'KD' });
    await gone;
    expect((await house.desk.read(real)).map((e) => e.is)).toEqual(['opened']);
    house.stop();
  });

  it('is put out though it says nothing, and hears no more', async () => {
    const house = await build(false, { silence: 60 });
    const page = await enter(house, 'reviews').opened();
    const gone = closed(page);
    house.in.delete('reviews');
    await gone;
    house.stop();
  });

  it('has its frames that wait dropped when it is revoked', async () => {
    const house = await build(false);
    const page = await enter(house, 'works').opened();
    page.send({ is: 'open', session: real, coach: 'juniper-38', by: 'KD' });
    await page.until((f) => f.is === 'entries');
    const gone = closed(page);
    for (let n = 0; n < 40; n += 1)
      page.send({ is: 'note', session: real, id: `late-note-${n}`, text: 'tank 95', at: 0, seen: 0, by: 'KD' });
    house.in.delete('works');
    house.sockets.drop('phone-works');
    await gone;
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect((await house.desk.read(real)).length).toBeLessThan(4);
    house.stop();
  });
});

describe('a cell of a CSV', () => {
  it('is no formula, whatever stands before it', () => {
    for (const cell of ['=1+1', '+1+1', '-1+1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', ' =1', '＝1+1', '＠x'])
      expect(csvCell(cell).replace(/^"/, '').startsWith("'")).toBe(true);
    for (const cell of ['-5', '+13.25', '95', 'left rear 13-1/4']) expect(csvCell(cell)).toBe(cell);
  });
});
