import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { defineConfig, type Plugin } from 'vite';

const root = new URL('.', import.meta.url).pathname;

/** Line breaks and indents in templates and styles are for who edits them: one break goes to the page. */
const tight: Plugin = {
  name: 'tight-templates',
  apply: 'build',
  transform(code, id) {
    if (!/\/web\/(?:elements|blocks|draw|look|paper)\//.test(id)) return null;
    return { code: code.replace(/\n[ \t]+/g, '\n'), map: null };
  },
};

/** The service worker, with the list of files it keeps and a stamp that changes when any of them does. */
const offline: Plugin = {
  name: 'offline',
  apply: 'build',
  generateBundle(_options, bundle) {
    const built = Object.keys(bundle).filter((f) => !f.endsWith('.map'));
    const files = [...built.map((f) => `/${f}`), '/index.html', '/icon.svg', '/app.webmanifest'];
    const source = readFileSync(`${root}sw.js`, 'utf8');
    const stamp = createHash('sha256').update(built.join('\n')).update(source).digest('hex').slice(0, 12);
    this.emitFile({
      type: 'asset',
      fileName: 'sw.js',
      source: source.replace('= FILES', () => `= ${JSON.stringify([...new Set(files)])}`).replace('${STAMP}', stamp),
    });
  },
};

/** Each script and style beside itself as brotli, which the server hands to browsers that take it (server/packed.ts). */
const packed: Plugin = {
  name: 'packed',
  apply: 'build',
  writeBundle({ dir = '' }, bundle) {
    for (const file of Object.keys(bundle))
      if (/^assets\/.+\.(?:js|css)$/.test(file))
        writeFileSync(`${dir}/${file}.br`, brotliCompressSync(readFileSync(`${dir}/${file}`)));
  },
};

export default defineConfig({
  root,
  base: '/',
  plugins: [tight, offline, packed],
  // whatever NODE_ENV says: a page built inside a test run is the page that ships
  resolve: { conditions: ['module', 'browser', 'production'], alias: { underscore: `${root}underscore-part.ts` } },
  build: {
    outDir: `${root}../.build/page`,
    emptyOutDir: true,
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: false,
  },
});
