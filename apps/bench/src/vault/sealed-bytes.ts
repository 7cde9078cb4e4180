import { database } from '../sync/database.ts'

/** The sealed bytes of a secret: kept on this device, else from the server; null when neither has them. */
export async function sealedBytes(sha256: string): Promise<Blob | null> {
  const kept = await (await database()).get('blobs', sha256)
  if (kept !== undefined) return kept.blob
  const response = await fetch(`/api/blobs/${sha256}`, { cache: 'no-store' }).catch(() => null)
  return response?.ok === true ? response.blob() : null
}
