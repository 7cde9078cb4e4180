/** Runs the model checker spin on a Promela text (Debian packages `spin` and `gcc`). */

import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

const SPIN = '/usr/bin/spin'
const COMPILERS = ['/usr/bin/gcc', '/usr/bin/cc']

/** What is missing to run spin here, or null. */
export const spinMissing: string | null = !existsSync(SPIN)
  ? 'spin is not installed'
  : COMPILERS.some((compiler) => existsSync(compiler))
    ? null
    : 'no C compiler is installed'

/** What the verifier printed and counted. */
export interface SpinRun {
  /** Distinct lines printed by the model that begin with END. */
  readonly ends: ReadonlySet<string>
  readonly states: number
  readonly errors: number
  /** Seconds the search took by the verifier's own clock. */
  readonly seconds: number
}

/** Compiles the model to a verifier, lets it walk through every state and collects what it printed. */
export function runSpin(model: string): SpinRun {
  const folder = mkdtempSync(join(tmpdir(), 'rehearsal-'))
  try {
    writeFileSync(join(folder, 'model.pml'), model)
    const options = { cwd: folder, encoding: 'utf8', maxBuffer: 1 << 30 } as const
    execFileSync(SPIN, ['-a', 'model.pml'], options)
    const compiler = COMPILERS.find((each) => existsSync(each)) ?? 'cc'
    execFileSync(compiler, ['-O0', '-w', '-DSAFETY', '-DNOREDUCE', '-o', 'pan', 'pan.c'], options)
    execFileSync('/bin/sh', ['-c', './pan -n -w20 -m100000 > out.txt'], options)
    const lines = readFileSync(join(folder, 'out.txt'), 'utf8').split('\n')
    const number = (pattern: RegExp): number =>
      Number(pattern.exec(lines.find((line) => pattern.test(line)) ?? '')?.[1])
    return {
      ends: new Set(lines.filter((line) => line.startsWith('END '))),
      states: number(/^\s*([\d.e+]+) states, stored/),
      errors: number(/errors: (\d+)/),
      seconds: number(/elapsed time ([\d.]+) seconds/),
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
