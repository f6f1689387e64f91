import { defineConfig } from 'vite';

const root = new URL('.', import.meta.url).pathname;

export default defineConfig({
  root,
  base: '/',
  build: { outDir: `${root}../.build/page`, emptyOutDir: true, target: 'es2022', assetsInlineLimit: 0, modulePreload: { polyfill: false } },
});
