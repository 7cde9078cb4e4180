import { type JobRecord, picturesWanted } from '@shearline/jobfile'
import type { Store } from '../contract/index.ts'

/** Bytes of the photos that the document of a record shows, as far as they are kept here, by SHA-256. */
export async function picturesAtHand(
  store: Store,
  record: JobRecord,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const found = new Map<string, Uint8Array>()
  for (const sha256 of picturesWanted(record)) {
    const blob = await store.openBlob(sha256)
    if (blob === null) continue
    const pieces: Uint8Array[] = []
    for await (const piece of blob.stream) pieces.push(piece as Uint8Array)
    found.set(sha256, new Uint8Array(Buffer.concat(pieces)))
  }
  return found
}
