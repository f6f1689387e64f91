// Bundles one of the project's TypeScript tools and runs it: node tests/tools/bundle.mjs tests/tools/examples.ts
import { spawnSync } from 'node:child_process';
import { basename, join } from 'node:path';
import { build as bundle } from 'vite';
import { root } from '../../server/prepare.mjs';

const entry = process.argv[2];
const name = basename(entry, '.ts');
await bundle({
  root,
  configFile: false,
  logLevel: 'warn',
  publicDir: false,
  ssr: { noExternal: true, external: ['better-sqlite3', 'playwright-core'] },
  build: {
    ssr: join(root, entry),
    target: 'node20',
    outDir: join(root, '.build/tools'),
    emptyOutDir: false,
    minify: false,
    rollupOptions: { output: { entryFileNames: `${name}.js`, format: 'es' } },
  },
});
const done = spawnSync(process.execPath, [join(root, '.build/tools', `${name}.js`), ...process.argv.slice(3)], {
  cwd: root,
  stdio: 'inherit',
  env: { ...process.env, SOAPWATER_ROOT: root },
});
process.exit(done.status ?? 1);
