import { defineConfig } from 'vitest/config'

/** Tests run the TypeScript sources of our packages, not their built output. */
export default defineConfig({
  ssr: { resolve: { conditions: ['@shearline/source', 'node'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.{ts,tsx}', 'tests/**/*.test.ts'],
    // How fast things are is measured by the benches; a test only ends what hangs, on a slow and busy machine too.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    expect: { poll: { timeout: 60_000 } },
    maxWorkers: 2,
  },
})
