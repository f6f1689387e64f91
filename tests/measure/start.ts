/** Start to listening, once built; memory resident. */
import { readFileSync } from 'node:fs';
import { cleanUp, startServer } from '../start/server.ts';
import { line, percentile } from './clock.ts';

export const measureStart = async (): Promise<void> => {
  const times: number[] = [];
  let resident = 0;
  for (let i = 0; i < 5; i += 1) {
    const from = performance.now();
    const running = await startServer();
    times.push(performance.now() - from);
    const status = readFileSync(`/proc/${running.child.pid}/status`, 'utf8');
    resident = Number(/VmRSS:\s+(\d+)/.exec(status)?.[1] ?? 0) / 1024;
    await running.stop();
    cleanUp(running.data);
  }
  line('start to listening', `${(percentile(times, 50) / 1000).toFixed(2)} s`, '', 'at most 0.6 s');
  line('memory resident', `${resident.toFixed(0)} MB`, '', 'at most 100 MB');
};
