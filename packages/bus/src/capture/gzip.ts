/** @module Recordings packed with gzip (RFC 1952): unpacked as they come, then recognised by their own first bytes. */

import { Gunzip } from 'fflate'
import type { CaptureFormat, CaptureReader, CaptureSink, ReaderOptions } from './contract.ts'
import { openRecognising, type RecognisingReader } from './head-first.ts'
import { recogniseAmong } from './recognise.ts'

/** Unpacked bytes that one piece should make, so that a file that unpacks to a thousand times its size takes no more memory. */
const WANTED_BYTES = 1 << 18
/** Packed bytes given to the unpacker at once: the least makes about 260 kB at most (1032 to 1). */
const LEAST_PIECE_BYTES = 256
const MOST_PIECE_BYTES = 1 << 16

/** The gzip format around one of `inner`. */
export function gzipFormat(inner: readonly CaptureFormat[]): CaptureFormat {
  return {
    name: 'gzip',
    recognise(head) {
      if (head[0] !== 0x1f || head[1] !== 0x8b || head[2] !== 8) return undefined
      const inside = recogniseAmong(inner, unpackedHead(head))
      return inside === undefined
        ? 'it begins with the magic number of gzip'
        : `it is packed with gzip; inside, ${inside.reason}`
    },
    open: (sink, options) => new GzipReader(inner, sink, options),
  }
}

/** As much of the recording as its first packed bytes hold. */
function unpackedHead(head: Uint8Array): Uint8Array {
  let first: Uint8Array = new Uint8Array(0)
  try {
    const gunzip = new Gunzip((chunk) => {
      if (first.length === 0) first = chunk
    })
    gunzip.push(head)
  } catch {
    // A damaged head is told by the reader, with its place.
  }
  return first
}

class GzipReader implements CaptureReader {
  readonly #sink: CaptureSink
  readonly #inner: RecognisingReader
  readonly #gunzip: Gunzip
  #offset = 0
  #piece = LEAST_PIECE_BYTES
  #unpacked = 0
  #broken = false

  constructor(formats: readonly CaptureFormat[], sink: CaptureSink, options: ReaderOptions) {
    this.#sink = sink
    this.#inner = openRecognising(formats, sink, options)
    this.#gunzip = new Gunzip((chunk) => {
      this.#unpacked += chunk.length
      this.#inner.push(chunk)
    })
  }

  push(chunk: Uint8Array): void {
    for (let at = 0; at < chunk.length && !this.#broken; ) {
      // The unpacker keeps what it is given, and the caller may reuse its chunk.
      const piece = new Uint8Array(chunk.subarray(at, at + this.#piece))
      this.#unpacked = 0
      this.#unpack(piece, false)
      at += piece.length
      this.#offset += piece.length
      const fitting = Math.floor((piece.length * WANTED_BYTES) / Math.max(1, this.#unpacked))
      this.#piece = Math.max(LEAST_PIECE_BYTES, Math.min(MOST_PIECE_BYTES, this.#piece * 2, fitting))
    }
  }

  end(): void {
    if (!this.#broken) this.#unpack(new Uint8Array(0), true)
    this.#inner.end()
  }

  #unpack(piece: Uint8Array, last: boolean): void {
    try {
      this.#gunzip.push(piece, last)
    } catch (error) {
      this.#broken = true
      const reason = error instanceof Error ? error.message : 'unknown'
      this.#sink.finding({
        code: 'gzip-damaged',
        severity: 'error',
        where: { byteOffset: this.#offset },
        what: `the packed recording ends or is damaged here (${reason}); what came before was read`,
        doNext: 'Copy the recording again from its source.',
      })
    }
  }
}
