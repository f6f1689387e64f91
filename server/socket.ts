/** The socket: frames in, coded refusals out, limits on size, rate and slow readers. Judging nothing itself. */
import type { IncomingMessage, Server } from 'node:http';
import type { Duplex } from 'node:stream';
import { WebSocket, WebSocketServer } from 'ws';
import { FromPage, refusals, type Refusal, type ToPage } from './chat/protocol.ts';
import { type Desk, Refused } from './desk.ts';
import { LogRefused } from './log/sqlite.ts';

export type SocketLimits = {
  /** Bytes of one frame. */
  frame: number;
  /** Frames a second sustained, and at once. */
  rate: number;
  burst: number;
  /** Pages at once. */
  pages: number;
  /** Bytes waiting to be read by a page before it is dropped. */
  behind: number;
  /** Sessions one page may follow. */
  follows: number;
};
export const usualLimits: SocketLimits = {
  frame: 64 * 1024,
  rate: 20,
  burst: 60,
  pages: 256,
  behind: 4 * 1024 * 1024,
  follows: 8,
};

const pageOfEntries = 500;

export type SocketOptions = {
  desk: Desk;
  now: () => number;
  allowed: (request: IncomingMessage) => boolean;
  limits?: SocketLimits;
  path?: string;
};

const refuse = (socket: Duplex, status: string): void => {
  socket.write(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`);
  socket.destroy();
};

/** Hangs the socket on `server`; returns how to end it. */
export const attachSocket = (
  server: Server,
  { desk, now, allowed, limits = usualLimits, path = '/socket' }: SocketOptions,
): (() => void) => {
  const wss = new WebSocketServer({
    noServer: true,
    maxPayload: limits.frame,
    perMessageDeflate: false,
    clientTracking: true,
  });

  server.on('upgrade', (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    socket.on('error', () => socket.destroy());
    if ((request.url ?? '').split('?')[0] !== path) return refuse(socket, '404 Not Found');
    if (!allowed(request)) return refuse(socket, '403 Forbidden');
    if (wss.clients.size >= limits.pages) return refuse(socket, '503 Service Unavailable');
    wss.handleUpgrade(request, socket, head, (ws) => serve(ws));
  });

  const serve = (ws: WebSocket): void => {
    let greeted = false;
    let tokens = limits.burst;
    let filled = now();
    const follows = new Map<string, () => void>();
    let chain: Promise<void> = Promise.resolve();
    let waiting = 0;

    const send = (frame: ToPage): void => {
      if (ws.readyState !== WebSocket.OPEN) return;
      if (ws.bufferedAmount > limits.behind) {
        ws.terminate();
        return;
      }
      ws.send(JSON.stringify(frame));
    };
    const refused = (why: Refusal, words: string, id?: string): void =>
      send({ is: 'refused', code: refusals[why], why, words, ...(id === undefined ? {} : { id }) });

    const sendBoard = async (session: string): Promise<void> => send({ is: 'board', board: await desk.board(session) });

    const handle = async (frame: FromPage): Promise<void> => {
      switch (frame.is) {
        case 'hello':
          greeted = true;
          send({ is: 'welcome', v: 1, engine: desk.engine, now: now(), coaches: desk.coaches(), role: 'works' });
          return;
        case 'open': {
          const entries = await desk.open(frame);
          send({ is: 'entries', session: frame.session, entries: [...entries], more: false });
          return;
        }
        case 'follow': {
          const session = frame.session;
          let after = frame.after;
          follows.get(session)?.();
          follows.delete(session);
          if (follows.size >= limits.follows)
            return refused('not allowed', 'A page may follow eight sessions at most.');
          // what comes while the past is sent waits its turn, so that order holds
          const early: ToPage[] = [];
          let caught = false;
          const stop = desk.follow(session, (entries) => {
            const frames: ToPage = { is: 'entries', session, entries: [...entries], more: false };
            if (caught) {
              send(frames);
              void sendBoard(session).catch(() => undefined);
            } else early.push(frames);
          });
          follows.set(session, stop);
          try {
            await desk.standing(session);
            for (;;) {
              const entries = await desk.read(session, after, pageOfEntries);
              const more = entries.length === pageOfEntries;
              send({ is: 'entries', session, entries, more });
              after = entries.at(-1)?.seq ?? after;
              if (!more) break;
            }
          } catch (error) {
            stop();
            follows.delete(session);
            throw error;
          }
          for (const late of early)
            if (late.is === 'entries' && (late.entries.at(-1)?.seq ?? 0) > after)
              send({ ...late, entries: late.entries.filter((e) => e.seq > after) });
          caught = true;
          await sendBoard(session);
          return;
        }
        case 'note': {
          const { session, is: _is, photos, ...note } = frame;
          const entries = await desk.note(session, { ...note, ...(photos ? { photos } : {}) });
          // followers have it already; a page that does not follow, or resends, gets it as the answer
          send({ is: 'entries', session, entries: [...entries], more: false });
          return;
        }
        case 'ask':
          send({ is: 'answer', id: frame.id, blocks: await desk.ask(frame.session, frame) });
          return;
        case 'remark':
          await desk.remark(frame.session, frame.about, frame.text, frame.by);
          return;
        case 'close':
          await desk.close(frame.session, frame.signed, frame.words);
          return;
        case 'reopen':
          await desk.reopen(frame.session, frame.words, frame.by);
          return;
        case 'list': {
          const { words, coach } = frame;
          send({
            is: 'sessions',
            list: await desk.sessions({
              ...(words === undefined ? {} : { words }),
              ...(coach === undefined ? {} : { coach }),
            }),
          });
          return;
        }
      }
    };

    const idOf = (raw: unknown): string | undefined => {
      const id = raw !== null && typeof raw === 'object' && 'id' in raw ? raw.id : undefined;
      return typeof id === 'string' ? id.slice(0, 40) : undefined;
    };
    const kinds = new Set(FromPage.def.options.map((o) => [...(o.def.shape.is.def.values as readonly string[])][0]));

    const take = async (text: string): Promise<void> => {
      let raw: unknown;
      try {
        raw = JSON.parse(text);
      } catch {
        return refused('bad json', 'That frame is not JSON.');
      }
      const id = idOf(raw);
      const is = raw !== null && typeof raw === 'object' && 'is' in raw ? raw.is : undefined;
      if (typeof is !== 'string' || !kinds.has(is))
        return refused('unknown frame', 'I know no frame of that kind.', id);
      if (is === 'hello' && (raw as { v?: unknown }).v !== 1)
        return refused('wrong version', 'This page is of another version: reload it.');
      const frame = FromPage.safeParse(raw);
      if (!frame.success) {
        const issue = frame.error.issues[0];
        return refused(
          'bad frame',
          `${issue?.path.join('.') || 'frame'}: ${issue?.message ?? 'not as it should be'}`,
          id,
        );
      }
      if (!greeted && frame.data.is !== 'hello') return refused('no hello', 'Say hello first.', id);
      try {
        await handle(frame.data);
      } catch (error) {
        if (error instanceof Refused) return refused(error.why, error.message, id);
        console.error(error);
        return refused(
          'log failed',
          error instanceof LogRefused
            ? error.message
            : 'It could not be kept. Nothing was shown as kept; it is safe to send it again.',
          id,
        );
      }
    };

    ws.on('message', (data, binary) => {
      const at = now();
      tokens = Math.min(limits.burst, tokens + ((at - filled) / 1000) * limits.rate);
      filled = Math.max(filled, at);
      if (tokens < 1 || waiting > limits.burst) {
        refused('too fast', 'Too many frames: slow down.');
        return;
      }
      tokens -= 1;
      if (binary) return refused('bad json', 'Frames are text.');
      waiting += 1;
      const text = (data as Buffer).toString('utf8');
      chain = chain
        .then(() => take(text))
        .finally(() => {
          waiting -= 1;
        });
    });
    ws.on('error', () => ws.terminate());
    ws.on('close', () => {
      for (const stop of follows.values()) stop();
      follows.clear();
    });
  };

  const alive = new WeakMap<WebSocket, boolean>();
  wss.on('connection', (ws) => alive.set(ws, true));
  return () => {
    for (const ws of wss.clients) ws.terminate();
    wss.close();
  };
};
