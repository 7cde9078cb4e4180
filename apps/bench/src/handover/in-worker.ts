/** @module Asks the worker that makes and proves documents: one worker for each question, gone with its answer. */
import type { SealingAnswer, SealingAsk } from './sealing.worker.ts'

/** The answer of the kind asked for. Rejects with the worker's own words when it could not. */
export function inWorker<A extends SealingAsk>(
  ask: A,
): Promise<Extract<SealingAnswer, { readonly to: A['what'] }>> {
  const worker = new Worker(new URL('./sealing.worker.ts', import.meta.url), { type: 'module' })
  return new Promise<Extract<SealingAnswer, { readonly to: A['what'] }>>((resolve, reject) => {
    worker.addEventListener('message', (event: MessageEvent<SealingAnswer>) => {
      const answer = event.data
      if (answer.to === 'failed') reject(new Error(answer.why))
      else resolve(answer as Extract<SealingAnswer, { readonly to: A['what'] }>)
    })
    worker.addEventListener('error', (event) => reject(new Error(event.message)))
    worker.postMessage(ask)
  }).finally(() => worker.terminate())
}
