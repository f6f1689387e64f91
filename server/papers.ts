/** Papers over http: report, estimate, history, sheets, the shop's settings, calendar and schemas. Judges nothing itself. */
import express, { type Express, type Request, type Response } from 'express';
import { mayEdit } from './auth/roles.ts';
import { Refused, type Desk } from './desk.ts';
import type { Door } from './house.ts';
import { markOf } from './log/mark.ts';
import { dueCalendar } from './report/calendar.ts';
import { dueOfCoach } from './report/due.ts';
import { estimateOf, rateOf } from './report/estimate.ts';
import { coachHistory, type Visit } from './report/history.ts';
import { ownerReport } from './report/owner.ts';
import { proposedLines } from './report/proposed.ts';
import { publishedSchemas } from './report/session-json.ts';
import { specsOf } from './report/spec-fields.ts';
import type { Folded } from './session/fold.ts';
import { loadSheet, SheetRefused, type LoadedSheet } from './sheet/load.ts';
import { ShelfRefused, type Shelf } from './shelf.ts';
import { ShopRefused, type ShopSettings } from './shop.ts';

/** Most characters of a sheet that are looked at. */
const sheetMost = 512 * 1024;

export type PapersOptions = { desk: Desk; shelf: Shelf; shop: ShopSettings; door: Door; now: () => number };

const named = (request: Request, name: string, form: RegExp, words: string): string => {
  const id = request.params[name];
  if (typeof id !== 'string' || !form.test(id)) throw new Refused('no such session', words);
  return id;
};
const sessionOf = (request: Request): string =>
  named(request, 'session', /^[a-z0-9-]{6,40}$/, 'That is no session name.');
const coachOf = (request: Request): string =>
  named(request, 'coach', /^[a-z0-9][a-z0-9-]{0,39}$/, 'That is no short name of a coach.');

export const paperRoutes = (app: Express, { desk, shelf, shop, door, now }: PapersOptions): void => {
  const json = (response: Response, body: unknown): void => {
    response.setHeader('Cache-Control', 'no-store');
    response.json(body);
  };
  const editor: express.RequestHandler = (request, response, next) => {
    if (mayEdit(door.who(request)?.role ?? 'learns')) return next();
    response.status(403).json({ words: 'This device may look, not change: that takes a device that works.' });
  };
  const body = express.json({ limit: sheetMost, type: () => true });
  const loadedOf = (coach: string): LoadedSheet => {
    const loaded = shelf.sheets.get(coach);
    if (!loaded) throw new Refused('no such session', `There is no sheet of a coach "${coach}".`);
    return loaded;
  };

  /** What stands at the end of every visit of a coach, oldest first; practice is none. */
  const standingsOf = async (coach: string): Promise<Folded[]> => {
    const lines = await desk.sessions({ coach, practice: false });
    const standings: Folded[] = [];
    for (const { session } of lines.toSorted((a, b) => a.opened - b.opened))
      standings.push(await desk.standing(session));
    return standings;
  };
  const visitsOf = async (coach: string): Promise<Visit[]> => {
    const visits: Visit[] = [];
    for (const standing of await standingsOf(coach))
      visits.push({ entries: await desk.read(standing.session, 0, standing.seq), standing });
    return visits;
  };

  app.get('/paper/session/:session/report', async (request, response) => {
    const session = sessionOf(request);
    const standing = await desk.standing(session);
    const sheet = await desk.sheetOf(standing.sheet);
    const visits = standing.practice ? [standing] : await standingsOf(standing.coach);
    const entries = await desk.read(session, 0, standing.seq);
    // of these very entries: one that comes meanwhile is not on the paper
    const mark = markOf(entries);
    const due = dueOfCoach(visits, sheet, now());
    json(response, ownerReport({ entries, standing, sheet, shop: shop.get(), due, mark, now: now() }));
  });

  app.get('/paper/session/:session/estimate', async (request, response) => {
    const session = sessionOf(request);
    const standing = await desk.standing(session);
    const sheet = await desk.sheetOf(standing.sheet);
    const entries = await desk.read(session, 0, standing.seq);
    json(response, {
      estimate: estimateOf(entries),
      proposed: proposedLines(standing),
      rate: rateOf(shop.get(), sheet.shop),
      closed: standing.closed,
      head: {
        shop: shop.get().name ?? sheet.shop?.name ?? '',
        lines: shop.get().lines ?? '',
        coach: sheet.coach,
        zone: standing.zone,
        at: now(),
      },
    });
  });

  app.get('/paper/session/:session/specs', async (request, response) => {
    const standing = await desk.standing(sessionOf(request));
    json(response, { coach: standing.coach, sheet: standing.sheet, closed: standing.closed, specs: specsOf(standing) });
  });

  app.get('/paper/coach/:coach/history', async (request, response) => {
    const coach = coachOf(request);
    json(response, coachHistory(await visitsOf(coach), loadedOf(coach), now()));
  });

  app.get('/coach/:coach.ics', async (request, response) => {
    const coach = coachOf(request);
    const { sheet } = loadedOf(coach);
    const due = dueOfCoach(await standingsOf(coach), sheet, now());
    response.setHeader('Content-Disposition', `attachment; filename="${coach}-due.ics"`);
    response.setHeader('Cache-Control', 'no-store');
    response.type('text/calendar').send(dueCalendar({ id: coach, name: sheet.coach }, due, now()));
  });

  app.get('/paper/coach/:coach/sheet', (request, response) => {
    const { hash, json: text } = loadedOf(coachOf(request));
    json(response, { hash, sheet: JSON.parse(text) as unknown, versions: shelf.versions(coachOf(request)) });
  });

  app.get('/paper/sheet/:hash', async (request, response) => {
    const hash = named(request, 'hash', /^[a-f0-9]{64}$/, 'That is no version of a sheet.');
    const text = await desk.sheetText(hash);
    if (text === null) throw new Refused('no such session', 'The log has no such version of a sheet.');
    json(response, { hash, sheet: JSON.parse(text) as unknown, versions: [] });
  });

  app.post('/paper/sheet/check', body, (request, response) => {
    try {
      json(response, { hash: loadSheet(JSON.stringify(request.body), 'as typed').hash, fields: [] });
    } catch (error) {
      if (!(error instanceof SheetRefused)) throw error;
      json(response, { hash: null, fields: error.fields });
    }
  });

  app.put('/paper/sheet', editor, body, async (request, response) => {
    const { sheet, base, by, words } = (request.body ?? {}) as Record<string, unknown>;
    const text = (value: unknown, most: number): string =>
      typeof value === 'string' ? value.trim().slice(0, most) : '';
    try {
      const before = shelf.sheets.get(text((sheet as { id?: unknown } | null)?.id, 40));
      if (before) await desk.keepSheet(before);
      const loaded = shelf.save(
        JSON.stringify(sheet ?? null),
        text(base, 64),
        text(by, 20) || 'bench',
        text(words, 200),
      );
      await desk.keepSheet(loaded);
      json(response, { hash: loaded.hash, versions: shelf.versions(loaded.sheet.id) });
    } catch (error) {
      if (error instanceof SheetRefused) response.status(422).json({ words: 'Not saved.', fields: error.fields });
      else if (error instanceof ShelfRefused) response.status(409).json({ words: error.message, fields: [] });
      else throw error;
    }
  });

  app.get('/paper/shop', (_request, response) => json(response, shop.get()));
  app.put('/paper/shop', editor, body, (request, response) => {
    try {
      json(response, shop.set(request.body));
    } catch (error) {
      if (!(error instanceof ShopRefused)) throw error;
      response.status(422).json({ words: error.message });
    }
  });

  app.get('/schema/:name.json', (request, response) => {
    const make = publishedSchemas[request.params['name']];
    if (!make) throw new Refused('no such session', 'There is no schema of that name.');
    response.type('application/schema+json').send(JSON.stringify(make(), null, 1));
  });
};
