/** The pages and downloads over http: safe headers, no outside host, one table of routes. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { mkdir, rename, writeFile } from 'node:fs/promises';
import type { IncomingMessage } from 'node:http';
import { isAbsolute, join } from 'node:path';
import express, { type Express, type Request, type Response } from 'express';
import type { Desk } from './desk.ts';
import { Refused } from './desk.ts';
import { sessionCsv } from './report/csv.ts';

export type HttpOptions = {
  desk: Desk;
  page: string;
  photos: string;
  hosts: () => readonly string[];
  /** Writes a copy of the log to a file of this machine. */
  backup: (to: string) => Promise<void>;
  pack: (session: string) => Promise<string>;
};

/** Own scripts and styles only; sockets and pictures of this host; framed by nobody. */
export const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; font-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

const hostOf = (request: IncomingMessage): string => (request.headers.host ?? '').toLowerCase();

/**
 * True when the request was meant for this server and comes from its own page: a foreign Host is a rebound name, a
 * foreign Origin another site open in the same browser.
 */
export const sameHouse = (request: IncomingMessage, hosts: readonly string[]): boolean => {
  const host = hostOf(request);
  if (!hosts.includes(host)) return false;
  const origin = request.headers.origin;
  if (origin === undefined) return request.headers['sec-fetch-site'] !== 'cross-site';
  return hosts.some((h) => origin === `http://${h}` || origin === `https://${h}`);
};

const photoMost = 6 * 1024 * 1024;
const kinds: readonly (readonly [string, (b: Buffer) => boolean])[] = [
  ['image/jpeg', (b) => b.subarray(0, 3).equals(Buffer.from([0xff, 0xd8, 0xff]))],
  ['image/png', (b) => b.subarray(0, 8).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]))],
  [
    'image/webp',
    (b) => b.subarray(0, 4).toString('latin1') === 'RIFF' && b.subarray(8, 12).toString('latin1') === 'WEBP',
  ],
];
const kindOf = (bytes: Buffer): string | undefined => kinds.find(([, is]) => is(bytes))?.[0];

const session = (request: Request): string => {
  const id = request.params['id'];
  if (typeof id !== 'string' || !/^[a-z0-9-]{6,40}$/.test(id))
    throw new Refused('no such session', 'That is no session name.');
  return id;
};

export const makeHttp = ({ desk, page, photos, hosts, backup, pack }: HttpOptions): Express => {
  const app = express();
  app.disable('x-powered-by');
  app.use((request, response, next) => {
    response.setHeader('Content-Security-Policy', policy);
    response.setHeader('X-Content-Type-Options', 'nosniff');
    response.setHeader('Referrer-Policy', 'no-referrer');
    response.setHeader('Cross-Origin-Opener-Policy', 'same-origin');
    response.setHeader('Cross-Origin-Resource-Policy', 'same-origin');
    response.setHeader('Permissions-Policy', 'geolocation=(), microphone=(), payment=()');
    if (!sameHouse(request, hosts())) {
      response.status(403).type('text').send('This server answers its own page only.');
      return;
    }
    next();
  });

  const download = (response: Response, name: string, type: string, body: string): void => {
    response.setHeader('Content-Disposition', `attachment; filename="${name}"`);
    response.setHeader('Cache-Control', 'no-store');
    response.type(type).send(body);
  };
  app.get('/session/:id.json', async (request, response) => {
    const id = session(request);
    await desk.standing(id);
    download(
      response,
      `${id}.json`,
      'application/json',
      JSON.stringify({ v: 1, session: id, entries: await desk.read(id, 0, 1_000_000) }, null, 1),
    );
  });
  app.get('/session/:id.csv', async (request, response) => {
    const id = session(request);
    const standing = await desk.standing(id);
    download(response, `${id}.csv`, 'text/csv', sessionCsv(await desk.read(id, 0, 1_000_000), standing.zone));
  });

  app.get('/session/:id.pack', async (request, response) => {
    const id = session(request);
    await desk.standing(id);
    download(response, `${id}.soapwater.json`, 'application/json', await pack(id));
  });

  // asked by `npm run backup` while the server holds the file; never by a page, which always names its origin
  app.post('/backup', express.text({ type: () => true, limit: 4096 }), async (request, response) => {
    const to: unknown = request.body;
    if (request.headers.origin !== undefined || request.headers['sec-fetch-site'] !== undefined)
      return void response.status(403).type('text').send('Not from a page.');
    if (typeof to !== 'string' || !isAbsolute(to) || !to.endsWith('.db') || existsSync(to))
      return void response.status(400).type('text').send('Name a new file that ends in .db.');
    await backup(to);
    response.type('text').send(to);
  });

  app.put('/photos', express.raw({ type: () => true, limit: photoMost }), async (request, response) => {
    const bytes: unknown = request.body;
    if (!Buffer.isBuffer(bytes) || bytes.length === 0)
      return void response.status(400).type('text').send('No picture came.');
    if (!kindOf(bytes))
      return void response.status(415).type('text').send('Only JPEG, PNG and WebP pictures are kept.');
    const id = createHash('sha256').update(bytes).digest('hex');
    const file = join(photos, id);
    if (!existsSync(file)) {
      await mkdir(photos, { recursive: true });
      await writeFile(`${file}.part`, bytes, { flush: true });
      await rename(`${file}.part`, file);
    }
    response.status(201).json({ id });
  });
  app.get('/photos/:photo', (request, response) => {
    const id = request.params['photo'] ?? '';
    const file = join(photos, id);
    if (!/^[a-f0-9]{64}$/.test(id) || !existsSync(file))
      return void response.status(404).type('text').send('No such picture.');
    const bytes = readFileSync(file);
    response.setHeader('Cache-Control', 'private, max-age=31536000, immutable');
    response.type(kindOf(bytes) ?? 'application/octet-stream').send(bytes);
  });

  app.use(
    express.static(page, {
      index: 'index.html',
      setHeaders: (response, path) =>
        response.setHeader(
          'Cache-Control',
          path.includes('assets') ? 'public, max-age=31536000, immutable' : 'no-cache',
        ),
    }),
  );
  app.use((_request, response) => {
    response.status(404).type('text').send('Nothing here.');
  });
  app.use((error: unknown, _request: Request, response: Response, next: (e?: unknown) => void) => {
    if (response.headersSent) return next(error);
    if (error instanceof Refused)
      return void response
        .status(error.why === 'no such session' ? 404 : 400)
        .type('text')
        .send(error.message);
    const status = (error as { status?: number }).status ?? 500;
    response
      .status(status)
      .type('text')
      .send(
        status === 413
          ? 'That is too large: 6 MB at most.'
          : status < 500
            ? 'That request is not as it should be.'
            : 'That did not work.',
      );
    if (status >= 500) console.error(error);
  });
  return app;
};
