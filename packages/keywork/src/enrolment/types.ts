/** A parameter that nobody on the job knows. The answer then holds for the worst value that fits (ENR-12). */
export type Unknown = 'unknown'

/** What a session does to the list: rewrites it, adds to it, or adds and drops the oldest entry when it is full. */
export type TeachingKind = 'replace-all' | 'append' | 'append-drop-oldest'
export type OpensWith = 'equipment' | 'accepted-key' | 'two-accepted-keys'
/** `at-close` and `never`: opening leaves the list; what is erased later is what the commit leaves out. */
export type Erases = 'at-open' | 'at-close' | 'never'
export type Commits = 'each-key' | 'at-close'
export type SameKeyTwice = 'refused' | 'ignored' | 'counts'
export type OnBreak = 'revert' | 'keep-so-far'
export type TeachingKeyState = 'known' | 'blank' | 'prepared' | 'locked-elsewhere'

/** One teaching rule. */
export interface TeachingRule {
  readonly kind: TeachingKind | Unknown
  /** Entries the list holds at most. */
  readonly capacity: number | Unknown
  /** Entries a session must have taught before it can be closed, and may teach at most. */
  readonly leastKeys: number | Unknown
  readonly mostKeys: number | Unknown
  readonly opensWith: OpensWith | Unknown
  readonly erases: Erases | Unknown
  readonly commits: Commits | Unknown
  readonly sameKeyTwice: SameKeyTwice | Unknown
  readonly onBreak: OnBreak | Unknown
  readonly accepts: readonly TeachingKeyState[] | Unknown
}

/** One key of the plan. A clone has the identity of its original. */
export interface PlanKey {
  readonly id: string
  readonly identity: string
  readonly state: TeachingKeyState | Unknown
  readonly onBench: boolean | Unknown
}

/** What is on hand. */
export interface TeachingMeans {
  readonly equipment: boolean | Unknown
  /** A proven backup of the immobiliser data. */
  readonly backup: boolean | Unknown
}

/** A plan for one session. */
export interface TeachingPlan {
  readonly rule: TeachingRule
  /** Identities the car accepts now, oldest first; one may stand twice where it took two places. */
  readonly stored: readonly string[]
  readonly keys: readonly PlanKey[]
  readonly means: TeachingMeans
  /** Key labels in the order to show them; null: every key on the bench that can be taken. */
  readonly teach: readonly string[] | null
}

/** How to get the car back, cheapest first. */
export type WayBack = 'not-needed' | 'reopen' | 'restore' | 'none'

/** What holds once the session has ended. */
export interface SessionOutcome {
  /** The list, in its order. */
  readonly accepted: readonly string[]
  /** Labels of the keys that start the car, in the order of the plan's keys. */
  readonly starts: readonly string[]
  /** Identities of the first list that are gone, in its order. */
  readonly dropped: readonly string[]
  readonly stranded: boolean
  readonly wayBack: WayBack
}

/** What holds if the session ends here: right after `open`, or after the key with this label was shown. */
export interface BreakPoint extends SessionOutcome {
  readonly after: string
}

/** The rehearsal of one plan, in the field order of the JSON. */
export interface Rehearsal {
  readonly order: readonly string[]
  readonly opened: boolean
  /** True when every other order was ruled out. */
  readonly provenBest: boolean
  /** Distinct states looked at. */
  readonly explored: number
  readonly breaks: readonly BreakPoint[]
  readonly end: SessionOutcome
}
