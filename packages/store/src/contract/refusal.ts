/** Why the store did not take what it was given. The list is closed: a caller can switch over it. */
export type RefusalCode =
  | 'not-a-fact'
  | 'unknown-device'
  | 'device-key-mismatch'
  | 'signature-wrong'
  | 'device-revoked'
  | 'fork'
  | 'gap'
  | 'link-broken'
  | 'hash-differs'
  | 'too-large'

/** The fact a refusal speaks of: its place in what was sent (from 0) and, when it could be read, its own place. */
export interface RefusedFact {
  readonly index: number
  readonly device?: string
  readonly seq?: number
  readonly id?: string
}

/** A refusal is an answer, not a failure: nothing was written and the sender keeps what it has. */
export interface Refusal {
  readonly code: RefusalCode
  readonly where: string
  readonly what: string
  readonly doNext: string
  readonly fact?: RefusedFact
}

export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: Refusal }
