// npm test: installs what it needs, the browser included, then format, lint, types and every suite.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build, checkNode, fail, install, root } from '../server/prepare.mjs';

checkNode();
install();

// what the tests run beside Node: a browser, and poppler to read what it prints
const programs = [
  { name: 'Chromium', package: 'chromium', at: ['/usr/bin/chromium', '/usr/bin/chromium-browser'] },
  { name: 'poppler', package: 'poppler-utils', at: ['/usr/bin/pdftotext'] },
];
const missing = programs.filter((program) => !program.at.some((path) => existsSync(path)));
if (missing.length > 0) {
  const names = missing.map((program) => program.name).join(' and ');
  const command = `apt-get update && apt-get install -y ${missing.map((program) => program.package).join(' ')}`;
  if (process.getuid?.() !== 0) fail(`the browser tests need ${names}; as root: ${command}`);
  console.log(`installing ${names}`);
  if (spawnSync('sh', ['-c', command], { stdio: ['ignore', 'ignore', 'inherit'] }).status !== 0)
    fail(`${names} could not be installed: ${command}`);
}
build();

const bin = (name) => join(root, 'node_modules', '.bin', name);
const results = join(root, '.build', 'tests.json');
rmSync(results, { force: true });
const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${results}`];
const steps = [
  ['format', bin('prettier'), ['--check', '--log-level', 'warn', '.']],
  [
    'lint',
    bin('oxlint'),
    ['-c', 'tests/tools/oxlint.json', '--type-aware', '--deny-warnings', 'server', 'web', 'intents', 'tests'],
  ],
  ['types', bin('tsc'), ['-p', '.']],
  ['tests', bin('vitest'), ['run', '--config', 'tests/vitest.config.ts', ...reporters, ...process.argv.slice(2)]],
];
let passed = 0;
let failed = 0;
for (const [name, command, args] of steps) {
  const started = Date.now();
  const ok = spawnSync(command, args, { cwd: root, stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;
  console.log(`${ok ? 'passed' : 'FAILED'}: ${String(name)} (${((Date.now() - started) / 1000).toFixed(1)} s)`);
  // the suites are counted by their tests; a run that failed without a failed test (a file that would not load) counts one
  const counted = name === 'tests' && existsSync(results) ? JSON.parse(readFileSync(results, 'utf8')) : null;
  passed += counted ? counted.numPassedTests : ok ? 1 : 0;
  failed += counted ? Math.max(counted.numFailedTests, ok ? 0 : 1) : ok ? 0 : 1;
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
