/**
 * @module Decodes one recording inside this process and prints frames, seconds, processor seconds and the summary.
 *
 *     node scripts/bench/in-process.mjs FILE
 */

import { closeSync, openSync, readSync } from 'node:fs'
import { decodeCapture } from '../../packages/bus/dist/index.js'

const file = openSync(process.argv[2], 'r')
const decoding = decodeCapture({ message: () => {}, finding: () => {} })
const [chunk] = decoding.rooms
const begin = performance.now()
const before = process.cpuUsage()
for (;;) {
  const length = readSync(file, chunk, 0, chunk.length, null)
  if (length === 0) break
  decoding.push(chunk.subarray(0, length))
}
const { summary } = decoding.end()
const { user, system } = process.cpuUsage(before)
closeSync(file)
const seconds = (performance.now() - begin) / 1000
console.log(JSON.stringify({ seconds, processorSeconds: (user + system) / 1e6, summary }))
