import type { Finding } from '@shearline/bus'
import type { JobRecord, RecordFindingCode } from '../../record/index.ts'
import type { Coverage } from './coverage.ts'

export type HandoverFindingCode =
  | RecordFindingCode
  | 'not-a-document'
  | 'seal-missing'
  | 'seal-unreadable'
  | 'seal-signature-wrong'
  | 'seal-changed'
  | 'seal-of-stranger'
  | 'seal-of-other-record'
  | 'bytes-after-seal'
  | 'part-changed'
  | 'record-unreadable'
  | 'record-missing'
  | 'page-does-not-follow'
  | 'page-not-compared'
  | 'invoice-does-not-follow'

export type HandoverFinding = Finding<HandoverFindingCode>

/** What verification says of a file. */
export interface HandoverCheck {
  /** True when every byte is the one that was sealed, every fact is proven, and the pages state the record. */
  readonly proven: boolean
  /** Facts in the record. */
  readonly facts: number
  /** Signatures that were right: one for each proven fact, one for the seal of the file. */
  readonly signatures: number
  /** Hashes that were made again and were right: links between facts, parts of the file. */
  readonly hashes: number
  /** The record says that it was sealed. */
  readonly sealed: boolean
  readonly record: JobRecord | null
  /** Who sealed the file, when its seal is right: to be compared with a fingerprint from the firm. */
  readonly sealedBy: { readonly device: string; readonly name: string; readonly fingerprint: string } | null
  /** Which bytes the seal covers; null when the file has no seal whose signature is right. */
  readonly coverage: Coverage | null
  /** Whether the printed pages state what the record states; compared only with a proven record under a right seal. */
  readonly pages: 'state-the-record' | 'differ' | 'not-compared'
  readonly findings: readonly HandoverFinding[]
}

/** Says one thing; `where` names a part or a byte of the file. */
export function finding(
  code: HandoverFindingCode,
  where: HandoverFinding['where'],
  what: string,
  doNext: string,
  severity: HandoverFinding['severity'] = 'error',
): HandoverFinding {
  return { code, severity, where, what, doNext }
}

export const askAgain = 'Do not rely on this file; ask the firm for the document again.'
