/** @module Looks at the beginning of a file: which format it is, and, where it is a table, which columns it has. */
import { recogniseCapture, sampleTable } from '@shearline/bus'
import { tableOf } from './columns/columns.ts'
import type { Looked } from './worker-messages.ts'

/** As much as the reader of tables looks at before it decides about the columns, in bytes. */
const sampleBytes = 128 * 1024

/** Reads the first bytes of a file, unpacked where it is packed. */
export async function look(file: Blob): Promise<Looked> {
  const packed = await beginning(file.stream())
  const outer = recogniseCapture(packed.bytes)
  const inner = outer.format === 'gzip' ? await unpackedBeginning(file) : packed
  const { format, reason } = inner === packed ? outer : recogniseCapture(inner.bytes)
  const sample = format === 'csv' ? sampleTable(inner.bytes, inner.complete) : undefined
  return { format, reason, table: sample === undefined ? null : tableOf(sample) }
}

interface Beginning {
  readonly bytes: Uint8Array
  readonly complete: boolean
}

async function unpackedBeginning(file: Blob): Promise<Beginning> {
  try {
    return await beginning(file.stream().pipeThrough(new DecompressionStream('gzip')))
  } catch {
    // Damaged packing is the reader's to tell, with its place.
    return { bytes: new Uint8Array(0), complete: true }
  }
}

async function beginning(stream: ReadableStream<Uint8Array>): Promise<Beginning> {
  const reader = stream.getReader()
  const bytes = new Uint8Array(sampleBytes)
  let length = 0
  while (length < sampleBytes) {
    const { value, done } = await reader.read()
    if (done) return { bytes: bytes.subarray(0, length), complete: true }
    const part = value.subarray(0, sampleBytes - length)
    bytes.set(part, length)
    length += part.length
  }
  await reader.cancel()
  return { bytes, complete: false }
}
