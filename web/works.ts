/** Long work under way: what it is, how far, and how to stop it. Nothing waits for it: typing and sending go on. */
import type { ReactiveControllerHost } from 'lit';

/** `part`: 0 to 1 of it is done; null: it cannot be told. */
export type Work = { words: string; part: number | null; stop: () => void };

export class Works {
  readonly #host: ReactiveControllerHost;
  list: readonly Work[] = [];

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
  }

  /** Runs `job` with a signal that its stop key gives; `say` tells how far it has come. */
  async run(
    words: string,
    job: (signal: AbortSignal, say: (words: string, part: number | null) => void) => Promise<void>,
  ): Promise<void> {
    const stopper = new AbortController();
    let here: Work = { words, part: null, stop: () => stopper.abort() };
    const put = (next: Work | null): void => {
      this.list = this.list.flatMap((w) => (w === here ? (next ?? []) : [w]));
      if (next) here = next;
      this.#host.requestUpdate();
    };
    this.list = [...this.list, here];
    this.#host.requestUpdate();
    // what cannot be broken off is let go: it ends by itself and nobody looks at what it made
    const stopped = new Promise<void>((done) => stopper.signal.addEventListener('abort', () => done()));
    try {
      await Promise.race([job(stopper.signal, (said, part) => put({ ...here, words: said, part })), stopped]);
    } finally {
      put(null);
    }
  }
}
