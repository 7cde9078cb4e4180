/** Why something could not be sealed or opened. The list is closed. */
export type VaultErrorCode =
  | 'not-a-recipient'
  | 'no-recipient'
  | 'passphrase-too-short'
  | 'not-an-identity'
  | 'passphrase-needed'
  | 'no-key-fits'
  | 'not-sealed'
  | 'damaged'
  | 'changed-while-read'

/** The vault could not do its work. The message says what and what to do, and holds nothing of the secret or a key. */
export class VaultError extends Error {
  readonly code: VaultErrorCode
  readonly what: string
  readonly doNext: string

  constructor(code: VaultErrorCode, what: string, doNext: string) {
    super(`${what} ${doNext}`)
    this.name = 'VaultError'
    this.code = code
    this.what = what
    this.doNext = doNext
  }
}
