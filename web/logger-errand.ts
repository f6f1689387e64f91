/** Sends a logger's file to be read, and ends the reading when it is stopped. */
import type { FromFile } from './logger.ts';
import type { Errand } from './logger-worker.ts';

export const readLogger = (errand: Errand, signal: AbortSignal): Promise<FromFile> =>
  new Promise((done) => {
    const worker = new Worker(new URL('./logger-worker.ts', import.meta.url), { type: 'module' });
    const end = (got: FromFile): void => {
      worker.terminate();
      done(got);
    };
    signal.addEventListener('abort', () => end({ trouble: '' }));
    worker.addEventListener('message', (e: MessageEvent<FromFile>) => end(e.data));
    worker.addEventListener('error', () =>
      end({
        trouble: `${errand.file.name}: what reads such files is not in this browser yet; it comes with the connection`,
      }),
    );
    worker.postMessage(errand, []);
  });
