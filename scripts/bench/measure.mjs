/** @module Runs a program as a whole process and takes its time, its processor time and the most memory it held. */

import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** The file of a program on the search path, or `undefined` when it is not installed. */
export function installed(program) {
  const found = spawnSync('bash', ['-c', 'command -v "$1"', 'bash', program], { encoding: 'utf8' })
  return found.status === 0 ? found.stdout.trim() : undefined
}

/**
 * Runs a command. Times in seconds: on the wall, and of the processor (user and system together), by bash's `time`;
 * memory in kilobytes, by GNU time where it is installed.
 */
export function run(command, args, options = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'))
  const memory = join(folder, 'memory')
  const times = join(folder, 'times')
  try {
    const whole = [command, ...args]
    const watched = installed('/usr/bin/time') ? ['/usr/bin/time', '-f', '%M', '-o', memory, ...whole] : whole
    const output = options.keep === true ? 'pipe' : 'ignore'
    const script = `TIMEFORMAT='%3R %3U %3S'; exec 3>&2; { time "$@" 2>&3; } 2>${times}`
    const done = spawnSync('bash', ['-c', script, 'bash', ...watched], {
      stdio: ['ignore', output, 'pipe'],
      encoding: 'utf8',
      maxBuffer: 1 << 28,
    })
    if (done.status !== 0)
      throw new Error(`${whole.join(' ')} ended with ${done.status}: ${done.stderr.slice(-500)}`)
    const [wall, user, system] = readFileSync(times, 'utf8').trim().split(/\s+/).map(Number)
    const kilobytes =
      watched === whole ? undefined : Number(readFileSync(memory, 'utf8').trim().split('\n').at(-1))
    return { wall, processor: user + system, kilobytes, output: done.stdout ?? '' }
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** The middle one of some numbers. */
export function median(numbers) {
  const sorted = [...numbers].sort((a, b) => a - b)
  const half = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2
}

/** Runs two things in turn, `rounds` times, so that both see the same machine: their runs, and the medians. */
export function paired(rounds, first, second) {
  const runs = Array.from({ length: rounds }, () => ({ first: first(), second: second() }))
  const of = (pick) => median(runs.map(pick))
  return {
    first: { wall: of((r) => r.first.wall), processor: of((r) => r.first.processor) },
    second: {
      wall: of((r) => r.second.wall),
      processor: of((r) => r.second.processor),
      kilobytes: Math.max(...runs.map((r) => r.second.kilobytes ?? 0)),
    },
    /** How many times as long the first took as the second. */
    wallRatio: of((r) => r.first.wall / r.second.wall),
    processorRatio: of((r) => r.first.processor / r.second.processor),
  }
}
