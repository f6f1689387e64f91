/** Whether anybody may be under the coach stands on every screen of a session. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { desk, openSession, phone, startBench, type, type Bench } from './bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());

test('on a phone it is one line above the sheet, and the whole of it a tap away', async () => {
  const page = await bench.page(phone);
  await openSession(page, bench.fake);
  const line = page.getByRole('button', { name: /^Under the coach: nobody under/ });
  await line.waitFor();
  expect((await line.boundingBox())!.height).toBeGreaterThanOrEqual(44);
  await line.click();
  await page.getByRole('heading', { name: 'Under the coach' }).waitFor();
  await page.getByText('wheels not chocked').waitFor();
  // the header's own key says that the board is up, and brings the sheet back
  await page.getByRole('button', { name: 'sheet' }).click();
  await type(page, 'on stands');
  await page.getByRole('button', { name: /^Under the coach: on stands, air in/ }).waitFor();
  await page.context().close();
});

test('at the bench it is the first thing beside the talk', async () => {
  const page = await bench.page(desk);
  await openSession(page, bench.fake);
  const side = page.locator('soap-side.right');
  await side.getByRole('heading', { name: 'Under the coach' }).waitFor();
  expect(await side.getByRole('heading').first().textContent()).toBe('Under the coach');
  await side.getByText('Nobody under: what holds the frame was not said.').waitFor();
  await page.context().close();
});
