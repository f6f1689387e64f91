// Types a session on the demo coach in a real browser and keeps the pictures of the README: node tests/tools/screenshots.mjs
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { WebSocket } from 'ws';
import { root } from '../../server/prepare.mjs';

const before = [
  'sags overnight, fine when driving',
  'tank 54, LR 11 1/2 RR 13 3/4 LF 15 1/4 RF 15 1/4, parked 10 hours, key off, panel road, jacks up, floor level',
];
const danger = 'going under to look';
const after = ['on stands, wheels chocked', 'soaped the left crimp, bubbles'];

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
const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
let sent = 0;
const note = async (text) => {
  const id = `demo-note-${(sent += 1)}`;
  ws.send(JSON.stringify({ is: 'note', session: 'demo-session', id, text, at: Date.now(), seen: 999, by: 'KD' }));
  await pause(900);
};

const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
});
const sizes = { phone: [360, 740], tablet: [768, 1024], bench: [1400, 900] };
/** Opens `path` as a device of that size would and keeps what stands there after `deed`. */
const keep = async (name, size, path, { deed, theme, by = 'KD' } = {}) => {
  const [width, height] = sizes[size];
  const context = await browser.newContext({ viewport: { width, height }, hasTouch: size !== 'bench' });
  const page = await context.newPage();
  await page.addInitScript(
    ([who, light]) => {
      localStorage.setItem('soapwater.by', who);
      if (light) localStorage.setItem('soapwater.theme', light);
    },
    [by, theme ?? ''],
  );
  await page.goto(`${url}${path}`);
  await pause(1200);
  await deed?.(page);
  await pause(700);
  await page.screenshot({ path: join(root, 'fixtures/pictures', `${name}.png`) });
  await context.close();
};
const session = '#/session/demo-session';
const tap = (role, name) => (page) => page.getByRole(role, { name }).first().click();

ws.send(JSON.stringify({ is: 'hello', v: 1 }));
ws.send(JSON.stringify({ is: 'open', session: 'demo-session', coach: 'juniper-38', by: 'KD' }));
await pause(500);
await keep('phone-empty', 'phone', session);
for (const text of before) await note(text);
await keep('phone-finding', 'phone', session);
await keep('phone-pad', 'phone', session, { deed: tap('button', /^LR|^left rear/) });
await note(danger);
await keep('phone-caution', 'phone', session);
await keep('bench-caution', 'bench', session);
for (const text of after) await note(text);
await keep('phone-board', 'phone', session, { deed: tap('button', 'board') });
await keep('tablet-sun', 'tablet', session, { theme: 'sun' });
await keep('bench', 'bench', session);
await keep('bench-dark', 'bench', session, { theme: 'dark' });
await keep('bench-transcript', 'bench', `${session}/transcript`);
await keep('bench-report', 'bench', '#/report/demo-session');
await keep('bench-estimate', 'bench', '#/estimate/demo-session');
await keep('bench-history', 'bench', '#/history/juniper-38');
await keep('bench-sheet', 'bench', '#/sheet/juniper-38');
await keep('bench-start', 'bench', '');
await keep('phone-menu', 'phone', session, { deed: tap('button', 'menu') });
await keep('phone-learn', 'phone', '#/learn');
await keep('tablet-check', 'tablet', `#/learn/check/${encodeURIComponent('leak-down')}`, {
  deed: async (page) => {
    await page.goto(`${url}#/learn`);
    await page.getByRole('link', { name: /^Timed leak-down/ }).click();
  },
});
await browser.close();
ws.terminate();
server.kill();
rmSync(data, { recursive: true, force: true });
