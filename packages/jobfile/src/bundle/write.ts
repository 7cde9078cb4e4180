/** @module Packs the record of a job so that a stranger can check it with openssl and sha256sum. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import { type Device, type Sign, sha256OfBytes } from '../chain/index.ts'
import type { JobRecord } from '../record/index.ts'
import { type BundleFile, blobsNamed, chainFiles, factsFile, keyFiles, names } from './layout.ts'
import { readmeText } from './readme.ts'
import { ZipWriter } from './zip.ts'

/** Bytes kept by their SHA-256, read when their turn comes. */
export interface BundleBlob {
  readonly sha256: string
  readonly bytes: number
  read(): AsyncIterable<Uint8Array>
}

export interface BundleInput {
  readonly record: JobRecord
  /** What the facts name and is here. */
  readonly blobs: readonly BundleBlob[]
  /** Sealed documents of the job. */
  readonly documents: readonly BundleBlob[]
  /** The page that proves bundle and documents in a browser, to lie beside them; none when left out. */
  readonly page?: Uint8Array | undefined
  /** Who packs, and its signature over the list of files. */
  readonly packer: Device
  readonly sign: Sign
}

/** Why a bundle cannot be written. */
export class BundleRefused extends Error {
  constructor(what: string, doNext: string) {
    super(`${what} ${doNext}`)
    this.name = 'BundleRefused'
  }
}

/** The older zip format counts in 32 bits and its files in 16; the newer one is not read everywhere. */
const mostBytes = 0xffff_ffff
const mostFiles = 0xffff

/**
 * Writes a bundle piece by piece. The same input gives the same bytes, anywhere and at any time (Ed25519 signatures
 * are deterministic, RFC 8032). Throws BundleRefused when it would be too large, or a blob is not what it is named.
 */
export async function* writeBundle(input: BundleInput): AsyncGenerator<Uint8Array> {
  const { record, packer } = input
  const devices = withPacker(record.devices, packer)
  const blobs = ordered(input.blobs, (sha256) => `blobs/${sha256}`)
  const documents = ordered(input.documents, (sha256) => `documents/${sha256}.pdf`)
  const present = new Set(blobs.map(({ blob }) => blob.sha256))
  const missing = [...blobsNamed(record)].filter(([sha256]) => !present.has(sha256))
  const small: BundleFile[] = [
    {
      name: names.readme,
      bytes: new TextEncoder().encode(
        readmeText({
          record,
          devices,
          packer,
          missing,
          documents: documents.length,
          page: input.page !== undefined,
        }),
      ),
    },
    ...(input.page === undefined ? [] : [{ name: names.page, bytes: input.page }]),
    factsFile(record),
    ...keyFiles(devices, packer.device),
    ...record.facts.flatMap(chainFiles).sort((a, b) => (a.name < b.name ? -1 : 1)),
  ]
  const large = [...blobs, ...documents]
  refuseTooLarge(small, large)
  const list = listOf([
    ...small.map(({ name, bytes }) => ({ name, sum: sha256OfBytes(bytes) })),
    ...large.map(({ name, blob }) => ({ name, sum: blob.sha256 })),
  ])
  const listBytes = new TextEncoder().encode(list)
  const signed = await input.sign(listBytes)
  const zip = await ZipWriter.create()
  const [readme, ...rest] = small
  const all = [
    readme,
    { name: names.list, bytes: listBytes },
    { name: names.listSignature, bytes: signed },
    ...rest,
  ]
  for (const file of all) {
    if (file === undefined) continue
    zip.begin(file.name)
    yield* zip.push(file.bytes)
    yield* zip.endFile()
  }
  for (const { name, blob } of large) {
    const hasher = sha256.create()
    zip.begin(name)
    for await (const piece of blob.read()) {
      hasher.update(piece)
      yield* zip.push(piece)
    }
    yield* zip.endFile()
    if (bytesToHex(hasher.digest()) !== blob.sha256)
      throw new BundleRefused(
        `The kept file ${blob.sha256} was changed.`,
        'Run "shearline doctor" and mend it first.',
      )
  }
  yield* zip.end()
}

function withPacker(devices: readonly Device[], packer: Device): readonly Device[] {
  const known = devices.some(({ device }) => device === packer.device)
  return [...devices, ...(known ? [] : [packer])].sort((a, b) => (a.device < b.device ? -1 : 1))
}

function ordered(blobs: readonly BundleBlob[], nameOf: (sha256: string) => string) {
  const each = new Map(blobs.map((blob) => [blob.sha256, blob]))
  return [...each.values()]
    .sort((a, b) => (a.sha256 < b.sha256 ? -1 : 1))
    .map((blob) => ({ name: nameOf(blob.sha256), blob }))
}

function refuseTooLarge(
  small: readonly BundleFile[],
  large: readonly { readonly name: string; readonly blob: BundleBlob }[],
): void {
  const files = small.length + large.length + 2
  // Every file stands with its name twice and some 100 bytes of zip around it.
  const frame = files * 400
  const bytes =
    small.reduce((sum, file) => sum + file.bytes.length, frame) +
    large.reduce((sum, { blob }) => sum + blob.bytes, 0)
  if (files < mostFiles && bytes < mostBytes) return
  throw new BundleRefused(
    `The bundle would hold ${files} files and some ${bytes} bytes: more than a zip can (65,534 files, 4 GiB).`,
    'Hand over the data folder instead; "shearline verify" proves it as well.',
  )
}

/** A list as sha256sum writes and checks it. */
function listOf(files: readonly { readonly name: string; readonly sum: string }[]): string {
  return files.map(({ name, sum }) => `${sum}  ${name}\n`).join('')
}
