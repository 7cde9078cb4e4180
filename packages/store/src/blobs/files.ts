import { createReadStream } from 'node:fs'
import { mkdir, open, rename, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import type { Readable } from 'node:stream'
import type { BlobOptions, Outcome } from '../contract/index.ts'
import { ArrivingFolder } from './arriving.ts'
import { syncFolder } from './durable.ts'
import type { BlobPlace } from './place.ts'

/** Content-addressed files under one folder: `ab/abcdef...`. Knows nothing of a database. */
export class BlobFiles implements BlobPlace {
  readonly #folder: string
  readonly #arriving: ArrivingFolder

  constructor(folder: string) {
    this.#folder = folder
    this.#arriving = new ArrivingFolder(join(folder, 'arriving'))
  }

  async prepare(now: number): Promise<void> {
    await this.#arriving.prepare(now)
  }

  /** Where the bytes of a hash stand. */
  pathOf(sha256: string): string {
    return join(this.#folder, sha256.slice(0, 2), sha256)
  }

  async has(sha256: string, bytes: number): Promise<boolean> {
    const found = await stat(this.pathOf(sha256)).catch(() => null)
    return found?.isFile() === true && found.size === bytes
  }

  async put(
    sha256: string,
    source: AsyncIterable<Uint8Array>,
    options: BlobOptions = {},
  ): Promise<Outcome<number>> {
    return await this.#arriving.receive(sha256, source, options, async (file) => {
      const folder = join(this.#folder, sha256.slice(0, 2))
      if ((await mkdir(folder, { recursive: true, mode: 0o700 })) !== undefined)
        await syncFolder(this.#folder)
      await rename(file, this.pathOf(sha256))
      await syncFolder(folder)
    })
  }

  async remove(sha256: string): Promise<void> {
    const file = this.pathOf(sha256)
    if ((await stat(file).catch(() => null)) === null) return
    await rm(file, { force: true })
    await syncFolder(join(this.#folder, sha256.slice(0, 2)))
  }

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
