import { factHash, treeHeadOfHashes } from '../chain/index.ts'
import { type BodyInput, compareFacts, type Fact } from '../facts/index.ts'
import { foldJob, type Need } from '../fold/index.ts'

/** What a seal is composed from. */
export interface SealBasis {
  readonly job: string
  /** Every fact of the job that is known where it is sealed, in any order. */
  readonly facts: readonly Fact[]
  /** What verifying the chain said; a seal then says that it was broken. */
  readonly chainBroken: boolean
  /** Language of the document (BCP 47); that of the job when left out. */
  readonly language?: string | undefined
}

/** A seal ready to be written, and what it leaves open. */
export interface ComposedSeal {
  readonly body: BodyInput<'document-sealed'>
  /** What else is open; empty when the job is in line but for the seal. */
  readonly needs: readonly Need[]
  /** Instant of the last fact it covers: the seal must come later, also when another device's clock runs ahead. */
  readonly after: string
}

/** Sealing is what these ask for, so they cannot stand against it. */
const answeredBySealing: ReadonlySet<string> = new Set(['not-sealed', 'changed-since-seal'])

/** Composes the `document-sealed` fact over everything known of a job; null when nothing is. */
export function composeSeal({ job, facts, chainBroken, language }: SealBasis): ComposedSeal | null {
  const own = facts.filter((fact) => fact.job === job).sort(compareFacts)
  const last = own.at(-1)
  if (last === undefined) return null
  const state = foldJob(job, own, { chainBroken })
  const needs = state.tumblers
    .flatMap((tumbler) => tumbler.needs)
    .filter((need) => !answeredBySealing.has(need.code))
  return {
    body: {
      count: own.length,
      root: treeHeadOfHashes(own.map(factHash)),
      language: language ?? state.opened?.language ?? 'en',
      ready: needs.length === 0,
      open: [...new Set(needs.map((need) => need.code))],
    },
    needs,
    after: last.at,
  }
}
