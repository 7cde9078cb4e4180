/** @module An MDF file on a disk, read wherever its blocks stand: a file of any size needs no memory. */

import { closeSync, openSync, readSync } from 'node:fs'
import type { RandomAccess } from '@shearline/bus'

const marks = ['MDF     ', 'UnFinMF ']
/** Most reads are no longer. */
const usualBytes = 1 << 16

/** A file that begins as an MDF file does. */
export interface MdfFile {
  readonly size: number
  /** Runs a decoding of the file to its end and closes the file; `step` is told the bytes read so far. */
  decode<Result>(
    start: (source: RandomAccess) => Generator<number, Result, void>,
    step: (read: number) => void,
  ): Result
}

/** Opens a file if it is MDF; `undefined` when it is not, or cannot be opened (which its reader then says). */
export function openMdf(file: string, size: number): MdfFile | undefined {
  let descriptor: number
  try {
    descriptor = openSync(file, 'r')
  } catch {
    return undefined
  }
  const mark = Buffer.alloc(marks[0]?.length ?? 0)
  readSync(descriptor, mark, 0, mark.length, 0)
  if (!marks.includes(mark.toString('latin1'))) {
    closeSync(descriptor)
    return undefined
  }
  return {
    size,
    decode(start, step) {
      try {
        const decoding = start(sourceOf(descriptor, size))
        for (;;) {
          const next = decoding.next()
          if (next.done === true) return next.value
          step(next.value)
        }
      } finally {
        closeSync(descriptor)
      }
    },
  }
}

function sourceOf(descriptor: number, size: number): RandomAccess {
  const usual = new Uint8Array(usualBytes)
  return {
    size,
    read(offset, length) {
      // A long packed block gets bytes of its own, so that they are let go afterwards.
      const bytes = length > usualBytes ? new Uint8Array(length) : usual
      let fill = 0
      while (fill < length) {
        const got = readSync(descriptor, bytes, fill, length - fill, offset + fill)
        if (got === 0) break
        fill += got
      }
      return bytes.subarray(0, fill)
    },
  }
}
