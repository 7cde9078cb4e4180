/** @module A reader that waits for the first bytes, recognises the format, and goes on with that format's reader. */

import {
  type CaptureFormat,
  type CaptureReader,
  type CaptureSink,
  HEAD_BYTES,
  type ReaderOptions,
} from './contract.ts'
import { explainUnknown, type Recognised, recogniseAmong } from './recognise.ts'
import { ScanStore } from './scan-store.ts'

/** A reader that says, once it knows, which format it reads. */
export interface RecognisingReader extends CaptureReader {
  /** `undefined` until enough bytes have come. */
  readonly recognised: Recognised | undefined
}

/** Opens a reader that recognises its format among `formats`. Bytes of an unknown format are let go unread. */
export function openRecognising(
  formats: readonly CaptureFormat[],
  sink: CaptureSink,
  options: ReaderOptions,
  store: ScanStore = new ScanStore(),
): RecognisingReader {
  return new HeadFirstReader(formats, sink, options, store)
}

class HeadFirstReader implements RecognisingReader {
  readonly #formats: readonly CaptureFormat[]
  readonly #sink: CaptureSink
  readonly #options: ReaderOptions
  readonly #store: ScanStore
  #head: Uint8Array = new Uint8Array(HEAD_BYTES)
  #length = 0
  #reader: CaptureReader | undefined
  recognised: Recognised | undefined

  constructor(
    formats: readonly CaptureFormat[],
    sink: CaptureSink,
    options: ReaderOptions,
    store: ScanStore,
  ) {
    this.#formats = formats
    this.#sink = sink
    this.#options = options
    this.#store = store
  }

  push(given: Uint8Array): void {
    // A Node Buffer's `slice` does not copy; readers get plain byte arrays only.
    const chunk = new Uint8Array(given.buffer, given.byteOffset, given.byteLength)
    if (this.recognised !== undefined) {
      this.#reader?.push(chunk)
      return
    }
    const used = Math.min(HEAD_BYTES - this.#length, chunk.length)
    this.#head.set(chunk.subarray(0, used), this.#length)
    this.#length += used
    if (this.#length < HEAD_BYTES) return
    this.#open()
    if (used < chunk.length) this.#reader?.push(chunk.subarray(used))
  }

  end(): void {
    if (this.recognised === undefined) this.#open()
    this.#reader?.end()
  }

  #open(): void {
    const head = this.#head.subarray(0, this.#length)
    this.#head = new Uint8Array(0)
    const found = recogniseAmong(this.#formats, head)
    if (found === undefined) {
      const reason = explainUnknown(head)
      this.recognised = { format: 'unknown', reason }
      this.#sink.finding({
        code: 'format-unknown',
        severity: 'error',
        where: { byteOffset: 0 },
        what: `this is no recording Shearline can read: ${reason}`,
        doNext: 'Give a recording as candump text, pcap, pcapng, MDF 4 or CSV.',
      })
      return
    }
    this.recognised = { format: found.format.name, reason: found.reason }
    this.#reader = found.format.open(this.#sink, this.#options, this.#store)
    this.#reader.push(head)
  }
}
