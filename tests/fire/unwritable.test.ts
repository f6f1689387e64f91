import { spawnSync } from 'node:child_process';
import { afterAll, describe, expect, it } from 'vitest';
import { cleanUp, Page, startServer } from '../start/server.ts';

const ends: (() => unknown)[] = [];
afterAll(async () => {
  for (const end of ends.splice(0).toReversed()) await end();
});
/** Sets how large a file the running process may write; what is refused to it is what a disk gone read-only refuses. */
const mayWrite = (pid: number, bytes: string): boolean =>
  spawnSync('prlimit', ['--pid', String(pid), `--fsize=${bytes}:`]).status === 0;

describe('a disk that stops being written while the server runs', () => {
  it('refuses the note with words, shows it to nobody, and takes it once the disk is back', async (context) => {
    const running = await startServer();
    ends.push(() => cleanUp(running.data));
    ends.push(() => running.stop());
    const page = await new Page(running.url).opened();
    const other = await new Page(running.url).opened();
    const session = 'disk-goes-away';
    page.send({ is: 'open', session, coach: 'juniper-38', by: 'KD' });
    await page.note(session, 'disk-note-1', 'tank 95 psi');
    other.send({ is: 'follow', session, after: 0 });
    await other.until((f) => f.is === 'board');

    if (!mayWrite(running.child.pid!, '0')) return context.skip('the limit of a running process cannot be set here');
    const refused = await page.note(session, 'disk-note-2', 'tank 93 psi');
    expect(refused).toMatchObject({ is: 'refused', why: 'log failed', code: 4030, id: 'disk-note-2' });
    expect(refused.is === 'refused' && refused.words).toMatch(
      /^the .*Nothing was kept; it is safe to send it again\.$/,
    );
    expect(JSON.stringify(other.frames)).not.toContain('disk-note-2');
    // it reads on meanwhile
    const from = other.frames.length;
    other.send({ is: 'follow', session, after: 0 });
    const entries = await other.until((f) => f.is === 'entries', from);
    expect(entries.is === 'entries' && entries.entries.map((e) => e.seq)).toEqual([1, 2, 3]);

    mayWrite(running.child.pid!, 'unlimited');
    page.frames.length = 0;
    expect(await page.note(session, 'disk-note-2', 'tank 93 psi')).toMatchObject({ is: 'entries' });
    page.close();
    other.close();
    expect(await running.stop()).toBe(0);
  });
});
