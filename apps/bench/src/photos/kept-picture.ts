/** @module The bytes of a photo or signature: from this device, else from the server, then kept here too, encrypted. */
import { database, strict } from '../sync/database.ts'
import { openAtRest, sealAtRest } from './at-rest.ts'
import { sha256Of } from './sha256.ts'

/** Where the bytes are, or why not. */
export type KeptPicture =
  | { readonly blob: Blob }
  | { readonly missing: 'no-connection' | 'not-there' | 'damaged' }

/** Finds the bytes under a hash. What the server answers is taken only when it has that hash. */
export async function keptPicture(sha256: string): Promise<KeptPicture> {
  const db = await database()
  const kept = await db.get('blobs', sha256)
  if (kept !== undefined) {
    return openAtRest(kept).then(
      (blob) => ({ blob }),
      () => ({ missing: 'damaged' as const }),
    )
  }
  const response = await fetch(`/api/blobs/${sha256}`, { cache: 'no-store' }).catch(() => null)
  if (response === null || response.status >= 500) return { missing: 'no-connection' }
  if (!response.ok) return { missing: 'not-there' }
  const bytes = new Uint8Array(await response.arrayBuffer())
  if ((await sha256Of(bytes)) !== sha256) return { missing: 'damaged' }
  const type = response.headers.get('content-type') ?? 'application/octet-stream'
  const sealed = await sealAtRest(bytes, { sha256, name: '', type, sent: true })
  // Only shown, not written: a full disk here must not hide the picture.
  await db
    .transaction('blobs', 'readwrite', strict)
    .store.put(sealed)
    .catch(() => undefined)
  return { blob: new Blob([bytes], { type }) }
}
