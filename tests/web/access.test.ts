/**
 * WCAG 2.2 A and AA by axe-core (Deque's rules for https://www.w3.org/TR/WCAG22/), in every view and theme; no sideways
 * scrolling at the widths of a phone, a tablet and a bench screen (1.4.10 Reflow); key sizes.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pairCss, benchPage, pairPage } from '../../server/auth/pages.ts';
import { desk, openSession, phone, sheetOf, startBench, type, until, type Bench } from './bench.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());

type Violation = { id: string; help: string; nodes: string[] };
const check = async (page: Page, view: string): Promise<string[]> => {
  const found = await page.evaluate(async () => {
    const axe = (
      globalThis as unknown as {
        axe: {
          run: (o: object) => Promise<{ violations: { id: string; help: string; nodes: { target: unknown }[] }[] }>;
        };
      }
    ).axe;
    const { violations } = await axe.run({
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return violations.map((v) => ({ id: v.id, help: v.help, nodes: v.nodes.map((n) => JSON.stringify(n.target)) }));
  });
  return (found as Violation[]).map((v) => `${view}: ${v.id} (${v.help}) at ${v.nodes.slice(0, 3).join(' | ')}`);
};

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Every view of a session, one after the other; `look` is called in each. */
const tour = async (page: Page, look: (view: string) => Promise<void>): Promise<void> => {
  await page.goto(bench.fake.url);
  await page.getByRole('button', { name: /Juniper 38/ }).waitFor();
  await look('start');
  await openSession(page, bench.fake);
  await look('empty session');
  await type(page, 'sags overnight');
  await type(page, 'LF 15 3/8 RF 15 1/4 tank 95 psi');
  await type(page, 'tank 112 at 9:05, 104 at 9:35');
  await type(page, 'LR 13 1/4 RR 14');
  await until(
    () => sheetOf(page),
    (l) => l.length === 4 && l.every((x) => x.state === 'kept'),
  );
  await look('session');
  await page.getByLabel('note', { exact: true }).fill('95 psi blarg');
  await look('read-back');
  await page.getByLabel('note', { exact: true }).fill('');
  await page.getByRole('button', { name: 'number pad' }).click();
  await look('pad');
  await page.getByRole('button', { name: 'close the number pad' }).click();
  await type(page, 'start timer 5 min');
  await type(page, 'draw');
  await page.getByText('Panel shut: each bellows').waitFor();
  await look('drawings');
  await type(page, 'going under');
  await page.getByText('Is the frame on stands?').first().waitFor();
  await look('caution');
  const board = page.getByRole('button', { name: 'board', exact: true });
  if (await board.isVisible()) {
    await board.click();
    await look('board');
    await page.getByRole('button', { name: 'sheet', exact: true }).click();
  }
  await page.getByRole('button', { name: 'menu' }).click();
  await look('menu');
  await page.getByRole('button', { name: 'close session' }).click();
  await look('sign-off');
  await page.getByRole('button', { name: 'not yet' }).first().click();
  await page.getByRole('link', { name: 'transcript' }).click();
  await page.getByRole('heading', { name: 'As it went' }).waitFor();
  await look('transcript');
  await page.goto(`${bench.fake.url}#/learn`);
  await page.getByRole('heading', { name: 'Words' }).waitFor();
  await look('learn');
  await page.getByRole('link', { name: 'height valve', exact: true }).first().click();
  await page.getByRole('heading', { name: 'height valve' }).waitFor();
  await look('word');
  await page.goto(`${bench.fake.url}#/learn/check/${encodeURIComponent('soap check')}`);
  await page.getByRole('heading', { name: /^Soap check/ }).waitFor();
  await look('check');
};

describe('for everybody', () => {
  for (const [name, theme, options] of [
    ['light, 360 px', null, { ...phone, colorScheme: 'light' }],
    ['dark, 1400 px', null, { ...desk, colorScheme: 'dark' }],
    ['full sun, 768 px', 'sun', { ...phone, viewport: { width: 768, height: 1024 }, colorScheme: 'light' }],
    [
      'forced colours and less motion, 1100 px',
      null,
      { viewport: { width: 1100, height: 800 }, reducedMotion: 'reduce', forcedColors: 'active' },
    ],
  ] as const)
    test(`axe finds nothing and nothing runs off sideways, in every view: ${name}`, async () => {
      const page = await bench.page(options);
      await page.addInitScript(axeSource);
      if (theme !== null) await page.addInitScript((t) => localStorage.setItem('soapwater.theme', t), theme);
      const found: string[] = [];
      await tour(page, async (view) => {
        found.push(...(await check(page, view)));
        const by = await sideways(page);
        if (by > 0) found.push(`${view}: ${by} px off sideways`);
      });
      expect(found).toEqual([]);
      expect(bench.faults.splice(0)).toEqual([]);
      await page.context().close();
    });

  test('the pages of pairing too: the code and the devices at the bench, the code on a device', async () => {
    const at = Date.UTC(2026, 1, 3);
    const devices = [{ id: 'd1', name: 'phone of KD', role: 'learns' as const, paired: at, seen: at, until: at }];
    const view = { address: 'https://192.168.0.9:8443/', fingerprint: 'AA:BB', devices, time: () => 'today' };
    const found: string[] = [];
    for (const colorScheme of ['light', 'dark'] as const) {
      const page = await bench.page({ ...phone, colorScheme });
      for (const [name, html] of [
        ['bench, closed', benchPage({ ...view, code: null, address: null })],
        ['bench, code on show', benchPage({ ...view, code: { code: 'ABCDEF', role: 'works', until: at } })],
        ['pairing, wrong code', pairPage('ABCDEF', 'That code is wrong, used or over.')],
      ] as const) {
        await page.setContent(html);
        await page.addStyleTag({ content: pairCss });
        await page.evaluate(axeSource);
        found.push(...(await check(page, `${name}, ${colorScheme}`)));
        if ((await sideways(page)) > 0) found.push(`${name}: off sideways`);
      }
      await page.context().close();
    }
    expect(found).toEqual([]);
    bench.faults.splice(0);
  });

  test(
    'nothing runs off sideways at 320 px, the width of 400 % zoom on a small screen',
    { timeout: 60_000 },
    async () => {
      const page = await bench.page({ ...phone, viewport: { width: 320, height: 640 } });
      const off: string[] = [];
      await tour(page, async (view) => {
        const by = await sideways(page);
        if (by > 0) off.push(`${view}: ${by} px`);
      });
      expect(off).toEqual([]);
      await page.context().close();
    },
  );

  test('primary keys are at least 64 px tall and at most three in a row at 360 px', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    await type(page, 'LR 13 1/4');
    await page.getByRole('button', { name: 'holds' }).waitFor();
    const boxes = await page.evaluate(() => {
      const out: { name: string; top: number; height: number; group: string }[] = [];
      const walk = (root: ParentNode): void => {
        for (const el of root.querySelectorAll<HTMLElement>('*')) {
          if (el.shadowRoot) walk(el.shadowRoot);
          if (el.matches('button.key:not(.small)') && el.offsetParent !== null) {
            const b = el.getBoundingClientRect();
            out.push({
              name: el.textContent?.trim() ?? '',
              top: Math.round(b.top),
              height: b.height,
              group: el.closest('[role=group]')?.getAttribute('aria-label') ?? '',
            });
          }
        }
      };
      walk(document);
      return out;
    });
    expect(boxes.length).toBeGreaterThan(8);
    expect(boxes.filter((b) => b.height < 63.9)).toEqual([]);
    const rows = new Map<string, typeof boxes>();
    for (const b of boxes) rows.set(`${b.group} ${b.top}`, [...(rows.get(`${b.group} ${b.top}`) ?? []), b]);
    expect([...rows.values()].filter((r) => r.length > 3)).toEqual([]);
    await page.context().close();
  });
});
