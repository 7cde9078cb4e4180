import { type Fact, isKnownKind, type Kind } from '../facts/index.ts'
import { Collected } from '../fold/collect.ts'
import { neutralRetention, type RetentionPack, type RetentionRule } from '../policy/index.ts'
import { instantMilliseconds } from '../words/instants.ts'
import { type Kept, keptBy, type RetentionClass } from './classes.ts'

const dayMilliseconds = 86_400_000

/** A hold that stands: nothing of these classes is deleted; all classes when the list is empty. */
export interface Hold {
  /** Identifier of the `hold-placed` fact. */
  readonly fact: string
  readonly at: string
  readonly by: string
  readonly reason: string
  readonly classes: readonly RetentionClass[]
}

/** A deletion on record. */
export interface Deletion {
  readonly at: string
  readonly by: string
  readonly class: RetentionClass
  readonly why: string
  readonly items: number
  /** True when every blob of it was encrypted and its key is destroyed. */
  readonly keysDestroyed: boolean
}

/** One class of a job: what is kept, by which rule, since when the clock runs and when it is over. */
export interface ClassClock {
  readonly class: RetentionClass
  readonly rule: RetentionRule
  /** True when the job itself says so (`retention-set`), false when the firm's pack fills the gap. */
  readonly setInJob: boolean
  /** Milliseconds since 1970 UTC at which the clock started; null while its trigger has not come. */
  readonly startedAt: number | null
  /** True when the trigger never came and the clock was started from the job's last fact. */
  readonly stalled: boolean
  /** Milliseconds since 1970 UTC at which the class is due; null while the clock does not run. */
  readonly until: number | null
  readonly kept: readonly Kept[]
  /** Kept things already deleted. */
  readonly deleted: number
  readonly heldBy: readonly Hold[]
}

/** How the deletion clocks of one job stand. */
export interface JobClocks {
  readonly job: string
  readonly pack: string
  readonly clocks: readonly ClassClock[]
  readonly holds: readonly Hold[]
  readonly deletions: readonly Deletion[]
}

/**
 * The deletion clocks of a job. `now` is milliseconds since 1970 UTC; it only decides whether a clock whose trigger
 * never came has stalled. Classes that the job does not set follow `pack`. Pure.
 */
export function retentionClocks(
  job: string,
  facts: readonly Fact[],
  now: number,
  pack: RetentionPack = neutralRetention,
): JobClocks {
  return clocksOf(job, new Collected(facts.filter((fact) => fact.job === job)), now, pack)
}

/** As retentionClocks, from facts already collected. */
export function clocksOf(job: string, read: Collected, now: number, pack: RetentionPack): JobClocks {
  const set = read.last('retention-set')?.body ?? null
  const holds = standingHolds(read)
  const gone = deletedThings(read)
  const kept = keptThings(read)
  const starts = triggers(read)
  const lastAt = instantMilliseconds(read.ordered.at(-1)?.at ?? '')
  const stallsAt = lastAt === null ? null : lastAt + pack.stalledAfterDays * dayMilliseconds
  const clocks = pack.rules.map((fromPack): ClassClock => {
    const own = set?.classes.findLast((one) => one.class === fromPack.class)
    const rule = own ?? fromPack
    const ofClass = kept.filter((one) => one.class === rule.class)
    const triggered = starts(rule, ofClass)
    const stalled = triggered === null && stallsAt !== null && now >= stallsAt
    const startedAt = triggered ?? (stalled ? stallsAt : null)
    const left = ofClass.filter((one) => !gone.has(keyOf(one.fact, one.as)))
    return {
      class: rule.class,
      rule,
      setInJob: own !== undefined,
      startedAt,
      stalled,
      until: startedAt === null ? null : startedAt + rule.days * dayMilliseconds,
      kept: left,
      deleted: ofClass.length - left.length,
      heldBy: holds.filter((hold) => hold.classes.length === 0 || hold.classes.includes(rule.class)),
    }
  })
  return { job, pack: set?.pack ?? pack.name, clocks, holds, deletions: provenDeletions(read) }
}

/** Every deletion on record, oldest first. */
export function provenDeletions(read: Collected): readonly Deletion[] {
  return read.all('deletion-proven').map(({ at, by, body }) => ({
    at,
    by,
    class: body.class,
    why: body.why,
    items: body.items.length,
    keysDestroyed: body.items.every((item) => item.what === 'body' || item.keyDestroyed),
  }))
}

function keptThings(read: Collected): readonly Kept[] {
  const kindOf = new Map<string, Kind>()
  for (const fact of read.ordered) if (isKnownKind(fact.kind)) kindOf.set(fact.id, fact.kind)
  // Withdrawn or replaced facts still hold their content: they count here as written.
  return read.ordered.flatMap((fact) => (isKnownKind(fact.kind) ? keptBy(fact, fact.kind, kindOf) : []))
}

function keyOf(fact: string, what: string): string {
  return `${what} ${fact}`
}

function deletedThings(read: Collected): ReadonlySet<string> {
  const gone = new Set<string>()
  for (const { body } of read.all('deletion-proven'))
    for (const item of body.items) gone.add(keyOf(item.fact, item.what))
  for (const fact of read.ordered) if (fact.body.erased !== undefined) gone.add(keyOf(fact.id, 'body'))
  return gone
}

/** Holds that were placed and not lifted. */
export function standingHolds(read: Collected): readonly Hold[] {
  const lifted = new Set(read.all('hold-lifted').map(({ body }) => body.hold))
  return read
    .all('hold-placed')
    .filter(({ id }) => !lifted.has(id))
    .map(({ id, at, by, body }) => ({
      fact: id,
      at,
      by,
      reason: body.reason,
      classes: body.classes,
    }))
}

/** When each trigger came, in milliseconds since 1970 UTC; null when it has not. */
function triggers(read: Collected): (rule: RetentionRule, kept: readonly Kept[]) => number | null {
  const at = (one: { readonly at: string } | null | undefined) =>
    one == null ? null : instantMilliseconds(one.at)
  const sealed = at(read.last('document-sealed'))
  const handedOver = at(read.last('vehicle-handed-over')) ?? sealed
  const months = read.last('warranty-given')?.body.months ?? 0
  const ended = read.all('purpose-ended')
  return (rule, kept) => {
    // A purpose that has ended starts the clock early, whatever else the rule waits for.
    const purpose = at(ended.find(({ body }) => body.class === rule.class))
    const usual = {
      sealed,
      'handed-over': handedOver,
      'warranty-ended': handedOver === null ? null : addMonths(handedOver, months),
      'purpose-ended': null,
      recorded: at(read.ordered.findLast((fact) => kept.some((one) => one.fact === fact.id))),
    }[rule.trigger]
    if (purpose === null) return usual
    return usual === null ? purpose : Math.min(usual, purpose)
  }
}

/** Whole months as 30.436875 days each (the Gregorian mean), rounded up to a day: a clock, not a calendar. */
function addMonths(from: number, months: number): number {
  return from + Math.ceil(months * 30.436875) * dayMilliseconds
}
