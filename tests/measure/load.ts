/**
 * Many pages at once, a note a second each: `npm run measure -- load`; PAGES and SECONDS set its size. The bare echo
 * stands beside it, driven the same way. What a grown log costs comes first (growth.ts).
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { WebSocket } from 'ws';
import { cleanUp, root, type Running, startServer } from '../start/server.ts';
import { line, ms, percentile } from './clock.ts';
import { launchEcho } from './echo-process.ts';
import { measureGrowth } from './growth.ts';

const texts = [
  'tank 95 psi',
  'left rear 13 1/4',
  'comp off',
  'bubbles at rh bag crimp, none on the left',
  'tank 93',
  'panel shut',
  'lr 13 1/8 rr 13 3/4',
  'tank 91 psi',
];
/** A session of ordinary length: so many notes of one page, two pages a session. */
const notesASession = 20;

const resident = (pid: number): number =>
  Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;
/** Processor time of a process so far, ms: 10 ms ticks (Linux USER_HZ), user and system, fields 14 and 15 of its stat. */
const processor = (pid: number): number => {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]!.split(' ');
  return (Number(fields[11]) + Number(fields[12])) * 10;
};
const wait = (time: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, time));
/** Memory that a server still held after its latest collections, MB: it tells (watched-server.mjs). */
const heapOf = async ({ child, said }: Running): Promise<number> => {
  const told = (): RegExpMatchArray[] => [...said().matchAll(/^heap ([\d.]+)$/gm)];
  const before = told().length;
  child.kill('SIGUSR2');
  for (let i = 0; i < 200 && told().length === before; i += 1) await wait(50);
  return Number(told().at(-1)?.[1]);
};
/** A server that stands; the seconds after a start are a line of their own. */
const settled = 4000;
const coldSeconds = 3;

const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;

/** `at`: when each was sent, ms since the begin. */
type Load = { times: number[]; at: number[]; errors: string[]; memory: number[]; processor: number };

/** `open` and `frame` say what a page sends; `answers` whether a frame is the answer to a note's id. */
const drive = async (
  url: string,
  pid: number,
  { pages, seconds }: { pages: number; seconds: number },
  how: {
    hello: readonly unknown[];
    open: (session: string) => readonly unknown[];
    note: (session: string, id: string, n: number) => unknown;
    answers: (text: string, id: string) => boolean;
  },
): Promise<Load> => {
  const out: Load = { times: [], at: [], errors: [], memory: [], processor: processor(pid) };
  const { host, origin } = new URL(url);
  const begun = performance.now();
  const sample = setInterval(() => out.memory.push(resident(pid)), 500);
  const page = async (p: number): Promise<void> => {
    const ws = new WebSocket(`ws://${host}/socket`, { headers: { Origin: origin } });
    let waits: { id: string; from: number; done: () => void } | null = null;
    ws.on('error', (error) => out.errors.push(error.message));
    await new Promise((resolve) => ws.once('open', resolve));
    ws.on('message', (data) => {
      const text = (data as Buffer).toString('utf8');
      if (text.startsWith('{"is":"refused"')) out.errors.push(text);
      if (!waits || !how.answers(text, waits.id)) return;
      out.times.push(performance.now() - waits.from);
      out.at.push(waits.from - begun);
      waits.done();
      waits = null;
    });
    const send = (frame: unknown): void => ws.send(JSON.stringify(frame));
    how.hello.forEach(send);
    const begin = performance.now() + (p / pages) * 1000;
    for (let n = 0; n < seconds; n += 1) {
      const session = `load-${Math.floor(p / 2)}-${Math.floor(n / notesASession)}`;
      await new Promise((resolve) => setTimeout(resolve, Math.max(0, begin + n * 1000 - performance.now())));
      if (n % notesASession === 0) how.open(session).forEach(send);
      const id = `load-note-${p}-${n}`;
      const answered = new Promise<'answered' | 'late'>((resolve) => {
        waits = { id, from: performance.now(), done: () => resolve('answered') };
        setTimeout(() => resolve('late'), 10_000).unref();
      });
      send(how.note(session, id, p + n));
      if ((await answered) === 'late') out.errors.push(`${id} was not answered in 10 s`);
    }
    ws.terminate();
  };
  await Promise.all(Array.from({ length: pages }, (_, p) => page(p)));
  clearInterval(sample);
  out.processor = (processor(pid) - out.processor) / out.times.length;
  return out;
};

export const measureLoad = async (): Promise<void> => {
  const size = { pages: Number(process.env['PAGES'] ?? 200), seconds: Number(process.env['SECONDS'] ?? 120) };
  const text = (n: number): string => texts[n % texts.length]!;
  if (!process.env['BRIEF']) await measureGrowth();
  console.log(`  ${size.pages} pages for ${size.seconds} s`);
  const echo = await launchEcho();
  const bare = await drive(
    echo.url,
    echo.pid,
    { ...size, seconds: Math.min(20, size.seconds) },
    {
      hello: [],
      open: () => [],
      note: (_, id, n) => ({ is: 'note', id, text: text(n) }),
      answers: (frame, id) => frame.includes(`"id":"${id}"`),
    },
  );
  await echo.stop();

  const watched = process.env['WATCHED'] ?? join(root, 'tests', 'tools', 'watched-server.mjs');
  const typing = {
    hello: [{ is: 'hello', v: 1 }],
    open: (session: string) => [
      { is: 'open', session, coach: 'juniper-38', by: 'MM' },
      { is: 'follow', session, after: 0 },
    ],
    note: (session: string, id: string, n: number) => {
      return { is: 'note', session, id, text: text(n), at: Date.now(), seen: 9999, by: 'MM' };
    },
    answers: (frame: string, id: string) => frame.startsWith('{"is":"entries"') && frame.includes(`"to":"${id}"`),
  };
  const cold = await startServer(undefined, {}, watched);
  const first = await drive(cold.url, cold.child.pid!, { ...size, seconds: coldSeconds }, typing);
  await cold.stop();
  cleanUp(cold.data);

  const running = await startServer(undefined, {}, watched);
  await wait(settled);
  const quarterHeap = wait(size.seconds * 250).then(() => heapOf(running));
  const load = await drive(running.url, running.child.pid!, size, typing);
  const heaps = [await quarterHeap, await heapOf(running)];
  if (process.env['SHOW']) {
    const each = (list: readonly number[], step: number): string =>
      list
        .filter((_, i) => i % step === 0)
        .map(Math.round)
        .join(' ');
    console.log(`  resident, MB, every 5 s: ${each(load.memory, 10)}`);
    // where the tail comes from
    const most: number[] = [];
    load.times.forEach((t, i) => {
      const second = Math.floor(load.at[i]! / 1000);
      most[second] = Math.max(most[second] ?? 0, t);
    });
    console.log(`  longest note of each second, ms: ${each(most, 1)}`);
  }
  await running.stop();
  cleanUp(running.data);

  const what = `${size.pages} pages, a note a second each`;
  const beside = (p: number): string => `bare echo ${ms(percentile(bare.times, p))}`;
  line(`${what}, p50`, ms(percentile(load.times, 50)), beside(50), '-');
  line(`${what}, p99`, ms(percentile(load.times, 99)), beside(99), 'at most 50 ms');
  line(
    `the same in the first ${coldSeconds} s after its start, p99`,
    ms(percentile(first.times, 99)),
    `${first.times.length} notes, code and tables cold`,
    '-',
  );
  line('processor time a note', ms(load.processor), `bare echo ${ms(bare.processor)}`, '-');
  line(`notes in ${size.seconds} s`, `${load.times.length}, ${load.errors.length} errors`, '', 'no error');
  for (const error of load.errors.slice(0, 5)) console.log(`  ${error.slice(0, 200)}`);
  line(
    'memory in use after collecting, at the end',
    `${heaps[1]!.toFixed(0)} MB`,
    `after a quarter ${heaps[0]!.toFixed(0)} MB`,
    'flat',
  );
  const quarter = Math.floor(load.memory.length / 4);
  const [early, late] = [mean(load.memory.slice(0, quarter)), mean(load.memory.slice(-quarter))];
  line(
    'memory resident, last quarter',
    `${late.toFixed(0)} MB`,
    `first quarter ${early.toFixed(0)} MB; with what is not collected yet`,
    '-',
  );
};
