/**
 * @module Damaged recordings of every format: nothing throws, findings have a place, no secret shows.
 *
 * Bounded and the same in every run. `SHEARLINE_FUZZ_SECONDS=600 npx vitest run tests/fuzz/readers.test.ts` runs on
 * from a new place, guided by coverage; see packages/bus/FUZZING.md.
 */

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { captures } from '../support/shearline.ts'
import { run, type Seed } from './campaign.ts'
import { Coverage } from './coverage.ts'
import { examine, readBytes, showsSecret } from './examine.ts'
import { RECORDINGS } from './recordings.ts'

const seconds = Number(process.env.SHEARLINE_FUZZ_SECONDS ?? 0)
const ROUNDS_PER_RECORDING = 60

/** Real recordings beside the project, cut short; none when they are absent. */
function realSeeds(): Seed[] {
  if (captures === null) {
    console.warn('skipped: ../shared/captures is not here, so no real recording is damaged')
    return []
  }
  return readdirSync(captures).map((name) => ({
    name,
    bytes: new Uint8Array(readFileSync(join(captures as string, name)).subarray(0, 6000)),
  }))
}

describe('the sound recordings', () => {
  it.each(RECORDINGS)('$name is recognised, read, and hides its secret', ({ format, bytes }) => {
    const read = examine(bytes, 61)
    expect(read.recognised.format).toBe(format)
    expect(read.summary.messages).toBeGreaterThan(10)
    expect(showsSecret(JSON.stringify(read.messages.map((message) => [...message.payload])))).toBe(false)
  })

  it('hold the secret where raw is asked for, so that hiding it can fail', () => {
    for (const { name, bytes } of RECORDINGS) {
      if (name === 'demo session') continue
      const raw = readBytes(bytes, 61, { raw: true })
      expect([
        name,
        showsSecret(JSON.stringify(raw.messages.map((message) => [...message.payload]))),
      ]).toEqual([name, true])
    }
  })
})

describe('damaged recordings', () => {
  it.each(RECORDINGS)('$name', (recording) => {
    const others = RECORDINGS.filter(({ format }) => format === recording.format)
    const seeds = [recording, recording, ...others]
    const { failures, rounds } = run({ seeds, first: 1000, rounds: ROUNDS_PER_RECORDING })
    expect(failures.join('\n\n')).toBe('')
    expect(rounds).toBe(ROUNDS_PER_RECORDING)
  })

  it.skipIf(captures === null)('real recordings (../shared/captures), cut to 6 kB', () => {
    const { failures } = run({ seeds: realSeeds(), first: 2000, rounds: 200 })
    expect(failures.join('\n\n')).toBe('')
  })
})

describe.skipIf(seconds === 0)('a long run (SHEARLINE_FUZZ_SECONDS)', () => {
  it('finds nothing, guided by coverage', { timeout: seconds * 1000 + 120_000 }, () => {
    const until = Date.now() + seconds * 1000
    const first = Number(process.env.SHEARLINE_FUZZ_SEED ?? (Date.now() >>> 10) * 1_000_000) >>> 0
    const coverage = new Coverage()
    const outcome = run({
      seeds: [...RECORDINGS, ...realSeeds()],
      first,
      rounds: Number.POSITIVE_INFINITY,
      stop: () => Date.now() > until,
      coverage,
    })
    console.log(
      `first ${first}: ${outcome.rounds} rounds, ${outcome.kept} inputs kept, ${coverage.pieces} pieces of code`,
    )
    coverage.stop()
    expect(outcome.failures.join('\n\n')).toBe('')
  })
})
