// npm run measure [-- what ...]: bundles tests/measure and runs it. Ratios in one run; absolute times only as guidance.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { build, checkNode, install, root } from '../server/prepare.mjs';

checkNode();
install();
build();
const { build: bundle } = await import('vite');
await bundle({
  root,
  configFile: false,
  logLevel: 'warn',
  publicDir: false,
  ssr: { noExternal: true, external: ['better-sqlite3'] },
  build: {
    ssr: join(root, 'tests/measure/index.ts'),
    target: 'node20',
    outDir: join(root, '.build/measure'),
    emptyOutDir: true,
    minify: false,
    rollupOptions: {
      external: [/^@microsoft\/recognizers/, 'compromise', 'playwright-core'],
      output: { entryFileNames: 'index.js', format: 'es' },
    },
  },
});
const done = spawnSync(
  process.execPath,
  ['--expose-gc', join(root, '.build/measure/index.js'), ...process.argv.slice(2)],
  { cwd: root, stdio: 'inherit', env: { ...process.env, SOAPWATER_ROOT: root } },
);
process.exit(done.status ?? 1);
