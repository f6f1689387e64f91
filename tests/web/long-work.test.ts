/** Long work says what it is and how far it has come, is stopped by a key, and holds up nothing that is typed. */
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { Draft } from '../../server/session/entry.ts';
import { goTo, openSession, phone, startBench, until, type Bench } from './bench.ts';

let bench: Bench;
let folder: string;
beforeAll(async () => {
  bench = await startBench();
  folder = await mkdtemp(join(tmpdir(), 'long-'));
}, 60_000);
afterAll(async () => bench.stop());
afterEach(() => {
  bench.fake.mute = false;
  expect(bench.faults.splice(0)).toEqual([]);
});

const long = (session: string, notes: number): void => {
  const drafts: Draft[] = [{ is: 'opened', by: 'MK', coach: 'juniper-38', sheet: 's', zone: 'America/Denver' }];
  for (let i = 0; i < notes; i += 1) {
    const id = `longnote${String(i).padStart(6, '0')}`;
    const read = { facts: [], amends: [], asks: [], hazards: [], ambiguous: [], unread: [] };
    drafts.push(
      { is: 'note', by: 'MK', id, text: `round ${i}`, at: Date.UTC(2026, 1, 3, 15) + i * 1000, seen: 0, read },
      { is: 'reply', by: 'soapwater', to: id, engine: 'fake', blocks: [] },
    );
  }
  bench.fake.put(session, drafts);
};
const line = (page: Page): Promise<string> => page.getByLabel('note', { exact: true }).inputValue();
/** The longest that a key typed now had to wait, ms, from here to the returned end. */
const waits = async (page: Page): Promise<() => Promise<number>> => {
  await page.evaluate(() => {
    const w = globalThis as unknown as { longest: number; stop: boolean };
    w.longest = 0;
    w.stop = false;
    let last = performance.now();
    const tick = (): void => {
      const now = performance.now();
      w.longest = Math.max(w.longest, now - last);
      last = now;
      if (!w.stop) setTimeout(tick, 0);
    };
    tick();
  });
  return () =>
    page.evaluate(() => {
      const w = globalThis as unknown as { longest: number; stop: boolean };
      w.stop = true;
      return w.longest;
    });
};

describe('earlier notes of a long session', () => {
  test('are stopped by a key, what is here stays, and a later tap brings them', async () => {
    long('long-session-1', 1000);
    const page = await bench.page(phone);
    await goTo(page, bench.fake, 'long-session-1');
    await page.getByText('round 999').waitFor();
    bench.fake.mute = true;
    const sheet = page.locator('soap-sheet');
    await sheet.evaluate((x) => x.scrollTo(0, 0));
    await page.getByRole('button', { name: /^earlier/ }).tap();
    await page
      .getByText(/fetching earlier notes, 1601 entries before these/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: /^stop fetching earlier/ }).tap();
    bench.fake.mute = false;
    await page.getByRole('button', { name: /^earlier/ }).tap();
    await page.getByText('round 790').waitFor({ state: 'attached' });
    await page.context().close();
  });

  test('a transcript says how far it has come; stopped, it shows what is here and fetches the rest on asking', async () => {
    long('long-session-2', 1000);
    const page = await bench.page(phone);
    await goTo(page, bench.fake, 'long-session-2');
    await page.getByText('round 999').waitFor();
    bench.fake.mute = true;
    await page.goto(`${bench.fake.url}#/session/long-session-2/transcript`);
    await page.getByText('fetching the transcript: 400 of 2001 entries').first().waitFor();
    expect(await page.locator('progress').evaluate((p) => (p as HTMLProgressElement).position)).toBeCloseTo(0.2, 2);
    await page.getByRole('button', { name: /^stop fetching the transcript/ }).tap();
    await page.getByText('The first 1601 entries are not here.').waitFor();
    await page.getByText('round 999').waitFor();
    bench.fake.mute = false;
    await page.getByRole('button', { name: 'fetch the rest' }).tap();
    await page.getByText('round 0', { exact: true }).first().waitFor();
    await page.context().close();
  });

  test(
    'a transcript of 10,000 entries is drawn stretch by stretch, and paper gets all of it',
    { timeout: 120_000 },
    async () => {
      long('long-session-3', 5000);
      const page = await bench.page();
      await page.goto(`${bench.fake.url}#/session/long-session-3/transcript`);
      await page.getByText('round 0', { exact: true }).first().waitFor();
      const rows = page.locator('soap-transcript article');
      await page.evaluate(() => dispatchEvent(new Event('beforeprint')));
      expect(await rows.count()).toBe(5000);
      await page.context().close();
    },
  );
});

describe('a file', () => {
  test('of a logger is read beside the page: the line takes letters meanwhile, and what was typed stays', async () => {
    const two = (n: number): string => String(n).padStart(2, '0');
    const rows = Array.from({ length: 80_000 }, (_, s) => {
      const clock = `${two(Math.floor(s / 3600) % 24)}:${two(Math.floor(s / 60) % 60)}:${two(s % 60)}`;
      return `${clock},${(110 - s / 9000).toFixed(1)}`;
    });
    const file = join(folder, 'night.csv');
    await writeFile(file, ['time,tank psi', ...rows].join('\n'));
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    const note = page.getByLabel('note', { exact: true });
    await note.fill('x');
    await note.fill('');
    const longest = await waits(page);
    await page.getByRole('button', { name: 'number pad' }).tap();
    await page.locator('input[accept^=".csv"]').setInputFiles(file);
    await page.getByText('reading night.csv…').first().waitFor();
    await note.pressSequentially('sags');
    // before the readings or after them, as the file was slower or faster than the thumb: whole, on a line of its own
    await until(
      () => line(page),
      (l) => l.split('\n').includes('sags') && l.includes('110.0 psi'),
    );
    // reading it took the page about a second where it was read in the page
    expect(await longest()).toBeLessThan(600);
    await page.context().close();
  });

  test('being read is stopped by a key, and the line stays as it was', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    await page.getByLabel('note', { exact: true }).fill('tank');
    await page.locator('input[accept^=".csv"]').setInputFiles(join(folder, 'night.csv'));
    await page.getByRole('button', { name: 'stop reading night.csv…' }).tap();
    await page.locator('soap-session .work').waitFor({ state: 'detached' });
    await page.waitForTimeout(3000);
    expect(await line(page)).toBe('tank');
    await page.context().close();
  });

  test('that is a big picture is stopped while it shrinks, and does not go with the note', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    await page.getByLabel('note', { exact: true }).fill('crimp');
    // a picture whose opening takes for ever, as a phone with little memory would
    await page.evaluate(() => {
      (globalThis as unknown as { createImageBitmap: () => Promise<never> }).createImageBitmap = () =>
        new Promise(() => undefined);
    });
    await page.locator('input[accept="image/*"]').setInputFiles([
      { name: 'one.png', mimeType: 'image/png', buffer: Buffer.from('x') },
      { name: 'two.png', mimeType: 'image/png', buffer: Buffer.from('x') },
    ]);
    await page.getByText('shrinking one.png, 1 of 2…').first().waitFor();
    await page.getByRole('button', { name: /^stop shrinking/ }).tap();
    await page.locator('soap-session .work').waitFor({ state: 'detached' });
    expect(await page.getByRole('button', { name: /^picture 1/ }).count()).toBe(0);
    await page.getByLabel('note', { exact: true }).press('Enter');
    await page.locator('soap-exchange .text', { hasText: 'crimp' }).waitFor();
    await page.context().close();
  });
});
