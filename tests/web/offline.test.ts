/** Without a network: the page opens, shows what it has, and keeps what is typed. Needs a trusted origin: 127.0.0.1 is one. */
import { execFileSync } from 'node:child_process';
import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { readdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Draft } from '../../server/session/entry.ts';
import { openSession, phone, sheetOf, startBench, type, until, type Bench } from './bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());

describe('without a network', () => {
  test(
    'the page opens, shows the session as last seen, and sends what was typed when the network is back',
    { timeout: 60_000 },
    async () => {
      const page = await bench.page();
      const session = await openSession(page, bench.fake);
      await type(page, 'LR 13 1/4');
      await until(
        () => sheetOf(page),
        (l) => l[0]?.state === 'kept',
      );
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await until(
        () => page.evaluate(() => caches.keys()),
        (names) => names.some((n) => n.startsWith('soapwater-')),
      );
      await page.waitForTimeout(700);
      await page.context().setOffline(true);
      bench.fake.cut(true);
      await page.reload();
      await page.getByLabel('note', { exact: true }).waitFor();
      await page.getByText('not connected').waitFor();
      // what it last stood at is there, figures and all
      await page.getByRole('button', { name: /left rear.*13 1\/4/ }).waitFor();
      await page.getByLabel('note', { exact: true }).fill('RR 14');
      // the reader is kept too: the read-back stands without a network
      await page.locator('soap-line .took').getByText('right rear 14 in').waitFor();
      await page.getByLabel('note', { exact: true }).press('Enter');
      expect((await sheetOf(page)).at(-1)).toEqual({ text: 'RR 14', state: 'waiting' });
      await page.context().setOffline(false);
      bench.fake.cut(false);
      await until(
        () => sheetOf(page),
        (l) => l.at(-1)?.state === 'kept',
      );
      expect(
        bench.fake.sessions
          .get(session)
          ?.filter((e) => e.is === 'note')
          .map((e) => e.text),
      ).toEqual(['LR 13 1/4', 'RR 14']);
      bench.faults.splice(0);
      await page.context().close();
    },
  );
});

describe('bad input is answered in a clear word and nothing is lost', () => {
  test('a 100 kB paste stays in the line and says by how much it is too long', async () => {
    const page = await bench.page();
    await openSession(page, bench.fake);
    await page.getByLabel('note', { exact: true }).fill('x'.repeat(100_000));
    await page.getByText('96000 characters too long').waitFor();
    await page.getByLabel('note', { exact: true }).press('Enter');
    expect(await sheetOf(page)).toEqual([]);
    expect((await page.getByLabel('note', { exact: true }).inputValue()).length).toBe(100_000);
    await page.context().close();
  });

  test('a picture is shrunk, goes with its note and a file that is none is refused by name', async () => {
    const page = await bench.page(phone);
    const session = await openSession(page, bench.fake);
    await page.getByLabel('note', { exact: true }).fill('cracked at the crimp');
    const bytes = await page.evaluate(async () => {
      const canvas = document.createElement('canvas');
      canvas.width = 4000;
      canvas.height = 3000;
      canvas.getContext('2d')?.fillRect(100, 100, 2000, 900);
      const blob = await new Promise<Blob | null>((r) => canvas.toBlob(r, 'image/png'));
      return Array.from(new Uint8Array(await (blob?.arrayBuffer() ?? new ArrayBuffer(0))));
    });
    await page.locator('input[accept="image/*"]').setInputFiles([
      { name: 'crimp.png', mimeType: 'image/png', buffer: Buffer.from(bytes) },
      { name: 'notes.pdf', mimeType: 'image/png', buffer: Buffer.from('no picture at all') },
    ]);
    await page.getByText('notes.pdf is not a picture').waitFor();
    await page.getByRole('button', { name: /picture 1/ }).waitFor();
    await page.getByLabel('note', { exact: true }).press('Enter');
    await until(
      () => sheetOf(page),
      (l) => l[0]?.state === 'kept',
    );
    const note = bench.fake.sessions.get(session)?.find((e) => e.is === 'note');
    expect(note?.is === 'note' ? note.photos : []).toEqual([
      { id: 'a'.repeat(64), width: 1600, height: 1200, words: 'crimp.png' },
    ]);
    await page.context().close();
  });

  test('60 MB is refused before it is opened', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    const folder = await mkdtemp(join(tmpdir(), 'big-'));
    await writeFile(join(folder, 'big.jpg'), Buffer.alloc(61_000_000));
    await page.getByLabel('note', { exact: true }).fill('x');
    await page.locator('input[accept="image/*"]').setInputFiles(join(folder, 'big.jpg'));
    await page.getByText('big.jpg is 61 MB: too big').waitFor();
    await page.context().close();
  });
});

describe('long and printed', () => {
  test(
    'a session of 10,000 entries opens, shows its newest, and gives earlier ones on asking',
    { timeout: 60_000 },
    async () => {
      const session = 'longsession0001';
      const drafts: Draft[] = [{ is: 'opened', by: 'MK', coach: 'juniper-38', sheet: 's', zone: 'America/Denver' }];
      const at = Date.UTC(2026, 1, 3, 15);
      for (let i = 0; i < 5000; i += 1) {
        const id = `longnote${String(i).padStart(6, '0')}`;
        drafts.push(
          {
            is: 'note',
            by: 'MK',
            id,
            text: `tank ${60 + (i % 50)} psi, round ${i}`,
            at: at + i * 1000,
            seen: 0,
            read: { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] },
          },
          { is: 'reply', by: 'soapwater', to: id, engine: 'fake', blocks: [] },
        );
      }
      bench.fake.put(session, drafts);
      const page = await bench.page();
      let frames = 0;
      page.on('websocket', (w) => w.on('framereceived', () => (frames += 1)));
      const cdp = await page.context().newCDPSession(page);
      await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
      await page.goto(`${bench.fake.url}#/session/${session}`);
      await page.getByText('round 4999').waitFor();
      // welcome, sessions, one stretch of entries, the board: not twenty pages of the whole past
      expect(frames).toBeLessThanOrEqual(6);
      const { metrics } = await cdp.send('Performance.getMetrics');
      // processor time of the page, so that a busy machine does not count: 0.2 s seen
      expect(metrics.find((m) => m.name === 'TaskDuration')?.value).toBeLessThan(1);
      const drawn = page.locator('soap-exchange');
      expect(
        await until(
          () => drawn.count(),
          (n) => n >= 150,
        ),
      ).toBeLessThanOrEqual(201);
      // what is out of sight is not laid out, and yet found and printed
      expect(await drawn.first().evaluate((x) => getComputedStyle(x).contentVisibility)).toBe('auto');
      // earlier ones come on asking, and what is read stays where it is
      const sheet = page.locator('soap-sheet');
      await sheet.evaluate((x) => x.scrollTo(0, 0));
      const first = page.getByText('round 4800', { exact: false });
      const was = await first.boundingBox();
      await page.getByRole('button', { name: /^earlier/ }).click();
      await page.getByText('round 4790', { exact: false }).waitFor({ state: 'attached' });
      await until(
        () => drawn.count(),
        (n) => n >= 390,
      );
      expect(await drawn.count()).toBeLessThanOrEqual(401);
      expect(Math.abs(((await first.boundingBox())?.y ?? 9999) - (was?.y ?? 0))).toBeLessThan(80);
      await page.context().close();
    },
  );

  test(
    'the transcript prints: typed, found, taken back, cautions answered, all in the PDF text',
    { timeout: 60_000 },
    async () => {
      const page = await bench.page();
      await openSession(page, bench.fake);
      for (const text of [
        'sags overnight',
        'LR 13 1/4 RR 14',
        'going under to look',
        'on stands',
        'tank 112 at 9:05, 104 at 9:35',
        'undo',
      ]) {
        await type(page, text);
        await until(
          () => sheetOf(page),
          (l) => l.at(-1)?.text === text && l.at(-1)?.state === 'kept',
        );
      }
      await page.getByRole('button', { name: 'menu' }).click();
      await page.getByRole('link', { name: 'transcript' }).click();
      await page.getByRole('heading', { name: 'As it went' }).waitFor();
      const folder = await mkdtemp(join(tmpdir(), 'pdf-'));
      await page.pdf({
        path: join(folder, 'out.pdf'),
        format: 'A4',
        margin: { top: '15mm', bottom: '15mm', left: '15mm', right: '15mm' },
      });
      // poppler's reader, nothing of ours
      const text = execFileSync('pdftotext', ['-layout', join(folder, 'out.pdf'), '-'], { encoding: 'utf8' });
      for (const words of [
        'Juniper 38',
        'sags overnight',
        '1/2 in low left rear',
        'coach sheet: heights left rear',
        'Is the frame on stands?',
        'yes: on stands',
        'took back: undo',
        '112',
      ])
        expect(text).toContain(words);
      expect(text).not.toContain('back to the sheet');
      await page.context().close();
    },
  );
});

describe('what is sent to the page', () => {
  // the goal is 90 kB for both; why it is not met, and why the reader's bar went up, stands in DEVELOPERS.md
  test('what opens a session is at most 42 kB gzipped, the reader that follows 175; what is fetched on asking is not among it', async () => {
    const folder = join(bench.folder, 'assets');
    const size = async (name: string): Promise<number> =>
      gzipSync(await readFile(join(folder, name)), { level: 9 }).length;
    const page = await bench.page(phone);
    const asked: string[] = [];
    page.on('request', (r) => {
      const name = /assets\/(.+\.js)$/.exec(r.url())?.[1];
      if (name !== undefined) asked.push(name);
    });
    const readerCame = (): Promise<string[]> =>
      until(
        () => Promise.resolve([...asked]),
        (l) => l.some((n) => n.startsWith('read-back')),
      );
    await openSession(page, bench.fake);
    await readerCame();
    // what is fetched behind the reader has been asked for, so that none of it is counted for the next opening
    await until(
      () => Promise.resolve([...asked]),
      (l) => ['menu', 'pad', 'side', 'timer', 'circuit'].every((room) => l.some((n) => n.startsWith(room))),
    );
    asked.length = 0;
    await page.reload();
    await readerCame();
    const upTo = asked.findIndex((n) => n.startsWith('read-back'));
    const opening = asked.slice(0, upTo);
    expect(opening.some((n) => /^(?:menu|learn|transcript|start|photos|timer)/.test(n))).toBe(false);
    let sum = 0;
    for (const name of opening) sum += await size(name);
    expect(sum).toBeGreaterThan(10_000);
    expect(sum).toBeLessThan(42_000);
    expect(await size(asked[upTo] ?? '')).toBeLessThan(175_000);
    await page.context().close();
  });

  test('nothing in it names another host', async () => {
    const names = (await readdir(bench.folder, { recursive: true })).filter((n) =>
      /\.(js|css|html|webmanifest)$/.test(n),
    );
    const hosts = new Set<string>();
    for (const name of names)
      for (const m of (await readFile(join(bench.folder, name), 'utf8')).matchAll(/https?:\/\/([a-z0-9.-]+)/gi))
        hosts.add(m[1] ?? '');
    // names of XML and JSON vocabularies are never fetched; lit.dev stands in its error texts
    for (const known of ['www.w3.org', 'json-schema.org', 'lit.dev']) hosts.delete(known);
    expect([...hosts]).toEqual([]);
  });
});
