// All checks of the project, in the order in which a mistake is cheapest to find; closes with the runner's summary.
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
mkdirSync(join(root, '.cache'), { recursive: true })
const report = join(root, '.cache', 'vitest.json')
const filters = process.argv.slice(2)

/** @type {{ name: string, args: string[] }[]} */
const steps = [
  {
    name: 'format, lint and layers (biome)',
    args: ['node_modules/@biomejs/biome/bin/biome', 'ci', '--colors=off', '--max-diagnostics=50', '.'],
  },
  { name: 'types (tsc)', args: ['node_modules/typescript/bin/tsc', '-b'] },
  { name: 'dead code (knip)', args: ['node_modules/knip/bin/knip.js', '--no-progress'] },
  {
    name: 'tests (vitest)',
    args: [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${report}`,
      ...filters,
    ],
  },
]

if (!existsSync(join(root, '..', 'shared', 'captures'))) {
  console.log(
    '../shared is absent: tests that compare with its recordings and tables are skipped and say so.',
  )
}
const failed = []
for (const step of filters.length > 0 ? steps.slice(-1) : steps) {
  console.log(`\n== ${step.name}`)
  const { status } = spawnSync(process.execPath, step.args, { cwd: root, stdio: 'inherit' })
  if (status !== 0) failed.push(step.name)
}

/** @type {{ numPassedTests: number, numFailedTests: number, numPendingTests: number } | null} */
const counts = existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : null
if (failed.length > 0) console.log(`\nFailed: ${failed.join(', ')}`)
if (counts !== null) {
  console.log(
    `\nTests: ${counts.numPassedTests} passed, ${counts.numFailedTests} failed, ${counts.numPendingTests} skipped`,
  )
}
process.exit(failed.length > 0 || counts === null ? 1 : 0)
