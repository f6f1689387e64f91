/** What no one would type, by seed, against the reader, the sheets and the socket: nothing may crash, hang or swell. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { blankContext, read } from '../../intents/read.ts';
import { Reading } from '../../intents/shapes.ts';
import { makeDesk } from '../../server/desk.ts';
import { memoryLog } from '../../server/log/memory.ts';
import { loadSheet, SheetRefused } from '../../server/sheet/load.ts';
import { serveInProcess } from '../socket/in-process.ts';
import { Page, root } from '../start/server.ts';
import { oddFrame } from './odd-frames.ts';
import { mutated, oddNote } from './odd-text.ts';
import { drawBy } from './seeded.ts';

export type Fuzzed = {
  count: number;
  faults: string[];
  /** Longest that one took, ms, and which. */
  worst: number;
  which: string;
  /** Heap in use, MB, after the first quarter and at the end. */
  memory: [number, number];
  /** Entries that the frames made: there was something behind the door. */
  kept: number;
};
type Size = { count: number; seed: number; tell?: (done: number) => void };

const sheetText = readFileSync(join(root, 'fixtures', 'sheets', 'juniper-38.json'), 'utf8');
const noon = Date.UTC(2026, 9, 6, 18, 0);
const heap = (): number => {
  (globalThis as { gc?: () => void }).gc?.();
  return process.memoryUsage().heapUsed / 1e6;
};
const errorOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** Runs `one` for each number; a slow one is timed again, up to nine times, so that a busy machine is not blamed on it. */
const each = async (
  { count, tell }: Size,
  one: (i: number) => { what: string; run: () => unknown },
): Promise<Fuzzed> => {
  const out: Fuzzed = { count, faults: [], worst: 0, which: '', memory: [0, 0], kept: 0 };
  for (let i = 0; i < count; i += 1) {
    const { what, run } = one(i);
    // where others keep the processor busy, only what this process used of it is its own
    const time = async (): Promise<number> => {
      const from = performance.now();
      const used = process.cpuUsage();
      await run();
      const { user, system } = process.cpuUsage(used);
      return Math.min(performance.now() - from, (user + system) / 1000);
    };
    try {
      let took = await time();
      for (let again = 0; again < (took > 50 ? 9 : 2) && took > 20; again += 1) took = Math.min(took, await time());
      if (took > out.worst) [out.worst, out.which] = [took, what];
    } catch (error) {
      if (out.faults.length < 20) out.faults.push(`${errorOf(error)}: ${JSON.stringify(what).slice(0, 300)}`);
    }
    if (i === Math.floor(count / 4)) out.memory[0] = heap();
    if (i % 5000 === 4999) tell?.(i + 1);
  }
  out.memory[1] = heap();
  return out;
};

/** Notes against the reader; what it reads must be of the shape that the log keeps. */
export const fuzzNotes = (size: Size): Promise<Fuzzed> => {
  const draw = drawBy(size.seed);
  return each(size, () => {
    const what = oddNote(draw);
    return {
      what,
      run: () => {
        const shape = Reading.safeParse(read(what, blankContext('fuzz-note', { at: noon })));
        if (!shape.success) throw new Error(`not of the shape: ${shape.error.issues[0]?.path.map(String).join('.')}`);
      },
    };
  });
};

const amounts = ['0 psi', '-5 psi', '1e99 psi', '13 1/4', 'psi', '0 in', '999999 gal', '0 V', '٣ psi', '1/0 in', ''];
const spoilt = (draw: ReturnType<typeof drawBy>): string => {
  if (draw.below(3) === 0) return mutated(sheetText, draw);
  const sheet = JSON.parse(sheetText) as Record<string, unknown>;
  for (let i = draw.below(3); i >= 0; i -= 1) {
    let at: Record<string, unknown> = sheet;
    for (;;) {
      const key = draw.of(Object.keys(at).concat('extra'));
      const below = at[key];
      if (below !== null && typeof below === 'object' && Object.keys(below).length > 0 && draw.below(5) > 0) {
        at = below as Record<string, unknown>;
        continue;
      }
      if (draw.below(4) === 0) delete at[key];
      else at[key] = draw.of<unknown>([...amounts, null, true, 0, -1, 1e308, [], {}, 'x'.repeat(9000)]);
      break;
    }
  }
  return JSON.stringify(sheet);
};

/** Sheets: loaded or refused by name of the field, and one that is loaded can be judged by. */
export const fuzzSheets = (size: Size): Promise<Fuzzed> => {
  const draw = drawBy(size.seed);
  return each(size, (i) => {
    const what = spoilt(draw);
    return {
      what,
      run: async () => {
        try {
          const loaded = loadSheet(what, 'fuzz');
          if (i % 20 > 0) return;
          const desk = makeDesk({
            log: memoryLog(),
            sheets: new Map([['fuzz', loaded]]),
            engine: 'fuzz',
            now: () => noon,
          });
          await desk.open({ session: 'fuzz-sheet', coach: 'fuzz', by: 'FZ' });
          const notes = ['sags overnight', 'tank 112 at 11:05, 104 at 11:35, comp off', 'lr 13 1/4 rr 14, 12.1 volts'];
          for (const [n, text] of notes.entries())
            await desk.note('fuzz-sheet', { id: `fuzz-note-${n}`, text, at: noon, seen: 99, by: 'FZ' });
          await desk.board('fuzz-sheet');
        } catch (error) {
          if (!(error instanceof SheetRefused)) throw error;
          if (error.fields.length === 0) throw new Error('refused without saying where', { cause: error });
        }
      },
    };
  });
};

const batch = 50;

/** Frames against the socket with its limits on rate lifted; after each batch it must still answer, in order. */
export const fuzzFrames = async ({ count, seed, tell }: Size): Promise<Fuzzed> => {
  const out: Fuzzed = { count, faults: [], worst: 0, which: '', memory: [0, 0], kept: 0 };
  const draw = drawBy(seed);
  const { url, log, stop } = await serveInProcess({ rate: 1e9, burst: 1e9, openRate: 1e9, openBurst: 1e9 });
  const page = await new Page(url).opened();
  try {
    for (let n = 0; n < count; n += batch) {
      const from = performance.now();
      for (let i = n; i < Math.min(count, n + batch); i += 1) page.send(oddFrame(i, draw));
      page.send({ is: 'ask', session: null, id: `sync-frame-${n}`, text: 'psi' });
      await page.until((f) => f.is === 'answer' && f.id === `sync-frame-${n}`);
      const took = (performance.now() - from) / batch;
      if (took > out.worst) [out.worst, out.which] = [took, `frames ${n} to ${n + batch}`];
      for (const f of page.frames)
        if (f.is === 'refused' && f.why === 'log failed' && out.faults.length < 20) out.faults.push(f.words);
      page.frames.length = 0;
      if (n <= count / 4) out.memory[0] = heap();
      if (n % 5000 === 0) tell?.(n);
    }
    if (page.ws.readyState !== page.ws.OPEN) out.faults.push('the page was dropped');
    out.kept = log.check().entries;
  } catch (error) {
    out.faults.push(errorOf(error));
  } finally {
    page.close();
    await stop();
  }
  out.memory[1] = heap();
  return out;
};
