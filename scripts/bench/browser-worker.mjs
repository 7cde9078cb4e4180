/** @module Runs in a browser's worker: decodes the File it is sent and answers with seconds and the summary. */

import { decodeCapture } from '../../packages/bus/dist/index.js'

const PIECE_BYTES = 1 << 20

globalThis.onmessage = async ({ data: file }) => {
  const decoding = decodeCapture({ message: () => {}, finding: () => {} })
  const reader = file.stream().getReader({ mode: 'byob' })
  let buffer = new ArrayBuffer(PIECE_BYTES)
  const begin = performance.now()
  for (;;) {
    const { value, done } = await reader.read(new Uint8Array(buffer))
    if (done) break
    decoding.push(value)
    buffer = value.buffer
  }
  const { summary } = decoding.end()
  globalThis.postMessage({ seconds: (performance.now() - begin) / 1000, summary })
}
