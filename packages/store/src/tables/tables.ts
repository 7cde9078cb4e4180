import type { Generated } from 'kysely'

/**
 * The tables, alike in every database. Column types are the portable ones: text, integer, bigint. Instants are
 * text as facts carry them; a fact is its RFC 8785 text, so the bytes that were signed are the bytes kept.
 * Beside it stand only the envelope columns that a query uses.
 */
export interface Tables {
  devices: {
    device: string
    name: string
    public_key: string
    enrolled_at: string
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
  }
  blobs: {
    sha256: string
    bytes: number
    media_type: string
    kept_at: string
  }
  documents: {
    seal: string
    job: string
    blob: string
    sealed_at: string
  }
  settings: {
    name: string
    value: string
  }
}
