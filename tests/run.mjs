// npm test: installs what it needs, the browser included, then format, lint, types and every suite.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { build, checkNode, fail, install, root } from '../server/prepare.mjs';

checkNode();
install();

const chromium = ['/usr/bin/chromium', '/usr/bin/chromium-browser'];
if (!chromium.some((path) => existsSync(path))) {
  const command = 'apt-get update && apt-get install -y chromium';
  if (process.getuid?.() !== 0) fail(`the browser tests need Chromium; as root: ${command}`);
  console.log('installing Chromium');
  if (spawnSync('sh', ['-c', command], { stdio: ['ignore', 'ignore', 'inherit'] }).status !== 0)
    fail(`Chromium could not be installed: ${command}`);
}
build();

const bin = (name) => join(root, 'node_modules', '.bin', name);
const steps = [
  ['format', bin('prettier'), ['--check', '--log-level', 'warn', '.']],
  [
    'lint',
    bin('oxlint'),
    ['-c', 'tests/tools/oxlint.json', '--type-aware', '--deny-warnings', 'server', 'web', 'intents', 'tests'],
  ],
  ['types', bin('tsc'), ['-p', '.']],
  ['tests', bin('vitest'), ['run', '--config', 'tests/vitest.config.ts', ...process.argv.slice(2)]],
];
let failed = 0;
for (const [name, command, args] of steps) {
  const started = Date.now();
  const done = spawnSync(command, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] });
  const ok = done.status === 0;
  if (!ok) failed += 1;
  console.log(`${ok ? 'passed' : 'FAILED'}: ${name} (${((Date.now() - started) / 1000).toFixed(1)} s)`);
}
console.log(`${steps.length - failed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
