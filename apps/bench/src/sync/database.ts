/** @module What this device keeps: its own chain, the facts it has seen, what is still to be sent, blobs and documents. */
import type { ChainHead, Device, Fact, JobSummary } from '@shearline/jobfile'
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'

/** This device as a signer. The private key cannot be exported: the browser signs, nobody reads it. */
export interface Self {
  readonly id: 'self'
  readonly device: string
  /** What other people read: "tablet in van 2". */
  readonly name: string
  /** Who works with it at present; written into every fact. */
  readonly by: string
  readonly publicKey: string
  readonly privateKey: CryptoKey
  readonly head: ChainHead
  /** Instant of the last fact, so that a clock set back does not reorder this device's own facts. */
  readonly lastAt: string | null
}

/** A recording or other large thing, kept until the server has it, found by the SHA-256 of its bytes. */
export interface KeptBlob {
  readonly sha256: string
  readonly blob: Blob
  readonly name: string
  readonly sent: boolean
  /** Present when `blob` holds the bytes encrypted for this device alone (photos/at-rest.ts). */
  readonly atRest?: AtRest
}

/** What is needed beside this device's key to read bytes that are encrypted at rest. */
export interface AtRest {
  /** AES-GCM initialisation vector, 12 bytes. */
  readonly iv: Uint8Array<ArrayBuffer>
  /** Media type of the bytes themselves. */
  readonly type: string
}

/** A document sealed on this device; its bytes are the blob of that hash. */
export interface KeptDocument {
  /** Identifier of the `document-sealed` fact. */
  readonly seal: string
  readonly job: string
  readonly sha256: string
  readonly sealedAt: string
  readonly sent: boolean
}

interface BenchSchema extends DBSchema {
  self: { key: 'self'; value: Self }
  facts: { key: [string, number]; value: Fact; indexes: { job: string } }
  /** Own facts the server has not acknowledged yet. */
  outbox: { key: [string, number]; value: { readonly device: string; readonly seq: number } }
  devices: { key: string; value: Device }
  summaries: { key: string; value: JobSummary }
  blobs: { key: string; value: KeptBlob }
  documents: { key: string; value: KeptDocument; indexes: { job: string } }
  /** The server's mark of each job when its facts were last fetched. */
  marks: { key: string; value: { readonly job: string; readonly mark: string } }
}

export type BenchDatabase = IDBPDatabase<BenchSchema>

let opened: Promise<BenchDatabase> | undefined

/** The one database of this browser profile. Throws what IndexedDB throws when storage is refused. */
export function database(): Promise<BenchDatabase> {
  opened ??= openDB<BenchSchema>('shearline-bench', 2, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('self', { keyPath: 'id' })
        const facts = db.createObjectStore('facts', { keyPath: ['device', 'seq'] })
        facts.createIndex('job', 'job')
        db.createObjectStore('outbox', { keyPath: ['device', 'seq'] })
        db.createObjectStore('devices', { keyPath: 'device' })
        db.createObjectStore('summaries', { keyPath: 'job' })
        db.createObjectStore('blobs', { keyPath: 'sha256' })
      }
      if (from < 2) {
        const documents = db.createObjectStore('documents', { keyPath: 'seal' })
        documents.createIndex('job', 'job')
        db.createObjectStore('marks', { keyPath: 'job' })
      }
    },
    // A newer page of this browser waits to change the stores: give way, and open them anew when next needed.
    blocking: (_current, _blocked, event) => {
      opened = undefined
      if (event.target instanceof IDBDatabase) event.target.close()
    },
    // The browser closed it (a failing disk, storage cleared): the next use opens it anew or says why it cannot.
    terminated: () => {
      opened = undefined
    },
  }).catch((error: unknown) => {
    opened = undefined
    throw error
  })
  return opened
}

/** A transaction that is on the disk when it is done, not only in the system's cache. */
export const strict = { durability: 'strict' } as const

/**
 * Waits until a transaction and what was asked of it are done. Throws the reason the whole was undone (a full
 * disk) rather than that of the first request that noticed.
 */
export async function settled(
  tx: { readonly done: Promise<void>; readonly error: DOMException | null },
  asked: readonly Promise<unknown>[],
): Promise<void> {
  try {
    await Promise.all([...asked, tx.done])
  } catch (error) {
    await tx.done.catch(() => undefined)
    throw tx.error ?? error
  }
}
