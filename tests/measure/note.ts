/** Note sent to reply at the client's socket, durable write included, beside the bare echo. */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { WebSocket } from 'ws';
import { Page, startServer, cleanUp } from '../start/server.ts';
import { line, ms, percentile } from './clock.ts';
import { startEcho } from './echo.ts';

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
const rounds = 300;

export const measureNote = async (): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'soapwater-measure-'));
  const echo = await startEcho(join(folder, 'echo.db'));
  const ws = new WebSocket(echo.url.replace('http', 'ws'));
  await new Promise((resolve) => ws.once('open', resolve));
  const echoTimes: number[] = [];
  for (let i = 0; i < rounds; i += 1) {
    const from = performance.now();
    const back = new Promise((resolve) => ws.once('message', resolve));
    ws.send(JSON.stringify({ is: 'note', text: texts[i % texts.length], id: `n${i}` }));
    await back;
    echoTimes.push(performance.now() - from);
  }
  ws.terminate();
  echo.stop();

  const running = await startServer(join(folder, 'data'));
  const page = await new Page(running.url).opened();
  const times: number[] = [];
  for (let i = 0; i < rounds; i += 1) {
    // a session of ordinary length: forty notes
    const session = `measure-${Math.floor(i / 40)}`;
    if (i % 40 === 0) {
      page.frames.length = 0;
      page.send({ is: 'open', session, coach: 'juniper-38', by: 'MM' });
      await page.until((f) => f.is === 'entries');
    }
    // the socket allows 20 frames a second
    await new Promise((resolve) => setTimeout(resolve, 55));
    const from = performance.now();
    await page.note(session, `measure-note-${i}`, texts[i % texts.length]!, 9999);
    times.push(performance.now() - from);
  }
  page.close();
  await running.stop();
  cleanUp(folder);
  const warm = times.slice(20);
  line('note to reply, p50', ms(percentile(warm, 50)), `bare echo ${ms(percentile(echoTimes, 50))}`, '-');
  const ratio = percentile(warm, 99) / percentile(echoTimes, 99);
  line(
    'note to reply, p99',
    ms(percentile(warm, 99)),
    `bare echo ${ms(percentile(echoTimes, 99))}: ${ratio.toFixed(1)} times`,
    'at most 4 times',
  );
};
