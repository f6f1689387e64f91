/** The bare echo in a process of its own, as the server is: `measure echo-process`. Ends with its parent. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawn } from 'node:child_process';
import { startEcho } from './echo.ts';

export const serveEcho = async (): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'soapwater-echo-'));
  const echo = await startEcho(join(folder, 'echo.db'));
  console.log(echo.url);
  await new Promise((resolve) => process.stdin.once('end', resolve).resume());
  echo.stop();
  rmSync(folder, { recursive: true, force: true });
};

export const launchEcho = (): Promise<{ url: string; pid: number; stop: () => Promise<unknown> }> =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, [process.argv[1]!, 'echo-process'], { stdio: ['pipe', 'pipe', 'inherit'] });
    const exited = new Promise((done) => child.once('exit', done));
    child.stdout.once('data', (d: Buffer) =>
      resolve({ url: d.toString().trim(), pid: child.pid!, stop: () => (child.stdin.end(), exited) }),
    );
  });
