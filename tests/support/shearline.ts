import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { join } from 'node:path'

export const root = join(import.meta.dirname, '..', '..')
const bin = join(root, 'apps', 'cli', 'bin', 'shearline.js')

/** Outside recordings, or null where they are absent (the tests that need them then say so). */
export const captures = existsSync(join(root, '..', 'shared', 'captures', 'files'))
  ? join(root, '..', 'shared', 'captures', 'files')
  : null

export interface Ran {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** Runs the real command in a process of its own. */
export function shearline(
  args: readonly string[],
  options: { input?: string | Uint8Array; cwd?: string; env?: Record<string, string> } = {},
): Ran {
  const ran = spawnSync(process.execPath, [bin, ...args], {
    encoding: 'utf8',
    cwd: options.cwd ?? root,
    env: { ...process.env, ...options.env },
    maxBuffer: 1 << 28,
    // A command that hangs would hang the test with it, which cannot be ended meanwhile.
    timeout: 1_200_000,
    killSignal: 'SIGKILL',
    ...(options.input === undefined ? {} : { input: options.input }),
  })
  return { code: ran.status, out: ran.stdout, err: ran.stderr }
}

/** The JSON objects of an output, one a line. */
export function lines<T = Record<string, unknown>>(text: string): T[] {
  return text
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as T)
}
