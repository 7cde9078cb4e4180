/** What a rehearsal answers beyond the base model (ENR-21 to ENR-26). */

import type { BreakCause, Rehearsal, SessionOutcome } from './types.ts'

/** Everything that can go otherwise at one step of a session. */
export type InterruptionCause =
  | BreakCause
  | 'closed-early'
  | 'wrong-code'
  | 'wrong-key'
  | 'repeated-key'
  | 'key-refused'
  | 'key-forgotten'
  | 'flat-cell'

/** One thing to do on the way back. A page translates by `do`. `seconds` null: no figure can be given. */
export interface RecoveryStep {
  readonly do:
    | 'start-with'
    | 'emergency-start-with'
    | 'wait'
    | 'wait-ignition-on'
    | 'change-cell'
    | 'fetch'
    | 'enter-code'
    | 'open'
    | 'show'
    | 'close'
    | 'restore'
  readonly key?: string
  readonly seconds: number | null
}

/** `use-key`: a key here starts the car. The others name the dearest thing that must be done. */
export type RecoveryWay = 'use-key' | 'reopen' | 'fetch' | 'restore'

/** What to do, in order, and how long it takes in all. */
export interface Recovery {
  readonly way: RecoveryWay
  readonly steps: readonly RecoveryStep[]
  /** Null: at least one step has no figure. */
  readonly seconds: number | null
  /** True when every other way was ruled out as longer. */
  readonly proven: boolean
}

/** What holds if this goes otherwise here. */
export interface Interruption extends SessionOutcome {
  /** `open`, or the key shown last. */
  readonly after: string
  readonly cause: InterruptionCause
  /** The key it happens to, where it happens to one. */
  readonly key?: string
  /** False: the session goes on, and what is told is the end it comes to with the keys that are left. */
  readonly sessionOver: boolean
  /** Keys that no longer serve another car and are not accepted by this one. */
  readonly spoiled: readonly string[]
  /** The shortest way to have a key here that starts the car; null: none with what is on hand. */
  readonly going: Recovery | null
  /** The shortest way to have every key meant to be taught start the car; null: none with what is on hand. */
  readonly finished: Recovery | null
}

/** One part of the session in time. Null: no figure. */
export interface SessionStep {
  readonly step: string
  readonly part: 'wait' | 'open' | 'show' | 'close'
  readonly startSeconds: number | null
  readonly seconds: number | null
  readonly amperes: number | null
  /** True when the step takes longer than the session waits for a key. */
  readonly overIdle: boolean
}

/** What an order costs, first things first (ENR-24). */
export interface OrderCost {
  /** Sum over the stranded break points of the chance to stop there. */
  readonly strandedChance: number
  /** Sum over those points of the chance times the seconds until a key here starts the car; null: no figure. */
  readonly strandedSeconds: number | null
  readonly lostChance: number
  readonly spoiledChance: number
}

/** Why the order is as it is: what another order would cost more (ENR-26). */
export interface OrderReason {
  readonly code:
    | 'other-strands-more'
    | 'other-strands-longer'
    | 'other-loses-more'
    | 'other-spoils-more'
    | 'other-shows-starting-keys-later'
    | 'other-leaves-given-order'
    | 'only-order'
  /** The order compared with. */
  readonly other: readonly string[]
  /** By how much it is worse in the first thing that differs. */
  readonly more: number
  /** Break points of the other order at which it is worse. */
  readonly at: readonly string[]
}

/** A condition of the plan and whether it is met; `not-said` counts as not met (ENR-25). */
export interface GuardCheck {
  readonly guard: 'backup-proven' | 'consent' | 'supply' | 'all-keys-here' | 'opens' | 'code' | 'idle-time'
  readonly state: 'met' | 'not-met' | 'not-said'
  readonly keys: readonly string[]
}

/** The full rehearsal of a plan: the base answer and all that can go otherwise. */
export interface SessionRehearsal extends Rehearsal {
  readonly interruptions: readonly Interruption[]
  readonly timeline: readonly SessionStep[]
  /** Length of the whole session; null: no figure. */
  readonly seconds: number | null
  readonly cost: OrderCost
  readonly reasons: readonly OrderReason[]
  readonly guards: readonly GuardCheck[]
  readonly unmet: readonly GuardCheck['guard'][]
  /** Blanks and prepared keys that are used up without being accepted at the end. */
  readonly spoiled: readonly string[]
}
