/**
 * Many pages at once, a note a second each: `npm run measure -- load`; PAGES and SECONDS set its size. The bare echo
 * stands beside it, driven the same way. What a grown log costs comes first (growth.ts).
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { WebSocket } from 'ws';
import { cleanUp, root, startServer } from '../start/server.ts';
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
const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;

type Load = { times: number[]; errors: string[]; memory: number[]; processor: number };

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
  const out: Load = { times: [], errors: [], memory: [], processor: processor(pid) };
  const { host, origin } = new URL(url);
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
  const running = await startServer(undefined, {}, watched);
  const load = await drive(running.url, running.child.pid!, size, {
    hello: [{ is: 'hello', v: 1 }],
    open: (session) => [
      { is: 'open', session, coach: 'juniper-38', by: 'MM' },
      { is: 'follow', session, after: 0 },
    ],
    note: (session, id, n) => ({ is: 'note', session, id, text: text(n), at: Date.now(), seen: 9999, by: 'MM' }),
    answers: (frame, id) => frame.startsWith('{"is":"entries"') && frame.includes(`"to":"${id}"`),
  });
  if (process.env['SHOW'])
    console.log(
      load.memory
        .filter((_, i) => i % 10 === 0)
        .map(Math.round)
        .join(' '),
    );
  await running.stop();
  cleanUp(running.data);

  const what = `${size.pages} pages, a note a second each`;
  const beside = (p: number): string => `bare echo ${ms(percentile(bare.times, p))}`;
  line(`${what}, p50`, ms(percentile(load.times, 50)), beside(50), '-');
  line(`${what}, p99`, ms(percentile(load.times, 99)), beside(99), 'at most 50 ms');
  line('processor time a note', ms(load.processor), `bare echo ${ms(bare.processor)}`, '-');
  line(`notes in ${size.seconds} s`, `${load.times.length}, ${load.errors.length} errors`, '', 'no error');
  for (const error of load.errors.slice(0, 5)) console.log(`  ${error.slice(0, 200)}`);
  const quarter = Math.floor(load.memory.length / 4);
  const [first, last] = [mean(load.memory.slice(0, quarter)), mean(load.memory.slice(-quarter))];
  line('memory, last quarter', `${last.toFixed(0)} MB`, `first quarter ${first.toFixed(0)} MB`, 'flat');
};
