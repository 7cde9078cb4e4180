/** @module This browser as a device: an Ed25519 key pair that cannot leave it, a name, and who works with it. */
import { describeDevice, emptyHead, type Sign } from '@shearline/jobfile'
import { database, type Self, strict } from '../sync/database.ts'

/** The browser lacks what signing needs. */
export class CannotSign extends Error {
  constructor(cause: unknown) {
    super('This browser cannot make an Ed25519 key.', { cause })
    this.name = 'CannotSign'
  }
}

/** This device; made with a fresh key the first time. */
export async function ownDevice(): Promise<Self> {
  const kept = await (await database()).get('self', 'self')
  return kept ?? navigator.locks.request('shearline-device', makeDevice)
}

async function makeDevice(): Promise<Self> {
  const db = await database()
  const kept = await db.get('self', 'self')
  if (kept !== undefined) return kept
  const pair = await newKeyPair()
  const publicKey = new Uint8Array(await crypto.subtle.exportKey('raw', pair.publicKey))
  const described = describeDevice(publicKey, 'bench')
  const self: Self = {
    ...described,
    name: `bench ${described.device.slice(4, 8)}`,
    id: 'self',
    by: '',
    privateKey: pair.privateKey,
    head: emptyHead,
    lastAt: null,
  }
  const tx = db.transaction('self', 'readwrite', strict)
  await Promise.all([tx.store.add(self), tx.done])
  // Without this the browser may drop the store when the disk fills; the answer is shown, not relied on.
  void navigator.storage?.persist?.()
  return self
}

async function newKeyPair(): Promise<CryptoKeyPair> {
  try {
    return (await crypto.subtle.generateKey({ name: 'Ed25519' }, false, ['sign', 'verify'])) as CryptoKeyPair
  } catch (cause) {
    throw new CannotSign(cause)
  }
}

/** Signs with this device's key. */
export function signer(self: Self): Sign {
  return async (data) => new Uint8Array(await crypto.subtle.sign('Ed25519', self.privateKey, data))
}

/** Changes the name people read or who works with the device. The key and its chain stay. */
export function renameDevice(change: { readonly name?: string; readonly by?: string }): Promise<Self> {
  // The chain's lock: a fact being signed meanwhile must not put the old name back.
  return navigator.locks.request('shearline-chain', async () => {
    const db = await database()
    const self = { ...(await ownDevice()), ...change }
    const tx = db.transaction('self', 'readwrite', strict)
    await Promise.all([tx.store.put(self), tx.done])
    return self
  })
}
