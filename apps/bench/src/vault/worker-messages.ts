import type { KeptSecret, ReadComparison } from '@shearline/jobfile'

/** What the page asks of the vault's worker. Secrets go in as files and come out sealed, or opened for saving. */
export type Ask =
  | {
      readonly what: 'prove'
      readonly first: File
      readonly second: File
      readonly words: string
      readonly recipients: readonly string[]
    }
  | {
      readonly what: 'seal'
      readonly file: File
      readonly recipients: readonly string[]
    }
  | {
      readonly what: 'open'
      readonly sealed: Blob
      readonly identity: string
      readonly passphrase: string
      /** The digest on record, to be held against what comes out. */
      readonly digest: string | null
    }

/** A proven backup: what was compared, what was sealed, and the sealed bytes. */
export interface Proven extends SealedBlob {
  readonly comparison: ReadComparison
}

/** What was sealed, and the sealed bytes. */
export interface SealedBlob {
  readonly kept: KeptSecret
  readonly sealed: Blob
}

/** A secret in memory, for saving to a file of the person's choice. */
export interface OpenedSecret {
  readonly secret: Blob
  /** Whether it is what was recorded when it was sealed; null when the record holds no digest. */
  readonly asRecorded: boolean | null
}

export type Answer =
  | { readonly what: 'proven'; readonly proven: Proven }
  | { readonly what: 'sealed'; readonly one: SealedBlob }
  | { readonly what: 'not-proven'; readonly comparison: ReadComparison }
  | { readonly what: 'opened'; readonly opened: OpenedSecret }
  | { readonly what: 'failed'; readonly why: string }
