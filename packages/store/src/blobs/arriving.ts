import { createHash, randomUUID } from 'node:crypto'
import { createWriteStream } from 'node:fs'
import { mkdir, readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { pipeline } from 'node:stream/promises'
import type { BlobOptions, Outcome } from '../contract/index.ts'

/** A part-written file this old belongs to no living upload. */
const abandonedAfterMilliseconds = 24 * 60 * 60 * 1000

/** A folder for uploads not yet whole. */
export class ArrivingFolder {
  readonly #folder: string

  constructor(folder: string) {
    this.#folder = folder
  }

  /** Makes the folder and removes what uploads left behind that ended long before `now` (milliseconds). */
  async prepare(now: number): Promise<void> {
    await mkdir(this.#folder, { recursive: true, mode: 0o700 })
    for (const name of await readdir(this.#folder)) {
      const file = join(this.#folder, name)
      const found = await stat(file).catch(() => null)
      if (found !== null && now - found.mtimeMs > abandonedAfterMilliseconds) await rm(file, { force: true })
    }
  }

  /**
   * Streams bytes to a file while hashing them. When they hash to `sha256`, calls `keep` with the file, which is
   * on the disk by then, and answers with their number; whatever happens, the file is gone from here afterwards.
   */
  async receive(
    sha256: string,
    source: AsyncIterable<Uint8Array>,
    options: BlobOptions,
    keep: (file: string) => Promise<void>,
  ): Promise<Outcome<number>> {
    const limit = options.maxBytes ?? Number.POSITIVE_INFINITY
    const file = join(this.#folder, randomUUID())
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
      await keep(file)
      return { ok: true, value: bytes }
    } catch (error) {
      if (error instanceof TooLarge) return { ok: false, refusal: tooLarge(sha256, limit) }
      throw error
    } finally {
      await rm(file, { force: true })
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
