/** The papers of a job by keyboard alone, on a phone, a tablet and a bench screen: read, written, signed for, kept. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page as BrowserPage } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { cleanUp, startServer, type Running } from '../start/server.ts';
import { launch } from './bench.ts';
import { tellLeak } from './tell-leak.ts';

let running: Running;
let browser: Browser;
beforeAll(async () => {
  running = await startServer(mkdtempSync(join(tmpdir(), 'soapwater-keys-')));
  browser = await launch();
}, 120_000);
afterAll(async () => {
  await browser?.close();
  await running?.stop();
  if (running) cleanUp(running.data);
});

/** What has the focus, by the name a screen reader gives it, and whether it can be seen. */
const focused = (page: BrowserPage): Promise<{ name: string; seen: boolean }> =>
  page.evaluate(() => {
    let el: Element | null = document.activeElement;
    while (el?.shadowRoot?.activeElement) el = el.shadowRoot.activeElement;
    if (!el) return { name: '', seen: true };
    const root = el.getRootNode() as ParentNode;
    const label = el.closest('label') ?? (el.id ? root.querySelector(`label[for="${el.id}"]`) : null);
    const by = el.getAttribute('aria-labelledby');
    const named = by
      ? by
          .split(' ')
          .map((id) => root.querySelector(`#${id}`)?.textContent ?? '')
          .join(' ')
      : null;
    const name = el.getAttribute('aria-label') ?? named ?? label?.textContent ?? el.textContent ?? '';
    const { top, bottom } = el.getBoundingClientRect();
    return { name: name.replace(/\s+/g, ' ').trim(), seen: bottom > 0 && top < innerHeight };
  });
/** Tabs until the focus stands on what has this name; whatever it passes on the way is in sight. */
const to = async (page: BrowserPage, name: RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> => {
  for (let i = 0; i < 120; i += 1) {
    const here = await focused(page);
    if (name.test(here.name)) return;
    expect(here.seen, `focus on “${here.name}” is out of sight`).toBe(true);
    await page.keyboard.press(key);
  }
  throw new Error(`no way to ${name} by ${key}`);
};
const press = async (page: BrowserPage, name: RegExp): Promise<void> => {
  await to(page, name);
  await page.keyboard.press('Enter');
};
const write = async (page: BrowserPage, name: RegExp, text: string): Promise<void> => {
  await to(page, name);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
};

test.each([
  [360, 740],
  [768, 1024],
  [1400, 860],
] as const)(
  'report, estimate, sheet, history, shop and learn by keys alone, %i px wide',
  { timeout: 120_000 },
  async (width, height) => {
    const session = `keys-session-${width}`;
    await tellLeak(running.url, session);
    const page = await (await browser.newContext({ viewport: { width, height } })).newPage();
    page.setDefaultTimeout(20_000);
    await page.addInitScript(() => localStorage.setItem('soapwater.by', 'MK'));
    await page.addInitScript(() => {
      Object.assign(globalThis, { print: () => localStorage.setItem('printed', 'yes') });
    });
    await page.goto(`${running.url}#/session/${session}`);
    await page.getByLabel('note', { exact: true }).waitFor();

    // the report: to it by the menu, printed
    await press(page, /^menu$/);
    await page.getByRole('link', { name: 'report' }).first().waitFor();
    await press(page, /report/);
    await page.getByRole('heading', { name: 'Before and after' }).waitFor();
    await press(page, /^print$/);
    expect(await page.evaluate(() => localStorage.getItem('printed'))).toBe('yes');

    // the estimate: a line written, its price left open, declined by name
    await to(page, /^estimate$/, 'Shift+Tab');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: /: estimate$/ }).waitFor();
    // the shop's rate on the way, and back
    await press(page, /^change$/);
    await page.getByRole('heading', { name: 'The shop' }).waitFor();
    await write(page, /^labour an hour/, '121');
    await press(page, /^keep$/);
    await page.getByText('Kept. Estimates written before keep their rate.').waitFor();
    await to(page, /^back to the estimate$/, 'Shift+Tab');
    await page.keyboard.press('Enter');
    await page.getByText('Labour 121').waitFor();
    await press(page, /^add a line$/);
    await write(page, /^work, in words for the owner/, 'renew the left link');
    await write(page, /^hands-on, min/, '30');
    await press(page, /^add a part$/);
    await write(page, /^part/, 'link');
    await press(page, /^keep the estimate$/);
    await page.getByText('price of link').waitFor();
    await press(page, /^decline/);
    await page.keyboard.type('A. Rowe');
    await page.keyboard.press('Enter');
    await page.getByText('✗ declined').waitFor();
    await to(page, /^report$/, 'Shift+Tab');
    await page.keyboard.press('Enter');
    await page.getByText('declined by A. Rowe').waitFor();

    // the sheet: a limit of the session taken in, saved, gone on by
    await page.goto(`${running.url}#/sheet/juniper-38/${session}`);
    await page.getByRole('heading', { name: /^Coach sheet/ }).waitFor();
    await page.getByText('Limits given in the session').waitFor();
    const taken = await page.getByRole('button', { name: 'taken' }).count();
    if (taken === 0) await press(page, /^take into the sheet$/);
    await press(page, /^Air supply/);
    await write(page, /^why it is changed/, `for ${width}`);
    await page.getByRole('heading', { name: 'Versions' }).waitFor();
    if (taken === 0) {
      await press(page, /^save as a new version$/);
      await page.getByText('Saved as a new version.').waitFor();
    }

    // history and a reading of it back to its note
    await to(page, /^history$/, 'Shift+Tab');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'What was done when' }).waitFor();
    await press(page, /^note \d+$/);
    await page.getByRole('heading', { name: 'As it went' }).waitFor();

    // learn: asked, a word opened, a check read
    await page.goto(`${running.url}#/learn`);
    await page.getByRole('heading', { name: 'Learn' }).waitFor();
    await write(page, /^Find a word/, 'leak');
    await press(page, /^Timed leak-down/);
    await page.getByRole('heading', { name: /^Timed leak-down/ }).waitFor();
    await page.context().close();
  },
);
