// What every script does first, with Node's own modules only: right Node, installed packages, fresh build.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));
const least = [20, 19];

export const fail = (words) => {
  console.error(`soapwater: ${words}`);
  process.exit(1);
};

export const checkNode = (version = process.versions.node) => {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major < least[0] || (major === least[0] && minor < least[1]))
    fail(`Node ${version} is too old: Node ${least.join('.')} or newer is needed`);
};

const run = (command, args, quiet) => {
  // nothing may read the caller's input or write to its output: `read` pipes both
  const done = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', quiet ? 2 : 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  return done.status === 0;
};

const stampFile = join(root, 'node_modules', '.soapwater-stamp');
const stampNow = () =>
  createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .update(process.versions.modules)
    .update(process.platform)
    .digest('hex');

/** True when node_modules already holds just what the lock file names (after `npm install` by hand), compiled for this Node. */
const present = () => {
  try {
    const packages = (file) => JSON.parse(readFileSync(join(root, file), 'utf8')).packages;
    const there = packages('node_modules/.package-lock.json');
    const wanted = packages('package-lock.json');
    for (const [path, { version, optional }] of Object.entries(wanted))
      if (path !== '' && !optional && there[path]?.version !== version) return false;
    const require = createRequire(join(root, 'package.json'));
    new (require('better-sqlite3'))(':memory:').close();
    return true;
  } catch {
    return false;
  }
};

/** Installs from the lock file when node_modules is missing or stale. */
export const install = ({ quiet = false } = {}) => {
  const stamp = stampNow();
  if (existsSync(stampFile) && readFileSync(stampFile, 'utf8') === stamp) return;
  if (present()) return writeFileSync(stampFile, stamp);
  console.error('soapwater: installing packages (a few minutes the first time)');
  if (!run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], quiet))
    fail('the packages could not be installed (npm ci)');
  writeFileSync(stampFile, stamp);
};

/** Time of the newest change below `folder`, ms since the epoch; a folder's own time tells of removals. */
const newest = (folder) => {
  let at = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    at = Math.max(at, statSync(path).mtimeMs, entry.isDirectory() ? newest(path) : 0);
  }
  return at;
};

const built = {
  page: {
    stamp: 'page.stamp',
    config: 'web/vite.config.ts',
    from: ['web', 'intents', 'server'],
  },
  server: { stamp: 'server.stamp', config: 'server/vite.config.ts', from: ['server', 'intents'] },
};

/** Builds page and server into .build when their sources are newer than what stands there. */
export const build = ({ quiet = false, parts = ['page', 'server'] } = {}) => {
  mkdirSync(join(root, '.build'), { recursive: true });
  for (const part of parts) {
    const { stamp, config, from } = built[part];
    const file = join(root, '.build', stamp);
    const at = Math.max(...from.map((f) => newest(join(root, f))), statSync(join(root, 'package-lock.json')).mtimeMs);
    if (existsSync(file) && readFileSync(file, 'utf8') === String(at)) continue;
    if (
      !run(
        process.execPath,
        [join(root, 'node_modules', 'vite', 'bin', 'vite.js'), 'build', '--config', config, '--logLevel', 'warn'],
        quiet,
      )
    )
      fail(`the ${part} could not be built`);
    writeFileSync(file, String(at));
  }
};
