import { defineConfig } from 'vitest/config';

/** Three kinds of test: pure ones, those that need PostgreSQL, and those that need a browser too. */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'indexer',
          include: ['tests/indexer/**/*.test.ts', 'tests/imports.test.ts'],
          // Some go through thousands of documents or sizes, on whatever machine.
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'api',
          include: ['tests/api/**/*.test.ts', 'tests/*.test.ts'],
          exclude: ['tests/imports.test.ts'],
          globalSetup: ['tests/support/build.ts', 'tests/support/postgres.ts'],
          testTimeout: 30_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'web',
          include: ['tests/web/**/*.test.ts'],
          globalSetup: ['tests/support/build.ts', 'tests/support/postgres.ts'],
          testTimeout: 60_000,
          hookTimeout: 90_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
