/**
 * A page in miniature that types without rest and does what the real one does: what was not answered is sent again
 * under the same id once the server is back, and what it follows goes on from the last entry it saw.
 */
import { WebSocket } from 'ws';
import type { ToPage } from '../../server/chat/protocol.ts';
import type { Witness } from './witness.ts';

const texts = (n: number): string =>
  [
    `tank ${80 + (n % 45)} psi`,
    `left rear ${13 + (n % 3)} 1/${n % 2 === 0 ? 4 : 8}`,
    n % 4 < 2 ? 'comp off' : 'comp runs',
    'bubbles at rh bag crimp, none on the left',
    n % 4 < 2 ? 'panel shut' : 'panel auto',
    'undo',
    `sags overnight, visit ${n}`,
  ][n % 7]!;

type Pending = { session: string; id: string; text: string; at: number; seen: number; tries: number };

export class Typist {
  readonly name: string;
  readonly #witness: Witness;
  #ws: WebSocket | null = null;
  #session = '';
  #last = 0;
  #count = 0;
  #typing: NodeJS.Timeout | undefined;
  #pending: Pending[] = [];
  /** Notes that had to be sent more than once. */
  again = 0;

  constructor(name: string, witness: Witness) {
    this.name = name;
    this.#witness = witness;
  }
  get waiting(): number {
    return this.#pending.length;
  }

  /** Connects, follows `session`, sends again what is not answered; types on when `types`. Resolves when it is let in. */
  async connect(url: string, session: string, { pace, types = true }: { pace: number; types?: boolean }) {
    if (session !== this.#session) this.#last = 0;
    this.#session = session;
    const { host, origin } = new URL(url);
    const ws = new WebSocket(`ws://${host}/socket`, { headers: { Origin: origin } });
    this.#ws = ws;
    ws.on('error', () => undefined);
    ws.on('close', () => clearInterval(this.#typing));
    ws.on('message', (data) => this.#take(JSON.parse((data as Buffer).toString('utf8')) as ToPage));
    await new Promise<void>((resolve) => {
      ws.once('open', resolve);
      ws.once('close', () => resolve());
    });
    this.#send({ is: 'hello', v: 1 });
    this.#send({ is: 'open', session, coach: 'juniper-38', by: this.name });
    this.#send({ is: 'follow', session, after: this.#last });
    // a session that was never answered either is opened again before its notes are sent
    for (const name of new Set(this.#pending.map((p) => p.session).filter((name) => name !== session)))
      this.#send({ is: 'open', session: name, coach: 'juniper-38', by: this.name });
    for (const note of this.#pending) this.#sendNote(note);
    if (types && ws.readyState === WebSocket.OPEN) this.#typing = setInterval(() => this.#type(), pace);
  }
  close(): void {
    clearInterval(this.#typing);
    this.#ws?.terminate();
  }

  #type(): void {
    if (this.#pending.length >= 2) return;
    this.#count += 1;
    const id = `${this.name.toLowerCase()}-note-${this.#count}`;
    const note = {
      session: this.#session,
      id,
      text: texts(this.#count),
      at: Date.now(),
      seen: this.#last,
      tries: 0,
    };
    this.#pending.push(note);
    this.#sendNote(note);
  }
  #sendNote(note: Pending): void {
    note.tries += 1;
    if (note.tries === 2) this.again += 1;
    const { tries: _tries, ...frame } = note;
    this.#send({ is: 'note', ...frame, by: this.name });
  }
  #send(frame: unknown): void {
    if (this.#ws?.readyState === WebSocket.OPEN) this.#ws.send(JSON.stringify(frame));
  }

  #take(frame: ToPage): void {
    if (frame.is === 'refused') {
      const note = this.#pending.find((p) => p.id === frame.id);
      if (frame.why === 'too fast' && note) setTimeout(() => this.#sendNote(note), 200);
      else if (frame.why !== 'too fast') this.#witness.fault(`${this.name} was refused: ${frame.why}: ${frame.words}`);
      return;
    }
    if (frame.is !== 'entries') return;
    for (const entry of frame.entries) {
      this.#witness.saw(this.name, entry);
      if (entry.is === 'reply') {
        const at = this.#pending.findIndex((p) => p.id === entry.to);
        if (at >= 0) this.#witness.answered.set(entry.to, this.#pending.splice(at, 1)[0]!.text);
      }
      if (entry.session === this.#session && entry.seq === this.#last + 1) this.#last = entry.seq;
    }
  }
}
