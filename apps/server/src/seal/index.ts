/** @module Sealing as an answer: what the store refuses to seal becomes a problem. */
import { type Sealed, type SealRefusal, type SealWish, type Store, sealJob } from '@shearline/store'
import { Problem } from '../problem/index.ts'

/** Seals a job; throws Problem `unknown-job` or `not-in-line`, the latter with the needs. */
export async function seal(store: Store, job: string, wish: SealWish): Promise<Sealed> {
  const outcome = await sealJob(store, job, wish)
  if (outcome.ok) return outcome.value
  throw refused(job, outcome.refusal)
}

function refused(job: string, { code, what, doNext, needs }: SealRefusal): Problem {
  if (code === 'unknown-job') return unknownJob(job)
  return new Problem(409, code, { what, doNext }, { needs })
}

/** For a job no fact names. */
export function unknownJob(job: string): Problem {
  return new Problem(404, 'unknown-job', {
    what: 'No fact of this job is here.',
    where: job,
    doNext: 'Look whether the device that recorded it has sent its facts.',
  })
}
