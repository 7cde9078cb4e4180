/** A parameter that nobody on the job knows. The answer then holds for the worst value that fits (ENR-12). */
export type Unknown = 'unknown'

/**
 * What a session does to the list: rewrites it, adds to it, adds and drops the oldest entry when it is full, or puts
 * each key into a place of its own (ENR-15).
 */
export type TeachingKind = 'replace-all' | 'append' | 'append-drop-oldest' | 'numbered-slots'
/** `timed-wait`: ignition on for a stated time and nothing else (ENR-16). */
export type OpensWith = 'equipment' | 'accepted-key' | 'two-accepted-keys' | 'timed-wait'
/** `at-close` and `never`: opening leaves the list; what is erased later is what the commit leaves out. */
export type Erases = 'at-open' | 'at-close' | 'never'
export type Commits = 'each-key' | 'at-close'
export type SameKeyTwice = 'refused' | 'ignored' | 'counts'
/** `list-lost`: a break empties the list, whenever the session commits (ENR-18). */
export type OnBreak = 'revert' | 'keep-so-far' | 'list-lost'
/** `pre-coded`: supplied already matched to this car (ENR-20). */
export type TeachingKeyState = 'known' | 'blank' | 'prepared' | 'locked-elsewhere' | 'pre-coded'
/** What numbered slots do with a key whose slot holds another (ENR-15). */
export type SlotTaken = 'overwritten' | 'refused'
/** What ends a session from outside (ENR-18). */
export type BreakCause = 'supply-lost' | 'link-lost' | 'time-out'
/** What a key that is none of the plan's does to an open session (ENR-22). */
export type WrongKey = 'ignored' | 'ends-session'
/** When a key becomes useless for other cars (ENR-20). */
export type Spends = 'when-taken' | 'when-stored'
/** What a waiting penalty does while the ignition is off (ENR-17). */
export type PenaltyPause = 'runs' | 'pauses' | 'restarts'

/** A code that must be entered before the session opens, and what wrong tries cost (ENR-17). */
export interface CodeGate {
  /** Wrong tries in a row that start the penalty. */
  readonly triesBeforeWait: number | Unknown
  readonly waitSeconds: number | Unknown
  readonly ignitionOff: PenaltyPause | Unknown
  /** What losing the supply does to the penalty: some cars start it again. */
  readonly supplyLost: PenaltyPause | Unknown
}

/** How long the parts of a session take, in seconds; absent or unknown: no figure can be given (ENR-21). */
export interface SessionSeconds {
  readonly open?: number | Unknown
  /** Each key shown. */
  readonly show?: number | Unknown
  readonly close?: number | Unknown
  /** Putting the backup back. */
  readonly restore?: number | Unknown
  /** Waiting with the ignition on before a `timed-wait` session opens, in all. */
  readonly wait?: number | Unknown
  /** Waiting after a session that was broken off, before it can be opened again. */
  readonly afterBreak?: number | Unknown
}

/** What the car draws in each part of a session, in amperes: handed to the power budget. */
export interface SessionAmperes {
  readonly open?: number | Unknown
  readonly show?: number | Unknown
  readonly close?: number | Unknown
  readonly wait?: number | Unknown
}

/**
 * One teaching rule: plain JSON. The fields up to `accepts` are always there; the others say more than the base model
 * (ENR-15 to ENR-22), and a plan with any of them is an *extended* plan.
 */
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
  readonly slotTaken?: SlotTaken | Unknown
  /** The session is told how many keys there will be and closes itself at that number (ENR-19). */
  readonly declaredCount?: boolean | Unknown
  readonly spends?: Spends | Unknown
  readonly wrongKey?: WrongKey | Unknown
  /** Causes that end a session otherwise than `onBreak` says (ENR-18). */
  readonly onBreakBy?: Readonly<Partial<Record<BreakCause, OnBreak | Unknown>>>
  readonly gate?: CodeGate
  /** Longest time between two keys before the session ends by itself, in seconds. */
  readonly idleSeconds?: number | Unknown
  readonly seconds?: SessionSeconds
  readonly amperes?: SessionAmperes
}

/** One key of the plan. A clone has the identity of its original. */
export interface PlanKey {
  readonly id: string
  readonly identity: string
  readonly state: TeachingKeyState | Unknown
  readonly onBench: boolean | Unknown
  /** The numbered slot it goes to, from 1; absent: the first that is free (ENR-15). */
  readonly slot?: number
  /** How long it takes to have a key here that is not on the bench, in seconds (ENR-23). */
  readonly awaySeconds?: number
}

/** What is on hand. */
export interface TeachingMeans {
  readonly equipment: boolean | Unknown
  /** A proven backup of the immobiliser data. */
  readonly backup: boolean | Unknown
  /** The code that opens a gated session is at hand (ENR-17). The code itself never stands in a plan. */
  readonly code?: boolean | Unknown
  /** Wrong tries already made since the last right one. */
  readonly wrongTries?: number
}

/** What was settled before the session, as far as the plan says (ENR-25). */
export interface PlanGuards {
  readonly backupProven?: boolean | Unknown
  readonly consent?: boolean | Unknown
  readonly supply?: boolean | Unknown
  readonly allKeysHere?: boolean | Unknown
}

/** A plan for one session. */
export interface TeachingPlan {
  readonly rule: TeachingRule
  /**
   * Identities the car accepts now, oldest first; one may stand twice where it took two places. With numbered slots:
   * by slot, an empty text for an empty slot (`null` in JSON).
   */
  readonly stored: readonly string[]
  readonly keys: readonly PlanKey[]
  readonly means: TeachingMeans
  /** Key labels in the order to show them; null: every key on the bench that can be taken. */
  readonly teach: readonly string[] | null
  /** How many keys the session is told; absent: the different identities on the bench that are meant to be taught. */
  readonly declared?: number
  readonly guards?: PlanGuards
  /** Chance that the session stops right after this step, by `open` or key label, from 0 to 1 (ENR-24). */
  readonly likelihood?: Readonly<Record<string, number>>
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
  /** Numbered slots only, where what is in them is known: identities by slot, null for an empty one. */
  readonly slots?: readonly (string | null)[]
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
