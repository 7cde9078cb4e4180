/** @module A zip file whose bytes follow from its content alone: nothing compressed, one fixed time, given order. */
import type { Zip, ZipPassThrough } from 'fflate'

/** The first time a zip can hold. Without a zone it is read as local time and written as local time again. */
const fixedTime = '1980-01-01T00:00:00'

/** Writes a zip piece by piece; what comes out of each call is the next part of the file. */
export class ZipWriter {
  readonly #zip: Zip
  readonly #passThrough: typeof ZipPassThrough
  #out: Uint8Array[] = []
  #entry: ZipPassThrough | null = null

  private constructor(fflate: typeof import('fflate')) {
    this.#passThrough = fflate.ZipPassThrough
    this.#zip = new fflate.Zip((error, piece) => {
      if (error !== null) throw error
      this.#out.push(piece)
    })
  }

  /** Loads the library when a bundle is written or read, and not before. */
  static async create(): Promise<ZipWriter> {
    return new ZipWriter(await import('fflate'))
  }

  /** Begins a file. Throws RangeError for a name a zip cannot hold. */
  begin(name: string): void {
    this.#entry = new this.#passThrough(name)
    this.#entry.mtime = fixedTime
    this.#zip.add(this.#entry)
  }

  push(piece: Uint8Array): readonly Uint8Array[] {
    this.#entry?.push(piece, false)
    return this.#taken()
  }

  /** Ends the file that was begun. */
  endFile(): readonly Uint8Array[] {
    this.#entry?.push(new Uint8Array(0), true)
    this.#entry = null
    return this.#taken()
  }

  /** Ends the zip. */
  end(): readonly Uint8Array[] {
    this.#zip.end()
    return this.#taken()
  }

  #taken(): readonly Uint8Array[] {
    const out = this.#out
    this.#out = []
    return out
  }
}
