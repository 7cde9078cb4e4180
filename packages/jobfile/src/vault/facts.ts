/** @module What the record says of a secret: digests, sizes, who can open it. Never a byte of it. */
import type { BodyInput } from '../facts/index.ts'
import type { ReadComparison } from './reads.ts'
import type { SealTo } from './seal.ts'
import type { SecretClass } from './secret.ts'

/** A sealed file as it was kept. */
export interface KeptSecret {
  /** SHA-256 of the sealed file: its name as a blob. */
  readonly blob: string
  /** Length of the sealed file. */
  readonly bytes: number
  readonly class: SecretClass
  readonly what: string
  /** Length and keyed digest of what is inside. */
  readonly secretBytes: number
  readonly digest: string
  readonly to: SealTo
}

/** The fact that a secret was sealed. */
export function secretSealed(kept: KeptSecret): {
  readonly kind: 'secret-sealed'
  readonly body: BodyInput<'secret-sealed'>
} {
  const { blob, bytes, what, secretBytes, digest, to } = kept
  const recipients = 'recipients' in to ? [...to.recipients] : []
  const passphrase = 'passphrase' in to
  return {
    kind: 'secret-sealed',
    body: { what, class: kept.class, blob, bytes, secretBytes, digest, recipients, passphrase },
  }
}

/** The fact that two separate reads were equal and the sealed file holds them. Only for a comparison that proved it. */
export function backupProven(
  comparison: ReadComparison,
  kept: KeptSecret,
): { readonly kind: 'backup-proven'; readonly body: BodyInput<'backup-proven'> } {
  return {
    kind: 'backup-proven',
    body: {
      what: kept.what,
      firstRead: comparison.first.digest,
      secondRead: comparison.second.digest,
      digest: 'hmac-sha256',
      bytes: kept.secretBytes,
      blob: kept.blob,
    },
  }
}
