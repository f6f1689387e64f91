import { defineConfig } from 'vite';

const root = new URL('..', import.meta.url).pathname;
// the server, the thread of its log, the reader of the command line, backup and its kin
const entries = ['main', 'log/thread', 'read', 'backup'];

export default defineConfig({
  root,
  publicDir: false,
  ssr: { noExternal: true, external: ['better-sqlite3'] },
  build: {
    ssr: true,
    target: 'node20',
    outDir: `${root}.build/server`,
    emptyOutDir: true,
    minify: false,
    rollupOptions: {
      input: Object.fromEntries(entries.map((name) => [name.replace('/', '-'), `${root}server/${name}.ts`])),
      output: { entryFileNames: '[name].js', format: 'es' },
    },
  },
});
