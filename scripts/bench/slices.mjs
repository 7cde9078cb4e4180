/** @module Shorter recordings for programs that take too long over the whole one. */

import { closeSync, openSync, readSync, writeFileSync } from 'node:fs'

function head(path, bytes) {
  const file = openSync(path, 'r')
  const buffer = Buffer.alloc(bytes)
  const length = readSync(file, buffer, 0, bytes, 0)
  closeSync(file)
  return buffer.subarray(0, length)
}

/** The first frames of a pcapng made by `writers.mjs`: 72 bytes of header, 48 a frame. */
export function pcapngSlice(path, frames) {
  const slice = path.replace(/(\d+)\.pcapng$/, `$1-first-${frames}.pcapng`)
  writeFileSync(slice, head(path, 72 + 48 * frames))
  return slice
}

/** The first lines of a text. */
export function textSlice(path, lines) {
  const slice = path.replace(/(\d+)\.log$/, `$1-first-${lines}.log`)
  const bytes = head(path, lines * 60)
  let end = 0
  for (let line = 0; line < lines; line++) end = bytes.indexOf(0x0a, end) + 1
  writeFileSync(slice, bytes.subarray(0, end))
  return slice
}
