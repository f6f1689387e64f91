import { spawn } from 'node:child_process';
import { chmodSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { get } from 'node:http';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync } from 'node:zlib';
import { afterAll, describe, expect, it } from 'vitest';
import { cleanUp, Page, root, startServer } from './server.ts';

const folders: string[] = [];
const folder = (): string => {
  const made = mkdtempSync(join(tmpdir(), 'soapwater-start-'));
  folders.push(made);
  return made;
};
afterAll(() => folders.forEach(cleanUp));

const failure = async (env: Record<string, string>, data = folder()): Promise<string> => {
  try {
    const running = await startServer(data, env);
    await running.stop();
  } catch (error) {
    return (error as Error).message;
  }
  throw new Error('it started');
};

describe('npm start', () => {
  it('serves the page on loopback and says where, and ends when told', async () => {
    const running = await startServer(folder());
    const page = await fetch(running.url);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('soapwater');
    expect(page.headers.get('content-security-policy')).not.toContain('unsafe');
    expect(await running.stop()).toBe(0);
  });

  it('hands scripts over packed to who takes brotli, and plain to who does not', async () => {
    const running = await startServer(folder());
    const assets = join(root, '.build', 'page', 'assets');
    const name = readdirSync(assets).find((n) => /^read-back.*\.js$/.test(n)) ?? '';
    const take = (encoding: string): Promise<{ headers: Record<string, unknown>; body: Buffer }> =>
      new Promise((resolve) => {
        get(`${running.url}assets/${name}`, { headers: { 'accept-encoding': encoding } }, (response) => {
          const parts: Buffer[] = [];
          response.on('data', (d: Buffer) => parts.push(d));
          response.on('end', () => resolve({ headers: response.headers, body: Buffer.concat(parts) }));
        });
      });
    const plain = readFileSync(join(assets, name));
    const packed = await take('gzip, br');
    expect(packed.headers).toMatchObject({ 'content-encoding': 'br', vary: 'Accept-Encoding' });
    expect(packed.headers['content-type']).toMatch(/^text\/javascript/);
    expect(packed.headers['cache-control']).toContain('immutable');
    expect(packed.body.length * 3).toBeLessThan(plain.length);
    expect(brotliDecompressSync(packed.body).equals(plain)).toBe(true);
    const bare = await take('gzip');
    expect(bare.headers['content-encoding']).toBeUndefined();
    expect(bare.body.equals(plain)).toBe(true);
    expect(await running.stop()).toBe(0);
  });

  it('says in one line that the port is taken', async () => {
    const blocker = createServer();
    await new Promise<void>((resolve) => blocker.listen(0, '127.0.0.1', resolve));
    const { port } = blocker.address() as { port: number };
    expect(await failure({ PORT: String(port) })).toMatch(
      new RegExp(`^exit 1: soapwater: port ${port} is taken[^\\n]*\\n$`),
    );
    blocker.close();
  });

  it('says in one line that PORT is no port', async () => {
    expect(await failure({ PORT: 'front' })).toMatch(/^exit 1: soapwater: PORT is "front"[^\n]*\n$/);
  });

  it('says in one line that the data folder cannot be written', async () => {
    const data = folder();
    const file = join(data, 'file');
    writeFileSync(file, '');
    chmodSync(file, 0o400);
    expect(await failure({}, join(file, 'below'))).toMatch(
      /^exit 1: soapwater: the data folder [^\n]* cannot be written[^\n]*\n$/,
    );
  });

  it('says in one line that another server holds the log, and leaves that one alone', async () => {
    const data = folder();
    const first = await startServer(data);
    expect(await failure({}, data)).toMatch(/^exit 1: soapwater: the log [^\n]* is held by another soapwater[^\n]*\n$/);
    expect((await fetch(first.url)).status).toBe(200);
    await first.stop();
  });

  it('says which sheet is wrong and where, and serves the others', async () => {
    const data = folder();
    const { mkdirSync } = await import('node:fs');
    mkdirSync(join(data, 'sheets'));
    writeFileSync(
      join(data, 'sheets', 'mine.json'),
      JSON.stringify({ v: 1, id: 'mine', coach: 'Mine', source: 'x', units: {}, zone: 'UTC' }),
    );
    const running = await startServer(data);
    expect(running.errors()).toContain('mine.json: pressure (units.pressure): is missing');
    const page = await new Page(running.url).opened();
    const welcome = page.frames.find((f) => f.is === 'welcome');
    expect(welcome?.is === 'welcome' && welcome.coaches.map((c) => c.id)).toEqual(['juniper-38', 'larkfield-11']);
    page.close();
    await running.stop();
  });

  it('refuses a Node that is too old with one line', async () => {
    const code = `import { checkNode } from ${JSON.stringify(join(root, 'server', 'prepare.mjs'))}; checkNode('18.20.0')`;
    const child = spawn(process.execPath, ['--input-type=module', '-e', code], { stdio: ['ignore', 'ignore', 'pipe'] });
    let words = '';
    child.stderr.on('data', (d: Buffer) => (words += d.toString()));
    const exit = await new Promise((resolve) => child.on('exit', resolve));
    expect(exit).toBe(1);
    expect(words).toBe('soapwater: Node 18.20.0 is too old: Node 20.19 or newer is needed\n');
  });
});
