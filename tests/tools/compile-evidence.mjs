/* oxlint-disable unicorn/require-post-message-target-origin -- a worker thread has no origin */
/**
 * npm run evidence [draws] : simulates coaches and writes server/twin/compiled/evidence.json. Shows its progress; takes
 * minutes. Bundles the twin first (Node 20 does not read TypeScript) and works on two threads at low priority.
 */
import { readFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { setPriority } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { build } from 'vite';

const root = new URL('../../', import.meta.url).pathname;
const read = (path) => readFileSync(root + path, 'utf8');
const seed = 20_251;
const out = `${root}node_modules/.cache/soapwater/`;

const rows = (causes) =>
  `{\n${Object.entries(causes)
    .map(([cause, counts]) => `    ${JSON.stringify(cause)}: ${JSON.stringify(counts)}`)
    .join(',\n')}\n  }`;

if (isMainThread) {
  const draws = Number(process.argv[2] ?? 160);
  if (!Number.isInteger(draws) || draws < 1) {
    console.error('draws must be a whole number above zero');
    process.exit(1);
  }
  await build({
    configFile: false,
    root,
    logLevel: 'error',
    build: {
      ssr: 'tests/tools/compile-entry.ts',
      outDir: out,
      emptyOutDir: false,
      rollupOptions: { output: { entryFileNames: 'compile-entry.mjs' } },
    },
  });
  const twin = await import(`${out}compile-entry.mjs`);
  const jobs = [true, false].flatMap((hasPanel) => twin.causesFor(hasPanel).map((cause) => ({ hasPanel, cause })));
  const results = new Map();
  const began = Date.now();
  let next = 0;
  await Promise.all(
    [0, 1].map(
      () =>
        new Promise((resolve, reject) => {
          const worker = new Worker(new URL(import.meta.url), { workerData: { draws } });
          const give = () => (next < jobs.length ? worker.postMessage(next++) : worker.postMessage(-1));
          worker.on('message', ({ index, counts }) => {
            results.set(index, counts);
            const spent = (Date.now() - began) / 1000;
            const left = (spent / results.size) * (jobs.length - results.size);
            const { cause, hasPanel } = jobs[index];
            console.log(
              `${results.size}/${jobs.length} ${hasPanel ? 'panel' : 'no panel'}: ${cause} (${spent.toFixed(0)} s, about ${left.toFixed(0)} s to go)`,
            );
            give();
          });
          worker.on('error', reject);
          worker.on('exit', (code) => (code === 0 ? resolve() : reject(new Error(`worker ended with ${code}`))));
          give();
        }),
    ),
  );
  const table = { panel: {}, noPanel: {} };
  const samples = { panel: {}, noPanel: {} };
  for (const [index, { cause, hasPanel }] of jobs.entries()) {
    const which = hasPanel ? 'panel' : 'noPanel';
    twin.spreadCounts(table[which], cause, results.get(index));
    samples[which][cause] = results.get(index).sample;
  }
  mkdirSync(`${root}server/twin/compiled`, { recursive: true });
  const head = { v: 1, command: `npm run evidence -- ${draws}`, seed, draws, code: twin.codeHash(read) };
  const lines = Object.entries(head).map(([key, value]) => `  ${JSON.stringify(key)}: ${JSON.stringify(value)}`);
  writeFileSync(
    `${root}server/twin/compiled/evidence.json`,
    `{\n${lines.join(',\n')},\n  "panel": ${rows(table.panel)},\n  "noPanel": ${rows(table.noPanel)},\n  "samples": {\n    "panel": ${JSON.stringify(samples.panel)},\n    "noPanel": ${JSON.stringify(samples.noPanel)}\n  }\n}\n`,
  );
  console.log(`written in ${((Date.now() - began) / 1000).toFixed(0)} s`);
} else {
  setPriority(10);
  const twin = await import(`${out}compile-entry.mjs`);
  const sheets = twin.sheetsFrom(read);
  const jobs = [true, false].flatMap((hasPanel) => twin.causesFor(hasPanel).map((cause) => ({ hasPanel, cause })));
  parentPort.on('message', (index) => {
    if (index < 0) {
      parentPort.close();
      return;
    }
    const { hasPanel, cause } = jobs[index];
    parentPort.postMessage({ index, counts: twin.countCause(sheets, hasPanel, cause, seed, workerData.draws) });
  });
}
