import { webcrypto } from 'node:crypto'
import type { Readable } from 'node:stream'
import {
  type ChainHead,
  type Device,
  type Fact,
  type FactDraft,
  type Sign,
  Verifier,
} from '@shearline/jobfile'
import type { Transaction } from 'kysely'
import type { BlobPlace } from '../blobs/index.ts'
import type { Engine } from '../contract/engine.ts'
import type {
  Appended,
  BlobEntry,
  BlobOptions,
  DocumentEntry,
  EnrolledDevice,
  Erased,
  FactSource,
  JobEntry,
  Outcome,
  Store,
  ToErase,
} from '../contract/index.ts'
import { digestOf } from '../tables/digest.ts'
import type { Tables } from '../tables/tables.ts'
import { KeptBlobs } from './blobs.ts'
import { enrol } from './devices.ts'
import { erase } from './erase.ts'
import { type OwnWork, writeOwn } from './own.ts'
import { factsOfJob, receivedOfJob } from './rows.ts'
import { Standings } from './standings.ts'
import { Taking } from './taking.ts'

/** The store over any database Kysely speaks to: the same queries for all, what differs comes with the engine. */
export class KyselyStore implements Store {
  readonly device: Device
  readonly sign: Sign
  readonly #engine: Engine
  readonly #blobs: KeptBlobs
  readonly #place: BlobPlace
  readonly #standings: Standings
  readonly #clock: () => number
  readonly #taking: Taking

  /** `device` is the own device, already enrolled; `clock` answers in milliseconds since 1970 UTC. */
  constructor(parts: {
    readonly engine: Engine
    readonly blobs: BlobPlace
    readonly device: Device
    readonly sign: Sign
    readonly clock: () => number
  }) {
    this.device = parts.device
    this.#engine = parts.engine
    this.#blobs = new KeptBlobs(parts.engine, parts.blobs)
    this.#place = parts.blobs
    this.sign = parts.sign
    this.#clock = parts.clock
    const verifier = new Verifier(webcrypto.subtle)
    this.#standings = new Standings(verifier)
    this.#taking = new Taking(parts.engine, verifier, this.#standings, () => this.#now())
  }

  enrol(device: Device): Promise<Outcome<EnrolledDevice>> {
    return this.#guard(() => enrol(this.#engine, device, this.#now()))
  }

  devices(): Promise<readonly EnrolledDevice[]> {
    return this.#guard(async () => {
      const rows = await this.#engine.db
        .selectFrom('devices')
        .orderBy('enrolled_at')
        .orderBy('device')
        .select(['device', 'name', 'public_key as publicKey', 'enrolled_at as enrolledAt'])
        .execute()
      return rows
    })
  }

  appendFacts(facts: readonly unknown[], options: { readonly from: FactSource }): Promise<Outcome<Appended>> {
    return this.#guard(() => this.#taking.append(facts, options.from))
  }

  async writeOwn(drafts: readonly FactDraft[]): Promise<readonly Fact[]> {
    return (await this.#write({ job: null, compose: () => drafts })).written
  }

  writeOwnAfter(job: string, compose: OwnWork['compose']) {
    return this.#write({ job, compose })
  }

  factsOfJob(job: string): Promise<readonly Fact[]> {
    return this.#guard(() => factsOfJob(this.#engine.db, job))
  }

  receivedOfJob(job: string): Promise<ReadonlyMap<string, string>> {
    return this.#guard(() => receivedOfJob(this.#engine.db, job))
  }

  chainEnd(device: string): Promise<ChainHead | null> {
    return this.#guard(async () => {
      const row = await this.#engine.db
        .selectFrom('devices')
        .where('device', '=', device)
        .select(['head_seq as seq', 'head_hash as hash'])
        .executeTakeFirst()
      return row ?? null
    })
  }

  factHashOf(device: string, seq: number): Promise<string | null> {
    return this.#guard(async () => {
      const row = await this.#engine.db
        .selectFrom('facts')
        .where('device', '=', device)
        .where('seq', '=', seq)
        .select('hash')
        .executeTakeFirst()
      return row?.hash ?? null
    })
  }

  jobs(): Promise<readonly JobEntry[]> {
    return this.#guard(async () => {
      const rows = await this.#entries().orderBy('lastAt', 'desc').orderBy('job').execute()
      return rows.map(entryOf)
    })
  }

  jobEntry(job: string): Promise<JobEntry | null> {
    return this.#guard(async () => {
      const row = await this.#entries().where('job', '=', job).executeTakeFirst()
      return row === undefined ? null : entryOf(row)
    })
  }

  putBlob(
    sha256: string,
    mediaType: string,
    bytes: AsyncIterable<Uint8Array>,
    options?: BlobOptions,
  ): Promise<Outcome<BlobEntry>> {
    return this.#guard(() => this.#blobs.put(sha256, mediaType, bytes, this.#now(), options))
  }

  blobEntry(sha256: string): Promise<BlobEntry | null> {
    return this.#guard(() => this.#blobs.entry(sha256))
  }

  openBlob(sha256: string): Promise<{ readonly entry: BlobEntry; readonly stream: Readable } | null> {
    return this.#guard(() => this.#blobs.open(sha256))
  }

  keepDocument(document: DocumentEntry): Promise<void> {
    return this.#guard(async () => {
      const { seal, job, blob, sealedAt } = document
      const row = { seal, job, blob, sealed_at: sealedAt }
      const digest = digestOf.document(row)
      await this.#alone((transaction) =>
        transaction
          .insertInto('documents')
          .values({ ...row, digest })
          .onConflict((conflict) => conflict.column('seal').doUpdateSet({ ...row, digest }))
          .execute(),
      )
    })
  }

  documentsOf(job: string): Promise<readonly DocumentEntry[]> {
    return this.#guard(() =>
      this.#engine.db
        .selectFrom('documents')
        .where('job', '=', job)
        .orderBy('sealed_at', 'desc')
        .select(['job', 'seal', 'blob', 'sealed_at as sealedAt'])
        .execute(),
    )
  }

  erase(job: string, what: ToErase): Promise<Erased> {
    return this.#guard(() => erase(this.#engine, this.#place, job, what, this.#now()))
  }

  setting(name: string): Promise<string | null> {
    return this.#guard(async () => {
      const row = await this.#engine.db
        .selectFrom('settings')
        .where('name', '=', name)
        .select('value')
        .executeTakeFirst()
      return row?.value ?? null
    })
  }

  putSetting(name: string, value: string): Promise<void> {
    return this.#guard(async () => {
      const digest = digestOf.setting({ name, value })
      await this.#alone((transaction) =>
        transaction
          .insertInto('settings')
          .values({ name, value, digest })
          .onConflict((conflict) => conflict.column('name').doUpdateSet({ value, digest }))
          .execute(),
      )
    })
  }

  onJobs(listener: (jobs: readonly string[]) => void): () => void {
    return this.#engine.watch(listener)
  }

  backupTo(file: string): Promise<void> {
    return this.#guard(() => this.#engine.backupTo(file))
  }

  close(): Promise<void> {
    return this.#engine.close()
  }

  #write(work: OwnWork) {
    return this.#guard(async () => {
      const own = {
        device: this.device.device,
        sign: this.sign,
        standings: this.#standings,
        now: () => this.#now(),
      }
      const outcome = await writeOwn(this.#engine, own, work)
      if (outcome.written.length > 0) await this.#engine.wrote()
      return outcome
    })
  }

  /** Every write is a transaction, because only those wait for other writers without blocking the thread. */
  #alone<T>(work: (transaction: Transaction<Tables>) => Promise<T>): Promise<T> {
    return this.#engine.transact(work)
  }

  #entries() {
    return this.#engine.db
      .selectFrom('facts')
      .groupBy('job')
      .select(({ fn }) => [
        'job',
        fn.countAll().as('facts'),
        fn.max('at').as('lastAt'),
        fn.max('arrival').as('lastArrival'),
      ])
  }

  #now(): string {
    return new Date(this.#clock()).toISOString()
  }

  async #guard<T>(work: () => Promise<T>): Promise<T> {
    try {
      return await work()
    } catch (error) {
      throw this.#engine.explain(error) ?? error
    }
  }
}

function entryOf(row: {
  job: string
  facts: number | bigint | string
  lastAt: string
  lastArrival: number | bigint | string
}): JobEntry {
  return {
    job: row.job,
    facts: Number(row.facts),
    lastAt: row.lastAt,
    mark: `${row.facts}:${row.lastArrival}`,
  }
}
