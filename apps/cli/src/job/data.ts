import { userInfo } from 'node:os'
import { join, resolve } from 'node:path'
import { type Outcome, openStore, type Store, StoreError } from '@shearline/store'
import { CouldNot } from '../output/answer.ts'

/** Options every command on the data folder has. */
export interface DataFlags {
  readonly data?: string
  readonly by?: string
}

/** The data folder: `--data`, else SHEARLINE_DATA, else `.shearline` here. */
export function dataFolder(flags: DataFlags): string {
  return resolve(flags.data ?? process.env.SHEARLINE_DATA ?? join(process.cwd(), '.shearline'))
}

/** Who records: `--by`, else SHEARLINE_BY, else the name of this machine's user. */
export function whoRecords(flags: DataFlags): string {
  return flags.by ?? process.env.SHEARLINE_BY ?? userInfo().username
}

/** Options of commands that work on everything kept. */
export interface KeptFlags {
  readonly data?: string
  readonly database?: string
}

/** Where the record is kept: the data folder, and PostgreSQL by `--database`, else SHEARLINE_DATABASE, if at all. */
export function keptIn(flags: KeptFlags): { readonly data: string; readonly database?: string } {
  const database = flags.database ?? process.env.SHEARLINE_DATABASE ?? ''
  return { data: dataFolder(flags), ...(database === '' ? {} : { database }) }
}

/** Opens what is kept for one command and closes it whatever happens. Store trouble ends as CouldNot. */
export async function withStore<T>(flags: DataFlags, work: (store: Store) => Promise<T>): Promise<T> {
  return await orCouldNot(async () => {
    const { data, ...where } = keptIn(flags)
    const store = await openStore(data, where)
    try {
      return await work(store)
    } finally {
      await store.close()
    }
  })
}

/** Runs work on the store; its trouble ends the command with its own words. */
export async function orCouldNot<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work()
  } catch (error) {
    if (error instanceof StoreError) throw new CouldNot(error.what, error.doNext)
    throw error
  }
}

/** The value of an outcome; a refusal ends the command. */
export function taken<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value
  throw new CouldNot(`${outcome.refusal.where}: ${outcome.refusal.what}`, outcome.refusal.doNext)
}
