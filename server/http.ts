/** The pages and downloads over http: safe headers, no outside host, one table of downloads. One app for each door. */
import { timingSafeEqual } from 'node:crypto';
import { existsSync } from 'node:fs';
import { isAbsolute } from 'node:path';
import express, { type Express, type Request, type Response } from 'express';
import { secretHeader } from './backup/bench-file.ts';
import type { Desk } from './desk.ts';
import { Refused } from './desk.ts';
import { downloads } from './downloads.ts';
import { type Door, policy, sameHouse } from './house.ts';
import { PackRefused, packMost } from './log/pack.ts';
import { LogRefused } from './log/refused.ts';
import { benchRoutes, type Pairing, pairRoutes } from './pairing.ts';
import { paperRoutes } from './papers.ts';
import { type PhotoLimits, photoRoutes } from './photos.ts';
import { packed } from './packed.ts';
import type { Shelf } from './shelf.ts';
import type { ShopSettings } from './shop.ts';

export type HttpOptions = {
  desk: Desk;
  shelf: Shelf;
  shop: ShopSettings;
  page: string;
  photos: string;
  photoLimits?: PhotoLimits;
  door: Door;
  pairing: Pairing;
  /** On the bench's door only: commands of this machine show the secret. */
  bench?: { secret: string; copy: (to: string) => Promise<void> };
};

const sessionOf = (request: Request): string => {
  const id = request.params['id'];
  if (typeof id !== 'string' || !/^[a-z0-9-]{6,40}$/.test(id))
    throw new Refused('no such session', 'That is no session name.');
  return id;
};

/** What the disk refused, in words; null where it was not the disk. */
const diskWords = (code: unknown): string | null => {
  if (code === 'ENOSPC' || code === 'EDQUOT')
    return 'The disk of the bench is full. Nothing was kept of this: make room, then do it again.';
  return code === 'EROFS' || code === 'EACCES' || code === 'EPERM' || code === 'EIO' || code === 'EFBIG'
    ? `The data folder of the bench cannot be written (${code}). Nothing was kept of this: mend that, then do it again.`
    : null;
};

const sayWrong = (error: unknown, response: Response): void => {
  const say = (status: number, words: string): void => void response.status(status).type('text').send(words);
  if (error instanceof Refused) return say(error.why === 'no such session' ? 404 : 400, error.message);
  if (error instanceof PackRefused) return say(400, error.message);
  if (error instanceof LogRefused) return say(503, error.message);
  const disk = diskWords((error as { code?: unknown }).code);
  if (disk !== null) return say(503, disk);
  const status = (error as { status?: number }).status ?? 500;
  if (status === 413) return say(413, 'That is too large.');
  if (status < 500) return say(status, 'That request is not as it should be.');
  console.error(error);
  say(500, 'That did not work.');
};

/** What `npm run backup` and its kin ask while this server holds the log. */
const commandRoutes = (app: Express, desk: Desk, { secret, copy }: NonNullable<HttpOptions['bench']>): void => {
  const shown: express.RequestHandler = (request, response, next) => {
    const given = Buffer.from(String(request.headers[secretHeader] ?? ''));
    const wanted = Buffer.from(secret);
    if (given.length === wanted.length && timingSafeEqual(given, wanted)) return next();
    response.status(403).type('text').send('Only commands of this machine may ask that.');
  };
  app.post('/bench/copy', shown, express.text({ type: () => true, limit: 4096 }), async (request, response) => {
    const to: unknown = request.body;
    if (typeof to !== 'string' || !isAbsolute(to) || existsSync(to))
      return void response.status(400).type('text').send('Name a new file.');
    await copy(to);
    response.type('text').send(to);
  });
  app.post('/bench/unpack', shown, express.text({ type: () => true, limit: packMost }), async (request, response) => {
    const text: unknown = request.body;
    const { mark } = request.query;
    response.json(await desk.unpack(typeof text === 'string' ? text : '', typeof mark === 'string' ? mark : ''));
  });
};

export const makeHttp = ({
  desk,
  shelf,
  shop,
  page,
  photos,
  photoLimits,
  door,
  pairing,
  bench,
}: HttpOptions): Express => {
  const app = express();
  app.disable('x-powered-by');
  app.set('query parser', 'simple');
  app.use((request, response, next) => {
    response.setHeader('Content-Security-Policy', policy);
    response.setHeader('X-Content-Type-Options', 'nosniff');
    response.setHeader('Referrer-Policy', 'no-referrer');
    response.setHeader('Cross-Origin-Opener-Policy', 'same-origin');
    response.setHeader('Cross-Origin-Resource-Policy', 'same-origin');
    response.setHeader('Permissions-Policy', 'geolocation=(), microphone=(), payment=()');
    if (sameHouse(request, door.hosts())) return next();
    response.status(403).type('text').send('This server answers its own page only.');
  });

  if (bench) {
    commandRoutes(app, desk, bench);
    benchRoutes(app, pairing);
  } else pairRoutes(app, pairing);
  app.use((request, response, next) => {
    if (door.who(request)) return next();
    if (request.method === 'GET' && request.accepts(['html', 'json']) === 'html')
      return response.redirect(303, '/pair');
    response.status(401).type('text').send('This device is not paired.');
  });

  for (const { ending, type, suffix, roles, make } of downloads)
    app.get(`/session/:id.${ending}`, async (request, response) => {
      const session = sessionOf(request);
      const role = door.who(request)?.role;
      if (role === undefined || !roles.includes(role))
        return void response.status(403).type('text').send('This device may not take that away.');
      const { zone } = await desk.standing(session);
      const body = await make({ desk, session, zone, entries: await desk.read(session, 0, 1_000_000) });
      response.setHeader('Content-Disposition', `attachment; filename="${session}${suffix}"`);
      response.setHeader('Cache-Control', 'no-store');
      response.type(type).send(body);
    });
  paperRoutes(app, { desk, shelf, shop, door, now: Date.now });
  photoRoutes(app, photos, door.who, photoLimits);

  app.use(packed(page));
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
    sayWrong(error, response);
  });
  return app;
};
