import { rename, rm, stat } from 'node:fs/promises'
import { dirname } from 'node:path'
import type { Kysely, Transaction } from 'kysely'
import { syncFolder } from '../blobs/durable.ts'
import { StoreError } from '../contract/index.ts'
import { settle, syncFile } from '../sqlite/copy.ts'
import { openSqlite } from '../sqlite/engine.ts'
import type { Tables } from '../tables/tables.ts'

/** Rows read and written at a time. */
const rowsAtOnce = 500

/**
 * Writes the tables of any database to a new SQLite file, as of one instant (a read-only REPEATABLE READ
 * transaction). `also` runs inside the same transaction, for what must be of the same instant. Bytes of blobs are
 * not in the file. The file appears only when it is whole.
 */
export async function exportTables(
  db: Kysely<Tables>,
  to: string,
  also: (snapshot: Transaction<Tables>) => Promise<void> = async () => {},
): Promise<void> {
  if ((await stat(to).catch(() => null)) !== null) {
    throw new StoreError('file-exists', `The file ${to} exists already.`, 'Choose another name for the copy.')
  }
  const part = `${to}.part`
  try {
    await removeSqlite(part)
    const copy = await openSqlite({
      file: part,
      backups: dirname(to),
      lockWaitMilliseconds: 1000,
      clock: () => 0,
    })
    try {
      await db
        .transaction()
        .setIsolationLevel('repeatable read')
        .setAccessMode('read only')
        .execute(async (snapshot) => {
          await copy.transact((transaction) => copyTables(snapshot, transaction))
          await also(snapshot)
        })
    } finally {
      await copy.close()
    }
    settle(part)
    await syncFile(part)
    await rename(part, to)
    await syncFolder(dirname(to))
  } finally {
    await removeSqlite(part)
  }
}

async function removeSqlite(file: string): Promise<void> {
  for (const end of ['', '-wal', '-shm']) await rm(`${file}${end}`, { force: true })
}

/** Copies every row of every table but the bytes of blobs, in an order that satisfies what they refer to. */
export async function copyTables(from: Kysely<Tables>, to: Transaction<Tables>): Promise<void> {
  for (const table of ['devices', 'blobs', 'documents', 'erased_documents', 'settings'] as const) {
    const rows = await from.selectFrom(table).selectAll().execute()
    for (let at = 0; at < rows.length; at += rowsAtOnce)
      await to
        .insertInto(table)
        .values(rows.slice(at, at + rowsAtOnce))
        .execute()
  }
  for (let last = 0; ; ) {
    const rows = await from
      .selectFrom('facts')
      .selectAll()
      .where('arrival', '>', last)
      .orderBy('arrival')
      .limit(rowsAtOnce)
      .execute()
    if (rows.length === 0) return
    await to.insertInto('facts').values(rows).execute()
    last = rows.at(-1)?.arrival ?? last
  }
}
