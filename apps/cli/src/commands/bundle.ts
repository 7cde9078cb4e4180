import { randomUUID } from 'node:crypto'
import { createWriteStream } from 'node:fs'
import { rename, rm } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { type BundleBlob, BundleRefused, blobsNamed, type Fact, writeBundle } from '@shearline/jobfile'
import { recordOf, type Store } from '@shearline/store'
import { type DataFlags, withStore } from '../job/data.ts'
import { CouldNot, countOf, print, printJson } from '../output/answer.ts'
import { verifyPage } from '../verify/page.ts'

/** Options of `shearline job export`. */
export interface BundleFlags extends DataFlags {
  readonly json?: boolean
  readonly bundle?: string
  readonly withSecrets?: boolean
  readonly withPage?: boolean
}

/** `shearline job export JOB --bundle FILE`: the job as one zip, written whole or not at all. */
export function exportBundle(job: string, file: string, flags: BundleFlags): Promise<void> {
  return withStore(flags, async (store) => {
    const facts = await store.factsOfJob(job)
    if (facts.length === 0)
      throw new CouldNot(`There is no job "${job}".`, 'List them with: shearline job list.')
    const record = await recordOf(store, job, facts)
    const secrets = flags.withSecrets === true ? new Set<string>() : sealedSecrets(facts)
    const named = [...blobsNamed(record).keys()].filter((sha256) => !secrets.has(sha256))
    const blobs = await blobsOf(store, named)
    const sealed = new Set((await store.documentsOf(job)).map(({ blob }) => blob))
    const documents = await blobsOf(store, [...sealed])
    const page = flags.withPage === true ? await verifyPage() : undefined
    const packed = writeBundle({ record, blobs, documents, page, packer: store.device, sign: store.sign })
    const beside = `${file}.${randomUUID().slice(0, 8)}.part`
    try {
      await pipeline(Readable.from(packed), createWriteStream(beside, { flags: 'wx', flush: true }))
      await rename(beside, file)
    } catch (error) {
      await rm(beside, { force: true })
      if (error instanceof BundleRefused) throw new CouldNot(error.message, '')
      throw error
    }
    const counts = { facts: facts.length, blobs: blobs.length, documents: documents.length }
    const missing = blobsNamed(record).size - blobs.length
    if (flags.json === true) printJson({ job, file, ...counts, missing })
    else
      print(
        `${file}: ${countOf(counts.facts, 'fact')}, ${countOf(counts.blobs, 'file')}, ${countOf(counts.documents, 'sealed document')}` +
          `${missing === 0 ? '' : `; ${countOf(missing, 'named file is', 'named files are')} not in it (see its README)`}. It says itself how to check it.`,
      )
  })
}

/** SHA-256 of the job's sealed vehicle secrets: a copy handed out could not be deleted when its time is over. */
function sealedSecrets(facts: readonly Fact[]): ReadonlySet<string> {
  return new Set(facts.filter(({ kind }) => kind === 'secret-sealed').map(({ body }) => String(body.blob)))
}

/** Those of these blobs that are here. */
async function blobsOf(store: Store, named: readonly string[]): Promise<readonly BundleBlob[]> {
  const found: BundleBlob[] = []
  for (const sha256 of named) {
    const entry = await store.blobEntry(sha256)
    if (entry !== null) found.push({ sha256, bytes: entry.bytes, read: () => readBlob(store, sha256) })
  }
  return found
}

async function* readBlob(store: Store, sha256: string): AsyncGenerator<Uint8Array> {
  const found = await store.openBlob(sha256)
  if (found === null)
    throw new BundleRefused(
      `The kept file ${sha256} is not there.`,
      'Run "shearline doctor" and mend it first.',
    )
  yield* found.stream
}
