import { defineConfig } from 'vitest/config'

/** Tests run the TypeScript sources of our packages, not their built output. */
export default defineConfig({
  ssr: { resolve: { conditions: ['@shearline/source', 'node'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.{ts,tsx}', 'tests/**/*.test.ts'],
    testTimeout: 30_000,
    hookTimeout: 120_000,
    maxWorkers: 2,
  },
})
