import { spawnSync } from 'node:child_process'
import { defineConfig } from 'vitest/config'

/**
 * The seed of properties (docs/decisions/0023): the commit's, or what `SHEARLINE_PROPERTY_SEED` says; 0 where there is
 * no repository.
 */
function propertySeed(): number {
  const said = process.env.SHEARLINE_PROPERTY_SEED
  if (said !== undefined) return Number.parseInt(said, 10) | 0
  const commit = spawnSync('git', ['rev-parse', 'HEAD'], { cwd: import.meta.dirname, encoding: 'utf8' })
  return commit.status === 0 ? Number.parseInt(commit.stdout.slice(0, 8), 16) | 0 : 0
}

/** Tests run the TypeScript sources of our packages, not their built output. */
export default defineConfig({
  ssr: { resolve: { conditions: ['@shearline/source', 'node'] } },
  test: {
    include: ['packages/*/src/**/*.test.ts', 'apps/*/src/**/*.test.{ts,tsx}', 'tests/**/*.test.ts'],
    setupFiles: ['tests/support/property-seed.ts'],
    provide: { propertySeed: propertySeed() },
    // How fast things are is measured by the benches; a test only ends what hangs, on a slow and busy machine too.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    expect: { poll: { timeout: 60_000 } },
    maxWorkers: 2,
  },
})
