/** Backup, restore and travelling sessions, by the commands a person types, on a server at work and at rest. */
import { spawn, spawnSync } from 'node:child_process';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import type { Entry } from '../../server/session/entry.ts';
import { cleanUp, Page, root, type Running, startServer } from '../start/server.ts';

const ends: (() => unknown)[] = [];
afterEach(async () => {
  for (const end of ends.splice(0).toReversed()) await end();
});
const folder = (): string => {
  const made = mkdtempSync(join(tmpdir(), 'soapwater-backup-'));
  ends.push(() => cleanUp(made));
  return made;
};
const serve = async (data: string): Promise<Running> => {
  const running = await startServer(data);
  ends.push(() => running.stop());
  return running;
};
const command = (data: string, ...args: string[]): Promise<{ code: number | null; out: string; err: string }> =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, [join(root, 'server', 'backup.mjs'), ...args], {
      env: { ...process.env, DATA: data, PORT: '1' },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let [out, err] = ['', ''];
    child.stdout.on('data', (d: Buffer) => (out += d.toString()));
    child.stderr.on('data', (d: Buffer) => (err += d.toString()));
    child.on('exit', (code) => resolve({ code, out, err }));
  });
const png = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);
const session = 'backup-session';
const entriesAt = async (url: string): Promise<Entry[]> =>
  ((await (await fetch(`${url}session/${session}.json`)).json()) as { entries: Entry[] }).entries;
const typed = async (url: string, ids: readonly string[]): Promise<void> => {
  const page = await new Page(url).opened();
  page.send({ is: 'open', session, coach: 'juniper-38', by: 'KD' });
  await page.until((f) => f.is === 'entries');
  for (const id of ids) await page.note(session, id, `tank ${90 + ids.indexOf(id)} psi`);
  page.close();
};

describe('npm run backup', () => {
  it('copies a log in use, with pictures and sums that another tool checks; restore brings it back', async () => {
    const data = folder();
    const running = await serve(data);
    await typed(running.url, ['note-one', 'note-two']);
    await fetch(`${running.url}photos`, { method: 'PUT', body: png });
    const before = await entriesAt(running.url);
    const kept = join(folder(), 'kept');
    const made = await command(data, 'backup', kept);
    expect(made).toMatchObject({ code: 0, err: '' });
    expect(made.out).toContain('1 sessions, 5 entries, 1 pictures, read back and checked');
    expect(spawnSync('sha256sum', ['--check', '--strict', '--quiet', 'SHA256SUMS'], { cwd: kept }).status).toBe(0);
    expect(await command(data, 'backup', kept)).toMatchObject({
      code: 1,
      err: `soapwater: ${kept} exists: name another folder\n`,
    });

    // the work goes on, and is what a restore puts aside
    await typed(running.url, ['note-late']);
    expect((await command(data, 'restore', kept)).err).toContain('is held by another soapwater');
    expect(await entriesAt(running.url)).toHaveLength(7);
    await running.stop();
    const restored = await command(data, 'restore', kept);
    expect(restored).toMatchObject({ code: 0, err: '' });
    const aside = /what was there is in (\S+)/.exec(restored.out)![1]!;
    expect(statSync(join(aside, 'soapwater.db')).size).toBeGreaterThan(0);
    expect(readdirSync(data).filter((n) => n.startsWith('arriving'))).toEqual([]);
    const again = await serve(data);
    expect(await entriesAt(again.url)).toEqual(before);
    expect(readdirSync(join(data, 'photos'))).toHaveLength(1);
  }, 120_000);

  it('works at rest, and restores over a damaged log', async () => {
    const data = folder();
    const running = await serve(data);
    await typed(running.url, ['note-one']);
    const before = await entriesAt(running.url);
    await running.stop();
    const kept = join(folder(), 'kept');
    expect((await command(data, 'backup', kept)).code).toBe(0);
    writeFileSync(join(data, 'soapwater.db'), 'no database any more '.repeat(400));
    await expect(startServer(data)).rejects.toThrow(
      /^exit 1: soapwater: the log [^\n]* is damaged: restore a backup[^\n]*\n$/,
    );
    expect((await command(data, 'restore', kept)).code).toBe(0);
    expect(await entriesAt((await serve(data)).url)).toEqual(before);
  }, 120_000);

  it('restores nothing when a file of the backup was changed, lost or added', async () => {
    const data = folder();
    const running = await serve(data);
    await typed(running.url, ['note-one']);
    await running.stop();
    const kept = join(folder(), 'kept');
    await command(data, 'backup', kept);
    const there = readFileSync(join(data, 'soapwater.db'));
    const refused = async (words: string): Promise<void> => {
      expect(await command(data, 'restore', kept)).toMatchObject({ code: 1, out: '', err: `soapwater: ${words}\n` });
      expect(readFileSync(join(data, 'soapwater.db')).equals(there)).toBe(true);
    };
    mkdirSync(join(kept, 'sheets'));
    writeFileSync(join(kept, 'sheets', 'extra.json'), '{}');
    await refused('sheets/extra.json was not backed up with the rest');
    rmSync(join(kept, 'sheets'), { recursive: true });
    appendFileSync(join(kept, 'soapwater.db'), ' ');
    await refused('soapwater.db is not what was backed up');
    rmSync(join(kept, 'soapwater.db'));
    await refused('soapwater.db is missing');
    rmSync(join(kept, 'SHA256SUMS'));
    await refused(`${kept} is no backup: it has no SHA256SUMS`);
  }, 120_000);

  it('says so when there is nothing to copy', async () => {
    const data = folder();
    expect(await command(data, 'backup')).toMatchObject({
      code: 1,
      out: '',
      err: `soapwater: there is no log in ${data}: set DATA to the folder that has one, or start the server there once\n`,
    });
    expect(existsSync(join(data, 'backups'))).toBe(false);
  });
});

describe('one session as a file', () => {
  it('goes to another machine at work and comes back, held to its mark', async () => {
    const [here, there] = [folder(), folder()];
    const [a, b] = [await serve(here), await serve(there)];
    await typed(a.url, ['note-one']);
    const file = join(folder(), 'away.json');
    const packed = await command(here, 'pack', session, file);
    expect(packed).toMatchObject({ code: 0, err: '' });
    const mark = /mark ([0-9a-f]{16})/.exec(packed.out)![1]!;

    const watching = await new Page(b.url).opened();
    expect((await command(there, 'unpack', file, 'ffff')).err).toContain('has the mark');
    expect((await command(there, 'unpack', file, mark)).out).toContain('3 entries added to 0');
    expect((await command(there, 'unpack', file, mark)).out).toContain('0 entries added to 3');
    watching.send({ is: 'follow', session, after: 0 });
    await watching.until((f) => f.is === 'board');
    await typed(b.url, ['note-two']);
    const back = join(folder(), 'back.json');
    await command(there, 'pack', session, back);

    const seen = await new Page(a.url).opened();
    seen.send({ is: 'follow', session, after: 3 });
    await seen.until((f) => f.is === 'board');
    expect((await command(here, 'unpack', back)).out).toContain('2 entries added to 3');
    await seen.until((f) => f.is === 'entries' && f.entries.some((e) => e.seq === 5));
    expect(await entriesAt(a.url)).toEqual(await entriesAt(b.url));

    writeFileSync(back, readFileSync(back, 'utf8').replace('tank 90 psi', 'tank 60 psi'));
    expect(await command(here, 'unpack', back)).toMatchObject({
      code: 1,
      err: 'soapwater: the file was changed after it was packed: its hash does not fit\n',
    });
    watching.close();
    seen.close();
  }, 120_000);

  it('is handed over to nobody who cannot read the data folder', async () => {
    const running = await serve(folder());
    for (const path of ['bench/copy', 'bench/unpack'])
      for (const headers of [{}, { 'x-soapwater-bench': 'guessed' }])
        expect((await fetch(`${running.url}${path}`, { method: 'POST', body: '/tmp/x', headers })).status).toBe(403);
    expect(statSync(join(running.data, 'server.json')).mode & 0o077).toBe(0);
  }, 60_000);
});
