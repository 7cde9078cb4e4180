/** @module Jobs folded for the board and the job page. */
import { type Device, foldJob, type JobState, type JobSummary, summarise } from '@shearline/jobfile'
import { chainBroken, type Store } from '@shearline/store'

interface Known {
  readonly mark: string
  readonly summary: JobSummary | null
}

/**
 * Folds jobs on demand. What the board shows is remembered by the job's mark, which changes exactly when a fact
 * of the job arrives (store SPEC.md, STO-14), so a remembered summary is never stale.
 */
export class Board {
  readonly #store: Store
  readonly #known = new Map<string, Known>()

  constructor(store: Store) {
    this.#store = store
  }

  /** Every opened job, latest instant first. */
  async summaries(): Promise<readonly JobSummary[]> {
    const summaries: JobSummary[] = []
    for (const { job, mark } of await this.#store.jobs()) {
      let known = this.#known.get(job)
      if (known?.mark !== mark) {
        // Facts were verified when they came in; the job page verifies them again.
        known = { mark, summary: summarise(foldJob(job, await this.#store.factsOfJob(job))) }
        this.#known.set(job, known)
      }
      if (known.summary !== null) summaries.push(known.summary)
    }
    return summaries
  }

  /** A job with its chain verified as it stands on the disk now; null when no fact names it. */
  async state(job: string): Promise<JobState | null> {
    const mark = (await this.#store.jobEntry(job))?.mark
    const facts = await this.#store.factsOfJob(job)
    if (mark === undefined || facts.length === 0) return null
    const state = foldJob(job, facts, { chainBroken: await chainBroken(this.#store, facts) })
    this.#known.set(job, { mark, summary: summarise(state) })
    return state
  }
}

/** A device without what only this store knows of it. */
export function describe({ device, name, publicKey }: Device): Device {
  return { device, name, publicKey }
}
