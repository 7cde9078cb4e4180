import type { Generated } from 'kysely'

/**
 * The tables, alike in every database. Column types are the portable ones: text, integer, bigint. Instants are
 * text as facts carry them; a fact is its RFC 8785 text, so the bytes that were signed are the bytes kept.
 * Beside it stand only the envelope columns that a query uses. What no signature covers carries a digest of its
 * own row (`digest.ts`), so that a flipped bit is found there too.
 */
export interface Tables {
  devices: {
    device: string
    name: string
    public_key: string
    enrolled_at: string
    digest: string
    /** Last fact of the unbroken chain from 1; 0 and null before the first. Bundles may hold facts beyond it. */
    head_seq: number
    head_hash: string | null
  }
  facts: {
    /** Order of arrival in this database. */
    arrival: Generated<number>
    device: string
    seq: number
    id: string
    job: string
    at: string
    kind: string
    prev: string | null
    hash: string
    fact: string
    /** When it was received here, a UTC instant; null for what came before receipts were kept. */
    received: string | null
    received_digest: string | null
  }
  blobs: {
    sha256: string
    bytes: number
    media_type: string
    kept_at: string
    digest: string
  }
  /** Bytes of blobs in pieces, for databases that keep them inside; empty where blobs are files. */
  blob_parts: {
    sha256: string
    part: number
    bytes: Uint8Array
  }
  documents: {
    seal: string
    job: string
    blob: string
    sealed_at: string
    digest: string
  }
  /** Documents whose bytes were deleted, so that a deletion that broke off can still say what it took. */
  erased_documents: {
    seal: string
    job: string
    sha256: string
    erased_at: string
    digest: string
  }
  settings: {
    name: string
    value: string
    digest: string
  }
}
