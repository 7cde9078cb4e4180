import { execFileSync, spawnSync } from 'node:child_process'
import { chmodSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { userInfo } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { quickFolder } from './folders.ts'

const debian = '/usr/lib/postgresql'

/** The programs of the newest PostgreSQL on this machine, or null: tests that need one then say so. */
export const postgresPrograms: string | null = (() => {
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : []
  return (
    versions.map((version) => join(debian, version, 'bin')).find((bin) => existsSync(join(bin, 'initdb'))) ??
    null
  )
})()

/** What a test that needs PostgreSQL says when it is skipped. */
export const postgresAbsent =
  'needs PostgreSQL (Debian package postgresql): /usr/lib/postgresql/*/bin/initdb is absent'

/**
 * A real PostgreSQL of its own in a temporary folder, reached by a socket in it. The server refuses to run as root,
 * so then it runs as the user `postgres`, or `nobody` where that one is absent.
 */
export class PostgresServer {
  readonly #folder: string
  readonly #programs: string
  #databases = 0

  constructor(below: string = quickFolder) {
    if (postgresPrograms === null) throw new Error(postgresAbsent)
    this.#programs = postgresPrograms
    this.#folder = mkdtempSync(join(below, 'shearline-pg-'))
    if (this.#user !== null) execFileSync('chown', [this.#user, this.#folder])
    chmodSync(this.#folder, 0o755)
    this.#run('initdb', [
      '-D',
      this.#data,
      '-U',
      'shearline',
      '--auth=trust',
      '--encoding=UTF8',
      '--locale=C.UTF-8',
      '--data-checksums',
      '--no-instructions',
    ])
    this.start()
  }

  start(): void {
    const settings = `-k ${this.#folder} -c listen_addresses='' -c max_connections=200 -c shared_buffers=64MB`
    this.#run('pg_ctl', ['-D', this.#data, '-l', join(this.#folder, 'log'), '-o', settings, '-w', 'start'])
  }

  /** `immediate` ends it as a crash would: nothing is flushed, the next start recovers from the log. */
  stop(mode: 'fast' | 'immediate' = 'fast'): void {
    this.#run('pg_ctl', ['-D', this.#data, '-m', mode, '-w', 'stop'])
  }

  /** The folder of the cluster's files. */
  get data(): string {
    return this.#data
  }

  get #data(): string {
    return join(this.#folder, 'data')
  }

  get #user(): string | null {
    if (userInfo().uid !== 0) return null
    return spawnSync('id', ['postgres']).status === 0 ? 'postgres' : 'nobody'
  }

  /** Makes an empty database and answers with its address. */
  async makeDatabase(): Promise<string> {
    const name = `test_${this.#databases++}`
    const client = new pg.Client({ connectionString: this.url('postgres') })
    await client.connect()
    await client.query(`create database ${name}`)
    await client.end()
    return this.url(name)
  }

  url(database: string): string {
    return `postgres://shearline@localhost/${database}?host=${encodeURIComponent(this.#folder)}`
  }

  /** Stops the server and removes everything of it. */
  remove(): void {
    try {
      this.stop('immediate')
    } finally {
      rmSync(this.#folder, { recursive: true, force: true, maxRetries: 5 })
    }
  }

  #run(program: string, args: readonly string[]): void {
    const command = [join(this.#programs, program), ...args]
    const [first = '', ...rest] =
      this.#user === null ? command : ['runuser', '-u', this.#user, '--', ...command]
    const { status, stderr, stdout } = spawnSync(first, rest, {
      encoding: 'utf8',
      cwd: this.#folder,
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    if (status !== 0) throw new Error(`${program} ended with ${status}: ${stderr}${stdout}`)
  }
}
