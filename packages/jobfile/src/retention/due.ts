import { bodyHash } from '../chain/index.ts'
import type { BodyInput, Fact } from '../facts/index.ts'
import { Collected } from '../fold/collect.ts'
import { neutralRetention, type RetentionPack } from '../policy/index.ts'
import type { DeletedItem, Kept, RetentionClass } from './classes.ts'
import { type ClassClock, clocksOf, type Hold } from './clock.ts'

/** Something to delete, or that would be but for a hold. */
export interface Due {
  readonly job: string
  readonly class: RetentionClass
  /** Milliseconds since 1970 UTC since when it is due. */
  readonly until: number
  readonly days: number
  readonly trigger: ClassClock['rule']['trigger']
  readonly source: string
  readonly stalled: boolean
  readonly items: readonly Kept[]
  /**
   * Identifiers of the seals whose documents hold the same content and have to go with it; empty when only blobs go,
   * because a document does not hold them.
   */
  readonly documents: readonly string[]
  /** Holds that stop it; empty when it may be deleted. */
  readonly heldBy: readonly Hold[]
}

/** What is due at `now` (milliseconds since 1970 UTC) in one job, oldest first. Pure. */
export function dueInJob(
  job: string,
  facts: readonly Fact[],
  now: number,
  pack: RetentionPack = neutralRetention,
): readonly Due[] {
  return dueOf(job, new Collected(facts.filter((fact) => fact.job === job)), now, pack)
}

/** As dueInJob, from facts already collected. */
export function dueOf(job: string, read: Collected, now: number, pack: RetentionPack): readonly Due[] {
  const { clocks } = clocksOf(job, read, now, pack)
  const gone = read
    .all('deletion-proven')
    .flatMap(({ body }) => body.items.filter((item) => item.what === 'document').map((item) => item.fact))
  const seals = read
    .all('document-sealed')
    .map(({ id }) => id)
    .filter((id) => !gone.includes(id))
  return clocks
    .flatMap((clock): Due[] => {
      const { kept, until, rule } = clock
      if (until === null || until > now || kept.length === 0) return []
      return [
        {
          job,
          class: clock.class,
          until,
          days: rule.days,
          trigger: rule.trigger,
          source: rule.source,
          stalled: clock.stalled,
          items: kept,
          documents: kept.some((one) => one.as === 'body') ? seals : [],
          heldBy: clock.heldBy,
        },
      ]
    })
    .sort((a, b) => a.until - b.until)
}

/** What was really deleted for one due entry, as whoever deleted it reports it. */
export interface Erased {
  /** Facts whose body was replaced by its hash. */
  readonly bodies: readonly Fact[]
  /** Blobs removed, by the fact that names them. */
  readonly blobs: readonly {
    readonly fact: string
    readonly sha256: string
    readonly keyDestroyed: boolean
  }[]
  /** Documents removed, by their seal. */
  readonly documents: readonly { readonly seal: string; readonly sha256: string }[]
}

/**
 * The body of the `deletion-proven` fact for what was erased; write it after the content is gone, never before.
 * Throws when nothing was erased: a proof of nothing proves nothing.
 */
export function deletionProof(
  due: Pick<Due, 'class'>,
  erased: Erased,
  why: string,
  pack: string,
): BodyInput<'deletion-proven'> {
  const items: DeletedItem[] = [
    ...erased.bodies.map((fact) => ({
      fact: fact.id,
      what: 'body' as const,
      sha256: bodyHash(fact.body),
      keyDestroyed: false,
    })),
    ...erased.blobs.map(({ fact, sha256, keyDestroyed }) => ({
      fact,
      what: 'blob' as const,
      sha256,
      keyDestroyed,
    })),
    ...erased.documents.map(({ seal, sha256 }) => ({
      fact: seal,
      what: 'document' as const,
      sha256,
      keyDestroyed: false,
    })),
  ]
  if (items.length === 0) throw new RangeError('Nothing was erased, so there is no deletion to prove.')
  return { class: due.class, items, why, pack }
}

/** A fact as it stands once its content is gone: signature, links and seals still verify (docs/decisions/0003). */
export function erasedFact(fact: Fact): Fact {
  return { ...fact, body: { erased: bodyHash(fact.body) } }
}
