/** What is known of one key for the tally. */
export interface TallyKey {
  /** Label on the bench: A, B, C ... */
  readonly id: string
  readonly origin: 'existing' | 'new'
  readonly onBench: boolean
  /** The label of the key whose identity this one repeats; a clone takes no entry of its own. */
  readonly cloneOf: string | null
  /** The identity or place the car shows for this key, as written there. Keys shown alike count once (TAL-16). */
  readonly shownAs?: string
  /** Did it start the car before / after the work? null: not tested. */
  readonly startedBefore: boolean | null
  readonly startsAfter: boolean | null
  /** The customer's words for a key that is not here ("spare at home"). */
  readonly note?: string
}

/** The four numbers and the keys. null: not known (not asked, not readable). */
export interface TallyInput {
  readonly saidToExist: number | null
  readonly storedBefore: number | null
  readonly storedAfter: number | null
  readonly keys: readonly TallyKey[]
  /** True when a replace-all session is planned or done: absent keys stop starting the car. */
  readonly replacesAll: boolean | null
  /** Reasons already given, by difference code. */
  readonly reasons: Readonly<Partial<Record<DifferenceCode, string>>>
  /** Why a number cannot be had ("this car does not show the count"); such a number counts as answered. */
  readonly missingReasons?: Readonly<Partial<Record<MissingNumber, string>>>
}

/** The numbers a tally wants. */
export type MissingNumber = 'saidToExist' | 'storedBefore' | 'storedAfter'

/** Every way in which the numbers can disagree. Each wants a reason in writing before the tally is closed. */
export type DifferenceCode =
  | 'said-more-than-bench'
  | 'said-fewer-than-bench'
  | 'stored-more-than-bench'
  | 'stored-fewer-than-bench'
  | 'after-more-than-keys'
  | 'after-fewer-than-keys'
  | 'stored-key-does-not-start'

/** One disagreement: how many keys, what it means in plain words, and the reason if one was given. */
export interface Difference {
  readonly code: DifferenceCode
  readonly count: number
  readonly keys: readonly string[]
  /** English sentence; a page translates by code and count. */
  readonly means: string
  readonly reason: string | null
}

/** The reconciled tally. */
export interface Tally {
  readonly saidToExist: number | null
  /** Existing keys on the bench, new ones not counted. */
  readonly onBench: number
  readonly storedBefore: number | null
  readonly storedAfter: number | null
  /** Distinct identities among existing keys on the bench: clones count once. */
  readonly identitiesOnBench: number
  /** Entries stored before that no key on the bench explains. null when the stored number is not known. */
  readonly unaccounted: number | null
  /**
   * The same when only keys seen to start the car explain an entry: an untested key, or one that did not start,
   * may hold none. Never less than `unaccounted`.
   */
  readonly unaccountedAtMost: number | null
  /** Distinct identities that should be stored after the work. */
  readonly expectedAfter: number
  readonly newKeys: number
  readonly differences: readonly Difference[]
  readonly neverTested: readonly string[]
  /** Keys on the bench that started the car before and do not after. */
  readonly noLongerStart: readonly string[]
  /** Numbers still missing, by the name of the field. */
  readonly missing: readonly MissingNumber[]
  /** Every number is known or its absence has a reason, and every difference has a reason. */
  readonly reconciled: boolean
  /** Plain sentences for customer and insurer. */
  readonly statements: readonly TallyStatement[]
}

export type StatementCode =
  | 'stored-before'
  | 'stored-after'
  | 'keys-somewhere-start'
  | 'absent-keys-stopped'
  | 'absent-keys-will-stop'
  | 'absent-keys-still-start'
  | 'absent-keys-not-proven-stopped'
  | 'absent-keys-unknown'
  | 'absent-clone-still-starts'
  | 'entries-are-not-keys'
  | 'clones-count-once'
  | 'keys-start-now'
  | 'key-no-longer-starts'
  | 'keys-never-tested'

/** One plain sentence for customer and insurer. A page translates by code, count and keys. */
export interface TallyStatement {
  readonly code: StatementCode
  readonly count: number
  readonly keys: readonly string[]
  readonly text: string
}
