/** @module Recordings: which format they are in. */

import { READERS } from './readers.ts'
import { explainUnknown, type Recognised, recogniseAmong } from './recognise.ts'

/** Tells the format of a recording by its first bytes (give `HEAD_BYTES` of them, or all there are), with the reason. */
export function recogniseCapture(head: Uint8Array): Recognised {
  const found = recogniseAmong(READERS, head)
  return found === undefined
    ? { format: 'unknown', reason: explainUnknown(head) }
    : { format: found.format.name, reason: found.reason }
}
