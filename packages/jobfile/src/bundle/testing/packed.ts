/** Bundles for tests: the demo's van, sealed, with its document and kept files; every one invented. */
import { canonicalJson, factHash, sha256OfBytes, treeHeadOfHashes } from '../../chain/index.ts'
import type { Fact } from '../../facts/index.ts'
import { makeHandover } from '../../handover/index.ts'
import { fonts, type SealedJob, sealedJob, vanJob } from '../../handover/testing/jobs.ts'
import { makeRecord } from '../../record/index.ts'
import { TestDevice } from '../../testing/device.ts'
import { type BundleBlob, type BundleInput, writeBundle } from '../index.ts'

export function blobOf(bytes: Uint8Array): BundleBlob {
  return {
    sha256: sha256OfBytes(bytes),
    bytes: bytes.length,
    read: async function* () {
      for (let at = 0; at < bytes.length; at += 5000) yield bytes.slice(at, at + 5000)
    },
  }
}

/** All pieces of a bundle in one. */
export async function packed(input: BundleInput): Promise<Uint8Array> {
  const pieces: Uint8Array[] = []
  for await (const piece of writeBundle(input)) pieces.push(piece)
  return new Uint8Array(Buffer.concat(pieces))
}

export const photo: Uint8Array = new TextEncoder().encode('bytes that stand for a picture\n'.repeat(400))

/** A second device adds a fact that names a kept file, one body is erased, and the first device seals it all. */
export async function vanBundle(): Promise<{ readonly input: BundleInput; readonly job: SealedJob }> {
  // The first facts of the van: the commands of a stranger start some ten programs for each.
  const job = await sealedJob(vanJob().slice(0, 6))
  const office = await TestDevice.create('office "computer"\n```sh\nrm -rf ~\n```')
  // Facts of another job lie between, so that numbers are missing in this one.
  await office.write(
    'note-written',
    { text: 'another job' },
    { job: 'other-job', at: '2026-01-12T09:41:00.000Z' },
  )
  const at = (second: number) => ({ at: `2026-01-12T09:42:0${second}.000Z` })
  await office.write(
    'note-written',
    { text: 'Line one\nline "two", körper, 鍵, "device":"dev-0", \\ and `$(x)`' },
    at(0),
  )
  await office.write(
    'consent-given',
    {
      about: 'clear-faults',
      signer: 'fleet manager',
      signature: sha256OfBytes(photo),
    },
    at(1),
  )
  const tablet = job.tablet
  const erased = (fact: Fact): Fact =>
    fact.kind === 'authority-seen'
      ? { ...fact, body: { erased: sha256OfBytes(canonicalJson(fact.body)) } }
      : fact
  const before = makeRecord(
    'test-job',
    [...tablet.facts, ...office.facts],
    [tablet.device, office.device],
  ).facts
  await tablet.write(
    'document-sealed',
    {
      count: before.length,
      root: treeHeadOfHashes(before.map(factHash)),
      language: 'en',
      ready: false,
      open: ['x'],
    },
    at(5),
  )
  const facts = [...tablet.facts, ...office.facts]
  const whole = makeRecord('test-job', facts, [tablet.device, office.device])
  const document = await makeHandover({
    record: whole,
    language: 'en',
    fonts,
    device: tablet.device,
    sign: tablet.sign,
    madeAt: '2026-01-12T09:42:05.000Z',
  })
  const record = makeRecord('test-job', facts.map(erased), [tablet.device, office.device])
  const input = {
    record,
    blobs: [blobOf(photo)],
    documents: [blobOf(document)],
    packer: office.device,
    sign: office.sign,
  }
  return { input, job }
}
