import type { RefusalCode, StoreErrorCode } from '@shearline/store'

/** Every code an answer of this server can carry. The list is closed; OpenAPI and the bench read it from here. */
export const problemCodes = [
  'bad-json',
  'wrong-form',
  'wrong-media-type',
  'wrong-host',
  'foreign-origin',
  'unknown-path',
  'wrong-method',
  'unknown-job',
  'unknown-blob',
  'no-document',
  'document-differs',
  'wrong-offset',
  'line-broken',
  'not-in-line',
  'handover-failed',
  'bench-not-built',
  'internal',
  'not-a-fact',
  'unknown-device',
  'device-key-mismatch',
  'signature-wrong',
  'device-revoked',
  'fork',
  'gap',
  'link-broken',
  'hash-differs',
  'too-large',
  'disk-full',
  'locked',
  'not-writable',
  'damaged',
  'disk-failing',
  'newer-database',
  'blob-missing',
  'file-exists',
  'key-damaged',
  'own-chain-behind',
  'own-device-revoked',
  'unreachable',
  'dump-needed',
  'no-record',
  'not-empty',
  'backup-broken',
  'closed',
] as const satisfies readonly (RefusalCode | StoreErrorCode | (string & {}))[]

export type ProblemCode = (typeof problemCodes)[number]

/** The one shape of every answer that is not what was asked for. */
export interface ProblemBody {
  readonly error: {
    readonly code: ProblemCode
    readonly what: string
    readonly where?: string
    readonly doNext: string
  }
}

export type ProblemStatus = 400 | 403 | 404 | 405 | 409 | 413 | 415 | 422 | 500 | 503 | 507

/** Thrown anywhere while a request is answered; becomes an answer in the one shape. */
export class Problem extends Error {
  readonly status: ProblemStatus
  readonly body: ProblemBody

  /** `more` stands beside the code in the answer (a refused seal carries its `needs`). */
  constructor(
    status: ProblemStatus,
    code: ProblemCode,
    words: { readonly what: string; readonly doNext: string; readonly where?: string },
    more: Readonly<Record<string, unknown>> = {},
  ) {
    super(words.what)
    this.name = 'Problem'
    this.status = status
    this.body = { error: { code, ...words, ...more } }
  }
}

/** A table keyed by every refusal, so that a new one without a status fails to compile. */
const refusalStatus: Readonly<Record<RefusalCode, ProblemStatus>> = {
  'not-a-fact': 422,
  'unknown-device': 422,
  'device-key-mismatch': 422,
  'signature-wrong': 422,
  'device-revoked': 403,
  fork: 409,
  gap: 409,
  'link-broken': 409,
  'hash-differs': 422,
  'too-large': 413,
}

/** What the device can wait for (503, 507) apart from what only a person here can mend (500). */
const storeErrorStatus: Readonly<Record<StoreErrorCode, ProblemStatus>> = {
  'disk-full': 507,
  locked: 503,
  closed: 503,
  'not-writable': 500,
  damaged: 500,
  'disk-failing': 500,
  'newer-database': 500,
  'blob-missing': 500,
  'file-exists': 500,
  'key-damaged': 500,
  'own-chain-behind': 500,
  'own-device-revoked': 500,
  unreachable: 503,
  'dump-needed': 500,
  'no-record': 500,
  'not-empty': 500,
  'backup-broken': 500,
}

export { refusalStatus, storeErrorStatus }
