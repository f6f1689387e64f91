/** A server that speaks the page's protocol with canned words: what the page is tested against, one process, no disk. */
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join } from 'node:path';
import { WebSocketServer, type WebSocket } from 'ws';
import { blankContext, read } from '../../intents/read.ts';
import { tell } from '../../intents/tell.ts';
import { FromPage, refusals, type Board, type Refusal, type ToPage } from '../../server/chat/protocol.ts';
import type { Role } from '../../server/auth/roles.ts';
import type { Draft, Entry } from '../../server/session/entry.ts';
import { fromSi } from '../../server/core/units.ts';
import { check, fakeReply, suspects, sidedCheck } from './fake-replies.ts';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

/** As strict as the server's own: what the page breaks here, it would break there. */
const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; font-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

export type FakeServer = {
  url: string;
  sessions: ReadonlyMap<string, Entry[]>;
  /** What the next page that connects may do. */
  role: Role;
  /** ms until the next 'open' is answered. */
  slow: number;
  /** Cuts every socket; while `away` new ones are turned off as well. */
  cut: (away: boolean) => void;
  /** A whole session from outside, for long ones. */
  put: (session: string, drafts: readonly Draft[]) => void;
  /** Frames that came, newest last. */
  came: FromPage[];
  /** Answers no frame while true: a line that looks alive. */
  mute: boolean;
  /** Takes no picture any more. */
  fullOfPictures: boolean;
  stop: () => Promise<void>;
};

const marks = { 'left rear': 'low', 'right rear': 'within', 'left front': 'within', 'right front': 'within' } as const;

/** What stands, as far as the page needs it: the latest readings in order, canned suspects and check. */
const boardOf = (session: string, entries: readonly Entry[]): Board => {
  const undone = new Set(
    entries.flatMap((e) => (e.is === 'note' ? e.read.amends.flatMap((a) => (a.do === 'undo' ? a.notes : [])) : [])),
  );
  const latest = new Map<string, Board['latest'][number]>();
  const series = new Map<string, Board['series'][number]>();
  let closed = false;
  let last = '';
  const answered = new Set<string>();
  for (const e of entries) {
    if (e.is === 'closed') closed = true;
    if (e.is === 'reopened') closed = false;
    if (e.is !== 'note' || undone.has(e.id)) continue;
    last = e.text;
    for (const f of e.read.facts) {
      if (f.is === 'condition') answered.add(f.what.v);
      if (f.is !== 'reading') continue;
      const { si, pm, unit, text } = f.amount.v;
      const key = `${f.what.v}@${f.where.v}`;
      const verdict = f.what.v === 'height' ? marks[f.where.v as keyof typeof marks] : undefined;
      latest.set(key, {
        key,
        where: f.where.v,
        what: f.what.v,
        text: `${text} ${unit}`,
        si,
        pm,
        unit,
        at: f.at,
        seq: e.seq,
        ...(verdict ? { verdict } : {}),
        ...(f.where.v === 'tank' ? { low: 88 * 6894.757, high: 118 * 6894.757, verdict: 'within' as const } : {}),
      });
      const s = series.get(key) ?? { key, unit, points: [] };
      s.points.push({ at: f.at, si, pm });
      series.set(key, s);
    }
  }
  const judged = [...latest.values()].some((l) => fromSi(l.si, 'in') > 0);
  const opened = entries.find((e) => e.is === 'opened');
  return {
    session,
    seq: entries.at(-1)?.seq ?? 0,
    coach: opened?.coach ?? 'juniper-38',
    practice: opened?.practice !== undefined,
    closed,
    latest: [...latest.values()],
    series: [...series.values()],
    state: [
      { what: 'key', words: 'key off (said 9:05)', from: 'said' },
      { what: 'panel', words: 'panel auto', from: 'assumed' },
    ],
    under: {
      held: answered.has('on stands'),
      words: answered.has('on stands')
        ? 'Frame on stands. Air is not said to be out: nothing is opened.'
        : 'Nobody under: what holds the frame was not said.',
      short: answered.has('on stands') ? 'on stands, air in' : 'nobody under',
      list: [
        { what: 'on stands', is: answered.has('on stands') ? 'yes' : 'unknown', words: 'frame on stands: not said' },
        { what: 'wheels chocked', is: 'no', words: 'wheels not chocked', at: 1_780_000_000_000, by: 'KD' },
      ],
    },
    gates:
      /under/.test(last) || answered.has('on stands')
        ? [{ what: 'on stands', words: 'frame on stands', answered: answered.has('on stands') }]
        : [],
    suspects: judged ? suspects : [],
    checksDone: answered.size > 0 ? [{ id: 'soap', words: 'soaped the left fittings', outcome: 'no bubbles' }] : [],
    next: /two valves/.test(last) ? sidedCheck : judged ? check : null,
    open: null,
    circuit: {
      lit: judged
        ? [
            { part: 'left bellows', p: 0.5 },
            { part: 'left height valve', p: 0.24 },
          ]
        : [],
      joined: ['tank', 'supply line'],
      panel: true,
    },
    reading: {
      zone: 'America/Denver',
      traffic: 'right',
      pressureUnit: 'psi',
      lengthUnit: 'in',
      labels: { travel: 'panel auto' },
    },
  };
};

export const startFake = async (folder: string, now: () => number = Date.now): Promise<FakeServer> => {
  const sessions = new Map<string, Entry[]>();
  const followers = new Map<WebSocket, Set<string>>();
  const came: FromPage[] = [];
  let away = false;

  const server: Server = createServer((request, response) => {
    void (async () => {
      const path = new URL(request.url ?? '/', 'http://x').pathname;
      const file = join(folder, path === '/' ? 'index.html' : path);
      response.setHeader('Content-Security-Policy', policy);
      if (request.method === 'PUT' && path === '/photos') {
        response.setHeader('content-type', 'application/json');
        request.resume();
        if (fake.fullOfPictures) {
          response.statusCode = 413;
          response.end('All pictures together may take 1 MB.');
          return;
        }
        response.end(JSON.stringify({ id: 'a'.repeat(64) }));
        return;
      }
      try {
        const body = await readFile(file);
        response.setHeader('content-type', types[extname(file)] ?? 'application/octet-stream');
        response.end(body);
      } catch {
        response.statusCode = 404;
        response.end();
      }
    })();
  });
  const wss = new WebSocketServer({ noServer: true });
  server.on('upgrade', (request, socket, head) => {
    if (away) {
      socket.destroy();
      return;
    }
    wss.handleUpgrade(request, socket, head, (ws) => serve(ws));
  });

  const send = (ws: WebSocket, frame: ToPage): void => {
    if (!fake.mute) ws.send(JSON.stringify(frame));
  };
  const append = (session: string, drafts: readonly Draft[]): Entry[] => {
    const list = sessions.get(session) ?? [];
    const added = drafts.map((d, i) => ({ v: 1 as const, session, seq: list.length + 1 + i, kept: now(), ...d }));
    list.push(...added);
    sessions.set(session, list);
    return added;
  };
  const publish = (session: string, entries: Entry[]): void => {
    for (const [ws, set] of followers)
      if (set.has(session)) {
        send(ws, { is: 'entries', session, entries, more: false });
        send(ws, { is: 'board', board: boardOf(session, sessions.get(session) ?? []) });
      }
  };
  const refuse = (ws: WebSocket, why: Refusal, words: string, id?: string): void =>
    send(ws, { is: 'refused', code: refusals[why], why, words, ...(id === undefined ? {} : { id }) });

  const handle = (ws: WebSocket, frame: FromPage): void => {
    switch (frame.is) {
      case 'hello':
        return send(ws, {
          is: 'welcome',
          v: 1,
          engine: 'fake',
          now: now(),
          coaches: [
            { id: 'juniper-38', coach: 'Juniper 38 (demo)', zone: 'America/Denver', units: 'psi, in', panel: true },
            { id: 'larkfield-11', coach: 'Larkfield 11 (demo)', zone: 'Europe/London', units: 'kPa, mm', panel: false },
          ],
          role: fake.role,
        });
      case 'open': {
        if (fake.slow > 0) {
          const ms = fake.slow;
          fake.slow = 0;
          setTimeout(() => handle(ws, frame), ms);
          return;
        }
        if (!sessions.has(frame.session))
          append(frame.session, [
            {
              is: 'opened',
              by: frame.by,
              coach: frame.coach,
              sheet: 's',
              zone: 'America/Denver',
              ...(frame.practice === undefined ? {} : { practice: { seed: 1, level: frame.practice } }),
            },
          ]);
        return send(ws, {
          is: 'entries',
          session: frame.session,
          entries: sessions.get(frame.session) ?? [],
          more: false,
        });
      }
      case 'follow': {
        const list = sessions.get(frame.session);
        if (!list) return refuse(ws, 'no such session', 'I know no session of that name.');
        followers.get(ws)?.add(frame.session);
        const skipped = frame.last !== undefined && list.length - frame.after > frame.last;
        const start = skipped ? list.length - (frame.last ?? 0) : frame.after;
        for (let from = start; ; from += 500) {
          const page = list.slice(from, from + 500);
          send(ws, { is: 'entries', session: frame.session, entries: page, more: page.length === 500, skipped });
          if (page.length < 500) break;
        }
        return send(ws, { is: 'board', board: boardOf(frame.session, list) });
      }
      case 'earlier': {
        const list = sessions.get(frame.session) ?? [];
        const entries = list.slice(Math.max(0, frame.before - 1 - frame.most), frame.before - 1);
        return send(ws, { is: 'earlier', session: frame.session, entries });
      }
      case 'note': {
        const list = sessions.get(frame.session);
        if (!list) return refuse(ws, 'no such session', 'I know no session of that name.', frame.id);
        if (boardOf(frame.session, list).closed)
          return refuse(ws, 'session closed', 'This session is closed. Reopen it to add to it.', frame.id);
        const held = list.filter(
          (e) => (e.is === 'note' && e.id === frame.id) || (e.is === 'reply' && e.to === frame.id),
        );
        if (held.length > 0) return send(ws, { is: 'entries', session: frame.session, entries: held, more: false });
        const context = blankContext(frame.id, { at: frame.at, zone: 'America/Denver' });
        const reading = read(frame.text, context);
        for (const amend of reading.amends)
          if (amend.do === 'undo' && amend.notes.length === 0) {
            const gone = new Set(list.flatMap((e) => (e.is === 'note' ? e.read.amends.flatMap((a) => a.notes) : [])));
            const target = list.findLast((e) => e.is === 'note' && !gone.has(e.id) && e.read.amends.length === 0);
            if (target?.is === 'note') amend.notes.push(target.id);
          }
        const reply = fakeReply(frame.id, frame.text, tell(reading, context, frame.text));
        const { id, text, at, seen, by, photos } = frame;
        const added = append(frame.session, [
          { is: 'note', id, text, at, seen, by, read: reading, ...(photos ? { photos } : {}) },
          { is: 'reply', by: 'soapwater', ...reply },
        ]);
        publish(frame.session, added);
        return send(ws, { is: 'entries', session: frame.session, entries: added, more: false });
      }
      case 'ask':
        return send(ws, { is: 'answer', id: frame.id, blocks: fakeReply(frame.id, frame.text, []).blocks });
      case 'remark':
        return publish(
          frame.session,
          append(frame.session, [{ is: 'remark', by: frame.by, about: frame.about, text: frame.text }]),
        );
      case 'close':
        return publish(
          frame.session,
          append(frame.session, [{ is: 'closed', by: frame.signed, signed: frame.signed, words: frame.words }]),
        );
      case 'reopen':
        return publish(frame.session, append(frame.session, [{ is: 'reopened', by: frame.by, words: frame.words }]));
      case 'estimate': {
        const { session, ...estimate } = frame;
        return publish(session, append(session, [estimate]));
      }
      case 'decide': {
        const { session, ...decided } = frame;
        return publish(session, append(session, [{ ...decided, is: 'decided' }]));
      }
      case 'resheet':
        return publish(frame.session, append(frame.session, [{ is: 'sheet', by: frame.by, sheet: frame.sheet }]));
      case 'list': {
        const words = (frame.words ?? '').toLowerCase();
        return send(ws, {
          is: 'sessions',
          more: false,
          list: [...sessions]
            .map(([session, list]) => ({
              session,
              coach: list.find((e) => e.is === 'opened')?.coach ?? '',
              opened: list[0]?.kept ?? 0,
              last: list.at(-1)?.kept ?? 0,
              seq: list.length,
              closed: boardOf(session, list).closed,
              practice: boardOf(session, list).practice,
              words: list.find((e) => e.is === 'note')?.text ?? '',
            }))
            .filter((l) => words === '' || l.words.toLowerCase().includes(words))
            .toSorted((a, b) => b.last - a.last),
        });
      }
    }
  };

  const serve = (ws: WebSocket): void => {
    followers.set(ws, new Set());
    ws.on('close', () => followers.delete(ws));
    ws.on('message', (data: Buffer) => {
      const frame = FromPage.parse(JSON.parse(data.toString('utf8')));
      came.push(frame);
      if (!fake.mute) handle(ws, frame);
    });
  };

  await new Promise<void>((done) => {
    server.listen(0, '127.0.0.1', done);
  });
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  const fake: FakeServer = {
    url: `http://127.0.0.1:${port}/`,
    sessions,
    came,
    mute: false,
    fullOfPictures: false,
    slow: 0,
    role: 'works',
    cut: (stay) => {
      away = stay;
      for (const ws of wss.clients) ws.terminate();
    },
    put: (session, drafts) => {
      append(session, drafts);
    },
    stop: () =>
      new Promise((done) => {
        for (const ws of wss.clients) ws.terminate();
        wss.close();
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
  return fake;
};
