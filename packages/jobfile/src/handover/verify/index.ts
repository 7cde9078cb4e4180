/** @module Proves a handover document, or says which fact, page or other part was changed. */
import { deviceIdOf, factHash, fromBase64Url, sha256OfBytes, type Verifier } from '../../chain/index.ts'
import type { JobRecord } from '../../record/index.ts'
import { latin1 } from '../pdf/bytes.ts'
import { PdfFile } from '../pdf/file.ts'
import { type Manifest, manifestBytes, partsListed, type Seal } from '../seal/manifest.ts'
import { type CoveredPart, coveredParts } from './coverage.ts'
import { findSeal, looksLikePdf } from './find-seal.ts'
import { askAgain, finding, type HandoverCheck, type HandoverFinding } from './findings.ts'
import { checkInvoice } from './invoice.ts'
import { checkPages } from './pages.ts'
import { readRecord, recordPlace } from './record.ts'
import { checkUpdate } from './update.ts'

export type { Coverage, CoveredPart } from './coverage.ts'
export type {
  HandoverCheck,
  HandoverFinding,
  HandoverFindingCode,
} from './findings.ts'

/**
 * Proves a handover document: the seal's signature, every byte of the file against the seal, every fact of the
 * attached record, and that the pages state what the record states. Names what is wrong by fact, page or part.
 * Never throws, whatever the bytes are. Needs no network and no fonts.
 */
export async function verifyHandover(bytes: Uint8Array, verifier: Verifier): Promise<HandoverCheck> {
  const findings: HandoverFinding[] = []
  const found = findSeal(bytes)
  const seal = found.seal
  if (seal === null) findings.push(found.finding)
  const signed = seal !== null && (await isSigned(seal, verifier))
  if (seal !== null && !signed)
    findings.push(
      finding(
        'seal-signature-wrong',
        { part: 'seal' },
        'The seal and its signature do not belong together: one of them was changed.',
        askAgain,
      ),
    )
  // A seal whose signature is wrong accuses no part: its own list may be what was changed.
  const trusted = signed ? seal : null
  const parts = trusted === null ? [] : coveredParts(bytes, partsListed(trusted.manifest))
  const changed = parts.filter(({ whole }) => !whole)
  findings.push(...changed.map(partChanged))

  const sealedEnd = parts.at(-1)?.to ?? bytes.length
  const base = PdfFile.open(bytes.subarray(0, Math.min(sealedEnd, bytes.length)))
  // With a changed base its trailer may be unreadable; the changed part is already named.
  const updated =
    trusted === null || base === null || changed.length > 0
      ? null
      : checkUpdate(bytes, base, sealedEnd, trusted)
  findings.push(...(updated ?? []))

  const place = recordPlace(bytes, base, trusted?.manifest.record ?? null)
  const nameAt = (offset: number) =>
    parts.find(({ from, to }) => from <= offset && offset < to)?.name ?? 'record'
  if (place === null)
    findings.push(
      finding('record-missing', { part: 'signed record' }, 'The file holds no signed record.', askAgain),
    )
  const read = place === null ? null : await readRecord(bytes, place, verifier, nameAt)
  findings.push(...(read?.findings ?? []))
  const record = read?.check?.record ?? null
  if (trusted !== null && record !== null) findings.push(...checkBelonging(trusted.manifest, record))
  const recordProven = read?.check?.proven === true
  const compared =
    trusted !== null && record !== null && recordProven && base !== null
      ? pagesOrFinding(base, record, trusted.manifest)
      : null
  findings.push(...(compared ?? []))
  const sealWhole = updated === null ? null : updated.length === 0
  const everyByte = sealWhole === true

  return {
    proven: !findings.some(({ severity }) => severity === 'error'),
    facts: read?.check?.facts ?? 0,
    signatures: (read?.check?.signatures ?? 0) + (signed ? 1 : 0),
    hashes: (read?.check?.links ?? 0) + parts.length - changed.length,
    sealed: read?.check?.sealed ?? false,
    record,
    sealedBy: trusted === null ? null : sealer(trusted.manifest, record),
    coverage:
      trusted === null ? null : { bytes: bytes.length, parts, sealAt: sealedEnd, sealWhole, everyByte },
    pages: pagesAnswer(compared, everyByte),
    findings,
  }
}

async function isSigned({ manifest, signature }: Seal, verifier: Verifier): Promise<boolean> {
  const key = fromBase64Url(manifest.publicKey)
  if (key?.length !== 32 || deviceIdOf(key) !== manifest.device) return false
  return verifier.verify(manifest.publicKey, signature, manifestBytes(manifest))
}

function partChanged({ name, from, to }: CoveredPart): HandoverFinding {
  return finding(
    'part-changed',
    { part: name, byteOffset: from },
    `Bytes ${from} to ${to - 1} of the file are not the ones that were sealed.`,
    askAgain,
  )
}

/** The sealing device wrote in this record, and the seal is about the record's own latest seal. */
function checkBelonging(manifest: Manifest, record: JobRecord): readonly HandoverFinding[] {
  const findings: HandoverFinding[] = []
  const listed = record.devices.find(({ device }) => device === manifest.device)
  if (listed?.publicKey !== manifest.publicKey)
    findings.push(
      finding(
        'seal-of-stranger',
        { part: 'seal' },
        `The file was sealed by ${manifest.device}, which wrote no fact of the record.`,
        askAgain,
      ),
    )
  const sealed = record.facts.findLast((fact) => fact.kind === 'document-sealed')
  const hash = sealed === undefined ? null : factHash(sealed)
  if (hash !== manifest.sealFact || record.job !== manifest.job)
    findings.push(
      finding(
        'seal-of-other-record',
        { part: 'signed record' },
        'The seal of the file was made for another state of the record.',
        askAgain,
      ),
    )
  return findings
}

/** What a comparison of pages and record came to; null stands for none. Changed bytes elsewhere may change a page. */
function pagesAnswer(
  compared: readonly HandoverFinding[] | null,
  everyByte: boolean,
): HandoverCheck['pages'] {
  if (compared === null || compared.some(({ code }) => code === 'page-not-compared')) return 'not-compared'
  if (compared.length > 0) return 'differ'
  return everyByte ? 'state-the-record' : 'not-compared'
}

function pagesOrFinding(base: PdfFile, record: JobRecord, manifest: Manifest): readonly HandoverFinding[] {
  try {
    return [...checkPages(base, record, manifest), ...checkInvoice(base, record, manifest)]
  } catch {
    const what =
      'The text of the document could not be derived from the record, so the pages were not compared.'
    return [finding('page-not-compared', { part: 'pages' }, what, askAgain)]
  }
}

function sealer(manifest: Manifest, record: JobRecord | null): HandoverCheck['sealedBy'] {
  const key = fromBase64Url(manifest.publicKey) ?? new Uint8Array(0)
  const name = record?.devices.find(({ device }) => device === manifest.device)?.name ?? ''
  return { device: manifest.device, name, fingerprint: sha256OfBytes(key) }
}

/** Where a JSON object begins, after blanks or a byte order mark; null when the bytes do not begin like one. */
function jsonStart(bytes: Uint8Array): number | null {
  const head = latin1(bytes.subarray(0, 256))
  const match = /^(?:\xef\xbb\xbf)?\s*(?=\{\s*["}])/.exec(head)
  return match === null ? null : match[0].length
}

/**
 * Proves a file that is a handover document or a bare record as JSON, whichever it is by its content. Never throws.
 */
export async function verifyFile(bytes: Uint8Array, verifier: Verifier): Promise<HandoverCheck> {
  const first = jsonStart(bytes)
  if (first === null && looksLikePdf(bytes)) return verifyHandover(bytes, verifier)
  const nothing: HandoverCheck = {
    proven: false,
    facts: 0,
    signatures: 0,
    hashes: 0,
    sealed: false,
    record: null,
    sealedBy: null,
    coverage: null,
    pages: 'not-compared',
    findings: [],
  }
  if (first === null) {
    const what = 'This is neither a handover document (PDF) nor a record (JSON).'
    const doNext = 'Give the file that the firm handed over.'
    return { ...nothing, findings: [finding('not-a-document', { part: 'file' }, what, doNext)] }
  }
  const read = await readRecord(bytes, { from: first, to: bytes.length }, verifier, () => 'record')
  const check = read.check
  if (check === null) return { ...nothing, findings: read.findings }
  const { proven, facts, signatures, sealed, record, links } = check
  return { ...nothing, proven, facts, signatures, hashes: links, sealed, record, findings: read.findings }
}
