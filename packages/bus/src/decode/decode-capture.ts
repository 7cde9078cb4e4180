/** @module The whole way in one call: bytes of a recording in, diagnostic messages and findings out. */

import type { ReaderOptions } from '../capture/contract.ts'
import { packedReason } from '../capture/gzip.ts'
import { openRecognising } from '../capture/head-first.ts'
import { PLAIN, READERS } from '../capture/readers.ts'
import type { Recognised } from '../capture/recognise.ts'
import { ScanStore } from '../capture/scan-store.ts'
import type { Finding } from '../finding/index.ts'
import { type DecodeChoices, type DecodeListener, Decoder } from './decoder.ts'
import type { Summary } from './summary.ts'

/** Choices and listeners for decoding a recording. */
export interface DecodeOptions extends DecodeListener, DecodeChoices, ReaderOptions {
  /** Called after each chunk with the bytes taken so far. */
  readonly progress?: (bytes: number) => void
  /** Set when the caller unpacks the recording himself and pushes what was inside; the answer says what it was packed with. */
  readonly unpackedFrom?: 'gzip'
}

/** What a whole recording came to. */
export interface DecodeResult {
  /** The format and the reason it was recognised by; `unknown` means that nothing could be read. */
  readonly recognised: Recognised
  readonly summary: Summary
}

/** A recording being decoded. */
export interface CaptureDecoding {
  /**
   * Places for the next bytes: read a file into some while the part that was filled of another is pushed. Bytes from
   * anywhere else may be pushed as well; they are copied where need be.
   */
  readonly rooms: readonly Uint8Array[]
  /** What has been read so far; messages that wait for evidence are not counted yet. */
  readonly summary: Summary
  /** The format, once enough bytes have come to tell it. When it is `unknown`, nothing more will be read. */
  readonly recognised: Recognised | undefined
  /** Takes the next bytes, cut anywhere. The chunk may be reused afterwards. */
  push(chunk: Uint8Array): void
  /** Tells what whoever unpacks or carries the bytes found wrong with them. */
  finding(finding: Finding): void
  /** The recording is over. Call once; returns what it came to. */
  end(): DecodeResult
}

/** Decodes a recording of any format in the table of readers. Never throws on what the bytes hold. */
export function decodeCapture(options: DecodeOptions): CaptureDecoding {
  const decoder = new Decoder(options, options)
  const store = new ScanStore()
  const reader = openRecognising(
    options.unpackedFrom === undefined ? READERS : PLAIN,
    decoder,
    options,
    store,
  )
  const recognised = (): Recognised | undefined => {
    const inside = reader.recognised
    if (options.unpackedFrom === undefined || inside === undefined || inside.format === 'unknown')
      return inside
    return { format: options.unpackedFrom, reason: packedReason(inside.reason) }
  }
  let bytes = 0
  return {
    get rooms() {
      return store.rooms
    },
    get summary() {
      return decoder.summary
    },
    get recognised() {
      return recognised()
    },
    push(chunk) {
      reader.push(chunk)
      bytes += chunk.length
      options.progress?.(bytes)
    },
    finding: (finding) => decoder.finding(finding),
    end() {
      reader.end()
      decoder.end()
      return {
        recognised: recognised() ?? { format: 'unknown', reason: 'it is empty' },
        summary: decoder.summary,
      }
    },
  }
}
