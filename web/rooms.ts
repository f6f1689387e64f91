/**
 * Parts of the page that are fetched when somebody goes there: what opens a session stays small. Where the browser keeps
 * the page for offline use, it keeps these as well (see sw.js).
 */
import type { ReactiveController, ReactiveControllerHost } from 'lit';

const rooms = {
  start: () => import('./elements/start.ts'),
  learn: () => import('./elements/learn.ts'),
  transcript: () => import('./elements/transcript.ts'),
  menu: () => import('./elements/menu.ts'),
  pad: () => import('./elements/pad.ts'),
  side: () => import('./elements/side.ts'),
  timer: () => import('./elements/timer.ts'),
  report: () => import('./paper/report.ts'),
  estimate: () => import('./paper/estimate.ts'),
  history: () => import('./paper/history.ts'),
  sheet: () => import('./paper/sheet-editor.ts'),
  shop: () => import('./paper/shop.ts'),
} as const;
export type Room = keyof typeof rooms;

/** Fetches a part whose element may stand in the page before it: it comes to life by itself. Failing is no fault: next time. */
export const fetchRoom = (room: Room): void => void rooms[room]().catch(() => undefined);

export class Rooms implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #state = new Map<Room, 'coming' | 'here' | 'failed'>();

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('online', this.again);
  }

  hostDisconnected(): void {
    removeEventListener('online', this.again);
  }

  /** Begins to fetch it where it is not here yet. */
  look(room: Room): 'coming' | 'here' | 'failed' {
    const held = this.#state.get(room);
    if (held !== undefined) return held;
    this.#state.set(room, 'coming');
    rooms[room]().then(
      () => this.#set(room, 'here'),
      () => this.#set(room, 'failed'),
    );
    return 'coming';
  }

  /** Those that failed are fetched anew. */
  readonly again = (): void => {
    for (const [room, held] of this.#state) if (held === 'failed') this.#state.delete(room);
    this.#host.requestUpdate();
  };

  #set(room: Room, to: 'here' | 'failed'): void {
    this.#state.set(room, to);
    this.#host.requestUpdate();
  }
}
