/** @module Seals a secret with age (C2SP age v1) while it streams, before it touches a disk or the network. */
import { hexToBytes } from '@noble/hashes/utils.js'
import type { Encrypter } from 'age-encryption'
import { age } from './age.ts'
import { SecretDigest } from './digest.ts'
import { VaultError } from './errors.ts'
import { readPassphrase } from './passphrase.ts'
import { readRecipient } from './recipients.ts'
import { headBytes, type SecretHead } from './secret.ts'
import { type ByteSource, piecesOf, streamFrom } from './streams.ts'

/** Who can open it: the owners of these public keys, or whoever knows the passphrase. age allows one or the other. */
export type SealTo = { readonly recipients: readonly string[] } | { readonly passphrase: string }

/** A secret on its way into its sealed file. */
export interface Sealing {
  /** The sealed file. It breaks off with VaultError when the secret is not what `head` says. */
  readonly stream: ReadableStream<Uint8Array>
  /** Length of the sealed file. */
  readonly bytes: number
  /** The digest that stands for the secret in facts; there when the stream has ended. */
  digest(): string
}

/**
 * Seals a secret. It is never whole in memory: age works in pieces of 64 KiB. When `expected` is given, as the
 * digest of an earlier pass over the same source, another secret breaks the stream off (`changed-while-read`).
 * Throws VaultError `no-recipient`, `not-a-recipient`, `passphrase-too-short`.
 */
export async function sealSecret(
  source: ByteSource,
  head: SecretHead,
  to: SealTo,
  expected?: string,
): Promise<Sealing> {
  const first = headBytes(head)
  let digest: string | null = null
  const plain = async function* (): AsyncGenerator<Uint8Array> {
    const taken = new SecretDigest(hexToBytes(head.key))
    yield first
    for await (const piece of piecesOf(source())) {
      taken.update(piece)
      yield piece
    }
    const bytes = taken.bytes
    const found = taken.end()
    if (bytes !== head.bytes || (expected !== undefined && found !== expected))
      throw new VaultError(
        'changed-while-read',
        'The file changed while it was being sealed.',
        'Close what writes to it and choose the files again.',
      )
    digest = found
  }
  const sealed = await (await encrypterTo(to)).encrypt(streamFrom(plain()))
  return {
    stream: sealed,
    bytes: sealed.size(first.length + head.bytes),
    digest: () => {
      if (digest === null) throw new Error('the sealed stream was not read to its end')
      return digest
    },
  }
}

async function encrypterTo(to: SealTo): Promise<Encrypter> {
  const { Encrypter } = await age()
  const encrypter = new Encrypter()
  if ('passphrase' in to) {
    encrypter.setPassphrase(readPassphrase(to.passphrase))
    return encrypter
  }
  if (to.recipients.length === 0)
    throw new VaultError(
      'no-recipient',
      'Nobody is named who could open it.',
      'Add a recipient of the firm first, or give a passphrase.',
    )
  for (const recipient of to.recipients) encrypter.addRecipient(readRecipient(recipient))
  return encrypter
}
