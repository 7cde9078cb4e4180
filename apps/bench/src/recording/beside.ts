/**
 * @module What this browser keeps beside the record, to be quick: strips by the hash of what they were made from, and
 * which columns a person chose for a table's header. Both can be lost without losing anything of a job.
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { Columns } from './columns/columns.ts'
import type { Strip } from './strip.ts'

interface BesideSchema extends DBSchema {
  strips: { key: string; value: Strip }
  columns: { key: string; value: Columns }
}

let opened: Promise<IDBPDatabase<BesideSchema>> | undefined

function beside(): Promise<IDBPDatabase<BesideSchema>> {
  opened ??= openDB<BesideSchema>('shearline-beside', 1, {
    upgrade(db) {
      db.createObjectStore('strips')
      db.createObjectStore('columns')
    },
  })
  return opened
}

/** The strip made of kept messages with this hash, if it was made here before. */
export async function keptStrip(sha256: string): Promise<Strip | undefined> {
  return (await beside()).get('strips', sha256)
}

/** Keeps a strip for the next look. */
export async function keepStrip(sha256: string, strip: Strip): Promise<void> {
  await (await beside()).put('strips', strip, sha256)
}

/** The columns chosen before for a header. */
export async function keptColumns(header: string): Promise<Columns | undefined> {
  return (await beside()).get('columns', header)
}

/** Remembers the columns of a header. */
export async function keepColumns(header: string, columns: Columns): Promise<void> {
  await (await beside()).put('columns', columns, header)
}
