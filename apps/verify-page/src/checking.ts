/** @module Proves a file that somebody chose, reading it in pieces; can be stopped. */
import { type ByteAccess, type GivenCheck, Verifier, verifyGiven } from '@shearline/jobfile'

/** Access to a file that the page was given. Tells how far it has read; ends when stopped. */
export function accessOf(file: Blob, read: (to: number) => void, stop: AbortSignal): ByteAccess {
  return {
    size: file.size,
    read: async (from, to) => {
      stop.throwIfAborted()
      const bytes = new Uint8Array(await file.slice(from, to).arrayBuffer())
      read(to)
      return bytes
    },
  }
}

/** Proves a file. Throws when the browser cannot read it or when it was stopped, never for what it holds. */
export function proveFile(file: Blob, read: (to: number) => void, stop: AbortSignal): Promise<GivenCheck> {
  return verifyGiven(accessOf(file, read, stop), new Verifier(crypto.subtle))
}

/** RFC 8032, 7.1, test 2: public key and signature of the one byte 0x72, base64url. */
const sample = {
  key: 'PUAXw-hDiVqStwqnTRt-vJyYLM8uxJaMwM1V8Sr0Zgw',
  signature: 'kqAJqfDUyrhyDoILX2QlQKKye1QWUD-Ps3YiI-vbadoIWsHkPhWZbkWPNhPQ8R2MOHsurrQwKu6wDSkWErsMAA',
} as const

/** True when this browser checks Ed25519 signatures, and checks them right. */
export async function canCheckSignatures(): Promise<boolean> {
  if (globalThis.crypto?.subtle === undefined) return false
  try {
    const verifier = new Verifier(crypto.subtle)
    const right = await verifier.verify(sample.key, sample.signature, new Uint8Array([0x72]))
    const wrong = await verifier.verify(sample.key, sample.signature, new Uint8Array([0x73]))
    return right && !wrong
  } catch {
    return false
  }
}
