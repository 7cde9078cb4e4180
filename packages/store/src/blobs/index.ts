/** @module Bytes kept as files named by their SHA-256: `blobs/ab/abcdef...`. */
import { createHash, randomUUID } from 'node:crypto'
import { createReadStream, createWriteStream } from 'node:fs'
import { mkdir, open, readdir, rename, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import type { BlobOptions, Outcome } from '../contract/index.ts'
import { syncFolder } from './durable.ts'

/** A part-written file this old belongs to no living upload. */
const abandonedAfterMilliseconds = 24 * 60 * 60 * 1000

/** Content-addressed files under one folder. Knows nothing of a database. */
export class BlobFiles {
  readonly #folder: string
  readonly #arriving: string

  constructor(folder: string) {
    this.#folder = folder
    this.#arriving = join(folder, 'arriving')
  }

  /** Makes the folders and removes what uploads left behind that ended long before `now` (milliseconds). */
  async prepare(now: number): Promise<void> {
    await mkdir(this.#arriving, { recursive: true, mode: 0o700 })
    for (const name of await readdir(this.#arriving)) {
      const file = join(this.#arriving, name)
      const found = await stat(file).catch(() => null)
      if (found !== null && now - found.mtimeMs > abandonedAfterMilliseconds) await rm(file, { force: true })
    }
  }

  /** Where the bytes of a hash stand. */
  pathOf(sha256: string): string {
    return join(this.#folder, sha256.slice(0, 2), sha256)
  }

  /** True when a file of that hash and size is here. */
  async has(sha256: string, bytes: number): Promise<boolean> {
    const found = await stat(this.pathOf(sha256)).catch(() => null)
    return found?.isFile() === true && found.size === bytes
  }

  /**
   * Streams bytes to disk while hashing them; only what hashes to `sha256` gets that name, and only after it
   * is on the disk. Returns the number of bytes.
   */
  async put(
    sha256: string,
    source: AsyncIterable<Uint8Array>,
    options: BlobOptions = {},
  ): Promise<Outcome<number>> {
    const limit = options.maxBytes ?? Number.POSITIVE_INFINITY
    const file = join(this.#arriving, randomUUID())
    const hash = createHash('sha256')
    let bytes = 0
    try {
      await pipeline(
        source,
        async function* (chunks: AsyncIterable<Uint8Array>) {
          for await (const chunk of chunks) {
            bytes += chunk.byteLength
            if (bytes > limit) throw new TooLarge()
            hash.update(chunk)
            yield chunk
          }
        },
        createWriteStream(file, { flags: 'wx', mode: 0o600, flush: true }),
      )
      const found = hash.digest('hex')
      if (found !== sha256) return { ok: false, refusal: differs(sha256, found, bytes) }
      const folder = join(this.#folder, sha256.slice(0, 2))
      if ((await mkdir(folder, { recursive: true, mode: 0o700 })) !== undefined)
        await syncFolder(this.#folder)
      await rename(file, this.pathOf(sha256))
      await syncFolder(folder)
      return { ok: true, value: bytes }
    } catch (error) {
      if (error instanceof TooLarge) return { ok: false, refusal: tooLarge(sha256, limit) }
      throw error
    } finally {
      await rm(file, { force: true })
    }
  }

  /** Opens the bytes of a hash, or answers null when the file is not there. */
  async open(sha256: string): Promise<Readable | null> {
    try {
      const handle = await open(this.pathOf(sha256), 'r')
      return createReadStream('', { fd: handle, highWaterMark: 256 * 1024 })
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null
      throw error
    }
  }
}

class TooLarge extends Error {}

function differs(sha256: string, found: string, bytes: number) {
  return {
    code: 'hash-differs',
    where: `blob ${sha256}`,
    what: `The ${bytes} bytes that came hash to ${found}.`,
    doNext: 'Send the bytes again. If it happens twice, the file on the device was changed: attach it anew.',
  } as const
}

function tooLarge(sha256: string, limit: number) {
  return {
    code: 'too-large',
    where: `blob ${sha256}`,
    what: `It is larger than the ${limit} bytes that are accepted.`,
    doNext: 'Split the recording, or raise the limit where the server is started.',
  } as const
}
