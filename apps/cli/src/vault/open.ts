/** @module Opens a sealed secret of a job: first the key, then the reason on record, then the bytes. */
import { createWriteStream } from 'node:fs'
import { rm } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import type { ReadableStream as NodeStream } from 'node:stream/web'
import { type Body, type Fact, type OpenWith, openSecret, readBody } from '@shearline/jobfile'
import type { Store } from '@shearline/store'
import { CouldNot } from '../output/answer.ts'
import { recordIn } from './keep.ts'

/** A secret of a job as its facts tell of it. */
export interface SecretOnRecord {
  readonly sealed: Body<'secret-sealed'>
  readonly at: string
  readonly by: string
  readonly opened: readonly { readonly at: string; readonly by: string; readonly reason: string }[]
}

/** The secrets of a job in the order in which they were sealed, each with its openings. */
export function secretsOf(facts: readonly Fact[]): readonly SecretOnRecord[] {
  const openings = facts.flatMap((fact) => {
    const read = fact.kind === 'secret-opened' ? readBody('secret-opened', fact.body, fact.v) : null
    return read?.ok === true ? [{ ...read.body, at: fact.at, by: fact.by }] : []
  })
  return facts.flatMap((fact) => {
    const read = fact.kind === 'secret-sealed' ? readBody('secret-sealed', fact.body, fact.v) : null
    if (read?.ok !== true) return []
    const opened = openings
      .filter(({ blob }) => blob === read.body.blob)
      .map(({ at, by, reason }) => ({ at, by, reason }))
    return [{ sealed: read.body, at: fact.at, by: fact.by, opened }]
  })
}

/** The one secret whose sealed file begins with these hex digits. Throws CouldNot. */
export function secretNamed(facts: readonly Fact[], name: string): SecretOnRecord {
  const found = secretsOf(facts).filter(({ sealed }) => sealed.blob.startsWith(name.toLowerCase()))
  const [only, other] = found
  if (only === undefined || name.length < 8 || other !== undefined)
    throw new CouldNot(
      other === undefined ? `The job has no secret "${name}".` : `"${name}" names more than one secret.`,
      'List them with: shearline vault list JOB, and give eight or more digits of one.',
    )
  return only
}

/** What an opening came to. */
export interface SecretSaved {
  readonly bytes: number
  /** Whether what came out is what was recorded when it was sealed; null when the record holds no digest. */
  readonly asRecorded: boolean | null
}

/**
 * Opens a secret into a new file that only its owner can read. The opening is on record before the first byte is
 * written. Throws CouldNot, VaultError, StoreError; no part of the secret is left behind then.
 */
export async function saveSecret(
  store: Store,
  wish: {
    readonly job: string
    readonly secret: Body<'secret-sealed'>
    readonly keys: OpenWith
    readonly reason: string
    readonly by: string
    readonly out: string
  },
): Promise<SecretSaved> {
  const { blob, digest } = wish.secret
  const found = await store.openBlob(blob)
  if (found === null)
    throw new CouldNot(
      'The sealed file is not here.',
      'It was deleted when its time was over, or the device that sealed it has not sent it yet.',
    )
  const opened = await openSecret(Readable.toWeb(found.stream) as ReadableStream<Uint8Array>, wish.keys)
  await recordIn(store, wish.job, wish.by, [{ kind: 'secret-opened', body: { blob, reason: wish.reason } }])
  let bytes = 0
  let made = false
  try {
    const file = createWriteStream(wish.out, { flags: 'wx', mode: 0o600 })
    file.once('open', () => {
      made = true
    })
    await pipeline(
      Readable.fromWeb(opened.stream as NodeStream<Uint8Array>),
      async function* (pieces: AsyncIterable<Uint8Array>) {
        for await (const piece of pieces) {
          bytes += piece.length
          yield piece
        }
      },
      file,
    )
  } catch (error) {
    if (made) await rm(wish.out, { force: true })
    if ((error as NodeJS.ErrnoException).code === 'EEXIST')
      throw new CouldNot(`${wish.out} exists already.`, 'Name a new file; the opening is on record.')
    throw error
  }
  return { bytes, asRecorded: digest === undefined ? null : opened.digest() === digest }
}
