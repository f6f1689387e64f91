/** Starts the built server on a free port with a data folder of its own. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { WebSocket } from 'ws';
import type { ToPage } from '../../server/chat/protocol.ts';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export type Running = {
  url: string;
  data: string;
  child: ChildProcess;
  stop: (signal?: NodeJS.Signals) => Promise<number | null>;
  errors: () => string;
  /** All it has printed. */
  said: () => string;
};

/** `script`: what Node runs; the server as it starts for everybody unless a test has one of its own. */
export const launch = (
  data = mkdtempSync(join(tmpdir(), 'soapwater-data-')),
  env: Record<string, string> = {},
  script = join(root, 'server', 'start.mjs'),
): { child: ChildProcess; ready: Promise<Running> } => {
  const child = spawn(process.execPath, [script], {
    cwd: root,
    env: { ...process.env, PORT: '0', DATA: data, SOAPWATER_ROOT: root, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ready = new Promise<Running>((resolve, reject) => {
    let out = '';
    let errors = '';
    const exited = new Promise<number | null>((done) => child.on('exit', (code) => done(code)));
    child.stderr.on('data', (d: Buffer) => {
      errors += d.toString();
    });
    child.stdout.on('data', (d: Buffer) => {
      out += d.toString();
      // the whole line, so that nothing after the address is lost
      const url = /http:\/\/127\.0\.0\.1:\d+\/(?=[^\n]*\n)/.exec(out)?.[0];
      if (url)
        resolve({
          url,
          data,
          child,
          errors: () => errors,
          said: () => out,
          stop: (signal = 'SIGTERM') => (child.kill(signal), exited),
        });
    });
    void exited.then((code) => reject(new Error(`exit ${code}: ${errors}`)));
  });
  return { child, ready };
};
export const startServer = (data?: string, env?: Record<string, string>, script?: string): Promise<Running> =>
  launch(data, env, script).ready;

export const cleanUp = (data: string): void => rmSync(data, { recursive: true, force: true });

/** A page in miniature: says hello, sends frames, waits for what comes. */
export class Page {
  readonly frames: ToPage[] = [];
  readonly ws: WebSocket;
  #waiting: (() => void)[] = [];
  /** `tls`: what to trust and the name to ask for, when the server is reached by another one. */
  constructor(url: string, headers: Record<string, string> = {}, tls?: { ca: string; servername: string }) {
    const at = new URL(url);
    const scheme = at.protocol === 'https:' ? 'wss' : 'ws';
    this.ws = new WebSocket(`${scheme}://${at.host}/socket`, {
      headers: { Origin: `${at.protocol}//${at.host}`, ...headers },
      ...tls,
    });
    this.ws.on('message', (data) => {
      this.frames.push(JSON.parse((data as Buffer).toString('utf8')) as ToPage);
      for (const go of this.#waiting.splice(0)) go();
    });
    this.ws.on('error', () => undefined);
  }
  async opened(): Promise<this> {
    await new Promise<void>((resolve, reject) => {
      this.ws.once('open', () => resolve());
      this.ws.once('error', reject);
    });
    this.send({ is: 'hello', v: 1 });
    await this.until((f) => f.is === 'welcome');
    return this;
  }
  send(frame: unknown): void {
    this.ws.send(typeof frame === 'string' ? frame : JSON.stringify(frame));
  }
  async until(match: (frame: ToPage) => boolean, from = 0): Promise<ToPage> {
    const deadline = Date.now() + 10_000;
    for (;;) {
      const hit = this.frames.slice(from).find(match);
      if (hit) return hit;
      if (Date.now() > deadline)
        throw new Error(`nothing of the kind came; last: ${JSON.stringify(this.frames.at(-1))?.slice(0, 300)}`);
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, 200);
        this.#waiting.push(() => {
          clearTimeout(timer);
          resolve();
        });
      });
    }
  }
  /** Sends a note and waits for its reply. */
  async note(session: string, id: string, text: string, seen = 0): Promise<ToPage> {
    this.send({ is: 'note', session, id, text, at: Date.now(), seen, by: 'KD' });
    return this.until(
      (f) =>
        (f.is === 'entries' && f.entries.some((e) => e.is === 'reply' && e.to === id)) ||
        (f.is === 'refused' && f.id === id),
    );
  }
  close(): void {
    this.ws.terminate();
  }
}
