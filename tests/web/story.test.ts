/** A whole session by thumbs alone, and by keys alone. */
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { openSession, phone, sheetOf, startBench, type, until, type Bench } from './bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());
afterEach(() => {
  expect(bench.faults.splice(0)).toEqual([]);
});

/** A phone, a tablet, a bench screen. */
const widths = [
  [360, 740],
  [768, 1024],
  [1400, 860],
] as const;
const line = (page: Page): Promise<string> => page.getByLabel('note', { exact: true }).inputValue();
const texts = async (page: Page): Promise<string[]> => (await sheetOf(page)).map((x) => x.text);

describe('by tapping only', () => {
  test.each(widths)('from the first page to a signed session, %i px wide', async (width, height) => {
    const page = await bench.page({ ...phone, viewport: { width, height } });
    await page.addInitScript(() => localStorage.setItem('soapwater.by', 'MK'));
    await page.goto(bench.fake.url);
    const tap = (name: string | RegExp): Promise<void> =>
      page
        .getByRole('button', { name, exact: typeof name === 'string' })
        .first()
        .tap();
    await tap(/Juniper 38/);
    await tap('start');
    // a reading: place, digits, fraction off the tape
    await tap(/^left rear/);
    for (const d of ['1', '3']) await tap(d);
    await tap('1/4');
    expect(await line(page)).toBe('left rear 13 1/4');
    // a slip of the thumb costs one undo
    await tap('7/8');
    expect(await line(page)).toBe('left rear 13 7/8');
    await tap('undo the last tap');
    expect(await line(page)).toBe('left rear 13 1/4');
    await page.getByText('left rear 13 1/4 in', { exact: true }).waitFor();
    await tap('add');
    await until(
      () => texts(page),
      (l) => l.at(-1) === 'left rear 13 1/4',
    );
    expect(await line(page)).toBe('');
    // the wrong corner, then the right one: the second takes its place
    await tap(/^left rear/);
    await tap(/^right rear|^RR/);
    expect(await line(page)).toBe('right rear ');
    await tap('1');
    await tap('4');
    await tap('in');
    await tap('add');
    await until(
      () => texts(page),
      (l) => l.at(-1) === 'right rear 14 in',
    );
    // outcome key of the next check: one tap is a note, one more takes it back
    await tap('holds');
    await until(
      () => texts(page),
      (l) => l.at(-1) === 'left rear holds, panel shut',
    );
    await tap('undo the last note');
    await until(
      () => texts(page),
      (l) => l.at(-1) === 'undo',
    );
    const struck = page.locator('soap-exchange', { hasText: 'left rear holds, panel shut' });
    await struck.getByText('taken back').waitFor();
    // the same reading again, by its chip
    await tap(/^left rear/);
    await tap('13 1/4 in again');
    expect(await line(page)).toBe('left rear 13 1/4 in');
    await tap('add');
    await tap('menu');
    await tap('close session');
    await tap('close and sign');
    await page.getByText('This session is closed.').waitFor();
    await page.context().close();
  });

  test('a gate is answered on its own keys, and the next check waits for it', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    await type(page, 'LR 13 1/4');
    await page.getByRole('button', { name: 'holds' }).waitFor();
    await type(page, 'going under to look');
    await page.getByRole('button', { name: 'yes, on stands' }).waitFor();
    expect(await page.getByRole('button', { name: 'holds' }).count()).toBe(0);
    await page.getByRole('button', { name: 'yes, on stands' }).tap();
    await page.getByRole('button', { name: 'holds' }).waitFor();
    expect(await texts(page)).toContain('on stands');
    await page.context().close();
  });

  test('what was assumed is mended by a tap before it is sent', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    await page.getByLabel('note', { exact: true }).fill('95 psi');
    await page.getByText('assumed').first().waitFor();
    await page.locator('soap-line .mend').first().tap();
    expect(await line(page)).toBe('left bellows 95 psi');
    await until(
      () => page.locator('soap-line .took').innerText(),
      (t) => t.includes('left bellows') && !t.includes('assumed'),
    );
    await page.context().close();
  });

  test('what could not be read is shown before it is sent', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    await page.getByLabel('note', { exact: true }).fill('blarg the fnord');
    await page
      .locator('soap-line')
      .getByText(/not read: .*blarg/)
      .waitFor();
    await page.context().close();
  });
});

describe('by keyboard only', () => {
  test.each(widths)(
    'from the first page through a reading, an outcome key, why, and the transcript, %i px wide',
    async (width, height) => {
      const page = await bench.page({ viewport: { width, height } });
      await page.goto(bench.fake.url);
      await page.getByRole('button', { name: /Juniper 38/ }).waitFor();
      /** Tabs until the focused control has this name; a person would do no different. */
      const to = async (name: RegExp): Promise<void> => {
        for (let i = 0; i < 60; i += 1) {
          const here = await page.evaluate(() => {
            let el: Element | null = document.activeElement;
            while (el?.shadowRoot?.activeElement) el = el.shadowRoot.activeElement;
            const label = el?.id
              ? (el.getRootNode() as ParentNode).querySelector(`label[for="${el.id}"]`)?.textContent
              : null;
            return (el?.getAttribute('aria-label') ?? label ?? el?.textContent ?? '').replace(/\s+/g, ' ').trim();
          });
          if (name.test(here)) return;
          await page.keyboard.press('Tab');
        }
        throw new Error(`no way to ${name} by Tab`);
      };
      await to(/initials/);
      await page.keyboard.type('MK');
      await to(/Juniper 38/);
      await page.keyboard.press('Enter');
      await to(/^start$/);
      await page.keyboard.press('Enter');
      await page.getByLabel('note', { exact: true }).waitFor();
      await to(/^left rear/);
      await page.keyboard.press('Enter');
      // a tap on a place hands the caret to the line
      await page.keyboard.type('13 1/4');
      await page.keyboard.press('Enter');
      await until(
        () => texts(page),
        (l) => l.at(-1) === 'left rear 13 1/4',
      );
      await page.getByRole('button', { name: 'holds' }).waitFor();
      await page.evaluate(() => {
        let el: Element | null = document.activeElement;
        while (el?.shadowRoot?.activeElement) el = el.shadowRoot.activeElement;
        if (el instanceof HTMLElement) el.blur();
      });
      await to(/^why 1\/2 in low/);
      await page.keyboard.press('Enter');
      await page.getByText('off = height - nominal').waitFor();
      await to(/^holds$/);
      await page.keyboard.press('Enter');
      await until(
        () => texts(page),
        (l) => l.at(-1) === 'left rear holds, panel shut',
      );
      await page.evaluate(() => {
        let el: Element | null = document.activeElement;
        while (el?.shadowRoot?.activeElement) el = el.shadowRoot.activeElement;
        if (el instanceof HTMLElement) el.blur();
      });
      await to(/^menu$/);
      await page.keyboard.press('Enter');
      await to(/^transcript$/);
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { name: 'Readings' }).waitFor();
      await page.context().close();
    },
  );

  test('replies are announced, cautions at once', async () => {
    const page = await bench.page();
    await openSession(page, bench.fake);
    await type(page, 'LR 13 1/4');
    await until(
      () => page.locator('soap-session [aria-live=polite]').innerText(),
      (t) => t.includes('1/2 in low left rear') && t.includes('Next:'),
    );
    await type(page, 'going under to look');
    await until(
      () => page.locator('soap-session [aria-live=assertive]').innerText(),
      (t) => t.includes('Is the frame on stands?'),
    );
    await page.context().close();
  });
});
