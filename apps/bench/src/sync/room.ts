/** @module Room on this device: how much is used, and what may go because the server has it. */
import { database, settled, strict } from './database.ts'

/** Room in bytes. How much a browser would still give is not said: current ones answer with a made-up number. */
export interface Room {
  readonly used: number
  /** Bytes of recordings that are sent and may be dropped here. */
  readonly droppable: number
}

/** How much room is used; null where the browser does not say. */
export async function readRoom(): Promise<Room | null> {
  const { usage } = (await navigator.storage?.estimate?.()) ?? {}
  if (usage === undefined) return null
  const droppable = (await sentBlobs()).reduce((sum, { blob }) => sum + blob.size, 0)
  return { used: usage, droppable }
}

/** Drops recordings the server has acknowledged. Facts, documents and everything unsent stay. */
export async function dropSent(): Promise<void> {
  const db = await database()
  const gone = await sentBlobs()
  const tx = db.transaction('blobs', 'readwrite', strict)
  await settled(
    tx,
    gone.map(({ sha256 }) => tx.store.delete(sha256)),
  )
}

async function sentBlobs() {
  const db = await database()
  const documents = new Set((await db.getAll('documents')).map((document) => document.sha256))
  return (await db.getAll('blobs')).filter(({ sent, sha256 }) => sent && !documents.has(sha256))
}
