/** Papers in a real Chromium, over the real server: read, written, printed, by keyboard, for everybody. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync, mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page as BrowserPage } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cleanUp, startServer, type Running } from '../start/server.ts';
import { desk, phone, launch, until } from './bench.ts';
import { tellLeak, tellNotes } from './tell-leak.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let running: Running;
let browser: Browser;
const session = 'paper-session';
/** Its last reply has a drawing. */
const tall = 'tall-session';
beforeAll(async () => {
  const data = mkdtempSync(join(tmpdir(), 'soapwater-paper-'));
  mkdirSync(join(data, 'sheets'));
  writeFileSync(
    join(data, 'sheets', 'broken.json'),
    readFileSync(new URL('../../fixtures/sheets/juniper-38.json', import.meta.url), 'utf8').replace(
      '"1200 ft"',
      '"1200"',
    ),
  );
  running = await startServer(data);
  await tellLeak(running.url, session);
  await tellNotes(running.url, tall, [
    'sags overnight, fine when driving',
    'tank 54, LR 11 1/2 RR 13 3/4 LF 15 1/4 RF 15 1/4, parked 10 hours, key off, panel road, jacks up, floor level',
    'panel shut, tank 112 an hour ago',
    'tank 111 50 min ago',
    'tank 108 40 min ago',
    'tank 105 30 min ago',
    'tank 102',
  ]);
  browser = await launch();
}, 120_000);
afterAll(async () => {
  await browser?.close();
  await running?.stop();
  if (running) cleanUp(running.data);
});

const goTo = async (hash: string, options: object = desk, theme?: string): Promise<BrowserPage> => {
  const page = await (await browser.newContext(options)).newPage();
  page.setDefaultTimeout(20_000);
  await page.addInitScript(axeSource);
  await page.addInitScript(() => localStorage.setItem('soapwater.by', 'MK'));
  if (theme) await page.addInitScript((t) => localStorage.setItem('soapwater.theme', t), theme);
  await page.goto(`${running.url}${hash}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await page.getByText('fetching…').waitFor({ state: 'detached' });
  return page;
};
const violations = (page: BrowserPage): Promise<string[]> =>
  page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: (o: object) => Promise<{ violations: { id: string; nodes: { target: unknown }[] }[] }> };
    };
    const found = await axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] });
    return found.violations.map((v) => `${v.id} ${JSON.stringify(v.nodes.slice(0, 2).map((n) => n.target))}`);
  });

test('the report prints on two pages at most, with all that an owner must read', async () => {
  const page = await goTo(`#/report/${session}`);
  const file = join(running.data, 'report.pdf');
  for (const format of ['Letter', 'A4']) {
    writeFileSync(file, await page.pdf({ format }));
    expect(
      Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [file], { encoding: 'utf8' }))?.[1]),
    ).toBeLessThanOrEqual(2);
  }
  const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' }).replaceAll(/\s+/g, ' ');
  for (const words of [
    'sags overnight, fine when driving',
    'Replaced the left bellows',
    'Replace the right bellows not done',
    'before',
    'after',
    '11 1/2 in',
    'drain the tank: due',
    'Not signed off yet.',
    'workshop, date',
    'owner, date',
  ])
    expect(text).toContain(words);
  const { mark } = (await (await fetch(`${running.url}paper/session/${session}/report`)).json()) as { mark: string };
  expect(text.replaceAll(' ', '')).toContain(mark);
  expect(text).not.toContain('back to the sheet');
  await page.context().close();
});

test('a printed coach sheet has the figures of every group, those folded on the screen too, and margins', async () => {
  const page = await goTo('#/sheet/juniper-38');
  const folded = await page.locator('details.group:not([open])').count();
  expect(folded).toBeGreaterThan(3);
  const file = join(running.data, 'sheet.pdf');
  writeFileSync(file, await page.pdf({ format: 'Letter' }));
  const boxes = execFileSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8' });
  for (const word of ['cut-in', 'cut-out', 'toe']) expect(boxes.toLowerCase()).toContain(word);
  // 13 mm are 37 points
  const left = Math.min(...[...boxes.matchAll(/xMin="([\d.]+)"/g)].map((m) => Number(m[1])));
  expect(left).toBeGreaterThan(36);
  expect(await page.locator('details.group:not([open])').count()).toBe(folded);
  await page.context().close();
});

test('a newest note that grows as its drawings come is read from its head, until somebody lays a hand on the sheet', async () => {
  const page = await goTo(`#/session/${tall}`);
  await page.getByText('tank 102', { exact: true }).first().waitFor();
  await page.waitForTimeout(800);
  const top = (grow: number): Promise<number> =>
    page.locator('soap-sheet').evaluate((sheet, more) => {
      const last = [...(sheet.shadowRoot?.querySelectorAll<HTMLElement>('soap-exchange') ?? [])].at(-1)!;
      if (more > 0) last.style.minHeight = `${more}px`;
      return Math.round(last.getBoundingClientRect().top - sheet.getBoundingClientRect().top);
    }, grow);
  expect(await top(0)).toBeGreaterThan(20);
  await top(1600);
  await until(
    () => top(0),
    (at) => Math.abs(at) < 3,
    10_000,
  );
  await page.locator('soap-sheet').hover();
  await page.mouse.wheel(0, 120);
  await until(
    () => top(0),
    (at) => at < -60,
    10_000,
  );
  const read = await top(2400);
  await page.waitForTimeout(400);
  expect(await top(0)).toBe(read);
  await page.context().close();
});

test('nothing out of sight lengthens the page behind what scrolls in it', async () => {
  const page = await goTo(`#/session/${session}`, phone);
  const long: string[] = [];
  for (const at of [
    `session/${session}`,
    `session/${session}/transcript`,
    `report/${session}`,
    'sheet/juniper-38',
    'learn',
    '',
  ]) {
    await page.goto(`${running.url}#/${at}`);
    await page.waitForTimeout(600);
    const over = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
    if (over > 0) long.push(`${at}: ${over} px too long`);
  }
  expect(long).toEqual([]);
  await page.context().close();
});

test('the history speaks of the coach sheet, never of a field as the sheet file names it', async () => {
  const page = await goTo('#/history/juniper-38');
  await page
    .getByText(/limit \d.* \(coach sheet\)/)
    .first()
    .waitFor();
  expect(await page.locator('main').innerText()).not.toMatch(/sheet: [a-z]+\.|psi ,|in ,/);
  await page.context().close();
});

test(
  'an estimate is written, its missing price asked for, and each line answered by name',
  { timeout: 60_000 },
  async () => {
    const page = await goTo(`#/estimate/${session}`);
    // whose it is and for which coach stands on what the owner signs
    await page.getByRole('heading', { name: 'Juniper 38 (demo): estimate' }).waitFor();
    await page.getByText('Tin Roof Coach Works (demo)').waitFor();
    await page.getByRole('button', { name: 'add a line' }).click();
    await page.getByLabel('work, in words for the owner').fill('renew the left link');
    await page.getByLabel('hands-on, min').fill('soon');
    await page.getByRole('button', { name: 'keep the estimate' }).click();
    await page.getByText('Line 1, hands-on minutes: “soon” is not a number of minutes.').waitFor();
    await page.getByLabel('hands-on, min').fill('30');
    await page.getByRole('button', { name: 'add a part' }).click();
    await page.getByLabel('part', { exact: true }).fill('link');
    await page.getByRole('button', { name: 'keep the estimate' }).click();
    await page.getByText('price of link').waitFor();
    await page.getByRole('button', { name: 'decline renew the left link' }).click();
    await page.getByRole('button', { name: 'declined: keep it' }).click();
    await page.getByText('Who says so?').waitFor();
    await page.getByLabel('who says so').fill('A. Rowe');
    await page.getByRole('button', { name: 'declined: keep it' }).click();
    await page.getByText('✗ declined').waitFor();
    await page.getByRole('link', { name: 'report' }).click();
    await page.getByText('declined by A. Rowe').waitFor();
    await page.context().close();
  },
);

test(
  'a limit given in a note is taken into the sheet, saved as a version, and the session goes on by it',
  { timeout: 60_000 },
  async () => {
    const page = await goTo(`#/sheet/juniper-38/${session}`);
    const rear = page.locator('#f-heights-leftRear-nominal');
    expect(await rear.inputValue()).toBe('13 3/4 in');
    await page.getByRole('button', { name: 'take into the sheet' }).click();
    expect(await rear.inputValue()).toBe('13 1/2 in');
    // a bare number gets the unit of the sheet when the field is left; a wrong one is named at once
    await rear.fill('13 1/2 psi');
    await page.getByText('“13 1/2 psi” is not a length with its unit').waitFor();
    await rear.fill('13 1/2');
    await rear.blur();
    expect(await rear.inputValue()).toBe('13 1/2 in');
    await page.getByRole('button', { name: 'save as a new version' }).click();
    await page.getByText('Saved as a new version.').waitFor();
    await page.getByRole('button', { name: 'go on by this version' }).click();
    await page.getByText('Notes from now on are judged by this version').waitFor();
    const { entries } = (await (await fetch(`${running.url}session/${session}.json`)).json()) as {
      entries: { is: string }[];
    };
    expect(entries.filter((e) => e.is === 'sheet')).toHaveLength(1);
    await page.context().close();
  },
);

test('a broken sheet is told of on the first page by field and reason', async () => {
  const page = await goTo('');
  await page.getByRole('heading', { name: 'Files that cannot be used' }).waitFor();
  const words = await page.getByText('broken.json').first().locator('..').innerText();
  expect(words).toContain('altitude of the shop (altitude): "1200" is not a length with its unit');
  await page.context().close();
});

test('what was typed into a sheet and not saved stands there again', async () => {
  const page = await goTo('#/sheet');
  await page.locator('#f-coach').fill('Half Done 40');
  await page.reload();
  await page.getByText('What you typed and did not save stands here again.').waitFor();
  expect(await page.locator('#f-coach').inputValue()).toBe('Half Done 40');
  await page.context().close();
});

describe('for everybody', () => {
  const papers = [
    `report/${session}`,
    `estimate/${session}`,
    'history/juniper-38',
    `sheet/juniper-38/${session}`,
    'sheet',
    'shop',
  ];
  for (const [name, theme, options] of [
    ['light, 360 px', undefined, phone],
    ['dark, 1400 px', 'dark', desk],
    ['full sun, 768 px', 'sun', { ...phone, viewport: { width: 768, height: 1024 } }],
  ] as const)
    test(`axe finds nothing and nothing runs off sideways on any paper: ${name}`, { timeout: 90_000 }, async () => {
      const page = await goTo('', options, theme);
      const found: string[] = [];
      for (const paper of papers) {
        await page.goto(`${running.url}#/${paper}`);
        await page.getByRole('heading', { level: 1 }).waitFor();
        await page.getByText('fetching…').waitFor({ state: 'detached' });
        await page
          .locator('details')
          .evaluateAll((list) => list.forEach((d) => ((d as HTMLDetailsElement).open = true)));
        found.push(...(await violations(page)).map((v) => `${paper}: ${v}`));
        const off = await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        );
        if (off > 0) found.push(`${paper}: ${off} px off sideways`);
      }
      expect(found).toEqual([]);
      await page.context().close();
    });
});
