/** A stop is answered where it is read: its keys stand in sight as it comes, on the smallest screen. */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { allCautions } from '../../server/guides/cautions.ts';
import { openSession, phone, sheetOf, startBench, type, until, type Bench } from './bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());
afterEach(() => {
  expect(bench.faults.splice(0)).toEqual([]);
});

type Box = { top: number; bottom: number };
/** First stop of the newest exchange: its question, its keys, and the part of the sheet that can be seen. */
const seen = (page: Page, nth = 0): Promise<{ words: Box; keys: Box[]; sheet: Box }> =>
  page.evaluate((n) => {
    const box = (el: Element): Box => {
      const { top, bottom } = el.getBoundingClientRect();
      return { top: Math.round(top), bottom: Math.round(bottom) };
    };
    const session = document.querySelector('soap-page')?.shadowRoot?.querySelector('soap-session')?.shadowRoot;
    const sheet = session?.querySelector('soap-sheet');
    const last = sheet?.shadowRoot?.querySelector('soap-exchange:last-of-type')?.shadowRoot;
    const stop = last?.querySelectorAll('.caution')[n];
    if (!sheet || !stop) throw new Error('no stop');
    return {
      words: box(stop.querySelector('.caution-words') ?? stop),
      keys: [...stop.querySelectorAll('.key')].map(box),
      sheet: box(sheet),
    };
  }, nth);
const inSight = (box: Box, sheet: Box): boolean => box.top >= sheet.top && box.bottom <= sheet.bottom;
const answered = async (page: Page, text: string): Promise<void> => {
  await until(
    () => sheetOf(page),
    (l) => l.at(-1)?.text === text && l.at(-1)?.state === 'kept',
  );
  // the sheet is put to the newest in the frame after
  await page.waitForTimeout(120);
};

describe('at 360 by 740', () => {
  test('question and keys of every stop there is are in sight as it comes', { timeout: 120_000 }, async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    await type(page, 'LR 13 1/4');
    const hidden: string[] = [];
    const gated = allCautions.filter((c) => c.gate);
    expect(gated.length).toBeGreaterThan(15);
    for (const c of gated) {
      const text = `stop: ${c.id.replaceAll(' ', '_')}`;
      await type(page, text);
      await answered(page, text);
      const { words, keys, sheet } = await seen(page);
      expect(keys.length).toBeGreaterThan(1);
      if (!inSight(words, sheet) || keys.some((k) => !inSight(k, sheet))) hidden.push(c.id);
    }
    expect(hidden).toEqual([]);
    await page.context().close();
  });

  test('of several stops the first stands in full, the others are one tap away and counted', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    const text = 'stop: open_under_pressure + under_unsupported + over-pressure';
    await type(page, text);
    await answered(page, text);
    const first = await seen(page);
    expect([first.words, ...first.keys].every((b) => inSight(b, first.sheet))).toBe(true);
    const more = page.getByRole('button', { name: /^▲?\s*2 more stops/ });
    const box = await more.boundingBox();
    expect(box && box.y + box.height).toBeLessThanOrEqual(first.sheet.bottom);
    expect(box?.height).toBeGreaterThanOrEqual(64);
    await more.tap();
    await until(
      () => page.locator('soap-exchange .caution').count(),
      (n) => n === 3,
    );
    await page.waitForTimeout(120);
    const second = await seen(page, 1);
    expect([second.words, ...second.keys].every((b) => inSight(b, second.sheet))).toBe(true);
    await page.context().close();
  });

  test('with the keyboard up the keys stay in sight under the question', async () => {
    const page = await bench.page({ ...phone, viewport: { width: 360, height: 440 } });
    await openSession(page, bench.fake);
    await type(page, 'stop: open_under_pressure');
    await answered(page, 'stop: open_under_pressure');
    const { words, keys, sheet } = await seen(page);
    expect(inSight(words, sheet)).toBe(true);
    expect(keys.every((k) => inSight(k, sheet) && k.top >= words.bottom)).toBe(true);
    await page.context().close();
  });
});

test('a bench screen has room for two stops with their keys', async () => {
  const page = await bench.page();
  await openSession(page, bench.fake);
  const text = 'stop: open_under_pressure + under_unsupported';
  await type(page, text);
  await answered(page, text);
  for (const nth of [0, 1]) {
    const { words, keys, sheet } = await seen(page, nth);
    expect([words, ...keys].every((b) => inSight(b, sheet))).toBe(true);
  }
  await page.context().close();
});
