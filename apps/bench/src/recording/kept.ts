import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'

/** Characters gathered before they become part of the blob, so that a long recording does not fill the memory. */
const pageLength = 1 << 20

/** Gathers the lines kept of a recording, hashing them on the way. */
export class Kept {
  readonly #encoder = new TextEncoder()
  readonly #hasher = sha256.create()
  readonly #pages: Blob[] = []
  #text = ''

  add(line: string): void {
    this.#text += line
    if (this.#text.length >= pageLength) this.#turnPage()
  }

  /** What was gathered, as one blob, and its SHA-256. */
  end(): { readonly blob: Blob; readonly sha256: string } {
    this.#turnPage()
    return {
      blob: new Blob(this.#pages, { type: 'application/jsonl' }),
      sha256: bytesToHex(this.#hasher.digest()),
    }
  }

  #turnPage(): void {
    const bytes = this.#encoder.encode(this.#text)
    this.#hasher.update(bytes)
    this.#pages.push(new Blob([bytes]))
    this.#text = ''
  }
}
