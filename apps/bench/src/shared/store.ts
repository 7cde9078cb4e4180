/** @module What was shared to the installed bench and waits for a person. Written by public/share-in.js too. */
import { type DBSchema, openDB } from 'idb'

/** One report that another app shared: text, or a file. */
export interface SharedItem {
  readonly id: number
  /** The job a person said it is for; null: not said yet. */
  readonly job: string | null
  readonly name: string
  readonly text: string
  readonly file: File | null
  readonly at: string
}

interface SharedSchema extends DBSchema {
  items: { key: number; value: SharedItem }
}

const watchers = new Set<() => void>()

function opened() {
  return openDB<SharedSchema>('shearline-shared', 1, {
    upgrade: (db) => void db.createObjectStore('items', { keyPath: 'id', autoIncrement: true }),
  })
}

async function within<T>(work: (db: Awaited<ReturnType<typeof opened>>) => Promise<T>): Promise<T> {
  const db = await opened()
  try {
    return await work(db)
  } finally {
    db.close()
  }
}

/** Everything that waits, oldest first. */
export function sharedItems(): Promise<readonly SharedItem[]> {
  return within((db) => db.getAll('items'))
}

/** Says which job a shared report is for. */
export async function shareFor(item: SharedItem, job: string): Promise<void> {
  await within((db) => db.put('items', { ...item, job }))
  for (const watcher of [...watchers]) watcher()
}

/** Forgets a shared report: it was taken into a job, or nobody wants it. */
export async function forgetShared(id: number): Promise<void> {
  await within((db) => db.delete('items', id))
  for (const watcher of [...watchers]) watcher()
}

/** Calls back whenever something was decided about what waits. */
export function watchShared(watcher: () => void): () => void {
  watchers.add(watcher)
  return () => watchers.delete(watcher)
}
