/** @module The whole way in one call: bytes of a recording in, diagnostic messages and findings out. */

import type { ReaderOptions } from '../capture/contract.ts'
import { openRecognising } from '../capture/head-first.ts'
import { READERS } from '../capture/readers.ts'
import type { Recognised } from '../capture/recognise.ts'
import { type DecodeChoices, type DecodeListener, Decoder } from './decoder.ts'
import type { Summary } from './summary.ts'

/** Choices and listeners for decoding a recording. */
export interface DecodeOptions extends DecodeListener, DecodeChoices, ReaderOptions {
  /** Called after each chunk with the bytes taken so far. */
  readonly progress?: (bytes: number) => void
}

/** What a whole recording came to. */
export interface DecodeResult {
  /** The format and the reason it was recognised by; `unknown` means that nothing could be read. */
  readonly recognised: Recognised
  readonly summary: Summary
}

/** A recording being decoded. */
export interface CaptureDecoding {
  /** Takes the next bytes, cut anywhere. The chunk may be reused afterwards. */
  push(chunk: Uint8Array): void
  /** The recording is over. Call once; returns what it came to. */
  end(): DecodeResult
}

/** Decodes a recording of any format in the table of readers. Never throws on what the bytes hold. */
export function decodeCapture(options: DecodeOptions): CaptureDecoding {
  const decoder = new Decoder(options, options)
  const reader = openRecognising(READERS, decoder, options)
  let bytes = 0
  return {
    push(chunk) {
      reader.push(chunk)
      bytes += chunk.length
      options.progress?.(bytes)
    },
    end() {
      reader.end()
      decoder.end()
      return {
        recognised: reader.recognised ?? { format: 'unknown', reason: 'it is empty' },
        summary: decoder.summary,
      }
    },
  }
}
