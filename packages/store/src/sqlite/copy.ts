import { open, rename, rm, stat } from 'node:fs/promises'
import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { syncFolder } from '../blobs/durable.ts'
import { StoreError } from '../contract/index.ts'

/**
 * Copies a database to a new file by SQLite's online backup (https://www.sqlite.org/backup.html), from a
 * connection of its own that keeps one read transaction open: the copy is of one instant and never has to
 * start again, however much others write meanwhile. The new file appears only when it is whole and checked.
 */
export async function copyDatabase(from: string, to: string): Promise<void> {
  if ((await stat(to).catch(() => null)) !== null) {
    throw new StoreError('file-exists', `The file ${to} exists already.`, 'Choose another name for the copy.')
  }
  const part = `${to}.part`
  const source = new Database(from, { readonly: true, fileMustExist: true })
  try {
    await rm(part, { force: true })
    source.exec('begin')
    source.prepare('select count(*) from sqlite_schema').get()
    await source.backup(part)
    settle(part)
    await syncFile(part)
    await rename(part, to)
    await syncFolder(dirname(to))
  } finally {
    source.close()
    await rm(part, { force: true })
  }
}

/** Leaves a copy without a write-ahead log beside it, and makes sure SQLite finds it sound. */
export function settle(file: string): void {
  const copy = new Database(file)
  try {
    copy.pragma('journal_mode = DELETE')
    const verdict = copy.pragma('quick_check', { simple: true })
    if (verdict === 'ok') return
    throw new StoreError(
      'damaged',
      `The copy is not sound: ${String(verdict)}.`,
      'The database itself may be damaged: keep it as it is and restore an earlier copy.',
    )
  } finally {
    copy.close()
  }
}

/** Makes sure that the bytes of a file are on the disk. */
export async function syncFile(file: string): Promise<void> {
  const handle = await open(file, 'r+')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}
