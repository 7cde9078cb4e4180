import { spawn } from 'node:child_process'
import { existsSync, readdirSync } from 'node:fs'
import { mkdir, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { StoreError } from '../contract/index.ts'

/** Where Debian keeps the programs of each version, newest first; then wherever the path leads. */
function dumpPrograms(): readonly string[] {
  const debian = '/usr/lib/postgresql'
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : []
  const installed = versions.map((version) => join(debian, version, 'bin', 'pg_dump')).filter(existsSync)
  return [...installed, 'pg_dump']
}

/**
 * Makes a dump with pg_dump before a database with content is migrated. Throws StoreError `dump-needed` when there
 * is no pg_dump that can, which says what to do by hand.
 */
export async function dumpBefore(url: string, file: string): Promise<void> {
  await mkdir(dirname(file), { recursive: true, mode: 0o700 })
  const part = `${file}.part`
  let said = 'pg_dump is not installed here'
  for (const program of dumpPrograms()) {
    const done = await run(program, part, url)
    if (done === null) {
      await rename(part, file)
      return
    }
    said = done
  }
  await rm(part, { force: true })
  throw new StoreError(
    'dump-needed',
    `The tables must be brought up to date, and no dump could be made first (${said}).`,
    'Make a dump with pg_dump and start again with --dump-made. The database was not touched.',
  )
}

/** Runs pg_dump; null when it succeeded, else what it said. The password goes by the environment, which others cannot see. */
function run(program: string, file: string, url: string): Promise<string | null> {
  const { hostname, port, username, password, pathname, searchParams } = new URL(url)
  const host = searchParams.get('host') ?? decodeURIComponent(hostname)
  const env: NodeJS.ProcessEnv = { ...process.env, PGDATABASE: decodeURIComponent(pathname.slice(1)) }
  if (host !== '') env.PGHOST = host
  if (port !== '') env.PGPORT = port
  if (username !== '') env.PGUSER = decodeURIComponent(username)
  if (password !== '') env.PGPASSWORD = decodeURIComponent(password)
  const sslMode = searchParams.get('sslmode')
  if (sslMode !== null) env.PGSSLMODE = sslMode
  return new Promise((resolve) => {
    const child = spawn(program, ['--format=custom', '--no-password', `--file=${file}`], {
      env,
      stdio: ['ignore', 'ignore', 'pipe'],
    })
    let errors = ''
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      errors += text
    })
    child.on('error', () => resolve('pg_dump is not installed here'))
    child.on('close', (code) =>
      resolve(code === 0 ? null : (errors.trim().split('\n')[0] ?? 'pg_dump failed')),
    )
  })
}
