/** @module Recordings packed with gzip (RFC 1952): unpacked as they come, then recognised by their own first bytes. */

import { Gunzip } from 'fflate'
import type { Finding } from '../finding/index.ts'
import type { CaptureFormat, CaptureReader, CaptureSink, ReaderOptions } from './contract.ts'
import { openRecognising, type RecognisingReader } from './head-first.ts'
import { recogniseAmong } from './recognise.ts'
import type { ScanStore } from './scan-store.ts'

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
      return inside === undefined ? 'it begins with the magic number of gzip' : packedReason(inside.reason)
    },
    open: (sink, options, store) => new GzipReader(inner, sink, options, store),
  }
}

/** Why a recording is one, when `inside` is the reason for what is packed. */
export function packedReason(inside: string): string {
  return `it is packed with gzip; inside, ${inside}`
}

/** Says that a packed recording is damaged in the piece that begins at an offset. */
export function packedDamage(byteOffset: number, reason: string): Finding {
  return {
    code: 'gzip-damaged',
    severity: 'error',
    where: { byteOffset },
    what: `the packed recording ends or is damaged here or within the next ${MOST_PIECE_BYTES / 1024} kB (${reason}); what came before was read`,
    doNext: 'Copy the recording again from its source.',
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
  /** Cut by what was unpacked so far and never by how the chunks come: so damage has one place. */
  #piece: Uint8Array = new Uint8Array(LEAST_PIECE_BYTES)
  #filled = 0
  #unpacked = 0
  #broken = false

  constructor(
    formats: readonly CaptureFormat[],
    sink: CaptureSink,
    options: ReaderOptions,
    store: ScanStore | undefined,
  ) {
    this.#sink = sink
    this.#inner = openRecognising(formats, sink, options, store)
    this.#gunzip = new Gunzip((chunk) => {
      this.#unpacked += chunk.length
      this.#inner.push(chunk)
    })
  }

  push(chunk: Uint8Array): void {
    for (let at = 0; at < chunk.length && !this.#broken; ) {
      const taken = chunk.subarray(at, at + this.#piece.length - this.#filled)
      this.#piece.set(taken, this.#filled)
      this.#filled += taken.length
      at += taken.length
      if (this.#filled === this.#piece.length) this.#pass()
    }
  }

  end(): void {
    if (this.#filled > 0 && !this.#broken) this.#pass()
    if (!this.#broken) this.#unpack(new Uint8Array(0), true)
    this.#inner.end()
  }

  /** Unpacks the piece and begins the next, which the unpacker may keep. */
  #pass(): void {
    const piece = this.#piece.subarray(0, this.#filled)
    this.#unpacked = 0
    this.#unpack(piece, false)
    this.#offset += piece.length
    const fitting = Math.floor((piece.length * WANTED_BYTES) / Math.max(1, this.#unpacked))
    const size = Math.min(MOST_PIECE_BYTES, piece.length * 2, fitting)
    this.#piece = new Uint8Array(Math.max(LEAST_PIECE_BYTES, size))
    this.#filled = 0
  }

  #unpack(piece: Uint8Array, last: boolean): void {
    try {
      this.#gunzip.push(piece, last)
    } catch (error) {
      this.#broken = true
      const reason = error instanceof Error ? error.message : 'unknown'
      this.#sink.finding(packedDamage(this.#offset, reason))
    }
  }
}
