/** Opens the log in a thread of its own. */
import { Worker } from 'node:worker_threads';
import { type FarLog, farLog } from './far.ts';
import { LogRefused } from './refused.ts';

type First = { readonly open: true } | { readonly open: false; readonly words: string };

/**
 * `script`: thread.ts as built. `ended` is told when the thread is gone without having been closed: nothing can be kept
 * from then on. Raises LogRefused when the file cannot be opened, trusted or written.
 */
export const openLog = (file: string, script: URL, ended: (words: string) => void): Promise<FarLog> =>
  new Promise((resolve, reject) => {
    const worker = new Worker(script, { workerData: { file } });
    const log = farLog(worker);
    let closed = false;
    let cause = '';
    worker.once('message', (first: First) => {
      if (first.open) return resolve({ ...log, close: () => ((closed = true), log.close()) });
      closed = true;
      reject(new LogRefused(first.words));
      void worker.terminate();
    });
    worker.on('error', (error) => {
      cause = `: ${error instanceof Error ? error.message : String(error)}`;
    });
    worker.on('exit', () => {
      const words = `the log ${file} is no longer held${closed ? '' : cause}: start the server again`;
      log.lost(words);
      // before it was open nobody has it yet
      reject(new LogRefused(words));
      if (!closed) ended(words);
    });
  });
