/** @module Seals a file into the data folder: only the sealed form ever touches its disk. */
import { createHash, randomBytes, randomUUID } from 'node:crypto'
import { createReadStream, createWriteStream } from 'node:fs'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import type { ReadableStream as NodeStream } from 'node:stream/web'
import {
  type ByteSource,
  type Fact,
  type FactDraft,
  type KeptSecret,
  readRecipients,
  recipientsSetting,
  type SealTo,
  type SecretClass,
  sealSecret,
  secretHead,
  secretSealed,
} from '@shearline/jobfile'
import type { Store } from '@shearline/store'
import { taken } from '../job/data.ts'
import { CouldNot } from '../output/answer.ts'
import { passphraseFrom } from './files.ts'

/** 32 random bytes for the digest of one secret. */
export function freshKey(): Uint8Array {
  return randomBytes(32)
}

/** To whom this command seals: the passphrase given, else the firm's recipients. */
export async function sealToOf(store: Store, passphraseFile: string | undefined): Promise<SealTo> {
  if (passphraseFile !== undefined) return { passphrase: await passphraseFrom(passphraseFile) }
  const recipients = readRecipients(await store.setting(recipientsSetting))
  if (recipients.length === 0)
    throw new CouldNot(
      'Nobody is named who could open what is sealed.',
      'Name one: shearline vault recipients add age1... --name office',
    )
  return { recipients: recipients.map(({ recipient }) => recipient) }
}

/** What is to be sealed. */
export interface ToSeal {
  readonly source: ByteSource
  readonly class: SecretClass
  readonly what: string
  readonly bytes: number
  readonly key: Uint8Array
  /** Digest of an earlier pass over the same source, when there was one. */
  readonly expected?: string
}

/** Seals a secret into the store as a blob. Records nothing. Throws VaultError, StoreError. */
export async function keepSealed(store: Store, secret: ToSeal, to: SealTo): Promise<KeptSecret> {
  const { what, bytes: secretBytes } = secret
  const head = secretHead({ class: secret.class, what, bytes: secretBytes }, secret.key)
  const sealing = await sealSecret(secret.source, head, to, secret.expected)
  const folder = await mkdtemp(join(tmpdir(), 'shearline-'))
  try {
    const file = join(folder, 'sealed.age')
    const hash = createHash('sha256')
    let bytes = 0
    await pipeline(
      Readable.fromWeb(sealing.stream as NodeStream<Uint8Array>),
      async function* (pieces: AsyncIterable<Uint8Array>) {
        for await (const piece of pieces) {
          hash.update(piece)
          bytes += piece.length
          yield piece
        }
      },
      createWriteStream(file, { mode: 0o600 }),
    )
    const blob = hash.digest('hex')
    taken(await store.putBlob(blob, 'application/octet-stream', createReadStream(file)))
    return { blob, bytes, class: secret.class, what, secretBytes, digest: sealing.digest(), to }
  } finally {
    await rm(folder, { recursive: true, force: true })
  }
}

/** Records facts in a job at the present instant, never before what it holds. Throws CouldNot when it is unknown. */
export async function recordIn(
  store: Store,
  job: string,
  by: string,
  facts: readonly Pick<FactDraft, 'kind' | 'body'>[],
): Promise<readonly Fact[]> {
  const known = await store.jobEntry(job)
  if (known === null) throw new CouldNot(`There is no job "${job}".`, 'List them with: shearline job list.')
  const at = new Date(Math.max(Date.now(), Date.parse(known.lastAt))).toISOString()
  return store.writeOwn(facts.map(({ kind, body }) => ({ id: randomUUID(), job, at, by, kind, body })))
}

/** Seals a file of a job and records that it was sealed. */
export async function sealIntoJob(
  store: Store,
  job: string,
  by: string,
  secret: ToSeal,
  to: SealTo,
): Promise<KeptSecret> {
  const kept = await keepSealed(store, secret, to)
  await recordIn(store, job, by, [secretSealed(kept)])
  return kept
}
