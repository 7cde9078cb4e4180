/** @module Blobs that are still arriving: the bytes received so far, kept as files so that an upload goes on where it stopped. */
import { createReadStream } from 'node:fs'
import { mkdir, open, readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'

/** An upload nobody went on with for this long is given up: its device asks first and begins anew. */
const abandonedAfterMilliseconds = 7 * 24 * 60 * 60 * 1000

/** How an append went: `at` is the number of bytes that are here now. */
export interface PartOutcome {
  readonly outcome: 'kept' | 'wrong-offset' | 'too-large' | 'line-broken'
  readonly at: number
}

/** Files under one folder, named by the SHA-256 the whole will have. */
export class PartFiles {
  readonly #folder: string
  readonly #maxBytes: number
  readonly #turns = new Map<string, Promise<unknown>>()
  #ready: Promise<unknown> | undefined

  constructor(folder: string, maxBytes: number) {
    this.#folder = folder
    this.#maxBytes = maxBytes
  }

  /** Bytes received so far, also before this process was started; 0 when there are none. */
  async received(sha256: string): Promise<number> {
    return (await stat(this.#file(sha256)).catch(() => null))?.size ?? 0
  }

  /**
   * Adds bytes at `offset`, which must be where the file ends now. What came before a broken line stays. Appends
   * to one blob take turns, so two devices with the same recording never mix their bytes.
   */
  append(sha256: string, offset: number, source: AsyncIterable<Uint8Array>): Promise<PartOutcome> {
    return this.#inTurn(sha256, async () => {
      await this.#prepare()
      const handle = await open(this.#file(sha256), 'a', 0o600)
      try {
        let at = (await handle.stat()).size
        if (at !== offset) return { outcome: 'wrong-offset', at }
        const chunks = source[Symbol.asyncIterator]()
        for (;;) {
          const next = await chunks.next().catch(() => null)
          if (next === null) return { outcome: 'line-broken', at }
          if (next.done === true) break
          const chunk = next.value
          if (at + chunk.byteLength > this.#maxBytes) return { outcome: 'too-large', at }
          let written = 0
          while (written < chunk.byteLength) {
            written += (await handle.write(chunk, written)).bytesWritten
          }
          at += chunk.byteLength
        }
        await handle.sync()
        return { outcome: 'kept', at }
      } finally {
        await handle.close()
      }
    })
  }

  /** Everything received of a blob, from its first byte. */
  read(sha256: string): AsyncIterable<Uint8Array> {
    return createReadStream(this.#file(sha256), { highWaterMark: 256 * 1024 })
  }

  /** Forgets what was received of a blob. */
  drop(sha256: string): Promise<void> {
    return this.#inTurn(sha256, () => rm(this.#file(sha256), { force: true }))
  }

  #file(sha256: string): string {
    return join(this.#folder, sha256)
  }

  #prepare(): Promise<unknown> {
    this.#ready ??= this.#makeFolder().catch((error: unknown) => {
      this.#ready = undefined
      throw error
    })
    return this.#ready
  }

  async #makeFolder(): Promise<void> {
    await mkdir(this.#folder, { recursive: true, mode: 0o700 })
    for (const name of await readdir(this.#folder)) {
      const file = join(this.#folder, name)
      const found = await stat(file).catch(() => null)
      if (found !== null && Date.now() - found.mtimeMs > abandonedAfterMilliseconds)
        await rm(file, { force: true })
    }
  }

  #inTurn<T>(sha256: string, work: () => Promise<T>): Promise<T> {
    const turn = (this.#turns.get(sha256) ?? Promise.resolve()).then(work, work)
    this.#turns.set(sha256, turn)
    const done = () => {
      if (this.#turns.get(sha256) === turn) this.#turns.delete(sha256)
    }
    turn.then(done, done)
    return turn
  }
}
