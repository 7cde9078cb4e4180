/** What can go wrong with the place where things are kept. The list is closed. */
export type StoreErrorCode =
  | 'disk-full'
  | 'locked'
  | 'not-writable'
  | 'damaged'
  | 'disk-failing'
  | 'newer-database'
  | 'blob-missing'
  | 'file-exists'
  | 'key-damaged'
  | 'own-chain-behind'
  | 'own-device-revoked'
  | 'unreachable'
  | 'dump-needed'
  | 'no-record'
  | 'not-empty'
  | 'backup-broken'
  | 'closed'

/** The store could not do its work. Nothing of the call was kept, and the message says what to do. */
export class StoreError extends Error {
  readonly code: StoreErrorCode
  readonly what: string
  readonly doNext: string

  constructor(code: StoreErrorCode, what: string, doNext: string, cause?: unknown) {
    super(`${what} ${doNext}`, cause === undefined ? undefined : { cause })
    this.name = 'StoreError'
    this.code = code
    this.what = what
    this.doNext = doNext
  }
}
