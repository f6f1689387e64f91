import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { openLog } from '../../server/log/open.ts';
import { LogRefused } from '../../server/log/refused.ts';

const folder = mkdtempSync(join(tmpdir(), 'soapwater-thread-'));
afterEach(() => rmSync(folder, { recursive: true, force: true }));
const script = (code: string): URL =>
  new URL(`data:text/javascript,${encodeURIComponent(`import { parentPort } from 'node:worker_threads'; ${code}`)}`);

describe('the thread of the log', () => {
  it('refuses what waits and what comes once it is gone, and says so', async () => {
    let told: (words: string) => void = () => undefined;
    const ended = new Promise<string>((resolve) => (told = resolve));
    const code = `parentPort.postMessage({ open: true }); parentPort.on('message', () => { throw new Error('torn'); });`;
    const log = await openLog(join(folder, 'log.db'), script(code), told);
    await expect(log.read('session-1')).rejects.toThrow(LogRefused);
    expect(await ended).toMatch(/log\.db is no longer held: torn: start the server again$/);
    await expect(log.mark('session-1')).rejects.toThrow('no longer held');
  });

  it('hands on why the file could not be opened', async () => {
    const code = `parentPort.postMessage({ open: false, words: 'the log is damaged' });`;
    const never = (): void => expect.unreachable('it was never open');
    await expect(openLog('log.db', script(code), never)).rejects.toThrow(new LogRefused('the log is damaged'));
  });

  it('does not leave who opens it waiting when it ends at once', async () => {
    await expect(openLog('log.db', script(`throw new Error('no such module');`), () => undefined)).rejects.toThrow(
      'no such module',
    );
  });
});
