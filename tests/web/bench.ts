/** What the browser tests share: the page built once a file, one fake server, one Chromium; and how a person uses it. */
import { mkdtemp, rm } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright-core';
import { build } from 'vite';
import { vi } from 'vitest';
import { startFake, type FakeServer } from './fake-server.ts';

// a browser on a machine that is busy with other suites: seconds become a minute, and that is no fault of the page
vi.setConfig({ testTimeout: 90_000 });

const root = new URL('../..', import.meta.url).pathname;

export const chromiumPath = ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find((p) => existsSync(p));

export type Bench = {
  fake: FakeServer;
  folder: string;
  /** A page of its own, in a browser profile of its own unless one is given. */
  page: (options?: BrowserContextOptions & { context?: BrowserContext }) => Promise<Page>;
  /** Faults seen on any page: exceptions, errors on the console, requests to other hosts. */
  faults: string[];
  stop: () => Promise<void>;
};

export const phone: BrowserContextOptions = { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true };
export const desk: BrowserContextOptions = { viewport: { width: 1400, height: 860 } };

export const launch = (): Promise<Browser> =>
  chromium.launch({
    ...(chromiumPath === undefined ? {} : { executablePath: chromiumPath }),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
  });

export const startBench = async (): Promise<Bench> => {
  const folder = await mkdtemp(join(tmpdir(), 'page-'));
  await build({
    configFile: join(root, 'web/vite.config.ts'),
    logLevel: 'error',
    build: { outDir: folder, emptyOutDir: true },
  });
  const fake = await startFake(folder);
  const browser = await launch();
  const faults: string[] = [];
  const watch = (page: Page): void => {
    page.on('pageerror', (e) => faults.push(String(e)));
    page.on('console', (m) => {
      // a lost connection is on purpose here
      if (m.type() === 'error' && !/WebSocket|net::ERR|Failed to load resource/.test(m.text())) faults.push(m.text());
    });
    page.on('request', (r) => {
      const url = new URL(r.url());
      if (url.protocol.startsWith('http') && url.hostname !== '127.0.0.1') faults.push(`asked ${r.url()}`);
    });
  };
  return {
    fake,
    folder,
    faults,
    page: async ({ context, ...options } = {}) => {
      const page = await (context ?? (await browser.newContext({ ...desk, ...options }))).newPage();
      page.setDefaultTimeout(45_000);
      watch(page);
      return page;
    },
    stop: async () => {
      await browser.close();
      await fake.stop();
      await rm(folder, { recursive: true, force: true });
    },
  };
};

/** Opens a fresh session from the first page and returns its id. */
export const openSession = async (page: Page, fake: FakeServer, by = 'MK'): Promise<string> => {
  await page.goto(fake.url);
  await page.getByLabel('Your initials').fill(by);
  await page.getByRole('button', { name: /Juniper 38/ }).click();
  await page.getByRole('button', { name: 'start', exact: true }).click();
  await page.getByLabel('note', { exact: true }).waitFor();
  return /session\/([a-z0-9-]+)/.exec(page.url())?.[1] ?? '';
};

export const goTo = async (page: Page, fake: FakeServer, session: string): Promise<void> => {
  await page.goto(`${fake.url}#/session/${session}`);
  await page.getByLabel('note', { exact: true }).waitFor();
};

export const type = async (page: Page, text: string): Promise<void> => {
  await page.getByLabel('note', { exact: true }).fill(text);
  await page.getByLabel('note', { exact: true }).press('Enter');
};

/** What the sheet shows, oldest first: the text of each note with its state. */
export const sheetOf = (page: Page): Promise<{ text: string; state: string }[]> =>
  page.locator('soap-exchange').evaluateAll((list) =>
    list.flatMap((x) => {
      const text = x.shadowRoot?.querySelector('.text')?.textContent;
      const state = x.shadowRoot?.querySelector('.state')?.textContent ?? '';
      return text === null || text === undefined ? [] : [{ text, state: state.trim() }];
    }),
  );

/** Waits until `ask` gives what `good` wants; fails with what it gave last. */
export const until = async <T>(ask: () => Promise<T>, good: (value: T) => boolean, within = 45_000): Promise<T> => {
  const end = Date.now() + within;
  let value = await ask();
  while (!good(value)) {
    if (Date.now() > end) throw new Error(`still ${JSON.stringify(value)}`);
    await new Promise((r) => {
      setTimeout(r, 25);
    });
    value = await ask();
  }
  return value;
};
