/** @module Asks the power engine in a worker: a budget takes a fifth of a second on a desktop, more on a phone. */
import type {
  Battery,
  CrankingReserve,
  PowerAnswer,
  PowerInput,
  ReadAt,
  Starter,
  VoltsReading,
  Watch,
} from '@shearline/keywork'

/** What the page asks. */
export type PowerAsk =
  | { readonly what: 'budget'; readonly input: PowerInput }
  | {
      readonly what: 'watch'
      readonly input: PowerInput
      readonly readings: readonly VoltsReading[]
      readonly readAt: ReadAt
    }
  | { readonly what: 'start'; readonly battery: Battery; readonly starter: Starter }

/** What comes back to each. */
export interface PowerTold {
  readonly budget: PowerAnswer
  readonly watch: Watch
  readonly start: CrankingReserve
}

export interface PowerAsked {
  readonly id: number
  readonly ask: PowerAsk
}
export interface PowerReply {
  readonly id: number
  readonly told: PowerTold[keyof PowerTold]
}

let worker: Worker | undefined
let last = 0
const waiting = new Map<number, { resolve: (told: never) => void; reject: (error: Error) => void }>()

/** Computes in the worker that all parts of the page share. Rejects only when the worker cannot run. */
export function askPower<A extends PowerAsk>(ask: A): Promise<PowerTold[A['what']]> {
  worker ??= start()
  last += 1
  const id = last
  const running = worker
  return new Promise((resolve, reject) => {
    waiting.set(id, { resolve, reject })
    running.postMessage({ id, ask } satisfies PowerAsked)
  })
}

function start(): Worker {
  const fresh = new Worker(new URL('./power.worker.ts', import.meta.url), { type: 'module' })
  fresh.addEventListener('message', ({ data }: MessageEvent<PowerReply>) => {
    waiting.get(data.id)?.resolve(data.told as never)
    waiting.delete(data.id)
  })
  fresh.addEventListener('error', (event) => {
    worker = undefined
    for (const { reject } of waiting.values()) reject(new Error(event.message))
    waiting.clear()
  })
  return fresh
}
