/** @module A job is the pure fold of its facts. */
import { cautionsWanted } from '../cautions/index.ts'
import { contradictions } from '../chain/clock.ts'
import type { Fact } from '../facts/index.ts'
import { nextStep } from '../next/index.ts'
import { neutralRetention, policyStanding, type RetentionPack } from '../policy/index.ts'
import { type Known, standTumblers } from '../tumblers/index.ts'
import { foldAgreed } from './agreed.ts'
import { factsSinceSeal } from './closing.ts'
import { Collected } from './collect.ts'
import { foldCustody } from './custody.ts'
import { foldScans, foldSupply, foldVins } from './evidence.ts'
import { foldKeys } from './keys.ts'
import type { JobState, JobSummary } from './state.ts'
import { foldTeaching } from './teaching.ts'

export * from './state.ts'
export { rewritesList } from './teaching.ts'

export interface FoldOptions {
  /** From verifying the chain, which needs keys and is not part of the fold. */
  readonly chainBroken?: boolean
  /** The present instant, milliseconds since 1970 UTC: with it the state says what is due for deletion. */
  readonly now?: number
  /** The firm's retention pack; the neutral default when left out. */
  readonly retentionPack?: RetentionPack
}

/**
 * Folds the facts of one job, in any order, into its state. The same facts and options always give the same state.
 * What it returns shares bodies with the facts: treat both as read-only.
 */
export function foldJob(job: string, facts: readonly Fact[], options: FoldOptions = {}): JobState {
  const own = factsOf(job, facts)
  const collected = new Collected(own)
  const teaching = foldTeaching(collected)
  const { keys, grid, tally, absentKeys, retest } = foldKeys(collected, teaching.taught)
  const { vins, vin } = foldVins(collected)
  const supply = foldSupply(collected)
  const { scans, faults } = foldScans(collected, supply)
  const opened = collected.last('job-opened')
  const seal = collected.last('document-sealed')
  const counts = collected.all('key-count-read').map((entry) => entry.body.when)
  const closedWithCount = collected.last('session-closed')?.body.carCount !== undefined
  const agreed = foldAgreed(collected)
  const policy = policyStanding(agreed.policyAnswers)
  const known: Known = {
    job,
    opened: opened?.body ?? null,
    openedAt: collected.all('job-opened')[0]?.at ?? null,
    lastAt: collected.ordered.at(-1)?.at ?? null,
    factCount: own.length,
    ...agreed,
    policy,
    authority: {
      seen: collected.all('authority-seen').map((entry) => entry.body),
      decision: collected.last('authority-decided')?.body ?? null,
      consents: collected.all('consent-given').map((entry) => entry.body),
    },
    vins,
    vin,
    blanks: collected.all('blank-chosen').map((entry) => entry.body),
    absentKeys,
    keys,
    tally,
    grid,
    countRead: { before: counts.includes('before'), after: counts.includes('after') || closedWithCount },
    supply,
    teaching,
    retest,
    scans,
    faults,
    acknowledged: collected.all('fault-acknowledged').map((entry) => entry.body),
    recordings: collected.all('recording-attached').map((entry) => ({ ...entry.body, at: entry.at })),
    cautionsRead: [...new Set(collected.all('caution-read').map((entry) => entry.body.caution))],
    cautionsWanted: cautionsWanted({ keys, faults, policy }),
    price: collected.last('price-agreed')?.body ?? null,
    invoice: collected.last('invoice-issued')?.body ?? null,
    warranty: collected.last('warranty-given')?.body ?? null,
    retention: collected.last('retention-set')?.body ?? null,
    custody: foldCustody(job, collected, options.now ?? null, options.retentionPack ?? neutralRetention),
    clocks: contradictions(collected.ordered),
    notes: collected.all('note-written').map(({ at, by, body }) => ({ at, by, text: body.text })),
    seal: seal === null ? null : { ...seal.body, at: seal.at, by: seal.by },
    factsSinceSeal: seal === null ? 0 : factsSinceSeal(collected, { id: seal.id, count: seal.body.count }),
    chainBroken: options.chainBroken ?? false,
    corrections: collected.corrections,
    unknown: collected.unknown,
    unreadable: collected.unreadable,
  }
  const explained = new Set(collected.all('difference-explained').map((entry) => entry.body.code))
  const tumblers = standTumblers(known, explained)
  return {
    ...known,
    tumblers,
    inLine: tumblers.every((tumbler) => tumbler.state === 'in-line'),
    next: nextStep(tumblers, {
      handedOver: known.handedOver !== null,
      blankOpen: known.blanks.length > 0 && collected.last('blank-used') === null,
    }),
  }
}

/** The facts of one job; the given list itself when it holds no others, as a store hands it over. */
function factsOf(job: string, facts: readonly Fact[]): readonly Fact[] {
  for (const fact of facts) if (fact.job !== job) return facts.filter((one) => one.job === job)
  return facts
}

/** What the board shows of a job; null before the job was opened. */
export function summarise(state: JobState): JobSummary | null {
  const { opened, openedAt, lastAt } = state
  if (opened === null || openedAt === null || lastAt === null) return null
  return {
    job: state.job,
    title: opened.title,
    place: opened.place,
    zone: opened.zone,
    demo: opened.demo,
    vehicle: opened.vehicle,
    vinTail: state.vin?.slice(-6) ?? '',
    openedAt,
    lastAt,
    tumblers: state.tumblers.map(({ name, state: standing, done, of }) => ({
      name,
      state: standing,
      done,
      of,
    })),
    inLine: state.inLine,
    next: state.next,
  }
}
