import type { Readable } from 'node:stream'
import type { ChainHead, Device, Fact, FactDraft, Sign } from '@shearline/jobfile'
import type { Outcome } from './refusal.ts'

/** A device the store knows, and the UTC instant at which it was enrolled here. */
export interface EnrolledDevice extends Device {
  readonly enrolledAt: string
}

/** What to delete of one job: contents of facts by identifier, blobs by SHA-256, documents by their seal. */
export interface ToErase {
  readonly facts: readonly string[]
  readonly blobs: readonly string[]
  readonly documents: readonly string[]
}

/** What of it is not here any more, by this call or an earlier one. */
export interface Erased {
  readonly facts: readonly string[]
  /** `keyDestroyed` is true only where a blob had a key of its own here and that key is gone too. */
  readonly blobs: readonly { readonly sha256: string; readonly keyDestroyed: boolean }[]
  readonly documents: readonly { readonly seal: string; readonly sha256: string }[]
}

/**
 * Where facts come from. A `device` sends its whole chain in order, so a gap means that something was lost on
 * the way. A `bundle` holds one job of a device that wrote for other jobs in between, so gaps are normal.
 */
export type FactSource = 'device' | 'bundle'

/** How many facts were new and written, and how many were here before, unchanged. */
export interface Appended {
  readonly accepted: number
  readonly already: number
}

/** One job as the store knows it, without folding anything. */
export interface JobEntry {
  readonly job: string
  /** Number of facts. */
  readonly facts: number
  /** The latest `at` of its facts. */
  readonly lastAt: string
  /** Changes whenever a fact of this job arrives, and only then: the key for a cache of anything folded. */
  readonly mark: string
}

/** A large thing kept by its content: recording, photo, sealed document. */
export interface BlobEntry {
  readonly sha256: string
  readonly bytes: number
  readonly mediaType: string
  readonly keptAt: string
}

/** A sealed document of a job, and the `document-sealed` fact it belongs to. */
export interface DocumentEntry {
  readonly job: string
  /** Identifier of the `document-sealed` fact. */
  readonly seal: string
  /** SHA-256 of the PDF, kept as a blob. */
  readonly blob: string
  readonly sealedAt: string
}

export interface BlobOptions {
  /** Refuse more bytes than this (`too-large`); without it the disk decides. */
  readonly maxBytes?: number
}

/**
 * Where the record is kept. Every implementer runs the same suite, `testing/store.case.ts`.
 *
 * Methods throw StoreError when the place itself fails (disk full, database locked, ...). What the store will
 * not take comes back as a refusal and leaves everything as it was.
 */
export interface Store {
  /** The device of this data directory; `writeOwn` signs with its key. */
  readonly device: Device

  /** Signs bytes with the key of this data directory, as the seal of a document needs it. */
  readonly sign: Sign

  /** Makes a device known. The same device again is answered with what is kept; its key can never change. */
  enrol(device: Device): Promise<Outcome<EnrolledDevice>>

  /** Every known device, first enrolled first. */
  devices(): Promise<readonly EnrolledDevice[]>

  /**
   * Appends facts that other devices signed, all or none, in one transaction. Each must be well formed, of a
   * known device, rightly signed, and follow what is here (SPEC.md). The values may come in any order.
   */
  appendFacts(facts: readonly unknown[], options: { readonly from: FactSource }): Promise<Outcome<Appended>>

  /**
   * Gives drafts their place in this directory's own chain, signs and appends them, all or none.
   * Throws jobfile's FactRefused when a body does not fit its kind.
   */
  writeOwn(drafts: readonly FactDraft[]): Promise<readonly Fact[]>

  /**
   * As `writeOwn`, but the drafts are composed from the facts of a job while nobody else can write: what is
   * composed speaks of exactly those facts. Returns what was there before and what was written.
   */
  writeOwnAfter(
    job: string,
    compose: (before: readonly Fact[]) => readonly FactDraft[],
  ): Promise<{ readonly before: readonly Fact[]; readonly written: readonly Fact[] }>

  /** The facts of a job in fold order; empty when the job is unknown. */
  factsOfJob(job: string): Promise<readonly Fact[]>

  /** When facts of a job were received here, by identifier: a UTC instant that no writer's key can choose. */
  receivedOfJob(job: string): Promise<ReadonlyMap<string, string>>

  /** Where the chain of a device ends that is whole here from its first fact; null when the device is unknown. */
  chainEnd(device: string): Promise<ChainHead | null>

  /** The hash of one fact of a device, or null when it is not here. */
  factHashOf(device: string, seq: number): Promise<string | null>

  /** Every job, latest instant first. */
  jobs(): Promise<readonly JobEntry[]>

  /** One job, or null when no fact names it. */
  jobEntry(job: string): Promise<JobEntry | null>

  /**
   * Keeps bytes under their SHA-256, hashing them as they stream to disk; never whole in memory. Bytes that
   * hash to something else are refused (`hash-differs`) and gone. The same bytes again change nothing.
   */
  putBlob(
    sha256: string,
    mediaType: string,
    bytes: AsyncIterable<Uint8Array>,
    options?: BlobOptions,
  ): Promise<Outcome<BlobEntry>>

  /** What is known of a blob, or null when it is not here. */
  blobEntry(sha256: string): Promise<BlobEntry | null>

  /** The bytes of a blob as a stream the caller must read or destroy; null when it is not here. */
  openBlob(sha256: string): Promise<{ readonly entry: BlobEntry; readonly stream: Readable } | null>

  /** Remembers which blob is the document of a seal. The blob must be here. */
  keepDocument(document: DocumentEntry): Promise<void>

  /** The documents of every seal of a job, the latest first. */
  documentsOf(job: string): Promise<readonly DocumentEntry[]>

  /**
   * Deletes content: bodies of facts become `{ erased: <hash> }` (jobfile's `erasedFact`), so that signatures, links
   * and seals still hold; blobs and documents go with their bytes. Asking again for what is gone answers the same.
   * Copies made before (backups, documents handed out, other devices) are not reached. The caller records the proof
   * afterwards, never before.
   */
  erase(job: string, what: ToErase): Promise<Erased>

  /** A setting of this data directory by its name, or null. Never a secret: settings are not sealed. */
  setting(name: string): Promise<string | null>
  putSetting(name: string, value: string): Promise<void>

  /**
   * Calls back with the jobs whose facts arrived, also when another process on the same data wrote them.
   * A job may be named more than once. Returns a function that ends it.
   */
  onJobs(listener: (jobs: readonly string[]) => void): () => void

  /** Writes a copy of the database to a new file while others go on writing; the copy is of one instant. */
  backupTo(file: string): Promise<void>

  close(): Promise<void>
}
