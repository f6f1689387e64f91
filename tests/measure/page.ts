/** The page in a real Chromium: script that opens a session, and a session of 10,000 entries beside one of ten. */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium, type Browser, type BrowserContext } from 'playwright-core';
import { read, blankContext } from '../../intents/read.ts';
import { sqliteLog } from '../../server/log/sqlite.ts';
import type { Draft } from '../../server/session/entry.ts';
import { loadSheet } from '../../server/sheet/load.ts';
import { cleanUp, root, startServer } from '../start/server.ts';
import { line, ms, percentile } from './clock.ts';

const runs = 7;
const long = 10_000;
const short = 10;

/** A session as a long day of readings leaves it: notes that were read, replies with a block of words. */
const fill = async (file: string): Promise<void> => {
  const log = sqliteLog(file);
  const sheet = loadSheet(readFileSync(join(root, 'fixtures/sheets/juniper-38.json'), 'utf8'), 'juniper-38').hash;
  for (const entries of [short, long]) {
    const drafts: Draft[] = [{ is: 'opened', by: 'KD', coach: 'juniper-38', sheet, zone: 'UTC' }];
    for (let n = 0; drafts.length < entries; n += 1) {
      const id = `note-${entries}-${n}`;
      const text = `tank ${90 + (n % 30)} psi, left rear 13 1/4, round ${n}`;
      const at = Date.UTC(2026, 1, 3) + n * 60_000;
      drafts.push(
        { is: 'note', by: 'KD', id, text, at, seen: 0, read: read(text, blankContext(id, { at, zone: 'UTC' })) },
        {
          is: 'reply',
          by: 'soapwater',
          to: id,
          engine: 'x',
          blocks: [{ is: 'teach', words: `Kept, round ${n}.`, lines: ['One line more.'], terms: [] }],
        },
      );
    }
    await log.append(`measure-${entries}`, 0, drafts, at0);
  }
  await log.close();
};
const at0 = Date.UTC(2026, 1, 3);

/** ms from the start of the navigation until the newest note stands in a drawn frame, by the page's own clock; files of the page are in the browser's cache, as at any second opening. */
const opening = async (context: BrowserContext, url: string, session: string): Promise<number> => {
  const page = await context.newPage();
  await page.goto(`${url}#/session/${session}`, { waitUntil: 'commit' });
  const took = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        const look = (): void => {
          const sheet = document
            .querySelector('soap-page')
            ?.shadowRoot?.querySelector('soap-session')
            ?.shadowRoot?.querySelector('soap-sheet');
          const last = sheet?.shadowRoot?.querySelector('soap-exchange[open]')?.shadowRoot?.querySelector('.text');
          if (last) done(performance.now());
          else requestAnimationFrame(look);
        };
        look();
      }),
  );
  await page.close();
  return took;
};

/** Script asked for until the reader is here, apart from the reader: gzipped bytes of each, and all of it as brotli. */
const script = async (browser: Browser, url: string): Promise<{ opening: number; reader: number; sent: number }> => {
  const page = await browser.newPage({ viewport: { width: 360, height: 740 } });
  const asked: string[] = [];
  page.on('request', (r) => {
    const name = /assets\/([\w-]+\.js)$/.exec(r.url())?.[1];
    if (name !== undefined) asked.push(name);
  });
  await page.goto(`${url}#/session/measure-${short}`);
  await page.locator('soap-exchange[open]').waitFor();
  while (!asked.some((n) => n.startsWith('read-back'))) await page.waitForTimeout(20);
  await page.close();
  const size = (name: string): number =>
    gzipSync(readFileSync(join(root, '.build/page/assets', name)), { level: 9 }).length;
  const upTo = asked.findIndex((n) => n.startsWith('read-back'));
  const sum = (names: readonly string[], of: (name: string) => number): number =>
    names.reduce((all, n) => all + of(n), 0);
  return {
    opening: sum(asked.slice(0, upTo), size),
    reader: size(asked[upTo] ?? ''),
    sent: sum(asked.slice(0, upTo + 1), (n) => statSync(join(root, '.build/page/assets', `${n}.br`)).size),
  };
};

export const measurePage = async (): Promise<void> => {
  const executablePath = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find((p) => existsSync(p));
  if (executablePath === undefined) return line('page', 'no Chromium here', '', '');
  const data = mkdtempSync(join(tmpdir(), 'soapwater-page-'));
  await fill(join(data, 'soapwater.db'));
  const running = await startServer(data);
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const bytes = await script(browser, running.url);
    const kB = (n: number): string => `${(n / 1000).toFixed(1)} kB`;
    line(
      'script that opens a session',
      kB(bytes.opening),
      `the reader after it ${kB(bytes.reader)}; on the line, as brotli, ${kB(bytes.sent)}`,
      'at most 90 kB in total',
    );
    const times: Record<number, number[]> = { [short]: [], [long]: [] };
    const context = await browser.newContext({ viewport: { width: 360, height: 740 } });
    await opening(context, running.url, `measure-${short}`);
    const first = await opening(context, running.url, `measure-${long}`);
    for (let i = 0; i < runs; i += 1)
      for (const n of [short, long]) times[n]!.push(await opening(context, running.url, `measure-${n}`));
    const [a, b] = [percentile(times[short]!, 50), percentile(times[long]!, 50)];
    line(
      'opening a session of 10,000 entries',
      `${ms(b)} (first after the server's start ${ms(first)})`,
      `of ten entries ${ms(a)}, ${(b / a).toFixed(2)} times`,
      'at most 300 ms',
    );
  } finally {
    await browser.close();
    await running.stop();
    cleanUp(data);
  }
};
