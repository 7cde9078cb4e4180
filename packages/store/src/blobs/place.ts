import type { Readable } from 'node:stream'
import type { BlobOptions, Outcome } from '../contract/index.ts'

/** Where the bytes of blobs stand. Which of them are kept is said by the rows of the database. */
export interface BlobPlace {
  /** Makes the place ready and removes what uploads left behind that ended long before `now` (milliseconds). */
  prepare(now: number): Promise<void>

  /** True when bytes of that hash and number are here. */
  has(sha256: string, bytes: number): Promise<boolean>

  /** Keeps bytes that hash to `sha256`, durably; returns their number. Never whole in memory. */
  put(sha256: string, source: AsyncIterable<Uint8Array>, options?: BlobOptions): Promise<Outcome<number>>

  /** Removes the bytes of a hash, durably; nothing happens when they are not here. */
  remove(sha256: string): Promise<void>

  /** Opens the bytes of a hash, or answers null when they are not here. */
  open(sha256: string): Promise<Readable | null>
}
