/** @module Proves records in a worker of its own; without one the page proves them itself. */
import type { Device, Fact } from '@shearline/jobfile'
import type { ProofAsked } from './proof.ts'

/** True when the record of a job is damaged. A worker that cannot start or breaks leaves no record unproven. */
export async function proveDamaged(facts: readonly Fact[], devices: readonly Device[]): Promise<boolean> {
  const worker = new Worker(new URL('./proof.worker.ts', import.meta.url), { type: 'module' })
  const damaged = await new Promise<boolean | null>((resolve) => {
    worker.addEventListener('message', ({ data }: MessageEvent<boolean>) => resolve(data))
    worker.addEventListener('error', () => resolve(null))
    worker.postMessage({ facts, devices } satisfies ProofAsked)
  })
  worker.terminate()
  if (damaged !== null) return damaged
  const { isDamaged } = await import('./proof.ts')
  return isDamaged(facts, devices)
}
