// Makes a clean clone ready: installs the locked packages, builds what is stale and, for tests, brings the
// Debian programs that tests compare with. Runs on the host's own Node (20.19 or later), so it uses nothing
// but Node's own modules.
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = join(dirname(fileURLToPath(import.meta.url)), '..')
const started = Date.now()

/** @param {string} text */
function say(text) {
  console.log(`[${((Date.now() - started) / 1000).toFixed(0).padStart(3)} s] ${text}`)
}

/**
 * @param {string} command
 * @param {string[]} args
 * @param {import('node:child_process').SpawnSyncOptions} [options]
 */
function run(command, args, options = {}) {
  return (
    spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32', ...options })
      .status ?? 1
  )
}

/** @param {string} what @param {number} status */
function orStop(what, status) {
  if (status === 0) return
  console.error(
    `Could not ${what} (exit ${status}). Read the lines above, mend the cause and run the command again.`,
  )
  process.exit(status)
}

function checkHost() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return
  console.error(
    `Shearline needs Node 20.19 or later to set itself up; this is ${process.versions.node}. Install a newer Node and run the command again.`,
  )
  process.exit(2)
}

function installPackages() {
  const lock = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex')
  const stamp = join(root, 'node_modules', '.shearline-lock')
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === lock) return
  say('Installing the locked packages (npm ci) ...')
  orStop('install the npm packages', run('npm', ['ci', '--no-audit', '--no-fund']))
  writeFileSync(stamp, lock)
}

/** Node 24 as the lockfile brings it, else the host's own. */
function node() {
  const locked = join(root, 'node_modules', '.bin', process.platform === 'win32' ? 'node.cmd' : 'node')
  return existsSync(locked) ? locked : process.execPath
}

/** Hash of names, sizes and times of everything the build reads. */
function sourceState() {
  const hash = createHash('sha256')
  /** @param {string} folder */
  const walk = (folder) => {
    for (const entry of readdirSync(folder, { withFileTypes: true }).sort((a, b) =>
      a.name < b.name ? -1 : 1,
    )) {
      if (entry.name === 'node_modules' || entry.name === 'dist') continue
      const path = join(folder, entry.name)
      if (entry.isDirectory()) walk(path)
      else {
        const { size, mtimeMs } = statSync(path)
        hash.update(`${path}\n${size}\n${mtimeMs}\n`)
      }
    }
  }
  for (const folder of ['packages', 'apps']) walk(join(root, folder))
  for (const file of ['package-lock.json', 'tsconfig.base.json', 'tsconfig.json'])
    hash.update(readFileSync(join(root, file)))
  return hash.digest('hex')
}

function build() {
  const stamp = join(root, '.cache', 'built')
  const state = sourceState()
  const whole =
    existsSync(join(root, 'apps', 'bench', 'dist', 'index.html')) &&
    existsSync(join(root, 'apps', 'cli', 'dist', 'index.js')) &&
    existsSync(join(root, 'apps', 'verify-page', 'dist', 'verify.html'))
  if (whole && existsSync(stamp) && readFileSync(stamp, 'utf8') === state) return
  say('Building the packages (tsc -b) ...')
  orStop(
    'build the packages',
    run(node(), [join('node_modules', 'typescript', 'bin', 'tsc'), '-b', ...builtProjects()]),
  )
  say('Bundling the decode command (rolldown) ...')
  orStop('bundle the decode command', run(node(), [join('scripts', 'bundle-decode.mjs')]))
  say('Building the verify page (rolldown) ...')
  orStop('build the verify page', run(node(), [join('scripts', 'build-verify-page.mjs')]))
  say('Building the bench (vite build) ...')
  orStop(
    'build the bench',
    run(node(), [join('..', '..', 'node_modules', 'vite', 'bin', 'vite.js'), 'build', '--logLevel', 'warn'], {
      cwd: join(root, 'apps', 'bench'),
    }),
  )
  mkdirSync(dirname(stamp), { recursive: true })
  writeFileSync(stamp, state)
}

/** Everything but the tests, which `npm test` checks by itself. */
function builtProjects() {
  /** @type {{ references: { path: string }[] }} */
  const { references } = JSON.parse(readFileSync(join(root, 'tsconfig.json'), 'utf8'))
  return references.map((reference) => reference.path).filter((path) => !path.includes('tests'))
}

/** Programs the tests compare with: command or file that shows it is there, the Debian package that brings it, and what misses without it. */
const programs = [
  { there: () => onPath('chromium'), debian: 'chromium', for: 'the end-to-end tests in a real browser' },
  {
    there: () => onPath('tshark'),
    debian: 'tshark',
    for: 'comparing decoded messages with an outside reader',
  },
  {
    there: () => onPath('candump'),
    debian: 'can-utils',
    for: 'comparing recordings with the SocketCAN tools',
  },
  {
    there: () => existsSync('/usr/lib/postgresql'),
    debian: 'postgresql',
    for: 'running the store on a real PostgreSQL',
  },
  { there: () => onPath('qpdf'), debian: 'qpdf', for: 'checking the handover PDF from outside' },
  { there: () => onPath('pdfdetach'), debian: 'poppler-utils', for: 'reading the handover PDF from outside' },
  {
    there: () => existsSync('/usr/lib/python3/dist-packages/scapy'),
    debian: 'python3-scapy',
    for: 'comparing messages with a second outside reader',
  },
  {
    there: () => existsSync('/usr/lib/python3/dist-packages/can'),
    debian: 'python3-can',
    for: 'comparing frames with a third outside reader',
  },
  {
    there: () => onPath('rtl_433'),
    debian: 'rtl-433',
    for: 'comparing radio measurements with an outside reader',
  },
  {
    there: () => onPath('xmllint'),
    debian: 'libxml2-utils',
    for: 'holding electronic invoices against their XML schema',
  },
  {
    there: () => onPath('age'),
    debian: 'age',
    for: 'opening sealed files with an outside program, and sealing for ours',
  },
  { there: () => onPath('spin'), debian: 'spin', for: 'checking the rehearsal model from outside' },
]

/** @param {string} command */
function onPath(command) {
  return (process.env.PATH ?? '').split(':').some((folder) => existsSync(join(folder, command)))
}

function bringPrograms() {
  const missing = programs.filter((program) => !program.there())
  if (missing.length === 0) return
  if (process.platform === 'linux' && onPath('apt-get')) {
    const sudo = process.getuid?.() === 0 ? [] : ['sudo', '-n']
    const [first = 'apt-get', ...rest] = [...sudo, 'apt-get']
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
    say(`Installing from Debian: ${missing.map((program) => program.debian).join(', ')} ...`)
    run(first, [...rest, 'update', '-qq'], { env })
    const all = run(
      first,
      [
        ...rest,
        'install',
        '-y',
        '-qq',
        '--no-install-recommends',
        ...missing.map((program) => program.debian),
      ],
      { env, stdio: ['ignore', 'ignore', 'inherit'] },
    )
    // One package that cannot be had must not cost the others.
    if (all !== 0)
      for (const program of missing)
        run(first, [...rest, 'install', '-y', '-qq', '--no-install-recommends', program.debian], {
          env,
          stdio: ['ignore', 'ignore', 'inherit'],
        })
  }
  for (const program of programs) {
    if (!program.there())
      say(`NOT THERE: ${program.debian}. Tests that need it are skipped and say so: ${program.for}.`)
  }
}

checkHost()
installPackages()
build()
if (process.argv.includes('--for-tests')) bringPrograms()
