import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { goTo, openSession, phone, sheetOf, startBench, type, until, type Bench } from './bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());
afterEach(() => {
  bench.fake.mute = false;
  expect(bench.faults.splice(0)).toEqual([]);
});

const texts = async (page: Parameters<typeof sheetOf>[0]): Promise<string[]> =>
  (await sheetOf(page)).map((x) => x.text);
const kept = (n: number) => (list: { state: string }[]) => list.length === n && list.every((x) => x.state === 'kept');

describe('two pages on one session', () => {
  test('a session whose opening is answered late is followed all the same: what stands comes, and what others type', async () => {
    bench.fake.slow = 700;
    const a = await bench.page();
    const session = await openSession(a, bench.fake);
    await a.getByText('opened', { exact: true }).waitFor();
    await type(a, 'LR 13 1/4');
    await a.locator('soap-plan').getByText('13 1/4').waitFor();
    const b = await bench.page(phone);
    await b.addInitScript(() => localStorage.setItem('soapwater.by', 'JT'));
    await goTo(b, bench.fake, session);
    await type(b, 'tank 95 psi');
    const onA = await until(
      () => texts(a),
      (l) => l.length === 2,
    );
    expect(onA).toEqual(['LR 13 1/4', 'tank 95 psi']);
    // who typed what stands beside it, on both
    const who = (page: typeof a): Promise<(string | null | undefined)[]> =>
      page
        .locator('soap-exchange')
        .evaluateAll((l) =>
          l.flatMap((x) =>
            x.shadowRoot?.querySelector('.text') ? [x.shadowRoot.querySelector('.margin span')?.textContent] : [],
          ),
        );
    for (const page of [a, b])
      expect(
        await until(
          () => who(page),
          (l) => l.length === 2,
        ),
      ).toEqual(['MK', 'JT']);
    await a.context().close();
    await b.context().close();
  });

  test('typing at once, both see every note, in one order', async () => {
    const a = await bench.page();
    const b = await bench.page(phone);
    const session = await openSession(a, bench.fake);
    await b.goto(bench.fake.url);
    await b.getByLabel('Your initials').fill('JT');
    await goTo(b, bench.fake, session);
    const many = 6;
    await Promise.all([
      (async () => {
        for (let i = 0; i < many; i += 1) await type(a, `tank ${100 + i} psi`);
      })(),
      (async () => {
        for (let i = 0; i < many; i += 1) await type(b, `tank ${200 + i} kPa`);
      })(),
    ]);
    const onA = await until(() => sheetOf(a), kept(2 * many));
    const onB = await until(() => sheetOf(b), kept(2 * many));
    expect(onA.map((x) => x.text)).toEqual(onB.map((x) => x.text));
    const stored = bench.fake.sessions.get(session)?.filter((e) => e.is === 'note') ?? [];
    expect(onA.map((x) => x.text)).toEqual(stored.map((e) => e.text));
    expect(new Set(stored.map((e) => e.by))).toEqual(new Set(['MK', 'JT']));
    await a.context().close();
    await b.context().close();
  });

  test('after a lost connection the page asks for what it missed and sends what was typed meanwhile, once, with its own time', async () => {
    const a = await bench.page();
    const b = await bench.page();
    const session = await openSession(a, bench.fake);
    await goTo(b, bench.fake, session);
    await type(a, 'before');
    await until(
      () => texts(b),
      (l) => l.length === 1,
    );
    bench.fake.cut(true);
    await a.getByText('not connected').waitFor();
    const typedAt = Date.now();
    await type(a, 'tank 95 psi');
    await type(a, 'LR 13 1/4');
    expect((await sheetOf(a)).map((x) => x.state)).toEqual(['kept', 'waiting', 'waiting']);
    await new Promise((r) => {
      setTimeout(r, 400);
    });
    bench.fake.cut(false);
    const onA = await until(() => sheetOf(a), kept(3));
    const onB = await until(() => sheetOf(b), kept(3));
    expect(onA).toEqual(onB);
    const stored = bench.fake.sessions.get(session)?.filter((e) => e.is === 'note') ?? [];
    expect(stored.map((e) => e.text)).toEqual(['before', 'tank 95 psi', 'LR 13 1/4']);
    // typed while away: the time is that of typing, not of sending
    for (const e of stored.slice(1)) expect(e.kept - e.at).toBeGreaterThan(300);
    expect(Math.abs((stored[1]?.at ?? 0) - typedAt)).toBeLessThan(1000);
    await a.context().close();
    await b.context().close();
  });

  test('a line that looks alive and answers nothing is given up and opened again, and the note arrives once', async () => {
    const a = await bench.page();
    const session = await openSession(a, bench.fake);
    bench.fake.mute = true;
    await type(a, 'tank 95 psi');
    expect(
      (
        await until(
          () => sheetOf(a),
          (l) => l.length === 1,
        )
      )[0]?.state,
    ).toBe('sent');
    // the page's patience is 7 s; the network coming back makes it try at once
    bench.fake.cut(false);
    bench.fake.mute = false;
    await until(() => sheetOf(a), kept(1));
    expect(bench.fake.sessions.get(session)?.filter((e) => e.is === 'note')).toHaveLength(1);
    await a.context().close();
  });

  test('notes typed offline outlive a reload and are sent once with the same id', async () => {
    const a = await bench.page();
    const session = await openSession(a, bench.fake);
    await type(a, 'first');
    await until(() => sheetOf(a), kept(1));
    // the page keeps its own copy of the session shortly after
    await a.waitForTimeout(700);
    bench.fake.cut(true);
    await a.getByText('not connected').waitFor();
    await type(a, 'typed in the pit');
    await a.reload();
    const after = await until(
      () => sheetOf(a),
      (l) => l.length === 2,
    );
    expect(after).toEqual([
      { text: 'first', state: 'kept' },
      { text: 'typed in the pit', state: 'waiting' },
    ]);
    bench.fake.cut(false);
    await until(() => sheetOf(a), kept(2));
    const stored = bench.fake.sessions.get(session)?.filter((e) => e.is === 'note') ?? [];
    expect(stored.map((e) => e.text)).toEqual(['first', 'typed in the pit']);
    const sent = bench.fake.came.filter((f) => f.is === 'note' && f.text === 'typed in the pit');
    expect(new Set(sent.map((f) => (f.is === 'note' ? f.id : ''))).size).toBe(1);
    await a.context().close();
  });

  test('half a note in the line outlives a reload too', async () => {
    const a = await bench.page();
    await openSession(a, bench.fake);
    await a.getByLabel('note', { exact: true }).fill('left rear 13');
    await a.reload();
    await a.getByLabel('note', { exact: true }).waitFor();
    expect(await a.getByLabel('note', { exact: true }).inputValue()).toBe('left rear 13');
    await a.context().close();
  });

  test('a note to a session that was closed meanwhile is not lost: it comes back into the line', async () => {
    const a = await bench.page();
    const session = await openSession(a, bench.fake);
    bench.fake.cut(true);
    await a.getByText('not connected').waitFor();
    await type(a, 'late note');
    bench.fake.put(session, [{ is: 'closed', by: 'JT', signed: 'JT', words: '' }]);
    bench.fake.cut(false);
    await a.getByText('Not taken:').waitFor();
    await a.getByRole('button', { name: 'open again' }).click();
    await a.getByRole('button', { name: 'back into the line' }).click();
    expect(await a.getByLabel('note', { exact: true }).inputValue()).toBe('late note');
    await a.context().close();
  });
});
