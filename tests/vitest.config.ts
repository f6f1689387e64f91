import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    // a process a file: tests that count processor time must not count their neighbours'
    pool: 'forks',
    maxWorkers: 2,
  },
});
