/** @module The keyed digest that stands for a secret on record. */
import { hmac } from '@noble/hashes/hmac.js'
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'

/**
 * HMAC-SHA-256 (RFC 2104) of a secret, taken piece by piece. A plain SHA-256 of a short or guessable secret can be
 * tried out by anyone who sees it; without the key, which lies inside the sealed file, this one cannot.
 */
export class SecretDigest {
  readonly #hmac: ReturnType<typeof hmac.create>
  #bytes = 0

  constructor(key: Uint8Array) {
    this.#hmac = hmac.create(sha256, key)
  }

  update(piece: Uint8Array): void {
    this.#hmac.update(piece)
    this.#bytes += piece.length
  }

  /** Bytes taken so far. */
  get bytes(): number {
    return this.#bytes
  }

  /** The digest as 64 hex digits. Call it once, at the end. */
  end(): string {
    return bytesToHex(this.#hmac.digest())
  }
}
