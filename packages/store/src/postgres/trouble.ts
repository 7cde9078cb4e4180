import { StoreError } from '../contract/index.ts'

/** The SQLSTATE or operating system code of an error, or an empty string. */
function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : ''
}

/** True when the database undid a transaction only because others were in its way: it may simply be run again. */
export function mayRunAgain(error: unknown): boolean {
  return ['40001', '40P01'].includes(codeOf(error))
}

/**
 * Says an error of PostgreSQL (SQLSTATE, PostgreSQL manual, Appendix A "Error Codes") or of the line to it in our
 * words; null for anything else. `place` is the address without its password.
 */
export function explainPostgres(error: unknown, place: string): StoreError | null {
  if (error instanceof StoreError) return error
  const code = codeOf(error)
  const make = (ours: StoreError['code'], what: string, doNext: string) =>
    new StoreError(ours, what, doNext, error)
  if (/^(53100|58030|ENOSPC|EDQUOT)$/.test(code)) {
    return make(
      'disk-full',
      `There is no room left where the database server of ${place} keeps its files.`,
      'Make room there and try again. Nothing of this was kept; it stays on the device that sent it.',
    )
  }
  if (/^(55P03|40001|40P01)$/.test(code)) {
    return make(
      'locked',
      `Another program holds rows in ${place} and did not let go in time.`,
      'Try again. If it stays so, look with "select * from pg_stat_activity" for a transaction left open.',
    )
  }
  if (/^(XX001|XX002)$/.test(code)) {
    return make(
      'damaged',
      `The database server says that ${place} is damaged.`,
      'Stop, keep the server as it is, and restore the latest backup into a new database.',
    )
  }
  if (/^(42501|25006)$/.test(code)) {
    return make(
      'not-writable',
      `The role in use may not write to ${place}.`,
      'Give it the right to create and change tables in its schema, or connect to the primary server.',
    )
  }
  if (/^(28\w{3}|3D000|3F000)$/.test(code)) {
    return make(
      'unreachable',
      `The database server does not let this program into ${place}.`,
      'Look at the name, the password and the name of the database in the address.',
    )
  }
  if (
    /^(08\w{3}|57P0[1-5]|53300|ECONN\w+|ENOTFOUND|EAI_AGAIN|ETIMEDOUT|EPIPE|ENOENT|EHOSTUNREACH)$/.test(code)
  ) {
    return unreachable(place, error)
  }
  if (!(error instanceof Error)) return null
  if (/driver has already been destroyed|Cannot use a pool after calling end/.test(error.message)) {
    return make('closed', 'The store was closed.', 'Open it again.')
  }
  // The driver gives no code when the line breaks under it.
  if (/Connection terminated|timeout exceeded when trying to connect|Connection ended/i.test(error.message)) {
    return unreachable(place, error)
  }
  return null
}

function unreachable(place: string, error: unknown): StoreError {
  return new StoreError(
    'unreachable',
    `The database server of ${place} does not answer.`,
    'Look whether it runs and can be reached. Devices keep what they have and send it when it is back.',
    error,
  )
}
