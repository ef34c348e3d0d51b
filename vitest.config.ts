import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const source = (name: string) => fileURLToPath(new URL(`./packages/${name}/src/index.ts`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: {
      '@paperhinge/geometry': source('geometry'),
      '@paperhinge/alter': source('alter'),
      '@paperhinge/print': source('print'),
      '@paperhinge/sheet': source('sheet'),
    },
  },
  test: {
    setupFiles: ['tests/support/seeded.ts'],
    include: ['tests/**/*.test.ts'],
    testTimeout: 60_000,
    maxWorkers: 2,
  },
});
