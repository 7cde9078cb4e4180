/** @module Proves a file or folder, whichever it is by its content, and answers in one form for all of them. */
import { webcrypto } from 'node:crypto'
import { mkdtemp, open, rm, stat, symlink } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { basename, dirname, join, resolve } from 'node:path'
import { describeWhere, type Finding } from '@shearline/bus'
import {
  accessTo,
  type ByteAccess,
  type Coverage,
  type GivenCheck,
  type HandoverCheck,
  looksLikeZip,
  Verifier,
  verifyGiven,
} from '@shearline/jobfile'
import { examine, StoreError } from '@shearline/store'
import { CouldNot } from '../output/answer.ts'
import { bytesOf } from '../output/input.ts'

/** One thing found, its place in words. */
interface Found {
  readonly severity: Finding['severity']
  readonly where: string
  readonly what: string
  readonly doNext: string
}

/** What was proven of a document, record, bundle or data folder. */
export interface Proof {
  readonly proven: boolean
  readonly facts: number
  readonly signatures: number
  readonly hashes: number
  readonly findings: readonly Found[]
  /** Of a document: which bytes its seal covers, and whether its pages state what its record states. */
  readonly document?: Pick<HandoverCheck, 'pages'> & { readonly coverage: Coverage | null }
}

/** Proves what is given. Throws CouldNot when there is nothing to prove. */
export async function prove(given: string): Promise<Proof> {
  if (given === '-') return proveBytes(await bytesOf('-'))
  const found = await stat(given).catch(() => null)
  if (found === null) throw new CouldNot(`${given} does not exist.`, 'Check the name and the folder.')
  if (found.isDirectory()) return proveFolder(given)
  const head = await headOf(given)
  if (looksLikeZip(head)) return proveBundleFile(given, found.size)
  if (new TextDecoder('latin1').decode(head).startsWith('SQLite format 3\0')) return proveDatabase(given)
  return proveBytes(await bytesOf(given))
}

async function proveBytes(bytes: Uint8Array): Promise<Proof> {
  return answered(await verifyGiven(accessTo(bytes), new Verifier(webcrypto.subtle)))
}

function answered(given: GivenCheck): Proof {
  const { proven, facts, signatures, hashes } = given.check
  const findings = given.check.findings.map(({ severity, where, what, doNext }: Finding<string>) => ({
    severity,
    where: describeWhere(where),
    what,
    doNext,
  }))
  const proof = { proven, facts, signatures, hashes, findings }
  if (given.what === 'bundle' || given.check.sealedBy === null) return proof
  const { coverage, pages } = given.check
  return { ...proof, document: { coverage, pages } }
}

async function headOf(file: string): Promise<Uint8Array> {
  const handle = await opened(file)
  try {
    const { buffer, bytesRead } = await handle.read(new Uint8Array(16), 0, 16, 0)
    return buffer.subarray(0, bytesRead)
  } finally {
    await handle.close()
  }
}

/** A bundle is read where it lies: a recording in it may be larger than the memory. */
async function proveBundleFile(file: string, size: number): Promise<Proof> {
  const handle = await opened(file)
  try {
    const access: ByteAccess = {
      size,
      read: async (from, to) => {
        const bytes = new Uint8Array(to - from)
        const { bytesRead } = await handle.read(bytes, 0, bytes.length, from)
        return bytes.subarray(0, bytesRead)
      },
    }
    return answered(await verifyGiven(access, new Verifier(webcrypto.subtle)))
  } finally {
    await handle.close()
  }
}

async function opened(file: string) {
  return open(file, 'r').catch((error: NodeJS.ErrnoException) => {
    throw new CouldNot(`${file} could not be read (${error.message}).`, 'Check its permissions.')
  })
}

/** A data folder: every fact, signature, link, kept file and document, without changing anything. */
async function proveFolder(data: string): Promise<Proof> {
  try {
    const { sound, looked, findings } = await examine({ data })
    return {
      proven: sound,
      facts: looked.facts,
      signatures: looked.signatures,
      hashes: looked.links + looked.blobs,
      findings,
    }
  } catch (error) {
    if (error instanceof StoreError) throw new CouldNot(error.what, error.doNext)
    throw error
  }
}

/** Findings that only say that a database file stands alone. */
const standsAlone: ReadonlySet<string> = new Set(['blob-missing', 'key-missing'])

/** A database file: with the folder it lies in, or alone, when its kept files are elsewhere and are not looked at. */
async function proveDatabase(file: string): Promise<Proof> {
  if (basename(file) === 'shearline.sqlite') return proveFolder(dirname(resolve(file)))
  const folder = await mkdtemp(join(tmpdir(), 'shearline-verify-'))
  try {
    await symlink(resolve(file), join(folder, 'shearline.sqlite'))
    const { looked, findings } = await examine({ data: folder })
    const own = findings.filter(({ code }) => !standsAlone.has(code))
    const absent = findings.filter(({ code }) => code === 'blob-missing').length
    const alone: Found = {
      severity: 'warning',
      where: basename(file),
      what: `It names ${absent} kept files that do not lie beside it; they were not looked at.`,
      doNext: 'Verify the data folder to prove them too.',
    }
    return {
      proven: !own.some(({ severity }) => severity === 'error'),
      facts: looked.facts,
      signatures: looked.signatures,
      hashes: looked.links,
      findings: absent === 0 ? own : [...own, alone],
    }
  } catch (error) {
    if (error instanceof StoreError) throw new CouldNot(error.what, error.doNext)
    throw error
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}
