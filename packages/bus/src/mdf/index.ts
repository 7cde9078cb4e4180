/**
 * @module ASAM MDF 4 bus logging: CAN frames out of `.mf4` files, finished or not, sorted or not, packed or not.
 *
 * MDF is read out of order. `readMdf` reads from a source with random access in bounded memory; the format's
 * streaming reader keeps up to `MOST_KEPT_BYTES` where a file's layout needs it, and says so beyond.
 */

import type { CaptureFormat } from '../capture/contract.ts'
import { mdfFeeder } from './reader.ts'

export type { MdfFindingCode } from './blocks.ts'
export { MOST_KEPT_BYTES, mdfFeeder, readMdf } from './reader.ts'
export { bytesSource, type RandomAccess } from './source.ts'

/** The row for the table of readers. */
export const MDF_FORMAT: CaptureFormat = {
  name: 'mdf',
  recognise: (head) => {
    const text = String.fromCharCode(...head.subarray(0, 16))
    if (text.startsWith('MDF     '))
      return `it begins with the mark of a finished ASAM MDF file, version ${text.slice(8).trim()}`
    if (text.startsWith('UnFinMF '))
      return `it begins with the mark of an unfinished ASAM MDF file, version ${text.slice(8).trim()}`
    return undefined
  },
  open: (sink) => mdfFeeder(sink),
}
