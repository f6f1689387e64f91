/** Keys for gloves: sides stand apart, every digit and eighth is as large as a thumb, and a check may be left out. */
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { typingOn, block } from '../chat/session.ts';
import { openSession, phone, startBench, type, type Bench } from './bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());

const boxes = (page: Page, inside: string): Promise<{ name: string; x: number; y: number; w: number; h: number }[]> =>
  page.locator(inside).evaluateAll((list) =>
    list.map((el) => {
      const { x, y, width, height } = el.getBoundingClientRect();
      return { name: (el.getAttribute('aria-label') ?? el.textContent).trim(), x, y, w: width, h: height };
    }),
  );

test('left keys stand on the left and right keys on the right, 12 px apart', async () => {
  const page = await bench.page(phone);
  await openSession(page, bench.fake);
  await type(page, 'LR 13 1/4, two valves');
  await page.locator('soap-next .keys.sided').waitFor();
  const all = await boxes(page, 'soap-next .keys.sided .key');
  const side = (word: string) => all.filter((k) => k.name.startsWith(word));
  expect(side('left').length).toBeGreaterThan(0);
  expect(side('left')).toHaveLength(side('right').length);
  const edge = Math.max(...side('left').map((k) => k.x + k.w));
  for (const k of side('right')) expect(k.x).toBeGreaterThanOrEqual(edge + 12);
  await page.context().close();
});

test('at 360 px every key of the pad is 64 px tall, the eighths too', async () => {
  const page = await bench.page(phone);
  await openSession(page, bench.fake);
  await page.getByRole('button', { name: 'left rear' }).first().tap();
  await page.getByRole('button', { name: '7/8' }).waitFor();
  const all = await boxes(page, 'soap-pad button');
  expect(all.map((k) => k.name)).toEqual(expect.arrayContaining(['1/8', '7/8', '0', '9', 'psi', 'in', 'V', 'rub out']));
  expect(all.filter((k) => k.h < 64 || k.w < 64)).toEqual([]);
  await page.context().close();
});

test('a check that cannot be made here is left out, and the next best is asked for', async () => {
  const t = await typingOn();
  const first = block(await t.type('left rear low after standing'), 'check')!;
  const blocks = await t.type('cant check that');
  const second = block(blocks, 'check')!;
  expect(second.id).not.toBe(first.id);
  expect(JSON.stringify(blocks)).toContain('Left out.');
  // not asked for again, whatever is typed
  for (const note of ['tank 96', 'both links straight', 'LR 12 1/2'])
    expect(block(await t.type(note), 'check')?.id).not.toBe(first.id);
  // undone, it may be asked for again
  expect((await t.standing()).skipped.has(first.id)).toBe(true);
});

test('the word that the key writes is read as what it says', () => {
  expect(readFileSync(new URL('../../web/elements/next.ts', import.meta.url), 'utf8')).toContain(
    "text: 'cant check that'",
  );
});
