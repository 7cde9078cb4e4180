import { describeDevice, rotationBody } from '@shearline/jobfile'
import { type OpenOptions, openStore, ownKeyFile } from '../open.ts'
import { makeNextKey, takeNextKey } from '../own-device/index.ts'
import { approve, type RegisterOutcome, type RegisterWriter, recordRotation } from './index.ts'

/** What came of a rotation: the device that took the place of the old one. */
export type RotationOutcome =
  | { readonly ok: true; readonly old: string; readonly device: string }
  | Extract<RegisterOutcome, { ok: false }>

/**
 * Replaces the key of a data directory. The new key is on the disk before the old one says so, signed by both; then
 * the old key is removed. Broken off in between, the next opening finishes it. A program that has the directory open
 * writes no more until it is started again. Throws StoreError.
 */
export async function rotateKey(
  data: string,
  options: OpenOptions,
  because: string,
  writer: RegisterWriter,
): Promise<RotationOutcome> {
  const store = await openStore(data, options)
  try {
    const { device: old, name } = store.device
    // The root of a register that was never begun is the key as it is now.
    const stands = await approve(store, store.device, writer)
    if (!stands.ok) return stands
    const next = await makeNextKey(ownKeyFile(data))
    const described = describeDevice(next.publicKey, name)
    await store.enrol(described)
    const body = await rotationBody(old, described, next.sign, because)
    const recorded = await recordRotation(store, body, writer)
    if (!recorded.ok) return recorded
    await takeNextKey(ownKeyFile(data))
    return { ok: true, old, device: described.device }
  } finally {
    await store.close()
  }
}
