import { StoreError } from '../contract/index.ts'

/** The code of an SQLite or operating system error, or an empty string. */
function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : ''
}

/** True when another connection holds the lock (SQLITE_BUSY and its extended codes). */
export function isBusy(error: unknown): boolean {
  return /^SQLITE_(BUSY|LOCKED)/.test(codeOf(error))
}

/**
 * Says an error of SQLite (result codes: https://www.sqlite.org/rescode.html) or of the file system in our
 * words; null for anything else. `place` is the data directory.
 */
export function explainTrouble(error: unknown, place: string): StoreError | null {
  if (error instanceof StoreError) return error
  const code = codeOf(error)
  const make = (ours: StoreError['code'], what: string, doNext: string) =>
    new StoreError(ours, what, doNext, error)
  if (/^(SQLITE_FULL|ENOSPC|EDQUOT|EFBIG)/.test(code)) {
    return make(
      'disk-full',
      `There is no room left where ${place} lies.`,
      'Make room and try again. Nothing of this was kept here; it stays on the device that sent it.',
    )
  }
  if (isBusy(error)) {
    return make(
      'locked',
      `Another program holds the database in ${place} and did not let go in time.`,
      'Try again. If it stays so, close other programs that have the database file open.',
    )
  }
  if (/^SQLITE_(CORRUPT|NOTADB|FORMAT)/.test(code)) {
    return make(
      'damaged',
      `The database in ${place} is damaged.`,
      'Stop, keep the folder as it is, and restore the latest copy from its folder "backups" or your own.',
    )
  }
  if (/^(SQLITE_(READONLY|CANTOPEN|PERM|AUTH)|EACCES|EPERM|EROFS|ENOTDIR|EISDIR|ENOENT)/.test(code)) {
    return make(
      'not-writable',
      `The folder ${place} cannot be written to.`,
      'Choose a folder of your own, or ask for the right to write there.',
    )
  }
  if (/^(SQLITE_IOERR|EIO)/.test(code)) {
    return make(
      'disk-failing',
      `The disk under ${place} gave an error while reading or writing.`,
      'Copy the folder to another disk now, then check this one.',
    )
  }
  if (error instanceof TypeError && error.message.includes('database connection is not open')) {
    return make('closed', 'The store was closed.', 'Open it again.')
  }
  if (error instanceof Error && error.message.includes('driver has already been destroyed')) {
    return make('closed', 'The store was closed.', 'Open it again.')
  }
  return null
}
