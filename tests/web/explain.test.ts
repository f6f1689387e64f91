/** "explain" on any block: the teaching text that fits it, by tap and by keys. */
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import type { Block } from '../../server/chat/reply.ts';
import { teachingOf } from '../../web/learn/teaching.ts';
import { openSession, phone, startBench, type, until, type Bench } from './bench.ts';
import { check, fakeReply } from './fake-replies.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());
afterEach(() => {
  expect(bench.faults.splice(0)).toEqual([]);
});

describe('the teaching text', () => {
  const took: Block = {
    is: 'took',
    words: '',
    list: [
      { words: 'tank 95 psi', from: 'assumed', kind: 'reading', mends: [] },
      { words: 'blarg', from: 'said', kind: 'unread', mends: [] },
    ],
  };
  const step: Block = {
    is: 'step',
    guide: 'soap check',
    step: 1,
    of: 3,
    title: 'Soap check',
    words: 'Soap it.',
    expect: '',
    keys: [],
  };
  const blocks: Block[] = [
    took,
    step,
    { is: 'withdrawn', words: 'what rested on that note' },
    check,
    ...fakeReply('n', 'draw 13 under blarg', []).blocks,
  ];

  test('is there for every kind of block but an answer, which explains itself', () => {
    expect(new Set(blocks.map((b) => b.is)).size).toBe(9);
    for (const b of blocks) expect(teachingOf(b).lines.join(' ').length, b.is).toBeGreaterThan(40);
  });

  test('speaks of the marks that stand in this read-back and of no others', () => {
    const said = teachingOf(took).lines.join(' ');
    expect(said).toContain('Dashed');
    expect(said).toContain('Not read');
    expect(said).not.toContain('Which?');
    expect(said).not.toContain('Hunch');
  });

  test('of a finding explains its verdict and its drawing, and leads on to a check', () => {
    const found = teachingOf(fakeReply('n', '13', []).blocks.find((b) => b.is === 'findings')!);
    expect(found.lines.join(' ')).toContain('▼ low');
    expect(found.lines.join(' ')).not.toContain('▲ high');
    expect(found.lines.join(' ')).toContain('whiskers');
    expect(found.check?.id).toBe('ride height');
  });

  test('of a stop gives the whole of what is asked, and what answers it besides', () => {
    const stop = teachingOf({
      is: 'caution',
      id: 'waiting',
      words: 'over a pit?',
      more: 'Not answered yet',
      gate: { what: 'over pit', keys: [] },
    });
    expect(stop.lines.join(' ')).toContain('rated cribbing');
    expect(stop.lines.join(' ')).toContain('“cribbed” answers it as well');
  });
});

test('every block of a reply is explained by a tap, the next check at the foot too', async () => {
  const page = await bench.page(phone);
  await openSession(page, bench.fake);
  const asks = page.getByRole('button', { name: /^explain / });
  const names = async (): Promise<string[]> =>
    (await asks.allInnerTexts()).map((n) => n.replace(/\s+/g, ' ').replace('explain', '').trim());
  // what is missing explains itself where it is asked; elsewhere the next check stands at the foot
  await type(page, 'blarg');
  await page.getByRole('button', { name: 'tyre' }).waitFor();
  expect(await names()).toEqual(['how the note was read', 'this question']);
  await type(page, 'LR 13 1/4');
  await page.getByRole('button', { name: 'holds' }).waitFor();
  const all = ['how the note was read', 'what was found', 'the suspects', 'this check'];
  expect(await names()).toEqual(all);
  for (let i = 0; i < all.length; i += 1) await asks.nth(i).tap();
  await until(
    () => page.locator('.explained').count(),
    (n) => n === all.length,
  );
  // and put away by the same tap
  await asks.first().tap();
  await until(
    () => page.locator('.explained').count(),
    (n) => n === all.length - 1,
  );
  await page.context().close();
});

test('by keys alone: Tab to it, Enter, and the text begins in sight', async () => {
  const page = await bench.page({ viewport: { width: 768, height: 600 } });
  await openSession(page, bench.fake);
  await type(page, 'LR 13 1/4');
  const link = page.getByRole('button', { name: 'explain the suspects' });
  await link.waitFor();
  for (let i = 0; i < 60; i += 1) {
    await page.keyboard.press('Shift+Tab');
    if (await link.evaluate((el) => (el.getRootNode() as ShadowRoot).activeElement === el)) break;
  }
  await page.keyboard.press('Enter');
  const text = page.locator('.explained');
  await text.waitFor();
  expect(await link.getAttribute('aria-expanded')).toBe('true');
  const sheet = await page.locator('soap-sheet').boundingBox();
  await until(
    () => text.evaluate((el) => Math.round(el.getBoundingClientRect().top)),
    (top) => sheet !== null && top >= Math.floor(sheet.y) && top < sheet.y + sheet.height - 24,
  );
  await page.context().close();
});
