/** The thread of the log: opens the file it is given and serves it. Says first whether that went well. */
import { parentPort, workerData } from 'node:worker_threads';
import { type Port, serveLog } from './far.ts';
import { LogRefused, sqliteLog } from './sqlite.ts';

const port: Port = parentPort!;
const { file } = workerData as { file: string };
try {
  const log = sqliteLog(file);
  serveLog(port, log);
  port.postMessage({ open: true });
} catch (error) {
  if (!(error instanceof LogRefused)) throw error;
  port.postMessage({ open: false, words: error.message });
}
