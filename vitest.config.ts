import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('./packages/', import.meta.url));

export default defineConfig({
  resolve: {
    // Tests read the sources: `@paperhinge/NAME` its index, `@paperhinge/NAME/FOLDER` that of the folder; geometry
    // and alter list what is public in `src/public/`.
    alias: [
      { find: /^@paperhinge\/(\w+)$/, replacement: `${root}$1/src/index.ts` },
      { find: /^@paperhinge\/(geometry|alter)\/([\w-]+)$/, replacement: `${root}$1/src/public/$2.ts` },
      { find: /^@paperhinge\/(\w+)\/(\w+)$/, replacement: `${root}$1/src/$2/index.ts` },
    ],
  },
  test: {
    setupFiles: ['tests/support/seeded.ts'],
    include: ['tests/**/*.test.ts'],
    testTimeout: 120_000,
    // What a hook draws or builds may be slow on a busy machine; a test never skips for that.
    hookTimeout: 300_000,
    // As long as a busy machine may need for what the page shows at once.
    expect: { poll: { timeout: 10_000 } },
    maxWorkers: 2,
  },
});
