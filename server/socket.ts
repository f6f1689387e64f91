/** The socket: frames in, coded refusals out, limits on size, rate and slow readers. Judging nothing itself. */
import type { IncomingMessage, Server } from 'node:http';
import type { Duplex } from 'node:stream';
import { WebSocket, WebSocketServer } from 'ws';
import { bench, mayFrame, type Who } from './auth/roles.ts';
import type { Boards } from './boards.ts';
import { FromPage, pageOfEntries, pageOfSessions, refusals, type Refusal, type ToPage } from './chat/protocol.ts';
import { type Desk, type Follower, Refused } from './desk.ts';
import { type Door, sameHouse } from './house.ts';
import { LogRefused } from './log/refused.ts';
import type { Entry } from './session/entry.ts';

export type SocketLimits = {
  /** Bytes of one frame. */
  frame: number;
  /** Frames a second sustained, and at once: of a page at the bench, of a paired device with all its pages together. */
  rate: number;
  burst: number;
  /** New sessions a minute sustained, and at once; counted likewise. */
  openRate: number;
  openBurst: number;
  /** Pages at once, and of one paired device. */
  pages: number;
  pagesOfDevice: number;
  /** Bytes waiting to be read by a page before it is dropped. */
  behind: number;
  /** Sessions one page may follow. */
  follows: number;
  /** Milliseconds after which a page that does not answer is taken for gone. */
  silence: number;
};
export const usualLimits: SocketLimits = {
  frame: 64 * 1024,
  rate: 20,
  burst: 60,
  openRate: 10,
  openBurst: 20,
  pages: 256,
  pagesOfDevice: 16,
  behind: 4 * 1024 * 1024,
  follows: 8,
  silence: 30_000,
};

export type SocketOptions = {
  desk: Desk;
  boards: Boards;
  now: () => number;
  door: Door;
  limits?: SocketLimits;
  path?: string;
};
export type Sockets = { end: () => void; drop: (device: string) => void };

const refuse = (socket: Duplex, status: string): void => {
  socket.write(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n\r\n`);
  socket.destroy();
};

/** A store of tokens: `rate` a second, `burst` at most. A clock that steps back gives none and takes none. */
const bucket = (rate: number, burst: number, now: () => number): (() => boolean) => {
  let tokens = burst;
  let filled = now();
  return () => {
    const at = now();
    tokens = Math.min(burst, tokens + (Math.max(0, at - filled) / 1000) * rate);
    filled = at;
    if (tokens < 1) return false;
    tokens -= 1;
    return true;
  };
};

/** A frame of entries from their text as stored; one list goes to many pages: its frame is written once. */
const written = new WeakMap<readonly string[], string>();
const entriesFrame = (session: string, bodies: readonly string[]): string => {
  const held = written.get(bodies);
  if (held !== undefined) return held;
  const text = `{"is":"entries","session":"${session}","entries":[${bodies.join(',')}],"more":false}`;
  written.set(bodies, text);
  return text;
};

/** Hangs the socket on `server`. `drop` ends what a device has open. */
export const attachSocket = (
  server: Server,
  { desk, boards, now, door, limits = usualLimits, path = '/socket' }: SocketOptions,
): Sockets => {
  const wss = new WebSocketServer({
    noServer: true,
    maxPayload: limits.frame,
    perMessageDeflate: false,
    clientTracking: true,
  });
  /** Whose a connection is, and whether the door would still let it in. */
  const inside = new Map<WebSocket, { device: string; welcome: () => boolean }>();
  type Takes = { mayTake: () => boolean; mayOpen: () => boolean };
  const takes = (): Takes => ({
    mayTake: bucket(limits.rate, limits.burst, now),
    mayOpen: bucket(limits.openRate / 60, limits.openBurst, now),
  });
  const ofDevice = new Map<string, Takes>();
  /** A paired device has no more for connecting again, nor for many pages. */
  const takesOf = ({ device }: Who): Takes => {
    if (device === bench.device) return takes();
    const held = ofDevice.get(device) ?? takes();
    ofDevice.set(device, held);
    return held;
  };
  const pagesOf = (device: string): number => [...inside.values()].filter((i) => i.device === device).length;

  server.on('upgrade', (request: IncomingMessage, socket: Duplex, head: Buffer) => {
    socket.on('error', () => socket.destroy());
    if ((request.url ?? '').split('?')[0] !== path) return refuse(socket, '404 Not Found');
    if (!sameHouse(request, door.hosts())) return refuse(socket, '403 Forbidden');
    const who = door.who(request);
    if (!who) return refuse(socket, '401 Unauthorized');
    if (wss.clients.size >= limits.pages) return refuse(socket, '503 Service Unavailable');
    if (who.device !== bench.device && pagesOf(who.device) >= limits.pagesOfDevice)
      return refuse(socket, '429 Too Many Requests');
    wss.handleUpgrade(request, socket, head, (ws) => {
      const welcome = (): boolean => door.who(request)?.device === who.device;
      inside.set(ws, { device: who.device, welcome });
      serve(ws, who, welcome);
    });
  });

  const serve = (ws: WebSocket, who: Who, welcome: () => boolean): void => {
    let greeted = false;
    const { mayTake, mayOpen } = takesOf(who);
    /** Followed sessions: how to stop, and the last entry that was sent. */
    const follows = new Map<string, { stop: () => void; last: number }>();
    let chain: Promise<void> = Promise.resolve();
    let waiting = 0;

    const sendText = (text: string): void => {
      if (ws.readyState !== WebSocket.OPEN) return;
      if (ws.bufferedAmount > limits.behind) {
        ws.terminate();
        return;
      }
      ws.send(text);
    };
    const send = (frame: ToPage): void => sendText(JSON.stringify(frame));
    const refused = (why: Refusal, words: string, id?: string): void =>
      send({ is: 'refused', code: refusals[why], why, words, ...(id === undefined ? {} : { id }) });

    const follow = async (session: string, from: number, most?: number): Promise<void> => {
      follows.get(session)?.stop();
      follows.delete(session);
      if (follows.size >= limits.follows)
        throw new Refused('not allowed', `A page may follow ${limits.follows} sessions at most.`);
      // what comes while the past is sent waits its turn, so that order holds
      const early: Parameters<Follower>[] = [];
      let caught = false;
      const held = { stop: () => undefined as void, last: from };
      const show: Follower = (entries, bodies) => {
        const first = entries.findIndex((e) => e.seq > held.last);
        if (first < 0) return;
        held.last = entries.at(-1)!.seq;
        sendText(entriesFrame(session, first === 0 ? bodies : bodies.slice(first)));
      };
      const stopEntries = desk.follow(session, (entries, bodies) => {
        if (caught) show(entries, bodies);
        else early.push([entries, bodies]);
      });
      let stopBoard: () => void = () => undefined;
      held.stop = () => {
        stopEntries();
        stopBoard();
      };
      follows.set(session, held);
      try {
        const { seq } = await desk.standing(session);
        let skipped = most !== undefined && seq - from > most;
        if (skipped) held.last = seq - (most ?? 0);
        for (;;) {
          const entries = await desk.read(session, held.last, pageOfEntries);
          const more = entries.length === pageOfEntries;
          send({ is: 'entries', session, entries, more, ...(skipped ? { skipped } : {}) });
          skipped = false;
          held.last = entries.at(-1)?.seq ?? held.last;
          if (!more) break;
        }
      } catch (error) {
        held.stop();
        follows.delete(session);
        throw error;
      }
      for (const kept of early) show(...kept);
      caught = true;
      sendText(await boards.frame(session));
      stopBoard = boards.follow(session, sendText);
    };

    /** Raises Refused where the role does not reach. */
    const mustBeAllowed = async (frame: FromPage): Promise<void> => {
      const may = mayFrame(who.role, frame.is);
      if (may === 'yes') return;
      const practice =
        frame.is === 'open'
          ? frame.practice !== undefined
          : 'session' in frame && frame.session !== null && (await desk.standing(frame.session)).practice !== null;
      if (may === 'no' || !practice)
        throw new Refused(
          'not allowed',
          may === 'no'
            ? `This device ${who.role}; it does not write.`
            : 'This device learns: it writes in practice only.',
        );
    };

    /** To who sent it too, who may not follow; one who does knows it already. */
    const answer = (session: string, entries: readonly Entry[]): void =>
      send({ is: 'entries', session, entries: [...entries], more: false });

    const handle = async (frame: FromPage): Promise<void> => {
      await mustBeAllowed(frame);
      switch (frame.is) {
        case 'hello':
          greeted = true;
          send({
            is: 'welcome',
            v: 1,
            engine: desk.engine,
            now: now(),
            coaches: desk.coaches(),
            role: who.role,
            ...(desk.refusedSheets.length > 0 ? { refusedSheets: [...desk.refusedSheets] } : {}),
          });
          return;
        case 'open': {
          if (!mayOpen()) throw new Refused('too fast', 'Too many new sessions: wait a moment.');
          const entries = await desk.open(frame);
          send({ is: 'entries', session: frame.session, entries: [...entries], more: false });
          return;
        }
        case 'follow':
          return follow(frame.session, frame.after, frame.last);
        case 'earlier': {
          await desk.standing(frame.session);
          const after = Math.max(0, frame.before - 1 - frame.most);
          const entries = await desk.read(frame.session, after, frame.before - 1 - after);
          send({ is: 'earlier', session: frame.session, entries });
          return;
        }
        case 'note': {
          const { session, is: _is, photos, ...note } = frame;
          const before = follows.get(session)?.last;
          const entries = await desk.note(session, { ...note, ...(photos ? { photos } : {}) });
          // a page that follows has it already, unless it sent the note again
          const first = entries[0]?.seq ?? 0;
          const shown = before !== undefined && first > before && (follows.get(session)?.last ?? 0) >= first;
          if (!shown) send({ is: 'entries', session, entries: [...entries], more: false });
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
        case 'estimate': {
          const { session, by, is: _is, ...estimate } = frame;
          return answer(session, await desk.estimate(session, by, estimate));
        }
        case 'decide': {
          const { session, by, is: _is, ...decided } = frame;
          return answer(session, await desk.decide(session, by, decided));
        }
        case 'resheet':
          return answer(frame.session, await desk.resheet(frame.session, frame.by, frame.sheet));
        case 'list': {
          const { words, coach, after } = frame;
          const found = await desk.sessions({
            ...(words === undefined ? {} : { words }),
            ...(coach === undefined ? {} : { coach }),
            ...(after === undefined ? {} : { after }),
            most: pageOfSessions + 1,
          });
          send({
            is: 'sessions',
            list: found.slice(0, pageOfSessions),
            more: found.length > pageOfSessions,
            ...(after === undefined ? {} : { after }),
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
        const where = issue?.path.map(String).join('.') || 'frame';
        const long = issue?.code === 'too_big' && (issue.origin === 'string' || issue.origin === 'array');
        return refused(long ? 'too big' : 'bad frame', `${where}: ${issue?.message ?? 'not as it should be'}`, id);
      }
      // revoked, or its time is over: what it sent before it was put out is not taken any more
      if (!welcome()) return ws.terminate();
      if (!greeted && frame.data.is !== 'hello') return refused('no hello', 'Say hello first.', id);
      try {
        await handle(frame.data);
      } catch (error) {
        if (error instanceof Refused) return refused(error.why, error.message, id);
        if (!(error instanceof LogRefused)) console.error(error);
        const nothing = 'Nothing was kept; it is safe to send it again.';
        return refused('log failed', error instanceof LogRefused ? `${error.message}. ${nothing}` : nothing, id);
      }
    };

    ws.on('message', (data, binary) => {
      const text = binary ? '' : (data as Buffer).toString('utf8');
      if (!mayTake() || waiting > limits.burst) {
        const id = /"id":"([\w-]{1,40})"/.exec(text.slice(0, 6000))?.[1];
        return refused('too fast', 'Too many frames: slow down.', id);
      }
      if (binary) return refused('bad json', 'Frames are text.');
      waiting += 1;
      chain = chain
        .then(() => take(text))
        .finally(() => {
          waiting -= 1;
        });
    });
    ws.on('error', () => ws.terminate());
    ws.on('close', () => {
      inside.delete(ws);
      for (const { stop } of follows.values()) stop();
      follows.clear();
    });
  };

  // a phone that went out of reach says nothing: whoever does not answer is let go
  const asked = new WeakSet<WebSocket>();
  const answered = new WeakSet<WebSocket>();
  const pulse = setInterval(() => {
    for (const ws of wss.clients) {
      if ((asked.has(ws) && !answered.has(ws)) || inside.get(ws)?.welcome() === false) {
        ws.terminate();
        continue;
      }
      asked.add(ws);
      answered.delete(ws);
      ws.once('pong', () => answered.add(ws));
      ws.ping();
    }
  }, limits.silence);
  pulse.unref();

  return {
    drop: (device) => {
      for (const [ws, { device: owner }] of inside) if (owner === device) ws.terminate();
      ofDevice.delete(device);
    },
    end: () => {
      clearInterval(pulse);
      for (const ws of wss.clients) ws.terminate();
      wss.close();
    },
  };
};
