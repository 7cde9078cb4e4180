import { database } from '../sync/database.ts'

/** The kept messages of a recording as this device holds them, or null. */
export async function blobHere(sha256: string): Promise<Blob | null> {
  return (await (await database()).get('blobs', sha256))?.blob ?? null
}

/** The same from the server, when this device does not hold them; null when neither does. */
export async function blobAnywhere(sha256: string): Promise<Blob | null> {
  const here = await blobHere(sha256)
  if (here !== null) return here
  const response = await fetch(`/api/blobs/${sha256}`).catch(() => null)
  return response?.ok === true ? response.blob() : null
}
