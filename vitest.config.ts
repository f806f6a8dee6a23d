import { defineConfig } from 'vitest/config'

/** Fixes the seed of property tests and fails a test that writes to the console. */
const everywhere = './test/setup/everywhere.ts'

export default defineConfig({
  test: {
    passWithNoTests: false,
    projects: [
      {
        test: {
          name: 'pure',
          include: ['test/{core,figure}/**/*.test.ts'],
          setupFiles: [everywhere, './test/setup/pure.ts'],
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: 'outside',
          include: ['test/**/*.test.ts'],
          exclude: ['test/{core,figure,store}/**'],
          setupFiles: [everywhere],
          testTimeout: 30_000,
          // A busy machine takes its time; what is waited for comes all the same.
          expect: { poll: { timeout: 10_000 } },
        },
      },
      {
        test: {
          name: 'store',
          include: ['test/store/**/*.test.ts'],
          setupFiles: [everywhere],
          globalSetup: ['./test/setup/postgres.ts'],
          testTimeout: 60_000,
        },
      },
    ],
  },
})
