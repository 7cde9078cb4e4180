/** @module Pieces of a blob as text, through blocks that are kept while they are looked at. */

const blockBytes = 1 << 18
const mostBlocks = 48

/** Reads pieces of a blob; holds at most 12 MiB of it. */
export class BlobBytes {
  readonly #blob: Blob
  readonly #decoder = new TextDecoder()
  /** The block used last stands last. */
  readonly #blocks = new Map<number, Promise<Uint8Array>>()

  constructor(blob: Blob) {
    this.#blob = blob
  }

  /** `length` bytes from `offset` as text. */
  async text(offset: number, length: number): Promise<string> {
    const piece = new Uint8Array(length)
    let filled = 0
    while (filled < length) {
      const at = offset + filled
      const number = Math.floor(at / blockBytes)
      const block = await this.#block(number)
      const part = block.subarray(at - number * blockBytes, at - number * blockBytes + length - filled)
      if (part.length === 0) break
      piece.set(part, filled)
      filled += part.length
    }
    return this.#decoder.decode(piece)
  }

  #block(number: number): Promise<Uint8Array> {
    const block =
      this.#blocks.get(number) ??
      this.#blob
        .slice(number * blockBytes, (number + 1) * blockBytes)
        .arrayBuffer()
        .then((buffer) => new Uint8Array(buffer))
    this.#blocks.delete(number)
    this.#blocks.set(number, block)
    for (const oldest of this.#blocks.keys()) {
      if (this.#blocks.size <= mostBlocks) break
      this.#blocks.delete(oldest)
    }
    return block
  }
}
