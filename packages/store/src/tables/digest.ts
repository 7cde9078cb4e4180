import { canonicalJson, sha256OfBytes } from '@shearline/jobfile'

/**
 * Digests of rows that no signature covers: SHA-256 of the RFC 8785 text of what must not change in them. The end
 * of a device's chain is left out of its row's digest: it moves, and the facts themselves prove it.
 */
export const digestOf = {
  device: (row: { device: string; name: string; public_key: string; enrolled_at: string }): string =>
    digest({ device: row.device, name: row.name, public_key: row.public_key, enrolled_at: row.enrolled_at }),
  blob: (row: { sha256: string; bytes: number; media_type: string; kept_at: string }): string =>
    digest({ sha256: row.sha256, bytes: row.bytes, media_type: row.media_type, kept_at: row.kept_at }),
  document: (row: { seal: string; job: string; blob: string; sealed_at: string }): string =>
    digest({ seal: row.seal, job: row.job, blob: row.blob, sealed_at: row.sealed_at }),
  erasedDocument: (row: { seal: string; job: string; sha256: string; erased_at: string }): string =>
    digest({ seal: row.seal, job: row.job, sha256: row.sha256, erased_at: row.erased_at }),
  /** Of the instant at which a fact was received: the fact's own signature cannot speak of it. */
  receipt: (row: { hash: string; received: string }): string => sha256OfBytes(`${row.hash} ${row.received}`),
  setting: (row: { name: string; value: string }): string => digest({ name: row.name, value: row.value }),
}

function digest(row: Readonly<Record<string, string | number>>): string {
  return sha256OfBytes(canonicalJson(row))
}
