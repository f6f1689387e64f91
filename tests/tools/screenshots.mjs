// Types a session on the demo coach in a real browser and keeps the pictures of the README: node tests/tools/screenshots.mjs
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { WebSocket } from 'ws';
import { root } from '../../server/prepare.mjs';

const notes = [
  'sags overnight, fine when driving',
  'tank 54, LR 11 1/2 RR 13 3/4 LF 15 1/4 RF 15 1/4, parked 10 hours, key off, panel road, jacks up, floor level',
  'going under to look',
  'on stands, wheels chocked',
  'soaped the left crimp, bubbles',
];
const data = mkdtempSync(join(tmpdir(), 'soapwater-pictures-'));
const server = spawn(process.execPath, [join(root, 'server/start.mjs')], {
  env: { ...process.env, PORT: '0', DATA: data },
  stdio: ['ignore', 'pipe', 'inherit'],
});
const url = await new Promise((resolve) => {
  let out = '';
  server.stdout.on('data', (d) => {
    out += String(d);
    const hit = /http:\/\/127\.0\.0\.1:\d+\//.exec(out);
    if (hit) resolve(hit[0]);
  });
});
const host = new URL(url).host;
const ws = new WebSocket(`ws://${host}/socket`, { headers: { Origin: `http://${host}` } });
await new Promise((resolve) => ws.once('open', resolve));
const send = (frame) => ws.send(JSON.stringify(frame));
const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
send({ is: 'hello', v: 1 });
send({ is: 'open', session: 'demo-session', coach: 'juniper-38', by: 'KD' });
await pause(500);
for (const [i, text] of notes.entries()) {
  send({ is: 'note', session: 'demo-session', id: `demo-note-${i}`, text, at: Date.now(), seen: 999, by: 'KD' });
  await pause(900);
}
const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
});
for (const [name, width, height] of [
  ['bench', 1400, 900],
  ['phone', 360, 740],
]) {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.goto(`${url}#/session/demo-session`);
  await pause(1500);
  await page.screenshot({ path: join(root, 'fixtures/pictures', `${name}.png`) });
  await page.goto(`${url}#/session/demo-session/transcript`);
  await pause(1000);
  if (name === 'bench') await page.screenshot({ path: join(root, 'fixtures/pictures/transcript.png') });
  await page.close();
}
await browser.close();
ws.terminate();
server.kill();
rmSync(data, { recursive: true, force: true });
