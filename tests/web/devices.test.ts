/** What the page asks of the device it runs on: screen, sound, voice, camera files; and what a paired device may do. */
import { mkdtemp, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { goTo, openSession, phone, sheetOf, startBench, type, until, type Bench } from './bench.ts';

let bench: Bench;
beforeAll(async () => {
  bench = await startBench();
}, 60_000);
afterAll(async () => bench.stop());
afterEach(() => {
  bench.fake.role = 'works';
  expect(bench.faults.splice(0)).toEqual([]);
});
const kept = (n: number) => (l: { state: string }[]) => l.length === n && l.every((x) => x.state === 'kept');

type Seen = { asked: number; let: number; tones: number; buzz: number; spoken: { words: string; voice: string }[] };
declare const seen: Seen;

describe('a running timer', () => {
  test('keeps the screen awake as long as it runs and no longer', async () => {
    const page = await bench.page(phone);
    await page.addInitScript(() => {
      const s = { asked: 0, let: 0 };
      Object.assign(globalThis, { seen: s });
      Object.defineProperty(navigator, 'wakeLock', {
        value: {
          request: (kind: string) => {
            if (kind === 'screen') s.asked += 1;
            return Promise.resolve({
              addEventListener: () => undefined,
              release: () => {
                s.let += 1;
                return Promise.resolve();
              },
            });
          },
        },
      });
    });
    await openSession(page, bench.fake);
    await type(page, 'tank 112');
    await until(() => sheetOf(page), kept(1));
    expect(await page.evaluate(() => [seen.asked, seen.let])).toEqual([0, 0]);
    await type(page, 'start timer 5 min');
    await until(
      () => page.evaluate(() => seen.asked),
      (n) => n > 0,
    );
    expect(await page.evaluate(() => seen.let)).toBe(0);
    await page.getByRole('button', { name: 'stop', exact: true }).tap();
    await until(
      () => page.evaluate(() => seen.let),
      (n) => n === 1,
    );
    await page.context().close();
  });

  test('rings once when its time is up, says what to read, and a tap writes the place', async () => {
    const page = await bench.page(phone);
    await page.clock.install();
    await page.addInitScript(() => {
      const s = { tones: 0, buzz: 0 };
      Object.assign(globalThis, { seen: s });
      const knob = { value: 0, setValueAtTime: () => undefined, exponentialRampToValueAtTime: () => undefined };
      const node = { frequency: knob, gain: knob, stop: () => undefined, connect: (to: unknown) => to };
      Object.defineProperty(globalThis, 'AudioContext', {
        value: class {
          currentTime = 0;
          destination = node;
          createGain = (): unknown => node;
          createOscillator = (): unknown => ({ ...node, start: () => (s.tones += 1) });
        },
      });
      navigator.vibrate = () => {
        s.buzz += 1;
        return true;
      };
    });
    await openSession(page, bench.fake);
    await type(page, 'tank 112 psi');
    await type(page, 'start timer 1 min');
    await page.getByRole('button', { name: 'stop', exact: true }).waitFor();
    await page.clock.runFor(50_000);
    expect(await page.evaluate(() => [seen.tones, seen.buzz])).toEqual([0, 0]);
    await page.clock.runFor(15_000);
    await page.getByText('Read now: tank').waitFor();
    await page.clock.runFor(20_000);
    expect(await page.evaluate(() => [seen.tones, seen.buzz])).toEqual([2, 1]);
    await page.getByRole('button', { name: 'read', exact: true }).tap();
    expect(await page.getByLabel('note', { exact: true }).inputValue()).toBe('tank ');
    await page.context().close();
  });
});

describe('reading aloud', () => {
  /** Runs in the page: voices that live here, or only on somebody's server. */
  const voices = (here: boolean): void => {
    const spoken: { words: string; voice: string }[] = [];
    Object.assign(globalThis, { seen: { spoken } });
    const made = [
      { name: 'far', lang: 'en-US', localService: false },
      ...(here ? [{ name: 'near', lang: 'en-GB', localService: true }] : []),
    ];
    Object.defineProperty(globalThis, 'SpeechSynthesisUtterance', {
      value: class {
        voice: { name: string } | null = null;
        readonly text: string;
        constructor(text: string) {
          this.text = text;
        }
      },
    });
    Object.defineProperty(globalThis, 'speechSynthesis', {
      value: {
        getVoices: () => made,
        cancel: () => undefined,
        speak: (u: { text: string; voice: { name: string } | null }) =>
          spoken.push({ words: u.text, voice: u.voice?.name ?? '' }),
      },
    });
  };

  test("is not offered where the only voices live on somebody else's server", async () => {
    const page = await bench.page(phone);
    await page.addInitScript(voices, false);
    await openSession(page, bench.fake);
    await page.getByRole('button', { name: 'menu' }).tap();
    await page.getByRole('link', { name: 'transcript' }).waitFor();
    expect(await page.getByRole('button', { name: /read aloud/ }).count()).toBe(0);
    await page.context().close();
  });

  test('speaks by a voice of this machine, cautions too', async () => {
    const page = await bench.page(phone);
    await page.addInitScript(voices, true);
    await openSession(page, bench.fake);
    await page.getByRole('button', { name: 'menu' }).tap();
    await page.getByRole('button', { name: /read aloud/ }).tap();
    await page.getByRole('button', { name: 'menu' }).tap();
    await type(page, 'going under to look');
    const spoken = await until(
      () => page.evaluate(() => seen.spoken),
      (l) => l.length > 0,
    );
    expect(new Set(spoken.map((s) => s.voice))).toEqual(new Set(['near']));
    expect(spoken.map((s) => s.words).join(' ')).toContain('stands');
    await page.context().close();
  });
});

describe("a logger's file", () => {
  const choose = async (page: Page, name: string, text: string): Promise<void> =>
    page.locator('#logger').setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });

  test('becomes a note in the line, says what was left out, and is sent as any note', async () => {
    const page = await bench.page();
    await openSession(page, bench.fake);
    await page.getByLabel('note', { exact: true }).fill('tank');
    await choose(page, 'night.csv', 'Time,Pressure (psi),Temp (C)\n9:00,112,20\n9:30,111,20\n10:00,109,19\n');
    await page.getByText('night.csv, read.').waitFor();
    const text = await page.getByLabel('note', { exact: true }).inputValue();
    // the last line is empty: who types on does not glue a word to a reading
    expect(text.split('\n')).toEqual(['tank', '9:00 112 psi', '9:30 111 psi', '10:00 109 psi', '']);
    expect(await page.locator('.told').textContent()).toContain('Temp');
    await page.getByRole('button', { name: 'add', exact: true }).click();
    await until(() => sheetOf(page), kept(1));
    // a tap on undo takes the whole of it back before it is sent
    await choose(page, 'again.csv', 'Time,tank psi\n9:00,112\n9:30,111\n');
    await page.getByText('again.csv, read.').waitFor();
    await page.getByRole('button', { name: 'undo the last tap' }).click();
    expect(await page.getByLabel('note', { exact: true }).inputValue()).toBe('');
    await page.context().close();
  });

  test('that cannot be decided is answered with line and column, and what stood in the line stays', async () => {
    const page = await bench.page();
    await openSession(page, bench.fake);
    await page.getByLabel('note', { exact: true }).fill('tank');
    await choose(page, 'bad.csv', 'Time,Pressure (psi)\n9:00,112\n9:30,oops\n10:00,109\n');
    await page.getByText('bad.csv: line 3, column 2: "oops" is no reading').waitFor();
    expect(await page.getByLabel('note', { exact: true }).inputValue()).toBe('tank');
    await page.context().close();
  });

  test('dropped on the page is taken as if it had been chosen', async () => {
    const page = await bench.page();
    await openSession(page, bench.fake);
    await page.locator('soap-session').evaluate((el) => {
      const data = new DataTransfer();
      data.items.add(new File(['Time,tank psi\n9:00,112\n9:30,111\n'], 'drop.csv', { type: 'text/csv' }));
      el.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
    });
    await page.getByText('drop.csv, read.').waitFor();
    expect(await page.getByLabel('note', { exact: true }).inputValue()).toContain('9:30 111 psi');
    await page.context().close();
  });
});

describe('big things', () => {
  test('a picture of 40 MB is shrunk before it is kept', async () => {
    const page = await bench.page(phone);
    const session = await openSession(page, bench.fake);
    const bytes = await page.evaluate(async () => {
      const canvas = document.createElement('canvas');
      canvas.width = 3200;
      canvas.height = 2400;
      canvas.getContext('2d')?.fillRect(0, 0, 900, 900);
      const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done));
      return [...new Uint8Array(await (blob ?? new Blob()).arrayBuffer())];
    });
    const folder = await mkdtemp(join(tmpdir(), 'big-'));
    // what follows the end of a PNG is no part of the picture, and yet of the file
    await writeFile(join(folder, 'dial.png'), Buffer.concat([Buffer.from(bytes), Buffer.alloc(40_000_000)]));
    await page.getByLabel('note', { exact: true }).fill('dial');
    await page.locator('input[accept="image/*"]').setInputFiles(join(folder, 'dial.png'));
    await page.getByRole('button', { name: /picture 1/ }).waitFor();
    await page.getByLabel('note', { exact: true }).press('Enter');
    await until(() => sheetOf(page), kept(1));
    const note = bench.fake.sessions.get(session)?.find((e) => e.is === 'note');
    expect(note?.is === 'note' ? note.photos?.map((p) => [p.width, p.height]) : []).toEqual([[1600, 1200]]);
    await page.context().close();
  });

  test('a picture that the bench will not have does not hold its note up, and the log says that it is missing', async () => {
    const page = await bench.page(phone);
    const session = await openSession(page, bench.fake);
    const dot = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
    bench.fake.fullOfPictures = true;
    await page.getByLabel('note', { exact: true }).fill('dial');
    await page
      .locator('input[accept="image/*"]')
      .setInputFiles({ name: 'dial.png', mimeType: 'image/png', buffer: Buffer.from(dot, 'base64') });
    await page.getByRole('button', { name: /picture 1/ }).waitFor();
    await page.getByLabel('note', { exact: true }).press('Enter');
    await page.getByText('Picture "dial.png" was not kept: All pictures together').waitFor();
    bench.fake.fullOfPictures = false;
    const kept = bench.fake.sessions.get(session) ?? [];
    const note = kept.find((e) => e.is === 'note');
    expect(note?.is === 'note' && note.photos).toBeUndefined();
    expect(kept.filter((e) => e.is === 'remark').map((e) => [e.is === 'remark' && e.about, e.by])).toEqual([
      [note?.seq, note?.by],
    ]);
    await page.context().close();
  });

  test('a paste of 100 kB outlives a reload, whole', async () => {
    const page = await bench.page(phone);
    await openSession(page, bench.fake);
    const text = 'tank 95 psi '.repeat(8400);
    await page.getByLabel('note', { exact: true }).fill(text);
    await page.getByText('characters too long').waitFor();
    await page.reload();
    await page.getByLabel('note', { exact: true }).waitFor();
    expect(await page.getByLabel('note', { exact: true }).inputValue()).toBe(text);
    await page.context().close();
  });
});

describe('a paired device', () => {
  test('that reviews is offered nothing that writes, and is told why', async () => {
    const bench1 = await bench.page(phone);
    const session = await openSession(bench1, bench.fake);
    await type(bench1, 'LR 13 1/4');
    await bench1.getByRole('button', { name: 'holds' }).waitFor();
    bench.fake.role = 'reviews';
    const page = await bench.page(phone);
    await page.goto(bench.fake.url);
    await page.getByText('This device was paired to review').waitFor();
    expect(await page.getByRole('button', { name: /start|practice/ }).count()).toBe(0);
    await page.goto(`${bench.fake.url}#/session/${session}`);
    await page.getByText('This device was paired to review').waitFor();
    await page.getByText('LR 13 1/4').first().waitFor();
    expect(await page.getByLabel('note', { exact: true }).count()).toBe(0);
    expect(await page.getByRole('button', { name: 'holds' }).count()).toBe(0);
    await page.getByRole('button', { name: 'menu' }).tap();
    await page.getByRole('link', { name: 'transcript' }).waitFor();
    expect(await page.getByRole('button', { name: 'close session' }).count()).toBe(0);
    await page.context().close();
    await bench1.context().close();
  });

  test('that learns goes from a word in a reply to its page and on to practice, and writes only there', async () => {
    const bench1 = await bench.page(phone);
    const session = await openSession(bench1, bench.fake);
    await type(bench1, 'LR 13 1/4');
    await bench1.getByRole('button', { name: 'holds' }).waitFor();
    bench.fake.role = 'learns';
    const page = await bench.page(phone);
    await page.goto(`${bench.fake.url}#/session/${session}`);
    await page.getByText('This device was paired to learn').waitFor();
    expect(await page.getByLabel('note', { exact: true }).count()).toBe(0);
    await page
      .getByRole('button', { name: /^explain what was found/ })
      .last()
      .tap();
    const word = page.locator('soap-exchange .teach a').first();
    const name = (await word.textContent()) ?? '';
    await word.tap();
    await page.getByRole('heading', { name, exact: true }).waitFor();
    await page.getByRole('button', { name: /Juniper 38/ }).tap();
    await page.getByLabel('note', { exact: true }).fill('read tank');
    await page.getByLabel('note', { exact: true }).press('Enter');
    await until(() => sheetOf(page), kept(1));
    const opened = [...bench.fake.sessions.values()].at(-1)?.[0];
    expect(opened?.is === 'opened' && opened.practice).toBeTruthy();
    await page.context().close();
    await bench1.context().close();
  });

  test('only the bench machine shows the way to the devices', async () => {
    const page = await bench.page(phone);
    const session = await openSession(page, bench.fake);
    await goTo(page, bench.fake, session);
    await page.getByRole('button', { name: 'menu' }).tap();
    expect(await page.getByRole('link', { name: 'devices' }).getAttribute('href')).toBe('/bench');
    await page.context().close();
  });
});
