/** @module Jobs folded for the board and the job page. */
import { webcrypto } from 'node:crypto'
import {
  type Device,
  type Fact,
  foldJob,
  type JobState,
  type JobSummary,
  summarise,
  Verifier,
  verifyFacts,
} from '@shearline/jobfile'
import type { Store } from '@shearline/store'

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
  readonly #verifier = new Verifier(webcrypto.subtle)
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
    const state = foldJob(job, facts, { chainBroken: await this.chainBroken(facts) })
    this.#known.set(job, { mark, summary: summarise(state) })
    return state
  }

  /** True when a signature or a link of these facts does not hold. */
  async chainBroken(facts: readonly Fact[]): Promise<boolean> {
    const check = await verifyFacts(facts, await this.writersOf(facts), this.#verifier)
    return check.findings.some((finding) => finding.severity === 'error')
  }

  /** The devices that wrote these facts, with their keys. */
  async writersOf(facts: readonly Fact[]): Promise<readonly Device[]> {
    const writers = new Set(facts.map((fact) => fact.device))
    const devices = await this.#store.devices()
    return devices.filter(({ device }) => writers.has(device)).map(describe)
  }
}

/** A device without what only this store knows of it. */
export function describe({ device, name, publicKey }: Device): Device {
  return { device, name, publicKey }
}
