/** Wires the house and listens. Clock, ids, paths and ports enter here. One clear line for each way it cannot start. */
import { createHash, randomInt } from 'node:crypto';
import { accessSync, constants, mkdirSync, readFileSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { createServer as createTlsServer } from 'node:https';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeCodes } from './auth/codes.ts';
import { tokenOf } from './auth/cookie.ts';
import { DevicesRefused, openDevices } from './auth/devices.ts';
import { bench } from './auth/roles.ts';
import { TlsRefused } from './auth/shop-tls.ts';
import { makeSecret, removeBench, writeBench } from './backup/bench-file.ts';
import { makeBoards } from './boards.ts';
import { makeDesk } from './desk.ts';
import type { Door } from './house.ts';
import { makeHttp } from './http.ts';
import { openLog } from './log/open.ts';
import { LogRefused } from './log/refused.ts';
import { openUp, type Opened } from './open-up.ts';
import type { Pairing } from './pairing.ts';
import { makeShelf } from './shelf.ts';
import { makeShop } from './shop.ts';
import { usualPhotos } from './photos.ts';
import { attachSocket, type Sockets } from './socket.ts';
import { warmUp } from './warm.ts';

const fail = (words: string): never => {
  console.error(`soapwater: ${words}`);
  process.exit(1);
};
const orFail = <T>(work: () => T, ...kinds: (new (...args: never[]) => Error)[]): T => {
  try {
    return work();
  } catch (error) {
    if (kinds.some((kind) => error instanceof kind)) return fail((error as Error).message);
    throw error;
  }
};
const portFrom = (name: string, usual: number): number => {
  const port = Number(process.env[name] ?? usual);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    fail(`${name} is "${process.env[name]}": it must be a number from 0 to 65535`);
  return port;
};

/** Megabytes that all pictures together may take. */
const pictures = Number(process.env['PICTURES'] ?? usualPhotos.all / 2 ** 20);
if (!(pictures >= 0)) fail(`PICTURES is "${process.env['PICTURES']}": it must be a number of megabytes`);
const photoLimits = { ...usualPhotos, all: pictures * 2 ** 20 };

const here = fileURLToPath(new URL('.', import.meta.url));
const root = process.env['SOAPWATER_ROOT'] ?? join(here, '..', '..');
const data = process.env['DATA'] ?? join(root, '.data');
const port = portFrom('PORT', 4280);

try {
  mkdirSync(data, { recursive: true });
  accessSync(data, constants.W_OK);
  if (!statSync(data).isDirectory()) throw new Error('not a folder');
} catch {
  fail(`the data folder ${data} cannot be written; set DATA to another one`);
}

const shelf = makeShelf([join(root, 'fixtures', 'sheets'), join(data, 'sheets')], Date.now);
const shop = makeShop(join(data, 'shop', 'settings.json'), (words) =>
  shelf.refused.push({ file: "the shop's settings", words }),
);
for (const { file, words } of shelf.refused) console.error(`soapwater: ${file}: ${words}`);

/** Of this file; those it is built from are named in it by their hash. */
const engine = createHash('sha256')
  .update(readFileSync(fileURLToPath(import.meta.url)))
  .digest('hex')
  .slice(0, 16);

const log = await openLog(join(data, 'soapwater.db'), new URL('./log-thread.js', import.meta.url), fail).catch(
  (error: unknown) => (error instanceof LogRefused ? fail(error.message) : Promise.reject(error)),
);
const desk = makeDesk({ log, sheets: shelf.sheets, refusedSheets: shelf.refused, engine, now: Date.now });
const boards = makeBoards(desk, Date.now);
const devices = orFail(() => openDevices(join(data, 'devices.json'), Date.now), DevicesRefused);
const opened: Opened | null =
  process.env['OPEN'] === '1'
    ? orFail(
        () =>
          openUp({
            data,
            port: portFrom('SHOP_PORT', port === 0 ? 0 : port + 1),
            name: process.env['SHOP_NAME'],
            cert: process.env['CERT'],
            key: process.env['KEY'],
            now: Date.now(),
          }),
        TlsRefused,
      )
    : null;

const sockets: Sockets[] = [];
let address: string | null = null;
const pairing: Pairing = {
  codes: makeCodes(Date.now, randomInt),
  devices,
  address: () => address,
  authority: opened?.tls.authority ?? null,
  fingerprint: opened?.tls.fingerprint ?? '',
  drop: (device) => sockets.forEach((s) => s.drop(device)),
};

/** Listens, or ends with one line; resolves to the port. */
const listen = (server: Server, wanted: number, host: string | undefined): Promise<number> =>
  new Promise((resolve) => {
    server.headersTimeout = 10_000;
    server.requestTimeout = 60_000;
    server.maxConnections = 1000;
    server.once('error', (error: NodeJS.ErrnoException) => {
      fail(
        error.code === 'EADDRINUSE'
          ? `port ${wanted} is taken: stop what listens there, or set PORT to another one`
          : error.code === 'EACCES'
            ? `port ${wanted} may not be used: set PORT to one above 1023`
            : error.message,
      );
    });
    server.listen(wanted, host, () => {
      const at = server.address();
      resolve(typeof at === 'object' && at ? at.port : wanted);
    });
  });

const page = join(root, '.build', 'page');
const photos = join(data, 'photos');
const secret = makeSecret();

let benchHosts: readonly string[] = [];
const benchDoor: Door = { hosts: () => benchHosts, who: () => bench };
const benchServer = createServer(
  makeHttp({
    desk,
    shelf,
    shop,
    page,
    photos,
    photoLimits,
    pairing,
    door: benchDoor,
    bench: { secret, copy: log.backup },
  }),
);
sockets.push(attachSocket(benchServer, { desk, boards, now: Date.now, door: benchDoor }));
const servers: Server[] = [benchServer];
const actual = await listen(benchServer, port, '127.0.0.1');
benchHosts = ['127.0.0.1', 'localhost'].flatMap((h) => (actual === 80 ? [h, `${h}:80`] : [`${h}:${actual}`]));
try {
  writeBench(data, { port: actual, secret, pid: process.pid });
} catch {
  // what was kept can be read, so it serves
  console.error(
    `soapwater: nothing can be written in ${data}: make room there; until then notes are refused, and backup, pack and unpack do not find this server`,
  );
}

if (opened) {
  let shopHosts: readonly string[] = [];
  const shopDoor: Door = { hosts: () => shopHosts, who: (request) => devices.who(tokenOf(request.headers.cookie)) };
  const shopServer = createTlsServer(
    { cert: opened.tls.cert, key: opened.tls.key, minVersion: 'TLSv1.2', handshakeTimeout: 10_000 },
    makeHttp({ desk, shelf, shop, page, photos, photoLimits, pairing, door: shopDoor }),
  );
  sockets.push(attachSocket(shopServer, { desk, boards, now: Date.now, door: shopDoor }));
  servers.push(shopServer);
  const shopPort = await listen(shopServer, opened.port, undefined);
  shopHosts = opened.hosts(shopPort);
  address = opened.address(shopPort);
}
const inShop = address === null ? '' : ` and ${address} in the shop (pair devices at http://127.0.0.1:${actual}/bench)`;
console.log(`soapwater: http://127.0.0.1:${actual}/${inShop}`);
setTimeout(() => void warmUp(shelf.sheets).catch(() => undefined), 100);

const end = (): void => {
  for (const socket of sockets) socket.end();
  for (const server of servers) server.close();
  removeBench(data);
  void log.close().then(() => process.exit(0));
};
process.on('SIGTERM', end);
process.on('SIGINT', end);
