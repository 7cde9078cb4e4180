/**
 * @module Photos and signatures as this browser keeps them: AES-256-GCM under a key of this device that no script can
 * read out. Whoever copies single files of the profile, or a gallery or search index that walks them, finds no picture;
 * whoever has the unlocked tablet can open the bench (docs/threat-model.md).
 */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { KeptBlob } from '../sync/database.ts'

interface AtRestSchema extends DBSchema {
  keys: { key: 'own'; value: CryptoKey }
}

let opened: Promise<IDBPDatabase<AtRestSchema>> | undefined

function database(): Promise<IDBPDatabase<AtRestSchema>> {
  opened ??= openDB<AtRestSchema>('shearline-at-rest', 1, {
    upgrade: (db) => {
      db.createObjectStore('keys')
    },
  }).catch((error: unknown) => {
    opened = undefined
    throw error
  })
  return opened
}

/** The one key of this browser; made the first time. */
async function ownKey(): Promise<CryptoKey> {
  const kept = await (await database()).get('keys', 'own')
  if (kept !== undefined) return kept
  return navigator.locks.request('shearline-at-rest', async () => {
    const db = await database()
    const other = await db.get('keys', 'own')
    if (other !== undefined) return other
    const key = await crypto.subtle.generateKey({ name: 'AES-GCM', length: 256 }, false, [
      'encrypt',
      'decrypt',
    ])
    const tx = db.transaction('keys', 'readwrite', { durability: 'strict' })
    await Promise.all([tx.store.put(key, 'own'), tx.done])
    return key
  })
}

/** The bytes belong to the hash they are kept under: swapped ones do not open. */
const bound = (sha256: string) => new TextEncoder().encode(sha256)

/** Encrypts bytes for keeping; `sha256` is that of the bytes as they are, which is what facts and the server name. */
export async function sealAtRest(
  bytes: Uint8Array<ArrayBuffer>,
  about: { readonly sha256: string; readonly name: string; readonly type: string; readonly sent: boolean },
): Promise<KeptBlob> {
  const { sha256, name, type, sent } = about
  const iv = crypto.getRandomValues(new Uint8Array(12))
  const sealed = await crypto.subtle.encrypt(
    { name: 'AES-GCM', iv, additionalData: bound(sha256) },
    await ownKey(),
    bytes,
  )
  return {
    sha256,
    blob: new Blob([sealed], { type: 'application/octet-stream' }),
    name,
    sent,
    atRest: { iv, type },
  }
}

/** The bytes as they are. Throws when they were changed, swapped, or encrypted by another browser. */
export async function openAtRest({ sha256, blob, atRest }: KeptBlob): Promise<Blob> {
  if (atRest === undefined) return blob
  const bytes = await crypto.subtle.decrypt(
    { name: 'AES-GCM', iv: atRest.iv, additionalData: bound(sha256) },
    await ownKey(),
    await blob.arrayBuffer(),
  )
  return new Blob([bytes], { type: atRest.type })
}
