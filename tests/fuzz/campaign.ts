/** @module A run of the fuzzer: damages recordings, examines what reading them gives, and keeps what fails. */

import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Coverage } from './coverage.ts'
import { type Draw, drawing, oneOf } from './draw.ts'
import { examine } from './examine.ts'
import { mutate } from './mutate.ts'

/** What a campaign starts from. */
export interface Seed {
  readonly name: string
  readonly bytes: Uint8Array
}

/** How long and how a campaign runs. */
export interface Campaign {
  readonly seeds: readonly Seed[]
  /** The first number; round `n` draws from `first + n`, so that one failing round can be run alone. */
  readonly first: number
  readonly rounds: number
  /** Stops sooner when this says so. */
  readonly stop?: () => boolean
  /** With it, inputs that run new pieces of code are damaged further. */
  readonly coverage?: Coverage
}

/** What it came to. */
export interface Outcome {
  readonly rounds: number
  readonly failures: readonly string[]
  /** Inputs that ran new code. */
  readonly kept: number
}

const FAILED = join(import.meta.dirname, '..', '..', '.cache', 'fuzz')
const MOST_FAILURES = 20

/** One round: which input, made of what, and the size of the chunks. The same for the same numbers and seeds. */
function input(
  seeds: readonly Seed[],
  corpus: readonly Uint8Array[],
  draw: Draw,
): [string, Uint8Array, number] {
  const seed = oneOf(draw, seeds)
  const bytes = corpus.length > 0 && draw(4) > 0 ? oneOf(draw, corpus) : seed.bytes
  const other = oneOf(draw, seeds)
  const size = oneOf(draw, [1, 3, 7, 16, 61, 64, 200, 1000, 4095, 4096, 4097])
  return [`${seed.name} (+ ${other.name})`, mutate(bytes, other.bytes, draw), size]
}

function failureOf(bytes: Uint8Array, size: number): Error | undefined {
  try {
    examine(bytes, size)
    return undefined
  } catch (error) {
    return error as Error
  }
}

/** The place where it failed: what the message says before its details, or the uppermost line of ours. */
function kindOf(error: Error): string {
  if (error.constructor.name === 'Broken') return error.message.split(':')[0] ?? ''
  const place = error.stack?.split('\n').find((line) => line.includes('/packages/'))
  return `${error.name} ${place ?? ''}`
}

/** Cuts away what a failing input does not need to fail the same way; gives up after `tries` readings. */
export function smallest(bytes: Uint8Array, size: number, tries: number = 400): Uint8Array {
  const first = failureOf(bytes, size)
  if (first === undefined) return bytes
  const kind = kindOf(first)
  let best = bytes
  for (let piece = best.length >> 1; piece > 0 && tries > 0; piece >>= 1) {
    for (let at = 0; at < best.length && tries > 0; tries--) {
      const without = new Uint8Array(best.length - Math.min(piece, best.length - at))
      without.set(best.subarray(0, at))
      without.set(best.subarray(at + piece), at)
      const error = failureOf(without, size)
      if (error !== undefined && kindOf(error) === kind) best = without
      else at += piece
    }
  }
  return best
}

/** Runs a campaign. A failing input is made small and written to `.cache/fuzz`; the text names the round. */
export function run(campaign: Campaign): Outcome {
  const { seeds, first, rounds, stop, coverage } = campaign
  const corpus: Uint8Array[] = []
  const failures = new Map<string, string>()
  let round = 0
  for (; round < rounds && failures.size < MOST_FAILURES && stop?.() !== true; round++) {
    const draw = drawing(first + round)
    const [name, bytes, size] = input(seeds, corpus, draw)
    const error = failureOf(bytes, size)
    if (coverage?.isNew() === true && error === undefined) corpus.push(bytes)
    if (error === undefined || failures.has(kindOf(error))) continue
    const file = join(FAILED, `round-${first + round}.bin`)
    mkdirSync(FAILED, { recursive: true })
    writeFileSync(file, smallest(bytes, size))
    failures.set(
      kindOf(error),
      `round ${first + round}, from ${name}, chunks of ${size}, input in ${file}: ${error.stack}`,
    )
  }
  return { rounds: round, failures: [...failures.values()], kept: corpus.length }
}
