/** @module Proves a bundle, or says which file, fact or byte of it was changed. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import { z } from 'zod'
import { type Device, factHash, toBase64Url, type Verifier } from '../chain/index.ts'
import { verifyHandover } from '../handover/index.ts'
import { type JobRecord, verifyRecord } from '../record/index.ts'
import { type BundleCheck, type BundleFinding, wrongPart } from './findings.ts'
import { chainFiles, factsFile, keyFiles, keyName, names } from './layout.ts'
import { type ByteAccess, piecesOfEntry, readDirectory, type ZipEntry } from './unzip.ts'
import { ZipWriter } from './zip.ts'

const devicesForm = z.strictObject({
  devices: z.array(z.strictObject({ device: z.string(), name: z.string(), publicKey: z.string() })),
  packedBy: z.string(),
})

/** What was read of the files of a bundle. */
interface Files {
  /** SHA-256 of every file by name. */
  readonly sums: ReadonlyMap<string, string>
  /** Bytes of the small ones. */
  readonly small: ReadonlyMap<string, Uint8Array>
  readonly findings: readonly BundleFinding[]
}

/**
 * Proves a bundle: every byte of the zip against its own content, every file against the signed list, every fact and
 * document. Large files are read in pieces. Never throws on malformed bytes; needs no network.
 */
export async function verifyBundle(access: ByteAccess, verifier: Verifier): Promise<BundleCheck> {
  const nothing = { proven: false, facts: 0, signatures: 0, hashes: 0, record: null, packedBy: null }
  const directory = await readDirectory(access)
  if ('wrongAt' in directory) {
    const where = { part: 'zip', byteOffset: directory.wrongAt }
    return { ...nothing, findings: [wrongPart('bundle-unreadable', where, directory.what)] }
  }
  const { entries } = directory
  const files = await readFiles(access, entries)
  const findings: BundleFinding[] = [...files.findings]
  const list = checkList(files)
  findings.push(...list.findings)
  const keys = readKeys(files)
  if (keys === null)
    findings.push(wrongPart('keys-unreadable', { part: names.devices }, 'The keys cannot be read.'))
  const listBytes = files.small.get(names.list)
  const signature = files.small.get(names.listSignature)
  const packer = keys?.devices.find(({ device }) => device === keys.packedBy)
  const listSigned =
    packer !== undefined &&
    listBytes !== undefined &&
    signature !== undefined &&
    (await verifier.verify(packer.publicKey, toBase64Url(signature), new Uint8Array(listBytes)))
  if (!listSigned && listBytes !== undefined) {
    const what = `The list of files is not the one that ${keys?.packedBy ?? 'its packer'} signed.`
    findings.push(wrongPart('list-signature-wrong', { part: names.list }, what))
  }
  const read = readRecord(files, keys)
  if (read === null)
    findings.push(wrongPart('facts-unreadable', { part: names.facts }, 'The facts cannot be read.'))
  const check = read === null ? null : await verifyRecord(read, verifier)
  findings.push(...(check?.findings ?? []))
  const record = check?.record ?? null
  if (record !== null) findings.push(...checkCopies(files, record, keys))
  let { signatures, hashes } = { signatures: check?.signatures ?? 0, hashes: check?.links ?? 0 }
  for (const entry of entries.filter(({ name }) => name.startsWith('documents/'))) {
    const document = await verifyHandover(await access.read(entry.from, entry.to), verifier)
    signatures += document.signatures - document.facts
    hashes += document.hashes
    for (const found of document.findings) {
      const part = [entry.name, found.where.part].filter((words) => words !== undefined).join(', ')
      findings.push({ ...found, where: { ...found.where, part } })
    }
    if (record !== null && document.record !== null && !holds(record, document.record))
      findings.push(
        wrongPart(
          'document-of-other-record',
          { part: entry.name },
          'The document states facts that the record does not hold.',
        ),
      )
  }
  return {
    proven: !findings.some(({ severity }) => severity === 'error'),
    facts: check?.facts ?? 0,
    signatures: signatures + (listSigned ? 1 : 0),
    hashes: hashes + list.right,
    record,
    packedBy: listSigned ? (keys?.packedBy ?? null) : null,
    findings,
  }
}

/** Reads every file once, hashing it, and packs it again: the zip must come out byte for byte. */
async function readFiles(access: ByteAccess, entries: readonly ZipEntry[]): Promise<Files> {
  const sums = new Map<string, string>()
  const small = new Map<string, Uint8Array>()
  const zip = await ZipWriter.create()
  let at = 0
  let changed: BundleFinding | null = null
  const compare = async (pieces: readonly Uint8Array[], part: string): Promise<void> => {
    for (const piece of pieces) {
      const actual = await access.read(Math.min(at, access.size), Math.min(at + piece.length, access.size))
      const place = piece.findIndex((byte, index) => byte !== actual[index])
      if (place >= 0) {
        const what = `From byte ${at + place} on the zip is not what its files make it.`
        changed ??= wrongPart('bundle-bytes-changed', { part, byteOffset: at + place }, what)
      }
      at += piece.length
    }
  }
  for (const entry of entries) {
    const hasher = sha256.create()
    const kept: Uint8Array[] = []
    const isLarge = /^(blobs|documents)\//.test(entry.name)
    zip.begin(entry.name)
    for await (const piece of piecesOfEntry(access, entry)) {
      hasher.update(piece)
      if (!isLarge) kept.push(piece.slice())
      await compare(zip.push(piece), entry.name)
    }
    await compare(zip.endFile(), entry.name)
    sums.set(entry.name, bytesToHex(hasher.digest()))
    if (!isLarge) small.set(entry.name, joined(kept))
  }
  await compare(zip.end(), 'directory of the zip')
  return { sums, small, findings: changed === null ? [] : [changed] }
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const [only] = pieces
  if (pieces.length === 1 && only !== undefined) return only
  const out = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0))
  let at = 0
  for (const piece of pieces) {
    out.set(piece, at)
    at += piece.length
  }
  return out
}

/** Holds every file against the list, and kept files against their names. */
function checkList(files: Files): { readonly right: number; readonly findings: readonly BundleFinding[] } {
  const bytes = files.small.get(names.list)
  if (bytes === undefined)
    return {
      right: 0,
      findings: [wrongPart('list-missing', { part: names.list }, 'The list of files is not there.')],
    }
  const findings: BundleFinding[] = []
  const listed = new Map<string, string>()
  for (const line of new TextDecoder().decode(bytes).split('\n')) {
    const match = /^([0-9a-f]{64}) {2}(.+)$/.exec(line)
    if (match?.[1] !== undefined && match[2] !== undefined) listed.set(match[2], match[1])
  }
  let right = 0
  for (const [name, sum] of listed) {
    const found = files.sums.get(name)
    const ownName = /^(?:blobs|documents)\/([0-9a-f]{64})/.exec(name)?.[1]
    if (found === undefined)
      findings.push(wrongPart('file-missing', { part: name }, 'It was packed and is not there.'))
    else if (found !== sum || (ownName !== undefined && ownName !== found))
      findings.push(wrongPart('file-changed', { part: name }, 'Its content is not the one that was packed.'))
    else right++
  }
  for (const name of files.sums.keys())
    if (!listed.has(name) && name !== names.list && name !== names.listSignature)
      findings.push(wrongPart('file-added', { part: name }, 'It was not packed; somebody added it.'))
  return { right, findings }
}

type Keys = z.infer<typeof devicesForm>

function readKeys(files: Files): Keys | null {
  const read = devicesForm.safeParse(jsonOf(files.small.get(names.devices)))
  return read.success ? read.data : null
}

/** The record as the files state it, not yet proven. */
function readRecord(files: Files, keys: Keys | null): unknown {
  const bytes = files.small.get(names.facts)
  if (bytes === undefined || keys === null) return null
  const facts = new TextDecoder()
    .decode(bytes)
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => jsonOf(new TextEncoder().encode(line)) ?? { kind: 'unreadable line' })
  const job = facts.map((fact) => (fact as { job?: unknown }).job).find((name) => typeof name === 'string')
  const wrote = new Set(facts.map((fact) => (fact as { device?: unknown }).device))
  const devices: readonly Device[] = keys.devices.filter(({ device }) => wrote.has(device))
  return { format: 'shearline-record', version: 1, job: job ?? '', facts, devices }
}

function jsonOf(bytes: Uint8Array | undefined): unknown {
  if (bytes === undefined) return null
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return null
  }
}

/** The files a stranger checks must say what the record says. */
function checkCopies(files: Files, record: JobRecord, keys: Keys | null): readonly BundleFinding[] {
  const expected = new Map(
    [
      factsFile(record),
      ...record.facts.flatMap(chainFiles),
      ...(keys === null ? [] : keyFiles(keys.devices, keys.packedBy)),
    ].map(({ name, bytes }) => [name, bytes] as const),
  )
  const findings: BundleFinding[] = []
  for (const [name, bytes] of expected) {
    const found = files.small.get(name)
    if (found?.length !== bytes.length || bytes.some((byte, at) => byte !== found[at]))
      findings.push(
        wrongPart(
          'chain-file-wrong',
          { part: name },
          'It does not say what the facts and keys of the bundle say.',
        ),
      )
  }
  for (const name of files.small.keys())
    if ((name.startsWith('chain/') || name.startsWith('keys/')) && !expected.has(name))
      findings.push(
        wrongPart('chain-file-wrong', { part: name }, 'It belongs to no fact and no device of the bundle.'),
      )
  if (keys !== null && !files.small.has(keyName(keys.packedBy)))
    findings.push(
      wrongPart('keys-unreadable', { part: names.devices }, 'The key of the packer is not there.'),
    )
  return findings
}

/** True when every fact of one record stands in the other. A body deleted since still answers with its hash. */
function holds(record: JobRecord, other: JobRecord): boolean {
  const hashes = new Set(record.facts.map(factHash))
  return other.facts.every((fact) => hashes.has(factHash(fact)))
}
