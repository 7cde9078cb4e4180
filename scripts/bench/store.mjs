/**
 * @module Measures durable appends against the disk's own rate in the same run, and writes
 * docs/performance-store.md. Called by `npm run bench`; alone:
 *
 *     npx node --conditions=@shearline/source scripts/bench/store.mjs [--quick]
 */

import { generateKeyPairSync, sign, verify } from 'node:crypto'
import {
  closeSync,
  existsSync,
  fdatasyncSync,
  mkdirSync,
  openSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs'
import { cpus, loadavg, release } from 'node:os'
import { join } from 'node:path'
import { openStore } from '@shearline/store'
import { note, OtherDevice } from '../../packages/store/src/testing/devices.ts'
import { PostgresServer, postgresPrograms } from '../../packages/store/src/testing/postgres.ts'
import { median } from './measure.mjs'

const root = join(import.meta.dirname, '..', '..')
const quick = process.argv.includes('--quick')
const rounds = quick ? 3 : 7
const roundMilliseconds = quick ? 700 : 2000
/** Calls that wait at the same time. */
const together = 64
const folder = join(root, '.cache', 'bench', 'store')
rmSync(folder, { recursive: true, force: true })
mkdirSync(folder, { recursive: true })

/** How often a second the disk takes a block of 4096 bytes at the end of a file and says that it has it. */
function syncsPerSecond() {
  const file = join(folder, 'syncs')
  const handle = openSync(file, 'w')
  const block = Buffer.alloc(4096, 1)
  const start = performance.now()
  let syncs = 0
  while (performance.now() - start < roundMilliseconds) {
    writeSync(handle, block)
    fdatasyncSync(handle)
    syncs++
  }
  const rate = (syncs / (performance.now() - start)) * 1000
  closeSync(handle)
  rmSync(file)
  return rate
}

/** How often a second this processor verifies an Ed25519 signature over as many bytes as a fact has. */
function verificationsPerSecond() {
  const { publicKey, privateKey } = generateKeyPairSync('ed25519')
  const text = Buffer.alloc(400, 7)
  const signature = sign(null, text, privateKey)
  let verified = 0
  const start = performance.now()
  while (performance.now() - start < roundMilliseconds / 4)
    if (verify(null, text, publicKey, signature)) verified++
  return (verified / (performance.now() - start)) * 1000
}

/** Signs facts before the clock runs: that is the devices' work, not the store's. */
async function signed(device, count) {
  const facts = []
  for (let i = 0; i < count; i++)
    facts.push(await device.write(note(`job-${i % 20}`, `reading ${i}`, i % 600)))
  return facts
}

/** Appends a second with `inFlight` devices, each sending its next fact when the last was acknowledged. */
async function appendsPerSecond(store, inFlight) {
  const devices = await Promise.all(Array.from({ length: inFlight }, () => OtherDevice.make()))
  for (const { device } of devices) await store.enrol(device)
  const chains = []
  for (const device of devices)
    chains.push(await signed(device, inFlight === 1 ? 2 * roundMilliseconds : roundMilliseconds / 6))
  const start = performance.now()
  let appended = 0
  await Promise.all(
    chains.map(async (chain) => {
      for (const fact of chain) {
        if (performance.now() - start > roundMilliseconds) return
        const outcome = await store.appendFacts([fact], { from: 'device' })
        if (!outcome.ok || outcome.value.accepted !== 1)
          throw new Error(`not accepted: ${JSON.stringify(outcome)}`)
        appended++
      }
    }),
  )
  return (appended / (performance.now() - start)) * 1000
}

/** Measures one store beside the disk, in turn, so that both see the same machine. */
async function measure(what, open) {
  const store = await open()
  const measured = []
  for (let round = 0; round < rounds; round++) {
    const before = syncsPerSecond()
    const one = await appendsPerSecond(store, 1)
    const between = syncsPerSecond()
    const many = await appendsPerSecond(store, together)
    const after = syncsPerSecond()
    // One after another a fact is verified, then on the disk: neither can begin before the other has ended.
    const verified = verificationsPerSecond()
    verifications.push(verified)
    const bound = 1 / (1 / verified + 2 / (before + between))
    measured.push({
      syncs: [before, between, after],
      boundShare: bound / ((before + between) / 2),
      one,
      many,
      oneShare: one / ((before + between) / 2),
      manyShare: many / ((between + after) / 2),
    })
  }
  await store.close()
  const of = (pick) => median(measured.map(pick))
  const rate = (value) => `${value.toFixed(0)} /s`
  const share = (value) => `${(value * 100).toFixed(0)} %`
  const syncs = median(measured.flatMap((round) => round.syncs))
  bounds.push(of(({ boundShare }) => boundShare))
  return [
    `| ${what}, one after another | ${rate(of(({ one }) => one))} | ${rate(syncs)} | ${share(of(({ oneShare }) => oneShare))} | 90 % |`,
    `| ${what}, ${together} at a time | ${rate(of(({ many }) => many))} | ${rate(syncs)} | ${share(of(({ manyShare }) => manyShare))} | 90 % |`,
  ]
}

const load = loadavg()[0]
/** What verifying and syncing alone leave of the disk's rate, one after another. */
const bounds = []
/** Signatures verified a second, in each round. */
const verifications = []
const rows = await measure('SQLite', () => openStore(join(folder, 'data')))
let leftOut = ''
if (postgresPrograms === null) leftOut = '\nNot measured: PostgreSQL (not installed).\n'
else {
  const server = new PostgresServer(folder)
  try {
    const database = await server.makeDatabase()
    rows.push(...(await measure('PostgreSQL', () => openStore(join(folder, 'firm'), { database }))))
  } finally {
    server.remove()
  }
}

const page = join(quick ? join(root, '.cache', 'bench') : join(root, 'docs'), 'performance-store.md')
if (existsSync(folder)) rmSync(folder, { recursive: true, force: true })
writeFileSync(
  page,
  `# Performance of the store

Written by \`npm run bench\`; do not edit. Medians of ${rounds} rounds of ${roundMilliseconds / 1000} s, the disk and the store in turn.

- Machine: ${cpus()[0]?.model.trim()}, ${cpus().length} cores, Linux ${release()}, Node ${process.version}; load average ${load.toFixed(2)} before and ${loadavg()[0].toFixed(2)} after. On a shared machine trust the ratios more than the rates.

| what | durable appends | fdatasync | ratio | aim |
| --- | --- | --- | --- | --- |
${rows.join('\n')}
${leftOut}
## How it was measured

- An append is one call with one signed fact: read, its Ed25519 signature verified, judged against its chain, written, committed, on the disk, answered. The facts were signed before the clock ran.
- "One after another": one device that sends its next fact when the last was acknowledged, so nothing can share a commit. "${together} at a time": ${together} devices that each do so; calls that come together share a commit, and each is answered only after it.
- What is possible one after another: verifying the signature alone, then syncing alone, is ${(median(bounds) * 100).toFixed(0)} % of fdatasync on this machine, so 90 % cannot be reached by a device that waits for each answer unless the disk takes ${(9000 / median(verifications)).toFixed(1)} ms or more for a sync, nine times what a signature takes.
- fdatasync: 4096 bytes written to the end of a file and \`fdatasync\`, one after another, on the same disk in the same run, before and after each measurement.
- SQLite: write-ahead log, \`synchronous=FULL\`. PostgreSQL: a cluster of its own on the same disk with its own defaults (\`fsync\`, \`full_page_writes\` and \`synchronous_commit\` on) and checksums, reached by a socket.
`,
)
console.error(`Written: ${page}`)
