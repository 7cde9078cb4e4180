/**
 * Runs on a small disk of its own: writes facts until the disk is full, then a blob, then makes room and goes on.
 * Prints one JSON line with what happened. Argument: a folder on that disk.
 */
import { createHash, webcrypto } from 'node:crypto'
import { rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { Verifier, verifyFacts } from '@shearline/jobfile'
import { openStore, StoreError } from '../index.ts'
import { note } from './devices.ts'

const folder = process.argv[2] ?? ''
const ballast = join(folder, 'ballast')
await writeFile(ballast, Buffer.alloc(1_500_000))
const store = await openStore(join(folder, 'data'))

const codes: string[] = []
async function attempt(work: () => Promise<unknown>): Promise<void> {
  try {
    await work()
  } catch (error) {
    codes.push(error instanceof StoreError ? error.code : String(error))
  }
}

let acknowledged = 0
while (codes.length === 0) {
  await attempt(async () => {
    await store.writeOwn([note('job-a', 'x'.repeat(1500), acknowledged % 600)])
    acknowledged++
  })
}
const bytes = Buffer.alloc(3_000_000, 7)
const sha256 = createHash('sha256').update(bytes).digest('hex')
await attempt(() => store.putBlob(sha256, 'text/plain', Readable.from([bytes])))
const blobKept = (await store.blobEntry(sha256)) !== null
const keptWhileFull = (await store.factsOfJob('job-a')).length
await rm(ballast)
await store.writeOwn([note('job-a', 'there is room again')])
const facts = await store.factsOfJob('job-a')
const check = await verifyFacts(facts, [store.device], new Verifier(webcrypto.subtle))
await store.close()
const findings = check.findings.map(({ what }) => what)
console.log(JSON.stringify({ acknowledged, codes, blobKept, keptWhileFull, after: facts.length, findings }))
