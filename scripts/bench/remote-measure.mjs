/**
 * @module Measures radio recordings again and again in one process and prints samples, seconds on the wall and of the
 * processor: ROUNDS WARM-ROUNDS, then RATE FILE for each. The files are in memory before the clock starts.
 */

import { readFileSync } from 'node:fs'
import { IqReader, measureRemote } from '../../packages/keywork/dist/index.js'

const [rounds = '10', warm = '5', ...rest] = process.argv.slice(2)
const recordings = Array.from({ length: rest.length / 2 }, (_, at) => ({
  sampleRateHz: Number(rest[2 * at]),
  bytes: new Uint8Array(readFileSync(rest[2 * at + 1])),
}))

function measureAll() {
  let samples = 0
  for (const { sampleRateHz, bytes } of recordings) {
    const reader = new IqReader('cu8')
    reader.push(bytes)
    const iq = reader.finish()
    samples += iq.samples
    measureRemote(iq, { sampleRateHz, centreHz: null })
  }
  return samples
}

for (let round = 0; round < Number(warm); round++) measureAll()
const began = performance.now()
const before = process.cpuUsage()
let samples = 0
for (let round = 0; round < Number(rounds); round++) samples += measureAll()
const { user, system } = process.cpuUsage(before)
console.log(
  JSON.stringify({ samples, wall: (performance.now() - began) / 1000, processor: (user + system) / 1e6 }),
)
