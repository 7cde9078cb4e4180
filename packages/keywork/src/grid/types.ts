/** What one key can do. Starting authority, remote buttons and passive entry are separate learnings (common practice). */
export type KeyFunction =
  | 'start'
  | 'emergency-start'
  | 'passive-start'
  | 'passive-entry'
  | 'lock'
  | 'unlock'
  | 'boot'
  | 'panic'
  | 'blade-door'
  | 'blade-ignition'
  | 'blade-boot'

/** How a key is built; decides which functions can apply to it. */
export type KeyForm = 'blade' | 'transponder' | 'remote-head' | 'flip' | 'proximity' | 'card'

export type TestPhase = 'before' | 'after'
export type TestOutcome = 'works' | 'fails' | 'not-applicable' | 'not-tested'

/** One test as recorded. `because` is required for `not-tested` to count as answered. */
export interface FunctionTest {
  readonly key: string
  readonly function: KeyFunction
  readonly phase: TestPhase
  readonly outcome: TestOutcome
  readonly because?: string
  readonly customerPresent?: boolean
}

/** A key as a row of the grid. A new key has no `before`. */
export interface GridKey {
  readonly id: string
  readonly form: KeyForm
  readonly origin: 'existing' | 'new'
  readonly onBench: boolean
  /** Functions that this key or car is said not to have, beside those its form excludes. */
  readonly lacks: readonly KeyFunction[]
}

export interface GridCell {
  readonly key: string
  readonly function: KeyFunction
  readonly phase: TestPhase
  readonly outcome: TestOutcome | 'open'
  readonly because?: string
  readonly customerPresent?: boolean
  /** Worked before, fails after. */
  readonly lost: boolean
}

export interface FunctionGrid {
  readonly functions: readonly KeyFunction[]
  readonly rows: readonly {
    readonly key: string
    readonly before: readonly GridCell[]
    readonly after: readonly GridCell[]
  }[]
  readonly openBefore: number
  readonly openAfter: number
  readonly lost: readonly GridCell[]
  readonly failing: readonly GridCell[]
  readonly completeBefore: boolean
  readonly completeAfter: boolean
}

/** Something the work did that can have changed what a key does. Without `keys` it touches every key on the bench. */
export interface Disturbance {
  readonly what:
    | 'list-rewritten'
    | 'remote-list-rewritten'
    | 'supply-interrupted'
    | 'cell-changed'
    | 'case-opened'
    | 'blade-cut'
    | 'lock-changed'
    | 'key-new'
  readonly keys?: readonly string[]
}

/** One test that must be made, and why. `text` is English; a page translates by `what`. */
export interface NeededTest {
  readonly key: string
  readonly function: KeyFunction
  readonly because: readonly { readonly what: Disturbance['what']; readonly text: string }[]
}
